"""Numbers from somebody who is being set up: a weight alone is asked about, and only a plain score is one."""

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
from core.desk.talk.asked import ASKED_FOR_VERSIONS
from core.desk.versions.answers import ask_again, units_typed
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.measures import MOST_KG, MassUnit, to_kg
from core.notation.numbers import read_body_mass
from core.notation.text import plain
from core.scaling.values import Ask
from core.store.records import SessionRecord

SETTING_UP: Final = ENTRY | ASKED_FOR_VERSIONS | {"weight"}
_BARE: Final = re.compile(
    r"^\W*(?:(?:it'?s|its|is|i|have|got|about|around|ca|only|just|my|me|am|i'?m)\W+)*(?P<load>[0-9]{1,3}(?:[.,][0-9]+)?)\s?"
    r"(?P<unit>kgs?|kilos?|kilograms?|lbs?|pounds?|#)\W*$"
)


_PLAIN: Final = re.compile(
    r"[0-9]\s?\+\s?[0-9]|(?<![0-9:])[0-9]{1,2}:[0-5][0-9]|[0-9]\s?(?:rounds?|rds?|k?cals?|calories)\b"
)
_THING: Final = re.compile(
    r"^\W*(?:(?:i have|i've|ive|got|just|only|my|an?|one|two|2|1|x|pair of)\W+)*[0-9]{1,3}"
    r"(?:[.,][0-9]+)?\s?(?:kgs?|kilos?|lbs?|pounds?)"
    r"\s(?:kettle ?bells?|kbs?|dumb ?bells?|dbs?|bar ?bells?|sand ?bags?|plates?|medicine balls?|med balls?)\W*$"
)
_FAR: Final = re.compile(r"[0-9]\s?(?:k|km|kms|m|mi|miles?|kilomet\w+)\b|\b(?:mile|marathon|best|pb|pr)\b")


async def as_bare_load(visit: Visit, record: SessionRecord, text: str) -> Outcome | None:
    """Of who is being set up; None for whatever says more."""
    told = _BARE.match(plain(text).lower())
    if told is None or not await visit.uow.consents.given(visit.person.id):
        return None
    units = units_typed(told["unit"]) or MassUnit.KG
    mass = to_kg(Decimal(told["load"].replace(",", ".")), units)
    if not 0 < mass <= MOST_KG:
        return None
    may_be_own = read_body_mass(text) is not None
    return visit.told(AskWhatWeighs(session=record.id, kg=mass, units=units, may_be_own=may_be_own))


async def is_set_up(visit: Visit, record: SessionRecord) -> bool:
    """Whether they are asked for their first version: a number is most likely an answer, or told of themselves."""
    question = await visit.uow.questions.open_in(visit.chat) if visit.private else None
    if question is None or question.kind not in SETTING_UP:
        return False
    return await visit.uow.versions.current(record.id, visit.person.id) is None


def is_a_thing(text: str) -> bool:
    """`24 kg kettlebell`: from somebody who never told what they have it is that, and no load of a lift."""
    return bool(_THING.match(plain(text).lower()))


def is_plain_score(text: str) -> bool:
    """`7+12`, `8:43`, `5 rounds`: nothing but a score is told so; not `5k in 24:10`, which is what somebody can do."""
    words = plain(text).lower()
    return bool(_PLAIN.search(words)) and not _FAR.search(words)


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
