"""What an athlete's words do: each act with its use case, the same that its button has."""

import re
from typing import Final, Literal

from core.athletes.equipment import (
    at,
    is_weightless,
    shared,
    that_matter,
    that_matter_not,
    with_more,
    with_stated,
)
from core.athletes.limits import limits
from core.athletes.values import Branch, Evidence, Screening, SetName
from core.desk.classes.coming import see_classes
from core.desk.classes.commands import AboutReminders, SeeClasses, SetLead, SetQuiet
from core.desk.classes.habits import about_reminders, set_lead, set_quiet
from core.desk.coached import coached_ids
from core.desk.commands import (
    AboutMe,
    AskHelp,
    ChangeAnswer,
    MyVersion,
    OnlyAnswer,
    RateEffort,
    SeeBoard,
    SetUnits,
)
from core.desk.days import today_in
from core.desk.joining.groups import set_units
from core.desk.outcome import Outcome
from core.desk.profile.abilities import keep_shown
from core.desk.profile.commands import ExportMine, ForgetMe
from core.desk.profile.conditions import keep_spared
from core.desk.profile.furnishing import changed_things
from core.desk.profile.furnishing import keep as keep_things
from core.desk.profile.own import export_mine, forget_me
from core.desk.profile.weighing import keep_mass, keep_units
from core.desk.says import Kindness, Welcome
from core.desk.scores.correcting import correct_score, was_scaled
from core.desk.scores.history import past_scores
from core.desk.scores.progress import progress
from core.desk.scores.scoreboard import see_board
from core.desk.scores.which import A_WEEK, shown_since, told_day
from core.desk.scores.whose import own_score
from core.desk.talk.asides import be_kind
from core.desk.talk.explaining import explain, explained
from core.desk.talk.helping import about_me, show_help
from core.desk.talk.keeping_quiet import only_answer, wants_only_answers
from core.desk.talk.not_got import word_for_coach
from core.desk.talk.passing_on import offer
from core.desk.talk.says import HowItFeelsDecides, HowLongItIs, NobodyJudges, NothingWaits, OnceYouHaveIt
from core.desk.talk.scene import Scene
from core.desk.today.different import as_usual, be_short, be_short_then, be_sore, keep_for_today, sore_place
from core.desk.today.easing import be_back
from core.desk.today.elsewhere import elsewhere, home_again
from core.desk.today.felt import just_scored
from core.desk.today.pain import tell_over, tell_pain
from core.desk.today.reports import rate_effort
from core.desk.today.says import AskMinutes, AskSick, AskSore, MattersNot, NothingSpared
from core.desk.versions.adjusting import change_lines
from core.desk.versions.answers import ask_weight, change_answer, units_typed
from core.desk.versions.commands import AsUsual, BeBack, BeShort, BeSore, ChangeLines, GiveTimer
from core.desk.versions.expecting import minutes_of_theirs, outlooks_of
from core.desk.versions.says import StopWhatHurts
from core.desk.versions.showing import today_of
from core.desk.versions.telling import tell_lines
from core.desk.versions.timing import give_timer
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.notation.complaints import ToldPain
from core.notation.equipment_partners import NOBODY_NAMED
from core.notation.lasting import read_lasting
from core.notation.sides import read_sides
from core.scaling.values import Ask
from core.sessions.length import minutes_of
from core.understanding import acts as a
from core.understanding.equipment_changes import EquipmentChange

_HOME: Final[SetName] = "home"


async def got(visit: Visit, act: a.Has | a.Got, _: Scene) -> Outcome | None:
    """What came is added to what is there; of what is said to be there, there is as much as is said."""
    place = (act.place if isinstance(act, a.Has) else None) or _HOME
    if not await visit.uow.consents.given(visit.person.id):
        return None
    profile, told = await visit.profile(), that_matter(act.equipment)
    if not told:
        return visit.told(MattersNot())
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


