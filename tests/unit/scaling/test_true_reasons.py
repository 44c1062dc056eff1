"""What a fresh pair of eyes found in real play: the true cause, the nearest load, the right question."""

from decimal import Decimal

import pytest

from bot.words.reasons import reason_words
from bot.words.text import with_article
from bot.words.versions import line_words, what_words
from core.athletes.values import Pregnancy, Screening
from core.measures import MassUnit, as_marked
from core.movements.lookup import catalogue
from core.scaling.questions import next_question
from core.scaling.values import Ask, Because, Change
from tests.unit.scaling.people import athlete, did, lines, only_line, session

FOUR = "AMRAP 20\n12 goblet squats @ 24/16 kg\n10 push-ups\n10 lunges\n15 sit-ups"
TWENTY_LB = "9.0718474"


def a_man(**known):
    return athlete("Bo", sex="male", mass=80, **known)


def asked(text, who):
    return next_question(who, session(text), catalogue())


def test_what_was_shown_elsewhere_speaks_for_what_was_never_asked():
    who = a_man(owns=["kettlebell 24"], tests=[did("push-up", 40), did("single-arm row", 30, 24)])
    assert {line.change for line in lines(FOUR, who)} == {Change.NONE}


def test_somebody_who_does_thirty_of_everything_lunges_without_a_wall():
    who = athlete(owns=["dumbbell 10"], tests=[did("push-up", 25), did("sit-up", 30)])
    _, push_ups, lunges, sit_ups = lines(FOUR, who)
    assert {line.change for line in (push_ups, lunges, sit_ups)} == {Change.NONE}


def test_starting_lighter_for_want_of_knowledge_says_so():
    line = only_line("AMRAP 12\n12 push-ups", athlete(sex=None, owns=["chair"]))
    assert (line.change, line.reason.because) == (Change.VARIANT, Because.UNTESTED)
    assert "I don't know yet how you do with push-ups" in reason_words(line, MassUnit.KG)


def test_what_is_heavy_for_anybody_like_them_is_called_heavy():
    line = only_line("AMRAP 12\n60 push-ups", athlete(owns=["chair"]))
    assert line.reason.because is Because.TOO_HEAVY


def test_the_nearest_load_stands_in_for_the_written_one():
    who = a_man(owns=["kettlebell 24", "dumbbell 10"], tests=[did("single-arm row", 30, 24)])
    line = only_line("AMRAP 20\n10 single-arm rows each side @ 22.5 kg", who)
    assert (line.movement, line.implement, line.load_kg) == ("single-arm row", "kettlebell", 24)
    assert "don't have 22.5 kg" in reason_words(line, MassUnit.KG)


def test_of_two_that_are_about_as_far_the_lighter_is_taken():
    who = a_man(owns=["kettlebell 20 24"], tests=[did("single-arm row", 25, 24)])
    assert only_line("AMRAP 20\n10 single-arm rows each side @ 21 kg", who).load_kg == 20


def test_going_easy_for_a_shoulder_is_not_called_weakness():
    who = a_man(limits=("shoulder",), owns=["kettlebell 24"], tests=[did("swing", 40, 24)])
    line = only_line("AMRAP 20\n15 swings @ 24 kg", who)
    assert line.change is Change.NONE or line.reason.because in {Because.LIGHT_DUTY, Because.LIMIT}


def test_heavy_deadlifts_are_done_with_a_barbell_and_nobody_misses_a_kettlebell():
    text = "AMRAP 20\n10 deadlifts @ 100/70 kg"
    words = reason_words(only_line(text, a_man(owns=["kettlebell 24"])), MassUnit.KG)
    assert "kettlebell" not in words
    bar = a_man(owns=["barbell 20", "2x plate 10 20"], tests=[did("deadlift", 20, 70)])
    line = only_line(text, bar)
    assert (line.variant, line.implement, line.load_kg) == ("barbell", "barbell", 80)


