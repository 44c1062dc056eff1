"""A score that was taken is told anew, counts as written, or goes: what stands under its receipt."""

from core.desk.access import admitted
from core.desk.commands import ClaimAsWritten, FixScore, TakeScoreBack
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import Outcome
from core.desk.profile.abilities import unlearn
from core.desk.scores.claims import Claim
from core.desk.scores.says import AskScoreAgain, CountingScore, ScoreTakenBack
from core.desk.scores.scoreboard import renew_board
from core.desk.scores.taking import noted_as, part_named
from core.desk.visit import Visit
from core.scores.text import in_words
from core.scores.ways import likes
from core.store.records import ScoreRecord, ScoreState, SessionRecord, Told


@admitted
async def fix_score(visit: Visit, command: FixScore) -> Outcome:
    """Ask for the right score; what comes replaces the old one, which stays as history."""
    record = await own_score(visit, command.score)
    refs = {"session": record.session_id, "block": record.block, "athlete": record.person_id, "fixing": True}
    await visit.uow.questions.ask(visit.chat, "score", refs, visit.now)
    session = await visit.uow.sessions.find(record.session_id, await visit.group_ids())
    assert session is not None, "who is admitted belongs to its group"
    like = likes(session.session.blocks[record.block])[0]
    again = AskScoreAgain(title=session.session.title, day=session.day, like=like)
    return visit.told(again, session=record.session_id)


@admitted
async def claim_as_written(visit: Visit, command: ClaimAsWritten) -> Outcome:
    """A score without a version was done as written: the athlete's word counts."""
    return await count_as(visit, await own_score(visit, command.score), scaled=False)


async def count_as(visit: Visit, record: ScoreRecord, *, scaled: bool) -> Outcome:
    """The same score, in another list of the board."""
    session = await visit.uow.sessions.find(record.session_id, await visit.group_ids())
    assert session is not None, "who is admitted belongs to its group"
    words = await visit.uow.scores.words_of(record)
    pain = (await visit.uow.scores.pains_in(record.session_id)).get(record.id)
    kept = await visit.uow.scores.record(
        session_id=record.session_id,
        block=record.block,
        person_id=record.person_id,
        version_id=record.version_id,
        told=Told(record.text, None if words == record.text and pain is None else words),
        score=record.score.model_copy(update={"scaled": scaled, "pain": pain}),
        entered_by=visit.person.id,
        now=visit.now,
    )
    claim = Claim(session, visit.person, record.block)
    noted = await noted_as(visit, claim, kept, corrected=True)
    return noted + await renew_board(visit, session) + Outcome(settles=True)


@admitted
async def take_score_back(visit: Visit, command: TakeScoreBack) -> Outcome:
    record = await own_score(visit, command.score)
    await visit.uow.scores.withdraw(record.id)
    await unlearn(visit, record)
    session = await visit.uow.sessions.find(record.session_id, await visit.group_ids())
    assert session is not None, "who is admitted belongs to its group"
    gone = await in_its_part(visit, session, record)
    return (
        visit.told(ScoreTakenBack(text=gone.text, part=gone.part))
        + await renew_board(visit, session)
        + Outcome(settles=True)
    )


async def in_its_part(visit: Visit, session: SessionRecord, record: ScoreRecord) -> CountingScore:
    units = (await visit.group(session.group_id)).units
    text = in_words(record.score, units)
    return CountingScore(score_id=record.id, text=text, part=part_named(record.block, session))


async def own_score(visit: Visit, score_id: int) -> ScoreRecord:
    """A counting score of the visitor's own."""
    record = await visit.uow.scores.find(score_id, await visit.group_ids())
    if record is None or record.person_id != visit.person.id:
        raise UnknownThing
    if record.state is not ScoreState.COUNTS:
        raise StalePress
    return record
