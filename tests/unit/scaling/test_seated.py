"""Who can't stand, line by line as a coach would say it (common practice, no source; invented people)."""

import pytest

from bot.words.reasons import reason_words
from core.athletes.limits import brought, limit
from core.athletes.values import Place
from core.movements.lookup import catalogue
from core.movements.values import Demand
from core.scaling.gear import at_hand
from core.scaling.values import Because
from core.scaling.warm_up import warm_up_for
from tests.unit.scaling.people import NO_RUNNING, athlete, did, lines, only_line, session, version

AMRAP = "AMRAP 12\n"
ON_THE_SEAT = {Demand.STANDING, Demand.LEGS, Demand.KNEELING, Demand.BALANCE, Demand.IMPACT}


def sits(*more, **known):
    return athlete("Runa", limits=("seated", *more), **known)


PRESSES = [did("overhead press", 20, 8)]

CASES = [
    # text, athlete, what it becomes, amount, load
    ("15 squats", sits(), "punches/seated", 25, None),
    ("12 goblet squats @ 16 kg", sits(owns=["kettlebell 16"]), "punches/seated", 25, None),
    ("12 walking lunges", sits(), "punches/seated", 25, None),
    ("400 m run", sits(owns=["wheelchair"]), "wheelchair push/outdoors", 250, None),
    ("400 m run", sits(), "punches/seated", 150, None),
    ("400 m run", sits(owns=["wheelchair"], space=NO_RUNNING), "punches/seated", 150, None),
    ("500 m row", sits(owns=["rower", "arm bike"]), "arm cranking/machine", 150, None),
    ("10 burpees", sits(), "punches/seated", 35, None),
    ("30 jumping jacks", sits(), "punches/seated", 30, None),
    (
        "10 overhead presses 2 x 8 kg",
        sits(owns=["2x dumbbell 6 8"], tests=PRESSES),
        "overhead press/seated",
        10,
        8,
    ),
    (
        "10 overhead presses 2 x 6 kg",
        sits(owns=["2x dumbbell 6"], tests=[did("overhead press", 20, 6)]),
        "overhead press/seated",
        10,
        6,
    ),
    (
        "10 thrusters 2 x 8 kg",
        sits(owns=["2x dumbbell 6 8"], tests=PRESSES),
        "overhead press/seated",
        10,
        8,
    ),
    ("10 overhead presses 2 x 8 kg", sits(), "armrest press/press", 10, None),
    ("12 bent-over rows 2 x 10 kg", sits(owns=["band"]), "single-arm row/band-on-seat", 12, None),
    ("8 pull-ups", sits(owns=["band"]), "band pull-down/seated", 12, None),
    ("10 curls 2 x 8 kg", sits(owns=["2x dumbbell 8"], tests=[did("curl", 20, 8)]), "curl/seated", 10, 8),
    ("10 push-ups", sits(tests=[did("push-up", 30)]), "armrest press/lift", 10, None),
    ("10 dips", sits(tests=[did("push-up", 30)]), "armrest press/lift", 10, None),
    ("15 wall balls @ 6 kg", sits(owns=["medicine ball 4"]), "chest pass/seated", 15, 4),
    ("12 swings @ 16 kg", sits(owns=["kettlebell 16"]), "good morning/seated", 15, None),
    ("15 sit-ups", sits("no-floor"), "seated lean/back", 15, None),
    ("12 seated twists", sits("no-floor"), "seated twist/on-seat", 12, None),
]


@pytest.mark.parametrize(("text", "who", "becomes", "amount", "load"), CASES)
def test_who_sits_gets_work_of_the_same_intent_on_the_seat(text, who, becomes, amount, load):
    line = only_line(AMRAP + text, who)
    assert f"{line.movement}/{line.variant}" == becomes
    assert (line.amount, line.load_kg and float(line.load_kg)) == (amount, load)
    assert line.reason.because is Because.LIMIT
    _, way = catalogue().variant(becomes)
    assert not ON_THE_SEAT & set(way.demands)


def test_the_floor_is_for_whoever_sits_to_rule_out():
    line = only_line(AMRAP + "15 sit-ups", sits())
    assert (line.variant, line.reason.because) == ("floor", Because.AS_WRITTEN)


def test_the_reason_is_what_they_said_and_nothing_more():
    assert reason_words(only_line(AMRAP + "10 burpees", sits()), sits().units).startswith(
        "As you said: sitting only"
    )


def test_the_caution_is_about_brakes_shoulders_and_those_who_treat_them():
    cautions = [one.id for one in version(AMRAP + "10 burpees", sits("no-running", "no-kneeling")).cautions]
    assert cautions == ["seated"]


def test_who_sits_has_a_seat_without_being_asked():
    assert brought(("seated",)) == ("seat",)
    assert [thing.implement for thing in at_hand(sits(owns=["band"]))] == ["band", "seat"]
    assert [thing.implement for thing in at_hand(athlete(owns=["band"]))] == ["band"]


@pytest.mark.parametrize("text", ["15 squats", "400 m run", "10 burpees", "12 bent-over rows 2 x 10 kg"])
@pytest.mark.parametrize("limit", ["knee", "unsteady", "no-floor", "pregnancy"])
def test_who_stands_is_not_sat_down(text, limit):
    line = only_line(AMRAP + text, athlete(limits=(limit,), owns=["band", "chair", "seat"]))
    assert not catalogue().variant(f"{line.movement}/{line.variant}")[1].seated


