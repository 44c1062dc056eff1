"""Who may do what: one table for all that can be typed, pressed, linked or replied, looked up in one place.

A use case marked `admitted` begins with `admit`, whoever calls it. An id that leads out of the visitor's own groups is
simply not found.
"""

from collections.abc import Callable, Coroutine, Mapping
from dataclasses import dataclass, field
from enum import Enum, StrEnum
from functools import wraps
from typing import Any, Concatenate, Final, ParamSpec, TypeVar

from core.desk import commands as c
from core.desk.classes import commands as k
from core.desk.coaching import commands as o
from core.desk.commands import Command
from core.desk.errors import (
    Declined,
    NotAMember,
    NotHere,
    NotTheCoach,
    NotYours,
    StalePress,
    UnknownThing,
)
from core.desk.outcome import Outcome
from core.desk.profile import commands as w
from core.desk.versions import commands as v
from core.desk.visit import Visit
from core.store.belongings import Home, Thing


class Who(StrEnum):
    """The standing that a command needs, in the group that its ids lead to."""

    PLATFORM = "platform"  # nobody: only the platform tells it, and no button can
    ANYBODY = "anybody"
    NEWCOMER = "newcomer"  # whom the platform knows in the group; they are let in
    MEMBER = "member"
    COACH = "coach"


class Id(Enum):
    """What an id in a command names, and whose it must be; without a word about that, the group's."""

    GROUP = (Thing.GROUP, False)
    SESSION = (Thing.SESSION, False)
    OWN_DRAFT = (Thing.SESSION, True)
    OWN_VERSION = (Thing.VERSION, True)
    SCORE = (Thing.SCORE, False)
    OWN_SCORE = (Thing.SCORE, True)
    CLASS = (Thing.CLASS, False)
    OWN_CLASS = (Thing.CLASS, True)
    FAULT = (Thing.FAULT, False)
    LETTER = (Thing.LETTER, False)
    OWN_WORD = (Thing.WORD, True)
    OWN_EVIDENCE = (Thing.EVIDENCE, True)
    ORDER = (Thing.ORDER, False)
    OWN_CHANGE = (Thing.FURNISHED, True)
    ATHLETE = (None, False)  # a person who belongs to the group that the other ids lead to

    @property
    def thing(self) -> Thing | None:
        found: Thing | None = self.value[0]
        return found

    @property
    def is_own(self) -> bool:
        return bool(self.value[1])


@dataclass(frozen=True, slots=True)
class Rule:
    """`ids`: each field of the command that names something. `in_group`: it may be done in a group's chat.

    `asked_anew`: what the platform said a moment ago isn't enough.
    """

    who: Who
    ids: Mapping[str, Id] = field(default_factory=dict)
    in_group: bool = False
    asked_anew: bool = False


def _rule(who: Who, ids: Mapping[str, Id]) -> Rule:
    return Rule(who, ids)


def anybody(**ids: Id) -> Rule:
    return _rule(Who.ANYBODY, ids)


def newcomer(**ids: Id) -> Rule:
    return _rule(Who.NEWCOMER, ids)


def member(**ids: Id) -> Rule:
    return _rule(Who.MEMBER, ids)


def coach(**ids: Id) -> Rule:
    return _rule(Who.COACH, ids)


def coach_now(**ids: Id) -> Rule:
    """For what the whole group hears of: whoever is coach at this very moment."""
    return Rule(Who.COACH, ids, asked_anew=True)


def in_group_too(rule: Rule) -> Rule:
    return Rule(rule.who, rule.ids, in_group=True)


FROM_THE_PLATFORM: Final = Rule(Who.PLATFORM, in_group=True)

