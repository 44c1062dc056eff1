"""On which side it hurts, told after the pain itself: at a tap, or as `the left one`."""

from collections.abc import Sequence

from core.athletes.complaints import WITHOUT_SIDES, complained, of_limit
from core.athletes.values import Complaint, Profile
from core.desk.access import admitted
from core.desk.days import today_in
from core.desk.errors import StalePress
from core.desk.outcome import Outcome
from core.desk.talk.asked import keeps
from core.desk.today.pain import done_lately, review_wish, version_again
from core.desk.versions.commands import TellSide
from core.desk.versions.says import SideNoted
from core.desk.versions.showing import orders_for, profile_today
from core.desk.versions.version import session_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.forecast.today import version_today
from core.movements.lookup import catalogue
from core.notation.body.sides import names_a_side, read_side_alone
from core.scaling.values import Version


async def as_side(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Left`, of the newest pain that has no side yet; a later day, only words that can't mean something else."""
    side = read_side_alone(text)
    memberships = await visit.memberships() if side else []
    if side is None or not memberships or await keeps(visit, "side"):
        return None
    today = today_in(await visit.group(memberships[0].group_id), visit.now)
    waiting = newest(without_side(await visit.profile()))
    if waiting is None or (waiting.since != today and not names_a_side(text)):
        return None
    return await tell_side(visit, TellSide(limit=waiting.limit, side=side))


def newest(told: Sequence[Complaint]) -> Complaint | None:
    """The one that was told last; None where it can't be known which of several is meant."""
    last = [one for one in told if one.since == max(other.since for other in told)]
    return last[0] if len(last) == 1 else None


def without_side(profile: Profile) -> tuple[Complaint, ...]:
    told = (of_limit(profile, one) for one in profile.limits or () if one not in WITHOUT_SIDES)
    return tuple(one for one in told if one is not None and one.side is None)


@admitted
async def tell_side(visit: Visit, command: TellSide) -> Outcome:
    """A version that is still to be done is shown again only where one of its lines is another for it."""
    await visit.must_consent()
    profile = await visit.profile()
    told, memberships = of_limit(profile, command.limit), await visit.memberships()
    if told is None or not memberships:
        raise StalePress
    group = await visit.group(memberships[0].group_id)
    hurt = complained(profile, told.limit, command.side, told.severity, today_in(group, visit.now))
    await visit.uow.profiles.save(visit.person.id, hurt, visit.now)
    now = of_limit(hurt, told.limit)
    assert now is not None, "it was just told"
    done, unchanged = await done_lately(visit) is not None, await is_unchanged(visit)
    noted = visit.told(SideNoted(limit=now.limit, side=command.side, unchanged=unchanged and not done))
    kept = noted + Outcome(due=(review_wish(visit.person.id, now, group),), settles=True)
    return kept if done or unchanged else kept + await version_again(visit)


async def is_unchanged(visit: Visit) -> bool:
    """Whether every line of the version before them would be the same again."""
    record = await session_meant(visit, None)
    seen = await seen_by(visit, record, visit.person) if record else None
    if record is None or seen is None or seen.session_revision != record.revision:
        return False
    today, orders = await profile_today(visit, record), await orders_for(visit, record)
    made = version_today(record.session, today, catalogue(), orders, year=visit.now.year)
    return isinstance(made, Version) and parts_of(made) == parts_of(seen.version)


def parts_of(version: Version) -> tuple[object, ...]:
    """What it says to do, whatever it says to be careful with."""
    return version.blocks, version.needs_coach
