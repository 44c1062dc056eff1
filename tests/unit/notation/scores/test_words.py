# ruff: noqa: RUF001 - dashes and quotes stand here as people type them
"""An athlete's own words, as they are typed: what is sure, and what is asked about."""

from decimal import Decimal

import pytest

from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.scores.values import Doubt

AMRAP = "12 min amrap\n10 push-ups\n12 goblet squats @ 24/16 kg\n8 alternating lunges"
RUN_FIRST = "12 min amrap\n200 m run\n10 push-ups"
RUN_AMRAP = "12 min amrap\n10 push-ups\n200 m run"
FOR_TIME = "4 rounds for time, cap 15 min\n10 push-ups\n12 goblet squats @ 24/16 kg"
UNCAPPED = "3 rounds for time\n400 m run\n10 push-ups"
MAX_REPS = "max push-ups in 2 min"
HOLD = "max plank hold"
SETS = "5 x 5 goblet squats, rest 3 min"
HEAVIEST = "find a heavy 3 deadlift"
TRIAL = "run 5 km"
EVERY_MINUTE = "EMOM 12\n8 swings @ 24/16 kg\n6 push-ups"
INTERVALS = "EMOM 4\n12 push-ups"


def session(text):
    read = read_session(text, catalogue())
    assert read.not_understood == ()
    assert read.session is not None
    return read.session


CALORIES = "max calories in 10 min on the rower"

