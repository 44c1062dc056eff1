"""What a coach notes about how one of their athletes moves, and what they want of the notes that stand."""

from decimal import Decimal

import pytest
from hypothesis import given

from core.movements.lookup import catalogue
from core.notation.coaching.fault_wishes import asks_for_notes, read_lift
from core.notation.coaching.faults import read_fault
from core.notation.second_person import to_them
from tests.strategies import scrappy_text

NAMES = ("Ilse", "Bo", "Anna Maria Vik", "Anna Berg")


def read(text):
    return read_fault(text, NAMES, catalogue())


@pytest.mark.parametrize(
    ("text", "name", "movement", "words"),
    [
        ("note for Ilse: rounds her back in deadlifts", "Ilse", "deadlift", "you round your back"),
        ("Ilse rounds her back on deadlifts.", "Ilse", "deadlift", "you round your back"),
        ("Bo's knees fall in when he squats", "Bo", "air squat", "your knees fall in"),
        ("watch Ilse\u2019s push-ups, elbows flare", "Ilse", "push-up", "your elbows flare"),
        ("Ilse's push-ups: elbows flare", "Ilse", "push-up", "your elbows flare"),
        ("Note for Ilse: keep the back flat in deadlifts", "Ilse", "deadlift", "keep the back flat"),
        ("Bo always bounces his reps and drops his chest in squats", "Bo", "air squat",
         "you always bounce your reps and drop your chest"),
        ("Ilse should keep her chest up in front squats", "Ilse", "front squat", "keep your chest up"),
        ("Bo is too fast in push-ups", "Bo", "push-up", "you are too fast"),
        ("Bo's squats are shallow", "Bo", "air squat", "they are shallow"),
        ("Bo holds his breath while planking", "Bo", "plank", "you hold your breath"),
        ("careful with Bo's overhead presses: he arches his lower back", "Bo", "overhead press",
         "you arch your lower back"),
        ("Ilse's heels lift in air squats, she's too narrow", "Ilse", "air squat",
         "your heels lift, you are too narrow"),
        ("Anna Berg loses her balance in lunges", "Anna Berg", "lunge", "you lose your balance"),
        ("In deadlifts Ilse rounds her back", "Ilse", "deadlift", "you round your back"),
        ("Bo can't keep his heels down in squats", "Bo", "air squat", "you can't keep your heels down"),
        ("Ilse kips her pull-ups", "Ilse", "pull-up", "you kip them"),
        ("Ilse's technique in cleans needs work", "Ilse", "clean", "your technique needs work"),
        ("make sure Ilse keeps her back flat in deadlifts", "Ilse", "deadlift", "keep your back flat"),
        ("remind Ilse to keep her back flat in deadlifts", "Ilse", "deadlift", "keep your back flat"),
        ("Ilse's form isn't great in deadlifts", "Ilse", "deadlift", "your form isn't great"),
    ],
)  # fmt: skip
def test_a_fault_is_read_with_its_movement_and_turned_to_its_athlete(text, name, movement, words):
    told = read(text)
    assert (told.name, told.movement, told.words, told.cap_kg) == (name, movement, words, None)


@pytest.mark.parametrize(
    ("text", "movement", "words", "cap"),
    [
        ("Ilse: deadlifts at most 30 kg, her back rounds", "deadlift", "your back rounds", "30"),
        ("cap Ilse's deadlifts at 30 kg", "deadlift", "", "30"),
        ("Ilse deadlifts max 30kg for now", "deadlift", "", "30"),
        ("no more than 30 kg on deadlifts for Ilse", "deadlift", "", "30"),
        ("Ilse's swings: 12.5 kg at most", "swing", "", "12.5"),
        ("Ilse should not go over 30 kg in deadlifts", "deadlift", "", "30"),
        ("let Ilse do deadlifts with at most 30 kg", "deadlift", "", "30"),
        ("Ilse's back rounds when she deadlifts over 40 kg", "deadlift", "your back rounds", "40"),
        ("note for Ilse: thrusters 2 x 10 kg at most", "thruster", "", "20"),
        ("Ilse: deadlifts not more than 10 lb", "deadlift", "", "4.5359237"),
    ],
)
def test_a_number_with_its_unit_is_the_most_in_the_hands(text, movement, words, cap):
    told = read(text)
    assert (told.movement, told.words, told.cap_kg) == (movement, words, Decimal(cap))


