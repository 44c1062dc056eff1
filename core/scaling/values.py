"""A session made personal: the version, its lines, and why each is as it is."""

from decimal import Decimal
from enum import StrEnum
from typing import Literal, NamedTuple

from core.athletes.values import Easing, Side
from core.measures import AmountUnit
from core.movements.values import Part as Trained
from core.scores.values import EXACTLY, Tolerance
from core.sessions.values import Counts, Effort, Format
from core.values import Value

Part = Literal["buy_in", "lines", "cash_out"]


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
    NOT_OWNED = "not_owned"  # what is written needs a thing, or a load, that isn't there
    NOT_ASKED = "not_asked"  # the same, of somebody who wasn't asked yet what is there
    LIMIT = "limit"  # a limit rules it out
    ON_THE_FEET = "on_the_feet"  # down and up again in every round is better left
    SPACE = "space"  # the place doesn't allow it
    SKILL = "skill"  # not shown yet
    TOO_HEAVY = "too_heavy"
    TOO_OFTEN = "too_often"  # it goes, but not again and again with these rests
    TOO_LIGHT = "too_light"
    ONE_SETTING = "one_setting"  # one adjustable or filled thing serves the whole block
    BEST_FIT = "best_fit"  # of what is there it suits this block best
    UNTESTED = "untested"  # nobody knows their ability in it yet; `about` is the movement
    UNKNOWN_HEAVY = "unknown_heavy"  # nothing shows that so heavy is safe: build up
    LIGHT_DUTY = "light_duty"  # up to moderate
    NO_SAFE_OPTION = "no_safe_option"
    NOTED = "noted"  # the coach noted something about how they do it
    COACH = "coach"  # the coach chose it
    NO_TIME = "no_time"  # today's minutes are too few for it
    ASKED = "asked"  # the athlete asked for it; `about` is the cause


Keeps = Literal["movement", "pattern", "reps"]


class Reason(Value):
    """Why, as data. `about` names the limit, place, thing or movement it speaks of; `load_kg` is the written load.

    `keeps`: what stays the same. `only_one`: it isn't there twice, as it would have to be. `suits_kg`: what is there
    and heavier than written would suit, if the coach allows it. `more_kg`: so much heavier than written it is, in each
    hand or in both. `eased_for`: the place, sore today, for whose sake it is kept easy as well. `more`: more of
    it than written, as it is light. `next_kg`: what is there above it, for whoever finds it easy. `without`: a part
    that the written movement trains as well, and this doesn't.
    """

    because: Because
    about: str | None = None
    load_kg: Decimal | None = None
    keeps: Keeps | None = None
    only_one: bool = False
    suits_kg: Decimal | None = None
    more_kg: Decimal | None = None
    eased_for: str | None = None
    more: bool = False
    next_kg: Decimal | None = None
    without: Trained | None = None


class VersionLine(Value):
    """One line as this athlete does it. Rest keeps the written movement and has no amount.

    `load_kg` is per implement, `count` how many at once; `load_moved_kg` is what one repetition moves;
    `written_kg` is what the written line has in the hands altogether, None where it names no load.
    `unbroken` (median) and `set_cost` are None where repetitions don't apply. `amount` is per side when
    `per_side`, and `amount_to` the top of a written range. It is None under a scheme, where `scheme` is the
    block's unless repetitions were taken off, and None where the athlete builds up and stops with three left
    (`Because.UNKNOWN_HEAVY`). `cues` are the coach's words about how this athlete does it; `at_most_kg` is
    the most in the hands altogether, as the coach said. `side`, `tempo` and `notes` are what the coach wrote
    with the line, as far as it holds for what is done; `leaves`: with so many repetitions left each set ends;
    `pieces`: it is done in so many, with a seat between.
    """

    line: int
    written: str
    movement: str
    variant: str
    implement: str | None = None
    count: int | None = None
    load_kg: Decimal | None = None
    load_moved_kg: float | None = None
    written_kg: Decimal | None = None
    height_cm: Decimal | None = None
    station: int | None = None
    amount: float | None
    amount_to: float | None = None
    scheme: tuple[int, ...] = ()
    unit: AmountUnit
    per_side: bool = False
    side: Literal["left", "right", "alternating"] | None = None
    leaves: float | None = None
    pieces: int = 1
    tempo: str | None = None
    notes: str | None = None
    unbroken: float | None = None
    set_cost: float | None = None
    cost_window: tuple[float, float] | None = None
    change: Change
    reason: Reason
    cues: tuple[str, ...] = ()
    at_most_kg: Decimal | None = None


class Turn(Value):
    """A thing in this block is somebody else's too. `begin`, `they_begin`: who starts at which of the lines.

    Both None: they take turns. `settings`: it is set to each one's own weight.
    """

    implement: str
    shared_with: str
    settings: bool
    begin: int | None = None
    they_begin: int | None = None


class VersionBlock(Value):
    """`buy_in` and `cash_out` are numbered from 1 each, like `lines`; `rest_stations` as in the written block.

    `effort`: how hard the coach wants it, as far as that is for them; `pace`: no harder than so, 0-10, where
    something caps their effort.
    """

    block: int
    format: Format
    minutes: float | None = None
    rounds: int | None = None
    scheme: tuple[int, ...] = ()
    cap_s: float | None = None
    every_s: float | None = None
    work_s: float | None = None
    rest_s: float | None = None
    effort: Effort | None = None
    pace: int | None = None
    notes: str | None = None
    scored: bool = True
    counts: Counts | None = None
    turn: Turn | None = None
    buy_in: tuple[VersionLine, ...] = ()
    lines: tuple[VersionLine, ...]
    rest_stations: tuple[int, ...] = ()
    cash_out: tuple[VersionLine, ...] = ()

    @property
    def is_left_out(self) -> bool:
        """Whether there is no time for it today."""
        lines = self.every_line
        return bool(lines) and all(line.reason.because is Because.NO_TIME for line in lines)

    @property
    def every_line(self) -> tuple[VersionLine, ...]:
        return self.buy_in + self.lines + self.cash_out

    @property
    def parts(self) -> tuple[tuple[Part, tuple[VersionLine, ...]], ...]:
        return ("buy_in", self.buy_in), ("lines", self.lines), ("cash_out", self.cash_out)


