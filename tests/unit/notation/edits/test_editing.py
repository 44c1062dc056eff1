"""A coach's change of a session in words, carried out in the coach's own text."""

from datetime import time

import pytest

from core.movements.lookup import catalogue
from core.notation.calendar.moments import find_clock
from core.notation.edits.changes import changed
from core.notation.edits.editing import edited, names_a_line
from core.notation.edits.wordings import read_edits, read_wishes

TYPED = """Tuesday
AMRAP 12
- 10 push-ups (slow)
12 goblet squats @ 16/12 kg
200 m run
breathe, everybody!
Time cap: 20 min"""
TWO = """Strength
back squat 5x5 @ 75%, rest 2 min

4 rounds for time
500m row, 10 burpees
EMOM 9
Min 1: 8 pull-ups
Min 2: 15 sit-ups, 5 lunges"""


def after(text, words):
    """The lines that are new, and those that are gone."""
    changed = next(filter(None, (edited(text, edit, catalogue()) for edit in read_edits(words))), None)
    if changed is None:
        return None
    before, now = text.splitlines(), changed.splitlines()
    return [line for line in now if line not in before], [line for line in before if line not in now]


ONE_LINE = [
    (TYPED, "make the run 400 m", "400 m run"),
    (TYPED, "Make the run 400m please", "400 m run"),
    (TYPED, "the run should be 300 m", "300 m run"),
    (TYPED, "change the push-ups to 8", "- 8 push-ups (slow)"),
    (TYPED, "change 10 push ups to 8", "- 8 push-ups (slow)"),
    (TYPED, "no, make the push-ups 8", "- 8 push-ups (slow)"),
    (TYPED, "8 push-ups instead of 10", "- 8 push-ups (slow)"),
    (TYPED, "push ups 8 instead", "- 8 push-ups (slow)"),
    (TYPED, "reduce the push-ups to 8-10", "- 8-10 push-ups (slow)"),
    (TYPED, "oops I meant 8 push-ups not 10", "- 8 push-ups (slow)"),
    (TYPED, "I meant 15 squats", "15 goblet squats @ 16/12 kg"),
    (TYPED, "scale the squats to 12/8", "12 goblet squats @ 12/8 kg"),
    (TYPED, "make the goblet squats 20/14 kg", "12 goblet squats @ 20/14 kg"),
    (TYPED, "goblet squats @ 20 kg instead", "12 goblet squats @ 20 kg"),
    (TYPED, "make the squats 15", "15 goblet squats @ 16/12 kg"),
    (TYPED, "swap the run for 20 burpees", "20 burpees"),
    (TYPED, "replace push-ups with dips", "- 10 dips"),
    (TYPED, "change 200 m run to 15 cal row", "15 cal row"),
    (TYPED, "change the amrap to 15 min", "AMRAP 15"),
    (TYPED, "make it 15 minutes", "AMRAP 15"),
    (TYPED, "make it a 10 min amrap", "AMRAP 10"),
    (TYPED, "change the time cap to 15", "Time cap: 15 min"),
    (TYPED, "cap 15 min instead", "Time cap: 15 min"),
    (TWO, "make the row 300 m", "300 m row, 10 burpees"),
    (TWO, "change row to 20 cal", "20 cal row, 10 burpees"),
    (TWO, "make the burpees 8", "500m row, 8 burpees"),
    (TWO, "drop the burpees", "500m row"),
    (TWO, "make it 5 rounds", "5 rounds for time"),
    (TWO, "change the back squats to 3x8", "3 x 8 back squats @ 75%, rest 2 min"),
    (TWO, "back squat at 80% instead", "5 x 5 back squats @ 80%, rest 2 min"),
    (TWO, "change the rest to 3 min", "back squat 5x5 @ 75%, rest 3 min"),
    (TWO, "make the sit-ups 12", "Minute 2: 12 sit-ups, 5 lunges"),
    (TWO, "make the lunges 6", "Min 2: 15 sit-ups, Minute 2: 6 lunges"),
]


@pytest.mark.parametrize(("text", "words", "line"), ONE_LINE, ids=[words for _, words, _ in ONE_LINE])
def test_a_change_in_words_touches_its_one_line(text, words, line):
    new, gone = after(text, words)
    assert (new, len(gone)) == ([line], 1)


def test_a_line_can_be_left_out_or_added():
    assert after(TYPED, "drop the run") == ([], ["200 m run"])
    assert after(TYPED, "add 5 burpees to each round") == (["5 burpees"], [])
    assert after(TYPED, "add 5 burpees at the end") == (["", "Finisher: 5 burpees"], [])


NO_CHANGE = [
    "make the run 200 m",  # as it is
    "make the squats lighter",
    "swap the run for burpees",  # how many?
    "change the pull-ups to 8",  # there are none
    "drop the kettlebell",
    "add a 24 kg kettlebell",
    "what's for dinner?",
    "make the run 400 m?",
    "see you at 8",
    "8:43",
    "7+12",
    "drop it",
]


@pytest.mark.parametrize("words", NO_CHANGE)
def test_what_changes_nothing_or_cannot_be_meant_leaves_the_text_alone(words):
    assert after(TYPED, words) is None


def test_two_lines_of_one_movement_are_told_apart_by_their_amount():
    text = "For time\n10 burpees\n200 m run\n20 burpees"
    assert after(text, "make the burpees 5") is None
    assert after(text, "change the 20 burpees to 15") == (["15 burpees"], ["20 burpees"])


