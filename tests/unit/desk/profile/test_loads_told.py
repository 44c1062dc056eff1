"""Which loads of a score show what somebody can do."""

from decimal import Decimal

from core.desk.profile.abilities import is_given, told_loads
from core.measures import MassUnit
from core.notation.scores.loads_beside import ToldLoad
from core.scores.values import Score
from tests.unit.scaling.people import athlete, session, version

SETS = "5 x 5 deadlift @ 60 kg\nrest 2 min"


def lifted(kg):
    return Score(value=kg, unit="kg", load_kg=Decimal(kg))


def test_the_load_of_sets_is_of_their_one_line():
    (block,) = session(SETS).blocks
    assert told_loads(lifted(80), "80 kg", block, MassUnit.KG) == (ToldLoad(0, Decimal(80)),)


def test_sets_with_more_than_was_given_show_something_and_with_as_much_do_not():
    (block,) = session(SETS).blocks
    made = version(SETS, athlete(owns=["barbell 60 80 100"], sex="male", mass=85, experience="trained"))
    given = made.blocks[0].lines[0].load_kg
    assert given is not None
    assert is_given(ToldLoad(0, given), made, block, 0)
    assert not is_given(ToldLoad(0, given + 20), made, block, 0)
