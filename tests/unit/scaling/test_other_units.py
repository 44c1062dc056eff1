"""Lines in kilocalories, seconds and metres as a coach would scale them (common practice, no source; invented people).

An amount stays itself where one is worth the other; else it is carried by its time.
"""

import pytest

from bot.words.versions import what_words
from core.athletes.values import Space
from core.measures import MassUnit
from core.scaling.values import Because
from tests.unit.scaling.cases import A_MAN, TWELVE_MINUTES, Case
from tests.unit.scaling.people import NO_RUNNING, athlete, did, lines

WORK_AND_REST = "45 s on, 15 s off, 5 rounds\n"
QUIET = Space(jumping=False)
LUNGES = [did("lunge", 60), did("walking lunge", 50)]


def held(movement, seconds, variant=None):
    """Evidence of a hold."""
    return did(movement, None, variant=variant).model_copy(update={"seconds": seconds})


KILOCALORIES = [
    Case("15 cal row", athlete(owns=["rower"]), "15 kcal row on the machine", Because.AS_WRITTEN),
    Case(
        "15 cal row",
        athlete(owns=["bike"]),
        "15 kcal ride on the bike",
        Because.NOT_OWNED,
        "don't have a rowing machine",
    ),
    Case(
        "15 cal row",
        athlete(owns=["ski machine"]),
        "15 kcal ski on the machine",
        Because.NOT_OWNED,
        "don't have a rowing machine",
    ),
    Case("15 cal row", athlete(), "200 m run", Because.NOT_OWNED, "don't have a rowing machine"),
    Case(
        "15 cal row",
        athlete(limits=("no-running",)),
        "75 s brisk walk",
        Because.NOT_OWNED,
        "don't have a rowing machine",
    ),
    Case(
        "15 cal row", athlete(space=NO_RUNNING), "75 s march on the spot with high knees", Because.NOT_OWNED
    ),
    Case(
        "10 cal ride", athlete(limits=("ankle",)), "50 s brisk walk", Because.NOT_OWNED, "don't have a bike"
    ),
]

SECONDS = [
    Case(
        WORK_AND_REST + "burpees",
        athlete(space=QUIET, tests=[did("burpee", 15)]),
        "45 s of burpees with chest to the floor, stepping, no jump",
        Because.SPACE,
        "no jumping where you train; the time stays the same",
    ),
    Case(
        WORK_AND_REST + "burpees",
        athlete(limits=("pregnancy",), owns=["table"]),
        "45 s of burpees stepping back, hands on a table",
        Because.LIMIT,
        "while you're pregnant; the time stays the same",
    ),
    Case(
        "45 s burpees",
        athlete(limits=("no-floor",), owns=["table"]),
        "45 s of burpees stepping back, hands on a table",
        Because.LIMIT,
        "not down on the floor",
    ),
    Case(
        "30 s bar hang",
        athlete(owns=["2x dumbbell 16"], tests=[did("push-up", 20)]),
        "30 s hold of a weight in each hand at your sides (two 16 kg dumbbells)",
        Because.NOT_OWNED,
        "don't have a pull-up bar",
    ),
    Case(
        "30 s bar hang",
        athlete(),
        "30 s squeeze of a rolled towel, both hands",
        Because.NOT_OWNED,
        "don't have a pull-up bar",
    ),
    Case(
        "30 s bar hang",
        athlete(owns=["pull-up bar", "chair"], tests=[held("bar hang", 15, "long-arms")]),
        "30 s hang with your feet on a chair, bench or box",
        Because.TOO_HEAVY,
        "heavy for so long, so this is a lighter way; the time stays the same",
    ),
    Case(
        "30 s handstand hold",
        athlete(owns=["chair"], tests=[did("push-up", 20)]),
        "30 s upside-down hold, feet on a chair",
        Because.SKILL,
        "haven't told me that you do this one",
    ),
    Case(
        "60 s plank",
        athlete(tests=[held("plank", 40)]),
        "60 s plank from the knees",
        Because.TOO_HEAVY,
        "heavy for so long",
    ),
    Case(
        "60 s plank",
        athlete(limits=("no-floor",), owns=["table"]),
        "60 s plank with your hands on a table",
        Because.LIMIT,
        "not down on the floor; the time stays the same",
    ),
    Case(
        "60 s plank",
        athlete(limits=("wrist",), tests=[held("plank", 120)]),
        "60 s plank on your forearms",
        Because.AS_WRITTEN,
    ),
    Case(
        "2 min stair climb", athlete(owns=["stairs"]), "2 min stairs, walking up and down", Because.AS_WRITTEN
    ),
    Case(
        "2 min stair climb",
        athlete(),
        "2 min march on the spot with high knees",
        Because.NOT_OWNED,
        "don't know of stairs",
    ),
]

