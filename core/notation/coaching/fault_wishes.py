"""What a coach wants of the notes that stand: `notes on Ilse`, `lift the note on Ilse`, `Bo's squats are fine now`."""

import re
from collections.abc import Iterable
from typing import Final

from core.movements.lookup import Catalogue
from core.notation.coaching.faults import find_movement
from core.notation.people import find_name
from core.notation.text import plain
from core.values import Value

_NOTES: Final = r"(?:technique |coaching )?(?:notes?|cues?|caps?)"
_LIFT: Final = re.compile(
    r"^(?:please )?(?:(?:can|could) you )?(?:lift|drop|end|remove|delete|clear|cancel|undo|erase"
    rf"|take (?:back|away|off)) (?P<all>all )?(?:the |my |of )*(?:@ )?(?P<what>.*?)\b{_NOTES}\b(?P<rest>.*)$",
    re.IGNORECASE,
)
_FINE: Final = re.compile(
    r"^@ (?P<what>.+?) (?:is|are|looks?|'s) (?:all |totally |perfectly |much |really |so )*(?:fine|good|ok|okay|great"
    r"|clean|safe|solid|better|perfect|right)(?: (?:now|again|by now|these days))+$"
    r"|^@ (?P<no>(?:doesn't|does not|don't|no longer|isn't|is no longer) .+?)(?: any ?more)?$",
    re.IGNORECASE,
)
_OVER: Final = re.compile(r"\b(?:any ?more|no longer)\b", re.IGNORECASE)
_LIST: Final = re.compile(
    rf"^(?:(?:show|list|see|give)(?: me)? )?(?:all )?(?:the |my |your )?{_NOTES}(?: (?:on|for|about|of) (?:@|them all"
    rf"|all|everyone|everybody))?$|^@ {_NOTES}$|^(?:what|which) {_NOTES} (?:are there|stand|does @ have|has @)$",
    re.IGNORECASE,
)


class LiftWish(Value):
    """`movement` None: none is named. `every`: all that stand."""

    name: str
    movement: str | None
    every: bool


def read_lift(text: str, names: Iterable[str], things: Catalogue) -> LiftWish | None:
    """Which note of whom is over; None where nothing is lifted, or of nobody known."""
    named = find_name(_said(text), names)
    if named is None or len(text) > 160 or "?" in text or "\n" in text.strip():  # noqa: PLR2004
        return None
    name, said = named
    asked = _LIFT.match(said)
    fine = None if asked else _FINE.match(said)
    if not asked and not fine:
        return None
    if fine and fine["no"] and not _OVER.search(said):
        return None
    found = find_movement(said.replace("@", " "), things)
    if fine and found is None:
        return None
    every = bool(asked and asked["all"])
    return LiftWish(name=name, movement=found.movement if found else None, every=every)


def asks_for_notes(text: str, names: Iterable[str]) -> str | None:
    """Whose notes are asked for; empty for everybody's; None where none are."""
    said = _said(text)
    if _LIST.match(said):
        return ""
    named = find_name(said, names)
    return named.name if named and _LIST.match(named.rest) else None


def _said(text: str) -> str:
    return plain(text.replace("\u2019", "'")).strip(" .!?")