async def lost(visit: Visit, act: a.Lost, _: Scene) -> Outcome | None:
    """None where it was never there."""
    if not await visit.uow.consents.given(visit.person.id):
        return None
    profile = await visit.profile()
    change = EquipmentChange(went=tuple(act.equipment))
    after = changed_things(at(profile, _HOME) or (), change)
    return None if after is None else await keep_things(visit, profile, _HOME, after, change)


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
    """Where it isn't said what hurts, the line that does it is changed."""
    memberships = await visit.memberships()
    if not memberships or not act.limits:
        which = await lines(visit, act, scene) if memberships else None
        return which and visit.told(StopWhatHurts()) + which
    await visit.must_consent()
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
    if scene.record is None or scene.version is None or not (await visit.profile()).different:
        return None
    return await as_usual(visit, AsUsual(session=scene.record.id))


async def weighs(visit: Visit, act: a.Weighs, _: Scene) -> Outcome | None:
    return await keep_mass(visit, await visit.profile(), act.body_mass_kg, act.text)


_WALKED: Final = re.compile(r"\bwalk(?:s|ed|ing)?\b(?!.*\brun)")


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
    return await own_score(visit, act.text, scene.replied_to)


async def corrects(visit: Visit, act: a.Corrects, scene: Scene) -> Outcome | None:
    return await correct_score(visit, act.text, scene.replied_to) if scene.record else None


async def did_scaled(visit: Visit, _: a.DidScaled, scene: Scene) -> Outcome | None:
    return await was_scaled(visit, scene.replied_to) if scene.record else None


async def effort(visit: Visit, act: a.Effort, scene: Scene) -> Outcome | None:
    record = await just_scored(visit, scene.replied_to, named=True)
    return (
        await rate_effort(visit, RateEffort(session=record.id, effort=round(act.value))) if record else None
    )


async def sore(visit: Visit, act: a.Sore, scene: Scene) -> Outcome | None:
    """Known before there is a version, it is in the first."""
    where = sore_place(act.where)
    if scene.version is None:
        return await keep_for_today(visit, scene.record, sore=where) if where and scene.record else None
    if where is None:
        return visit.told(AskSore(version_id=scene.version))
    return await be_sore(visit, BeSore(version=scene.version, where=where))


def once_there(visit: Visit, scene: Scene, where: Literal["lines", "today", "sick"]) -> Outcome | None:
    """Who hasn't got their version yet is told where that is changed in it; None where there is no session."""
    return visit.told(OnceYouHaveIt(where=where)) if scene.record else None


async def short(visit: Visit, act: a.HasMinutes, scene: Scene) -> Outcome | None:
    """Known before there is a version, it is in the first."""
    if scene.version is None and scene.record and act.minutes:
        return await keep_for_today(visit, scene.record, minutes=act.minutes)
    if scene.version is None or scene.record is None:
        return once_there(visit, scene, "today")
    if act.minutes is None:
        return visit.told(AskMinutes(version_id=scene.version))
    lasting = read_lasting(scene.text.lower(), await today_of(visit, scene.record))
    if lasting.since is not None:
        return await be_short_then(visit, scene.record, act.minutes, lasting)
    return await be_short(visit, BeShort(version=scene.version, minutes=act.minutes))


async def sick(visit: Visit, _: a.Sick, scene: Scene) -> Outcome | None:
    return (
        visit.told(AskSick(version_id=scene.version)) if scene.version else once_there(visit, scene, "sick")
    )


async def away(visit: Visit, act: a.Elsewhere, scene: Scene) -> Outcome | None:
    return await elsewhere(visit, act, scene.text)


async def at_home(visit: Visit, _: a.HomeAgain, __: Scene) -> Outcome | None:
    return await home_again(visit)


async def back(visit: Visit, _: a.BackAfter, scene: Scene) -> Outcome | None:
    return await be_back(visit, BeBack(version=scene.version)) if scene.version else None