METRES = [
    Case(
        "400 m run",
        athlete(space=NO_RUNNING, owns=["rower"]),
        "500 m row on the machine",
        Because.SPACE,
        "no room for it",
    ),
    Case("500 m row", athlete(), "400 m run", Because.NOT_OWNED, "don't have a rowing machine"),
    Case(
        "400 m run",
        athlete(limits=("knee",), owns=["bike"]),
        "1000 m ride on the bike",
        Because.LIMIT,
        "your sore knee",
    ),
    Case(
        "400 m run",
        athlete(limits=("no-running",), space=NO_RUNNING),
        "150 s march on the spot with high knees",
        Because.LIMIT,
        "no running, so here's what fits instead",
    ),
    Case("20 m walking lunges", athlete(tests=LUNGES), "20 m of walking lunges", Because.AS_WRITTEN),
    Case(
        "20 m walking lunges",
        athlete(tests=LUNGES, space=NO_RUNNING),
        "26 lunges, stepping back",
        Because.SPACE,
        "no room for it",
    ),
    Case(
        "20 m walking lunges",
        athlete(tests=LUNGES, limits=("knee",)),
        "22 half squats, a hand on the wall",
        Because.LIMIT,
        "your sore knee",
    ),
    Case(
        "40 m farmer carry 2 x 24 kg",
        athlete(**A_MAN, owns=["2x kettlebell 16"]),
        "40 m carry with a weight in each hand (two 16 kg kettlebells)",
        Because.NOT_OWNED,
        "don't have 24 kg",
    ),
    Case(
        "40 m farmer carry 2 x 24 kg",
        athlete(**A_MAN, owns=["kettlebell 24"]),
        "40 m carry with one weight at your chest (24 kg kettlebell)",
        Because.NOT_OWNED,
        "the distance stays the same",
    ),
    Case(
        "20 m handstand walk",
        athlete(tests=[did("push-up", 20)]),
        "6 wall walks half-way",
        Because.SKILL,
        "haven't told me that you do this one",
    ),
]

# Bare hands go up under a low ceiling, and a weight from a chair; a rope and a box don't.
LOW = Space(overhead=False)
CEILING = [
    Case(
        "8 single-arm presses each side @ 10 kg",
        athlete(owns=["dumbbell 10", "chair"], space=LOW, tests=[did("single-arm press", 15, 10)]),
        "8 single-arm presses overhead, on one knee (10 kg dumbbell), on each side",
        Because.SPACE,
        "the ceiling is low where you train; the number stays the same",
    ),
    Case(
        "10 shoulder to overhead 2 x 10 kg",
        athlete(
            owns=["2x dumbbell 10", "chair"], space=LOW, tests=[did("overhead press", 15, 10, "standing")]
        ),
        "10 presses overhead, sitting (two 10 kg dumbbells)",
        Because.SPACE,
        "the ceiling is low",
    ),
    Case(
        "50 rope skips",
        athlete(owns=["skipping rope"], space=LOW),
        "50 small hops as if with a rope",
        Because.SPACE,
        "the ceiling is low",
    ),
    Case(
        "10 box jumps",
        athlete(owns=["box"], space=LOW, tests=[did("air squat", 40)]),
        "10 squat jumps",
        Because.SPACE,
        "the ceiling is low",
    ),
    Case(
        "20 m bear crawl",
        athlete(space=NO_RUNNING, tests=[did("push-up", 20)]),
        "30 s bear steps on the spot",
        Because.SPACE,
        "no room for it where you train.",
    ),
]

# A repetition that takes long is worth several: of a rope climb, half is hard.
LONG_REPETITIONS = [
    Case(
        "2 rope climbs",
        athlete(**A_MAN, owns=["pull-up bar"], tests=[did("pull-up", 15)]),
        "8 pull-ups",
        Because.NOT_OWNED,
        "don't have a climbing rope",
    ),
]

FLIGHTS = [
    Case(
        "climb 10 floors", athlete(owns=["stairs"]), "10 flights of stairs, up and down", Because.AS_WRITTEN
    ),
    Case(
        "run up 4 flights",
        athlete(owns=["stairs"], limits=("knee",)),
        "4 flights of stairs, up and down",
        Because.LIMIT,
        "your sore knee",
    ),
    Case(
        "5 flights of stairs",
        athlete(),
        "2 min march on the spot with high knees",
        Because.NOT_OWNED,
        "don't know of stairs",
    ),
    Case("run up 4 flights", athlete(), "200 m run", Because.NOT_OWNED, "don't know of stairs"),
]


EVERY = KILOCALORIES + SECONDS + METRES + CEILING + LONG_REPETITIONS + FLIGHTS


@pytest.mark.parametrize("case", EVERY, ids=lambda case: case.what)
def test_a_line_becomes_what_a_coach_would_make_of_it(case):
    text = case.text if case.text.startswith(WORK_AND_REST) else TWELVE_MINUTES + case.text
    case._replace(text=text).check()


def test_the_numbers_of_a_scheme_are_carried_over_too():
    Case(
        "3-2-1 for time\nrope climbs",
        athlete(**A_MAN, owns=["pull-up bar"], tests=[did("pull-up", 20)]),
        "12-8-4 pull-ups",
        Because.NOT_OWNED,
    ).check()


@pytest.mark.parametrize(
    ("row", "said"), [("5 min walk home", "5 min walk"), ("5 min fast walk", "5 min brisk walk")]
)
def test_a_walk_is_called_as_briskly_as_the_coach_wrote_it(row, said):
    line = lines(f"AMRAP 8\n10 push-ups\n\ncool-down\n{row}", athlete(owns=[]))[-1]
    assert what_words(line, MassUnit.KG).startswith(said)
