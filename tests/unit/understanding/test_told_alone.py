"""What is taken from a message of one act: it is sure, and no word of it is left unread."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.measures import MassUnit
from core.understanding.understand import understand
from core.understanding.values import Context, Message


def taken(text, role="athlete", units=MassUnit.KG):
    """The act that is told, if it is the only one and all was read."""
    told = understand(Message(text=text, role=role), Context(units=units))
    acts = [act for act in told.acts if act.act not in {"greeting", "small_talk"}]
    return acts[0] if len(acts) == 1 and not told.unread else None


def is_taken(text, act, role="athlete"):
    told = taken(text, role)
    return told is not None and told.act == act


WEIGHED = [
    "I weigh 74kg", "i weigh about 74 kg now", "I weigh 74", "my weight is 74 kg", "My weight is now 74",
    "weight: 74 kg",
    "body weight 74kg", "I'm 74 kg", "I'm down to 74 kilos", "I weighed in at 74 kg this morning", "74kg",
]  # fmt: skip
NO_BODY_MASS = [
    "my dumbbell weighs 10 kg", "I weigh 740 kg", "I did 74 kg", "I'm 74", "I weigh too much", "",
    "it weighs 74kg", "swap the rows for pull-ups, 60 kg. Ok?",
]  # fmt: skip


@pytest.mark.parametrize("said", WEIGHED)
def test_what_they_weigh(said):
    told = taken(said)
    assert told is not None
    assert (told.act, told.body_mass_kg) == ("weighs", 74)


@pytest.mark.parametrize("said", NO_BODY_MASS)
def test_what_says_no_body_mass(said):
    assert not is_taken(said, "weighs")


def test_pounds_and_stones():
    """By the international pound of 0.45359237 kg, from memory; a stone is 14 pounds."""
    assert taken("I weigh 163 lb").body_mass_kg == Decimal("73.93555631")
    assert taken("I weigh 163", units=MassUnit.LB).body_mass_kg == Decimal("73.93555631")
    assert taken("I weigh 11 stone 9").body_mass_kg == Decimal("73.93555631")


CAN = [
    ("I can do 10 deadlifts at 140 kg", "deadlift", 10, 140),
    ("btw I can do 20 push-ups", "push-up", 20, None),
    ("i can do twelve pull ups in a row", "pull-up", 12, None),
    ("I can do 8 strict pull-ups", "pull-up", 8, None),
    ("I can do a pull-up", "pull-up", 1, None),
    ("I can deadlift 140 kg", "deadlift", 1, 140),
    ("I can back squat 100kg x 3", "back squat", 3, 100),
    ("my max deadlift is 140 kg", "deadlift", 1, 140),
    ("my 5rm back squat is 100", "back squat", 5, 100),
    ("i squat 100 kg x5", "back squat", 5, 100),
    ("I can do like 20 pushups", "push-up", 20, None),
    ("I can do 10 goblet squats with a 24 kg kettlebell", "goblet squat", 10, 24),
]
CAN_NOTHING = [
    "I can do it", "I can do 15 minutes", "I can do 3 rounds", "can I do 10 deadlifts?",
    "I can do 12 push-ups tomorrow",
    "I can come at 10", "I can do Tuesday 18", "I can lift 100 kg", "I can do 9000 push-ups", "I can deadlift 1400 kg",
    "7+12",
]  # fmt: skip


@pytest.mark.parametrize(("said", "movement", "reps", "load"), CAN, ids=[said for said, *_ in CAN])
def test_what_they_can_do(said, movement, reps, load):
    told = taken(said)
    assert told is not None
    assert (told.act, told.movement, told.reps, told.load_kg) == ("can", movement, reps, load)


@pytest.mark.parametrize("said", CAN_NOTHING)
def test_what_tells_of_no_ability(said):
    told = taken(said)
    assert told is None or told.act != "can" or told.reps is None


HEALTH = [
    ("I'm pregnant", {"pregnancy"}),
    ("I just found out I\u2019m pregnant!", {"pregnancy"}),
    ("hi, I am pregnant, 14 weeks", {"pregnancy"}),
    ("I'm expecting a baby", {"pregnancy"}),
    ("we are expecting a baby in May", {"pregnancy"}),
    ("I have high blood pressure", {"high-blood-pressure"}),
    ("I was told I have high blood pressure", {"high-blood-pressure"}),
    ("I had a baby 5 weeks ago", {"after-birth"}),
    ("I take blood thinners now", {"blood-thinners"}),
    ("please no jumping", {"no-jumping"}),
    ("no running for me please", {"no-running"}),
]
OF_OTHERS_OR_BEFORE = [
    "my wife is pregnant", "we're expecting guests",
    "I'm not pregnant", "am I allowed to do this if I'm pregnant?",
    "I love how this fits me", "no class next Tuesday", "no", "no idea", "7+12", "I was pregnant last year",
]  # fmt: skip


@pytest.mark.parametrize(("said", "limits"), HEALTH, ids=[said for said, _ in HEALTH])
def test_health_that_is_told_unasked(said, limits):
    told = taken(said)
    assert told is not None
    assert told.act in {"condition", "spares"}
    assert set(told.limits) == limits


@pytest.mark.parametrize("said", OF_OTHERS_OR_BEFORE)
def test_what_is_said_of_others_or_of_before_is_not(said):
    assert not is_taken(said, "condition")
    assert not is_taken(said, "spares")


WITHDRAWN = [
    "withdraw today's session", "Delete the session please", "remove that post from the group",
    "take the session down", "oops, I posted that by mistake", "cancel yesterday's session",
    "the last post was a mistake", "unpost it",
]  # fmt: skip
OTHER_WISHES = [
    "cancel", "delete my score",
    "cancel today's class", "remove the push-ups from the session", "post it tomorrow at 7",
]  # fmt: skip


@pytest.mark.parametrize("said", WITHDRAWN)
def test_a_post_is_taken_back(said):
    assert is_taken(said, "withdraw", "coach")


@pytest.mark.parametrize("said", OTHER_WISHES)
def test_other_wishes_take_no_post_back(said):
    assert not is_taken(said, "withdraw", "coach")


THANKS = ["thanks", "Thank you!", "ok thanks", "great, thank you so much!", "thx", "Perfect, thanks a lot"]
MORE_THAN_THANKS = [
    "no thanks, nothing hurts", "thanks, 7+12", "thanks but my wrist hurts", "ok 9:24", "great lunges today",
]  # fmt: skip


@pytest.mark.parametrize("said", THANKS)
def test_thanks_are_heard(said):
    assert is_taken(said, "thanks")


@pytest.mark.parametrize("said", MORE_THAN_THANKS)
def test_what_says_more_is_no_mere_thanks(said):
    assert not is_taken(said, "thanks")


@pytest.mark.parametrize(
    ("said", "act", "movement"),
    [
        ("I don't want to do burpees", "swap", "burpee"),
        ("12 pushups is too much for me", "too_hard", "push-up"),
        ("i hate burpees, something else?", "swap", "burpee"),
    ],
)
def test_what_somebody_would_rather_not_do(said, act, movement):
    told = taken(said)
    assert told is not None
    assert (told.act, told.movement) == (act, movement)


@pytest.mark.parametrize(
    ("said", "units"),
    [
        ("can you switch from pounds to kilos", MassUnit.KG),
        ("kilos instead of pounds pls", MassUnit.KG),
        ("show everything in lbs please not kg", MassUnit.LB),
    ],
)
def test_the_unit_that_comes_counts_not_the_one_that_goes(said, units):
    assert taken(said).units is units


SHARED = [
    ("we share it", None, []),
    ("I share it with Bo.", "Bo", []),
    ("Bo and I share the dumbbell", "Bo", ["dumbbell"]),
    ("I share the adjustable dumbbell with my wife", "your wife", ["dumbbell"]),
]


@pytest.mark.parametrize(("said", "partner", "things"), SHARED, ids=[said for said, *_ in SHARED])
def test_what_they_share_and_with_whom(said, partner, things):
    told = taken(said)
    assert told is not None
    assert (told.act, told.person, [one.implement for one in told.equipment]) == ("shares", partner, things)


@pytest.mark.parametrize("said", ["7+12", "share", "thanks for sharing", "Bo has a dumbbell", ""])
def test_all_else_is_no_sharing(said):
    assert not is_taken(said, "shares")


HOW_IT_GOES = [
    "who hasn't reported?", "Who has trained?", "who's missing", "who hasn't done it yet?", "how did it go today",
    "how is everyone doing", "how are my people?",
]  # fmt: skip
WHO_IS_IN = [
    "who's in today?", "whos in tonight", "who's coming to today's class?", "who signed up for tomorrow?",
    "who has signed up for the class on Tuesday?", "so who is training today", "who will be there tomorrow?",
]  # fmt: skip


@pytest.mark.parametrize("said", HOW_IT_GOES + WHO_IS_IN)
def test_a_coach_asks_who_did_and_who_will(said):
    told = taken(said, "coach")
    assert told is not None
    assert told.act == "who_reported"
    assert (told.day is not None) is (said in WHO_IS_IN or "today" in said)


@pytest.mark.parametrize("said", ["how is it done?", "how do I do a lunge?", "7+12", "who can come early?"])
def test_other_questions_of_a_coach_are_others(said):
    assert not is_taken(said, "who_reported", "coach")


@given(st.text(max_size=120))
def test_no_text_fails_it(text):
    taken(text)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("tam was great today, tell the group well done everyone", "well done everyone"),
        ("tell everyone the hall is closed on friday", "the hall is closed on friday"),
        ("please tell the group that the hall is closed", "the hall is closed"),
        ("announce: hi all", "hi all"),
    ],
)
def test_a_word_for_everybody_goes_without_the_words_that_send_it(text, words):
    told = taken(text, "coach")
    assert told is not None
    assert told.text == words