@pytest.mark.parametrize(
    ("text", "movement", "words"),
    [
        ("note for Bo: rounds his back", None, "you round your back"),
        ("note for Bo: deadlifts", "deadlift", ""),
    ],
)
def test_what_a_note_leaves_open_is_seen(text, movement, words):
    told = read(text)
    assert (told.movement, told.words) == (movement, words)


@pytest.mark.parametrize(
    "text",
    [
        "hold Ilse for my OK",
        "Ilse needs my OK first",
        "show me Ilse",
        "watch Ilse",
        "Ilse has a bad shoulder, no overhead for her",
        "no jumping for Bo please",
        "no overhead press for Bo, shoulder",
        "Ilse's back hurts in deadlifts",
        "note for Ilse: her back hurts in deadlifts",
        "Ilse 7+12",
        "Ilse: 12 push-ups",
        "Ilse deadlift 60 kg 5x5",
        "Ilse did 20 deadlifts with a rounded back",
        "Ilse's max deadlift is 100 kg",
        "Ilse can do deadlifts with 60 kg",
        "swap Ilse's push-ups for knee push-ups",
        "make Ilse's push-ups on her knees",
        "Ilse: push-ups on her knees",
        "give Bo the 12 kg for swings",
        "does Ilse round her back in deadlifts?",
        "Ilse's deadlift is fine now",
        "Bo doesn't round his back in deadlifts any more",
        "Bo is great",
        "Ilse's form in deadlifts was great today",
        "Ilse lifted more than 40 kg in deadlifts, back flat",
        "remind Ilse to come to the squat class",
        "Ilse has new dumbbells up to 20 kg",
        "Bo: wrist push-ups at most 10",
        "make the row 200 m",
        "Tove rounds her back in deadlifts",
        "AMRAP 12\n10 deadlifts, back flat, Bo",
        "",
    ],
)
def test_all_else_that_is_said_of_somebody_is_no_fault(text):
    assert read(text) is None


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("rushes her reps", "you rush your reps"),
        ("doesn't lock his elbows", "you don't lock your elbows"),
        ("has no depth", "you have no depth"),
        ("because she leans back", "you lean back"),
        ("chest up, elbows in", "your chest up, elbows in"),
        ("keep your ribs down", "keep your ribs down"),
        ("press through the heels", "press through the heels"),
    ],
)
def test_what_is_said_of_somebody_is_said_to_them(said, told):
    assert to_them(said) == told


@pytest.mark.parametrize(
    ("text", "movement", "every"),
    [
        ("Ilse's deadlift is fine now", "deadlift", False),
        ("Ilse's squats look good again!", "air squat", False),
        ("Ilse doesn't round her back in deadlifts any more", "deadlift", False),
        ("lift the note on Ilse", None, False),
        ("lift the note on Ilse's deadlifts", "deadlift", False),
        ("please remove Ilse's cap", None, False),
        ("lift all notes on Ilse", None, True),
    ],
)
def test_a_note_is_lifted_in_words(text, movement, every):
    wish = read_lift(text, NAMES, catalogue())
    assert (wish.name, wish.movement, wish.every) == ("Ilse", movement, every)


@pytest.mark.parametrize(
    "text",
    [
        "lift the hold on Ilse",
        "Ilse is fine now",
        "Ilse's back is fine now",
        "drop the burpees",
        "is Ilse's squat fine now?",
    ],
)
def test_nothing_else_lifts_one(text):
    assert read_lift(text, NAMES, catalogue()) is None


@pytest.mark.parametrize(
    ("text", "whose"),
    [("notes", ""), ("show me the notes", ""), ("notes on Ilse", "Ilse"), ("Ilse's notes?", "Ilse"),
     ("which notes are there?", ""), ("notes on Tove", None), ("note for Ilse: back", None), ("note to self", None)],
)  # fmt: skip
def test_notes_are_asked_for(text, whose):
    assert asks_for_notes(text, NAMES) == whose


@given(scrappy_text())
def test_any_text_is_read_or_left_alone(text):
    told = read_fault(f"note for Ilse: {text}", NAMES, catalogue())
    assert told is None or told.name == "Ilse"
    assert told is None or told.cap_kg is None or 0 < told.cap_kg <= 400
