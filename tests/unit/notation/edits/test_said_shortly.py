"""Changes as coaches say them in passing: a number for another, where a line stands, what it is from now on."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.edits.changes import changed

RUN = """Hill sprints
wu 15 min easy run
8 x 20s hard uphill, walk back down
3x10 calf raises e/s"""
TRACK = """Thu track
warm up 10 min easy jog
6x400, 90s rest
cooldown 5 min walk"""
GYM = """Friday
A. Back squat 5x5 @ 70 kg, rest 3 min
B. AMRAP 12
10 burpees
12 goblet squats @ 16/12 kg
200 m run
2 min plank"""


def after(text, words):
    found = changed(text, words, catalogue())
    assert found is not None, "it is read as no change"
    return found.text


@pytest.mark.parametrize(
    ("text", "words", "line"),
    [
        (RUN, "wu should be 10 min not 15", "wu 10 min easy run"),
        (RUN, "10 min warm up instead of 15", "wu 10 min easy run"),
        (RUN, "6 rounds not 8", "6 x 20s hard uphill, walk back down"),
        (GYM, "back squat 4x6 not 5x5", "A. Back squat 4x6 @ 70 kg, rest 3 min"),
        (GYM, "make it 4x6", "A. Back squat 4x6 @ 70 kg, rest 3 min"),
        (GYM, "squats 4x6", "A. Back squat 4x6 @ 70 kg, rest 3 min"),
        (GYM, "burpees 8 instead of 10", "8 burpees"),
        (GYM, "burpees down to 8", "8 burpees"),
        (GYM, "less burpees, 8", "8 burpees"),
        (GYM, "goblet squats at 20/16", "12 goblet squats @ 20/16 kg"),
        (GYM, "400m run pls", "400 m run"),
        (GYM, "back squats to 85", "A. 5 x 5 back squats @ 85 kg, rest 3 min"),
        (TRACK, "change 6x400 to 5x400", "5x400, 90s rest"),
    ],
)
def test_a_number_takes_the_place_of_the_one_that_is_meant(text, words, line):
    gone = set(text.splitlines()) - set(after(text, words).splitlines())
    assert line in after(text, words).splitlines()
    assert len(gone) == 1


@pytest.mark.parametrize(
    "words", ["12 not 10", "run 8 not 3", "see you at 8", "7+12", "Bo got 8 not 10 at school"]
)
def test_a_number_that_stands_nowhere_or_twice_changes_nothing(words):
    found = changed(GYM.replace("12 goblet", "10 goblet"), words, catalogue())
    assert found is None or found.text == GYM.replace("12 goblet", "10 goblet")


def kinds(text):
    return [
        (block.kind.value, [line.movement for line in block.lines])
        for block in read_session(text, catalogue()).session.blocks
    ]


@pytest.mark.parametrize("words", ["add 5 min easy jog at the start", "start with 5 min easy jog"])
def test_what_comes_at_the_start_is_a_warm_up(words):
    assert kinds(after(GYM, words))[0] == ("warm-up", ["run"])


@pytest.mark.parametrize("words", ["finish with 5 min easy walk", "add 5 min easy walk at the end"])
def test_what_is_easy_and_comes_last_is_a_cool_down(words):
    assert kinds(after(GYM, words))[-1][0] == "cool-down"


@pytest.mark.parametrize(
    "words",
    [
        "the plank comes after the amrap, not inside it",
        "plank is a finisher, once at the end",
        "take the plank out of the amrap",
        "plank after the amrap",
    ],
)
def test_a_line_may_come_out_of_its_part(words):
    *_, amrap, last = kinds(after(GYM, words))
    assert "plank" not in amrap[1]
    assert last[1] == ["plank"]


PLAIN = "training of today\n3 round\n10 push up\n400 m running"


@pytest.mark.parametrize(
    ("words", "line"),
    [("sorry is 4 round", "4 rounds"), ("put 20 jumping jack at begin", "Warm-up: 20 jumping jack")],
)
def test_what_is_said_in_few_words_of_a_language_is_heard(words, line):
    assert line in after(PLAIN, words).splitlines()


def test_a_line_is_taken_away_politely():
    assert "run" not in after(PLAIN, "please to take away running")


@pytest.mark.parametrize(
    ("words", "gone", "come"),
    [
        ("drop the cooldown", ["cooldown 5 min walk"], []),
        ("no warm up", ["warm up 10 min easy jog"], []),
        ("call it Midweek grind", ["Thu track"], ["Thu: Midweek grind"]),
        (
            "drop the cooldown and call it Midweek grind",
            ["Thu track", "cooldown 5 min walk"],
            ["Thu: Midweek grind"],
        ),
        ("make it 8x400", ["6x400, 90s rest"], ["8x400, 90s rest"]),
        ("make it 8x400, 2 min rest", ["6x400, 90s rest"], ["8x400, 120s rest"]),
        ("make the warm up 15 min", ["warm up 10 min easy jog"], ["warm up 15 min jog (easy)"]),
        ("cooldown 10 min", ["cooldown 5 min walk"], ["cooldown 10 min walk"]),
    ],
)
def test_a_part_may_go_change_or_get_another_name(words, gone, come):
    before, now = TRACK.splitlines(), after(TRACK, words).splitlines()
    assert [row for row in before if row not in now] == gone
    assert [row for row in now if row not in before] == come


@pytest.mark.parametrize("words", ["make the warm up 15 min", "cooldown 10 min", "drop the cooldown"])
def test_what_is_said_of_a_part_that_is_not_there_changes_no_other(words):
    assert changed("Fri green\n12 min amrap\n10 swings\n10 push-ups", words, catalogue()) is None


def test_a_new_name_keeps_the_day_the_session_is_for():
    assert after(TRACK, "call it Friday fun").splitlines()[0] == "Friday fun"
    assert after("12 min amrap\n10 swings", "call it Short one").splitlines()[0] == "Short one"
