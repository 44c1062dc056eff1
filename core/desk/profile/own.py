"""Everybody can take along and erase what is theirs, and says who sees what they spare."""

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from core.athletes.values import Evidence
from core.desk.access import admitted
from core.desk.coached import coached_groups
from core.desk.days import today_in
from core.desk.outcome import DueWish, Outcome
from core.desk.profile.commands import EraseMe, ExportMine, ForgetMe, KeepMe, ShareLimits
from core.desk.profile.says import AskForget, Forgotten, LimitsShared, Mine, NothingForgotten
from core.desk.scores.scoreboard import renew_board
from core.desk.versions.says import Sharing
from core.desk.visit import Visit
from core.store.unit import Unit

CLOSE_CHAT = "close_chat"

# So long a goodbye may take to reach somebody; their chat's number is kept for it, and nothing else.
GOODBYE = timedelta(days=1)


@admitted
async def export_mine(visit: Visit, _: ExportMine) -> Outcome:
    """Everything as one document, for their eyes only."""
    stored = await visit.uow.personal.everything(visit.person.id)
    memberships = await visit.memberships()
    here = await visit.group(memberships[0].group_id) if memberships else None
    day = today_in(here, visit.now) if here else visit.now.date()
    return visit.told(Mine(on=day, stored=stored))


@admitted
async def forget_me(visit: Visit, _: ForgetMe) -> Outcome:
    return visit.told(AskForget(coach=bool(await coached_groups(visit))))


@admitted
async def keep_me(visit: Visit, _: KeepMe) -> Outcome:
    return visit.told(NothingForgotten()) + Outcome(settles=True)


@admitted
async def erase_me(visit: Visit, _: EraseMe) -> Outcome:
    """Let go of everything at once; the scoreboards go on without them."""
    sessions = await visit.uow.personal.sessions_scored(visit.person.id)
    await visit.uow.personal.erase(visit.person.id)
    renewed = Outcome()
    for session_id in sessions:
        record = await visit.uow.sessions.get(session_id)
        if record is not None:
            renewed += await renew_board(visit, record)
    at = visit.now + GOODBYE
    close = DueWish(
        key=f"close:{visit.chat}:{int(at.timestamp())}", kind=CLOSE_CHAT, at=at, refs={"chat": visit.chat}
    )
    return visit.told(Forgotten()) + renewed + Outcome(due=(close,), settles=True)


@admitted
async def share_limits(visit: Visit, command: ShareLimits) -> Outcome:
    """With the coaches of one group; it can be taken back at any time."""
    await visit.must_consent()
    await visit.uow.groups.share_limits(visit.person.id, command.group, yes=command.yes)
    visit.changed()
    if not command.yes:
        await visit.uow.words.hold_back(visit.person.id, command.group)
    shared = LimitsShared(yes=command.yes, group=await visit.title_of(command.group))
    return visit.told(shared) + Outcome(settles=True)


async def sharing_of(visit: Visit) -> tuple[Sharing, ...]:
    """Group by group, who may see what the visitor spares."""
    return tuple(
        [
            Sharing(group=one.group_id, title=(await visit.group(one.group_id)).title, yes=one.shares_limits)
            for one in await visit.memberships()
        ]
    )


def tells_ability(told: Evidence) -> bool:
    """Whether it says anything but that they couldn't tell."""
    return told.reps is not None or told.seconds is not None


async def close_chat_due(uow: Unit, _: datetime, refs: Mapping[str, Any]) -> Outcome:
    """The goodbye has been said. Whoever wrote again meanwhile keeps their chat."""
    await uow.personal.close_chat(refs["chat"])
    return Outcome()
