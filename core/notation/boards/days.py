"""A text that names several days, as a pasted week does: `Mon 9th: ...`, `Tue 10th: ...`."""

from collections.abc import Iterator, Sequence
from itertools import accumulate, pairwise

from core.notation.boards.headings import day, days_in
from core.notation.text import Row, rows


def names_days(written: Sequence[Row]) -> bool:
    """Whether more than one day begins, in rows of their own or in one."""
    return sum(len(_starts(row)) for row in written) > 1


def where_a_day_ends(text: str) -> int:
    """Where the day ends that a row of a week begins with; 0 if there is none."""
    return day(text.lower(), bare=True)


def by_days(text: str) -> tuple[str, ...]:
    """The text of each day, what stands above the first with it; all of it where it names no two days."""
    starts = [*_places(text)]
    if len(starts) < 2:  # noqa: PLR2004 - of one day
        return (text,)
    return tuple(text[start:end].strip() for start, end in pairwise([0, *starts[1:], len(text)]))


def _places(text: str) -> Iterator[int]:
    """Where in the text each day begins."""
    typed = text.splitlines(keepends=True)
    ahead = accumulate((len(line) for line in typed), initial=0)
    for row, before in zip(rows(text), ahead, strict=False):
        yield from (before + row.column(start) - 1 for start in _starts(row))


def _starts(row: Row) -> list[int]:
    return days_in(row.text.lower()) or [0] * bool(where_a_day_ends(row.text))
