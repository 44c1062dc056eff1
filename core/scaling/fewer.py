"""Fewer repetitions of the same, where the written amount is too much (design 6.4)."""

from collections.abc import Iterable, Iterator
from itertools import islice
from math import ceil, floor

from core.scaling.amounts import rounded_to
from core.scaling.athlete import Athlete
from core.scaling.fit import UNCOUNTED, Task, fit
from core.scaling.search import FEWER, Option, placed
from core.scaling.values import Because
from core.scaling.ways import AS_WRITTEN, LinePlan

# Two of twenty are not what was meant any more: so much is done if it is safe, even if it is a little heavy (estimate).
LEAST_PART = 1 / 3


def at_share(plan: LinePlan, option: Option, athlete: Athlete, share: float) -> Option:
    """The same with a share of the written amount."""
    assert option.way is not None
    task = athlete.task(plan, option.way)
    fitting = UNCOUNTED if task is None else fit(task, option.moved_kg or 0.0, task.lightness, share)
    fitting = placed(fitting, option.way)
    distance = option.distance if share == 1 else FEWER + ceil(10 * (1 - share))
    return option._replace(part=share, distance=distance, fit=fitting)


def fewer_of(plan: LinePlan, found: Iterable[Option], athlete: Athlete, *, first: bool) -> Iterator[Option]:
    """The same with as many repetitions as fit: the more are taken off, the further from what was written.

    Where volume goes `first`, fewer of what is written are as near as all of it.
    """
    for option in found:
        if option.safe and option.fit.beyond == 0:
            continue
        task = athlete.task(plan, option.way) if option.way else None
        fewer = (at_share(plan, option, athlete, part) for part in _parts(task, option))
        safe = islice((one for one in fewer if one.safe), 1)
        yield from (one._replace(fewer_first=first and option.distance == AS_WRITTEN) for one in safe)


def _parts(task: Task | None, option: Option) -> Iterator[float]:
    """Largest share of the written amount that fits, in whole steps of what is counted.

    Before it, the least share that is worth doing, if that is more.
    """
    way, fitted = option.way, option.fit
    if task is None or way is None or way.amount is None or fitted.refused not in {None, Because.LIGHT_DUTY}:
        return
    most = task.window.high * fitted.cautious / task.set_amount
    step = rounded_to(way.unit, (way.movement, way.variant), per_side=way.per_side)
    fewer = step * floor(way.amount * most / step)
    least = step * ceil(LEAST_PART * way.amount / step)
    yield from (amount / way.amount for amount in (max(least, fewer), fewer) if 0 < amount < way.amount)
