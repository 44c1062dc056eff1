"""What an athlete tells: each act with its use case, the same that its button has; thanks and greetings too."""

import re
from typing import Final, Literal

from core.athletes.equipment import (
    Things,
    at,
    is_weightless,
    shared,
    that_matter,
    that_matter_not,
    with_more,
    with_stated,
)
from core.athletes.values import Branch, Equipment, Evidence, Experience, Profile, SetName
from core.desk.coached import coached_groups
from core.desk.commands import (
    ChangeAnswer,
    RateEffort,
)
from core.desk.days import today_in
from core.desk.joining.entry import ask_consent
from core.desk.outcome import Outcome
from core.desk.profile.abilities import keep_shown
from core.desk.profile.conditions import keep_spared
from core.desk.profile.furnishing import changed_things, take_bare
from core.desk.profile.furnishing import keep as keep_things
from core.desk.profile.weighing import keep_mass
from core.desk.says import Kindness, Welcome
from core.desk.scores.correcting import correct_score, was_scaled
from core.desk.scores.whose import own_score
from core.desk.talk.asides import be_kind
from core.desk.talk.not_got import word_for_coach
from core.desk.talk.says import NobodyJudges, NothingWaits, OnceYouHaveIt
from core.desk.talk.scene import Scene
from core.desk.today.different import as_usual, be_short, be_short_then, be_sore, keep_for_today, sore_place
from core.desk.today.easing import be_back
from core.desk.today.elsewhere import elsewhere, home_again
from core.desk.today.felt import just_scored
from core.desk.today.pain import tell_over, tell_pain
from core.desk.today.reports import ask_where, rate_effort
from core.desk.today.says import (
    AskMinutes,
    AskSick,
    AskSore,
    FineNow,
    MattersNot,
    NothingSpared,
    NothingWent,
    SoreIsUsual,
)
from core.desk.versions.adjusting import change_lines
from core.desk.versions.answers import ask_weight, change_answer, units_typed
from core.desk.versions.commands import AsUsual, BeBack, BeShort, BeSore, ChangeLines
from core.desk.versions.kept import answer_kept
from core.desk.versions.says import ExperienceNoted, StopWhatHurts, Understood
from core.desk.visit import Visit
from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.notation.body.complaints import ToldPain, is_fine_all_the_same
from core.notation.body.sides import read_sides
from core.notation.calendar.lasting import Lasting, read_lasting
from core.notation.talk.chat import begins_with_so_many_done, tells_other_work
from core.notation.talk.equipment_partners import NOBODY_NAMED
from core.scaling.values import Ask
from core.understanding import acts as a
from core.understanding.equipment_changes import UNNAMED, EquipmentChange
from core.understanding.things import names_a_thing, thing_put_right

_HOME: Final[SetName] = "home"
_WALKED: Final = re.compile(r"\bwalk(?:s|ed|ing)?\b(?!.*\brun)")


async def got(visit: Visit, act: a.Has | a.Got, scene: Scene) -> Outcome | None:
    """What came, with its name or as a weight alone."""
    if not await visit.uow.consents.given(visit.person.id):
        return None
    profile, told = await visit.profile(), that_matter(act.equipment)
    if isinstance(act, a.Got) and len(told) == 1 and not names_a_thing(act.text):
        session = scene.record.session if scene.record else None
        return await take_bare(visit, profile, _HOME, told[0], session)
    return await named_there(visit, profile, act, told)


async def named_there(visit: Visit, profile: Profile, act: a.Has | a.Got, told: Things) -> Outcome:
    """What came is added to what is there; of what is said to be there, there is as much as is said."""
    place = (act.place if isinstance(act, a.Has) else None) or _HOME
    put_right = thing_put_right(act.text)
    if put_right and any(one.implement == put_right[0] for one in at(profile, place) or ()):
        return await answer_kept(visit, Understood(equipment=at(profile, place), units=profile.units))
    renamed = renaming(at(profile, place) or (), put_right)
    if renamed:
        was, now = renamed
        after = tuple(now if one == was else one for one in at(profile, place) or ())
        change = EquipmentChange(place=place, came=(now,), went=(was,))
        return await keep_things(visit, profile, place, after, change)
    if not told:
        return visit.told(MattersNot(names=that_matter_not(act.equipment)))
    add = with_more if isinstance(act, a.Got) else with_stated
    came = tuple(one for one in told if not is_weightless(one))
    after = add(at(profile, place) or (), came)
    weightless = tuple(one for one in told if is_weightless(one))
    if weightless and place == _HOME:
        return await ask_weight(visit, None, weightless, after, act.text)
    return await keep_things(
        visit,
        profile,
        place,
        after,
        EquipmentChange(place=place, came=came, idle=that_matter_not(act.equipment)),
    )


