"""`Sorry, 9:24`: whoever says themselves that the last score was a slip isn't asked whether they mean it."""

from core.athletes.values import Screening
from core.desk.outcome import Outcome
from core.desk.scores.claims import Claim
from core.desk.scores.put_right import count_as
from core.desk.scores.taking import claim_score
from core.desk.scores.which import session_scored
from core.desk.scores.whose import own_score, tell_about_score
from core.desk.talk.asked import OfScreening, asked_in, keeps
from core.desk.visit import Visit
from core.notation.scores.corrections import read_correction
from core.store.records import OpenQuestion, ScoreRecord, ScoreState


async def as_correction(visit: Visit, text: str, session: int | None) -> Outcome | None:
    """None where no score is put right, and where something else is asked."""
    words = read_correction(text)
    question = await visit.uow.questions.open_in(visit.chat) if words else None
    if words is None or await keeps(visit, "correction") or (question is not None and wants_an_age(question)):
        return None
    if question is not None and question.kind == "score":
        return await tell_about_score(visit, fixed(question), words)
    return await correct_score(visit, words, session)


def wants_an_age(question: OpenQuestion) -> bool:
    """Of the screening's questions the first is answered by a number."""
    asked = asked_in(question)
    return isinstance(asked, OfScreening) and not asked.answers


async def correct_score(visit: Visit, words: str, session: int | None) -> Outcome | None:
    """The score in place of the one that counts; the first one where none does."""
    record = await session_scored(visit, words, session)
    if record is None or not await has_scored_in(visit, record.id):
        return await own_score(visit, words, session)
    return await claim_score(visit, Claim(record, visit.person, fixing=True), words)


async def last_counting(visit: Visit, session: int | None) -> ScoreRecord | None:
    record = await session_scored(visit, "", session)
    scores = await visit.uow.scores.of_person(record.id, visit.person.id) if record else []
    return max(
        (one for one in scores if one.state is ScoreState.COUNTS), key=lambda one: one.id, default=None
    )


async def was_scaled(visit: Visit, session: int | None) -> Outcome | None:
    """Their word that it was less than written counts at once; None where it counts so already."""
    last = await last_counting(visit, session)
    return await count_as(visit, last, scaled=True) if last and not last.score.scaled else None


def fixed(question: OpenQuestion) -> dict[str, object]:
    return {**question.refs, "fixing": True}


async def has_scored_in(visit: Visit, session: int) -> bool:
    """Whether something of theirs counts there that may be put right; nobody does who must not train."""
    if (await visit.profile()).screening is Screening.STOP:
        return False
    scores = await visit.uow.scores.of_person(session, visit.person.id)
    return any(one.state is ScoreState.COUNTS for one in scores)