SURE = [
    # calories are no repetitions
    (CALORIES, "120", {"reps": 120, "value": 120, "unit": "kcal"}),
    (CALORIES, "120 cal", {"reps": 120, "unit": "kcal", "note": None}),
    (CALORIES, "got 120 calories, scaled", {"reps": 120, "unit": "kcal", "scaled": True}),
    ("EMOM 4\nmax cal row", "12, 11, 10, 9", {"reps": 42, "unit": "kcal"}),
    ("50 cal row for time, cap 3 min", "capped, 40 cal", {"reps": 40, "unit": "kcal", "capped": True}),
    (MAX_REPS, "42", {"reps": 42, "unit": "reps"}),
    # every minute: how often all of it was done
    (EVERY_MINUTE, "12 rounds", {"rounds": 12, "reps": 168, "value": 168, "unit": "reps"}),
    (EVERY_MINUTE, "11 rounds and 8", {"rounds": 11, "reps": 162}),
    (EVERY_MINUTE, "11 rounds + 8 reps", {"rounds": 11, "reps": 162}),
    (EVERY_MINUTE, "all 12 done", {"rounds": 12, "reps": 168}),
    (EVERY_MINUTE, "11", {"rounds": 11, "reps": 154}),
    (EVERY_MINUTE, "11 minutes", {"rounds": 11, "reps": 154}),
    (EVERY_MINUTE, "150 reps", {"rounds": None, "reps": 150}),
    (EVERY_MINUTE, "14, 14, 12 then i stopped", {"rounds": None, "reps": 40}),
    # sets are no load
    (SETS, "5 sets @ 32 kg", {"load_kg": 32}),
    (SETS, "all 5 sets with 32", {"load_kg": 32}),
    (SETS, "32 kg, 5 rounds", {"load_kg": 32}),
    # rounds and repetitions of an amrap
    (AMRAP, "7+12", {"rounds": 7, "reps": 12, "value": 7.4, "unit": "rounds"}),
    (AMRAP, "7 + 12", {"rounds": 7, "reps": 12}),
    (AMRAP, "7 rounds and 12", {"rounds": 7, "reps": 12}),
    (AMRAP, "7 rds + 12 reps", {"rounds": 7, "reps": 12}),
    (AMRAP, "7 Rounds, 12 reps.", {"rounds": 7, "reps": 12}),
    (AMRAP, "7r 12", {"rounds": 7, "reps": 12}),
    (AMRAP, "7 rounds plus 12", {"rounds": 7, "reps": 12}),
    (AMRAP, "seven rounds and twelve", {"rounds": 7, "reps": 12}),
    (AMRAP, "did 6 rounds plus 4 push ups", {"rounds": 6, "reps": 4}),
    (AMRAP, "7", {"rounds": 7, "reps": 0}),
    (AMRAP, "7 rounds", {"rounds": 7, "reps": 0, "value": 7}),
    (AMRAP, "7 full rounds!!", {"rounds": 7, "reps": 0}),
    (AMRAP, "1 round", {"rounds": 1, "reps": 0}),
    (AMRAP, "0+5", {"rounds": 0, "reps": 5}),
    (AMRAP, "212 reps", {"rounds": 7, "reps": 2}),
    (AMRAP, "- 7+12", {"rounds": 7, "reps": 12}),
    (AMRAP, "– 7 rounds + 12", {"rounds": 7, "reps": 12}),
    (AMRAP, "7+12 💪🔥", {"rounds": 7, "reps": 12, "note": None}),
    (AMRAP, "7+12 scaled", {"rounds": 7, "reps": 12, "scaled": True}),
    (AMRAP, "7+12 (modified)", {"scaled": True}),
    (AMRAP, "7+12 rx", {"scaled": False, "note": None}),
    (AMRAP, "7+12 as written", {"scaled": False, "note": None}),
    (AMRAP, "7+12 not rx", {"scaled": True}),
    (AMRAP, "7+12 with 16kg", {"load_kg": Decimal(16)}),
    (AMRAP, "7+12, felt great", {"note": "felt great", "pain": None}),
    (AMRAP, "7+12, left wrist hurts", {"pain": "left wrist hurts"}),
    (AMRAP, "7+12 but a sharp pain in my knee", {"pain": "a sharp pain in my knee"}),
    (AMRAP, "7+12, no pain", {"pain": None}),
    (AMRAP, "14 rounds, missed one", {"rounds": 14, "reps": 0}),
    (AMRAP, "14 rounds, I counted one too many", {"rounds": 14, "reps": 0}),
    (AMRAP, "7+12 but my knee is sore", {"pain": "my knee is sore", "rounds": 7, "reps": 12}),
    (AMRAP, "7+12 my wrist hurts", {"pain": "my wrist hurts", "rounds": 7, "reps": 12}),
    (AMRAP, "7+12, sore left wrist", {"pain": "sore left wrist"}),
    (AMRAP, "7+12, knee is not sore any more", {"pain": None}),
    (AMRAP, "7+12, shoulders are sore", {"pain": None}),
    (FOR_TIME, "finished in 14 min, wrist hurts", {"pain": "wrist hurts", "seconds": 840}),
    (AMRAP, "7+12, legs are sore", {"pain": None, "note": "legs are sore"}),
    (AMRAP, "7+12, push-ups from the knees", {"pain": None}),
    (AMRAP, "7 rounds and 12!! dead \N{FACE WITH TEARS OF JOY}", {"rounds": 7, "reps": 12, "note": "dead"}),
    (RUN_AMRAP, "7+8", {"rounds": 7, "reps": 8, "value": 7.038}),
    (AMRAP, "6 rounds plus 4 squats", {"rounds": 6, "reps": 14}),
    (AMRAP, "6 rounds n 10 push-ups n 5 squats", {"rounds": 6, "reps": 15}),
    (AMRAP, "6 rounds plus the push-ups", {"rounds": 6, "reps": 10}),
    (AMRAP, "7 rounds minus 4 reps", {"rounds": 6, "reps": 26}),
    (AMRAP, "two short of 7 rounds", {"rounds": 6, "reps": 28}),
    (AMRAP, "7.5 rounds", {"rounds": 7, "reps": 15}),
    (AMRAP, "finished my 7th round and got 12 into the next", {"rounds": 7, "reps": 12}),
    (RUN_AMRAP, "6 rounds minus the run", {"rounds": 5, "reps": 10}),
    (RUN_FIRST, "6+60", {"rounds": 6, "reps": 60, "value": 6.286}),
    (RUN_FIRST, "6+60m", {"rounds": 6, "reps": 60}),
    (RUN_FIRST, "6 rounds and 60 m of the run", {"rounds": 6, "reps": 60, "note": None}),
    (RUN_FIRST, "6 rounds + 205", {"rounds": 6, "reps": 205}),
    # times
    (FOR_TIME, "8:43", {"seconds": 523, "value": 523, "unit": "s", "capped": False}),
    (FOR_TIME, "8 min 43", {"seconds": 523}),
    (FOR_TIME, "8 minutes 43 seconds", {"seconds": 523}),
    (FOR_TIME, "8m43s", {"seconds": 523}),
    (FOR_TIME, "8'43\"", {"seconds": 523}),
    (FOR_TIME, "8′43″", {"seconds": 523}),
    (FOR_TIME, "done in 8:43!!", {"seconds": 523, "note": None}),
    (FOR_TIME, "time: 8:43 scaled", {"seconds": 523, "scaled": True}),
    (FOR_TIME, "12 min", {"seconds": 720}),
    (FOR_TIME, "7:30 easy!", {"seconds": 450, "note": "easy"}),
    (FOR_TIME, "8:43.5", {"seconds": 523.5}),
    (FOR_TIME, "15:00", {"seconds": 900, "capped": False}),
    (FOR_TIME, "8:43, 12 of them on my knees", {"seconds": 523, "scaled": True}),
    (UNCAPPED, "1:02:30", {"seconds": 3750}),
    (TRIAL, "24:10", {"seconds": 1450}),
    # not finished
    (
        FOR_TIME,
        "capped at 15 with 40 reps left",
        {"capped": True, "reps": 48, "seconds": 900, "unit": "reps"},
    ),
    (FOR_TIME, "time capped, 40 to go", {"capped": True, "reps": 48}),
    (FOR_TIME, "capped, 48 reps", {"capped": True, "reps": 48}),
    (FOR_TIME, "hit the cap, 3 rounds + 5", {"capped": True, "reps": 71}),
    (FOR_TIME, "3 rounds in 15 min", {"capped": True, "reps": 66, "seconds": 900}),
    (FOR_TIME, "only 2 rounds + 5", {"capped": True, "reps": 49}),
    (FOR_TIME, "dnf 48 reps", {"capped": True, "reps": 48}),
    # the others
    (MAX_REPS, "42", {"reps": 42, "value": 42}),
    (MAX_REPS, "42 reps", {"reps": 42}),
    (MAX_REPS, "20+15+7", {"reps": 42}),
    (MAX_REPS, "stopped at 45, wrist", {"reps": 45, "pain": "wrist"}),
    (HOLD, "1:35", {"seconds": 95}),
    (HOLD, "95", {"seconds": 95}),
    (HOLD, "95 sec", {"seconds": 95}),
    (HOLD, "two minutes", {"seconds": 120}),
    (SETS, "60kg 3x8", {"load_kg": Decimal(60)}),
    (SETS, "50, 55, 60", {"load_kg": Decimal(60)}),
    (HEAVIEST, "100 kg", {"load_kg": Decimal(100), "unit": "kg"}),
    (HEAVIEST, "225 lb", {"load_kg": Decimal("102.05828325")}),
    (INTERVALS, "12, 12, 11, 10", {"reps": 45}),
]


