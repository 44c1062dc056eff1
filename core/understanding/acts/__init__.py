"""Everything that can be told, asked or wished in a message: a closed union of frozen values."""

from typing import Any, Final, get_args

from core.understanding.acts.asked import (
    AnotherTime,
    Asked,
    Board,
    ClassLink,
    DoesLess,
    Help,
    HowHeavy,
    HowLong,
    HowTo,
    HowToPace,
    IsItOk,
    MyData,
    MyHistory,
    MyProgress,
    MyVersion,
    Swap,
    WhenIsClass,
    Why,
)
from core.understanding.acts.coached import (
    Announce,
    ClassChange,
    ClassOff,
    Coached,
    EasyWeek,
    Edit,
    Event,
    Greeting,
    HowIs,
    Newcomer,
    NoteFault,
    Order,
    Post,
    Roster,
    Said,
    SmallTalk,
    Teach,
    TellsClass,
    TellsSession,
    Thanks,
    WhatIf,
    WhatsComing,
    WhoNeedsMe,
    WhoReported,
    Withdraw,
)
from core.understanding.acts.told import (
    Agrees,
    BackAfter,
    Can,
    Condition,
    Corrects,
    Declines,
    DidAsWritten,
    DidScaled,
    Effort,
    Elsewhere,
    Got,
    Has,
    HasMinutes,
    HasNothing,
    HomeAgain,
    Hurt,
    Lost,
    NothingHurt,
    Scored,
    Shares,
    Sick,
    Sign,
    Skips,
    Sore,
    Spares,
    Told,
    TooEasy,
    TooHard,
    Trains,
    WantsEasy,
    Weighs,
    Well,
    WellAgain,
    Worries,
)
from core.understanding.acts.values import Act, Result, Side, Stop
from core.understanding.acts.wished import (
    ExportMe,
    ForgetMe,
    JoinsClass,
    LeavesClass,
    NoReminders,
    Quiet,
    Remind,
    ToCoach,
    Units,
    WantsTimer,
    Wished,
    Zone,
)

__all__ = [
    "ACTS", "OF_ATHLETE", "OF_COACH", "Act", "Agrees", "Announce", "AnotherTime", "AnyAct", "Asked", "BackAfter",
    "Board", "Can", "ClassChange", "ClassLink", "ClassOff", "Coached", "Condition", "Corrects",
    "Declines", "DidAsWritten", "DidScaled", "DoesLess", "EasyWeek", "Edit", "Effort", "Elsewhere", "Event",
    "ExportMe", "ForgetMe", "Got", "Greeting", "Has", "HasMinutes", "HasNothing", "Help",
    "HomeAgain", "HowHeavy", "HowIs", "HowLong", "HowTo", "HowToPace", "Hurt", "IsItOk", "JoinsClass",
    "LeavesClass", "Lost", "MyData", "MyHistory", "MyProgress", "MyVersion", "Newcomer", "NoReminders",
    "NoteFault", "NothingHurt", "Order", "Post", "Quiet", "Remind", "Result", "Roster", "Said",
    "Scored", "Shares", "Sick", "Side", "Sign", "Skips", "SmallTalk", "Sore", "Spares", "Stop",
    "Swap", "Teach", "TellsClass", "TellsSession", "Thanks", "ToCoach", "Told", "TooEasy",
    "TooHard", "Trains", "Units", "WantsEasy", "WantsTimer", "Weighs", "Well", "WellAgain", "WhatIf", "WhatsComing",
    "WhenIsClass", "WhoNeedsMe", "WhoReported", "Why", "Wished", "Withdraw", "Worries", "Zone", "document",
]  # fmt: skip

AnyAct = Told | Asked | Wished | Coached | Said

# By the name that stands in JSON and in the examples.
ACTS: Final[dict[str, type[Act]]] = {
    cls.model_fields["act"].default: cls
    for kind in (Told, Asked, Wished, Coached, Said)
    for cls in get_args(kind)
}
_BOTH: Final = frozenset(
    {
        "scored",
        "sign",
        "how_long",
        "board",
        "help",
        "wants_timer",
        "whats_coming",
        "thanks",
        "greeting",
        "small_talk",
    }
)
OF_COACH: Final = frozenset(cls.model_fields["act"].default for cls in get_args(Coached)) | _BOTH
OF_ATHLETE: Final = frozenset(ACTS) - OF_COACH | _BOTH


def document(act: AnyAct) -> dict[str, Any]:
    """The JSON form: what isn't known is left out."""
    fields = act.model_dump(by_alias=True, exclude_none=True, exclude_defaults=True)
    return {"act": act.act} | {name: value for name, value in fields.items() if value not in ((), [])}