@pytest.mark.parametrize(("written", "on_the_bar"), [(20, 20), (40, 40), (60, 60), (80, 80)])
def test_plates_go_on_a_bar_in_pairs(written, on_the_bar):
    who = a_man(owns=["barbell 20", "2x plate 10 20"], tests=[did("deadlift", 20, 80)])
    line = only_line(f"AMRAP 20\n8 barbell deadlifts @ {written} kg", who)
    assert line.load_kg == on_the_bar


def test_a_single_plate_makes_no_pair():
    who = a_man(owns=["barbell 20", "plate 10"], tests=[did("deadlift", 20, 80)])
    assert only_line("AMRAP 20\n8 barbell deadlifts @ 40 kg", who).load_kg in {None, 20}


def test_a_stand_in_brings_no_swings_beside_swings():
    who = a_man(owns=["kettlebell 24"], tests=[did("swing", 30, 24)])
    first, second = lines("AMRAP 20\n15 swings @ 24 kg\n10 deadlifts @ 60 kg", who)
    assert first.movement != second.movement


@pytest.mark.parametrize("known", [{"screening": Screening.MODERATE}, {"limits": ("pregnancy",)}])
def test_going_easy_is_no_reason_for_something_far_too_easy(known):
    tests = [did("goblet squat", 8, TWENTY_LB)]
    who = athlete(units=MassUnit.LB, owns=[f"dumbbell {TWENTY_LB}"], tests=tests, **known)
    line = only_line("AMRAP 12\n10 goblet squats @ 25 lb", who)
    assert "half" not in line.variant
    assert "holding" not in line.variant
    assert 0.125 <= line.set_cost <= 0.5


def test_what_one_can_not_lift_is_no_matter_of_equipment():
    who = athlete(owns=["dumbbell 10"], tests=[did("goblet squat", 0, 10)])
    line = only_line("AMRAP 12\n12 goblet squats @ 16 kg", who)
    assert line.reason.because is Because.TOO_HEAVY
    assert "don't have" not in reason_words(line, MassUnit.KG)


def test_a_thing_is_called_what_stands_on_it():
    assert as_marked(Decimal(TWENTY_LB), MassUnit.KG) == "20 lb"
    assert as_marked(Decimal(TWENTY_LB), MassUnit.LB) == "20 lb"
    assert as_marked(Decimal(16), MassUnit.LB) == "16 kg"
    assert as_marked(Decimal("22.5"), MassUnit.KG) == "22.5 kg"


def test_pounds_stay_pounds():
    who = athlete(
        units=MassUnit.LB, owns=[f"dumbbell {TWENTY_LB}"], tests=[did("goblet squat", 25, TWENTY_LB)]
    )
    line = only_line("AMRAP 12\n12 goblet squats @ 25 lb", who)
    assert "20 lb dumbbell" in what_words(line, who.units)
    assert "kg" not in line_words(line, who.units)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("8 kg dumbbell", "an 8 kg dumbbell"),
        ("11 kg", "an 11 kg"),
        ("18 kg", "an 18 kg"),
        ("80 kg", "an 80 kg"),
        ("16 kg", "a 16 kg"),
        ("110 lb", "a 110 lb"),
        ("12 kg", "a 12 kg"),
        ("table", "a table"),
    ],
)
def test_a_or_an(words, said):
    assert with_article(words) == said


def test_the_load_asked_about_is_the_one_that_would_be_taken():
    question = asked("AMRAP 12\n12 goblet squats @ 16 kg", athlete(owns=["dumbbell 15", "plate 10"]))
    assert question is not None
    assert (question.movement, question.load_kg) == ("goblet squat", 15)


def test_nothing_is_asked_that_a_limit_decides_already():
    who = athlete(owns=["kettlebell 16"], tests=[did("goblet squat", 30, 16)])
    text = "AMRAP 12\n12 goblet squats @ 16 kg\n10 burpees\n15 sit-ups"
    told = {"limits": ("pregnancy",), "pregnancy": Pregnancy(week=22, cleared=True)}
    assert asked(text, who).movement == "burpee"
    assert asked(text, who.model_copy(update=told)) is None


