"""What is called for by name is done though the graph leads nowhere near it, where it is safe and there."""

from core.athletes.values import Equipment, Profile
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.orders import Orders, Pin
from core.scaling.values import Because
from core.scaling.version import version_for

WRITTEN = read_session("3 rounds:\n30 s plank\n15 push-ups", catalogue())


def lines(*pins):
    athlete = Profile(name="Ilse", equipment=(Equipment(implement="chair"),), limits=())
    assert WRITTEN.session is not None
    version = version_for(WRITTEN.session, athlete, catalogue(), Orders(pins=pins), year=2026)
    return [line for _, line in version.spots]


def test_another_movement_takes_the_place_of_the_line():
    called = lines(Pin(block=1, line=1, movement="chair dip"))[0]
    assert (called.movement, called.reason.because) == ("chair dip", Because.COACH)


def test_what_there_is_nothing_for_is_not_done():
    assert lines(Pin(block=1, line=1, movement="row"))[0].movement == "plank"


def test_a_movement_that_is_left_out_gives_way_to_another():
    assert lines(Pin(block=1, line=2, without="push-up"))[1].movement != "push-up"
