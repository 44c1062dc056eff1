"""A weight and nothing more from somebody without a version: theirs, a thing's or a score, so it is asked."""

import re
from decimal import Decimal
from typing import Final

from core.desk.access import admitted
from core.desk.commands import MyVersion, ScoreThis, WeighThis
from core.desk.errors import UnknownThing
from core.desk.joining.entry import ENTRY, ask_entry_again
from core.desk.outcome import Outcome
from core.desk.profile.weighing import keep_mass
from core.desk.scores.claims import Claim
from core.desk.scores.says import AskWhatWeighs
from core.desk.scores.taking import claim_score
from core.desk.versions.answers import ask_again, units_typed
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.measures import MOST_KG, MassUnit, to_kg
from core.notation.numbers import read_body_mass
from core.notation.text import plain
from core.scaling.values import Ask
from core.store.records import SessionRecord

ASKED_FOR_VERSIONS: Final = frozenset(map(str, Ask))
SETTING_UP: Final = ENTRY | ASKED_FOR_VERSIONS | {"weight"}
_BARE: Final = re.compile(
    r"^\W*(?:(?:it'?s|its|is|i|have|got|about|around|ca|only|just|my|me|am|i'?m)\W+)*(?P<load>[0-9]{1,3}(?:[.,][0-9]+)?)\s?"
    r"(?P<unit>kgs?|kilos?|kilograms?|lbs?|pounds?|#)\W*$"
)


async def as_bare_load(visit: Visit, record: SessionRecord, text: str) -> Outcome | None:
    """None for whatever says more, and of who isn't being set up, or has their version: then it is what they lifted."""
    told = _BARE.match(plain(text).lower()) if visit.private else None
    if told is None or not await visit.uow.consents.given(visit.person.id):
        return None
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind not in SETTING_UP:
        return None
    if await visit.uow.versions.current(record.id, visit.person.id) is not None:
        return None
    units = units_typed(told["unit"]) or MassUnit.KG
    mass = to_kg(Decimal(told["load"].replace(",", ".")), units)
    if not 0 < mass <= MOST_KG:
        return None
    may_be_own = read_body_mass(text) is not None
    return visit.told(AskWhatWeighs(session=record.id, kg=mass, units=units, may_be_own=may_be_own))


@admitted
async def weigh_this(visit: Visit, command: WeighThis) -> Outcome:
    """Then what was open is asked once more; of their weight nobody need ask any more."""
    kept = await keep_mass(visit, await visit.profile(), command.kg, "")
    question = await visit.uow.questions.open_in(visit.chat)
    settled = (kept or Outcome()) + Outcome(settles=True)
    if question is None or question.kind not in ASKED_FOR_VERSIONS:
        return settled + (await ask_entry_again(visit) or Outcome())
    if question.kind == Ask.BODY_MASS and question.refs["session"] is not None:
        return settled + await my_version(visit, MyVersion(session=question.refs["session"]))
    return settled + await ask_again(visit, question.refs, "")


@admitted
async def score_this(visit: Visit, command: ScoreThis) -> Outcome:
    record = await visit.uow.sessions.find(command.session, await visit.group_ids())
    if record is None:
        raise UnknownThing
    return await claim_score(visit, Claim(record, visit.person), in_kg(command.kg)) + Outcome(settles=True)


def in_kg(mass: Decimal) -> str:
    return f"{mass} kg"
