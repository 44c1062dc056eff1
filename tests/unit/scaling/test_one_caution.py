"""One measure of caution for all lines: what is bold, never held before, or all that somebody can."""

import pytest

from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.movements.values import Demand
from core.scaling.values import Change
from tests.unit.scaling.people import athlete, did, lines, only_line, version

FRAIL = athlete(
    limits=("unsteady", "osteoporosis"),
    birth_year=1947,
    experience="some",
    owns=["chair", "table", "band"],
    tests=[did("air squat", 8)],
)
SENT = {Change.VARIANT, Change.MOVEMENT}


AMOUNTS = {
    AmountUnit.REPS: "10",
    AmountUnit.SECONDS: "30 s",
    AmountUnit.METRES: "100 m",
    AmountUnit.KCAL: "10 cal",
}


@pytest.mark.parametrize("movement", catalogue().movements, ids=lambda one: one.id)
def test_whoever_must_not_fall_is_sent_to_nothing_bold(movement):
    line = only_line(f"AMRAP 12\n{AMOUNTS[movement.unit_of(movement.variants[0])]} {movement.id}", FRAIL)
    _, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    assert line.change not in SENT or Demand.BOLD not in variant.demands


def test_whoever_must_not_fall_does_two_thirds_of_the_squats_that_were_shown():
    assert (only_line("5 x 5 back squat @ 60 kg\nrest 2 min", FRAIL).amount or 0) <= 5


def test_what_nobody_saw_held_starts_short_and_a_step_easier():
    line = only_line("3 sets\n40 s plank\nrest 60 s", athlete(experience="new"))
    assert (line.variant, line.amount) == ("knees", 20)


def test_whoever_is_new_leaves_the_chair_s_edge_and_the_table_s_underside():
    who = athlete(experience="new", limits=("low-back",), owns=["backpack to 15", "chair", "table"])
    hips, rows = lines("AMRAP 12\n12 swings @ 16 kg\n9 pull-ups", who)
    assert hips.movement == "bridge"
    assert rows.movement not in {"table row", "row hold"}


def test_a_skill_that_was_told_is_used():
    who = athlete(experience="trained", owns=["skipping rope"]).model_copy(
        update={"skills": ("double-under",)}
    )
    line = only_line("3 rounds for time\n50 double-unders", who)
    assert (line.movement, line.variant) == ("double-under", "rope")


def test_ten_pull_ups_show_knees_to_elbows():
    who = athlete(experience="trained", owns=["pull-up bar"], tests=[did("pull-up", 14)])
    assert only_line("3 rounds for time\n10 toes-to-bar", who).variant == "knees-to-elbows"


def test_whoever_owns_a_pair_deadlifts_the_pair():
    who = athlete(
        limits=("high-blood-pressure",), birth_year=1954, experience="some", owns=["2x dumbbell 3 5"]
    )
    assert only_line("4 x 6 deadlift @ 100 kg\nrest 2 min", who).count == 2


def test_heel_raises_a_side_are_done_on_one_leg():
    who = athlete(experience="trained", tests=[did("heel raise", 60)])
    assert only_line("3 sets\n15 heel raises each side\nrest 60 s", who).variant == "one-leg"


def test_three_quarters_of_two_rounds_are_not_called_less():
    who = athlete(experience="new")
    assert not version("2 rounds, not for time\n10 bridges", who).is_less
    assert version("4 rounds, not for time\n10 bridges", who).is_less


def test_whoever_sits_stretches_for_a_stretch():
    who = athlete(limits=("seated",), owns=["wheelchair"])
    line = only_line("2 rounds, not for time\n30 s hamstring stretch each side", who)
    assert "stretch" in line.movement


def test_what_is_held_on_the_feet_over_the_floor_is_for_whoever_may_strain():
    """A gate that holds for a plank holds for its kin at the same step."""
    held = [
        variant
        for movement in catalogue().movements
        if "plank" in movement.id and movement.unit_of(movement.variants[0]) is AmountUnit.SECONDS
        for variant in movement.variants
        if {Demand.FLOOR, Demand.LEGS} <= set(variant.demands)
        and not {Demand.KNEELING, Demand.ARMS_BEHIND} & set(variant.demands)
    ]
    assert len(held) > 3
    assert all(Demand.BREATH_HOLDING in one.demands for one in held)


def test_thin_bones_round_no_back_with_or_without_a_weight():
    who = athlete(limits=("osteoporosis",), owns=["chair", "table"])
    line = only_line("3 rounds, no hurry\n8 cat-cows", who)
    assert line.movement == "rock-back"


def test_a_sore_shoulder_stretches_with_a_low_arm():
    line = only_line("3 rounds, no hurry\n45 s chest stretch", athlete(limits=("shoulder",)))
    assert (line.movement, line.variant) == ("chest stretch", "doorway-low")


PUSHED = [did("push-up", 4, variant="knees")]


@pytest.mark.parametrize("limits", [("osteoporosis",), ("unsteady",), ()])
@pytest.mark.parametrize("experience", ["new", "some"])
def test_an_easier_way_gets_no_fewer_than_a_harder_one_has_shown(limits, experience):
    owns = ["2x dumbbell 2 4", "chair", "table"]
    who = athlete(mass=61, birth_year=1957, experience=experience, limits=limits, owns=owns, tests=PUSHED)
    pushed = only_line("AMRAP 12\n12 push-ups", who)
    pressed = only_line("4 sets\n8 bench presses\nrest 90 s", who)
    assert pushed.variant == "knees" or (pushed.amount or 0) >= 4
    assert (pressed.amount or 0) >= 4


def test_the_heaviest_thing_does_not_go_overhead_for_a_sore_back():
    who = athlete(mass=97, sex="male", owns=["kettlebell 16 24"], limits=("low-back",), experience="some")
    line = only_line("5 x 3 push press @ 50 kg\nrest 2 min", who)
    assert (line.load_kg, line.amount) == (16, 8)
