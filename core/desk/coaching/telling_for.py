"""A coach tells of an athlete what only the athlete tells: it is offered to them, and nothing of it is kept."""

import re
from typing import Final

from core.desk.coached import coached_athletes
from core.desk.coaching.says import AskWord
from core.desk.outcome import Outcome
from core.desk.talk.understood import in_own_words, matter, understood
from core.desk.visit import Visit
from core.notation.people import behind_name
from core.store.records import Membership

# Of one's body, things and time only oneself has the say.
_THEIRS: Final = frozenset(
    {"has", "has_nothing", "got", "lost", "shares", "spares", "well_again", "condition", "weighs", "can"}
    | {"has_minutes", "elsewhere", "home_again", "sick", "hurt", "sore"}
)

_IS: Final = re.compile(r"^(?:is|'s)\s+", re.IGNORECASE)
# What somebody shall do is a coach's matter, whatever it sounds like.
_SHALL: Final = re.compile(
    r"(?:should|shall|must|needs?|has to|have to|gets?|takes?|does|do|only|max|no|not)\b", re.IGNORECASE
)


async def as_told_for(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Tam's got a 16 kg bell`; None where no athlete of theirs stands in front, or it is a coach's matter."""
    if "\n" in text.strip():
        return None
    athletes = await coached_athletes(visit)
    found = behind_name(text, tuple(athletes)) if athletes else None
    if found is None or not await is_only_theirs(visit, text, found.rest):
        return None
    return await offer_to_tell(visit, athletes[found.name], text)


async def offer_to_tell(visit: Visit, athlete: Membership, text: str) -> Outcome:
    """To be passed on to whom it is about, as nothing of it counts from anybody else."""
    word = await visit.uow.words.keep(
        group_id=athlete.group_id, person_id=visit.person.id, about="announce", text=text, now=visit.now
    )
    name = athlete.person.name
    return visit.told(AskWord(word=word.id, person=athlete.person_id, athlete=name, text=text, theirs=True))


async def is_only_theirs(visit: Visit, text: str, rest: str) -> bool:
    """What it would tell if the athlete wrote it of themselves, and nothing of a coach's that isn't a score.

    `Tam got a 16 kg bell` looks like a score in kilos; what somebody ran is one, whatever else they can.
    """
    if _SHALL.match(rest):
        return False
    of_coach = {act.act for act in matter(await understood(visit, text))}
    of_athlete = {act.act for act in matter(in_own_words(f"i {_IS.sub('am ', rest)}"))}
    theirs = _THEIRS - {"can"} if of_coach else _THEIRS
    return bool(of_athlete) and of_athlete <= theirs and of_coach <= {"scored"}
