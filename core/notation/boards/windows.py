"""Minutes of the clock in front of a row: `0-6 min: ...`, `6-12 min: ...` are parts one after the other."""

import re
from dataclasses import dataclass, replace

from core.measures import AmountUnit
from core.notation.boards.drafts import Draft
from core.notation.quantities import MINUTE_S
from core.sessions.values import Format

_CLOCK = re.compile(
    r"^[\W_]*(?:from\s)?(?P<word>(?:minutes?|mins?)\s)?(?P<start>[0-9]{1,2})(?P<colon>:00)?\s?(?:-|to|until)\s?"
    r"(?P<end>[0-9]{1,3})(?::00)?\s?(?P<unit>(?:minutes?|mins?)\b|')?\s{0,3}"
    r"(?::|-(?=\s)|=|$|(?=(?:an? )?(?:amrap|emom|for time|max|rest)\b))"
)


@dataclass(frozen=True, slots=True)
class Window:
    """From minute `start` to minute `end`; `said` is where the words for it end in their row."""

    start: int
    end: int
    said: int

    @property
    def minutes(self) -> int:
        return self.end - self.start


def window(text: str, after: Window | None) -> Window | None:
    """The window that a row begins with: the first starts at 0, each other not before the last is over.

    So `8-10 min: row` is a range where no clock is running. What goes on where the last is over needs no unit.
    """
    match = _CLOCK.match(text)
    if match is None:
        return None
    found = Window(int(match["start"]), int(match["end"]), match.end())
    goes_on = after is not None and found.start == after.end
    if not (match["word"] or match["unit"] or match["colon"] or goes_on):
        return None
    follows = found.start >= after.end if after else found.start == 0
    return found if follows and found.minutes > 0 else None


def settled(draft: Draft) -> Draft:
    """The part with what its minutes say: several counted lines go round, one without an amount fills them.

    What else a part may be is asked.
    """
    if "format" in draft.facts or draft.broken:
        return draft
    if "format" in draft.over_all:
        return replace(draft, facts=draft.over_all | draft.facts)
    pieces = [placed.piece for placed in draft.lines]
    counted = all(piece.amount and not piece.sets and not piece.most for piece in pieces)
    if len(pieces) > 1 and counted and not draft.facts.keys() & {"rounds", "scheme"}:
        return replace(draft, facts=draft.facts | {"format": Format.AMRAP})
    if draft.only and not draft.only.amount and not draft.only.most:
        filled = replace(draft.only, amount=draft.facts["minutes"] * MINUTE_S, unit=AmountUnit.SECONDS)
        facts = {name: value for name, value in draft.facts.items() if name != "minutes"}
        return replace(draft, facts=facts, lines=[draft.lines[0]._replace(piece=filled)])
    return draft
