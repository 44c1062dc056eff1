"""How much of a way is a set: seconds of work, by what it trains and who does it (`doses.toml`)."""

import pytest

from core.athletes.circumstances import in_circumstances
from core.athletes.values import Seated, Space
from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.movements.values import Part
from core.scaling.doses import dose_of, doses
from tests.unit.scaling.people import athlete, did, lines, only_line, version

ABLE = (did("push-up", 40), did("air squat", 60), did("sit-up", 60))
QUIET = Space(jumping=False, running=False)
ROUNDS = "4 rounds for time\n"


def lasts_s(line):
    """Of one side, or of both in turn."""
    _, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    return line.amount * (1 if line.unit is AmountUnit.SECONDS else variant.seconds.value)


def test_every_part_has_its_dose_and_none_has_two():
    parts = [part for dose in doses() if not dose.from_s for part in dose.parts]
    assert sorted(parts) == sorted(Part)
    assert all(dose.least_s < dose.gentle_s < dose.most_s for dose in doses())


@pytest.mark.parametrize("text", ["20 walking lunges", "30 sit-ups", "40 air squats", "25 push-ups"])
def test_what_a_coach_wrote_for_the_able_stays(text):
    line = only_line(ROUNDS + text, athlete(tests=ABLE, experience="trained", owns=["chair"]))
    assert line.amount == float(text.split()[0])


@pytest.mark.parametrize("experience", ["some", "trained"])
def test_what_stands_in_for_many_is_a_usual_set_of_its_own(experience):
    """Thirty sit-ups become a dozen or so of what a sore back does instead, and not thirty."""
    who = athlete(tests=ABLE, experience=experience, limits=("low-back",))
    line = only_line(ROUNDS + "30 sit-ups", who)
    assert line.movement != "sit-up"
    assert 8 <= line.amount <= 40
    assert lasts_s(line) <= dose_of(*catalogue().variant(f"{line.movement}/{line.variant}")).most_s


def test_a_fuller_board_brings_more_of_the_stand_in():
    who = athlete(tests=ABLE, experience="trained", limits=("low-back",))
    few, many = (only_line(ROUNDS + text, who) for text in ("30 sit-ups", "60 sit-ups"))
    assert lasts_s(few) < lasts_s(many) < 2 * lasts_s(few)


NEW = athlete(experience="new", mass=80, owns=["chair"], tests=[did("push-up", 0)])
BACK = athlete(experience="some", weeks_off=6, owns=["chair"], tests=[did("push-up", 14)])


@pytest.mark.parametrize("who", [NEW, BACK], ids=["new", "back after a break"])
@pytest.mark.parametrize("text", ["20 walking lunges", "30 sit-ups", "40 air squats", "30 good mornings"])
def test_whoever_begins_or_comes_back_does_a_usual_set(who, text):
    line = only_line(ROUNDS + text, in_circumstances(who))
    usual = dose_of(*catalogue().variant(f"{line.movement}/{line.variant}"))
    assert 8 <= line.amount <= 16
    assert lasts_s(line) <= max(usual.gentle_s, 8 * lasts_s(line) / line.amount)


def test_what_is_done_once_is_broken_into_several_usual_sets():
    once, again = (only_line(text, NEW) for text in ("For time\n60 air squats", ROUNDS + "60 air squats"))
    assert once.amount > 1.5 * again.amount


def test_a_few_steps_that_are_over_in_no_time_become_a_dozen():
    """Eight box jumps take longer than eight wide steps."""
    who = athlete(experience="new", mass=94, limits=("knee",), space=QUIET)
    line = lines("Every 2 minutes for 12 minutes\n8 box jumps", who)[0]
    assert (line.movement, line.variant, line.amount) == ("side bound", "step", 12)


def test_a_heavy_set_becomes_fewer_of_what_is_slow():
    """Fifteen split squats with three seconds down are two minutes for both legs."""
    who = athlete(experience="trained", tests=[did("air squat", 30)], space=QUIET)
    line = only_line("5 sets of 5 back squats 100/65 kg, rest 2 minutes", who)
    assert 8 <= line.amount <= 15
    assert lasts_s(line) <= dose_of(*catalogue().variant(f"{line.movement}/{line.variant}")).most_s


