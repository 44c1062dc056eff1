# ruff: noqa: RUF001 - dashes and crosses stand here as people type them
"""The property strategies: text as people type it, and values as the core allows them."""

import datetime as dt
from decimal import Decimal
from functools import cache

from hypothesis import strategies as st

from core.measures import AmountUnit, MassUnit, to_kg
from core.movements.lookup import catalogue
from core.notation.lines.naming import HELD, SIDE
from core.sessions.values import Aim, Block, BlockKind, Effort, Format, Line, LoadRule, Session

_DAY = dt.date(2026, 1, 1)

# Scraps of sessions and scores; strung together they come near to what people type, and nearer to mischief.
SCRAPS = (
    "amrap",
    "12",
    "zero",
    "twelve",
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
def lines(draw, *, counted=True, units=tuple(AmountUnit)):
    """Lines of catalogue movements that are counted in one of `units`; without amounts where the block gives them."""
    movement = catalogue().movement(draw(_movements(units)))
    named = [variant.id for variant in movement.variants if _plain_names(variant)]
    variant = draw(st.none() | st.sampled_from(named)) if named else None
    amount = draw(st.integers(1, 100)) if counted else None
    more = draw(st.none() | st.integers(1, 20)) if counted else None
    pair = more is not None and draw(st.booleans())
    written = draw(st.lists(loads(), max_size=2))
    spelling = _spelling(movement, variant)
    meant = catalogue().by_name(spelling)
    assert meant is not None
    # A name that tells the thing or the side tells it of its line.
    held, sides = HELD.search(spelling), SIDE.search(spelling)
    thing = catalogue().implement_by_name(held["i"]) if held else None
    return Line(
        written="",
        movement=meant.movement.id,
        variant=meant.variant.id if meant.variant else None,
        implement=thing.id if thing else None,
        side="alternating" if sides and sides["s"] else None,
        amount=amount,
        amount_to=amount + more if more and not pair else None,
        second_amount=more if pair and more != amount else None,
        unit=movement.unit,
        per_side=counted and draw(st.booleans()),
        loads_kg=tuple(written),
        count=draw(st.none() | st.just(2)) if written else None,
        load_rule=draw(st.none() | load_rules()),
        tempo=draw(st.sampled_from([None, "3-1-1", "3-0-3-0"])),
        notes=draw(notes()),
    )


@cache
def _movements(units):
    """Ids, drawn from one strategy: to make it anew for every line takes longer than all else."""
    return st.sampled_from([one.id for one in catalogue().movements if one.unit in units])


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


def efforts():
    """How hard a block is meant to be, in numbers."""
    ends = st.tuples(st.integers(1, 10), st.integers(1, 10)).map(sorted)
    return ends.map(lambda pair: Effort(low=pair[0], high=pair[1]))


@st.composite
def blocks(draw, formats=tuple(Format)):
    """Blocks of any format, with all that can stand around their lines."""
    format_ = draw(st.sampled_from(formats))
    own = draw(_OWN[format_]())
    plain = format_ in {Format.QUALITY, Format.HOLD, Format.MAX_LOAD, Format.TIME_TRIAL}
    around = (
        {}
        if plain
        else {
            "rest_s": draw(st.none() | _tens()),
            "aim": draw(st.none() | aims()),
            "effort": draw(st.none() | efforts()),
        }
    )
    lined = {"lines": tuple(draw(st.lists(lines(), min_size=2, max_size=5)))} | around | own
    kinds = list(BlockKind) if format_ is Format.QUALITY else [BlockKind.MAIN, BlockKind.STRENGTH]
    return Block.model_validate(
        {
            "kind": draw(st.sampled_from(kinds)),
            "format": format_,
            "team": draw(st.none() | st.integers(2, 4)),
            "scored": draw(st.booleans()),
            "notes": draw(notes()),
        }
        | lined
    )


def _tens():
    return st.integers(1, 20).map(lambda tens: tens * 10.0)


@st.composite
def _amrap(draw):
    return _around(draw) | {"minutes": draw(st.integers(1, 60))}


@st.composite
def _for_time(draw):
    scheme = draw(st.sampled_from([(), (21, 15, 9), (10, 8, 6, 4, 2)]))
    return _around(draw) | {
        "rounds": draw(st.none() | st.integers(2, 20)),
        "scheme": scheme,
        "cap_s": draw(st.none() | st.integers(1, 60).map(lambda minutes: minutes * 60.0)),
        "lines": tuple(draw(st.lists(lines(counted=not scheme), min_size=2, max_size=5))),
    }


def _around(draw):
    return {
        "buy_in": tuple(draw(st.lists(lines(), max_size=1))),
        "cash_out": tuple(draw(st.lists(lines(), max_size=1))),
    }


@st.composite
def _intervals(draw):
    """Every so often, or work and rest in turn; lines at stations or not."""
    rounds = draw(st.none() | st.integers(2, 20))
    many = draw(st.lists(lines(), min_size=1, max_size=5))
    if draw(st.booleans()):
        work, rest = draw(_tens()), draw(_tens())
        done = [line.model_copy(update=_WORKED | {"amount": work}) for line in many]
        return {
            "work_s": work,
            "rest_s": rest,
            "every_s": work + rest,
            "rounds": rounds,
            "lines": tuple(done),
        }
    rests: tuple[int, ...] = ()
    if draw(st.booleans()):
        many = [line.model_copy(update={"station": place}) for place, line in enumerate(many, 1)]
        rests = draw(st.sampled_from([(), (len(many) + 1,), (len(many) + 1, len(many) + 2)]))
    return {
        "rest_stations": rests,
        "every_s": draw(st.sampled_from([60.0, 90.0, 120.0, 180.0])),
        "minutes": draw(st.none() | st.integers(1, 60)),
        "rounds": rounds,
        "lines": tuple(many),
    }


_WORKED = {"unit": AmountUnit.SECONDS, "amount_to": None, "second_amount": None, "per_side": False}


@st.composite
def _sets(draw):
    scheme = draw(st.sampled_from([(), (5, 5, 5), (5, 5, 3, 3, 1)]))
    return {
        "rounds": None if scheme else draw(st.integers(1, 10)),
        "scheme": scheme,
        "lines": tuple(
            draw(st.lists(lines(counted=not scheme), min_size=1, max_size=3).filter(_no_hold_alone))
        ),
    }


def _no_hold_alone(found):
    """Sets of one thing that is held for so long are a hold."""
    return len(found) > 1 or found[0].unit is not AmountUnit.SECONDS


@st.composite
def _hold(draw):
    line = draw(lines(counted=False, units=(AmountUnit.SECONDS,)))
    return {"lines": (line,), "aim": draw(st.none() | aims())}


@st.composite
def _max_reps(draw):
    line = draw(lines(counted=False, units=(AmountUnit.REPS,)))
    return {
        "lines": (line,),
        "minutes": draw(st.none() | st.integers(1, 10)),
        "rounds": draw(st.none() | st.integers(2, 5)),
    }


@st.composite
def _max_load(draw):
    line = draw(lines(units=(AmountUnit.REPS,)))
    return {"lines": (line.model_copy(update={"amount_to": None, "second_amount": None}),)}


@st.composite
def _time_trial(draw):
    line = draw(lines(units=(AmountUnit.METRES,)))
    return {"lines": (line,), "aim": draw(st.none() | aims())}


@st.composite
def _quality(draw):
    return {"rounds": draw(st.none() | st.integers(2, 5)), "minutes": draw(st.none() | st.integers(1, 30))}


_OWN = {
    Format.AMRAP: _amrap,
    Format.FOR_TIME: _for_time,
    Format.INTERVALS: _intervals,
    Format.SETS: _sets,
    Format.HOLD: _hold,
    Format.MAX_REPS: _max_reps,
    Format.MAX_LOAD: _max_load,
    Format.TIME_TRIAL: _time_trial,
    Format.QUALITY: _quality,
}


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
