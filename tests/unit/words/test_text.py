import pytest

from bot.words.text import plural


@pytest.mark.parametrize(
    ("one", "many"),
    [("push-up", "push-ups"), ("floor press", "floor presses"), ("farmer carry", "farmer carries")],
)
def test_a_movement_is_named_in_the_plural(one, many):
    assert plural(one) == many
