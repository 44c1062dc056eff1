"""`Undo`, `take that back`, `delete Jonas' score`: what was taken last goes, as its own button would do it."""

import re
from collections.abc import Sequence
from typing import Final

from core.athletes.values import Complaint
from core.desk.access import admitted
from core.desk.coached import athlete_in, coached_athletes, coached_groups, coached_ids
from core.desk.coaching.commands import (
    CallWeekEasy,
    HoldAthlete,
    LetGoHeavier,
    PutVolumeFirst,
    TakeOrdersBack,
    TakeScoresOff,
    WithdrawSession,
)
from core.desk.coaching.ordering import take_orders_back
from core.desk.commands import (
    BackToTime,
    Command,
    ForgetShown,
    LeaveScore,
    MarkScore,
    RestoreDraft,
    TakeScoreBack,
)
from core.desk.days import LOOKS_BACK, today_in
from core.desk.errors import AlreadyDone, UnknownThing
from core.desk.outcome import Outcome
from core.desk.profile.commands import ForgetWord
from core.desk.profile.weighing import keep_mass
from core.desk.scores.judging import mark_score
from core.desk.scores.put_right import in_its_part, take_score_back
from core.desk.scores.says import AskWhichGoes, AskWhichIsOff, NoSuchScore, OffTheBoard, ScoreLeft
from core.desk.scores.scoreboard import renew_board
from core.desk.scores.which import shown_since, told_day
from core.desk.sessions.meant import at_hand, of_day
from core.desk.talk.says import NothingToUndo
from core.desk.talk.scene import scene_of
from core.desk.versions.commands import AsUsual, FreeLine, UndoEquipment
from core.desk.versions.looking import show_again
from core.desk.visit import Visit
from core.notation.numbers import read_body_mass
from core.notation.people import find_name
from core.notation.scores.denials import denies, numbers_in, tells_weight
from core.notation.talk.undoing import ScoreGone, asks_to_undo, score_to_go, undoes_for
from core.scaling.values import Spot
from core.scores.values import Mark
from core.store.records import Membership, ScoreRecord, ScoreState, SessionRecord

_EACH: Final = re.compile(r"\b(?:both|all|scores)\b", re.IGNORECASE)

__all__ = ["as_undo", "asks_to_undo", "undoing"]

# What takes something back whatever stands beside it; the others are two ways of one thing, and take back only where
# they are all that their message offers.
UNDOES: Final = (
    LeaveScore,
    TakeScoreBack,
    ForgetShown,
    UndoEquipment,
    RestoreDraft,
    BackToTime,
    TakeOrdersBack,
    FreeLine,
    AsUsual,
)
TURNS: Final = (
    HoldAthlete,
    LetGoHeavier,
    PutVolumeFirst,
    CallWeekEasy,
    WithdrawSession,
    ForgetWord,
    MarkScore,
)


def undoing(offered: Sequence[Sequence[Command]]) -> Command | None:
    """What would take back the last thing that can be: of the messages said last, the lowest first."""
    for commands in offered:
        found = [one for one in commands if isinstance(one, UNDOES)]
        turns = [one for one in commands if isinstance(one, TURNS) and len(commands) == 1]
        if sum(isinstance(one, TakeScoreBack) for one in found) > 1:
            return None  # which of them is asked
        if found or turns:
            return (found or turns)[0]
    return None