def test_it_is_known_whether_a_line_is_meant_at_all():
    (edit, *_) = read_edits("make the goblet squats lighter")
    assert names_a_line(TYPED, edit, catalogue())
    (edit, *_) = read_edits("make the coffee strong")
    assert not names_a_line(TYPED, edit, catalogue())


def test_without_a_rule_for_it_another_unit_needs_a_number():
    assert after(TYPED, "swap the run for burpees") is None


def test_another_unit_takes_the_number_that_is_worked_out():
    def carry(old, new):
        assert (old.amount, old.unit) == (200, "m")
        return new.model_copy(update={"amount": 17, "unit": "reps"})

    (edit, *_) = read_edits("swap the run for burpees")
    assert "17 burpees" in edited(TYPED, edit, catalogue(), carry=carry).splitlines()


@pytest.mark.parametrize(
    ("words", "new", "gone"),
    [
        ("add a 400m row after the squats", ["a 400m row"], []),
        ("take the run out", [], ["200 m run"]),
    ],
)
def test_what_comes_behind_a_line_and_what_goes(words, new, gone):
    assert after(TYPED, words) == (new, gone)


@pytest.mark.parametrize(
    "words",
    ["cap should be 18 min and the run 400 m", "time cap 18 min and 400 m run instead of 200"],
)
def test_two_changes_are_never_carried_out_by_half(words):
    assert after(TYPED, words) is None
    assert len(read_wishes(words)) == 2


STATIONS = (
    "EMOM 10\nMin 1: 12 kettlebell swings\nMin 2: 10 burpees\n\nWarm-up\n400 m run\n\n3 rounds\n200 m run"
)


def test_what_is_put_in_where_something_goes_stands_in_its_place():
    found = changed(STATIONS, "take out the burpees, put in a plank 30 sec", catalogue())
    assert found.text == STATIONS.replace("Min 2: 10 burpees", "Minute 2: 30 s plank")


@pytest.mark.parametrize(
    ("words", "left"),
    [
        ("make the burpees 8 and the florbles 15", ("the florbles 15",)),
        ("make it 4 rounds and easier", ("easier",)),
        ("drop the swings. swap the burpees for florbles", ("swap the burpees for florbles",)),
    ],
)
def test_of_several_changes_the_words_of_what_could_not_be_done_are_left(words, left):
    found = changed(STATIONS, words, catalogue())
    assert found.text != STATIONS
    assert found.left == left


@pytest.mark.parametrize(
    ("words", "line"),
    [
        ("5 rounds", "5 rounds for time"),
        ("no, only 2 rounds please", "2 rounds for time"),
        ("rest 45 s", "45 s rest between rounds"),
        ("drop the rest to 30 s", "30 s rest between rounds"),
        ("cap 15 min", "Time cap: 15 min"),
        ("actually use goblet squats instead of the wall balls", "12 goblet squats"),
    ],
)
def test_what_shall_be_is_enough_where_nothing_else_can_be_meant(words, line):
    board = "3 rounds for time\n12 wall balls\n10 push-ups\n1 min rest between rounds"
    told = changed(board, words, catalogue())
    assert told is not None
    assert line in told.text.splitlines()


@pytest.mark.parametrize("words", ["5 rounds + 3", "12 wall balls", "12:40", "5 rounds?", "we were five"])
def test_a_score_or_chat_is_no_word_of_how_a_session_goes(words):
    assert changed("3 rounds for time\n12 wall balls\n10 push-ups", words, catalogue()) is None


def test_a_wish_that_may_mean_several_lines_changes_none_before_one_is_chosen():
    board = "3 rounds\n400 m run\n10 burpees\n200 m run"
    asked = changed(board, "make the run 300 m", catalogue())
    assert asked.text == board
    assert [words for _, words in asked.unclear.lines] == ["400 m run", "200 m run"]
    (first, _), _ = asked.unclear.lines
    chosen = changed(board, "make the run 300 m", catalogue(), at=first)
    assert chosen.text == board.replace("400 m run", "300 m run")


@pytest.mark.parametrize(
    ("words", "line"),
    [
        ("set the run to 5 x 400", "5 x 400 m run, rest 90 s"),
        ("make the run 6 x 300 m", "6 x 300 m run, rest 90 s"),
    ],
)
def test_a_change_of_what_warms_up_for_itself_is_of_the_work(words, line):
    board = "10 min easy run\n6 x 400 m run, rest 90 s"
    once = changed(board, words, catalogue())
    assert once.text.splitlines() == ["10 min easy run", line]
    again = changed(once.text, words, catalogue())
    assert again is None or again.text == once.text


@pytest.mark.parametrize(
    "words", ["I did 12 burpees and felt good", "see you at 8, bring water", "5 rounds + 3"]
)
def test_what_asks_for_no_change_of_the_text_is_none(words):
    assert changed(STATIONS, words, catalogue()) is None


@pytest.mark.parametrize(
    ("words", "at"),
    [
        ("half 6", time(6, 30)),
        ("at half past 7", time(7, 30)),
        ("quarter to 7", time(6, 45)),
        ("quarter past 1 pm", time(13, 15)),
    ],
)
def test_parts_of_an_hour_are_told_from_the_hour(words, at):
    assert find_clock(words).at == at
