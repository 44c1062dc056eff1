"""Words and taps meet in one table: every act has its use case, or an honest word of what can't be done yet."""

from typing import get_args

import pytest

from bot.words.en.talk.leftovers import LABELS, NOT_YET, not_got
from core.desk.talk.acts import SAID_OF_ONESELF
from core.desk.talk.not_got import NEAREST, UNDONE, short
from core.desk.talk.says import Nearest, NotGot
from core.desk.talk.use_cases import USE_CASES
from core.understanding.acts import ACTS

# Taken by the readers of the open question alone, or by those of stop signs and of scores.
ELSEWHERE = {"sign", "agrees", "declines", "elsewhere", "nothing_hurt", "small_talk"}


@pytest.mark.parametrize("name", sorted(ACTS))
def test_every_act_meets_a_use_case_or_is_answered_honestly(name):
    assert ACTS[name] in USE_CASES or name in UNDONE or name in ELSEWHERE


def test_every_act_that_cannot_be_done_has_its_words():
    assert set(NOT_YET) == UNDONE


def test_every_nearest_thing_has_its_button():
    assert set(LABELS) == set(get_args(Nearest))
    assert set(NEAREST.values()) <= set(LABELS)


def test_the_likeliest_thing_stands_as_the_one_button_under_the_one_line():
    told = not_got(NotGot(words="bord", nearest="board", word=3))
    assert "\n" not in told.html
    labels = [[button.label for button in row] for row in told.rows]
    assert labels == [["The scoreboard"], ["Tell my coach", "What can I write?"]]


def test_what_stands_in_the_tables_is_an_act():
    assert UNDONE | set(NEAREST) | SAID_OF_ONESELF | ELSEWHERE <= set(ACTS)


def test_a_quotation_is_one_short_line():
    assert short("one\ntwo " * 40).endswith("…")
    assert "\n" not in short("one\ntwo " * 40)