def test_nothing_is_asked_of_a_load_that_is_not_there():
    question = asked("AMRAP 12\n10 deadlifts @ 100 kg", a_man(owns=["kettlebell 24"]))
    assert question is None or question.ask is not Ask.ABILITY


@pytest.mark.parametrize(
    ("limit", "words"),
    [("wrist", "To spare your sore wrist"), ("pregnancy", "Kinder while you're pregnant")],
)
def test_a_limit_is_spoken_of_kindly(limit, words):
    text = {"wrist": "AMRAP 12\n10 push-ups", "pregnancy": "AMRAP 12\n15 sit-ups"}[limit]
    line = lines(text, athlete(limits=(limit,), tests=[did("push-up", 30)]))[0]
    assert reason_words(line, MassUnit.KG).startswith(words)


def test_a_missing_bench_has_no_weight():
    line = only_line("AMRAP 12\n12 bench press @ 40 kg", athlete(owns=["dumbbell 8 12"]))
    assert reason_words(line, MassUnit.KG).startswith("You don't have a bench")


def test_rings_do_for_pull_ups_where_there_is_no_bar():
    who = a_man(owns=["rings"], tests=[did("pull-up", 20)])
    line = only_line("AMRAP 12\n5 pull-ups", who)
    assert (line.movement, line.variant) == ("pull-up", "rings")


@pytest.mark.parametrize(
    ("written", "owns", "said"),
    [
        (
            "10 dumbbell thrusters @ 2x15 kg",
            ["dumbbell 15"],
            "You have only one 15 kg dumbbell, and this takes two",
        ),
        (
            "10 thrusters @ 2x15 kg",
            ["dumbbell 15", "2x dumbbell 10"],
            "You have only one 15 kg weight, and this takes two",
        ),
        ("10 dumbbell thrusters @ 2x15 kg", ["2x dumbbell 10"], "You don't have a 15 kg dumbbell"),
        ("10 dumbbell thrusters @ 2x15 kg", ["dumbbell 10"], "You don't have a 15 kg dumbbell"),
    ],
)
def test_one_of_two_is_not_called_none(written, owns, said):
    assert said in reason_words(only_line(f"AMRAP 12\n{written}", a_man(owns=owns)), MassUnit.KG)


@pytest.mark.parametrize("owns", [["barbell 40"]])
def test_where_the_heaviest_there_is_is_light_nobody_is_told_that_the_written_is_heavy(owns):
    line = only_line(
        "AMRAP 20\n10 floor presses @ 70 kg",
        athlete(owns=owns, sex="male", mass=90, tests=[did("floor press", 30, 40)]),
    )
    assert line.implement is not None
    assert line.reason.because is Because.NOT_OWNED
    assert "You don't have a 70 kg barbell" in reason_words(line, MassUnit.KG)


def test_what_suits_is_still_lighter_for_its_weight():
    who = a_man(owns=["dumbbell 8 12 16 20"], tests=[did("goblet squat", 6, 24)])
    line = only_line("AMRAP 12\n12 goblet squats @ 24 kg", who)
    assert line.reason.because is Because.TOO_HEAVY


@pytest.mark.parametrize(("filled", "called"), [("1.5", "water bottle"), ("5", "water jug")])
def test_what_holds_little_is_a_bottle(filled, called):
    line = only_line("AMRAP 20\n10 goblet squats @ 4 kg", athlete(owns=[f"jug to {filled}"]))
    assert f"({called} filled to " in what_words(line, MassUnit.KG)


