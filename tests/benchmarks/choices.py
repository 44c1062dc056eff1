"""Our exact choice beside one weighted CP-SAT solve of the same instances, in the same run."""

import time
from collections.abc import Callable
from random import Random
from typing import Any

from core.scaling.choice import choose
from tests.support.choices import MEETING, some_sections
from tests.support.cp_sat import solve

# Ours takes milliseconds for all, so one pass would measure the moment.
_TIMES = 10


def table(instances: int, seed: int = 66) -> list[tuple[str, str]]:
    """Rows for the speed table."""
    random = Random(seed)
    every = [some_sections(random) for _ in range(instances)]
    ours, theirs = _seconds(choose, every * _TIMES) / _TIMES, _seconds(solve, every)
    return [
        ("microseconds a choice", f"{1e6 * ours / instances:,.0f}"),
        ("times faster than CP-SAT (to reach: 20)", f"{theirs / ours:,.0f}"),
    ]


def _seconds(solver: Callable[[Any, Any], object], instances: list[Any]) -> float:
    started = time.process_time()
    for one in instances:
        solver(one, MEETING)
    return time.process_time() - started
