"""Free text: a reply to something > the answer to the open question > a session or score > help."""

from collections.abc import Awaitable, Callable, Mapping
from typing import Any, Final

from core.desk.access import admitted
from core.desk.classes.habits import tell_habit
from core.desk.classes.in_words import as_class_words
from core.desk.classes.setting_up import tell_class_again
from core.desk.classes.telling import as_class_put_right
from core.desk.coached import WhoIsMeant
from core.desk.coaching.announcing import as_word_to_all, as_word_to_one
from core.desk.coaching.asked_of import as_asked_of
from core.desk.coaching.in_force import as_in_force
from core.desk.coaching.leeway import as_leeway
from core.desk.coaching.noting import WORDS, tell_fault_words
from core.desk.coaching.overseeing import answer_coach
from core.desk.coaching.pinging import as_ping
from core.desk.coaching.telling_for import as_told_for
from core.desk.commands import (
    AskHelp,
    ComeBack,
    MeanMember,
    MeanSession,
    Reach,
    SendNoText,
    SetUnits,
    Tell,
)
from core.desk.joining.door import DOOR
from core.desk.joining.entering import (
    as_held_minor,
    as_minor,
    as_put_right,
    tell_consent,
    tell_screening,
)
from core.desk.joining.entry import CONSENT, SCREENING
from core.desk.joining.groups import ask_units, kept_for_later, read_units, set_units, tell_zone
from core.desk.outcome import Outcome
from core.desk.profile.furnishing import SET, as_equipment_change, tell_set
from core.desk.says import NotText
from core.desk.scores.correcting import as_correction
from core.desk.scores.of_several import as_scores_of_several
from core.desk.scores.tolerating import as_tolerance
from core.desk.scores.which import WhichSession
from core.desk.scores.whose import as_score_in_company, as_score_of_somebody, own_score, tell_about_score
from core.desk.sessions.amending import DRAFT, LINE, as_amendment
from core.desk.sessions.drafting import as_draft_order
from core.desk.talk.acts import as_announced, as_clear_acts, as_one_act, do_as_told
from core.desk.talk.alarm import SIGNS, as_way_out, raise_alarm, tell_signs_in_words
from core.desk.talk.asides import be_kind
from core.desk.talk.body_first import BodyFirst
from core.desk.talk.commonly_asked import as_common_question, as_how
from core.desk.talk.each_clause import each_clause
from core.desk.talk.helping import show_help
from core.desk.talk.in_group import session_replied_to
from core.desk.talk.meant import (
    WHICH,
    WHICH_DRAFT,
    WHO,
    ask_which,
    ask_who,
    draft_named,
    member_named,
    member_tapped,
    session_named,
    session_tapped,
)
from core.desk.talk.not_got import nobody_lost
from core.desk.talk.open_one import OpenOne
from core.desk.talk.ordered import as_of_some, as_order
from core.desk.talk.own_lines import as_own_line
from core.desk.talk.passing_on import as_for_coach, as_own_words
from core.desk.talk.pasted import as_pasted_session, as_session, as_unread_session
from core.desk.talk.privacy import as_privacy, in_secret
from core.desk.talk.running import as_work_question
from core.desk.talk.several import each_in_turn
from core.desk.talk.undoing import as_undo
from core.desk.today.breaks import BREAK
from core.desk.today.easing import as_easing, tell_break
from core.desk.today.easy_weeks import as_easy_week
from core.desk.today.elsewhere import as_elsewhere
from core.desk.today.felt import as_all_told, as_felt, as_named_effort
from core.desk.today.minutes_of_days import as_minutes_of_days
from core.desk.today.pain import as_complaint, as_over, as_stiffness
from core.desk.today.reports import tell_where
from core.desk.today.sides import as_side
from core.desk.today.unwell import as_unwell
from core.desk.versions.answers import tell_weight
from core.desk.versions.holding import as_body_of_another, as_wish
from core.desk.versions.more import as_more
from core.desk.visit import Visit
from core.notation.scores.which_day import without_day
from core.notation.talk.chat import is_like_a_score

Reading = Callable[[Visit, str, int | None], Awaitable[Outcome | None]]


@admitted
async def tell(visit: Visit, command: Tell) -> Outcome:
    """What may be about several people or groups is asked first; nothing is decided by a guess."""
    session = await session_replied_to(visit, command.reply_to, await visit.group_ids())
    try:
        return await nobody_lost(visit, command.text, await understood(visit, command.text, session))
    except WhoIsMeant as unclear:
        return await ask_who(visit, command.text, session, unclear)
    except WhichSession as unclear:
        return await ask_which(visit, command.text, unclear)


async def understood(visit: Visit, text: str, session: int | None) -> Outcome:
    """The first reading that fits decides; what nobody can read gets help."""
    for reading in READINGS:
        outcome = await reading(visit, text, session)
        if outcome is not None:
            return outcome
    return await be_kind(visit, text) or await do_as_told(visit, text, session)


@admitted
async def mean_member(visit: Visit, command: MeanMember) -> Outcome:
    """What was typed, of this one."""
    return await understood(*await member_tapped(visit, command)) + Outcome(settles=True)


@admitted
async def mean_session(visit: Visit, command: MeanSession) -> Outcome:
    """What was typed is about that session, as if it had been a reply to its post."""
    return await understood(*await session_tapped(visit, command)) + Outcome(settles=True)


