"""Every reading that the numbers of a message allow of a block; which of them was meant is chosen in `choice.py`.

Nothing here looks at the words around a number, but for the names of what is done.
"""

from collections.abc import Callable, Iterator
from typing import Final

from core.notation.scores.choosing.candidates import Heard, Reading
from core.notation.scores.choosing.of_each import as_all_held, as_counts
from core.notation.scores.choosing.of_loads import as_load, as_plates, as_sets_alone
from core.notation.scores.choosing.of_minutes import as_minutes
from core.notation.scores.choosing.of_rounds import as_rounds
from core.notation.scores.choosing.of_times import (
    as_capped,
    as_hold,
    as_time,
    as_times_of_each,
    as_times_of_rounds,
)
from core.scores.ways import Way, way_of

_MAKERS: Final[dict[Way, tuple[Callable[[Heard], Iterator[Reading]], ...]]] = {
    Way.ROUNDS: (as_rounds,),
    Way.TIME: (as_time, as_capped, as_times_of_rounds),
    Way.HOLD: (as_hold, as_times_of_each),
    Way.HOLDS: (as_times_of_each, as_all_held),
    Way.REPS: (as_counts,),
    Way.SETS_OF_REPS: (as_counts,),
    Way.CALORIES: (as_counts,),
    Way.DISTANCE: (as_counts,),
    Way.LOAD: (as_load, as_plates, as_sets_alone),
    Way.SPLITS: (as_times_of_each,),
    Way.COUNTS: (as_counts,),
    Way.MINUTES: (as_minutes, as_counts, as_times_of_each),
    Way.DONE: (),
}


def readings(heard: Heard) -> tuple[Reading, ...]:
    """All of them; the same score more than once where there are several ways to come to it."""
    return tuple(dict.fromkeys(one for make in _MAKERS[way_of(heard.block)] for one in make(heard)))