@pytest.mark.parametrize(
    ("text", "words", "wanted"), SURE, ids=[f"{words}-{text[:9]}" for text, words, _ in SURE]
)
def test_a_score_is_read_however_it_is_said(text, words, wanted):
    read = read_score(words, session(text))
    assert (read.sure, read.ask, read.doubt) == (True, None, None)
    assert read.score is not None
    assert {name: getattr(read.score, name) for name in wanted} == wanted


ASKED = [
    (AMRAP, "", Doubt.UNREADABLE),
    (AMRAP, "that was tough", Doubt.UNREADABLE),
    (AMRAP, "500 rounds", Doubt.IMPOSSIBLE),
    (AMRAP, "-5", Doubt.NOT_POSITIVE),
    (AMRAP, "-7+12", Doubt.NOT_POSITIVE),
    (AMRAP, "7+45", Doubt.BEYOND_ROUND),
    (AMRAP, "7+30", Doubt.BEYOND_ROUND),
    (RUN_AMRAP, "7+40", Doubt.MEANT),
    (AMRAP, "7 rounds plus the wobblies", Doubt.MEANT),
    (AMRAP, "7/12", Doubt.MEANT),
    (EVERY_MINUTE, "14, 14, 12", Doubt.MEANT),
    (AMRAP, "212", Doubt.MEANT),
    (AMRAP, "about 7 rounds", Doubt.MEANT),
    (AMRAP, "7+12?", Doubt.MEANT),
    (AMRAP, "7 rounds + 12 or 8+3", Doubt.WHICH_NUMBER),
    (RUN_AMRAP, "212 reps", Doubt.UNREADABLE),
    (RUN_AMRAP, "6+60m", Doubt.MEANT),
    (RUN_AMRAP, "6+250", Doubt.BEYOND_ROUND),
    (AMRAP, "6+60m", Doubt.UNREADABLE),
    (AMRAP, "forgot to count", Doubt.UNCOUNTED),
    (AMRAP, "lost count around 6", Doubt.MEANT),
    (AMRAP, "didnt finish", Doubt.HOW_FAR),
    (AMRAP, "dnf", Doubt.HOW_FAR),
    (FOR_TIME, "didnt finish", Doubt.HOW_FAR),
    (FOR_TIME, "DNF", Doubt.HOW_FAR),
    (FOR_TIME, "forgot to time it", Doubt.UNCOUNTED),
    (FOR_TIME, "forgot to start the timer", Doubt.UNCOUNTED),
    (FOR_TIME, "843", Doubt.MEANT),
    (FOR_TIME, "9", Doubt.MEANT),
    (FOR_TIME, "99:99", Doubt.IMPOSSIBLE),
    (FOR_TIME, "0:10", Doubt.IMPOSSIBLE),
    (FOR_TIME, "16:20", Doubt.BEYOND_CAP),
    (FOR_TIME, "8:43 / 9:10", Doubt.WHICH_NUMBER),
    (FOR_TIME, "capped", Doubt.HOW_FAR),
    (FOR_TIME, "cap + 40", Doubt.HOW_FAR),
    (FOR_TIME, "capped, 400 reps", Doubt.HOW_FAR),
    (FOR_TIME, "stopped at 45, wrist", Doubt.FINISHED_OR_NOT),
    (UNCAPPED, "capped with 40 reps left", Doubt.HOW_FAR),
    (MAX_REPS, "5000", Doubt.IMPOSSIBLE),
    (HOLD, "2", Doubt.MEANT),
    (AMRAP, "7 rounds plus some squats", Doubt.MEANT),
    (AMRAP, "7+12 except the last ones", Doubt.MEANT),
    (HOLD, "more than 2 min", Doubt.MEANT),
    (HEAVIEST, "275", Doubt.MEANT),
    (HEAVIEST, "9000 kg", Doubt.IMPOSSIBLE),
]


