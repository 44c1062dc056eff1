"""A stop sign in any message: help first, no session until cleared, and a way out for who was misunderstood.

Any symptom keeps everybody from a session until they are cleared (`core.athletes.screening` names the source). What
was only asked about counts as told until they say that it isn't theirs, and that they had none of the signs.
"""

from collections.abc import Mapping, Sequence
from typing import Any, Final, Literal

from core.athletes.values import AfterBirth, Branch, Pregnancy, Profile
from core.desk.access import admitted
from core.desk.coached import called_in
from core.desk.commands import SayCleared, SayMisunderstood, TellSigns
from core.desk.errors import StalePress
from core.desk.joining.entering import is_asked, keep_branch, say_cleared
from core.desk.joining.entry import SCREENING, ask_screening, ask_what_is_left
from core.desk.joining.says import AskSigns, HelpThem, NotCleared, StopNow
from core.desk.outcome import Outcome, Say
from core.desk.talk.says import AthleteStopped
from core.desk.talk.understood import get_ready
from core.desk.today.says import ClearedKept
from core.desk.versions.version import version_in
from core.desk.versions.waiting import to_coaches
from core.desk.visit import Visit
from core.notation.body.alarm import Alarm, read_birth_sign
from core.notation.body.clearance import says_cleared, says_cleared_to_carry
from core.notation.talk.yes_no import read_yes_no, says_only_asking
from core.store.records import Membership, Role
from core.understanding.signs import alarm as read_alarm
from core.understanding.signs import tells_of_effort

# The kind of open question that asks whether they had any of the signs themselves.
SIGNS: Final = "signs"
# The limits with stop signs of their own.
EXPECTING: Final = frozenset({"pregnancy", "after-birth"})


