"""The coach's cases of the design that need movements the first catalogue lacks, on a small one of their own.

Common practice, no source; invented people. N is what goes unbroken when fresh.
"""

from decimal import Decimal

import pytest

from core.measures import AmountUnit
from core.movements.lookup import Catalogue, catalogue
from core.movements.values import Cue, Hold, Movement, Pattern, Share, Sourced, Variant
from core.scaling.values import Because, Change, Version
from core.scaling.version import version_for
from core.sessions.values import Aim, Block, Format, Line, Session
from tests.unit.scaling.people import athlete, did

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


GROUND_TO_OVERHEAD = Movement(
    id="ground to overhead",
    pattern=Pattern.VERTICAL_PUSH,
    k=number(30),
    variants=(
        way(
            "single-arm",
            holds=[("dumbbell", 1), ("kettlebell", 1)],
            sides="one",
            easier=("ground to overhead/two-handed",),
            instead=("deadlift/two-handed",),
        ),
        way("two-handed", ratio=1.7, holds=[("backpack", 1)], harder=("ground to overhead/single-arm",)),
    ),
)
DEADLIFT = Movement(
    id="deadlift",
    pattern=Pattern.HINGE,
    k=number(40),
    variants=(way("two-handed", share=0.3, holds=[("dumbbell", 1), ("backpack", 1)]),),
)
THRUSTER = Movement(
    id="thruster",
    pattern=Pattern.VERTICAL_PUSH,
    k=number(40),
    variants=(way("two-dumbbells", holds=[("dumbbell", 2)]),),
)
BACK_SQUAT = Movement(
    id="back squat",
    pattern=Pattern.SQUAT,
    k=number(55),
    variants=(
        way("barbell", share=0.88, holds=[("barbell", 1)]),
        way("paused", share=0.88, ratio=0.8, holds=[("barbell", 1)]),
    ),
)
SMALL = Catalogue([GROUND_TO_OVERHEAD, DEADLIFT, THRUSTER, BACK_SQUAT], catalogue().implements)


def kg(*loads):
    return tuple(Decimal(load) for load in loads)


def amrap(line, aim=None):
    return Session(blocks=(Block(format=Format.AMRAP, minutes=12, aim=aim, lines=(line,)),))


def single_arm():
    line = Line(
        written="9 single-arm ground-to-overhead a side @ 16 kg",
        movement="ground to overhead",
        variant="single-arm",
        amount=9,
        per_side=True,
        loads_kg=kg(16),
    )
    return amrap(line, Aim(of="unbroken", low=12, high=15))


def made(session, who):
    version = version_for(session, who, SMALL)
    assert isinstance(version, Version)
    return version.blocks[0].lines[0], version


def test_tomas_takes_his_lighter_dumbbell_rather_than_a_backpack():
    tomas = athlete(
        "Tomas",
        sex="male",
        mass=80,
        owns=["dumbbell 12", "backpack to 20"],
        tests=[did("ground to overhead", 17, 12)],
    )
    line, _ = made(single_arm(), tomas)
    assert (line.implement, line.load_kg, line.amount, line.per_side) == ("dumbbell", 12, 9, True)
    assert line.cost_window == pytest.approx((0.6, 0.75))
    assert line.set_cost == pytest.approx(9 / 17)
    assert line.unbroken == pytest.approx(17)
    assert line.change is Change.LOAD


@pytest.mark.parametrize("backpack", [True, False])
def test_edda_never_lifts_twenty_overhead(backpack):
    owns = ["dumbbell 2 20", *(["backpack to 20"] if backpack else [])]
    edda = athlete("Edda", mass=60, owns=owns, tests=[did("ground to overhead", 15, 8)])
    line, version = made(single_arm(), edda)
    if backpack:
        assert (line.variant, line.implement) == ("two-handed", "backpack")
        assert 9 <= line.load_kg <= 13
    else:
        assert (line.movement, line.load_kg) == ("deadlift", 20)
        assert [(need.because, need.line) for need in version.needs_coach] == [(Because.NOT_OWNED, 1)]


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
    line = Line(written="thrusters 2 x 15 / 2 x 10", movement="thruster", count=2, loads_kg=kg(15, 10))
    session = Session(
        blocks=(
            Block(
                format=Format.FOR_TIME,
                scheme=(21, 15, 9),
                lines=(line,),
                aim=Aim(of="unbroken", low=12, high=15),
            ),
        )
    )
    sana = athlete("Sana", owns=["2x dumbbell 10 15"], tests=[did("thruster", 22, 10)])
    found, _ = made(session, sana)
    assert (found.count, found.load_kg, found.change) == (2, 10, Change.NONE)
    assert found.scheme == (21, 15, 9)
    assert found.unit is AmountUnit.REPS


def test_a_single_dumbbell_is_no_pair():
    line = Line(written="10 thrusters 2 x 10", movement="thruster", amount=10, count=2, loads_kg=kg(10))
    found, version = made(amrap(line), athlete(owns=["dumbbell 10"], tests=[did("thruster", 22, 10)]))
    assert found.change is Change.REST
    assert version.needs_coach