@pytest.mark.parametrize(
    ("text", "words", "doubt"), ASKED, ids=[f"{words}-{text[:9]}" for text, words, _ in ASKED]
)
def test_what_is_not_sure_is_asked_and_not_kept(text, words, doubt):
    read = read_score(words, session(text))
    assert (read.sure, read.doubt) == (False, doubt)
    assert read.ask


@pytest.mark.parametrize(
    ("text", "words"),
    [(FOR_TIME, "16:20"), (FOR_TIME, "capped"), (FOR_TIME, "stopped at 45"), (AMRAP, "forgot to count"),
     (FOR_TIME, "99:99"), (AMRAP, "14 min")],
)  # fmt: skip
def test_what_no_yes_can_confirm_offers_no_score(text, words):
    read = read_score(words, session(text))
    assert (read.sure, read.score) == (False, None)
    assert read.ask


@pytest.mark.parametrize(
    ("text", "words", "value"),
    [
        (AMRAP, "500 rounds", 500),
        ("AMRAP 12\n10 push-ups\n12 squats\n200 m run", "70 rounds", 70),
        (FOR_TIME, "0:04", 4),
        (MAX_REPS, "5000", 5000),
        (AMRAP, "300+5, wrist hurts", None),
    ],
)
def test_what_is_hard_to_believe_is_asked_once_and_a_yes_keeps_it(text, words, value):
    read = read_score(words, session(text))
    assert (read.sure, read.doubt) == (False, Doubt.IMPOSSIBLE)
    assert read.ask.startswith("Really ")
    assert read.score is not None
    assert read.score.pain == ("wrist hurts" if value is None else None)
    assert value is None or read.score.value == value


