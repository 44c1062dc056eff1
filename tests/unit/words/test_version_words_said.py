"""What is said beside a version: gently where nothing is to be chased, and no reason twice."""

import re
from decimal import Decimal

import pytest

from bot.words.aloud import aloud_words
from bot.words.headings import block_heading
from bot.words.reasons import reason_words
from bot.words.versions import effort_words, in_turn, what_words
from core.athletes.values import Screening
from core.measures import MassUnit
from core.scaling.values import Because, Change, Instead, Reason, Say
from tests.unit.scaling.people import athlete, did, lines, version

PREGNANT = athlete("Lene", owns=["chair", "table"], limits=("pregnancy",))


@pytest.mark.parametrize(
    ("text", "gently"),
    [
        ("AMRAP 12\n10 air squats", "12 minutes, round after round at an easy pace"),
        ("4 rounds for time, cap 20 min\n10 air squats", "4 rounds at an easy pace, 20 minutes at most"),
        (
            "Max reps in 2 min\npush-ups",
            "As many as are easy in 2 minutes: stop at about half of what you could do",
        ),
        ("Max plank hold", "Hold while it's easy: about half as long as you could"),
        (
            "Work up to a heavy deadlift in 15 min",
            "A few easy sets in 15 minutes, with all the rest you need",
        ),
        ("Max calories in 5 min: bike", "For calories, at an easy pace in 5 minutes"),
        ("1000 m row for time", "At an easy, even pace"),
    ],
)
def test_who_goes_easy_is_not_told_to_do_as_much_as_they_can(text, gently):
    easy = athlete("Harald", screening=Screening.MODERATE, owns=["bike", "kettlebell 16 24"])
    assert block_heading(version(text, easy).blocks[0]) == gently
    assert block_heading(version(text, athlete("Bo", owns=["bike", "kettlebell 16 24"])).blocks[0]) != gently


@pytest.mark.parametrize(
    "text",
    [
        "AMRAP 12\n10 air squats",
        "4 rounds for time\n10 air squats",
        "6 x 1000 m bike, rest 90 s",
        "2000 m bike for time",
    ],
)
@pytest.mark.parametrize(
    "limit", ["after-birth-middle", "high-blood-pressure", "beta-blockers", "osteoporosis", "pregnancy"]
)
def test_whoever_has_a_cap_on_their_effort_chases_nothing(text, limit):
    (block,) = version(text, athlete("Signe", limits=(limit,), owns=["bike"])).blocks
    assert not block.scored
    assert re.search("at a steady(, even)? pace", block_heading(block).lower())
    assert "for time" not in block_heading(block)


def test_a_cap_on_the_effort_is_told_by_breath():
    assert effort_words(6) == "6 of 10 at most: you can talk in short sentences"
    assert effort_words(2) == "2 of 10 at most: you can chat as you go"


def test_a_run_that_is_kept_easy_for_a_joint_is_not_timed():
    (block,) = version("6 x 400 m run, rest 90 s", athlete("Bo", limits=("low-back",))).blocks
    assert block_heading(block) == "6 rounds at an easy pace, 90 s rest after each"


def test_whoever_goes_easy_keeps_the_sets_of_a_hold():
    easy = athlete("Harald", screening=Screening.MODERATE)
    assert (
        block_heading(version("3 x 40 s plank, 30 s rest", easy).blocks[0]) == "3 sets, 30 s rest after each"
    )


@pytest.mark.parametrize(
    ("owns", "told"), [((), "10 min easy walk"), (("bike",), "10 min easy walk; or bike")]
)
def test_what_may_be_done_instead_is_told_to_whoever_has_it(owns, told):
    (line,) = lines("10 minutes easy walk or bike", athlete(owns=owns))
    assert what_words(line, MassUnit.KG) == told


def test_what_stands_in_for_something_easy_is_easy():
    (line,) = lines("10 minutes easy bike or walk", athlete())
    assert what_words(line, MassUnit.KG) == "10 min easy walk"
    (line,) = lines("10 minutes easy bike or walk", athlete(limits=("seated",), owns=["wheelchair"]))
    assert what_words(line, MassUnit.KG) == "10 min easy wheelchair push"


def test_a_line_is_told_in_the_units_of_what_is_in_the_hands():
    (line,) = lines("4 x 8 goblet squats @ 24 kg", athlete(owns=["kettlebell 16"]))
    assert reason_words(line, MassUnit.LB).startswith("You don't have 24 kg")


