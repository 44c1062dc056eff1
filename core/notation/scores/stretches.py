"""Where in a message a score may be told: the whole of it, or some of its sentences while the others tell a story."""

import itertools
import re
from typing import Final

from core.notation.scores.spoken import in_digits

# Ends of sentences and lines; a figure keeps its point.
_END: Final = re.compile(r"[.!?;](?=\s|$)|\n+")
_ASIDE: Final = re.compile(r"\(([^()]*)\)")
# Of more sentences only those at the beginning and at the end are tried.
_MOST: Final = 6
_NUMBERED: Final = re.compile(r"[0-9]")


def stretches(words: str) -> tuple[str, ...]:
    """All of it without what stands in brackets, and every run of its sentences that has a number; `words` in lines."""
    pieces = _pieces(words)
    every = len(pieces)
    runs = (
        pieces[first : last + 1]
        for first in range(every)
        for last in range(first, every)
        if every <= _MOST or first in {0, last} or last == every - 1
    )
    told = (_ASIDE.sub(" ", words), *(" ".join(run) for run in runs))
    plain = (" ".join(one.split()) for one in told)
    return tuple(dict.fromkeys(one for one in plain if _NUMBERED.search(in_digits(one))))


def _pieces(words: str) -> list[str]:
    """Sentences, each with its end; what stands in brackets is of none of them."""
    apart = _ASIDE.sub(" ", words)
    cuts = [0, *(end.end() for end in _END.finditer(apart)), len(apart)]
    told = [" ".join(apart[start:end].split()) for start, end in itertools.pairwise(cuts)]
    return [one for one in told if re.search(r"[^\W_]", one)]
