"""One update in, one transaction, letters out: who does what is one table."""

import re
from collections.abc import Awaitable, Callable, Mapping
from dataclasses import dataclass
from typing import Any, Final

from telegram import Bot

from bot.delivery.bells import Bells
from bot.delivery.clock import Clock
from bot.telegram.buttons import unpack
from bot.telegram.heard import Heard, hear
from bot.telegram.letters import Cause, Writer, press_answered
from bot.telegram.standing import standing_in
from core.desk import (
    abilities,
    adjusting,
    alarm,
    answers,
    classes,
    coming,
    dates,
    easing,
    easy_weeks,
    editing,
    furnishing,
    groups,
    habits,
    holding,
    in_group,
    joining,
    judging,
    more,
    overseeing,
    own,
    pain,
    reports,
    scoreboard,
    scores,
    sessions,
    sheets,
    sides,
    talking,
    today,
    tolerating,
    versions,
    withdrawing,
)
from core.desk import class_commands as k
from core.desk import coach_commands as o
from core.desk import commands as c
from core.desk import own_commands as w
from core.desk import version_commands as v
from core.desk.commands import Command
from core.desk.errors import Declined, StandingUnknown
from core.desk.outcome import Outcome
from core.desk.post_office import InboxItem, Store, Unit
from core.desk.says.common import Lost, Refused
from core.desk.visit import Standing, Visit

UseCase = Callable[[Visit, Any], Awaitable[Outcome]]

USE_CASES: Final[Mapping[type[Command], UseCase]] = {
    c.OpenGroup: groups.open_group,
    c.LeaveGroup: groups.leave_group,
    c.MoveGroup: groups.move_group,
    c.Reach: talking.reach,
    c.TalkInGroup: in_group.talk_in_group,
    c.SetZone: groups.set_zone,
    c.SetUnits: groups.set_units,
    c.JoinGroup: joining.join_group,
    c.GiveConsent: joining.give_consent,
    c.DeclineConsent: joining.decline_consent,
    c.AnswerScreening: joining.answer_screening,
    c.SayCleared: joining.say_cleared,
    c.SayMisunderstood: alarm.say_misunderstood,
    c.TellSigns: alarm.tell_signs,
    c.MoveDraft: sessions.move_draft,
    c.PostSession: sessions.post_session,
    c.PostLater: sessions.post_later,
    c.DiscardSession: sessions.discard_session,
    c.MyVersion: versions.my_version,
    c.ShowHow: versions.show_how,
    v.ChangeLines: adjusting.change_lines,
    v.OpenLine: adjusting.open_line,
    v.EaseLine: adjusting.ease_line,
    v.HardenLine: adjusting.harden_line,
    v.LackThing: adjusting.lack_thing,
    v.LineHurts: pain.line_hurts,
    v.DoAsWritten: adjusting.do_as_written,
    v.FreeLine: adjusting.free_line,
    v.ShowLine: adjusting.show_line,
    v.ReviewLimit: pain.review_limit,
    v.TellSide: sides.tell_side,
    v.TodayDiffers: today.today_differs,
    v.BeSick: today.be_sick,
    v.BeSore: today.be_sore,
    v.BeShort: today.be_short,
    v.BeBack: easing.be_back,
    v.TakeItEasy: easing.take_it_easy,
    v.SayBreak: easing.say_break,
    v.DoMore: more.do_more,
    v.BeElsewhere: today.be_elsewhere,
    v.DayLasts: today.day_lasts,
    v.AsUsual: today.as_usual,
    v.FurnishSet: furnishing.furnish_set,
    v.AddThing: furnishing.add_thing,
    v.UndoEquipment: furnishing.undo_equipment,
    c.OwnNothing: answers.own_nothing,
    c.LeaveOut: answers.leave_out,
    c.NoLimits: answers.no_limits,
    c.GoGentle: answers.go_gentle,
    c.ClaimAsWritten: scores.claim_as_written,
    c.SkipBodyMass: answers.skip_body_mass,
    c.ChoosePair: answers.choose_pair,
    c.ForgetShown: abilities.forget_shown,
    c.TellAbility: answers.tell_ability,
    c.ChangeAnswer: answers.change_answer,
    c.SeeBoard: scoreboard.see_board,
    c.RateEffort: reports.rate_effort,
    c.TellHurt: reports.tell_hurt,
    c.AllTold: reports.all_told,
    c.SeeScores: judging.see_scores,
    c.LookAtScore: judging.look_at_score,
    c.MarkScore: judging.mark_score,
    c.ConfirmScore: scores.confirm_score,
    c.FixScore: scores.fix_score,
    c.TakeScoreBack: scores.take_score_back,
    k.ConfirmClass: classes.confirm_class,
    k.DropClass: classes.drop_class,
    k.PlaceClass: classes.place_class,
    k.ManageClass: classes.manage_class,
    k.ChangeClass: classes.change_class,
    k.EndClass: classes.end_class,
    k.CancelDate: dates.cancel_date,
    k.MoveDate: dates.move_date,
    k.SeeClasses: coming.see_classes,
    k.ComeTo: coming.come_to,
    k.StayAway: coming.stay_away,
    k.TellAttended: coming.tell_attended,
    k.AboutReminders: habits.about_reminders,
    k.SetLead: habits.set_lead,
    k.SetQuiet: habits.set_quiet,
    k.SetOwnZone: habits.set_own_zone,
    k.SetDigest: habits.set_digest,
    k.WantDigest: habits.want_digest,
    k.AskHabit: habits.ask_habit,
    o.SeeNeeds: overseeing.see_needs,
    o.LookAtAthlete: overseeing.look_at_athlete,
    o.OrderLine: overseeing.order_line,
    o.MakeStanding: overseeing.make_standing,
    o.AcceptVersion: overseeing.accept_version,
    o.HoldAthlete: holding.hold_athlete,
    o.CallWeekEasy: easy_weeks.call_week_easy,
    o.SeeSession: holding.see_session,
    o.AskWhatCounts: tolerating.ask_what_counts,
    o.SetTolerance: tolerating.set_tolerance,
    o.AskAthlete: overseeing.ask_athlete,
    o.WithdrawSession: withdrawing.withdraw_session,
    c.AboutMe: talking.about_me,
    c.AskHelp: talking.ask_help,
    w.SaveScores: sheets.save_scores,
    w.ExportMine: own.export_mine,
    w.ForgetMe: own.forget_me,
    w.EraseMe: own.erase_me,
    w.KeepMe: own.keep_me,
    w.ShareLimits: own.share_limits,
    w.Retell: editing.retell,
    c.SendNoText: talking.send_no_text,
    c.Tell: talking.tell,
}

