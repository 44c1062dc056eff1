"""What a forecast with its range costs: of a six-line session, for many different people, on one core."""

import time

from core.forecast.forecast import outlook_of
from core.forecast.people import People
from core.movements.lookup import catalogue
from core.scaling.values import Version
from core.scaling.version import version_for
from tests.benchmarks.versions import crowd, six_lines
from tests.support.foreseen import foreseen, summed_up

_WARM_UP = 20


def table(people: int) -> list[tuple[str, str]]:
    """Rows for the speed table."""
    made = [(one, version_for(six_lines(), one, catalogue())) for one in crowd(people)]
    known = [(one, version) for one, version in made if isinstance(version, Version)]
    for one, version in known[:_WARM_UP]:
        outlook_of(version, People(one, catalogue()))
    started = time.process_time()
    for one, version in known:
        outlook_of(version, People(one, catalogue()))
    return [
        ("milliseconds a forecast (to reach: 5)", f"{1000 * (time.process_time() - started) / people:.2f}")
    ]


def foresight(people: int) -> list[tuple[str, str]]:
    """How forecasts from a few tests hold for people of another physiology, before anything was learned of them."""
    inside, error, of_median = summed_up(foreseen(people, seed=5))
    return [
        ("forecast ranges that hold (to reach: 75-85 %)", f"{inside:.0%}"),
        ("mean error of a forecast, by median", f"{error:.0%} {of_median:.0%}"),
    ]
