"""Where there is no way to go: what covers ground is done on the spot (common practice; invented people)."""

import pytest

from bot.words.reasons import reason_words
from core.athletes.circumstances import in_circumstances
from core.athletes.values import Place, Screening, Space
from core.movements.lookup import catalogue
from core.movements.values import Demand
from core.scaling.values import Because
from tests.unit.scaling.people import athlete, did, only_line

NO_WAY = Space(running=False)
PAIR = ["2x kettlebell 16"]


@pytest.mark.parametrize(
    ("text", "movement", "variant"),
    [
        ("40 m farmer carry 2 x 16 kg", "farmer carry", "on-the-spot"),
        ("10 walking lunges", "forward lunge", "floor"),
    ],
)
def test_what_covers_ground_is_done_on_the_spot(text, movement, variant):
    line = only_line(f"AMRAP 12\n{text}", athlete(owns=PAIR, mass=70, sex="male", space=NO_WAY))
    assert (line.movement, line.variant) == (movement, variant)
    assert (line.reason.because, line.reason.about) == (Because.SPACE, "running")


def test_a_carried_distance_becomes_its_time():
    line = only_line(
        "AMRAP 12\n40 m farmer carry 2 x 16 kg", athlete(owns=PAIR, mass=70, sex="male", space=NO_WAY)
    )
    assert (line.amount, line.unit, line.count, line.load_kg) == (35, "s", 2, 16)


QUIET = Space(jumping=False)


def test_what_would_thud_below_is_told_as_that_and_not_as_a_jump():
    who = athlete(
        owns=["barbell 20 to 60 by 5", "dumbbell 10"], space=QUIET, tests=[did("power clean", 20, 40)]
    )
    line = only_line("AMRAP 12\n5 power cleans @ 40 kg", who)
    assert (line.reason.because, line.reason.about) == (Because.SPACE, "noise")
    assert "may thud" in reason_words(line, who.units)


@pytest.mark.parametrize(
    ("text", "who", "because", "about"),
    [
        (
            "5 power cleans @ 40 kg",
            athlete(owns=["2x dumbbell 10"], space=QUIET),
            Because.NOT_OWNED,
            "barbell",
        ),
        ("500 m row", athlete(screening=Screening.MODERATE), Because.NOT_OWNED, "rower"),
        ("500 m row", athlete(owns=["rower"], screening=Screening.MODERATE), Because.LIGHT_DUTY, None),
        ("10 box jumps", athlete(space=QUIET), Because.SPACE, "jumping"),
        (
            "10 thrusters @ 30 kg",
            athlete(owns=["2x dumbbell 10"], space=Space(overhead=False, jumping=False)),
            Because.SPACE,
            "overhead",
        ),
    ],
)
def test_what_is_not_there_is_neither_loud_nor_too_hard(text, who, because, about):
    line = only_line(f"AMRAP 12\n{text}", who)
    assert (line.reason.because, line.reason.about) == (because, about)


def test_a_barbell_that_stays_in_the_hands_is_quiet_enough():
    who = athlete(owns=["barbell 15 to 60 by 5"], space=QUIET, tests=[did("thruster", 20, 30)])
    line = only_line("AMRAP 12\n8 thrusters @ 30 kg", who)
    assert (line.implement, line.reason.because) == ("barbell", Because.AS_WRITTEN)


def at(**place):
    return in_circumstances(athlete(owns=["2x jug 5"], limits=("knee",), place=Place(**place)))


@pytest.mark.parametrize("text", ["10 squat jumps", "10 push-ups", "30 s wall sit", "12 lunges"])
def test_without_a_wall_nothing_leans_on_one(text):
    line = only_line(f"3 rounds for time\n{text}", at(wall=False))
    _, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    assert Demand.WALL not in variant.demands


def test_without_a_doorway_nobody_rows_in_it():
    assert only_line("3 rounds for time\n10 doorway rows", at(doorway=False)).movement != "door row"
    assert only_line("3 rounds for time\n10 doorway rows", at(doorway=True)).movement == "door row"


def test_a_free_floor_is_enough_to_walk_to_and_fro_with_a_weight():
    carry = "4 rounds for time\n40 m farmer carry @ 2 x 5 kg"
    assert only_line(carry, at(run_m=0, floor_m=4)).variant == "walking"
    assert only_line(carry, at(run_m=0, floor_m=1)).variant != "walking"
