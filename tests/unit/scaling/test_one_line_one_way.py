"""What a coach writes twice in a block is done in one way; a ladder that is written out stays a ladder."""

from core.forecast.today import fitted_today, version_today
from core.movements.lookup import catalogue
from core.scaling.orders import Orders
from core.scaling.why import explained
from tests.unit.scaling.people import athlete, did, lines, session

LADDER = """For time, cap 15 min:
21 thrusters (40/30 kg)
21 pull-ups
30 sit-ups
15 thrusters (40/30 kg)
15 pull-ups
30 sit-ups
9 thrusters (40/30 kg)
9 pull-ups
30 sit-ups"""
SMALL_KIT = ["2x dumbbell 4 8 12", "band", "chair", "bench"]


def done(line):
    return line.movement, line.variant, line.implement, line.count, line.load_kg


def test_rounds_of_one_line_are_done_in_one_way():
    for limits in ((), ("knee",), ("shoulder",), ("pregnancy-middle",), ("high-blood-pressure", "knee")):
        who = athlete(experience="some", birth_year=1970, limits=limits, owns=SMALL_KIT)
        made = lines(LADDER, who)
        assert len({done(line) for line in made[::3]}) == 1
        assert len({done(line) for line in made[1::3]}) == 1


def test_a_ladder_keeps_its_shape_against_a_band():
    who = athlete(experience="some", limits=("wrist",), owns=["2x dumbbell 8", "band"])
    amounts = [line.amount for line in lines(LADDER, who)[1::3]]
    assert amounts == [21, 15, 9]


def test_the_longest_set_of_a_ladder_isn_t_beyond_what_was_shown():
    who = athlete(
        experience="some",
        mass=58,
        limits=("seated",),
        owns=["2x dumbbell 3 6", "wheelchair"],
        tests=[did("overhead press", 10, 12)],
    )
    first = lines(LADDER, who)[0]
    assert first.movement == "overhead press"
    assert first.load_kg == 3


def test_what_is_told_why_is_what_the_version_holds():
    who = athlete(experience="some", birth_year=1954, limits=("knee", "high-blood-pressure"), owns=SMALL_KIT)
    known = catalogue()
    for minutes in (None, 30):
        today = who.model_copy(update={"today": who.today.model_copy(update={"minutes": minutes})})
        written = session(f"5 x 5 back squat @ 60 kg\nrest 2 min\n\n{LADDER}")
        made = version_today(written, today, known, year=2026)
        fitted, cut = fitted_today(written, today, known, Orders(), 2026)
        told = [
            one for block in explained(fitted, today, known, Orders(), year=2026, cut=cut) for one in block
        ]
        given = [line for _, line in made.spots if line.variant]
        labels = [known.variant(f"{line.movement}/{line.variant}")[1].label for line in given]
        assert [one.chosen.what.split(",")[0] for one in told] == [one.split(",")[0] for one in labels]


def test_no_stand_in_is_the_same_movement_as_another_line_of_the_round():
    who = athlete(experience="some", limits=("knee",), birth_year=1985, owns=["chair", "table"])
    made = lines("2 rounds, not for time\n8 bird dogs per side\n8 dead bugs per side\n30 s plank", who)
    assert len({line.movement for line in made}) == len(made)
