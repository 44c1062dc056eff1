"""The questions that may be open in a chat: a closed union; and, as data, what else may be told while one is."""

from collections.abc import Mapping
from typing import Annotated, Any, Final, Literal, get_args

from pydantic import ConfigDict, Field, TypeAdapter

from core.desk.visit import Visit
from core.scaling.values import Ask, Question
from core.store.records import OpenQuestion
from core.understanding.acts import ACTS
from core.values import Value

# Kept with a question that was asked once more behind something else, or after what was no answer.
ASKED_TWICE: Final = "asked_twice"
# It was said once more behind something that was asked beside it.
SAID_AGAIN: Final = "said_again"


class Asked(Value):
    """Base of every open question: what it keeps until its answer. `kind` tells which it is."""

    model_config = ConfigDict(frozen=True, extra="ignore")


class OfConsent(Asked):
    kind: Literal["consent"] = "consent"
    group: int


class OfDoor(Asked):
    """Nothing is asked: the way in was told."""

    kind: Literal["door"] = "door"


class OfScreening(Asked):
    """`answers` so far, one letter each; `doubts`: how often it was asked again."""

    kind: Literal["screening"] = "screening"
    group: int
    answers: str
    doubts: int = 0


class OfSigns(Asked):
    kind: Literal["signs"] = "signs"
    group: int


class OfGroup(Asked):
    """Which clock or which units a group goes by. `later`: what was written meanwhile, to be heard once it is known."""

    kind: Literal["zone", "units"]
    group: int
    later: str = ""


class OfProfile(Asked):
    """What a version needs to know; None where nobody waits for one."""

    kind: Literal[Ask.EQUIPMENT, Ask.LIMITS, Ask.BODY_MASS, Ask.PAIR, Ask.STAGE, Ask.ABILITY]
    session: int | None
    question: Question


class OfWeight(Asked):
    """How heavy the first of `things` is; `have`: what is known already."""

    kind: Literal["weight"] = "weight"
    session: int | None
    things: tuple[Mapping[str, Any], ...]
    have: tuple[Mapping[str, Any], ...]
    units: str


class OfScore(Asked):
    """`text`: what was told; `whose`: it counts for nothing before the yes; `fixing`: it takes another's place."""

    kind: Literal["score"] = "score"
    session: int
    athlete: int | None = None
    block: int | None = None
    text: str = ""
    whose: bool = False
    fixing: bool = False
    told_in: tuple[int, int] | None = None


class OfPain(Asked):
    kind: Literal["pain"] = "pain"
    session: int | None = None


class OfCoach(Asked):
    """A coach asked; the answer goes to `chat`."""

    kind: Literal["coach"] = "coach"
    chat: int


class OfFaultWords(Asked):
    kind: Literal["fault"] = "fault"
    fault: int
    person: int


class OfSet(Asked):
    kind: Literal["set"] = "set"
    place: str
    session: int | None = None
    days: Mapping[str, Any] | None = None


class OfClass(Asked):
    """`text`: what was read of a class so far; `replaces`: the class that it would be a change of."""

    kind: Literal["class"] = "class"
    group: int
    text: str = ""
    replaces: int | None = None


class OfHabit(Asked):
    kind: Literal["lead", "quiet", "own_zone", "digest"]
    which: str


class OfBreak(Asked):
    kind: Literal["break"] = "break"
    session: int


class OfNamesake(Asked):
    """Which of several people with one name was meant in `text`."""

    kind: Literal["who"] = "who"
    text: str
    name: str
    among: Mapping[str, int]
    session: int | None = None
    message: int | None = None


class OfWhichSession(Asked):
    """Of which session the score in `text` is, or which of those that aren't posted yet its change is of."""

    kind: Literal["which", "which_draft"] = "which"
    text: str
    among: tuple[int, ...]
    message: int | None = None


class OfLine(Asked):
    """Which line of a session the change in `text` means."""

    kind: Literal["line"] = "line"
    session: int
    text: str


class OfDraft(Asked):
    """Whether `text` is a session of its own, or was meant as a change of one."""

    kind: Literal["draft"] = "draft"
    session: int
    text: str


AnyAsked = (
    OfDoor | OfConsent | OfScreening | OfSigns | OfGroup | OfProfile | OfWeight | OfScore | OfPain | OfCoach
    | OfFaultWords | OfSet | OfClass | OfHabit | OfBreak | OfNamesake | OfWhichSession | OfLine | OfDraft
)  # fmt: skip
_READ: Final[TypeAdapter[AnyAsked]] = TypeAdapter(Annotated[AnyAsked, Field(discriminator="kind")])


def asked_in(question: OpenQuestion) -> AnyAsked:
    """The stored row as what it is. Raises ValidationError for one that nobody here writes."""
    return _READ.validate_python({**question.refs, "kind": question.kind})


KINDS: Final = frozenset(
    str(kind) for cls in get_args(AnyAsked) for kind in get_args(cls.model_fields["kind"].annotation)
)
ASKED_FOR_VERSIONS: Final = frozenset(map(str, Ask))
_HEALTH: Final = frozenset({"consent", "screening", "pain", "coach", "limits"})