def renaming(owned: Things, put_right: tuple[str, str] | None) -> tuple[Equipment, Equipment] | None:
    """The thing that was noted as another, before and after; None where it can't be told which of several it is."""
    if put_right is None:
        return None
    told, denied = put_right
    like = [one for one in owned if one.implement == denied]
    single = [one for one in like if one.each == 1] or like
    return (single[0], single[0].model_copy(update={"implement": told})) if len(single) == 1 else None


async def lost(visit: Visit, act: a.Lost, _: Scene) -> Outcome | None:
    """What wasn't there is said not to have been; a weight alone is of the thing that has it."""
    if not await visit.uow.consents.given(visit.person.id):
        return None
    profile, went = await visit.profile(), tuple(act.equipment)
    if not names_a_thing(act.text):
        went = tuple(one.model_copy(update={"implement": UNNAMED}) if one.loads_kg else one for one in went)
    change = EquipmentChange(went=went)
    after = changed_things(at(profile, _HOME) or (), change)
    if after is None:
        return visit.told(NothingWent(went=went, now=at(profile, _HOME), units=profile.units))
    return await keep_things(visit, profile, _HOME, after, change)


async def shares(visit: Visit, act: a.Shares, _: Scene) -> Outcome | None:
    """None where it is about nothing that is there."""
    if not await visit.uow.consents.given(visit.person.id):
        return None
    profile = await visit.profile()
    thing = act.equipment[0].implement if act.equipment else None
    after = shared(at(profile, _HOME) or (), thing, act.person or NOBODY_NAMED)
    return None if after is None else await keep_things(visit, profile, _HOME, after, EquipmentChange())


async def spares(visit: Visit, act: a.Spares | a.Condition, _: Scene) -> Outcome | None:
    return await keep_spared(visit, act.limits, act.text) if await visit.memberships() else None


async def hurt(visit: Visit, act: a.Hurt, scene: Scene) -> Outcome | None:
    """Where it isn't said what hurts, the line that does it is changed; with no version it is asked where it is."""
    memberships = await visit.memberships()
    if not memberships:
        return None
    await visit.must_consent()
    if not act.limits and scene.version is None:
        return await ask_where(visit, scene.record.id if scene.record else None)
    if not act.limits:
        which = await lines(visit, act, scene)
        return which and visit.told(StopWhatHurts()) + which
    told = ToldPain("hurts", act.limits, read_sides(act.text))
    return await tell_pain(visit, told, act.text, await visit.group(memberships[0].group_id))


async def well_again(visit: Visit, act: a.WellAgain, scene: Scene) -> Outcome | None:
    memberships = await visit.memberships()
    if not memberships or not act.limits:
        return await well(visit, act, scene)
    await visit.must_consent()
    group = await visit.group(memberships[0].group_id)
    return await tell_over(visit, ToldPain("over", act.limits, {}), act.text, group)


async def well(visit: Visit, _: a.Act, scene: Scene) -> Outcome | None:
    if not await visit.memberships():
        return None
    if scene.record is None or scene.version is None or not (await visit.profile()).different:
        return visit.told(Kindness(talk="well"))
    return await as_usual(visit, AsUsual(session=scene.record.id))


async def weighs(visit: Visit, act: a.Weighs, _: Scene) -> Outcome | None:
    return await keep_mass(visit, await visit.profile(), act.body_mass_kg, act.text)


