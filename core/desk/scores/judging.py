"""The coach's side of scores: look at one with its history, decide what counts."""

from core.desk.access import admitted
from core.desk.coached import coached_ids, names_in
from core.desk.commands import LookAtScore, MarkScore, SeeScores
from core.desk.days import clock_of
from core.desk.errors import NotTheCoach, UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.profile.abilities import unlearn
from core.desk.scores.says import JudgeScores, NoScoresYet, ScoreCard, ScoreJudged
from core.desk.scores.scoreboard import renew_board
from core.desk.versions.says import AskWhichGroup, NothingPosted
from core.desk.versions.version import of_several_groups, session_meant
from core.desk.visit import Visit
from core.scores.text import in_words
from core.scores.values import Mark
from core.store.records import ScoreRecord, ScoreState, SessionRecord


@admitted
async def see_scores(visit: Visit, command: SeeScores) -> Outcome:
    several = await of_several_groups(visit) if command.session is None else []
    if several:
        return visit.told(AskWhichGroup(sessions=tuple(several), then="scores"))
    record = await session_meant(visit, command.session)
    if record is None:
        return visit.told(NothingPosted())
    if record.group_id not in await coached_ids(visit):
        raise NotTheCoach
    standing = await visit.uow.scores.standing_in(record.id)
    if not standing:
        return visit.told(NoScoresYet())
    units, names = (await visit.group(record.group_id)).units, await names_in(visit.uow, record.group_id)
    scores = tuple(
        (one.id, f"{names.get(one.person_id, name)}: {in_words(one.score, units)}") for name, one in standing
    )
    return visit.told(JudgeScores(group=record.group_id, title=record.session.title, scores=scores))


@admitted
async def look_at_score(visit: Visit, command: LookAtScore) -> Outcome:
    score, record = await score_to_judge(visit, command.score)
    return visit.told(await card_of(visit, score, record))


@admitted
async def mark_score(visit: Visit, command: MarkScore) -> Outcome:
    """Keep the decision with its history; the athlete hears of what counts, the board follows."""
    score, record = await score_to_judge(visit, command.score)
    mark = Mark(command.mark)
    await visit.uow.scores.mark(score.id, mark, visit.person.id, visit.now)
    told = Outcome(settles=True)
    if mark is Mark.NOT_COUNTED:
        await unlearn(visit, score)
    if mark is not Mark.CHECKED:
        told += await tell_athlete(visit, score, record, counts=mark is Mark.COUNTS_AGAIN)
        told += await renew_board(visit, record)
    changed, _ = await score_to_judge(visit, command.score)
    return visit.told(await card_of(visit, changed, record)) + told


async def tell_athlete(visit: Visit, score: ScoreRecord, record: SessionRecord, *, counts: bool) -> Outcome:
    chat = await visit.uow.chats.private_of(score.person_id)
    if chat is None:
        return Outcome()
    group = await visit.group(record.group_id)
    judged = ScoreJudged(text=in_words(score.score, group.units), by=visit.person.name, counts=counts)
    return Outcome((Say(chat.id, judged, refs={"session": score.session_id}),))


async def card_of(visit: Visit, score: ScoreRecord, record: SessionRecord) -> ScoreCard:
    group = await visit.group(record.group_id)
    clock = await clock_of(visit.uow, visit.person.id, group)
    athlete = await visit.uow.people.get(score.person_id)
    names = await names_in(visit.uow, record.group_id)
    by = await visit.uow.people.get(score.entered_by)
    earlier = await visit.uow.scores.of_person(record.id, score.person_id)
    markings = await visit.uow.scores.markings(score.id)
    return ScoreCard(
        score_id=score.id,
        name=names.get(score.person_id, athlete.name if athlete else ""),
        text=in_words(score.score, group.units),
        typed=score.text,
        by=by.name if by else "",
        counts=score.state is ScoreState.COUNTS,
        earlier=tuple(one.text for one in earlier if one.id < score.id and one.block == score.block),
        markings=tuple((one.mark, one.by, one.at.astimezone(clock)) for one in markings),
    )


async def score_to_judge(visit: Visit, score_id: int) -> tuple[ScoreRecord, SessionRecord]:
    groups = await coached_ids(visit)
    score = await visit.uow.scores.find(score_id, groups)
    record = await visit.uow.sessions.find(score.session_id, groups) if score else None
    if score is None or record is None:
        raise UnknownThing
    return score, record
