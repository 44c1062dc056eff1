"""Whether a pattern can match at all, told by the words it can't do without: most patterns of a table can't.

Only spares time: of a part whose words can't be told nothing is asked.
"""

import re
from typing import Final

# More words than that take longer to look for than the pattern itself.
_MOST: Final = 24
_WIDEST_CLASS: Final = 12
# What a pattern is written of: an escape, a class, the front of a group, how often, or a character.
_PART: Final = re.compile(
    r"\\(?P<escaped>u[0-9a-f]{4}|x[0-9a-f]{2}|.)|\[(?P<not>\^)?(?P<class>\]?(?:\\.|[^\]\\])*)\]|\((?P<front>\?(?:P<\w+>|<?[=!]|:|P=\w+|\(\w+\)))?"
    r"|(?P<often>\?|\*|\+|\{[0-9]*,?[0-9]*\})\??|(?P<plain>.)",
    re.DOTALL,
)
_MUST_MATCH: Final = frozenset(("", "?:", "?=", "?<="))
_MAY_LACK: Final = ("?", "*", "{0", "{,")

Needles = frozenset[str]


# By identity, as it takes longer to hash a pattern than to look for its words; kept beside them, none goes.
_found: Final[dict[int, tuple[re.Pattern[str], tuple[str, ...]]]] = {}


def may_match(pattern: re.Pattern[str], text: str) -> bool:
    """False only where no stretch of `text` can match; `pattern` must be one that stays."""
    known = _found.get(id(pattern))
    if known is None:
        known = _found[id(pattern)] = (pattern, _needles_of(pattern))
    wanted = known[1]
    if not wanted:
        return True
    for needle in wanted:  # noqa: SIM110 - a generator takes twice as long
        if needle in text:
            return True
    return False


def _needles_of(pattern: re.Pattern[str]) -> tuple[str, ...]:
    return () if pattern.flags & (re.IGNORECASE | re.VERBOSE) else needles(pattern.pattern)


def needles(source: str) -> tuple[str, ...]:
    """Words one of which every match contains, of a pattern without flags; none where there are none, or too many."""
    found = _Reader(source).alternatives()
    told = {one for one in found or () if not any(other in one for other in found or () if other != one)}
    return tuple(sorted(told, key=len)) if 0 < len(told) <= _MOST else ()


class _Reader:
    """Reads a pattern from left to right."""

    def __init__(self, pattern: str) -> None:
        self.parts = list(_PART.finditer(pattern))
        self.at = 0

    def alternatives(self) -> Needles | None:
        """Of parts between bars one each is needed; up to the bracket that closes them."""
        ways = [self._sequence()]
        while self._next() == "|":
            self.at += 1
            ways.append(self._sequence())
        self.at += 1
        return None if None in ways else frozenset().union(*(way for way in ways if way))

    def _sequence(self) -> Needles | None:
        """Of parts that follow each other those of the one that is told best: the longest words, then the fewest."""
        found: list[Needles] = []
        run = ""
        while self._next() not in {"|", ")", ""}:
            part = self.parts[self.at]
            one = self._one()
            often = self.parts[self.at]["often"] if self.at < len(self.parts) else None
            self.at += often is not None
            if often and often.startswith(_MAY_LACK):
                one = None
            if one and part["plain" if part["plain"] else "escaped"] and not often:
                run += next(iter(one))
                continue
            found += [frozenset((run,))] if run else []
            found += [one] if one else []
            run = ""
        found += [frozenset((run,))] if run else []
        return max(found, key=lambda one: (min(map(len, one)), -len(one)), default=None)

    def _next(self) -> str:
        return self.parts[self.at][0] if self.at < len(self.parts) else ""

    def _one(self) -> Needles | None:
        """The next part: a character, a class of few, or a group that has to match."""
        part = self.parts[self.at]
        self.at += 1
        if part["escaped"]:
            return frozenset(part["escaped"]) if not part["escaped"].isalnum() else None
        if part["class"] is not None:
            return None if part["not"] else _of_class(part["class"])
        if part[0].startswith("("):
            front = part["front"] or ""
            inside = self.alternatives()
            return inside if front in _MUST_MATCH or front.startswith("?P<") else None
        return None if part["plain"] in {".", "^", "$"} else frozenset(part["plain"] or "")


def _of_class(told: str) -> Needles | None:
    characters: set[str] = set()
    marks = re.findall(r"\\.|.", told, re.DOTALL)
    while marks:
        first = marks.pop(0)
        if first[0] == "\\" and first[1].isalnum():
            return None
        if marks[:1] == ["-"] and len(marks) > 1:
            characters |= {chr(code) for code in range(ord(first[-1]), ord(marks[1][-1]) + 1)}
            del marks[:2]
        else:
            characters.add(first[-1])
        if len(characters) > _WIDEST_CLASS:
            return None
    return frozenset(characters)