# What can be typed after a slash, in the order in which the platform lists it.
COMMANDS: Final[Mapping[str, tuple[Callable[[], Command], str]]] = {
    "today": (c.MyVersion, "your version of the newest session"),
    "board": (c.SeeBoard, "the scoreboard"),
    "classes": (k.SeeClasses, "live classes, and signing up"),
    "me": (c.AboutMe, "what I know about you, and how to change it"),
    "export": (w.ExportMine, "everything I've stored about you, as a file"),
    "forget": (w.ForgetMe, "erase everything I've stored about you"),
    "help": (c.AskHelp, "what you can send me"),
}

# What a deep link into the private chat carries: a group to join, or a session to have my version of.
DOOR: Final = re.compile(r"(?P<kind>[gv])(?P<number>\d{1,15})")


@dataclass(frozen=True, slots=True)
class Dispatch:
    """Handles updates of the inbox; raises what is a bug, answers what is a refusal."""

    store: Store
    clock: Clock
    bot: Bot
    bells: Bells
    writer: Writer

    async def handle(self, item: InboxItem) -> None:
        heard = hear(dict(item.body), self.bot)
        if heard is None:
            async with self.store.unit() as uow:
                await uow.inbox.done(item.id)
            return
        try:
            await self._decide(item, heard, understand(heard))
        except Declined as refusal:
            await self._refuse(item, heard, refusal)
        self.bells.something_was_done()

    async def _decide(self, item: InboxItem, heard: Heard, command: Command) -> None:
        """Carry it out; where that needs a standing, nothing is kept, it is looked up, and decided again."""
        standings: dict[int, Standing] = {}
        while True:
            try:
                await self._carry_out(item, heard, command, standings)
            except StandingUnknown as unknown:
                found = await standing_in(self.store, self.bot, unknown.group, heard.user_id)
                standings[unknown.group] = found
            else:
                return

    async def _carry_out(
        self, item: InboxItem, heard: Heard, command: Command, standings: Mapping[int, Standing]
    ) -> None:
        async with self.store.unit() as uow:
            visit = await self._enter(uow, heard, standings)
            outcome = await USE_CASES[type(command)](visit, command)
            await self._write(visit, item, heard, outcome)

    async def _refuse(self, item: InboxItem, heard: Heard, refusal: Declined) -> None:
        said = Refused(why=type(refusal).__name__)
        async with self.store.unit() as uow:
            visit = await self._enter(uow, heard, {})
            told = Outcome(toast=said) if heard.press else visit.told(said)
            await self._write(visit, item, heard, told)

    async def parked(self, item: InboxItem) -> None:
        """Tell somebody that their message could not be handled."""
        heard = hear(dict(item.body), self.bot)
        if heard is None or not heard.private:
            return
        async with self.store.unit() as uow:
            visit = await self._enter(uow, heard, {})
            cause = Cause(f"parked:{item.update_id}", heard.language)
            await self.writer.write(uow, visit.now, cause, visit.told(Lost()))
        self.bells.something_was_done()

    async def _enter(self, uow: Unit, heard: Heard, standings: Mapping[int, Standing]) -> Visit:
        now = self.clock.now()
        person = await uow.people.meet(heard.user_id, heard.name, heard.language, now)
        if heard.private:
            chat = await uow.chats.private_chat(person.id, heard.address)
        else:
            chat = await uow.chats.group_chat(heard.address)
        if not chat.reachable and heard.present is not False:
            await uow.chats.mark_reachable(chat.id, yes=True, now=now)
        return Visit(uow, now, person, chat.id, standings)

    async def _write(self, visit: Visit, item: InboxItem, heard: Heard, outcome: Outcome) -> None:
        private = visit.chat if heard.private else None
        cause = Cause(f"update:{item.update_id}", heard.language, heard.press, private)
        answered = await press_answered(visit.uow, cause, visit.now, visit.chat, outcome, self.writer)
        await visit.uow.outbox.add(answered, visit.now)
        await self.writer.write(visit.uow, visit.now, cause, outcome)
        await visit.uow.inbox.done(item.id)