async def as_undo(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """What no button of late takes back: the last line that was changed; else that there is nothing."""
    if asks_to_undo(text):
        done = (
            await which_goes(visit)
            or await undo_line(visit, text, replied_to)
            or await which_goes(visit, least=1)
        )
        return done or visit.told(NothingToUndo(coach=bool(await coached_groups(visit))))
    athletes = await coached_athletes(visit)
    ordered = undoes_for(text, tuple(athletes))
    if ordered is not None:
        return await undo_order(visit, athletes[ordered])
    denied = denies(text)
    if denied is not None and await visit.memberships():
        return await take_denied_back(visit, text, denied)
    gone = score_to_go(text, tuple(athletes))
    if gone is None or not await visit.memberships():
        return None
    if gone.person is not None:
        return await remove_of(visit, text, athletes[gone.person], numbers_in(gone.told))
    return await remove_own(visit, text, gone)


async def undo_order(visit: Visit, athlete: Membership) -> Outcome:
    """The newest of what the coach ordered for one athlete and still stands, as its button would take it back."""
    at = (athlete.group_id, athlete.person_id)
    found = [
        order
        for session in [None, *(one.id for one in await at_hand(visit))]
        for order in await visit.uow.orders.standing(*at, session)
    ]
    if not found:
        return visit.told(NothingToUndo(coach=True))
    last = max(found, key=lambda one: one.id)
    return await take_orders_back(visit, TakeOrdersBack(group=at[0], person=at[1], order=last.id))


async def take_denied_back(visit: Visit, text: str, denied: frozenset[str]) -> Outcome | None:
    """What was noted of it goes, or what is asked about it; where it is a weight of the body, it is kept as that.

    None of oneself where nothing like it is known: then it is no score either (`own_score`).
    """
    athletes = await coached_athletes(visit)
    named = find_name(text.replace("\u2019", "'"), tuple(athletes))
    if named is not None:
        return await deny_of(visit, athletes[named.name], denied)
    done = await drop_asked(visit, denied) or await deny_own(visit, denied)
    mass = read_body_mass(text) if tells_weight(text) else None
    weighed = await keep_mass(visit, await visit.profile(), mass, text)
    return (done or Outcome()) + (weighed or Outcome()) if done or weighed else None


async def drop_asked(visit: Visit, denied: frozenset[str]) -> Outcome | None:
    question = await visit.uow.questions.open_in(visit.chat)
    if (
        question is None
        or question.kind != "score"
        or not denied <= numbers_in(question.refs.get("text", ""))
    ):
        return None
    await visit.uow.questions.close(visit.chat)
    return visit.told(ScoreLeft())


async def deny_own(visit: Visit, denied: frozenset[str]) -> Outcome | None:
    for record in await shown_since(visit, LOOKS_BACK):
        found = [
            one for one in await counting(visit, record, visit.person.id) if denied <= numbers_in(one.text)
        ]
        if found:
            told = [await take_score_back(visit, TakeScoreBack(score=one.id)) for one in found]
            return sum(told, Outcome())
    return None


async def deny_of(visit: Visit, athlete: Membership, denied: frozenset[str]) -> Outcome:
    gone = await off_by_coach(visit, athlete, await at_hand(visit), denied)
    return gone or await drop_asked(visit, denied) or visit.told(NoSuchScore(athlete=athlete.person.name))


async def off_by_coach(
    visit: Visit,
    athlete: Membership,
    records: Sequence[SessionRecord],
    numbers: frozenset[str] = frozenset(),
    *,
    all_of_them: bool = False,
) -> Outcome | None:
    """Their last score among these that holds the numbers goes from the board, and stays known; which, is asked."""
    for record in records:
        scores = await counting(visit, record, athlete.person_id)
        found = [one for one in scores if numbers <= numbers_in(one.text)]
        if found and record.group_id == athlete.group_id:
            if len(found) > 1 and not all_of_them:
                return await which_is_off(visit, record, athlete, found)
            told = [await mark_score(visit, MarkScore(score=one.id, mark="not_counted")) for one in found]
            return sum(told, Outcome())
    return None


async def which_is_off(
    visit: Visit, record: SessionRecord, athlete: Membership, found: Sequence[ScoreRecord]
) -> Outcome:
    scores = tuple([await in_its_part(visit, record, one) for one in found])
    return visit.told(
        AskWhichIsOff(athlete=athlete.person.name, person=athlete.person_id, session=record.id, scores=scores)
    )


@admitted
async def take_scores_off(visit: Visit, command: TakeScoresOff) -> Outcome:
    record = await visit.uow.sessions.find(command.session, await coached_ids(visit))
    if record is None:
        raise UnknownThing
    athlete = await athlete_in(visit.uow, record.group_id, command.person)
    gone = await off_by_coach(visit, athlete, [record], all_of_them=True)
    if gone is None:
        raise AlreadyDone
    return gone + Outcome(settles=True)


async def which_goes(visit: Visit, *, least: int = 2) -> Outcome | None:
    """Where so many scores of one session were told, or pain today, which isn't right; None where nothing was."""
    week = await shown_since(visit, LOOKS_BACK)
    if not week:
        return None
    scores = await counting(visit, week[0], visit.person.id)
    pains = await told_today(visit, week[0].group_id)
    if len(scores) < least and not pains:
        return None
    parts = tuple([await in_its_part(visit, week[0], one) for one in scores])
    return visit.told(AskWhichGoes(scores=parts, pains=pains, group=week[0].group_id))


async def told_today(visit: Visit, group: int) -> tuple[Complaint, ...]:
    """What they said today that hurts."""
    today = today_in(await visit.group(group), visit.now)
    return tuple(one for one in (await visit.profile()).complaints if one.since == today)


async def undo_line(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    scene = await scene_of(visit, text, replied_to)
    if scene.record is None or scene.version is None:
        return None
    pins = await visit.uow.adjustments.standing(scene.record.id, visit.person.id)
    if not pins:
        return None
    spot = Spot(pins[0].block, pins[0].part, pins[0].line)
    await visit.uow.adjustments.undo(scene.record.id, visit.person.id, spot, visit.now)
    return await show_again(visit, scene.record.id, "undone")


async def remove_of(visit: Visit, text: str, athlete: Membership, numbers: frozenset[str]) -> Outcome:
    """Of the day that is named, else their last; with these numbers in it."""
    named = await of_day(visit, text)
    records = [named] if named else await at_hand(visit)
    gone = await off_by_coach(visit, athlete, records, numbers, all_of_them=bool(_EACH.search(text)))
    return gone or visit.told(NoSuchScore(athlete=athlete.person.name))


async def remove_own(visit: Visit, text: str, gone: ScoreGone) -> Outcome:
    week = await shown_since(visit, LOOKS_BACK)
    for record in await told_day(visit, text, week) or week:
        scores = await counting(visit, record, visit.person.id)
        if scores and gone.board:
            return await off_the_board(visit, record, scores)
        if scores:
            told = [await take_score_back(visit, TakeScoreBack(score=one.id)) for one in scores]
            return sum(told, Outcome())
    return visit.told(NoSuchScore())


async def counting(visit: Visit, record: SessionRecord, person: int) -> list[ScoreRecord]:
    scores = await visit.uow.scores.of_person(record.id, person)
    return [one for one in scores if one.state is ScoreState.COUNTS]


async def off_the_board(visit: Visit, record: SessionRecord, scores: Sequence[ScoreRecord]) -> Outcome:
    """They keep it, and so does their coach; nobody else reads it any more."""
    for one in scores:
        await visit.uow.scores.mark(one.id, Mark.NOT_COUNTED, visit.person.id, visit.now)
    return visit.told(OffTheBoard()) + await renew_board(visit, record)
