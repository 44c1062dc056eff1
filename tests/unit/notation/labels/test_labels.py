"""A stretch that names no movement is read by its learned label; adding a phrase is a line of the examples."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.labels.facts import heading_of, told_by
from core.notation.labels.labelling import digest_of_weights, examples, features, label
from core.sessions.values import BlockKind, Format
from tests.corpus.training_boards import digest


def test_the_weights_are_of_these_examples():
    assert digest_of_weights() == digest(), "run `make train`"


def test_nearly_every_example_has_the_label_it_teaches():
    known = list(examples())
    right = sum(label(words).name == name for words, name in known)
    assert right / len(known) > 0.9


def test_a_feature_tells_numbers_by_their_kind_alone():
    assert list(features("stop at 20 min")) == list(features("stop at 15 min"))


FACTS = [
    ("we stop at 18 min", {"cap_s": 1080}),
    ("20 seconds change", {"rest_s": 20}),
    ("catch your breath for 2 min", {"rest_s": 120}),
    ("3 times around", {"rounds": 3}),
    ("time yourself", {"format": Format.FOR_TIME}),
    ("slow and tidy", {"format": Format.QUALITY}),
    ("3 giant sets", {"format": Format.SETS, "rounds": 3}),
]


@pytest.mark.parametrize(("words", "facts"), FACTS)
def test_a_label_tells_what_its_number_is(words, facts):
    assert told_by(words) == facts


@pytest.mark.parametrize("words", ["see you tomorrow", "bring water", "2 to 3 min rest", "tyre flips"])
def test_talk_ranges_and_names_say_nothing_of_the_block(words):
    assert told_by(words) == {}


def test_a_heading_in_other_words_opens_its_kind_of_part():
    assert heading_of("get warm") is BlockKind.WARM_UP
    (warm_up, main) = read_session(
        "Get warm: 10 arm circles, 10 leg swings\n12 min AMRAP\n10 burpees", catalogue()
    ).session.blocks
    assert (warm_up.kind, main.kind) == ("warm-up", "main")


def test_a_heading_alone_in_the_first_row_is_the_title_too():
    read = read_session("Upper body strength\nbench press 5x5", catalogue())
    assert (read.session.title, read.session.blocks[0].kind) == ("Upper body strength", "strength")


def test_what_is_labelled_joins_the_facts_of_its_block():
    (block,) = read_session(
        "Family circuit! 40 seconds work, 20 seconds change. 3 times around.\n- jumping jacks\n- squats",
        catalogue(),
    ).session.blocks
    assert (block.format, block.work_s, block.rest_s, block.rounds) == ("intervals", 40, 20, 3)


def test_lines_with_sets_of_their_own_and_without_are_parts_of_their_own():
    read = read_session(
        "Chair squats 2 x 10, wall press-ups 2 x 10, marching 2 minutes, heel raises 2 x 12", catalogue()
    )
    assert [block.rounds for block in read.session.blocks] == [2, 2, None, 2]
    assert not read.not_understood


LINES = [
    ("side lunges 10 each", "side lunge", 10, True, None),
    ("step ups on a bench 10 each", "step-up", 10, True, None),
    ("bird dogs 8 es", "bird dog", 8, True, None),
    ("row 4 x 10 pause at top", "bent-over row", 10, False, "pause at top"),
    ("sit-up 20 w/ plate", "sit-up", 20, False, None),
    ("10 sit ups feet anchored", "sit-up", 10, False, "feet anchored"),
    ("good mornings w/ empty bar 10", "good morning", 10, False, "w/ empty bar"),
    ("deadlift 5x5 +2.5 kg from last week", "deadlift", 5, False, "+2.5 kg from last week"),
]


@pytest.mark.parametrize(("typed", "movement", "amount", "per_side", "note"), LINES)
def test_an_amount_may_stand_anywhere_in_its_line(typed, movement, amount, per_side, note):
    (block,) = read_session(f"3 rounds for time\n{typed}", catalogue()).session.blocks[-1:]
    (line,) = block.lines
    assert (line.movement, line.amount, line.per_side, line.notes) == (movement, amount, per_side, note)