ACCESS: Final[Mapping[type[Command], Rule]] = {
    # told by the platform
    c.OpenGroup: FROM_THE_PLATFORM,
    c.LeaveGroup: FROM_THE_PLATFORM,
    c.MoveGroup: FROM_THE_PLATFORM,
    c.Reach: FROM_THE_PLATFORM,
    c.PinMessage: FROM_THE_PLATFORM,
    w.Retell: FROM_THE_PLATFORM,
    # said; what is read in it is admitted by its own command
    c.Tell: anybody(),
    c.SendNoText: anybody(),
    c.TalkInGroup: in_group_too(anybody()),
    c.MeanMember: member(),
    c.MeanSession: member(session=Id.SESSION),
    # the way in
    c.ComeBack: anybody(),
    c.JoinGroup: newcomer(group=Id.GROUP),
    c.GiveConsent: member(group=Id.GROUP),
    c.DeclineConsent: member(group=Id.GROUP),
    c.AnswerScreening: member(group=Id.GROUP),
    c.ScreenAgain: member(group=Id.GROUP),
    c.SayCleared: member(group=Id.GROUP),
    c.SayMisunderstood: member(group=Id.GROUP),
    c.TellSigns: member(group=Id.GROUP),
    # what a coach sets up and posts
    c.SetZone: coach_now(group=Id.GROUP),
    c.SetUnits: coach_now(group=Id.GROUP),
    c.DraftSession: anybody(),
    c.MoveDraft: coach_now(session=Id.OWN_DRAFT, group=Id.GROUP),
    c.RestoreDraft: coach(session=Id.OWN_DRAFT),
    c.MeanLine: coach(session=Id.SESSION),
    c.MeanDraft: coach(session=Id.SESSION),
    c.PostSession: coach_now(session=Id.SESSION),
    c.PostLater: coach_now(session=Id.SESSION),
    c.BackToTime: coach_now(session=Id.SESSION),
    c.DiscardSession: coach(session=Id.OWN_DRAFT),
    o.WithdrawSession: coach_now(session=Id.SESSION),
    o.Announce: coach_now(word=Id.OWN_WORD, group=Id.GROUP),
    o.NoteScores: coach_now(word=Id.OWN_WORD, session=Id.SESSION),
    o.PingQuiet: coach_now(session=Id.SESSION),
    o.TakeScoresOff: coach_now(session=Id.SESSION, person=Id.ATHLETE),
    o.SendWord: coach_now(word=Id.OWN_WORD, person=Id.ATHLETE),
    o.AskInWords: coach_now(word=Id.OWN_WORD, person=Id.ATHLETE),
    o.DropAnnouncement: anybody(word=Id.OWN_WORD),
    c.SendAgain: coach_now(letter=Id.LETTER),
    # the athlete's version and what it needs to know
    c.MyVersion: newcomer(session=Id.SESSION),
    c.ShowHow: member(version=Id.OWN_VERSION),
    c.OwnNothing: member(session=Id.SESSION),
    c.TickThing: member(session=Id.SESSION),
    c.OwnTicked: member(session=Id.SESSION),
    c.TellStage: member(session=Id.SESSION),
    c.LeaveOut: member(session=Id.SESSION),
    c.NoLimits: member(session=Id.SESSION),
    c.GiveGentle: member(session=Id.SESSION),
    c.GoGentle: member(session=Id.SESSION),
    c.SkipBodyMass: member(session=Id.SESSION),
    c.ChoosePair: member(session=Id.SESSION),
    c.TellAbility: member(session=Id.SESSION),
    c.ForgetShown: anybody(evidence=Id.OWN_EVIDENCE),
    c.ChangeAnswer: anybody(),
    v.ChangeLines: member(version=Id.OWN_VERSION),
    v.OpenLine: member(version=Id.OWN_VERSION),
    v.EaseLine: member(version=Id.OWN_VERSION),
    v.HardenLine: member(version=Id.OWN_VERSION),
    v.LackThing: member(version=Id.OWN_VERSION),
    v.LineHurts: member(version=Id.OWN_VERSION),
    v.DoAsWritten: member(version=Id.OWN_VERSION),
    v.FreeLine: member(version=Id.OWN_VERSION),
    v.ShowLine: member(version=Id.OWN_VERSION),
    v.TodayDiffers: member(version=Id.OWN_VERSION),
    v.BeSick: member(version=Id.OWN_VERSION),
    v.BeSore: member(version=Id.OWN_VERSION),
    v.BeShort: member(version=Id.OWN_VERSION),
    v.BeElsewhere: member(version=Id.OWN_VERSION),
    v.BeBack: member(version=Id.OWN_VERSION),
    v.TakeItEasy: member(version=Id.OWN_VERSION),
    v.TellSide: member(),
    v.ReviewLimit: member(group=Id.GROUP),
    v.SayBreak: member(session=Id.SESSION),
    v.DoMore: member(),
    v.DayLasts: member(session=Id.SESSION),
    v.AsUsual: member(session=Id.SESSION),
    v.FurnishSet: anybody(),
    v.AddThing: anybody(),
    v.UndoEquipment: anybody(change=Id.OWN_CHANGE),
    v.GiveTimer: member(session=Id.SESSION),
    o.SeeSession: member(session=Id.SESSION),
    # scores
    c.SeeBoard: in_group_too(member(session=Id.SESSION)),
    c.ConfirmScore: in_group_too(member(session=Id.SESSION)),
    c.PickScore: in_group_too(member(session=Id.SESSION)),
    c.LeaveScore: in_group_too(member(session=Id.SESSION)),
    c.WeighThis: anybody(),
    c.ScoreThis: member(session=Id.SESSION),
    c.FixScore: in_group_too(member(score=Id.OWN_SCORE)),
    c.TakeScoreBack: in_group_too(member(score=Id.OWN_SCORE)),
    c.ClaimAsWritten: in_group_too(member(score=Id.OWN_SCORE)),
    c.RateEffort: member(session=Id.SESSION),
    c.TellHurt: member(session=Id.SESSION),
    c.AllTold: member(session=Id.SESSION),
    c.SeeScores: coach(session=Id.SESSION),
    c.LookAtScore: coach(score=Id.SCORE),
    c.MarkScore: coach(score=Id.SCORE),
    w.SaveScores: coach(session=Id.SESSION),
    # classes and reminders
    k.SeeClasses: anybody(),
    c.LeaveIt: anybody(),
    k.ComeTo: in_group_too(newcomer(class_id=Id.CLASS)),
    k.StayAway: in_group_too(member(class_id=Id.CLASS)),
    k.TellAttended: member(class_id=Id.CLASS),
    k.ConfirmClass: coach_now(class_id=Id.CLASS),
    k.DropClass: coach(class_id=Id.OWN_CLASS),
    k.PlaceClass: coach_now(class_id=Id.OWN_CLASS, group=Id.GROUP),
    k.ManageClass: coach_now(class_id=Id.CLASS),
    k.ChangeClass: coach_now(class_id=Id.CLASS),
    k.EndClass: coach_now(class_id=Id.CLASS),
    k.CancelDate: coach_now(class_id=Id.CLASS),
    k.MoveDate: coach_now(class_id=Id.CLASS),
    k.AboutReminders: member(),
    k.SetLead: member(),
    k.SetQuiet: member(),
    k.SetOwnZone: member(),
    k.SetDigest: member(),
    k.WantDigest: member(),
    k.AskHabit: member(),
    # a coach and single athletes
    o.SeeNeeds: coach(session=Id.SESSION),
    o.SeeWhoGetsWhat: coach(session=Id.SESSION),
    o.LookAtAthlete: coach(session=Id.SESSION, person=Id.ATHLETE),
    o.TakeOrdersBack: coach(group=Id.GROUP, person=Id.ATHLETE, order=Id.ORDER),
    o.OrderLine: coach(session=Id.SESSION, person=Id.ATHLETE),
    o.MakeStanding: coach(session=Id.SESSION, person=Id.ATHLETE),
    o.AcceptVersion: coach(session=Id.SESSION, person=Id.ATHLETE),
    o.AskAthlete: coach(session=Id.SESSION, person=Id.ATHLETE),
    o.HoldAthlete: coach(group=Id.GROUP, person=Id.ATHLETE),
    o.LetGoHeavier: coach(group=Id.GROUP, person=Id.ATHLETE),
    o.PutVolumeFirst: coach(group=Id.GROUP, person=Id.ATHLETE),
    o.CallWeekEasy: coach(group=Id.GROUP, person=Id.ATHLETE),
    o.KeepFault: coach(fault=Id.FAULT),
    o.RewordFault: coach(fault=Id.FAULT),
    o.DropFault: coach(fault=Id.FAULT),
    o.LiftFault: coach(fault=Id.FAULT),
    o.AskWhatCounts: coach(group=Id.GROUP),
    o.SetTolerance: coach(group=Id.GROUP),
    # oneself
    c.AboutMe: anybody(),
    c.AskHelp: anybody(),
    c.OnlyAnswer: anybody(),
    w.ExportMine: anybody(),
    w.ForgetMe: anybody(),
    w.EraseMe: anybody(),
    w.KeepMe: anybody(),
    w.ShareLimits: member(group=Id.GROUP),
    w.PassOn: member(word=Id.OWN_WORD),
    w.PassOnTo: member(word=Id.OWN_WORD, group=Id.GROUP),
    w.TakeAsTold: member(word=Id.OWN_WORD),
    w.ForgetWord: anybody(word=Id.OWN_WORD),
}


