"""What can be done here, for whoever asks; and what is known of the visitor."""

from core.athletes.complaints import of_limit
from core.athletes.today import differing
from core.desk.access import admitted
from core.desk.coached import coached_groups
from core.desk.commands import AboutMe, AskHelp
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.profile.own import sharing_of, tells_ability
from core.desk.says import Help
from core.desk.versions.says import Me
from core.desk.visit import Visit


async def show_help(visit: Visit, command: AskHelp) -> Outcome:
    """The few things that are done every day; all of them at a second tap."""
    joined = await visit.memberships()
    coach = bool(await coached_groups(visit))
    if joined and not coach and not await visit.uow.consents.given(visit.person.id):
        said_no = await visit.uow.questions.open_in(visit.chat) is None
        return visit.told(Help(coach=False, joined=True, door=joined[0].group_id, said_no=said_no))
    said = Help(coach=coach, joined=bool(joined), more=command.more)
    return Outcome(becomes=said) if command.more else visit.told(said)


@admitted
async def about_me(visit: Visit, _: AboutMe) -> Outcome:
    """What is known of the visitor, for their eyes only."""
    profile = await visit.profile()
    memberships = await visit.memberships()
    groups = [await visit.group(one.group_id) for one in memberships]
    me = Me(
        name=visit.person.name,
        equipment=profile.equipment,
        limits=profile.limits,
        body_mass_kg=profile.body_mass_kg,
        units=profile.units,
        groups=tuple(group.title for group in groups),
        sets=profile.sets,
        shares=await sharing_of(visit),
        complaints=tuple(one for one in profile.complaints if of_limit(profile, one.limit)),
        screened_in=groups[0].id if groups and profile.screened_on else None,
        abilities=tuple(
            [told for told in await visit.uow.profiles.told(visit.person.id) if tells_ability(told[1])]
        ),
        experience=profile.experience,
        different=differing(profile, today_in(groups[0], visit.now) if groups else visit.now.date()),
    )
    return visit.told(me)