def _tells_ability(act: a.Can, movement: str) -> bool:
    """Whether so many are told, a time for a distance, or how long something is held."""
    held = catalogue().movement(movement).unit is AmountUnit.SECONDS
    return act.reps is not None or (act.seconds is not None and (held or act.distance_m is not None))


async def can(visit: Visit, act: a.Can, _: Scene) -> Outcome | None:
    """None where no number of a movement was told."""
    memberships = await visit.memberships()
    if not memberships or act.movement is None or not _tells_ability(act, act.movement):
        return None
    on = today_in(await visit.group(memberships[0].group_id), visit.now)
    told = Evidence(
        movement=act.movement,
        variant="brisk-walk" if act.movement == "run" and _WALKED.search(act.text.lower()) else None,
        on=on,
        reps=act.reps,
        load_kg=act.load_kg,
        distance_m=act.distance_m,
        seconds=act.seconds,
    )
    return await keep_shown(visit, told, units_typed(act.text) or (await visit.profile()).units)


async def scored(visit: Visit, act: a.Scored, scene: Scene) -> Outcome | None:
    """Somebody else's is theirs to tell."""
    if act.person is not None or scene.record is None:
        return None
    words = scene.text if tells_other_work(scene.text) else act.text
    return await own_score(visit, words, scene.replied_to)


async def corrects(visit: Visit, act: a.Corrects, scene: Scene) -> Outcome | None:
    return await correct_score(visit, act.text, scene.replied_to) if scene.record else None


async def did_scaled(visit: Visit, _: a.DidScaled, scene: Scene) -> Outcome | None:
    if tells_other_work(scene.text):
        return await own_score(visit, scene.text, scene.replied_to)
    return await was_scaled(visit, scene.replied_to) if scene.record else None


async def effort(visit: Visit, act: a.Effort, scene: Scene) -> Outcome | None:
    record = await just_scored(visit, scene.replied_to, named=True)
    return (
        await rate_effort(visit, RateEffort(session=record.id, effort=round(act.value))) if record else None
    )


async def sore(visit: Visit, act: a.Sore, scene: Scene) -> Outcome | None:
    """Known before there is a version, it is in the first; told with what was done, no other one is made."""
    if is_fine_all_the_same(act.text) and await visit.memberships():
        return visit.told(FineNow(limits=()))
    where = sore_place(act.where)
    done = await own_score(visit, act.text, scene.replied_to) if begins_with_so_many_done(act.text) else None
    if done is not None and scene.record is not None:
        return done + await keep_for_today(visit, scene.record, sore=where) if where else done
    if scene.version is None and scene.record is None:
        return visit.told(SoreIsUsual()) if await visit.memberships() else None
    if scene.version is None:
        return await keep_for_today(visit, scene.record, sore=where) if where and scene.record else None
    if where is None:
        return visit.told(AskSore(version_id=scene.version))
    return await be_sore(visit, BeSore(version=scene.version, where=where))


def once_there(visit: Visit, scene: Scene, where: Literal["lines", "today", "sick"]) -> Outcome | None:
    """Who hasn't got their version yet is told where that is changed in it; None where there is no session."""
    return visit.told(OnceYouHaveIt(where=where)) if scene.record else None


async def short(visit: Visit, act: a.HasMinutes, scene: Scene) -> Outcome | None:
    """Known before there is a version, it is in the first; of a day to come it is kept for that day."""
    then = await of_a_day_to_come(visit, scene)
    if then is not None and act.minutes:
        return await be_short_then(visit, act.minutes, then)
    if scene.version is None and scene.record and act.minutes:
        return await keep_for_today(visit, scene.record, minutes=act.minutes)
    if scene.version is None or scene.record is None:
        return once_there(visit, scene, "today")
    if act.minutes is None:
        return visit.told(AskMinutes(version_id=scene.version))
    return await be_short(visit, BeShort(version=scene.version, minutes=act.minutes))


async def of_a_day_to_come(visit: Visit, scene: Scene) -> Lasting | None:
    """From when, where the words are of no day that has begun."""
    memberships = await visit.memberships()
    if not memberships:
        return None
    lasting = read_lasting(
        scene.text.lower(), today_in(await visit.group(memberships[0].group_id), visit.now)
    )
    return lasting if lasting.since is not None else None


