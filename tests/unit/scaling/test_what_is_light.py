"""What a coach calls light is light for whoever lifts it, and what is sore is only moved."""

import pytest

from core.athletes.values import Screening, Today
from core.movements.lookup import catalogue
from core.scaling.athlete import Athlete
from tests.unit.scaling.people import athlete, did, lines

LIGHT = "3 rounds, no clock\n10 goblet squats, light\n10 push-ups"
PLAIN = "3 rounds, no clock\n10 goblet squats\n10 push-ups"
BELLS = ("kettlebell 8 12 16 24 32",)
BENCH = "4 x 8 bench presses, RPE 8, rest 2 min"
SHOWN = did("goblet squat", 25, 16)


def held(text, who):
    load = lines(text, who)[0].load_kg
    return 0.0 if load is None else float(load)


@pytest.mark.parametrize(
    "text", [LIGHT, "Light day\n" + PLAIN, "3 rounds, easy\n10 goblet squats\n10 push-ups"]
)
def test_light_is_far_less_than_they_could_however_heavy_their_things_are(text):
    who = athlete(owns=BELLS, tests=[SHOWN], experience="trained")
    assert 0 < held(text, who) <= held(PLAIN, who) / 2


def test_the_stronger_one_holds_more_of_what_is_light():
    stronger = athlete(owns=BELLS, tests=[did("goblet squat", 25, 32)], experience="trained")
    assert held(LIGHT, stronger) > held(LIGHT, athlete(owns=BELLS, tests=[SHOWN], experience="trained"))


def test_whoever_has_a_cap_on_their_effort_holds_less_of_what_is_light():
    somebody = {"owns": BELLS, "tests": [SHOWN], "experience": "trained"}
    assert held(LIGHT, athlete(limits=("pregnancy-middle",), **somebody)) < held(LIGHT, athlete(**somebody))


def test_whoever_owns_nothing_light_holds_nothing():
    who = athlete(owns=["kettlebell 32"], tests=[did("air squat", 20)], experience="some")
    (line, _) = lines(LIGHT, who)
    assert (line.load_kg, line.unit) == (None, "reps")


def test_a_load_that_the_coach_wrote_is_left_as_written():
    who = athlete(owns=BELLS, tests=[SHOWN], experience="trained")
    assert held("3 rounds, no clock\n10 goblet squats @ 16 kg, light\n10 push-ups", who) == 16


@pytest.mark.parametrize("text", ["Deadlift 4 x 6, rest 2 min", "AMRAP 12\n15 kettlebell deadlifts @ 16 kg"])
def test_whoever_is_new_and_sore_moves_less_in_every_line_of_what_is_sore(text):
    somebody = {"owns": ["backpack to 15"], "experience": "new", "mass": 110, "sex": "male"}
    fresh, sore = (lines(text, athlete(**somebody, today=Today(sore=where)))[0] for where in ((), ("legs",)))
    assert (sore.load_kg or 0) < fresh.load_kg
    assert sore.amount <= fresh.amount


def test_what_is_not_sore_is_lifted_as_ever():
    somebody = {"owns": ["backpack to 15"], "experience": "new", "mass": 110, "sex": "male"}
    fresh, sore = (
        held("4 x 8 bent-over rows, rest 90 s", athlete(**somebody, today=Today(sore=where)))
        for where in ((), ("legs",))
    )
    assert sore == fresh


@pytest.mark.parametrize(("owns", "amount"), [(("dumbbell 5",), 10), (("barbell 20 to 60 by 5",), 6)])
def test_of_next_to_nothing_whoever_goes_easy_does_more_than_a_heavy_few(owns, amount):
    who = athlete(
        owns=owns, limits=("pregnancy-middle",), experience="trained", tests=[did("deadlift", 5, 60)]
    )
    (line,) = lines("Deadlift 4 x 6, rest 2 min", who)
    assert (line.movement, line.amount) == ("deadlift", amount)


def test_under_a_cap_of_effort_as_much_more_is_left_as_the_cap_asks():
    """Repetitions in reserve by effort (Zourdos et al. 2016, from memory)."""
    who = athlete(owns=["barbell to 100", "bench"], experience="trained")
    capped = who.model_copy(update={"screening": Screening.MODERATE})
    cap = Athlete(capped, catalogue()).effort_at_most
    assert cap is not None
    assert lines(BENCH, who)[0].leaves == 2
    assert lines(BENCH, capped)[0].leaves == 10 - cap > 2


def test_of_heavy_but_clean_only_clean_stands_beside_the_load():
    (line,) = lines(
        "Overhead press 5 x 5, heavy but clean", athlete(owns=["barbell to 100"], experience="trained")
    )
    assert line.notes == "clean"


def test_of_several_weights_the_heaviest_is_never_the_light_one():
    strong = athlete(owns=BELLS, tests=[did("back squat", 3, 130)], experience="trained", mass=88, sex="male")
    assert 12 <= held(LIGHT, strong) <= 2 / 3 * 32


def test_what_bare_legs_showed_holds_for_the_same_squat_with_little_in_the_hands():
    """Thirty bare squats are no five with eight kilos, however the session is written."""
    who = athlete(owns=["dumbbell 4", "dumbbell 8"], tests=[did("air squat", 30)], experience="some", mass=64)
    (squats,) = lines("Back squat 5 x 5 at 75%, rest 2 minutes", who)
    assert squats.load_kg == 8
    assert squats.amount >= 8
    assert held("3 rounds, no clock\n10 goblet squats, light\n10 push-ups", who) == 4


def test_heavy_sets_across_leave_one_or_two_in_the_last():
    owns = ["barbell 20 to 120 by 2.5"]
    who = athlete(owns=owns, tests=[did("overhead press", 3, 60)], experience="trained", mass=88, sex="male")
    across, once = (held(f"Overhead press {sets} x 5, heavy, rest 2 minutes", who) for sets in (5, 1))
    assert 47.5 <= across <= 52.5 < once