async def lines(visit: Visit, _: a.Act, scene: Scene) -> Outcome | None:
    """Which line it is, and what is wrong with it, is tapped."""
    if scene.version is None:
        return once_there(visit, scene, "lines")
    return await change_lines(visit, ChangeLines(version=scene.version))


async def version(visit: Visit, _: a.Act, __: Scene) -> Outcome | None:
    return await my_version(visit, MyVersion())


async def why(visit: Visit, act: a.Why | a.HowHeavy, scene: Scene) -> Outcome | None:
    """Of the lines that are meant; the version itself where they don't have it yet, or it has no such line."""
    about: Literal["why", "how_heavy"] = "why" if isinstance(act, a.Why) else "how_heavy"
    told = await tell_lines(visit, scene.version, about, act.movement) if scene.version else None
    return told or await my_version(visit, MyVersion())


async def how_long(visit: Visit, act: a.HowLong | a.HowToPace, scene: Scene) -> Outcome | None:
    """What the session says of itself, and what is expected of whoever has their version of it."""
    if scene.record is None:
        return None
    minutes, capped = minutes_of(scene.record.session)
    aims = [block.aim for block in scene.record.session.blocks if block.aim and block.aim.of == "score"]
    aim = (aims[0].low, aims[0].high) if aims else None
    paced = isinstance(act, a.HowToPace)
    outlooks = await outlooks_of(visit, scene.record)
    theirs = await minutes_of_theirs(visit, scene.record) if minutes is None else None
    return visit.told(
        HowLongItIs(minutes=minutes, capped=capped, theirs=theirs, aim=aim, paced=paced, outlooks=outlooks)
    )


async def how_to(visit: Visit, act: a.HowTo, _: Scene) -> Outcome | None:
    if act.term:
        return explained(visit, act.term)
    return await explain(visit, act.movement) if act.movement else None


async def history(visit: Visit, act: a.MyHistory, _: Scene) -> Outcome | None:
    return await past_scores(visit, act.movement)


async def getting_on(visit: Visit, _: a.MyProgress, __: Scene) -> Outcome | None:
    return await progress(visit)


async def has_nothing(visit: Visit, _: a.HasNothing, __: Scene) -> Outcome | None:
    """What is known to be there stays until they say what of it is."""
    if not await visit.uow.consents.given(visit.person.id):
        return None
    return await change_answer(visit, ChangeAnswer(ask=Ask.EQUIPMENT))


async def board(visit: Visit, act: a.Board, scene: Scene) -> Outcome | None:
    """Of the day that is named, where there was a session."""
    of_day = await told_day(visit, scene.text, await shown_since(visit, A_WEEK)) if act.day else None
    if of_day:
        return await see_board(visit, SeeBoard(session=of_day[0].id))
    return await see_board(visit, SeeBoard(session=scene.record.id if scene.record else None))


async def classes(visit: Visit, _: a.Act, __: Scene) -> Outcome | None:
    return await see_classes(visit, SeeClasses())


async def no_reminders(visit: Visit, act: a.NoReminders, scene: Scene) -> Outcome | None:
    """Of one day is a matter of the classes."""
    return await reminders(visit, act, scene) if act.day else await only_answer(visit, OnlyAnswer(yes=True))


async def remind(visit: Visit, act: a.Remind, scene: Scene) -> Outcome | None:
    if await wants_only_answers(visit):
        return await only_answer(visit, OnlyAnswer(yes=False))
    if act.minutes_before is None:
        return await reminders(visit, act, scene)
    return await set_lead(visit, SetLead(minutes=act.minutes_before))


async def reminders(visit: Visit, _: a.Act, __: Scene) -> Outcome | None:
    return await about_reminders(visit, AboutReminders()) if await visit.memberships() else None


