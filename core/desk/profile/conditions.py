"""Health told unasked: kept beside what is spared already, said back, and seen in the version at once."""

from core.desk.commands import MyVersion
from core.desk.joining.entry import may_train
from core.desk.outcome import Outcome
from core.desk.today.pain import joints, spared
from core.desk.today.says import FineNow
from core.desk.versions.kept import answer_kept
from core.desk.versions.says import Understood
from core.desk.versions.version import my_version, session_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.notation.body.complaints import is_fine_now
from core.notation.body.sides import read_sides


async def keep_spared(
    visit: Visit, limits: tuple[str, ...], text: str, unread: tuple[str, ...] = ()
) -> Outcome:
    """Kept for whoever belongs to a group, beside what is spared already; not a joint that is fine now."""
    memberships = await visit.memberships()
    await visit.must_consent()
    if is_fine_now(text) and set(limits) <= set(joints()):
        return visit.told(FineNow(limits=limits))
    profile, group = await visit.profile(), await visit.group(memberships[0].group_id)
    facts, wishes = spared(profile, visit.person.id, limits, text, group, visit.now)
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update=dict(facts)), visit.now)
    understood = Understood(
        limits=limits, sides=tuple(read_sides(text).items()), unread=unread, units=profile.units
    )
    return await shown_with(visit, understood) + Outcome(due=wishes)


async def shown_with(visit: Visit, understood: Understood) -> Outcome:
    """The version before them made anew, under what was understood; or that alone, where they have none."""
    record = await session_meant(visit, None)
    held = not may_train(await visit.profile())
    if held or record is None or await seen_by(visit, record, visit.person) is None:
        return await answer_kept(visit, understood)
    return await my_version(visit, MyVersion(session=record.id), understood)
