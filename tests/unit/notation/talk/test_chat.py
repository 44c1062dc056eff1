"""Is a message a score, a session, or just talk?"""

import pytest

from core.notation.talk.chat import is_like_a_score, is_like_a_session, tells_of_kit

SCORES = [
    "time cap, 143 reps", "hit the time cap at 7+12", "time cap with 12 left",
    "7+12", "7 + 12 scaled", "7 rounds and 12", "did 6 rounds plus 4 push ups", "8:43", "8:43 scaled",
    "8:43 💪", "4 seconds", "8 min 43 seconds", "45 sec",
    "8:43 but my knee is sore", "8:43, my left wrist hurts a bit", "finished in 14 min, wrist hurts",
    "my time was 8:43", "got 8:43, legs are dead", "done in 8:43", "capped at 15 with 40 reps left", "DNF",
    "forgot to count", "Lost count!", "I didnt finish", "didn't finish it, wrist", "dnf", "forgot to start the timer",
    "7 rounds and 12!! dead \N{FACE WITH TEARS OF JOY}", "7:30 easy!", "6 rounds and 60 m of the run",
    "stopped at 45, wrist", "12 reps", "7 rds", "8 min 43", "60kg 3x8", "time 12:05", "I got 7 rounds", "42",
]  # fmt: skip
TALK = [
    "time cap 12 min", "21-15-9\nthrusters 43/30kg\npull ups\n\nTime cap: 12 min", "Time cap of 15:00",
    "see you at 8:30", "8:30 works for me", "I'll be there 8:30", "8:30 am", "class at 18:00", "8 min late",
    "is it at 8:30?", "can I do 3 rounds?", "thanks!", "hello", "two 10s and a chair", "I have 2 dumbbells",
    "16 kg kettlebell", "running late, 10 minutes", "what is the time cap?", "about 12", "tomorrow 7:00",
    "I can do 12 push-ups", "", "🔥", "3 rounds tomorrow", "is 7+12 good?", "join at 7:15", "no",
]  # fmt: skip
SESSIONS = [
    "AMRAP 12\n10 push-ups\n12 air squats",
    "12 min amrap: 10 push-ups, 12 air squats",
    "4 RFT\n10 burpees\n20 m walk",
    "Warm-up\n3 min jog\n\nFor time\n21-15-9\n21 thrusters",
    "5 rounds for time:\n400 m run\n10/side rows @ 16kg",
    "EMOM 10\n10 swings",
]
NO_SESSIONS = [
    "7+12", "did the 12 min amrap: 7+12", "AMRAP 12 was tough", "I did the amrap with 3 friends and 2 dogs",
    "8:43",
    "capped at 15 with 40 reps left",
    "see you at 8:30\nbring 2 dumbbells", "two 10s, a 16 kettlebell and a chair",
    "",
    "AMRAP 12\n7 rounds and 12",
]  # fmt: skip


@pytest.mark.parametrize("text", SCORES)
def test_a_result_is_taken_for_one(text):
    assert is_like_a_score(text)


@pytest.mark.parametrize("text", TALK)
def test_ordinary_chat_is_no_score(text):
    assert not is_like_a_score(text)


@pytest.mark.parametrize("text", SESSIONS)
def test_a_pasted_session_is_taken_for_one(text):
    assert is_like_a_session(text)
    assert not is_like_a_score(text)


@pytest.mark.parametrize("text", NO_SESSIONS)
def test_scores_and_chat_are_no_session(text):
    assert not is_like_a_session(text)


@pytest.mark.parametrize(
    ("said", "is_score"),
    [("part 2: 80 cals", True), ("part 1 was 6+3", True), ("part 2 tomorrow at 8", False)],
)
def test_a_score_of_a_part(said, is_score):
    assert is_like_a_score(said) == is_score


@pytest.mark.parametrize(
    ("said", "is_score"),
    [
        ("I was late, 7+12", True),
        ("first round was hard. 7+12!", True),
        ("can I bring a friend, so 1+1", False),
        ("see you at the class, 7+12", False),
    ],
)
def test_rounds_told_at_the_end_of_a_sentence_are_a_score(said, is_score):
    assert is_like_a_score(said) == is_score


@pytest.mark.parametrize(
    ("said", "kit"),
    [("i have a 10", True), ("also new 20kg kb", True), ("new pb 40 kg", False), ("used the 24", False)],
)
def test_a_weight_that_somebody_has_is_none_that_they_lifted(said, kit):
    assert tells_of_kit(said) is kit