def test_whoever_is_written_seated_work_does_it():
    line = only_line(AMRAP + "40 s seated punches", athlete())
    assert (line.movement, line.variant, line.reason.because) == ("punches", "seated", Because.AS_WRITTEN)


def test_punches_are_thrown_standing_by_whoever_can_and_sitting_by_whoever_cannot():
    ways = [only_line(AMRAP + "40 s punches", who).variant for who in (athlete(), sits())]
    assert ways == ["standing", "seated"]


def test_the_warm_up_is_done_on_the_seat_too():
    text, who = AMRAP + "10 burpees\n10 push-ups\n12 swings @ 16 kg", sits()
    made = warm_up_for(session(text), version(text, who), who, catalogue())
    ways = [catalogue().variant(f"{line.movement}/{line.variant}")[1] for line in made.lines]
    assert "seated march" in {line.movement for line in made.lines}
    assert all(not ON_THE_SEAT & set(way.demands) for way in ways)


def test_from_a_seat_only_seats_are_reached_unless_it_is_what_is_written():
    ways = {reach.id for reach in catalogue().reachable("back squat/barbell")}
    seat, feet = "overhead press/seated-two-handed", "overhead press/standing"
    assert seat in ways
    assert feet not in ways
    assert feet in {reach.id for reach in catalogue().reachable(seat)}


@pytest.mark.parametrize(
    ("limit", "effort", "scored"),
    [
        ("heart", 4, False),
        ("stroke", 4, False),
        ("copd", 5, False),
        ("ms", 6, False),
        ("parkinsons", None, True),
    ],
)
def test_a_known_disease_keeps_it_as_easy_as_the_screening_would(limit, effort, scored):
    made = version(AMRAP + "10 push-ups", athlete(limits=(limit,)))
    assert (made.effort_at_most, made.scored) == (effort, scored)


ALL_ROUND = """3 sets
5 back squats
6 overhead presses
8 bent-over rows
"""


def test_what_another_line_is_for_stands_in_for_nothing():
    who = sits(owns=["2x dumbbell 6 10 14", "band"], tests=PRESSES)
    squats, presses, rows = (f"{line.movement}/{line.variant}" for line in lines(ALL_ROUND, who))
    assert squats == "band pull-down/seated"  # shoulders that push all day get a pull
    assert presses.startswith(("overhead press", "single-arm press"))
    assert rows.startswith("single-arm row")


def test_who_sits_and_has_weights_presses_them_before_a_band_and_pulls_a_band_before_they_lean_over():
    who = sits(owns=["2x dumbbell 8", "band"], tests=PRESSES)
    assert only_line("3 sets\n8 overhead presses @ 40 kg\nrest 90 s", who).implement == "dumbbell"
    assert only_line("4 sets\n6 bent-over rows @ 60 kg\nrest 90 s", who).implement == "band"


@pytest.mark.parametrize("text", ["12 swings @ 24 kg", "12 goblet squats @ 16 kg", "12 back squats @ 60 kg"])
def test_nobody_bows_out_of_a_wheelchair_with_a_weight_for_what_is_no_deadlift(text):
    line = only_line("3 sets\n" + text + "\nrest 90 s", sits(owns=["dumbbell 5 12"]))
    assert (line.movement, line.load_kg is None) != ("good morning", False)


@pytest.mark.parametrize("text", ["10 burpees\n30 double-unders\n200 m run", "12 sit-ups\n12 russian twists"])
def test_neighbours_on_the_seat_differ(text):
    done = [line.movement for line in lines(AMRAP + text, sits("no-floor", owns=["arm bike", "wheelchair"]))]
    assert len(set(done)) == len(done)


def test_where_nobody_may_run_who_sits_may_wheel():
    who = sits(owns=["wheelchair"], space=NO_RUNNING, place=Place(run_m=100))
    assert only_line("400 m run", who).movement == "wheelchair push"


def test_where_nobody_may_run_there_may_be_a_way_to_walk():
    near = athlete(space=NO_RUNNING, place=Place(run_m=100))
    assert only_line("10 min walk", near).reason.because is Because.AS_WRITTEN
    nowhere = athlete(space=NO_RUNNING, place=Place(run_m=0))
    assert only_line("2 min walk", nowhere).reason.because is Because.SPACE


def test_for_ten_minutes_of_walking_anybody_steady_leaves_the_house():
    indoors = {"space": NO_RUNNING, "place": Place(run_m=0)}
    assert only_line("10 min walk", athlete(**indoors)).reason.because is Because.AS_WRITTEN
    unsteady = athlete(limits=("unsteady",), **indoors)
    assert only_line("10 min walk", unsteady).reason.because is not Because.AS_WRITTEN


def test_who_sits_reads_how_not_to_tip():
    assert "before you lean forward" in limit("seated").caution


def test_the_lines_of_a_light_day_are_spread_over_whoever_sits():
    text = "3 rounds, easy\n10 goblet squats @ 12 kg\n10 bridges\n8 bird dogs per side\n30 s plank\n"
    done = [line.movement for line in lines(text, sits("no-floor", owns=["2x dumbbell 5 8", "band"]))]
    assert len(set(done)) == len(done)
    assert "chest pass" not in done
