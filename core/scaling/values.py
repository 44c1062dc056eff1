"""A session made personal: the version, its lines, and why each is as it is."""

from decimal import Decimal
from enum import StrEnum
from typing import Literal

from core.measures import AmountUnit
from core.sessions.values import Format
from core.values import Value


class Change(StrEnum):
    """The largest change of a line against what was written, in the order of distance."""

    NONE = "none"
    LOAD = "load"
    IMPLEMENT = "implement"
    VARIANT = "variant"
    MOVEMENT = "movement"
    AMOUNT = "amount"
    REST = "rest"


class Because(StrEnum):
    """Why a line is as it is. Words are the bot's."""

    AS_WRITTEN = "as_written"
    NOT_OWNED = "not_owned"  # what is written needs a thing that isn't there
    LIMIT = "limit"  # a limit rules it out
    SPACE = "space"  # the place doesn't allow it
    SKILL = "skill"  # not shown yet
    TOO_HEAVY = "too_heavy"
    TOO_LIGHT = "too_light"
    UNKNOWN_HEAVY = "unknown_heavy"  # nothing shows that so heavy is safe: build up
    LIGHT_DUTY = "light_duty"  # up to moderate
    NO_SAFE_OPTION = "no_safe_option"
    COACH = "coach"  # the coach or athlete chose it


class Reason(Value):
    """Why, as data. `about` names the limit, implement or load it speaks of; `keeps` what stays the same."""

    because: Because
    about: str | None = None
    keeps: Literal["movement", "pattern", "reps", "load"] | None = None


class VersionLine(Value):
    """One line as this athlete does it.

    `load_kg` is per implement, `count` how many at once; `load_moved_kg` is what one repetition moves.
    `unbroken` (median) and `set_cost` are None where repetitions don't apply. `amount` is per side when
    `per_side`.
    """

    line: int
    written: str
    movement: str
    variant: str
    implement: str | None = None
    count: int | None = None
    load_kg: Decimal | None = None
    load_moved_kg: float | None = None
    height_cm: Decimal | None = None
    amount: float | None
    unit: AmountUnit
    per_side: bool = False
    unbroken: float | None = None
    set_cost: float | None = None
    cost_window: tuple[float, float] | None = None
    change: Change
    reason: Reason


class VersionBlock(Value):
    block: int
    format: Format
    minutes: float | None = None
    rounds: int | None = None
    scheme: tuple[int, ...] = ()
    cap_s: float | None = None
    scored: bool = True
    lines: tuple[VersionLine, ...]


class Version(Value):
    """A session made personal; frozen when shown.

    `as_written` is what the scoreboard ranks by; `cautions` are cue-card ids to word; `needs_coach` names
    the lines (block, line) and why the coach should look.
    """

    athlete: str
    as_written: bool
    blocks: tuple[VersionBlock, ...]
    cautions: tuple[str, ...] = ()
    needs_coach: tuple[str, ...] = ()


class Ask(StrEnum):
    """What still has to be known before a version can be made."""

    EQUIPMENT = "equipment"
    LIMITS = "limits"
    BODY_MASS = "body_mass"
    PAIR = "pair"
    ABILITY = "ability"


class Question(Value):
    """The next thing to ask. For ABILITY: of which movement, with which load."""

    ask: Ask
    movement: str | None = None
    variant: str | None = None
    load_kg: Decimal | None = None