def test_pain_is_kept_beside_a_question_that_no_yes_answers():
    read = read_score("16:20, wrist hurts", session(FOR_TIME))
    assert read.doubt is Doubt.BEYOND_CAP
    assert read.score is not None
    assert (read.score.value, read.score.pain) == (None, "wrist hurts")


def test_a_part_of_a_run_is_asked_for_in_metres():
    read = read_score("6 rounds and 60 m", session(RUN_AMRAP))
    assert read.ask == "Did you mean 6 rounds and then 60 m of the run?"
    assert read.score is not None
    assert (read.score.rounds, read.score.reps) == (6, 70)
    assert read_score("6+250", session(RUN_AMRAP)).ask == (
        "A round has 10 repetitions and 200 m. Did you mean 7 rounds + 40?"
    )


def test_who_did_not_count_is_asked_kindly():
    read = read_score("sorry, forgot to count", session(AMRAP))
    assert read.ask is not None
    assert read.ask.startswith("That happens, and the training counts.")


def test_repetitions_beyond_a_round_are_offered_as_rounds():
    read = read_score("7+45", session(AMRAP))
    assert read.ask == "A round has 30 repetitions. Did you mean 8 rounds + 15?"
    assert read.score is not None
    assert (read.score.rounds, read.score.reps) == (8, 15)


def test_a_partial_block_is_never_doubted_for_its_round():
    read = read_session("12 min amrap\n10 push-ups\n10 flying saucers", catalogue())
    assert read.session is not None
    assert read_score("7+12", read.session).sure


def test_pain_is_kept_even_where_no_score_was_understood():
    read = read_score("had to quit, my wrist hurts", session(AMRAP))
    assert not read.sure
    assert read.score is not None
    assert (read.score.value, read.score.pain) == (None, "my wrist hurts")


def test_bare_loads_count_in_the_unit_of_the_athlete():
    read = read_score("100", session(HEAVIEST), unit=MassUnit.LB)
    assert read.score is not None
    assert read.score.load_kg == Decimal("45.359237")


BOTH = f"{AMRAP}\n\n{FOR_TIME}"


def test_with_several_scored_blocks_the_one_that_fits_is_taken():
    read = read_score("7+12", session(BOTH))
    assert (read.sure, read.block) == (True, 0)
    read = read_score("8:43", session(BOTH))
    assert (read.sure, read.block) == (True, 1)


def test_a_score_that_fits_no_block_or_several_is_asked_about():
    for words in ("12", "great", "5 rounds and 8:43"):
        read = read_score(words, session(f"{AMRAP}\n\n{AMRAP}"))
        assert (read.sure, read.doubt) == (False, Doubt.WHICH_BLOCK)
    assert read.ask == (
        "Which part is that score for: part 1 (12 minutes, as many rounds as possible) "
        "or part 2 (12 minutes, as many rounds as possible)? "
        "Write them one at a time, like: part 1, and your score."
    )


@pytest.mark.parametrize(
    ("words", "is_sure"),
    [
        ("15:50 w the 16s, felt ok", True),
        ("done in 14:40 with the 16, rpe 8 bit tight in the calf", True),
        ("done: 14.32, rpe 7, used the 35", True),
        ("i did the lot, 14 minutes and a bit", False),
    ],
)
def test_a_time_is_of_the_part_for_time_whatever_it_was_done_with(words, is_sure):
    read = read_score(words, session(f"{SETS}\n\n{UNCAPPED}"))
    assert (read.block, read.sure) == (1, is_sure)
    assert read.score is not None
    assert read.score.seconds


def test_a_load_that_may_be_the_score_of_another_part_is_asked_about():
    assert read_score("13:50, 40kg", session(f"{SETS}\n\n{UNCAPPED}")).doubt is Doubt.WHICH_BLOCK


def test_the_block_may_be_chosen_or_named():
    twice = session(f"{AMRAP}\n\n{AMRAP}")
    assert read_score("7+12", twice, block=1).block == 1
    read = read_score("part 2: 7+12", twice)
    assert (read.sure, read.block) == (True, 1)


def test_the_shape_of_a_score_tells_its_block_where_several_could_take_it():
    calories = session(f"Part A: {AMRAP}\n\nPart B: max calories in 5 min on the rower")
    assert [read_score(words, calories).block for words in ("6+3", "7 rounds", "80 cals")] == [0, 0, 1]