def test_nobody_does_a_burpee_at_a_chair_for_every_four_seconds_of_rowing():
    """Furniture is no machine, and a burpee is a piece of work."""
    who = athlete(experience="trained", owns=["chair"], tests=ABLE, space=QUIET)
    row = lines("5 rounds for time\n250 m row\n10 air squats", who)[0]
    assert row.movement != "burpee" or row.amount <= 12


def test_whoever_is_held_to_a_moderate_effort_hurries_to_no_floor():
    back = athlete(experience="trained", weeks_off=8, tests=ABLE)
    burpees = lines("AMRAP 12\n12 burpees\n10 air squats", in_circumstances(back))[0]
    assert "jumping" not in catalogue().variant(f"{burpees.movement}/{burpees.variant}")[1].demands


@pytest.mark.parametrize(("text", "told"), [("400 m run", 150), ("2400 m run", 900), ("300 m run", 120)])
def test_time_in_place_of_metres_is_told_as_people_say_it(text, told):
    who = athlete(limits=("pregnancy",), tests=ABLE)
    walk = lines(f"3 rounds for time\n{text}\n10 air squats", who)[0]
    assert (walk.amount, walk.unit) == (told, AmountUnit.SECONDS)


def test_many_for_each_leg_in_place_of_a_heavy_few_come_in_fewer_sets():
    """Five sets of five squats are no seventy-five slow ones a leg."""
    who = athlete(experience="trained", tests=[did("air squat", 30)], space=QUIET)
    (block,) = version("5 sets of 5 back squats 100/65 kg, rest 2 minutes", who).blocks
    assert block.lines[0].per_side
    assert block.rounds == 3


def test_as_many_sets_as_written_of_what_is_written():
    who = athlete(experience="trained", owns=["barbell 20 to 120 by 2.5"], tests=[did("back squat", 5, 90)])
    (block,) = version("5 sets of 5 back squats 100/65 kg, rest 2 minutes", who).blocks
    assert block.rounds == 5


@pytest.mark.parametrize("limit", ["shoulder", "wrist"])
def test_nobody_tests_a_sore_joint(limit):
    (block,) = version("Max reps in 2 min\npush-ups", athlete(tests=ABLE, limits=(limit,))).blocks
    assert not block.scored
    (able,) = version("Max reps in 2 min\npush-ups", athlete(tests=ABLE)).blocks
    assert able.scored


def test_whoever_goes_easy_does_ten_of_what_is_light_and_no_five():
    """Five front squats with two small dumbbells are no set in place of five heavy ones."""
    who = athlete(
        experience="some",
        owns=["2x dumbbell 4 8", "kettlebell 12"],
        tests=[did("goblet squat", 15, 12)],
        limits=("low-back",),
    )
    squats = lines("Back squat 5 x 5, rest 2 min", who)[0]
    assert squats.amount >= 8


def test_skipping_twice_as_fast_is_worth_as_much_of_anything_else():
    wheels = athlete(limits=("seated",), owns=["wheelchair"], seated=Seated(trunk=True, floor=False))
    (skip,) = lines("5 rounds for time\n50 double-unders", in_circumstances(wheels))
    assert skip.unit is not AmountUnit.SECONDS or skip.amount >= 60


def test_ten_are_enough_for_the_sake_of_a_joint():
    who = athlete(experience="trained", owns=["dumbbell 6", "chair"], limits=("knee",))
    squats = lines("5 sets of 5 back squats 60/40 kg, rest 2 min", who)[0]
    assert 8 <= squats.amount <= 10


def test_steps_that_become_squats_count_pairs():
    """Forty for each worn knee are twice what twenty in turn were."""
    line = only_line("4 rounds for time\n20 walking lunges", athlete(limits=("knee",), owns=["chair"]))
    assert (line.movement, line.amount) == ("air squat", 12)


def test_what_the_legs_drive_overhead_is_not_made_up_by_number():
    line = only_line(
        "5 x 3 push press @ 50 kg\nrest 2 min", athlete(mass=78, sex="male", owns=["backpack to 20"])
    )
    assert (line.amount or 0) <= 8


def test_an_easy_ride_becomes_an_easy_way_to_go():
    line = only_line("10 min easy ride", athlete(owns=["chair", "stairs"]))
    assert (line.movement, line.variant) == ("run", "brisk-walk")