def test_two_weights_and_no_bench_are_not_called_one_bench():
    who = athlete(owns=["2x dumbbell 8"])
    line = only_line("AMRAP 20\n10 Bulgarian split squats each leg @ 2 x 8 kg", who)
    assert (line.reason.because, line.reason.about, line.reason.only_one) == (
        Because.NOT_OWNED,
        "bench",
        False,
    )
    assert "You don't have a bench" in reason_words(line, MassUnit.KG)


def test_where_the_coach_named_no_thing_two_dumbbells_are_something_to_jerk():
    line = only_line("5 sets\n3 push jerks", athlete(owns=["2x dumbbell 8"]))
    assert (line.reason.because, line.reason.about) == (Because.SKILL, "jerk")


def test_whoever_was_never_asked_is_not_told_that_they_lack_it():
    who = athlete().model_copy(update={"equipment": None})
    line = only_line("3 rounds for time\n12 goblet squats @ 16 kg", who)
    assert line.reason.because is Because.NOT_ASKED
    assert reason_words(line, MassUnit.KG).startswith("I don't know yet whether you have 16 kg for this")


def test_furniture_that_nobody_spoke_of_may_be_there():
    line = only_line("3 rounds for time\n10 table rows", athlete(owns=["dumbbell 10"]))
    assert "I don't know of a table where you train" in reason_words(line, MassUnit.KG)


@pytest.mark.parametrize(
    ("text", "owns", "said"),
    [
        ("4 sets, 2 min rest\n6 deadlifts", ["backpack to 12"], "a weight made for this"),
        ("3 rounds\n40 m farmer carry 2 x 24 kg", ["kettlebell 16 24 32"], "only one 24 kg weight"),
        ("12 min AMRAP\n10 dumbbell thrusters 2 x 15 kg", ["backpack to 12"], "15 kg dumbbell"),
    ],
)
def test_no_thing_is_missed_that_nobody_asked_for(text, owns, said):
    who = athlete(owns=owns, tests=[did("push-up", 20)], experience="some")
    assert said in reason_words(only_line(text.replace("rounds\n", "rounds for time\n"), who), who.units)


SESSIONS = (
    "5 sets of 5 back squats, heavy, rest 2 minutes",
    "AMRAP 18\n15 kettlebell swings @ 16 kg\n10 push-ups\n8 box jumps\n10 sit-ups",
    "4 rounds for time\n10 deadlifts @ 55 kg\n8 pull-ups\n30 double-unders\n12 walking lunges",
    "3 rounds, no clock\n10 goblet squats, light\n8 bird dogs each side\n10 band pull-aparts",
)
PEOPLE = (
    athlete(owns=["backpack to 12", "table"], experience="new", tests=[did("push-up", 4)]),
    athlete(owns=["2x dumbbell 4 8", "band", "chair"], experience="some", tests=[did("air squat", 30)]),
    athlete(owns=["2x dumbbell 4 10", "band", "wheelchair"], limits=("seated",), experience="trained"),
    athlete(owns=["dumbbell 2 4", "chair"], limits=("osteoporosis",), experience="some", birth_year=1953),
)


@pytest.mark.parametrize("text", SESSIONS)
@pytest.mark.parametrize("who", PEOPLE, ids=["new", "small kit", "seated", "old"])
def test_more_and_fewer_are_said_of_another_number_only(text, who):
    for line, written in zip(lines(text, who), session(text).every_line, strict=True):
        said = reason_words(line, MassUnit.KG).lower()
        if line.unit is not written.unit or None in {line.amount, written.amount}:
            continue
        assert "more of them" not in said or line.amount > written.amount, said
        assert "fewer, so" not in said or line.amount < written.amount, said


def test_nobody_looks_for_the_squat_in_a_jump():
    text = "AMRAP 12\n8 box jumps\n10 thrusters @ 15 kg"
    who = athlete(owns=["2x dumbbell 4 10", "wheelchair"], limits=("seated",), experience="trained")
    jumps, thrusters = (reason_words(line, MassUnit.KG) for line in lines(text, who))
    assert "left out" not in jumps
    assert "The squat is left out" in thrusters