def test_a_session_without_a_score_says_so():
    read = read_score("7+12", session(f"{AMRAP}\nnot for score"))
    assert not read.sure
    assert read.ask == "Nothing in this session is scored. What would you like your coach to know?"


def test_where_calories_count_they_are_asked_for():
    assert "calories" in read_score("hello", session(CALORIES)).ask
    assert "calories" not in read_score("hello", session(MAX_REPS)).ask


ROUNDS_WITH_A_RUN = "For time\n5 rounds\n10 push-ups\n15 sit-ups\n200 m run\ncap 20"


def read_of_rounds(said):
    session = read_session(ROUNDS_WITH_A_RUN, catalogue()).session
    assert session is not None
    return read_score(said, session)


@pytest.mark.parametrize(
    ("said", "rounds", "reps"),
    [("3 rounds in 20 min", 3, 0), ("capped, 3 rounds + 12", 3, 12), ("ran out of time after 3 rds", 3, 0)],
)
def test_rounds_that_were_done_within_the_cap_are_no_time(said, rounds, reps):
    read = read_of_rounds(said)
    assert read.sure
    assert (read.score.capped, read.score.rounds, read.score.reps) == (True, rounds, reps)


@pytest.mark.parametrize("said", ["i did 3 rounds and a bit in 20 min", "3 rounds in 18:20"])
def test_rounds_that_may_have_been_all_or_more_are_asked_about(said):
    read = read_of_rounds(said)
    assert not read.sure
    assert read.ask == "Did you stop after 3 rounds?"


@pytest.mark.parametrize("said", ["5 rounds in 18:20", "all 5 rounds, 18:20"])
def test_all_rounds_in_a_time_are_that_time(said):
    read = read_of_rounds(said)
    assert (read.sure, read.score.seconds, read.score.capped) == (True, 1100, False)


def test_a_weight_is_no_number_of_repetitions():
    read = read_score("used 25 lb for the push-ups", session(MAX_REPS))
    assert read.score is None


def test_no_weight_at_all_is_no_score_of_a_lift():
    session = read_session(HEAVIEST, catalogue()).session
    assert session is not None
    read = read_score("0 kg", session)
    assert (read.score, read.doubt) == (None, Doubt.NOT_POSITIVE)
    assert "more than nothing" in (read.ask or "")


@pytest.mark.parametrize("words", ["5 sets done", "5 rounds", "all 5 rounds done", "20 minutes"])
def test_how_often_something_was_lifted_is_no_load(words):
    assert read_score(words, session(SETS)).score is None


@pytest.mark.parametrize(
    ("said", "load"),
    [
        ("142.5 all sets", "142.5"),
        ("did all 5 sets at 82.5", "82.5"),
        ("95x3", "95"),
        ("130 x 2, belt on", "130"),
    ],
)
def test_a_weight_may_have_a_fraction_and_stand_before_how_often_it_was_lifted(said, load):
    read = read_score(said, session(SETS))
    assert read.sure
    assert read.score is not None
    assert str(read.score.load_kg) == load


def test_seconds_are_never_read_as_a_weight():
    assert not read_score("1 min 10, 58 sec, 50 sec", session(SETS)).sure


def test_numbers_with_other_words_between_them_are_asked_about_and_not_added_up():
    assert read_score("12, 12, 11 and 10", session(MAX_REPS)).sure
    assert not read_score("died in minute 7, so 6 full ones", session(MAX_REPS)).sure


def test_what_is_left_may_be_named():
    read = read_score("hit the cap, had 6 squats left", session(FOR_TIME))
    assert read.score is not None
    assert (read.sure, read.score.capped, read.score.reps) == (True, True, 82)


def test_what_was_made_easier_is_scaled_and_stays_in_the_note():
    read = read_score("Twenty-six, hands on the kitchen table", session(MAX_REPS))
    assert read.score is not None
    assert (read.score.reps, read.score.scaled) == (26, True)
    assert "table" in (read.score.note or "")


def test_a_weight_told_beside_rounds_may_be_the_score_of_the_other_part():
    both = session("Part A\n5 x 3 deadlift\n\nPart B\n8 min amrap\n8 push-ups\n8 box jumps")
    assert not read_score("deadlift 70 kg then 5+3", both).sure
