"""What was worked out once, kept as long as there is room: room is what the results weigh, not how many they are."""

from collections import OrderedDict
from collections.abc import Callable, Hashable
from functools import wraps
from typing import ParamSpec, TypeVar

P = ParamSpec("P")
R = TypeVar("R")


def kept_by_weight(most: int, weigh: Callable[[R], int]) -> Callable[[Callable[P, R]], Callable[P, R]]:
    """Keep the latest results, called by position, as long as they weigh at most so much together.

    One that weighs more by itself is kept until the next comes. Not for several threads.
    """

    def keeping(function: Callable[P, R]) -> Callable[P, R]:
        kept: OrderedDict[Hashable, tuple[R, int]] = OrderedDict()
        weight = 0

        @wraps(function)
        def call(*args: P.args, **kwargs: P.kwargs) -> R:
            nonlocal weight
            assert not kwargs, "called by position"
            found = kept.get(args)
            if found is not None:
                kept.move_to_end(args)
                return found[0]
            result = function(*args, **kwargs)
            heavy = weigh(result)
            weight += heavy
            kept[args] = result, heavy
            while weight > most and len(kept) > 1:
                _, (_, gone) = kept.popitem(last=False)
                weight -= gone
            return result

        return call

    return keeping
