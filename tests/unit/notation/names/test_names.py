"""A name that is spelled nearly like a movement is taken for it only where nothing else can be meant."""

import tomllib
from pathlib import Path

import pytest

from core.movements.lookup import Catalogue, catalogue
from core.notation import names
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.notation.names.catalogued import Lexicon, lexicon

BALL = ["wall balls", "wallballs", "wall-ball shots", "wallball", "med-ball squat throws"]
SLAMS = ["ball slams", "med ball slams", "slams", "slam balls", "medicine-ball slam"]


@pytest.mark.parametrize("name", BALL)
def test_a_squat_with_a_throw_is_known_by_what_people_call_it(name):
    meaning = lexicon(catalogue()).exact(name)
    assert meaning is not None
    assert meaning.movement == "med-ball squat throw"


@pytest.mark.parametrize("name", SLAMS)
def test_a_slam_is_known_by_what_people_call_it(name):
    meaning = lexicon(catalogue()).exact(name)
    assert meaning is not None
    assert meaning.movement == "ball slam"


def without(*movements):
    whole = catalogue()
    kept = tuple(one for one in whole.movements if one.id not in movements)
    return Lexicon(Catalogue(kept, whole.implements))


@pytest.mark.parametrize("name", ["wallballs", "wallball", "wall balls"])
def test_one_word_written_for_two_is_no_slip_for_another_pair(name):
    assert without("med-ball squat throw").near(name) is None


@pytest.mark.parametrize(("name", "movement"), [("wallwalks", "wall walk"), ("wall wakl", "wall walk")])
def test_a_slip_in_one_of_two_words_is_put_right(name, movement):
    meaning = lexicon(catalogue()).exact(name) or lexicon(catalogue()).near(name)
    assert meaning is not None
    assert meaning.movement == movement


def test_what_is_no_slip_is_named_and_not_replaced():
    whole = without("med-ball squat throw").catalogue
    read = read_session("3 rounds for time\n20 wallballs\n10 push-ups", whole)
    assert [one.text for one in read.not_understood] == ["wallballs"]
    assert read.corrected == ()


@pytest.mark.parametrize("walked", ["10 min stroll", "20 min nordic walking", "10 min walk round the park"])
def test_whatever_is_walked_is_no_run(walked):
    (line,) = read_session(walked, catalogue()).session.blocks[0].lines
    assert (line.movement, line.variant) == ("run", "brisk-walk")


@pytest.mark.parametrize(
    "called", ["10 sit to stand", "10 press-ups", "200 m jog", "8 kettlebell swings @ 16 kg"]
)
def test_a_movement_stays_called_as_its_coach_calls_it(called):
    session = read_session(f"AMRAP 9\n{called}", catalogue()).session
    assert session is not None
    assert called in write_session(session)


def test_a_number_word_behind_how_a_day_is_counts_nothing():
    assert read_session("Hard one\nAMRAP 12\n10 push-ups", catalogue()).session.title == "Hard one"


def also():
    shorthand = Path(names.__file__).with_name("shorthand.toml")
    return tomllib.loads(shorthand.read_text("utf-8"))["also"].items()


@pytest.mark.parametrize(("name", "known"), also())
def test_another_name_is_new_to_the_catalogue_and_means_what_is_in_it(name, known):
    ours = lexicon(catalogue())
    meant = ours.exact(known)
    assert meant is not None
    assert (ours.exact(name), ours.short(name)) == (None, meant)


def movement_of(name):
    read = read_session(f"AMRAP 12\n10 {name}\n5 burpees", catalogue())
    return read.session.blocks[0].lines[0].movement, bool(read.not_understood)


@pytest.mark.parametrize("name", ["burpee pull-up", "snatch balance", "headstands"])
def test_what_another_word_makes_another_movement_is_not_taken_for_it(name):
    assert movement_of(name) == ("burpee", True)


@pytest.mark.parametrize(
    ("name", "movement"),
    [
        ("superslow situps", "sit-up"),
        ("air sq to chair", "air squat"),
        ("plank walkouts", "inchworm"),
    ],
)
def test_how_it_is_done_and_common_names_hide_no_movement(name, movement):
    assert movement_of(name) == (movement, False)


WRITTEN_OUT = [
    ("10 dls", "10 deadlifts"),
    ("10 goblet sqs", "10 goblet squats"),
    ("30 dus", "30 double-unders"),
    ("8 kb swings", "8 kettlebell swings"),
    ("10 t2b", "10 toes-to-bar"),
]


@pytest.mark.parametrize(("typed", "told"), WRITTEN_OUT)
def test_a_short_form_is_written_out(typed, told):
    session = read_session(f"AMRAP 9\n{typed}", catalogue()).session
    assert session is not None
    assert told in write_session(session).splitlines()
