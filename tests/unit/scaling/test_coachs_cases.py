"""The coach's cases of the design, on the catalogue that comes along.

Common practice, no source; invented people. N is what goes unbroken when fresh.
"""

from decimal import Decimal

import pytest

from core.ability.capacity import Capacity
from core.athletes.limits import limit
from core.measures import AmountUnit
from core.movements.lookup import Catalogue, catalogue
from core.movements.values import Cue, Hold, Movement, Part, Pattern, Share, Sourced, Variant
from core.scaling.values import Because, Change, Version
from core.scaling.version import version_for
from core.sessions.values import Block, Format, Line, Session
from tests.unit.scaling.people import athlete, did, only_line, version

CUE = Cue(
    start="Stand tall.",
    counts="All the way.",
    cues=("Look ahead.", "Breathe."),
    fault="Haste.",
    caution="Slow.",
)


def number(value):
    return Sourced(value=value, source="estimate")


def way(name, *, share=0.0, ratio=1.0, holds=(), **more):
    return Variant(
        id=name,
        label=name,
        body_share=Share(value=share, source="estimate"),
        reserves={"legs": 1.0},
        seconds=number(2.0),
        ratio=number(ratio),
        cue=CUE,
        holds=tuple(Hold(implement=implement, count=count) for implement, count in holds),
        **more,
    )


BACK_SQUAT = Movement(
    id="back squat",
    pattern=Pattern.SQUAT,
    k=number(55),
    trains={Part.SQUAT: 1.0},
    variants=(
        way("barbell", share=0.88, holds=[("barbell", 1)]),
        way("paused", share=0.88, ratio=0.8, holds=[("barbell", 1)]),
    ),
)
SMALL = Catalogue([BACK_SQUAT], catalogue().implements)


def kg(*loads):
    return tuple(Decimal(load) for load in loads)


def amrap(line, aim=None):
    return Session(blocks=(Block(format=Format.AMRAP, minutes=12, aim=aim, lines=(line,)),))


def made(session, who):
    version = version_for(session, who, SMALL)
    assert isinstance(version, Version)
    return version.blocks[0].lines[0], version


SINGLE_ARM = "AMRAP 12\n9 single-arm ground-to-overhead each side @ 16 kg, 12-15 unbroken"
THRUSTERS = "21-15-9 for time\nthrusters 2 x 15 / 2 x 10 kg"
LENES = "5 rounds for time\n200 m run\n10 burpees\n15 sit-ups\n12 swings @ 16 kg"


def showed(reps, load):
    return did("ground-to-overhead", reps, load, variant="single-arm")


def test_tomas_takes_his_lighter_dumbbell_rather_than_a_backpack():
    owns = ["dumbbell 12", "backpack to 20"]
    tomas = athlete("Tomas", sex="male", mass=80, owns=owns, tests=[showed(17, 12)])
    line = only_line(SINGLE_ARM, tomas)
    assert (line.movement, line.variant) == ("ground-to-overhead", "single-arm")
    assert (line.implement, line.load_kg, line.amount, line.per_side) == ("dumbbell", 12, 9, True)
    assert line.cost_window == pytest.approx((0.6, 0.75))
    assert line.set_cost == pytest.approx(9 / 17)
    assert line.unbroken == pytest.approx(17)
    assert line.change is Change.LOAD


def test_edda_takes_a_backpack_in_both_hands():
    edda = athlete("Edda", mass=60, owns=["dumbbell 2 20", "backpack to 20"], tests=[showed(15, 8)])
    line = only_line(SINGLE_ARM, edda)
    assert (line.variant, line.implement, line.change) == ("both-hands", "backpack", Change.VARIANT)
    assert 9 <= line.load_kg <= 14


def test_edda_never_lifts_twenty_overhead_and_the_coach_hears_what_is_missing():
    edda = athlete("Edda", mass=60, owns=["dumbbell 2 20"], tests=[showed(15, 8)])
    made = version(SINGLE_ARM, edda)
    (line,) = made.blocks[0].lines
    assert (line.movement, line.variant, line.load_kg) == ("deadlift", "one-weight", 20)
    assert [(need.because, need.line) for need in made.needs_coach] == [(Because.NOT_OWNED, 1)]


def test_who_never_lifted_one_arm_from_the_floor_begins_above_the_knee():
    shown = did("ground-to-overhead", 14, 10, variant="single-arm-from-above-knee")
    line = only_line(SINGLE_ARM, athlete("Rosa", mass=66, owns=["dumbbell 8 10 16"], tests=[shown]))
    assert (line.variant, line.load_kg) == ("single-arm-from-above-knee", 10)
    assert line.reason.because is Because.SKILL


def test_jonas_keeps_the_bar_as_written_and_the_coach_is_asked_before_going_up():
    line = Line(written="8 back squats @ 60 kg", movement="back squat", amount=8, loads_kg=kg(60))
    jonas = athlete(
        "Jonas", sex="male", mass=80, owns=["barbell 40 60 80 100"], tests=[did("back squat", 1, 120)]
    )
    found, version = made(amrap(line), jonas)
    assert 25 <= found.unbroken <= 30
    assert (found.load_kg, found.change, found.reason.because) == (60, Change.NONE, Because.TOO_LIGHT)
    assert [need.because for need in version.needs_coach] == [Because.TOO_LIGHT]


def test_sana_takes_her_lighter_pair_and_every_repetition():
    tests = [did("thruster", 22, 10, variant="two-weights")]
    line = only_line(THRUSTERS, athlete("Sana", owns=["2x dumbbell 10 15"], tests=tests))
    assert (line.variant, line.count, line.load_kg, line.change) == ("two-weights", 2, 10, Change.NONE)
    assert (line.scheme, line.unit) == ((21, 15, 9), AmountUnit.REPS)


def test_sanas_heavier_pair_goes_nine_times_and_is_no_set_of_twenty_one():
    movement, variant = catalogue().variant("thruster/two-weights")
    sana = athlete("Sana", owns=["2x dumbbell 10 15"], tests=[did("thruster", 22, 10, variant="two-weights")])
    ability = Capacity(sana, catalogue()).of(movement, variant, "thruster/two-weights")
    assert ability.unbroken(30) == pytest.approx(9, abs=1)


def test_a_single_dumbbell_is_no_pair_but_goes_in_both_hands():
    strong = did("thruster", 20, 20, variant="one-weight")
    line = only_line("AMRAP 12\n10 thrusters 2 x 10 kg", athlete(owns=["dumbbell 20"], tests=[strong]))
    assert (line.movement, line.variant, line.count) == ("thruster", "one-weight", 1)
    assert line.change is Change.VARIANT


def test_lene_trains_gently_while_she_is_pregnant():
    owns = ["table", "kettlebell 16"]
    lene = athlete("Lene", mass=70, limits=("pregnancy",), owns=owns, tests=[did("deadlift", 30, 24)])
    made = version(LENES, lene)
    ways = [f"{line.movement}/{line.variant}" for line in made.blocks[0].lines]
    assert ways == ["run/brisk-walk", "burpee/hands-on-table", "plank/wall", "deadlift/one-weight"]
    assert made.blocks[0].lines[3].load_kg == 16
    assert not made.scored
    assert [need.because for need in made.needs_coach] == [Because.LIMIT]
    assert "Breathe out" in limit("pregnancy").caution
