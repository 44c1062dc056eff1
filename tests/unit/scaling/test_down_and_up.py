"""In rounds without a rest nobody gets down to the floor and up again who had better not."""

import pytest

from bot.words.reasons import reason_words
from core.athletes.circumstances import in_circumstances
from core.athletes.values import Pregnancy
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.movements.values import Demand
from tests.unit.scaling.people import athlete, lines

ROUNDS = "4 rounds for time\n10 air squats\n20 sit-ups"
DOWN = {Demand.FLOOR, Demand.KNEELING}
WHO = {
    "pressure and age": athlete(limits=("high-blood-pressure",), birth_year=1956),
    "pregnant": athlete(pregnancy=Pregnancy(week=24, cleared=True)),
    "heavy and new": athlete(mass=112, experience="new"),
    "old and frail": athlete(birth_year=1946),
}


def floor_in(text, who):
    line = lines(text, in_circumstances(who), year=2026)[1]
    _, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    return not DOWN.isdisjoint(variant.demands), line


@pytest.mark.parametrize("who", WHO.values(), ids=WHO)
def test_they_stay_up_in_rounds(who):
    assert not floor_in(ROUNDS, who)[0]


def test_they_read_why():
    line = floor_in(ROUNDS, WHO["heavy and new"])[1]
    assert reason_words(line, MassUnit.KG).startswith(
        "Done standing, so that you needn't get down and up in every round"
    )


def test_others_lie_down():
    assert floor_in(ROUNDS, athlete(birth_year=1962))[0]


def test_where_nobody_hurries_they_lie_down_too():
    assert floor_in("2 rounds, no clock\n10 air squats\n20 sit-ups", WHO["heavy and new"])[0]
