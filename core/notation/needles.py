"""Whether a pattern can match at all, told by the words it can't do without: most patterns of a table can't.

Only spares time: where the parts of a pattern can't be told, it may always match.
"""

import re
from collections.abc import Iterable
from typing import Any, Final

try:
    from re import _parser  # type: ignore[attr-defined]  # nothing public tells the parts of a pattern
except ImportError:  # then every pattern is tried everywhere, which takes longer and says the same
    _parser = None

# More words than that take longer to look for than the pattern itself.
_MOST: Final = 24
_WIDEST_CLASS: Final = 12
_REPEATED: Final = frozenset({"MAX_REPEAT", "MIN_REPEAT", "POSSESSIVE_REPEAT"})

Needles = frozenset[str]


# By identity, as it takes longer to hash a pattern than to look for its words; kept beside them, none goes.
_found: Final[dict[int, tuple[re.Pattern[str], tuple[str, ...]]]] = {}


def may_match(pattern: re.Pattern[str], text: str) -> bool:
    """False only where no stretch of `text` can match; `pattern` must be one that stays."""
    known = _found.get(id(pattern))
    if known is None:
        known = _found[id(pattern)] = (pattern, needles(pattern))
    wanted = known[1]
    if not wanted:
        return True
    for needle in wanted:  # noqa: SIM110 - a generator takes twice as long
        if needle in text:
            return True
    return False


def needles(pattern: re.Pattern[str]) -> tuple[str, ...]:
    """Words one of which every match contains; none where there are no such words, or too many."""
    if _parser is None or pattern.flags & re.IGNORECASE:
        return ()
    found = _of_sequence(_parser.parse(pattern.pattern, pattern.flags))
    return tuple(sorted(found, key=len)) if found and len(found) <= _MOST else ()


def _of_sequence(parts: Iterable[Any]) -> Needles | None:
    """Of parts that follow each other those of the one that is told best: the longest words, then the fewest."""
    found: list[Needles] = []
    run = ""
    for name, told in parts:
        if str(name) == "LITERAL":
            run += chr(told)
            continue
        if run:
            found.append(frozenset((run,)))
            run = ""
        if (one := _of_part(str(name), told)) is not None:
            found.append(one)
    if run:
        found.append(frozenset((run,)))
    return max(found, key=lambda one: (min(map(len, one)), -len(one)), default=None)


def _of_part(name: str, told: Any) -> Needles | None:
    if name == "SUBPATTERN":
        return _of_sequence(told[-1])
    if name in _REPEATED:
        return _of_sequence(told[2]) if told[0] else None
    if name == "ATOMIC_GROUP":
        return _of_sequence(told)
    if name == "ASSERT":
        return _of_sequence(told[1])
    if name == "BRANCH":
        ways = [_of_sequence(way) for way in told[1]]
        return None if None in ways else frozenset().union(*(way for way in ways if way))
    return _of_class(told) if name == "IN" else None


def _of_class(told: Iterable[Any]) -> Needles | None:
    characters: set[str] = set()
    for name, one in told:
        if str(name) == "LITERAL":
            characters.add(chr(one))
        elif str(name) == "RANGE":
            characters |= {chr(code) for code in range(one[0], one[1] + 1)}
        else:
            return None
        if len(characters) > _WIDEST_CLASS:
            return None
    return frozenset(characters)
