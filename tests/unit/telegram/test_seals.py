"""A made-up press is known at once."""

import pytest

from bot.telegram.buttons import CODES, pack
from bot.telegram.heard import Press
from bot.telegram.seals import LENGTH, Seal
from core.desk.commands import TellAbility
from core.desk.errors import StalePress
from core.movements.lookup import catalogue

SEAL = Seal(b"a key that nobody knows")


def press(data, label=None):
    return Press("q", data, 1, "text", label)


def test_what_was_sealed_for_a_chat_is_opened_there():
    sealed = SEAL.put("mv:12", 7)

    assert SEAL.opened(press(sealed), 7) == "mv:12"
    assert len(sealed) == len("mv:12") + LENGTH


@pytest.mark.parametrize(
    "data", ["mv:12", "mv:12~", "mv:12~abcd", SEAL.put("mv:13", 7)[:-1], SEAL.put("mv:12", 8), "~é"]
)
def test_anything_else_is_a_stale_press(data):
    with pytest.raises(StalePress):
        SEAL.opened(press(data), 7)


def test_another_key_opens_nothing():
    with pytest.raises(StalePress):
        SEAL.opened(press(Seal(b"other").put("mv:12", 7)), 7)


def test_a_button_from_before_there_were_seals_counts_while_it_is_shown():
    assert SEAL.opened(press("mv:12", label="My version"), 7) == "mv:12"


def test_there_is_room_for_a_seal_behind_the_longest_command():
    longest = max((movement.id for movement in catalogue().movements), key=len)
    command = TellAbility(session=99_999_999, movement=longest, reps=1000, load_kg="20.41165665")

    assert len(SEAL.put(pack(command), 10**9).encode()) <= 64
    assert all("~" not in code for code in CODES)