def understand(heard: Heard) -> Command:
    """What the person wants, as a command."""
    if heard.press is not None:
        return unpack(heard.press.data)
    if heard.present is not None:
        return in_or_out(heard)
    if heard.moved_to is not None:
        return c.MoveGroup(old=heard.address, new=heard.moved_to)
    if heard.changed is not None:
        return w.Retell(message_id=heard.changed, text=heard.text or "", in_group=not heard.private)
    if heard.private:
        return said_in_private(heard)
    return c.TalkInGroup(title=heard.title, command=heard.command, text=heard.text, reply_to=heard.reply_to)


def said_in_private(heard: Heard) -> Command:
    if not heard.text or not heard.text.strip():
        return c.SendNoText(media=heard.media)
    if heard.command is not None:
        return typed_command(heard)
    return c.Tell(text=heard.text, reply_to=heard.reply_to)


def in_or_out(heard: Heard) -> Command:
    """The bot was added, removed, blocked or unblocked."""
    if heard.private:
        return c.Reach(yes=bool(heard.present))
    return c.OpenGroup(title=heard.title) if heard.present else c.LeaveGroup()


def typed_command(heard: Heard) -> Command:
    """`/start` with where it leads to, or one of COMMANDS; anything else asks for help."""
    door = DOOR.fullmatch(heard.argument)
    if heard.command == "start" and door:
        number = int(door["number"])
        return c.JoinGroup(group=number) if door["kind"] == "g" else c.MyVersion(session=number)
    make, _ = COMMANDS.get(heard.command or "", COMMANDS["help"])
    return make()
