"""Free text: a reply to something > the answer to the open question > a session or score > help."""

from collections.abc import Awaitable, Callable, Mapping
from dataclasses import replace
from typing import Any

from core.desk.access import admitted
from core.desk.classes.habits import tell_habit
from core.desk.classes.in_words import as_class_words
from core.desk.classes.setting_up import tell_class_again
from core.desk.classes.telling import as_class_put_right
from core.desk.coached import WhoIsMeant
from core.desk.coaching.announcing import as_word_to_all, as_word_to_one
from core.desk.coaching.asked_of import as_asked_of
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
from core.desk.joining.entry import CONSENT, ENTRY, SCREENING, ask_entry_again
from core.desk.joining.groups import ask_units, kept_for_later, read_units, set_units, tell_zone
from core.desk.outcome import Outcome
from core.desk.profile.furnishing import SET, as_equipment_change, tell_set
from core.desk.says import NotText
from core.desk.scores.bare_loads import SETTING_UP
from core.desk.scores.correcting import as_correction
from core.desk.scores.of_several import as_scores_of_several
from core.desk.scores.tolerating import as_tolerance
from core.desk.scores.which import WhichSession
from core.desk.scores.whose import as_score_in_company, as_score_of_somebody, own_score, tell_about_score
from core.desk.sessions.amending import DRAFT, LINE, as_amendment
from core.desk.sessions.drafting import as_draft_order
from core.desk.talk.acts import as_announced, as_clear_acts, as_one_act, as_other_matter, do_as_told
from core.desk.talk.alarm import SIGNS, as_way_out, raise_alarm, tell_signs_in_words
from core.desk.talk.asides import be_kind
from core.desk.talk.asked import ASKED_TWICE, KEPT_BY, OfScore, asked_in
from core.desk.talk.beside_answer import other_told, rest_beside
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
from core.desk.talk.not_got import nobody_lost, not_got
from core.desk.talk.only_asked import as_question
from core.desk.talk.ordered import as_of_some, as_order
from core.desk.talk.own_lines import as_own_line
from core.desk.talk.passing_on import as_for_coach, as_own_words
from core.desk.talk.pasted import as_pasted_session, as_session, as_unread_session
from core.desk.talk.privacy import as_privacy
from core.desk.talk.running import as_work_question
from core.desk.talk.says import GoOnLater
from core.desk.talk.scene import scene_of
from core.desk.talk.several import each_in_turn
from core.desk.talk.typed_meanwhile import (
    asks,
    is_age_asked_for,
    is_said_of_score,
    is_stale,
    only_asks,
    reads_as_score,
    score_before_entry,
)
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
from core.desk.versions.answers import ask_again, tell_answer, tell_weight
from core.desk.versions.holding import as_body_of_another, as_wish
from core.desk.versions.more import as_more
from core.desk.visit import Visit
from core.notation.body.limits import read_limits
from core.notation.scores.which_day import without_day
from core.notation.talk.chat import is_like_a_score
from core.store.records import OpenQuestion

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


async def as_asked(visit: Visit, text: str, session: int | None) -> Outcome | None:
    """Nothing of it is an answer to what is open, which is asked once more behind it."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is not None and (question.kind in ENTRY or question.kind in KEPT_BY["any_time"]):
        return None
    asked = await as_question(visit, text, session)
    if asked is None:
        return None
    return await then_still_open(visit, question, asked, asks=True) if question else asked


def beside(reading: Reading) -> Reading:
    """The reading; and what is open, and wasn't about that, is asked once more behind it."""

    async def read(visit: Visit, text: str, session: int | None) -> Outcome | None:
        question = await visit.uow.questions.open_in(visit.chat)
        outcome = await reading(visit, text, session)
        is_asked = "?" in text or asks(text)
        return (
            await then_still_open(visit, question, outcome, asks=is_asked)
            if outcome and question
            else outcome
        )

    return read


async def as_reply(visit: Visit, text: str, session: int | None) -> Outcome | None:
    """A score in reply to the session that a message of ours was about."""
    return await own_score(visit, text, session) if session and is_like_a_score(text) else None


async def as_answer(visit: Visit, text: str, session: int | None) -> Outcome | None:
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind == DOOR:
        return None
    asked = asked_in(question)
    if isinstance(asked, OfScore) and not is_said_of_score(asked, text, visit.person.id):
        return None
    beside = await more_than_answer(visit, question, text, session)
    if beside is not None:
        return beside
    other = await as_other_matter(visit, question, text, session)
    if other is None:
        return await answer(visit, question, text, session)
    # `No pain` is no number of push-ups, whatever it looks like.
    if other.says:
        return await then_still_open(visit, question, other, asks=only_asks(text, question))
    return await ask_again(visit, question.refs, "" if question.refs.get("again") else text)


async def more_than_answer(
    visit: Visit, question: OpenQuestion, text: str, session: int | None
) -> Outcome | None:
    """An answer with more beside it, or what is told of another movement or part than was asked for."""
    beside = await other_told(visit, question, text)
    if beside is not None:
        return await then_still_open(visit, question, beside, asks=True)
    rest = rest_beside(question, text)
    if rest is None:
        return None
    await visit.uow.questions.close(visit.chat)
    done = await understood(visit, rest, session)
    answered = await tell_answer(visit, question.refs, text)
    return done + answered if answered else None


