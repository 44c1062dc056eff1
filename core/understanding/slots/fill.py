"""Act -> how its fields are filled. An act whose needed fields aren't told isn't taken: it fills to nothing."""

from collections.abc import Mapping
from typing import Final, cast

from pydantic import ValidationError

from core.understanding.acts import ACTS, AnyAct
from core.understanding.slots import body
from core.understanding.slots.fillers import asked, coached, told, wished
from core.understanding.slots.fillers.plain import Fields, Filler
from core.understanding.slots.stretch import Stretch

# Told of somebody else, these are nothing that the speaker tells of themselves.
_OF_ONESELF: Final = frozenset({"spares", "hurt", "condition", "sore", "sick", "weighs", "can", "scored"})
FILLERS: Final[Mapping[str, Filler]] = {**told.FILLERS, **asked.FILLERS, **wished.FILLERS, **coached.FILLERS}


def fill(act: str, stretch: Stretch) -> tuple[AnyAct, ...]:
    """The acts of this name that a stretch tells; none where what they need isn't there, or is beyond all bounds."""
    if (
        act in _OF_ONESELF
        and body.is_of_another(stretch)
        and not (act == "scored" and stretch.marks("person"))
    ):
        return ()
    try:
        filled = FILLERS.get(act, _as_it_is)(stretch)
        if filled is None:
            return ()
        several = [filled] if isinstance(filled, dict) else filled
        return tuple(
            cast("AnyAct", ACTS[fields.pop("act", act)](**{"text": stretch.said} | fields))
            for fields in several
        )
    except ValidationError:
        return ()


def _as_it_is(_: Stretch) -> Fields:
    return {}
