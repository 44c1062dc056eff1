"""Buttons that carry their whole meaning: a command packed into the platform's 64 bytes, and back.

`code:field:field`, fields in the order of the command's class; an empty field is None. The codes are written
in messages people keep for years: never reuse one. Gone are: oo, rv, wl.
"""

from typing import Final

from pydantic import ValidationError
from telegram.constants import InlineKeyboardButtonLimit

from bot.telegram import seals
from core.desk import commands as c
from core.desk.classes import commands as k
from core.desk.coaching import commands as o
from core.desk.commands import Command
from core.desk.errors import StalePress
from core.desk.profile import commands as w
from core.desk.versions import commands as v
from core.errors import Defect

CODES: Final[dict[str, type[Command]]] = {
    "gc": c.GiveConsent,
    "dc": c.DeclineConsent,
    "as": c.AnswerScreening,
    "aa": c.ScreenAgain,
    "cl": c.SayCleared,
    "mu": c.SayMisunderstood,
    "sg": c.TellSigns,
    "sz": c.SetZone,
    "su": c.SetUnits,
    "md": c.MoveDraft,
    "dr": c.RestoreDraft,
    "ml": c.MeanLine,
    "mn": c.MeanDraft,
    "ps": c.PostSession,
    "pl": c.PostLater,
    "bt": c.BackToTime,
    "ds": c.DiscardSession,
    "mv": c.MyVersion,
    "on": c.OwnNothing,
    "ti": c.TickThing,
    "tw": c.OwnTicked,
    "tg": c.TellStage,
    "nl": c.NoLimits,
    "sb": c.SkipBodyMass,
    "cp": c.ChoosePair,
    "ta": c.TellAbility,
    "fe": c.ForgetShown,
    "sh": c.ShowHow,
    "hl": c.AskHelp,
    "hq": c.OnlyAnswer,
    "me": c.AboutMe,
    "bo": c.SeeBoard,
    "cs": c.ConfirmScore,
    "kn": c.PickScore,
    "xs": c.LeaveScore,
    "ww": c.WeighThis,
    "sx": c.ScoreThis,
    "fs": c.FixScore,
    "ts": c.TakeScoreBack,
    "ca": c.ChangeAnswer,
    "lo": c.LeaveOut,
    "gg": c.GoGentle,
    "gn": c.GiveGentle,
    "aw": c.ClaimAsWritten,
    "re": c.RateEffort,
    "th": c.TellHurt,
    "at": c.AllTold,
    "ss": c.SeeScores,
    "ls": c.LookAtScore,
    "ms": c.MarkScore,
    "kc": k.ConfirmClass,
    "kd": k.DropClass,
    "kp": k.PlaceClass,
    "km": k.ManageClass,
    "kh": k.ChangeClass,
    "ke": k.EndClass,
    "kx": k.CancelDate,
    "ky": c.LeaveIt,
    "kv": k.MoveDate,
    "ki": k.ComeTo,
    "ko": k.StayAway,
    "ka": k.TellAttended,
    "ra": k.AboutReminders,
    "kl": k.SeeClasses,
    "rl": k.SetLead,
    "rq": k.SetQuiet,
    "rz": k.SetOwnZone,
    "rd": k.SetDigest,
    "rn": k.WantDigest,
    "rh": k.AskHabit,
    "vl": v.ChangeLines,
    "vo": v.OpenLine,
    "ve": v.EaseLine,
    "vh": v.HardenLine,
    "vn": v.LackThing,
    "vp": v.LineHurts,
    "vw": v.DoAsWritten,
    "vf": v.FreeLine,
    "vs": v.ShowLine,
    "vt": v.TellSide,
    "rw": v.ReviewLimit,
    "dd": v.TodayDiffers,
    "di": v.BeSick,
    "dx": v.BeSore,
    "dm": v.BeShort,
    "dp": v.BeElsewhere,
    "db": v.BeBack,
    "dw": v.TakeItEasy,
    "dk": v.SayBreak,
    "dg": v.DoMore,
    "du": v.DayLasts,
    "da": v.AsUsual,
    "ef": v.FurnishSet,
    "ea": v.AddThing,
    "eu": v.UndoEquipment,
    "vc": v.GiveTimer,
    "oe": o.SeeNeeds,
    "ox": o.SeeWhoGetsWhat,
    "oa": o.LookAtAthlete,
    "ol": o.OrderLine,
    "ob": o.TakeOrdersBack,
    "os": o.MakeStanding,
    "ok": o.AcceptVersion,
    "oh": o.HoldAthlete,
    "sa": c.SendAgain,
    "oz": o.CallWeekEasy,
    "og": o.LetGoHeavier,
    "ov": o.PutVolumeFirst,
    "fk": o.KeepFault,
    "fw": o.RewordFault,
    "fd": o.DropFault,
    "fl": o.LiftFault,
    "sp": o.SeeSession,
    "ow": o.AskWhatCounts,
    "ot": o.SetTolerance,
    "oq": o.AskAthlete,
    "wm": c.MeanMember,
    "ws": c.MeanSession,
    "wd": o.WithdrawSession,
    "an": o.Announce,
    "ad": o.DropAnnouncement,
    "ao": o.SendWord,
    "aq": o.AskInWords,
    "nn": o.NoteScores,
    "no": o.TakeScoresOff,
    "np": o.PingQuiet,
    "wf": w.SaveScores,
    "we": w.EraseMe,
    "wa": w.ExportMine,
    "wb": w.ForgetMe,
    "wk": w.KeepMe,
    "wg": w.ShareLimits,
    "wp": w.PassOn,
    "wt": w.PassOnTo,
    "wx": w.ForgetWord,
    "wq": w.TakeAsTold,
}
_CODE_OF = {kind: code for code, kind in CODES.items()}
_LIMIT = InlineKeyboardButtonLimit.MAX_CALLBACK_DATA - seals.LENGTH


def pack(command: Command) -> str:
    """Callback data of a command, to be sealed; a Defect if both don't fit into 64 bytes."""
    fields = ["" if value is None else str(value) for _, value in command]
    data = ":".join([_CODE_OF[type(command)], *fields])
    if len(data.encode()) > _LIMIT:
        raise Defect(f"{data} is longer than {_LIMIT} bytes")
    return data


def unpack(data: str) -> Command:
    """The command of callback data; what can't be read is a stale press, never a crash."""
    code, *fields = data.split(":")
    kind = CODES.get(code)
    if kind is None or len(fields) != len(kind.model_fields):
        raise StalePress
    names = list(kind.model_fields)
    try:
        return kind.model_validate({name: value or None for name, value in zip(names, fields, strict=True)})
    except ValidationError:
        raise StalePress from None