class Spot(NamedTuple):
    """Where a line stands; block and line count from 1."""

    block: int
    part: Part
    line: int


class Priced(Value):
    """A way of doing a line, and what it costs by the entries of the table of costs."""

    what: str
    cost: int
    charges: dict[str, int]


class Explained(Value):
    """What was chosen for a line, and what would have been next; None where there is nothing else."""

    written: str
    chosen: Priced
    runner_up: Priced | None = None


class NeedsCoach(Value):
    """What the coach should look at, and why: one line, or the whole version where no line is named.

    `about` and `suits_kg` as in Reason; a limit in it is the athlete's own business.
    """

    block: int | None = None
    line: int | None = None
    written: str | None = None
    change: Change | None = None
    because: Because
    about: str | None = None
    suits_kg: Decimal | None = None


class Caution(Value):
    """A caution to word: of a limit, or of an implement in use. `id` is the catalogue's or the limit's.

    `side`: of a joint, where told.
    """

    of: Literal["limit", "implement"]
    id: str
    side: Side | None = None


class Version(Value):
    """A session made personal; frozen when shown.

    `as_written` is what the scoreboard ranks by, under the `tolerance` of the day; a shorter day is scaled.
    `effort_at_most`: 0-10, where the screening or a limit sets one. `scored` is False where there is no
    expected score and no rank. `easing`: these days ask for less; `is_less`: any part of the work is; `in_minutes`: as
    there are so many today.
    """

    athlete: str
    as_written: bool
    tolerance: Tolerance = EXACTLY
    effort_at_most: int | None = None
    scored: bool = True
    easing: Easing | None = None
    is_less: bool = True
    in_minutes: float | None = None
    blocks: tuple[VersionBlock, ...]
    cautions: tuple[Caution, ...] = ()
    needs_coach: tuple[NeedsCoach, ...] = ()

    @property
    def is_exact(self) -> bool:
        """Whether nothing at all differs from what was written."""
        return self.as_written and all(line.change is Change.NONE for _, line in self.spots)

    @property
    def spots(self) -> tuple[tuple[Spot, VersionLine], ...]:
        """Every line in its order, and where it stands."""
        return tuple(
            (Spot(block.block, part, line.line), line)
            for block in self.blocks
            for part, lines in block.parts
            for line in lines
        )


class Withheld(Value):
    """No version today, for the athlete's own sake.

    `screening`, `clearance`: not before licensed care has cleared them; `rest`: they are unwell. `about`
    names the limit that asks for it. `unclear`: something that is stored about them can't be reckoned with.
    """

    athlete: str
    because: Literal["screening", "clearance", "rest", "unclear"]
    about: str | None = None


class Ask(StrEnum):
    """What still has to be known before a version can be made."""

    EQUIPMENT = "equipment"
    LIMITS = "limits"
    BODY_MASS = "body_mass"
    PAIR = "pair"
    STAGE = "stage"
    ABILITY = "ability"


class Question(Value):
    """The next thing to ask. For ABILITY: of which movement, with which load, and `guesses` to tap, rising.

    For EQUIPMENT: what of a household is `ticked` already. For PAIR: the `loads_kg` as they are written.
    For STAGE: `about` which limit more has to be known.
    """

    ask: Ask
    movement: str | None = None
    variant: str | None = None
    load_kg: Decimal | None = None
    guesses: tuple[int, ...] = ()
    ticked: tuple[str, ...] = ()
    loads_kg: tuple[Decimal, ...] = ()
    about: str | None = None


class Improvised(Value):
    """A packed bag would do for a movement, at so many kilos."""

    movement: str
    load_kg: Decimal


class GroupLine(Value):
    """How one line lands on the group: how many athletes per largest change, and who has nothing at all."""

    block: int
    line: int
    written: str
    as_written: int = 0
    load: int = 0
    implement: int = 0
    variant: int = 0
    movement: int = 0
    amount: int = 0
    rest: int = 0
    nobody: tuple[str, ...] = ()


class Gets(Value):
    """What everybody gets of one line of a session: names with their line, in the order of the group."""

    written: str
    each: tuple[tuple[str, VersionLine], ...]


class Instead(Value):
    """What some do instead of a line: a way, with what is in each hand from the lightest to the heaviest of them."""

    movement: str
    variant: str
    lightest_kg: Decimal | None = None
    heaviest_kg: Decimal | None = None


class Say(Value):
    """One thing worth saying aloud to the group: `names` need it on this line, `of` athletes are training.

    `because`, `about`: as in Reason. `instead`: what they do, the commonest first.
    """

    block: int
    line: int
    written: str
    because: Because
    about: str | None = None
    names: tuple[str, ...]
    of: int
    instead: tuple[Instead, ...] = ()


class GroupView(Value):
    """A session on the whole group. `withheld`: who trains not at all today."""

    lines: tuple[GroupLine, ...]
    say: tuple[Say, ...] = ()
    withheld: tuple[Withheld, ...] = ()
