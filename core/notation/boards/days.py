"""A text that names several days, as a pasted week does: `Mon 9th: ...`, `Tue 10th: ...`."""

from collections.abc import Sequence

from core.notation.boards.headings import day
from core.notation.text import Row, rows


def names_days(written: Sequence[Row]) -> bool:
    """Whether more than one row begins with a day."""
    return sum(begins_a_day(row) for row in written) > 1


def begins_a_day(row: Row) -> bool:
    return day(row.text.lower(), bare=True) > 0


def by_days(text: str) -> tuple[str, ...]:
    """The text of each day, what stands above the first with it; all of it where it names no two days."""
    every = rows(text)
    typed = text.splitlines()
    starts = [row.number - 1 for row in every if begins_a_day(row)]
    if len(starts) < 2:  # noqa: PLR2004 - of one day
        return (text,)
    ends = [*starts[1:], len(typed)]
    return tuple(
        "\n".join(typed[start:end]).strip() for start, end in zip([0, *starts[1:]], ends, strict=True)
    )
