"""Athlete x session, each with the version and reason a coach would give (common practice; invented)."""

import pytest

from bot.words.reasons import reason_words
from core.athletes.values import Screening, Today
from core.scaling.values import Because, Change
from tests.unit.scaling.people import NO_RUNNING, athlete, did, only_line

SIX_ROUNDS = "6 rounds for time\n"
AMRAP = "AMRAP 12\n"

MIRELA = [did("push-up", 0, variant="floor"), did("push-up", 4, variant="knees")]

CASES = [
    # text, athlete, variant, load, change, because, words of the reason
    (
        SIX_ROUNDS + "8 push-ups",
        athlete(mass=78, owns=["table"], tests=MIRELA),
        "hands-on-table",
        None,
        Change.VARIANT,
        Because.TOO_HEAVY,
        "number stays the same",
    ),
    (
        AMRAP + "8 push-ups",
        athlete(mass=78, owns=["table", "chair"], tests=MIRELA),
        "hands-on-table",
        None,
        Change.VARIANT,
        Because.TOO_HEAVY,
        "lighter way",
    ),
    (
        AMRAP + "8 push-ups",
        athlete(mass=78, tests=MIRELA),
        "hands-on-wall",
        None,
        Change.VARIANT,
        Because.TOO_HEAVY,
        "lighter way",
    ),
    (
        AMRAP + "10 push-ups",
        athlete(tests=[did("push-up", 25)]),
        "floor",
        None,
        Change.NONE,
        Because.AS_WRITTEN,
        "",
    ),
    (
        AMRAP + "10 push-ups",
        athlete(owns=["chair"], tests=[did("push-up", 7)]),
        "knees",
        None,
        Change.VARIANT,
        Because.TOO_HEAVY,
        "number stays the same",
    ),
    (
        AMRAP + "10 push-ups",
        athlete(tests=[did("push-up", 80)], owns=["chair"]),
        "floor",
        None,
        Change.NONE,
        Because.AS_WRITTEN,
        "",
    ),
    (
        AMRAP + "10 push-ups",
        athlete(tests=[did("push-up", 30)], limits=("wrist",)),
        "fists",
        None,
        Change.VARIANT,
        Because.LIMIT,
        "sore wrist",
    ),
    (
        AMRAP + "12 goblet squats @ 24/16 kg",
        athlete(owns=["kettlebell 16"], tests=[did("goblet squat", 25, 16)]),
        "front",
        16,
        Change.NONE,
        Because.AS_WRITTEN,
        "",
    ),
    (
        AMRAP + "12 goblet squats @ 24/16 kg",
        athlete(owns=["dumbbell 8 12"], tests=[did("goblet squat", 20, 12)]),
        "front",
        12,
        Change.LOAD,
        Because.NOT_OWNED,
        "don't have 16 kg",
    ),
    (
        AMRAP + "12 goblet squats @ 24/16 kg",
        athlete(sex="male", mass=80, owns=["kettlebell 16 24"], tests=[did("goblet squat", 25, 24)]),
        "front",
        24,
        Change.NONE,
        Because.AS_WRITTEN,
        "",
    ),
    (
        AMRAP + "12 goblet squats @ 24/16 kg",
        athlete(sex="male", mass=80, pair=2, owns=["kettlebell 16 24"], tests=[did("goblet squat", 25, 16)]),
        "front",
        16,
        Change.NONE,
        Because.AS_WRITTEN,
        "",
    ),
    (
        AMRAP + "12 goblet squats @ 16 kg",
        athlete(owns=["kettlebell 8 16"], tests=[did("goblet squat", 9, 16)]),
        "front",
        8,
        Change.LOAD,
        Because.TOO_HEAVY,
        "16 kg would be heavy",
    ),
    (
        AMRAP + "12 goblet squats @ 16 kg",
        athlete(owns=["backpack to 20"], tests=[did("goblet squat", 25, 16)]),
        "front",
        16,
        Change.IMPLEMENT,
        Because.NOT_OWNED,
        "movement stays the same",
    ),
    (
        AMRAP + "12 goblet squats @ 16 kg",
        athlete(owns=[], tests=[did("air squat", 30)]),
        "floor",
        None,
        Change.MOVEMENT,
        Because.NOT_OWNED,
        "trains the same parts of you",
    ),
    (
        AMRAP + "12 goblet squats @ 16 kg",
        athlete(sex="male", mass=85, owns=["kettlebell 16"], tests=[did("goblet squat", 60, 16)]),
        "front",
        16,
        Change.NONE,
        Because.TOO_LIGHT,
        "your coach to say",
    ),
    (
        AMRAP + "15 sit-ups",
        athlete(tests=[did("sit-up", 40)]),
        "floor",
        None,
        Change.NONE,
        Because.AS_WRITTEN,
        "",
    ),
    (AMRAP + "200 m run", athlete(), "outdoors", None, Change.NONE, Because.AS_WRITTEN, ""),
    (
        AMRAP + "200 m run",
        athlete(space=NO_RUNNING),
        "run",
        None,
        Change.MOVEMENT,
        Because.SPACE,
        "no room for it",
    ),
    (
        AMRAP + "200 m run",
        athlete(limits=("no-running",)),
        "brisk-walk",
        None,
        Change.VARIANT,
        Because.LIMIT,
        "no running",
    ),
    (
        AMRAP + "10 push-ups",
        athlete(screening=Screening.MODERATE, owns=["table"], tests=[did("push-up", 15)]),
        "knees",
        None,
        Change.VARIANT,
        Because.LIGHT_DUTY,
        "plenty is left",
    ),
    (
        AMRAP + "10 push-ups",
        athlete(today=Today(sore=("chest",)), owns=["table"], tests=[did("push-up", 15)]),
        "floor",
        None,
        Change.AMOUNT,
        Because.LIGHT_DUTY,
        "sore chest",
    ),
    (
        "21-15-9 for time\ngoblet squats @ 16 kg",
        athlete(owns=["kettlebell 16"], tests=[did("goblet squat", 24, 16)]),
        "front",
        16,
        Change.NONE,
        Because.AS_WRITTEN,
        "",
    ),
    (
        AMRAP + "9 single-arm rows each side @ 16 kg",
        athlete(owns=["dumbbell 12"], tests=[did("single-arm row", 20, 12)]),
        "hand-on-thigh",
        12,
        Change.LOAD,
        Because.NOT_OWNED,
        "don't have 16 kg",
    ),
]


@pytest.mark.parametrize(("text", "who", "variant", "load", "change", "because", "words"), CASES)
def test_a_line_becomes_what_a_coach_would_make_of_it(text, who, variant, load, change, because, words):
    line = only_line(text, who)
    assert (line.variant, line.load_kg and float(line.load_kg)) == (variant, load)
    assert (line.change, line.reason.because) == (change, because)
    said = reason_words(line, who.units)
    assert words in said
    assert bool(said) == (because is not Because.AS_WRITTEN)