# Of several things told at once these answers are taken beside the rest.
TAKEN_BESIDE: Final = frozenset({"equipment", "limits", "body_mass", "ability"})
# What may be told unasked, and the open questions that keep the words for themselves: there they may be the answer,
# or aren't for the bot. While any other is open it is taken, and that question stays.
Topic = Literal[
    "pain", "condition", "side", "weight", "ability", "elsewhere", "correction", "effort", "named_effort", "for_coach",
    "place", "class", "several", "any_time", "thanks", "minutes",
]  # fmt: skip
KEPT_BY: Final[Mapping[Topic, frozenset[str]]] = {
    "pain": _HEALTH,
    "condition": _HEALTH,
    "side": _HEALTH | {"score", "pair"},
    "weight": KINDS - (ASKED_FOR_VERSIONS - {"body_mass"}),
    "ability": KINDS - ASKED_FOR_VERSIONS,
    "elsewhere": frozenset({"consent", "screening", "coach", "score", "class"}),
    "correction": KINDS - {"pain", "score", "consent", "screening"},
    "effort": KINDS,
    "named_effort": frozenset({"consent", "screening", "coach", "fault", "who", "which"}),
    "for_coach": frozenset({"coach"}),
    "place": frozenset({"zone"}),
    "class": frozenset({"class"}),
    "several": KINDS - TAKEN_BESIDE,
    "any_time": frozenset({"coach", "fault", "who", "which"}),
    "thanks": frozenset({"coach", "who", "which"}),
    "minutes": KINDS - ASKED_FOR_VERSIONS - {"weight", "pain"},
}
_NO_OR_YES: Final = frozenset({"agrees", "declines", "skips"})
_HOW_IT_WENT: Final = frozenset(
    {"scored", "corrects", "hurt", "sore", "nothing_hurt", "effort", "did_as_written", "did_scaled"}
    | {"too_hard", "too_easy"}
)
# Heard whatever is open, and the question asked once more behind it.
AT_ANY_TIME: Final = frozenset(
    {
        "help",
        "how_to",
        "is_it_ok",
        "another_time",
        "does_less",
        "worries",
        "when_is_class",
        "class_link",
        "whats_coming",
        "my_data",
        "board",
    }
)
# Of a choice between few words anything may be the answer, but what tells of things or the body plainly.
_ALL_BUT_FACTS: Final = (
    frozenset(ACTS) - {"has", "got", "lost", "spares", "hurt", "condition", "weighs"} - AT_ANY_TIME
)
# The acts that answer what is open. Whatever else is surely told is done, and the question asked once more; where a
# question isn't named here, all words are for whoever asked.
ANSWERED_BY: Final[Mapping[str, frozenset[str]]] = {
    "consent": _NO_OR_YES,
    "screening": _NO_OR_YES,
    "signs": _NO_OR_YES | {"nothing_hurt", "well"},
    "zone": frozenset({"zone", "elsewhere", "home_again"}),
    "own_zone": frozenset({"zone", "elsewhere", "home_again"}),
    "units": frozenset({"units", "weighs"}),
    "equipment": _NO_OR_YES | {"has", "got", "has_nothing", "lost", "shares", "elsewhere"},
    "set": _NO_OR_YES | {"has", "got", "has_nothing", "lost", "shares", "elsewhere"},
    "weight": _NO_OR_YES | {"has", "got", "has_nothing", "weighs", "can"},
    "pair": _NO_OR_YES | {"wants_easy", "too_hard", "too_easy", "did_as_written", "did_scaled", "effort", "can"},
    "stage": _ALL_BUT_FACTS,
    "limits": _NO_OR_YES | {"spares", "condition", "hurt", "sore", "nothing_hurt", "well", "well_again", "has_nothing"},
    "body_mass": _NO_OR_YES | {"weighs"},
    "ability": _NO_OR_YES | {"can", "has_nothing"},
    "score": _NO_OR_YES | _HOW_IT_WENT | {"can"},
    "pain": _NO_OR_YES | {"spares", "condition", "hurt", "sore", "nothing_hurt", "well", "well_again"},
}  # fmt: skip
# Who has agreed and is being screened may tell what they have already, and what to spare.
WHILE_SCREENED: Final = frozenset(
    {"has", "got", "lost", "weighs", "spares", "condition", "hurt", "can", "trains"}
)
# What may be asked before consent and safety are settled; whatever tells of oneself waits for them.
BEFORE_ENTRY: Final = frozenset(
    {
        "help",
        "is_it_ok",
        "another_time",
        "does_less",
        "worries",
        "how_to",
        "when_is_class",
        "class_link",
        "my_data",
        "forget_me",
        "export_me",
        "board",
        "zone",
        "units",
    }
)
# What is heard of whoever is held after a stop sign: facts, questions and wishes, nothing that leads to training;
# and what is answered with the way out behind it.
HELD_ALL_THE_SAME: Final = frozenset({"another_time", "does_less", "worries", "how_to"})
WHILE_HELD: Final = (
    (BEFORE_ENTRY - {"is_it_ok"})
    | WHILE_SCREENED
    | {
        "shares",
        "has_nothing",
        "spares",
        "condition",
        "hurt",
        "well_again",
        "can",
        "my_history",
        "my_progress",
    }
    | {"remind", "no_reminders", "quiet", "leaves_class", "to_coach", "thanks", "greeting", "whats_coming"}
)


async def keeps(visit: Visit, topic: Topic) -> bool:
    """Whether the question that is open in this chat keeps what is told of the topic."""
    question = await visit.uow.questions.open_in(visit.chat)
    return question is not None and question.kind in KEPT_BY[topic]
