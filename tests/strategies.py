# ruff: noqa: RUF001 - dashes and crosses stand here as people type them
"""The property strategies: text as people type it, and values as the core allows them."""

import datetime as dt
from decimal import Decimal

from hypothesis import strategies as st

from core.measures import MassUnit, to_kg
from core.movements.lookup import catalogue
from core.notation.line_names import HELD
from core.sessions.values import Aim, Block, BlockKind, Format, Line, LoadRule, Session

_DAY = dt.date(2026, 1, 1)

# Scraps of sessions and scores; strung together they come near to what people type, and nearer to mischief.
SCRAPS = (
    "amrap",
    "12",
    "min",
    "for time",
    "4 rounds",
    "21-15-9",
    "cap",
    "rest",
    "1 min",
    "between rounds",
    "aim",
    "6-7",
    "target",
    "8:43",
    "every",
    "2 min",
    "emom",
    "x",
    "@",
    "24/16",
    "kg",
    "lb",
    "push-ups",
    "goblet squats",
    "air squats",
    "run",
    "200 m",
    "plank",
    "30 s",
    "each side",
    "/side",
    "alternating",
    "max",
    "heavy",
    "60%",
    "unbroken",
    "without a break",
    "(",
    ")",
    "[",
    "]",
    ":",
    ";",
    ",",
    "-",
    "–",
    "+",
    "/",
    ".",
    "\n",
    "\r\n",
    " ",
    "  ",
    "'",
    '"',
    "½",
    "×",
    "…",
    "10-9-...-1",
    "warm-up",
    "main",
    "part a",
    "buy-in",
    "cash-out",
    "note:",
    "1.",
    "a)",
    "•",
    "🔥",
    "1️⃣",
    "rpe 8",
    "tempo",
    "3-1-1",
    "teams of 2",
    "not for score",
    "on",
    "off",
    "work",
    "7+12",
    "rounds and",
    "reps",
    "capped",
    "left",
    "stopped at",
    "wrist",
    "scaled",
    "two",
    "10s",
    "a",
    "kettlebell",
    "chair",
    "adjustable",
    "up to",
    "nothing",
    "2026-03-02",
    "3/4/2026",
    "0",
    "999999",
    "-5",
    "1,000",
    "7,5",
    "8.43",
    "99:99",
)


def scrappy_text(max_size=40):
    """Texts made of the words that the readers look for, in any order, and of anything else."""
    scrap = st.sampled_from(SCRAPS) | st.text(max_size=4)
    return st.lists(scrap, max_size=max_size).flatmap(
        lambda scraps: st.sampled_from(["", " "]).map(lambda glue: glue.join(scraps))
    )


def any_text(max_size=400):
    return st.text(max_size=max_size) | scrappy_text()


def loads():
    """Loads that exist: halves of kg, whole pounds."""
    kilograms = st.integers(1, 200).map(lambda halves: Decimal(halves) / 2)
    pounds = st.integers(1, 300).map(lambda pounds: to_kg(Decimal(pounds), MassUnit.LB))
    return (kilograms | pounds).map(lambda load: Decimal(f"{load.normalize():f}"))


def notes():
    """Remarks in plain words that say nothing else."""
    return st.none() | st.sampled_from(["chest to the floor", "breathe out", "enjoy it", "elbows in"])


@st.composite
def lines(draw, *, counted=True):
    """Lines of catalogue movements; without amounts where the block gives them."""
    movement = draw(st.sampled_from(catalogue().movements))
    named = [variant.id for variant in movement.variants if _plain_names(variant)]
    variant = draw(st.none() | st.sampled_from(named)) if named else None
    amount = draw(st.integers(1, 100)) if counted else None
    more = draw(st.none() | st.integers(1, 20)) if counted else None
    pair = more is not None and draw(st.booleans())
    written = draw(st.lists(loads(), max_size=2))
    meant = catalogue().by_name(_spelling(movement, variant))
    assert meant is not None
    return Line(
        written="",
        movement=meant.movement.id,
        variant=meant.variant.id if meant.variant else None,
        amount=amount,
        amount_to=amount + more if more and not pair else None,
        second_amount=more if pair else None,
        unit=movement.unit,
        per_side=counted and draw(st.booleans()),
        loads_kg=tuple(written),
        count=draw(st.none() | st.just(2)) if written else None,
        load_rule=draw(st.none() | load_rules()),
        tempo=draw(st.sampled_from([None, "3-1-1", "3-0-3-0"])),
        notes=draw(notes()),
    )


def _spelling(movement, variant):
    if variant is None:
        return movement.id
    return _plain_names(next(one for one in movement.variants if one.id == variant))[0]


def _plain_names(variant):
    """Names that don't speak of the thing held: that would be the line's implement."""
    return [name for name in variant.names if not HELD.search(name)]


def load_rules():
    return st.sampled_from(
        [
            LoadRule(percent=60.0),
            LoadRule(effort=8.0),
            LoadRule(heavy=True),
            LoadRule(unbroken=(12, 15)),
        ]
    )


def aims():
    """Aims of rounds or seconds, whichever the block's format scores."""
    ends = st.tuples(st.integers(1, 20), st.integers(0, 10)).map(lambda pair: (pair[0], pair[0] + pair[1]))
    return ends.flatmap(
        lambda pair: st.sampled_from([(pair[0], pair[1]), (None, pair[1]), (pair[0], None)]).map(
            lambda chosen: Aim(of="score", low=chosen[0], high=chosen[1])
        )
    )


@st.composite
def blocks(draw):
    """Blocks of amrap and for_time, with all that can stand around their lines."""
    format_ = draw(st.sampled_from([Format.AMRAP, Format.FOR_TIME]))
    timed = format_ is Format.FOR_TIME
    scheme = draw(st.sampled_from([(), (21, 15, 9), (10, 8, 6, 4, 2)])) if timed else ()
    return Block(
        kind=draw(st.sampled_from([BlockKind.MAIN, BlockKind.STRENGTH])),
        format=format_,
        minutes=None if timed else draw(st.integers(1, 60)),
        rounds=draw(st.none() | st.integers(2, 20)) if timed else None,
        scheme=scheme,
        cap_s=draw(st.none() | st.integers(1, 60).map(lambda minutes: minutes * 60.0)) if timed else None,
        rest_s=draw(st.none() | st.integers(1, 20).map(lambda tens: tens * 10.0)),
        team=draw(st.none() | st.integers(2, 4)),
        scored=draw(st.booleans()),
        aim=draw(st.none() | aims()),
        buy_in=tuple(draw(st.lists(lines(), max_size=1))),
        cash_out=tuple(draw(st.lists(lines(), max_size=1))),
        lines=tuple(draw(st.lists(lines(counted=not scheme), min_size=2, max_size=5))),
        notes=draw(notes()),
    )


def titles():
    words = st.sampled_from(["Legs", "Monday", "Garden", "Slow", "Burner", "Long"])
    return st.none() | st.lists(words, min_size=1, max_size=3).map(" ".join)


def sessions():
    """Sessions of one to three blocks."""
    return st.builds(
        Session,
        title=titles(),
        date=st.none() | st.dates(min_value=_DAY.replace(year=2000), max_value=_DAY.replace(year=2099)),
        blocks=st.lists(blocks(), min_size=1, max_size=3).map(tuple),
    )
