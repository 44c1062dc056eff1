"""A button is a whole command in 64 bytes."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.telegram.buttons import CODES, pack, unpack
from core.desk.commands import (
    AnswerScreening,
    ChoosePair,
    GiveConsent,
    MyVersion,
    PostLater,
    SetZone,
    TellAbility,
)
from core.desk.errors import StalePress
from core.errors import Defect

ids = st.integers(1, 10**12)


@given(session=ids, reps=st.integers(0, 200), load=st.none() | st.decimals(1, 200, places=2))
def test_what_is_packed_unpacks_to_the_same_command(session, reps, load):
    command = TellAbility(session=session, movement="goblet squat", reps=reps, load_kg=load)

    assert unpack(pack(command)) == command


@pytest.mark.parametrize(
    "command",
    [
        GiveConsent(group=7),
        AnswerScreening(group=7, answers="ynn"),
        SetZone(group=7, zone="America/Argentina/ComodRivadavia"),
        PostLater(session=3, revision=2, minute=29_000_000),
        ChoosePair(session=3, pair=2),
        MyVersion(session=None),
        TellAbility(session=1, movement="push-up", reps=12, load_kg=Decimal("7.5")),
    ],
)
def test_every_kind_of_field_survives(command):
    assert unpack(pack(command)) == command


@given(st.text(max_size=64))
def test_any_other_data_is_a_stale_press_and_never_a_crash(data):
    try:
        command = unpack(data)
    except StalePress:
        return
    assert type(command) in CODES.values()


@pytest.mark.parametrize("data", ["", "gc", "gc:x", "gc:1:2", "zz:1", "ta:1:push-up:many:"])
def test_garbled_data_is_a_stale_press(data):
    with pytest.raises(StalePress):
        unpack(data)


def test_a_command_that_does_not_fit_is_a_defect():
    with pytest.raises(Defect):
        pack(SetZone(group=1, zone="x" * 64))
