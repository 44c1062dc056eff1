"""Which of two weights is theirs: a word for one of them chooses, a question about our words or a no doesn't."""

import pytest

from core.desk.versions.answers import take_pair
from core.measures import MassUnit


@pytest.mark.parametrize(("words", "pair"), [("lighter", 2), ("the heavier one", 1), ("1", 1), ("second", 2)])
def test_a_word_for_one_of_them_chooses(words, pair):
    taken = take_pair(words, MassUnit.KG)
    assert taken is not None
    assert taken.facts == {"pair": pair}


@pytest.mark.parametrize(
    "words",
    [
        'i am not understand "lighter" what it means',
        "heavier?",
        "not the heavy one",
        "what does lighter mean",
    ],
)
def test_who_asks_or_denies_has_chosen_nothing(words):
    assert take_pair(words, MassUnit.KG) is None