def test_a_limit_is_named_once_in_a_message():
    spared = set[str]()
    told = [
        reason_words(line, MassUnit.KG, spared)
        for line in lines("AMRAP 12\n10 push-ups\n8 burpees\n200 m run", PREGNANT)
    ]
    assert told[0].startswith("Kinder while you're pregnant")
    assert all(words.startswith("For the same reason") for words in told[1:])
    assert "pregnan" not in " ".join(told[1:])


def test_what_stands_in_for_a_limit_is_told_in_a_sentence():
    first, second = [
        line
        for line in lines("AMRAP 12\n10 sit-ups\n10 sit-ups", PREGNANT)
        if line.change is Change.MOVEMENT and line.reason.because is Because.LIMIT
    ]
    spared = set[str]()
    assert reason_words(first, MassUnit.KG, spared).startswith("This is kinder while you're pregnant")
    assert reason_words(second, MassUnit.KG, spared).startswith("For the same reason")


def lack(*names):
    return Say(block=1, line=1, written="12 swings @ 24 kg", because=Because.NOT_OWNED, names=names, of=10)


def test_few_who_lack_something_are_named_and_many_counted():
    assert aloud_words(lack("Bo", "Ilse")).startswith(
        "Bo and Ilse don't have what “12 swings @ 24 kg” asks for"
    )
    assert aloud_words(lack("Bo", "Ilse", "Tam", "Noor")).startswith("4 of 10 don't have")
    assert aloud_words(lack("Bo")).startswith("Bo doesn't have what")


def test_what_else_will_do_is_answered_and_not_asked():
    some = Instead(movement="goblet squat", variant="front", lightest_kg=Decimal(8), heaviest_kg=Decimal(12))
    others = Instead(movement="air squat", variant="floor")
    told = aloud_words(lack("Bo", "Ilse").model_copy(update={"instead": (some, others)}))
    assert told.endswith("asks for. Instead: goblet squats (8 kg to 12 kg); or squats")


@pytest.mark.parametrize("because", [one for one in Because if one is not Because.LIMIT])
def test_nobody_reads_out_a_dozen_names(because):
    names = ("Bo", "Ilse", "Tam", "Noor")
    told = aloud_words(Say(because=because, block=1, line=1, written="10 push-ups", names=names, of=9))
    assert "4 of 9" in told
    assert "Noor" not in told


@pytest.mark.parametrize(
    ("about", "words"),
    [
        ("pregnancy-middle", "Kinder while you're pregnant: easy on purpose"),
        ("knee", "Easier on purpose, for the sake of your sore knee"),
        ("legs", "Easier on purpose, for the sake of your sore legs"),
    ],
)
def test_what_goes_easy_says_for_whose_sake_in_a_whole_sentence(about, words):
    (line,) = lines("AMRAP 12\n10 air squats", athlete())
    eased = line.model_copy(update={"reason": Reason(because=Because.LIGHT_DUTY, about=about)})
    assert reason_words(eased, MassUnit.KG).startswith(words)


def test_who_goes_easy_is_never_told_that_it_is_light_for_them():
    easy = athlete(owns=["kettlebell 12"], screening=Screening.MODERATE, tests=[did("deadlift", 40, 60)])
    made = version("Work up to a heavy deadlift in 15 min", easy)
    (line,) = made.blocks[0].lines
    assert (line.reason.because, made.needs_coach) == (Because.LIGHT_DUTY, ())


def test_whoever_has_only_light_things_is_told_so_where_the_heaviest_is_looked_for():
    strong = athlete(owns=["kettlebell 12"], tests=[did("deadlift", 40, 60)])
    (line,) = lines("Work up to a heavy deadlift in 15 min", strong)
    assert reason_words(line, MassUnit.KG).startswith("What you have is light for this, so you do more of it")


def test_whoever_has_a_barbell_is_sent_to_it_for_the_heaviest_and_not_told_that_it_is_light():
    who = athlete(owns=["barbell 20 to 140 by 5", "kettlebell 16"], tests=[did("deadlift", 3, 100)])
    (line,) = lines("Work up to a heavy deadlift in 15 min", who)
    assert (line.implement, line.reason.because) == ("barbell", Because.AS_WRITTEN)