async def sick(visit: Visit, _: a.Sick, scene: Scene) -> Outcome | None:
    return (
        visit.told(AskSick(version_id=scene.version)) if scene.version else once_there(visit, scene, "sick")
    )


async def away(visit: Visit, act: a.Elsewhere, scene: Scene) -> Outcome | None:
    return await elsewhere(visit, act, scene.text)


async def at_home(visit: Visit, _: a.HomeAgain, __: Scene) -> Outcome | None:
    return await home_again(visit) if await visit.memberships() else None


async def back(visit: Visit, _: a.BackAfter, scene: Scene) -> Outcome | None:
    return await be_back(visit, BeBack(version=scene.version)) if scene.version else None


async def trains(visit: Visit, act: a.Trains, _: Scene) -> Outcome | None:
    """Whoever is held, or hasn't moved lately, isn't used to it whatever they did before."""
    if not await visit.uow.consents.given(visit.person.id):
        return None
    profile = await visit.profile()
    fit = profile.branch is None or profile.branch is Branch.HEALTHY_ACTIVE
    level: Experience = "some" if act.level == "trained" and not fit else act.level
    await visit.uow.profiles.save(
        visit.person.id, profile.model_copy(update={"experience": level}), visit.now
    )
    return visit.told(ExperienceNoted(level=level))


async def lines(visit: Visit, _: a.Act, scene: Scene) -> Outcome | None:
    """Which line it is, and what is wrong with it, is tapped."""
    if scene.version is None:
        return once_there(visit, scene, "lines")
    return await change_lines(visit, ChangeLines(version=scene.version))


async def has_nothing(visit: Visit, _: a.HasNothing, __: Scene) -> Outcome | None:
    """What is known to be there stays until they say what of it is."""
    if not await visit.uow.consents.given(visit.person.id):
        return None
    return await change_answer(visit, ChangeAnswer(ask=Ask.EQUIPMENT))


async def nothing_hurt(visit: Visit, act: a.NothingHurt, scene: Scene) -> Outcome | None:
    """Where something is spared, it is asked what of it still counts: nothing of that goes by a word.

    None beside other words: there it belongs to a score.
    """
    if len(act.text.split()) < len(scene.text.split()):
        return None
    if (await visit.profile()).limits and await visit.uow.consents.given(visit.person.id):
        return await change_answer(visit, ChangeAnswer(ask=Ask.LIMITS))
    return visit.told(NothingSpared()) if await visit.memberships() else None


async def nothing_waits(visit: Visit, act: a.Agrees | a.Declines, _: Scene) -> Outcome | None:
    agrees = isinstance(act, a.Agrees)
    return await nothing_waits_for(visit, agrees=agrees) if await visit.memberships() else None


async def nothing_waits_for(visit: Visit, *, agrees: bool) -> Outcome:
    """Who said no to notes before, and says yes now, is asked in full: consent is given to that alone.

    A coach's yes is about what they were asked as one.
    """
    groups = await visit.memberships()
    asked = bool(groups) and visit.private and not await coached_groups(visit)
    if agrees and asked and not await visit.uow.consents.given(visit.person.id):
        return await ask_consent(visit, groups[0].group_id)
    return visit.told(NothingWaits())


async def worries(visit: Visit, _: a.Worries, scene: Scene) -> Outcome | None:
    return visit.told(NobodyJudges(version=scene.version, word=await word_for_coach(visit, scene.text)))


async def skips(visit: Visit, _: a.Skips, __: Scene) -> Outcome | None:
    return visit.told(Kindness(talk="away")) if await visit.memberships() else None


async def thanks(visit: Visit, _: a.Thanks, scene: Scene) -> Outcome | None:
    """`Thanks, that was fun!` says more than that."""
    return await be_kind(visit, scene.text) or visit.told(Welcome())


async def greeting(visit: Visit, _: a.Greeting, __: Scene) -> Outcome | None:
    return visit.told(Kindness(talk="hello")) if await visit.memberships() else None
