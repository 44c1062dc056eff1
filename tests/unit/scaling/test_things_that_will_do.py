"""Where one of several things will do, whoever has any of them does what is written (common practice, no source)."""

from itertools import product

import pytest

from bot.words.versions import what_words
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.scaling.athlete import Athlete
from core.scaling.obstacles import obstacle_to
from core.scaling.plan import plan_of
from core.scaling.support import Support
from core.scaling.values import Because
from core.sessions.values import Block, Format, Line, Session
from tests.unit.scaling.cases import TWELVE_MINUTES, Case
from tests.unit.scaling.people import athlete, did, only_line, session, version

STRONG = (
    did("pull-up", 15),
    did("chin-up", 15),
    did("toes-to-bar", 12),
    did("hanging knee raise", 25),
    did("push-up", 40),
)


def gymnast(*owns):
    return athlete(sex="male", mass=75, owns=owns, tests=STRONG)


ON_RINGS = [
    ("10 toes-to-bar", "10 toes-to-bar (rings)"),
    ("10 toes to rings", "10 toes-to-bar (rings)"),
    ("10 hanging knee raises", "10 hanging knee raises (rings)"),
    ("10 knees to elbows", "10 hanging knees to elbows (rings)"),
    ("8 chin-ups", "8 chin-ups (rings)"),
    ("30 s active hang", "30 s hang with your shoulders drawn down (rings)"),
    ("10 scap pull-ups", "10 shoulder blade pulls, hanging (rings)"),
]


@pytest.mark.parametrize(("text", "what"), ON_RINGS)
def test_whoever_has_rings_and_no_bar_hangs_from_the_rings(text, what):
    Case(TWELVE_MINUTES + text, gymnast("rings"), what, Because.AS_WRITTEN).check()


@pytest.mark.parametrize(("text", "what"), ON_RINGS)
def test_whoever_has_both_hangs_from_the_bar(text, what):
    line = only_line(TWELVE_MINUTES + text, gymnast("rings", "pull-up bar"))
    assert (line.implement, what_words(line, MassUnit.KG)) == ("pull-up bar", what.removesuffix(" (rings)"))


@pytest.mark.parametrize(
    ("text", "owns", "what"),
    [
        ("10 elevated bridges", "bench", "10 bridges with your feet on a bench"),
        ("10 elevated bridges", "box", "10 bridges with your feet on a box"),
        ("10 elevated bridges", "chair", "10 bridges with your feet on a chair"),
        ("20 chair mountain climbers", "box", "20 mountain climbers with your hands on a box"),
        ("10 chair knee tucks", "bench", "10 knee tucks on a bench"),
    ],
)
def test_the_thing_that_is_there_is_named(text, owns, what):
    who = athlete(owns=[owns], tests=[did("sit-up", 60), did("push-up", 40), did("bridge", 60)])
    Case(TWELVE_MINUTES + text, who, what, Because.AS_WRITTEN).check()


def test_its_caution_comes_along():
    made = version(TWELVE_MINUTES + "10 toes-to-bar", gymnast("rings"))
    assert [caution.id for caution in made.cautions] == ["rings"]


def test_where_none_is_there_the_usual_one_is_what_is_missing():
    plan = plan_of(session(TWELVE_MINUTES + "10 toes-to-bar"), catalogue(), 1)[0].lines[0]
    assert obstacle_to(plan, Athlete(gymnast(), catalogue())) == (Because.NOT_OWNED, "pull-up bar")


CHOICES = [
    f"{movement.id}/{variant.id}"
    for movement, variant in catalogue().pairs()
    if any(len(need) > 1 for need in variant.needs)
]


def way_of(variant_id):
    """The way of a line that is written as this variant."""
    movement, variant = catalogue().variant(variant_id)
    unit = movement.unit_of(variant)
    line = Line(written=variant.label, movement=movement.id, variant=variant.id, amount=10, unit=unit)
    block = Block(format=Format.AMRAP, minutes=10, lines=(line,))
    return plan_of(Session(blocks=(block,)), catalogue(), 1)[0].lines[0].ways[0]


@pytest.mark.parametrize("variant_id", CHOICES)
def test_a_way_is_there_exactly_with_one_thing_of_each_need(variant_id):
    way, (_, variant) = way_of(variant_id), catalogue().variant(variant_id)
    holds = frozenset((hold.implement, hold.count) for hold in variant.holds)
    for owned in product((True, False), repeat=len(variant.things)):
        things = [thing for thing, has in zip(variant.things, owned, strict=True) if has]
        there = all(set(need) & set(things) for need in variant.needs)
        who = Athlete(athlete(owns=things), catalogue())
        assert who.support(variant).there is there
        assert way.is_within(who.gear.things, holds) is there
        if there:
            assert who.support(variant).implement == next(t for t in variant.needs[0] if t in things)


def test_nothing_is_needed_where_nothing_is_named():
    assert Athlete(athlete(), catalogue()).support(catalogue().variant("push-up/floor")[1]) == Support()


def test_so_does_that_of_the_chair_beside_a_weight():
    who = athlete(owns=["chair", "dumbbell 6"], tests=[did("goblet squat", 12, 6)])
    made = version(TWELVE_MINUTES + "10 goblet squats to a chair", who)
    assert [caution.id for caution in made.cautions] == ["dumbbell", "chair"]


@pytest.mark.parametrize(("work", "told"), [("10 push-ups", []), ("10 push-ups\n200 m run", ["no-jumping"])])
def test_a_caution_about_running_is_told_where_something_runs(work, told):
    made = version(TWELVE_MINUTES + work, athlete(limits=("no-jumping",), tests=STRONG))
    assert [caution.id for caution in made.cautions] == told
