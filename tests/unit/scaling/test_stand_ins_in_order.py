"""Of stand-ins that are as good as each other, the one comes first that is listed first."""

import pytest

from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.scaling.plan import plan_of
from core.scaling.values import Because
from core.sessions.values import Block, Format, Line, Session
from tests.unit.scaling.cases import TWELVE_MINUTES, Case
from tests.unit.scaling.people import athlete

AMOUNTS = {AmountUnit.REPS: 10, AmountUnit.SECONDS: 30, AmountUnit.METRES: 100}


def ways_of(movement, variant):
    unit = movement.unit_of(variant)
    line = Line(
        written=variant.label, movement=movement.id, variant=variant.id, amount=AMOUNTS[unit], unit=unit
    )
    block = Block(format=Format.AMRAP, minutes=12, lines=(line,))
    return plan_of(Session(blocks=(block,)), catalogue(), 1)[0].lines[0].ways


def is_for(name, *, sits):
    return catalogue().variant(name)[1].is_on_a_seat is sits


@pytest.mark.parametrize("movement", catalogue().movements, ids=lambda movement: movement.id)
def test_stand_ins_that_cost_the_same_but_for_their_place_come_in_the_order_of_their_list(movement):
    for variant in movement.variants:
        charges = {way.id: dict(way.charges) for way in ways_of(movement, variant)}
        listed = [one for one in movement.instead_of(variant) if one in charges]
        beside = {*variant.easier, *variant.harder}
        listed = [one for one in listed if one not in beside and not one.startswith(f"{movement.id}/")]
        for sits in (False, True):  # who sits looks among what is for them
            places = [charges[one].get("not_named", 0) for one in listed if is_for(one, sits=sits)]
            assert places == sorted(places), variant.id


def test_whoever_spares_a_shoulder_gets_the_first_that_is_listed():
    """The wall walk lists push-ups at the wall before a plank there."""
    Case(
        TWELVE_MINUTES + "8 wall walks",
        athlete(limits=("shoulder",)),
        "27 push-ups against the wall",
        Because.LIMIT,
        "spare your sore shoulder",
    ).check()
