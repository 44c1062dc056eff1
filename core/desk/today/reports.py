"""How a session felt: effort, and whether anything hurt. Sore muscles are not pain, so it asks which."""

from collections.abc import Mapping, Sequence
from typing import Any

from core.desk.access import admitted
from core.desk.commands import AllTold, RateEffort, TellHurt
from core.desk.days import today_in
from core.desk.outcome import Outcome, Say
from core.desk.scores.scoreboard import parts_left
from core.desk.today.pain import joints, spared, tell_pain
from core.desk.today.says import (
    AskEffort,
    AskHurt,
    AskPart,
    AskWhere,
    EffortNoted,
    HurtNoted,
    NothingSpared,
)
from core.desk.versions.answers import keep
from core.desk.versions.more import offer_more
from core.desk.versions.says import Understood
from core.desk.versions.version import session_meant
from core.desk.visit import Visit
from core.notation.body.complaints import ToldPain
from core.notation.body.healing import injured
from core.notation.body.limits import read_limits
from core.notation.body.sides import read_sides
from core.notation.part_places import place_of
from core.scores.values import Hurt
from core.store.records import Group, SessionRecord


async def ask_how_it_felt(visit: Visit, record: SessionRecord, pain: str | None) -> Outcome:
    """Once per session, after the score; pain that was mentioned with it comes first."""
    if await visit.uow.chats.private_of(visit.person.id) is None:
        return Outcome()
    if pain is not None and not await visit.uow.consents.given(visit.person.id):
        return visit.told(HurtNoted(hurt=Hurt.PAIN))
    if pain is not None:
        return await take_up_pain(visit, record, pain)
    return await ask_effort(visit, record)


async def take_up_pain(visit: Visit, record: SessionRecord, pain: str) -> Outcome:
    """A joint that was named is spared at once; where none was, it is asked."""
    if not await visit.uow.consents.given(visit.person.id):
        return visit.told(HurtNoted(hurt=Hurt.PAIN))
    await visit.uow.reports.tell(record.id, visit.person.id, visit.now, hurt=Hurt.PAIN)
    hurting = tuple(one for one in read_limits(pain).limits or () if one in joints())
    if not hurting:
        return await ask_where(visit, record.id)
    group = await visit.group(record.group_id)
    if await is_told_today(visit, group, hurting):
        return await ask_effort(visit, record)
    told = ToldPain("hurts", hurting, read_sides(pain))
    spared_now = await tell_pain(visit, told, pain, group, comforted=True)
    return spared_now + await ask_effort(visit, record)


async def pain_beside(visit: Visit, record: SessionRecord, text: str) -> Outcome:
    """What hurts waits for no answer about the score it is told with."""
    group, hurting = await visit.group(record.group_id), injured(text)
    if not hurting or await is_told_today(visit, group, hurting):
        return Outcome()
    return await tell_pain(visit, ToldPain("hurts", hurting, read_sides(text)), text, group)


async def is_told_today(visit: Visit, group: Group, hurting: Sequence[str]) -> bool:
    """Whether they were asked about the score meanwhile, and what hurts is noted already."""
    today = today_in(group, visit.now)
    return {*hurting} <= {one.limit for one in (await visit.profile()).complaints if one.since == today}


async def ask_effort(visit: Visit, record: SessionRecord) -> Outcome:
    """After the last part that is scored; before it, what is told of that part is asked."""
    left = await parts_left(visit, record, visit.person.id)
    if left:
        return ask_part(visit, record, left[0])
    report = await visit.uow.reports.of(record.id, visit.person.id)
    is_told = report is not None and report.effort is not None
    return Outcome() if is_told else ask_effort_once(visit, record)


def ask_part(visit: Visit, record: SessionRecord, block: int) -> Outcome:
    asked = AskPart(
        session=record.id, written=record.session, block=block + 1, part=place_of(block, record.session)
    )
    key = f"part:{record.id}:{visit.person.id}:{block}"
    return Outcome((Say(visit.chat, asked, key=key, refs={"session": record.id}),))


def ask_effort_once(visit: Visit, record: SessionRecord) -> Outcome:
    asked = AskEffort(session=record.id)
    return Outcome((Say(visit.chat, asked, key=effort_key(visit, record), refs={"session": record.id}),))


def effort_key(visit: Visit, record: SessionRecord) -> str:
    """The key of the one letter that asks the visitor how hard the session was."""
    return f"effort:{record.id}:{visit.person.id}"


@admitted
async def all_told(visit: Visit, command: AllTold) -> Outcome:
    """Nothing more to score, so the whole is behind them."""
    record = await session_meant(visit, command.session)
    assert record is not None, "a session that is named is found or refused"
    report = await visit.uow.reports.of(record.id, visit.person.id)
    rated = report is not None and report.effort is not None
    return (Outcome() if rated else ask_effort_once(visit, record)) + Outcome(settles=True)


@admitted
async def rate_effort(visit: Visit, command: RateEffort) -> Outcome:
    report = await visit.uow.reports.tell(command.session, visit.person.id, visit.now, effort=command.effort)
    if report.hurt is not None:
        noted = visit.told(EffortNoted(effort=command.effort))
        return noted + await offer_more(visit) + Outcome(settles=True)
    return visit.told(AskHurt(session=command.session)) + Outcome(settles=True)


@admitted
async def tell_hurt(visit: Visit, command: TellHurt) -> Outcome:
    """What hurts is kept only after consent: before it, the answer is for the athlete alone."""
    hurt = Hurt(command.hurt)
    consented = await visit.uow.consents.given(visit.person.id)
    if consented or hurt is Hurt.NO:
        await visit.uow.reports.tell(command.session, visit.person.id, visit.now, hurt=hurt)
    if hurt is Hurt.PAIN and consented:
        return await ask_where(visit, command.session) + Outcome(settles=True)
    more = await offer_more(visit) if hurt is not Hurt.PAIN else Outcome()
    return visit.told(HurtNoted(hurt=hurt)) + more + Outcome(settles=True)


async def ask_where(visit: Visit, session_id: int | None) -> Outcome:
    await visit.uow.questions.ask(visit.chat, "pain", {"session": session_id}, visit.now)
    return visit.told(AskWhere(session=session_id))


async def tell_where(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """What hurts is spared from now on, beside what is spared already; asked again where it can't be read."""
    read = read_limits(text)
    if read.limits is None:
        return await ask_where(visit, refs["session"])
    if not read.limits:
        await visit.uow.questions.close(visit.chat)
        return visit.told(NothingSpared())
    record = await session_meant(visit, refs["session"])
    group = await visit.group(record.group_id if record else (await visit.memberships())[0].group_id)
    facts, wishes = spared(await visit.profile(), visit.person.id, read.limits, text, group, visit.now)
    sides = tuple(read_sides(text).items())
    understood = Understood(limits=read.limits, sides=sides, unread=read.not_understood)
    return await keep(visit, None, understood, **facts) + Outcome(due=wishes)
