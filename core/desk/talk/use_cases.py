"""Text meets taps: each act that can be told, asked or wished, with the use case that carries it out."""

from collections.abc import Awaitable, Callable, Mapping
from typing import Any, Final

from core.desk.outcome import Outcome
from core.desk.talk import acts_asked as asks
from core.desk.talk import acts_coached as coached
from core.desk.talk import acts_told as tells
from core.desk.talk import acts_wished as wishes
from core.desk.talk.own_lines import swap
from core.desk.talk.scene import Scene
from core.desk.visit import Visit
from core.understanding import acts as a

UseCase = Callable[[Visit, Any, Scene], Awaitable[Outcome | None]]

USE_CASES: Final[Mapping[type[a.Act], UseCase]] = {
    # an athlete tells
    a.Has: tells.got,
    a.Got: tells.got,
    a.Lost: tells.lost,
    a.Shares: tells.shares,
    a.Spares: tells.spares,
    a.Condition: tells.spares,
    a.Hurt: tells.hurt,
    a.WellAgain: tells.well_again,
    a.Well: tells.well,
    a.Weighs: tells.weighs,
    a.Can: tells.can,
    a.Scored: tells.scored,
    a.Corrects: tells.corrects,
    a.DidScaled: tells.did_scaled,
    a.Effort: tells.effort,
    a.Sore: tells.sore,
    a.HasMinutes: tells.short,
    a.Sick: tells.sick,
    a.Elsewhere: tells.away,
    a.HomeAgain: tells.at_home,
    a.BackAfter: tells.back,
    a.Trains: tells.trains,
    a.WantsEasy: tells.lines,
    a.TooHard: tells.lines,
    a.TooEasy: tells.lines,
    a.Swap: swap,
    a.Skips: tells.skips,
    a.NothingHurt: tells.nothing_hurt,
    a.Agrees: tells.nothing_waits,
    a.Declines: tells.nothing_waits,
    a.Worries: tells.worries,
    # an athlete asks
    a.MyVersion: asks.version,
    a.Why: asks.why,
    a.HowLong: coached.how_long,
    a.HowToPace: asks.how_long,
    a.HowTo: asks.how_to,
    a.HowHeavy: asks.why,
    a.MyHistory: asks.history,
    a.MyProgress: asks.getting_on,
    a.HasNothing: tells.has_nothing,
    a.Board: asks.board,
    a.WhenIsClass: wishes.classes,
    a.ClassLink: wishes.classes,
    a.MyData: wishes.me,
    a.IsItOk: asks.is_it_ok,
    a.AnotherTime: asks.another_time,
    a.DoesLess: asks.does_less,
    a.Help: asks.help_,
    # an athlete wishes
    a.JoinsClass: wishes.joins_class,
    a.LeavesClass: wishes.leaves_class,
    a.Remind: wishes.remind,
    a.NoReminders: wishes.no_reminders,
    a.Quiet: wishes.quiet,
    a.Zone: wishes.zone,
    a.Units: wishes.units,
    a.ToCoach: wishes.to_coach,
    a.ForgetMe: wishes.forget,
    a.ExportMe: wishes.export,
    a.WantsTimer: wishes.timer,
    # a coach
    a.TellsSession: coached.session,
    a.Edit: coached.edit,
    a.Post: coached.post,
    a.Withdraw: coached.withdraw,
    a.TellsClass: coached.tells_class,
    a.ClassChange: coached.class_change,
    a.ClassOff: coached.class_off,
    a.Order: coached.order,
    a.HowIs: coached.how_is,
    a.NoteFault: coached.note_fault,
    a.WhoReported: coached.who_reported,
    a.WhoNeedsMe: coached.who_needs_me,
    a.WhatsComing: coached.whats_coming,
    a.Roster: coached.roster,
    a.Newcomer: coached.newcomer,
    a.EasyWeek: coached.easy_week,
    a.Announce: coached.announce,
    a.Teach: coached.teach,
    a.WhatIf: coached.what_if,
    # everybody
    a.Thanks: tells.thanks,
    a.Greeting: tells.greeting,
}
