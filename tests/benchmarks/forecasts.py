"""What a forecast with its range costs: of a six-line session, for many different people, on one core."""

import time
from datetime import date

from core.forecast.forecast import outlook_of
from core.forecast.learning import Taught
from core.forecast.learning import after as after_score
from core.forecast.people import People
from core.movements.lookup import catalogue
from core.scaling.values import Version
from core.scaling.version import version_for
from core.scores.values import Score
from tests.benchmarks.versions import crowd, six_lines
from tests.support.foreseen import foreseen, summed_up
from tests.support.season import Row, mean, season
from tests.support.season import table as table_of

_WARM_UP = 20
_A_DAY = date(2026, 3, 2)
LEARNED = 10


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


def learning(people: int) -> list[tuple[str, str]]:
    """What a score teaches: how long that takes, and what it is worth to people of another physiology."""
    done = season(people, seed=4)
    rows = table_of(done)
    after = mean([row for time, row in rows.items() if time >= LEARNED])
    told = [
        *((f"before learning from {time} sessions", rows[time]) for time in (0, 1, 2)),
        ("after ten", after),
    ]
    return [
        ("milliseconds an update after a score (to reach: 20)", f"{_update_ms():.1f}"),
        *(
            (f"{what}: ranges that hold, error, of the last score, of the median", _row(row))
            for what, row in told
        ),
    ]


def _row(row: Row) -> str:
    return f"{row.inside:.0%}  {row.error:.1%} {row.of_last:.1%} {row.of_median:.1%}"


def _update_ms() -> float:
    made = [(one, version_for(six_lines(), one, catalogue())) for one in crowd(_WARM_UP)]
    taught = [
        (one, Taught(version, version.blocks[0], Score(value=5, unit="rounds", rounds=5, reps=0), _A_DAY))
        for one, version in made
        if isinstance(version, Version)
    ]
    started = time.process_time()
    for one, lesson in taught:
        after_score(lesson, one, catalogue())
    return 1000 * (time.process_time() - started) / len(taught)


def foresight(people: int) -> list[tuple[str, str]]:
    """How forecasts from a few tests hold for people of another physiology, before anything was learned of them."""
    inside, error, of_median = summed_up(foreseen(people, seed=5))
    return [
        ("forecast ranges that hold (to reach: 75-85 %)", f"{inside:.0%}"),
        ("mean error of a forecast, by median", f"{error:.0%} {of_median:.0%}"),
    ]