def test_nobody_holds_a_wall_sit_for_want_of_a_heavy_squat():
    who = athlete(sex="male", mass=90, owns=["kettlebell 16"], tests=[did("back squat", 3, 100)])
    (line,) = lines("Find a heavy 3 back squat", who)
    assert line.unit == "reps"


@pytest.mark.parametrize(
    ("text", "owns", "told"),
    [
        ("15 curls @ 8 kg", "dumbbell 10", "15 curls (one 10 kg dumbbell in both hands)"),
        ("15 curls @ 8 kg", "2x dumbbell 6", "15 curls (two 6 kg dumbbells)"),
        ("12 goblet squats @ 16 kg", "kettlebell 16", "12 goblet squats (16 kg kettlebell)"),
    ],
)
def test_one_weight_where_it_could_be_two_is_said_to_be_held_in_both_hands(text, owns, told):
    (line,) = lines(
        f"3 sets\n{text}", athlete(owns=[owns], tests=[did("curl", 18, 6), did("goblet squat", 30, 16)])
    )
    assert what_words(line, MassUnit.KG) == told


@pytest.mark.parametrize(
    ("owns", "told"),
    [
        ("barbell 20 to 140 by 5", "1 deadlift with a barbell"),
        ("backpack to 15", "12 romanian deadlifts, three seconds down (backpack filled to 15 kg)"),
        ("band", "12 deadlifts against a band"),
    ],
)
def test_what_the_heaviest_is_lifted_with_is_named_though_no_load_is(owns, told):
    (line,) = lines("Work up to a heavy deadlift in 15 min", athlete(owns=[owns]))
    assert what_words(line, MassUnit.KG) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("5 single-arm snatches left @ 12 kg", "5 single-arm snatches (12 kg dumbbell), left side"),
        ("12 box step-ups (50 cm)", "12 step-ups on a box; 50 cm"),
        ("8 curls @ 12 kg, tempo 31x1", "8 curls (two 12 kg dumbbells); tempo 31x1"),
    ],
)
def test_what_the_coach_wrote_with_a_line_stays(text, told):
    tests = [did("single-arm snatch", 30, 12), did("step-up", 60), did("curl", 25, 12)]
    (line,) = lines(f"AMRAP 12\n{text}", athlete(owns=["2x dumbbell 12", "box"], tests=tests))
    assert what_words(line, MassUnit.KG) == told


def test_what_was_said_of_a_box_is_not_said_of_the_floor():
    (line,) = lines("AMRAP 12\n12 box jumps (60 cm)", athlete(tests=[did("air squat", 40)]))
    assert "cm" not in what_words(line, MassUnit.KG)


def test_what_is_done_once_is_told_apart_from_the_lines_of_each_round():
    (block,) = version("21-15-9 for time\nair squats\npush-ups\nthen 800 m run\n50 sit-ups", athlete()).blocks
    words = in_turn(block, [what_words(line, MassUnit.KG) for line in block.every_line])
    assert words[2].startswith("Then, once: ")
    assert words[3].startswith("and once: ")
    assert not any("once" in one for one in words[:2])


def test_alternate_arms_and_repetitions_in_reserve_stay_at_the_line():
    who = athlete(owns=["dumbbell 15"], tests=[did("single-arm snatch", 20, 15)], experience="trained")
    (snatch,) = lines("EMOM 6\n10 dumbbell snatches @ 15 kg, alternate arms", who)
    assert "on each side in turn" in what_words(snatch, MassUnit.KG)
    (press,) = lines("Push-up 4x6, 2 reps in reserve, rest 2 min", who)
    assert "stop with 2 left in you" in what_words(press, MassUnit.KG)


def test_one_minute_is_one():
    (block,) = version("Max reps in 1 min\npush-ups", athlete()).blocks
    assert "in 1 minute, " in block_heading(block)


def test_of_what_has_no_number_no_number_stays_the_same():
    line = lines("Max push-ups in 2 minutes", athlete(limits=("wrist",)))[0]
    assert "number" not in reason_words(line, MassUnit.KG)


def test_more_than_written_is_told():
    who = athlete(owns=["dumbbell 6", "chair"], limits=("knee",))
    line = lines("5 sets of 5 back squats 60/40 kg, rest 2 min", who)[0]
    assert line.amount > 5
    assert "more of them, as each is lighter" in reason_words(line, MassUnit.KG)