async def raise_alarm(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """Told or asked about, their sessions wait; somebody else's needs help, and nothing more."""
    alarm = await alarm_in(visit, text)
    if alarm is None:
        return None
    if alarm == "told" and tells_of_effort(text):
        asked = await ask_signs_plainly(visit)
        if asked is not None:
            return asked
    if alarm == "other":
        return visit.told(HelpThem())
    groups, told = await hold_and_tell(visit, alarm, text)
    return visit.told(stop(groups[0].group_id if groups else None, alarm, coach=bool(told))) + Outcome(told)


async def ask_signs_plainly(visit: Visit) -> Outcome | None:
    """Where the signs are asked about, being out of breath may be nothing or a sign: asked once more."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is not None and question.kind == SIGNS:
        return await ask_signs(visit, question.refs["group"], again=True)
    if question is None or question.kind != SCREENING or question.refs["answers"] != "y":
        return None
    return await ask_screening(visit, question.refs["group"], "y", again=True)


async def hold_and_tell(visit: Visit, alarm: str, text: str) -> tuple[list[Membership], tuple[Say, ...]]:
    """Hold their sessions; their coaches hear of it once, and not of what was only asked about."""
    is_new = (await visit.profile()).branch is not Branch.SYMPTOMS
    groups = await hold_if_known(visit)
    told = await tell_coaches(visit, groups, text) if is_new and alarm != "asked" else ()
    return groups, told


async def tell_coaches(visit: Visit, groups: Sequence[Membership], text: str) -> tuple[Say, ...]:
    """At once: that they stopped; what they said of it only where they share such notes."""
    if not await visit.uow.consents.given(visit.person.id):
        return ()
    says: tuple[Say, ...] = ()
    for one in groups:
        if one.role is Role.ATHLETE:
            name = await called_in(visit, one.group_id)
            what = AthleteStopped(athlete=name, words=text if one.shares_limits else None)
            key = f"stopped:{visit.person.id}:{one.group_id}:{visit.now:%Y%m%d%H%M%S}"
            says += await to_coaches(visit, one.group_id, what, key)
    return says


async def alarm_in(visit: Visit, text: str) -> Alarm | Literal["expecting"] | None:
    """A stop sign, those of a pregnancy among them where they may be meant; of somebody named, it is theirs."""
    get_ready()
    alarm = read_alarm(text)
    if alarm is not None and alarm != "other":
        return read_alarm(text, await names_of_others(visit))
    sign = read_birth_sign(text) if alarm is None else None
    if sign == "sign" or (sign and EXPECTING & set((await visit.profile()).limits or ())):
        return "expecting"
    return alarm


async def names_of_others(visit: Visit) -> frozenset[str]:
    """First and whole names of all who train with the visitor; not one that is their own, too."""
    members = [
        member.person
        for group in await visit.memberships()
        for member in await visit.uow.groups.members(group.group_id)
        if member.person.id != visit.person.id
    ]
    return frozenset(name for one in members for name in called(one.name)) - frozenset(
        called(visit.person.name)
    )


def called(name: str) -> tuple[str, ...]:
    """Longest first: `Bo Larsen`, `Bo`."""
    return tuple(dict.fromkeys((name, *name.split()[:1])))


def stop(group: int | None, alarm: str, *, coach: bool = False) -> StopNow:
    return StopNow(group=group, asked=alarm == "asked", expecting=alarm == "expecting", coach_told=coach)


async def hold_if_known(visit: Visit) -> list[Membership]:
    """Hold the sessions of whoever consented; returns their groups."""
    groups = await visit.memberships()
    if groups and await visit.uow.consents.given(visit.person.id):
        await hold(visit, await visit.profile())
    return groups


async def hold(visit: Visit, profile: Profile) -> None:
    if profile.branch is not Branch.SYMPTOMS:
        before = profile.model_copy(update={"before_alarm": profile.branch})
        await visit.uow.profiles.save(visit.person.id, before, visit.now)
    await keep_branch(visit, Branch.SYMPTOMS, profile.screened_on and visit.now.date())


async def as_way_out(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`I was only asking`, `my doctor has cleared me`: what the buttons say, in words."""
    asking, cleared = says_only_asking(text), says_cleared(text)
    profile = await visit.profile()
    # Whoever was sent to a doctor first has been told to say so here.
    waits = profile.branch is Branch.DISEASE_INACTIVE and cleared
    if profile.branch is not Branch.SYMPTOMS and not waits:
        return await keep_cleared(visit, profile) if says_cleared_to_carry(text) else None
    if not (asking or cleared) or await is_asked(visit):
        return None
    groups = await visit.memberships()
    if not groups:
        return None
    if cleared:
        return await say_cleared(visit, SayCleared(group=groups[0].group_id))
    return await say_misunderstood(visit, SayMisunderstood(group=groups[0].group_id))


async def keep_cleared(visit: Visit, profile: Profile) -> Outcome | None:
    """A doctor or midwife agreed; None of who told neither of a pregnancy nor of a birth, or told that before."""
    stages: dict[str, Pregnancy | AfterBirth | None] = {
        "pregnancy": profile.pregnancy or Pregnancy(on=visit.now.date()),
        "after-birth": profile.after_birth or AfterBirth(on=visit.now.date()),
    }
    facts = {
        limit.replace("-", "_"): stage.model_copy(update={"cleared": True})
        for limit, stage in stages.items()
        if stage and limit in (profile.limits or ()) and not stage.cleared
    }
    if not facts:
        return None
    await visit.must_consent()
    await visit.uow.profiles.save(visit.person.id, Profile.model_validate(dict(profile) | facts), visit.now)
    return visit.told(ClearedKept())


@admitted
async def say_misunderstood(visit: Visit, command: SayMisunderstood) -> Outcome:
    """Only who had none of the signs trains again; so they are asked, once."""
    if (await visit.profile()).branch is not Branch.SYMPTOMS:
        raise StalePress
    return await ask_signs(visit, command.group) + Outcome(settles=True)


async def ask_signs(visit: Visit, group: int, *, again: bool = False) -> Outcome:
    await visit.uow.questions.ask(visit.chat, SIGNS, {"group": group}, visit.now)
    return visit.told(AskSigns(group=group, again=again))


async def tell_signs_in_words(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    had = read_yes_no(text)
    if had is None:
        return await ask_signs(visit, refs["group"], again=True)
    return await tell_signs(visit, TellSigns(group=refs["group"], had=had))


@admitted
async def tell_signs(visit: Visit, command: TellSigns) -> Outcome:
    """Without any, all is as it was before; who hadn't answered the first questions goes on with them."""
    await visit.must_consent()
    profile = await visit.profile()
    if profile.branch is not Branch.SYMPTOMS:
        raise StalePress
    await visit.uow.questions.close(visit.chat)
    if command.had:
        return visit.told(NotCleared(group=command.group, branch=profile.branch)) + Outcome(settles=True)
    await let_go(visit, profile)
    if profile.before_alarm is None or (profile.of_age and profile.before_alarm is Branch.NOT_ADULT):
        return await ask_what_is_left(visit, command.group, signs=False) + Outcome(settles=True)
    return await version_in(visit, command.group) + Outcome(settles=True)


async def let_go(visit: Visit, profile: Profile) -> None:
    before = profile.before_alarm
    facts = {"branch": before, "screening": before.screening if before else None, "before_alarm": None}
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update=facts), visit.now)
