"""Several answers to one message, as one."""

from collections.abc import Sequence
from dataclasses import replace

from core.desk.outcome import Outcome, Say
from core.desk.talk.says import Together
from core.desk.visit import Visit
from core.store.records import Purpose


def as_one(visit: Visit, outcome: Outcome) -> Outcome:
    """All that is plainly answered to the visitor, as one message; a version with its buttons stands behind it."""
    own = [one for one in outcome.says if is_plain(visit, one)]
    others = tuple(one for one in outcome.says if one not in own)
    return replace(outcome, says=(*joined(visit, own), *others))


def joined(visit: Visit, own: Sequence[Say]) -> tuple[Say, ...]:
    """Several says as one, each thing once."""
    if len(own) < 2:  # noqa: PLR2004 - there is nothing to join
        return tuple(own)
    refs = {name: number for one in own for name, number in one.refs.items()}
    told = [one.what for one in own]
    parts = tuple(one for at, one in enumerate(told, 1) if one not in told[at:])
    return (Say(visit.chat, Together(parts=parts) if len(parts) > 1 else parts[0], refs=refs),)


def is_plain(visit: Visit, say: Say) -> bool:
    special = say.key or say.subject or say.edits or say.expires_after or say.what.stands_alone
    return say.to == visit.chat and say.purpose is Purpose.ANSWER and not special
