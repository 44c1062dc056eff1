"""What a message holds: several voices, several acts, and what is never taken."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.understanding.acts import ACTS, OF_ATHLETE, OF_COACH, document
from core.understanding.understand import understand
from core.understanding.values import Context, Message

AMRAP = read_session("AMRAP 12:\n5 pull-ups\n10 push-ups\n15 air squats", catalogue()).session
FOR_TIME = read_session("4 rounds for time:\n400 m run\n10 burpees", catalogue()).session
PEOPLE = ("Bo", "Ilse", "Nina", "Sam")


def acts(text, question="", *, session=None, role="athlete", people=PEOPLE):
    read = understand(
        Message(text=text, role=role), Context(question=question, session=session, people=people)
    )
    return [document(one) for one in read.acts]


def names(text, question="", **more):
    return [one["act"] for one in acts(text, question, **more)]


@pytest.mark.parametrize(
    ("text", "question", "expected"),
    [
        ("nothing really, i live in a small flat", "equipment", ["has_nothing"]),
        ("bit of a dodgy right shoulder", "equipment", ["spares"]),
        ("how long should this take?", "", ["how_long"]),
        ("what should I aim for?", "", ["how_to_pace"]),
        ("bit short today, only 10 minutes", "", ["has_minutes"]),
        ("how am I doing?", "", ["my_progress"]),
        ("can you make it easier", "", ["wants_easy"]),
        ("got a fever and sore throat", "", ["sick"]),
        ("nah all good bro", "limits", ["nothing_hurt"]),
        ("stop messaging me", "", ["no_reminders"]),
        ("delete my data please", "", ["forget_me"]),
        ("can I have the link", "", ["class_link"]),
        ("home again", "", ["home_again"]),
        ("Ich bin krank", "", ["sick"]),
        ("me duele la rodilla", "", ["hurt"]),
        ("when is class again", "ability", ["when_is_class"]),
    ],
)
def test_ordinary_sentences_are_understood(text, question, expected):
    assert names(text, question) == expected


@pytest.mark.parametrize(
    ("text", "question", "expected"),
    [
        ("16:40, exactly how it stood", "score", ["scored", "did_as_written"]),
        (
            "took the easier one and still needed 14:12, no aches though",
            "score",
            ["did_scaled", "scored", "nothing_hurt"],
        ),
        ("my cat sleeps on the keyboard. 7+3 today", "score", ["scored"]),
    ],
)
def test_a_second_act_is_heard_beside_a_plain_one_and_what_tells_nothing_is_set_aside(
    text, question, expected
):
    assert names(text, question, session=AMRAP) == expected


@pytest.mark.parametrize(
    ("text", "question", "limit"), [("me duele el codo", "", "elbow"), ("sí, el tobillo", "limits", "ankle")]
)
def test_a_spanish_article_is_nobody_else(text, question, limit):
    assert [one["limits"] for one in acts(text, question)] == [(limit,)]


def test_hours_of_which_one_tells_its_half_of_the_day_are_the_shorter_way_round():
    assert acts("only between 9 and 17 please, no messages")[0] == {
        "act": "quiet",
        "from": "09:00",
        "to": "17:00",
        "text": "only between 9 and 17 please, no messages",
    }


def test_an_article_before_a_number_is_no_effort():
    assert [one["value"] for one in acts("un ocho", "effort")] == [8]


def test_a_full_stop_is_no_part_of_a_link():
    told = acts("new class wednesdays at 19:00, https://live.example/wed.", role="coach")
    assert [one["link"] for one in told] == ["https://live.example/wed"]


def test_tonight_is_the_evening():
    assert [one["when"] for one in acts("put it out tonight at nine", role="coach")] == ["21:00"]


def test_a_week_beside_a_day_is_no_second_day():
    told = acts("tuesday class is off this week only", role="coach")
    assert [one["day"] for one in told] == ["tuesday"]


def test_one_message_may_hold_several_acts():
    told = acts("7+5, left shoulder a bit grumpy, effort 8", "score", session=AMRAP)
    assert [one["act"] for one in told] == ["scored", "hurt", "effort"]
    assert told[0]["score"] == {"rounds": 7, "reps": 5}
    assert told[1]["side"] == "left"
    assert told[2]["value"] == 8


@pytest.mark.parametrize(
    "text", ["hello 7+12", "hi 7+12", "good morning 5 rounds and 3", "hey there 8:43 today"]
)
def test_a_score_behind_a_greeting_without_a_comma_is_not_lost(text):
    assert names(text) == ["greeting", "scored"]


def test_equipment_and_a_bad_knee_are_two_acts():
    assert names("got a 10 kg db and a bad knee", "equipment") == ["has", "spares"]


def test_nothing_that_is_named_is_dropped():
    (told,) = acts("a 12kg kettlebell, resistance band and a stepper", "equipment")
    assert [one["implement"] for one in told["equipment"]] == ["kettlebell", "band", "stepper"]


def test_how_far_they_got_is_counted_in_the_session():
    (told,) = acts("made it to 6 full rounds plus the pullups and 4 pushups", "score", session=AMRAP)
    assert told["score"] == {"rounds": 6, "reps": 9}


def test_a_time_with_a_dot_is_a_time_where_the_session_is_timed():
    assert acts("8.43", "score", session=FOR_TIME)[0]["score"] == {"seconds": 523}


def test_what_they_failed_is_no_score():
    heavy = read_session("Snatch: find a heavy double in 15 minutes", catalogue()).session
    (told,) = acts("failed 60 twice so its 57.5", "score", session=heavy)
    assert told["score"]["load_kg"] == 57.5


@pytest.mark.parametrize(
    "text",
    ["chest feels tight and my arm is tingly", "nearly fainted in the second round", "mir ist schwindelig"],
)
def test_a_stop_sign_comes_before_everything_else(text):
    assert names(text, "score", session=AMRAP) == ["sign"]


def test_a_sign_that_is_denied_is_none():
    assert "sign" not in names("no chest pain, all good", "pain")


def test_a_coach_s_session_is_no_score():
    board = "Strength Friday\nBack squat 5x5\nFinisher 3 rounds: 40s on 20s off\nplank"
    assert names(board, role="coach") == ["session"]


def test_what_a_coach_asks_of_one_athlete_is_no_score():
    assert names("Ilse 2 rounds less please", role="coach") == ["order"]


def test_a_rest_day_is_what_is_on_and_no_score():
    assert names("today is a rest day!", role="coach") == ["session"]


def test_a_score_of_somebody_else_names_them():
    told = acts("Bo got 6 rounds and 3 reps", role="coach")
    assert [(one["act"], one["person"]) for one in told] == [("scored", "Bo")]


def test_words_of_no_meaning_are_given_back():
    read = understand(Message(text="blah frobnicate the gizmo"))
    assert read.acts == ()
    assert read.unread == ("blah frobnicate the gizmo",)


def test_every_act_is_an_athletes_or_a_coachs():
    assert frozenset(ACTS) == OF_ATHLETE | OF_COACH


@settings(max_examples=60, deadline=None)
@given(
    st.text(max_size=300), st.sampled_from(["athlete", "coach"]), st.sampled_from(["", "score", "equipment"])
)
def test_any_text_is_read_and_never_yields_what_the_other_role_says(text, role, question):
    read = understand(Message(text=text, role=role), Context(question=question))
    allowed = OF_COACH if role == "coach" else OF_ATHLETE
    assert {one.act for one in read.acts} <= allowed


@pytest.mark.parametrize(
    "text",
    [
        "I did 7+12 and my knee hurts, " * 400,
        "knee 7+12 dumbbells of and 10 kg squats. " * 300,
        "\u00e4\U0001f602x9 " * 2500,
    ],
)
def test_a_text_of_ten_thousand_characters_is_read(text):
    understand(Message(text=text[:10_000]))


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("delete my data", ["forget_me"]),
        ("please erase everything about me", ["forget_me"]),
        ("forget me", ["forget_me"]),
        ("can you send me a copy of my data?", ["export_me"]),
        ("export my data", ["export_me"]),
        ("delete the last score", []),
        ("forget it", []),
        ("remove everything heavy", []),
        ("delete my score", []),
    ],
)
@pytest.mark.parametrize("question", ["", "score"])
def test_data_is_taken_along_or_erased_only_where_that_is_wished(text, expected, question):
    told = [one["act"] for one in acts(text, question) if one["act"] in {"forget_me", "export_me"}]
    assert told == expected