async def then_still_open(
    visit: Visit, question: OpenQuestion, done: Outcome, *, asks: bool = False
) -> Outcome:
    """What was done, and the question once more behind it, where that didn't ask it anew.

    Whoever asks something is about to answer: it doesn't let go.
    """
    if question.kind == "score" and question.refs.get("athlete", visit.person.id) != visit.person.id:
        return done  # it can still be tapped, but nobody is asked twice about somebody else
    now_open = await visit.uow.questions.open_in(visit.chat)
    goes_on = asks and now_open == question and question.kind not in ASKED_BY_PEOPLE | ENTRY
    again = await open_again(visit) or Outcome() if goes_on else await still_open(visit, question)
    said = {type(one.what) for one in done.says}
    return done + replace(again, says=tuple(one for one in again.says if type(one.what) not in said))


async def still_open(visit: Visit, question: OpenQuestion) -> Outcome:
    """The question once more, unless what was done closed it or asked it anew; then it lets go.

    Consent and safety alone are asked until they are answered.
    """
    now_open = await visit.uow.questions.open_in(visit.chat)
    if now_open != question:
        return Outcome()
    entry = await ask_entry_again(visit)
    if entry is not None:
        return entry
    if question.refs.get(ASKED_TWICE):
        await visit.uow.questions.close(visit.chat)
        return visit.told(GoOnLater()) if question.kind in SETTING_UP else Outcome()
    again = await open_again(visit)
    now_open = await visit.uow.questions.open_in(visit.chat)
    if again is not None and now_open is not None:
        refs = {**now_open.refs, ASKED_TWICE: True}
        await visit.uow.questions.ask(visit.chat, now_open.kind, refs, visit.now)
    return again or Outcome()


async def as_score(visit: Visit, text: str, session: int | None) -> Outcome | None:
    return await own_score(visit, text, session) if is_like_a_score(without_day(text)) else None


@admitted
async def send_no_text(visit: Visit, command: SendNoText) -> Outcome:
    """Kindly; then the open question once more, as after an answer of no words."""
    told = visit.told(NotText(media=command.media))
    return told + (await open_again(visit) or Outcome())


@admitted
async def reach(visit: Visit, command: Reach) -> Outcome:
    """Blocked, nothing is sent to this chat until they write again; whoever comes back is asked what was open."""
    await visit.uow.chats.mark_reachable(visit.chat, command.yes, visit.now)
    return (await open_again(visit) or Outcome()) if command.yes else Outcome()


@admitted
async def come_back(visit: Visit, _: ComeBack) -> Outcome:
    """What was open is asked again: its answer, or the question itself, may never have arrived."""
    return await open_again(visit) or await show_help(visit, AskHelp())


async def open_again(visit: Visit) -> Outcome | None:
    """The open question once more; None where none is open that is the visitor's alone."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind in ASKED_BY_PEOPLE:
        return None
    if await is_stale(visit, question):
        await visit.uow.questions.close(visit.chat)
        return None
    return await answer(visit, question, "")


async def what_is_open(visit: Visit) -> Outcome | None:
    """The same, of the questions of the start in one line."""
    return await ask_entry_again(visit) or await open_again(visit)


async def answer(visit: Visit, question: OpenQuestion, text: str, session: int | None = None) -> Outcome:
    """What was typed as the answer; where it reads only as a score, as that; else the question once more."""
    if question.kind == "pain" and is_like_a_score(text) and read_limits(text).limits is None:
        told = await own_score(visit, text, session)
        if told is not None:
            return told
    bare = text.strip(" .,!").isdigit()
    if question.kind in ENTRY and is_like_a_score(text) and not bare and not is_age_asked_for(question, text):
        return await score_before_entry(visit, text)
    if question.kind in ANSWERS:
        return await ANSWERS[question.kind](visit, question.refs, text)
    taken = await tell_answer(visit, question.refs, text)
    if taken is not None:
        return taken
    # A bare number was meant as the answer, even where it is none.
    is_one = not bare and (is_like_a_score(text) or await reads_as_score(visit, text, session))
    scored = await own_score(visit, text, session) if is_one else None
    return scored or await as_no_answer(visit, question, text, session)


async def as_no_answer(visit: Visit, question: OpenQuestion, text: str, session: int | None) -> Outcome:
    """The question once more; a question of theirs that nobody here can answer goes to the coach, if they like."""
    if not asks(text):
        return await ask_again(visit, question.refs, text)
    asked = await not_got(visit, (text,), (), await scene_of(visit, text, session))
    return asked + await ask_again(visit, question.refs, "")


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
    return shown + (await what_is_open(visit) or Outcome())


# Whatever is typed is an answer to these, so words that are none would be passed on.
ASKED_BY_PEOPLE = frozenset({"coach", DOOR})


# In this order: what can't be mistaken first.
READINGS = (
    raise_alarm,
    as_minor,
    as_held_minor,
    as_one_meant,
    as_scores_of_several,
    BodyFirst(understood, what_is_open),
    each_in_turn(understood),
    each_clause(understood),
    beside(as_common_question),
    beside(as_work_question),
    beside(as_how),
    as_for_coach,
    as_own_words,
    as_announced,
    as_class_put_right,
    as_draft_order,
    beside(as_undo),
    as_leeway,
    as_wish,
    as_of_some,
    as_easy_week,
    as_asked_of,
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
    as_asked,
    as_equipment_change,
    as_elsewhere,
    as_easing,
    beside(as_named_effort),
    beside(as_complaint),
    as_stiffness,
    as_side,
    as_felt,
    as_all_told,
    as_over,
    as_correction,
    as_reply,
    as_answer,
    as_score,
    as_unread_session,
)
