"""Who is meant by a name that several have, and which session by a score that several fit: asked, then heard anew."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any, Final, NamedTuple

from core.desk.coached import WhoIsMeant
from core.desk.coaching.says import AskWho, Namesake
from core.desk.commands import MeanMember, MeanSession
from core.desk.days import today_in, zone_of
from core.desk.errors import StalePress
from core.desk.outcome import Outcome
from core.desk.reference import likes
from core.desk.scores.says import AskWhichScore, SessionChoice
from core.desk.scores.which import WhichSession
from core.desk.sessions.meant import is_named_alone, unposted
from core.desk.visit import Visit
from core.notation.scores.which_day import day_told

# The kinds of open questions about what was typed: whom it means, and which session.
WHO: Final = "who"
WHICH: Final = "which"
WHICH_DRAFT: Final = "which_draft"


class Again(NamedTuple):
    """What was typed, to be heard as it was meant; `session`: as if it had been a reply to its post."""

    visit: Visit
    text: str
    session: int | None


async def ask_who(visit: Visit, text: str, session: int | None, unclear: WhoIsMeant) -> Outcome:
    among = [
        Namesake(
            member=one.id,
            name=one.person.name,
            since=one.joined_at.astimezone(zone_of(group)).date(),
            group=group.title,
        )
        for one in unclear.members
        for group in [await visit.group(one.group_id)]
    ]
    names = {one.name.casefold(): one.member for one in among}
    refs = {
        "text": text,
        "session": session,
        "name": unclear.name,
        "among": names,
        "message": visit.message_id,
    }
    await visit.uow.questions.ask(visit.chat, WHO, refs, visit.now)
    return visit.told(AskWho(name=unclear.name, among=tuple(among)))


async def member_tapped(visit: Visit, command: MeanMember) -> Again:
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != WHO or command.member not in question.refs["among"].values():
        raise StalePress
    return await of_them(visit, question.refs, command.member)


async def member_named(visit: Visit, text: str) -> Again | None:
    """By a name alone, which tells them apart; with one that doesn't, they could be taken to be looked at."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != WHO:
        return None
    name = text.strip(" .!").casefold()
    member = question.refs["among"].get(name)
    is_told_apart = member is not None and name != question.refs["name"].casefold()
    return await of_them(visit, question.refs, member) if is_told_apart else None


async def of_them(visit: Visit, refs: Mapping[str, Any], member: int) -> Again:
    await visit.uow.questions.close(visit.chat)
    meaning = replace(visit, meant={refs["name"].casefold(): member}, message_id=refs["message"])
    return Again(meaning, refs["text"], refs["session"])


async def ask_which(visit: Visit, text: str, unclear: WhichSession) -> Outcome:
    found = [await visit.uow.sessions.find(one, await visit.group_ids()) for one in unclear.sessions]
    records = [one for one in found if one is not None]
    several = len({one.group_id for one in records}) > 1
    choices = [
        SessionChoice(
            session=one.id,
            day=one.day,
            title=one.session.title,
            like=next((likes(block)[0] for block in one.session.blocks if block.scored), ""),
            group=(await visit.group(one.group_id)).title if several else None,
        )
        for one in records
    ]
    refs = {"text": text, "among": [*unclear.sessions], "message": visit.message_id}
    kind = WHICH_DRAFT if unclear.to_change else WHICH
    await visit.uow.questions.ask(visit.chat, kind, refs, visit.now)
    return visit.told(AskWhichScore(sessions=tuple(choices)))


async def session_tapped(visit: Visit, command: MeanSession) -> Again:
    question = await visit.uow.questions.open_in(visit.chat)
    if (
        question is None
        or question.kind not in {WHICH, WHICH_DRAFT}
        or command.session not in question.refs["among"]
    ):
        raise StalePress
    await visit.uow.questions.close(visit.chat)
    return about_it(visit, question.refs, command.session)


async def session_named(visit: Visit, refs: Mapping[str, Any], text: str) -> Again | None:
    """By the title of its group, its own or its day; the question is closed whatever was said."""
    await visit.uow.questions.close(visit.chat)
    for session in refs["among"]:
        record = await visit.uow.sessions.find(session, await visit.group_ids())
        group = await visit.group(record.group_id) if record else None
        if record is None or group is None:
            continue
        names = (group.title, record.session.title or "", f"{record.day:%A}")
        of_day = day_told(f"for {text}", today_in(group, visit.now)) == record.day
        if of_day or any(one and one.casefold() in text.casefold() for one in names):
            return about_it(visit, refs, session)
    return None


async def draft_named(visit: Visit, refs: Mapping[str, Any], text: str) -> Again | None:
    """By nothing but its day or its title; the question is closed whatever was said."""
    await visit.uow.questions.close(visit.chat)
    named = [one for one in await unposted(visit) if one.id in refs["among"]]
    meant = [one for one in named if await is_named_alone(visit, text, one)]
    return about_it(visit, refs, meant[0].id) if len(meant) == 1 else None


def about_it(visit: Visit, refs: Mapping[str, Any], session: int) -> Again:
    return Again(replace(visit, message_id=refs["message"]), refs["text"], session)