async def admit(visit: Visit, command: Command) -> None:
    """Raises Declined where the visitor may not do this, and StandingUnknown where the platform must be asked."""
    rule = ACCESS[type(command)]
    if not (visit.private or rule.in_group):
        raise NotHere
    groups = await _groups_named(visit, command, rule)
    if rule.who is Who.MEMBER and not groups:
        await _must_belong(visit)
    if rule.who is Who.COACH:
        await _must_coach(visit, groups, anew=rule.asked_anew)
    await _must_train_there(visit, command, rule, groups)


async def _groups_named(visit: Visit, command: Command, rule: Rule) -> set[int]:
    """The groups that the ids lead to; all of them the visitor's, or not found."""
    found = set()
    for name, what in rule.ids.items():
        row_id = getattr(command, name)
        if what.thing is None or row_id is None:
            continue
        home = await visit.uow.belongings.home_of(what.thing, row_id)
        await _must_be_theirs(visit, rule, what, home)
        if home is not None and home.group_id is not None:
            found.add(home.group_id)
    return found


async def _must_be_theirs(visit: Visit, rule: Rule, what: Id, home: Home | None) -> None:
    if rule.who is Who.NEWCOMER:
        await _let_in(visit, home.group_id if home else None)
        return
    if home is None or not await _is_reached(visit, rule, home):
        raise await _not_found(visit, what)
    if what.is_own and home.owner_id != visit.person.id:
        if home.group_id is None or what.thing not in SEEN_BY_ALL:
            raise await _not_found(visit, what)
        raise NotYours if what is Id.OWN_SCORE else NotTheCoach