async def as_one_meant(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """By name, where it was asked who is meant."""
    again = await member_named(visit, text)
    return await understood(*again) if again else None


async def tell_otherwise(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """It was no answer, so it is another matter; no words at all, and it is asked once more."""
    await visit.uow.questions.close(visit.chat)
    return await tell(visit, Tell(text=text or refs["text"]))


async def tell_which(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """The session that was named; anything else is another matter."""
    again = await session_named(visit, refs, text)
    return await understood(*again) if again else await tell_otherwise(visit, refs, text)


async def tell_which_draft(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """The same of what isn't posted yet."""
    again = await draft_named(visit, refs, text)
    return await understood(*again) if again else await tell_otherwise(visit, refs, text)


async def as_reply(visit: Visit, text: str, session: int | None) -> Outcome | None:
    """A score in reply to the session that a message of ours was about."""
    return await own_score(visit, text, session) if session and is_like_a_score(text) else None


async def as_score(visit: Visit, text: str, session: int | None) -> Outcome | None:
    return await own_score(visit, text, session) if is_like_a_score(without_day(text)) else None


@admitted
async def send_no_text(visit: Visit, command: SendNoText) -> Outcome:
    """Kindly; then the open question once more, as after an answer of no words."""
    told = visit.told(NotText(media=command.media))
    return told + (await OPEN.open_again(visit) or Outcome())


@admitted
async def reach(visit: Visit, command: Reach) -> Outcome:
    """Blocked, nothing is sent to this chat until they write again; whoever comes back is asked what was open."""
    await visit.uow.chats.mark_reachable(visit.chat, command.yes, visit.now)
    return (await OPEN.open_again(visit) or Outcome()) if command.yes else Outcome()


@admitted
async def come_back(visit: Visit, _: ComeBack) -> Outcome:
    """What was open is asked again: its answer, or the question itself, may never have arrived."""
    return await OPEN.open_again(visit) or await show_help(visit, AskHelp())


@admitted
async def set_units_and_go_on(visit: Visit, command: SetUnits) -> Outcome:
    """The set-up is done: what was written meanwhile is heard now."""
    later = await kept_for_later(visit)
    ready = await set_units(visit, command)
    return ready + (
        await understood(visit, later, None) if later and not await still_asked(visit) else Outcome()
    )


async def still_asked(visit: Visit) -> bool:
    return await visit.uow.questions.open_in(visit.chat) is not None


async def tell_units_and_go_on(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    units = read_units(text)
    if units is None:
        return await ask_units(visit, await visit.group(refs["group"]))
    return await set_units_and_go_on(visit, SetUnits(group=refs["group"], units=units))


# Who takes what is typed while a question is open; the questions of a session are all taken by `tell_answer`.
ANSWERS: Mapping[str, Callable[[Visit, Mapping[str, Any], str], Awaitable[Outcome]]] = {
    CONSENT: tell_consent,
    DOOR: tell_otherwise,
    SCREENING: tell_screening,
    SIGNS: tell_signs_in_words,
    WHO: tell_otherwise,
    WHICH: tell_which,
    WHICH_DRAFT: tell_which_draft,
    LINE: tell_otherwise,
    DRAFT: tell_otherwise,
    "zone": tell_zone,
    "units": tell_units_and_go_on,
    "score": tell_about_score,
    "weight": tell_weight,
    "pain": tell_where,
    "coach": answer_coach,
    WORDS: tell_fault_words,
    SET: tell_set,
    "class": tell_class_again,
    "lead": tell_habit,
    "quiet": tell_habit,
    "own_zone": tell_habit,
    BREAK: tell_break,
    "digest": tell_habit,
}


@admitted
async def ask_help(visit: Visit, command: AskHelp) -> Outcome:
    """Then what is open is asked again, so that it stands last."""
    shown = await show_help(visit, command)
    if command.more:
        return shown
    return shown + (await OPEN.what_is_open(visit) or Outcome())


OPEN: Final = OpenOne(understood, ANSWERS)


# In this order: what can't be mistaken first.
READINGS = (
    raise_alarm,
    as_minor,
    as_held_minor,
    as_one_meant,
    as_scores_of_several,
    BodyFirst(understood, OPEN.what_is_open),
    each_in_turn(understood),
    in_secret(understood),
    each_clause(understood),
    OPEN.beside(as_common_question),
    OPEN.beside(as_work_question),
    OPEN.beside(as_how),
    as_for_coach,
    as_own_words,
    as_announced,
    as_class_put_right,
    as_draft_order,
    OPEN.beside(as_undo),
    as_leeway,
    as_asked_of,
    as_wish,
    as_of_some,
    as_easy_week,
    as_in_force,
    as_order,
    as_minutes_of_days,
    as_unwell,
    as_score_in_company,
    as_own_line,
    as_amendment,
    as_ping,
    as_word_to_all,
    as_word_to_one,
    as_told_for,
    as_clear_acts,
    as_one_act,
    as_session,
    as_pasted_session,
    as_score_of_somebody,
    as_body_of_another,
    as_tolerance,
    as_class_words,
    as_privacy,
    as_more,
    as_put_right,
    as_way_out,
    OPEN.as_asked,
    as_equipment_change,
    as_elsewhere,
    as_easing,
    OPEN.beside(as_named_effort),
    OPEN.beside(as_complaint),
    as_stiffness,
    as_side,
    as_felt,
    as_all_told,
    as_over,
    as_correction,
    as_reply,
    OPEN.as_answer,
    as_score,
    as_unread_session,
)
