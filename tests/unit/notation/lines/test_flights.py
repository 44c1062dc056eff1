"""Stairs by the floor, in a coach's words and an athlete's."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.notation.scores import read_score
from tests.unit.scaling.people import session

TWELVE = "AMRAP 12\n"


def only_line(text):
    (line,) = session(TWELVE + text).blocks[0].lines
    return line


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("10 floors", 10),
        ("climb 10 floors", 10),
        ("climb ten floors", 10),
        ("10 floors up", 10),
        ("2 floors up and down", 2),
        ("stairs 3 floors", 3),
        ("5 floors stairs", 5),
        ("10 floors stair climb", 10),
        ("floors x 10", 10),
        ("4 storeys", 4),
        ("5 flights of stairs", 5),
        ("climb 3 flights of stairs", 3),
        ("walk up and down 5 flights of stairs", 5),
        ("1 flight of stairs", 1),
        ("a flight of stairs", 1),
    ],
)
def test_floors_and_flights_are_counted_like_repetitions(text, amount):
    line = only_line(text)
    assert (line.movement, line.variant, line.amount, line.unit) == ("flight of stairs", None, amount, "reps")
    assert line.written == text


@pytest.mark.parametrize("text", ["run up 4 flights", "sprint 4 floors", "4 fast flights of stairs"])
def test_whoever_should_run_them_is_told_so(text):
    assert (only_line(text).variant, only_line(text).amount) == ("run", 4)


def test_the_way_back_is_a_note():
    line = only_line("sprint up 3 flights, walk down")
    assert (line.variant, line.amount, line.notes) == ("run", 3, "walk down")


def test_a_range_sets_and_a_station_are_read_as_with_any_movement():
    assert (only_line("10-12 floors").amount, only_line("10-12 floors").amount_to) == (10, 12)
    assert session("EMOM 10\nmin 1: 3 flights\nmin 2: 10 push-ups").blocks[0].lines[0].station == 1
    assert session("3 x 5 floors").blocks[0].rounds == 3


@pytest.mark.parametrize(
    ("text", "movement"),
    [("10 floor press @ 10 kg", "floor press"), ("60 s stairs", "stair climb"), ("run 400 m", "run")],
)
def test_what_names_no_floors_stays_as_it_was(text, movement):
    assert only_line(text).movement == movement


@pytest.mark.parametrize(
    ("text", "written"),
    [
        ("climb 10 floors", "10 flights of stairs"),
        ("1 floor of stairs", "1 floor of stairs"),
        ("run up 4 flights", "4 fast flights of stairs"),
        ("sprint up 3 flights, walk down", "3 fast flights of stairs (walk down)"),
    ],
)
def test_what_is_written_back_reads_as_the_same(text, written):
    read = session(TWELVE + text)
    text = write_session(read)
    assert written in text.splitlines()
    again = read_session(text, catalogue()).session
    was, now = (one.blocks[0].lines[0].model_dump(exclude={"written"}) for one in (read, again))
    assert was == now


ROUNDS = "AMRAP 12\n10 push-ups\n5 flights of stairs\n10 air squats"


@pytest.mark.parametrize(
    "words", ["2 rounds + 3 floors", "2 rounds and 3 flights", "2 + 3 flights of stairs"]
)
def test_floors_into_a_round_count_from_its_start(words):
    read = read_score(words, session(ROUNDS))
    assert (read.score.rounds, read.score.reps, read.sure) == (2, 13, True)


@pytest.mark.parametrize("words", ["24 floors", "I climbed 24 floors", "24 flights of stairs", "24"])
def test_as_many_floors_as_go_are_told_in_floors(words):
    read = read_score(words, session("max floors in 10 min"))
    assert (read.score.reps, read.score.note, read.sure) == (24, None, True)