async def _not_found(visit: Visit, what: Id) -> Declined:
    """The same whether there is no such thing or it is somebody else's; whoever is in no group is shown the way in."""
    if what in TAKEN_BACK:
        return StalePress()
    return UnknownThing() if await visit.memberships() else NotAMember()


# Of these only their owner ever sees a button, and it may have been pressed before.
TAKEN_BACK: Final = frozenset({Id.OWN_WORD, Id.OWN_EVIDENCE})


# What everybody in the group may know to be there, though only whose it is may change it.
SEEN_BY_ALL: Final = frozenset({Thing.SCORE, Thing.SESSION, Thing.CLASS})


async def _is_reached(visit: Visit, rule: Rule, home: Home) -> bool:
    """Through one of the visitor's groups; what is theirs whatever they belong to, through themselves."""
    if home.group_id is None or rule.who is Who.ANYBODY:
        return home.owner_id == visit.person.id or home.group_id in await visit.group_ids()
    return home.group_id in await visit.group_ids()


async def _let_in(visit: Visit, group: int | None) -> None:
    """Whoever isn't let in learns nothing, not even whether there is such a thing."""
    found = group is not None and visit.here in {None, group}
    if group is not None and found and await visit.enter(group):
        return
    raise UnknownThing if await visit.memberships() else NotAMember


async def _must_belong(visit: Visit) -> None:
    if not await visit.memberships():
        raise NotAMember


async def _must_coach(visit: Visit, groups: set[int], *, anew: bool) -> None:
    """Of every group that is named; of any, where none is."""
    if anew:
        visit.must_ask(groups)
    coached = {one.group_id for one in await visit.coached()}
    if not coached or not groups <= coached:
        raise NotTheCoach


async def _must_train_there(visit: Visit, command: Command, rule: Rule, groups: set[int]) -> None:
    """An athlete who is named belongs to every group that is."""
    for name in (name for name, what in rule.ids.items() if what is Id.ATHLETE):
        person = getattr(command, name)
        if person is None:
            continue
        for group in groups:
            if await visit.uow.groups.membership(person, group) is None:
                raise UnknownThing


P = ParamSpec("P")
Does = TypeVar("Does", bound=Command)
UseCase = Callable[Concatenate[Visit, Does, P], Coroutine[Any, Any, Outcome]]


def admitted(use_case: UseCase[Does, P]) -> UseCase[Does, P]:
    """Mark a use case: nobody carries it out, by whatever way, who isn't admitted to its command."""

    @wraps(use_case)
    async def carry_out(visit: Visit, command: Does, /, *args: P.args, **more: P.kwargs) -> Outcome:
        await admit(visit, command)
        return await use_case(visit, command, *args, **more)

    carry_out.__dict__[MARK] = True
    return carry_out


MARK: Final = "admitted"