async def quiet(visit: Visit, act: a.Quiet, scene: Scene) -> Outcome | None:
    if act.since is None or act.to is None:
        return await reminders(visit, act, scene)
    return await set_quiet(visit, SetQuiet(start=minute(act.since), end=minute(act.to)))


def minute(clock: str) -> int:
    """`22:30` as minutes of the day."""
    hour, _, past = clock.partition(":")
    return int(hour) * 60 + int(past or 0)


async def units(visit: Visit, act: a.Units, _: Scene) -> Outcome | None:
    """A coach speaks of the one group they coach."""
    coached = await coached_ids(visit)
    if len(coached) == 1:
        return await set_units(visit, SetUnits(group=coached[0], units=act.units))
    return await keep_units(visit, act.units)


async def me(visit: Visit, _: a.Act, __: Scene) -> Outcome | None:
    return await about_me(visit, AboutMe())


async def forget(visit: Visit, _: a.ForgetMe, __: Scene) -> Outcome | None:
    return await forget_me(visit, ForgetMe())


async def export(visit: Visit, _: a.ExportMe, __: Scene) -> Outcome | None:
    return await export_mine(visit, ExportMine())


async def timer(visit: Visit, _: a.WantsTimer, scene: Scene) -> Outcome | None:
    """Of the session before them; of one that is over nobody needs a clock."""
    if scene.record is None:
        return await my_version(visit, MyVersion())
    return await give_timer(visit, GiveTimer(session=scene.record.id))


async def to_coach(visit: Visit, act: a.ToCoach, _: Scene) -> Outcome | None:
    """In their words, with their yes."""
    return await offer(visit, (act.text,), agreed=False)


async def is_it_ok(visit: Visit, _: a.IsItOk, scene: Scene) -> Outcome | None:
    """Nobody here can see them: licensed care comes first where there is any, then the coach, then how it feels."""
    profile = await visit.profile()
    conditions = tuple(
        one.id for one in limits() if one.kind == "condition" and one.id in (profile.limits or ())
    )
    # Whoever is only out of training needs no doctor's word.
    branch = None if profile.branch is Branch.HEALTHY_INACTIVE else profile.branch
    careful = branch is not None and branch.screening is not Screening.CLEAR
    word = await word_for_coach(visit, scene.text)
    return visit.told(
        HowItFeelsDecides(conditions=conditions, careful=careful, version=scene.version, word=word)
    )


async def nothing_hurt(visit: Visit, act: a.NothingHurt, scene: Scene) -> Outcome | None:
    """Where something is spared, it is asked what of it still counts: nothing of that goes by a word.

    None beside other words: there it belongs to a score.
    """
    if len(act.text.split()) < len(scene.text.split()):
        return None
    if (await visit.profile()).limits and await visit.uow.consents.given(visit.person.id):
        return await change_answer(visit, ChangeAnswer(ask=Ask.LIMITS))
    return visit.told(NothingSpared()) if await visit.memberships() else None


async def nothing_waits(visit: Visit, _: a.Act, __: Scene) -> Outcome | None:
    return visit.told(NothingWaits()) if await visit.memberships() else None


async def worries(visit: Visit, _: a.Worries, scene: Scene) -> Outcome | None:
    return visit.told(NobodyJudges(version=scene.version, word=await word_for_coach(visit, scene.text)))


async def help_(visit: Visit, _: a.Help, __: Scene) -> Outcome | None:
    return await show_help(visit, AskHelp())


async def skips(visit: Visit, _: a.Skips, __: Scene) -> Outcome | None:
    return visit.told(Kindness(talk="away")) if await visit.memberships() else None


async def thanks(visit: Visit, _: a.Thanks, scene: Scene) -> Outcome | None:
    """`Thanks, that was fun!` says more than that."""
    return await be_kind(visit, scene.text) or visit.told(Welcome())


async def greeting(visit: Visit, _: a.Greeting, __: Scene) -> Outcome | None:
    return visit.told(Kindness(talk="hello")) if await visit.memberships() else None
