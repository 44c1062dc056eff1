"""Of every way of every movement: whatever must be spared something is safe, and stand-ins come in their order."""

from decimal import Decimal
from itertools import product

import pytest

from core.athletes import limits as spared
from core.athletes.limits import brought, ruled_out
from core.athletes.values import Profile, Screening
from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.scaling.athlete import Athlete
from core.scaling.options import options_of
from core.scaling.orders import Orders
from core.scaling.plan import plan_of
from core.scaling.rows import LITTLE
from core.scaling.values import Because
from core.scaling.version import version_for, withheld_from
from core.sessions.values import Block, Format, Line, Session
from tests.unit.scaling.cases import TWELVE_MINUTES, Case
from tests.unit.scaling.people import athlete

AMOUNTS = {AmountUnit.REPS: 10, AmountUnit.SECONDS: 30, AmountUnit.METRES: 100}
SPARING = (None, *(one.id for one in spared.limits()))


def somebody(limit, mass_kg="70"):
    return Profile(
        name="Ines",
        screening=Screening.CLEAR,
        body_mass_kg=Decimal(mass_kg),
        equipment=(),
        limits=() if limit is None else (limit,),
    )


PEOPLE = [Athlete(who, catalogue()) for who in map(somebody, SPARING) if withheld_from(who) is None]


def need_of(way):
    """What it needs at least, where a seat is there without being told."""
    return {"seat" if "seat" in need else need[0] for need in way.needs}


def written(movement):
    """Each way of it as a part of its own: parts know nothing of each other."""
    return Session(blocks=tuple(part(movement, variant) for variant in movement.variants))


def part(movement, variant):
    unit = movement.unit_of(variant)
    line = Line(
        written=variant.label,
        movement=movement.id,
        variant=variant.id,
        amount=AMOUNTS[unit],
        unit=unit,
        loads_kg=(Decimal(12),) if variant.holds else (),
    )
    return Block(format=Format.AMRAP, minutes=10, lines=(line,))


@pytest.fixture(scope="module", params=catalogue().movements, ids=lambda movement: movement.id)
def planned(request):
    """Every way of a movement as it is written, and the plan of each: tests of one movement run together."""
    session = written(request.param)
    return session, [block.lines[0] for block in plan_of(session, catalogue(), 1)]


def test_every_movement_has_a_safe_way_for_every_single_limit_or_reaches_the_coach(planned):
    session, plans = planned
    for who, (number, plan) in product(PEOPLE, enumerate(plans, 1)):
        limits = who.profile.limits
        options = options_of(plan, who, Orders(), LITTLE)
        if options[0].way is None:
            version = version_for(session, who.profile, catalogue())
            assert (number, 1) in {(need.block, need.line) for need in version.needs_coach}, (number, limits)
        for way in (option.way.variant for option in options if option.way):
            assert not way.holds, (way.id, limits)
            assert need_of(way) <= set(brought(limits)), (way.id, limits)
            assert not ruled_out(limits) & set(way.demands), (way.id, limits)


def test_stand_ins_that_cost_the_same_but_for_their_place_come_in_the_order_of_their_list(planned):
    for plan in planned[1]:
        movement, variant = plan.ways[0].movement, plan.ways[0].variant
        charges = {way.id: dict(way.charges) for way in plan.ways}
        listed = [one for one in movement.instead_of(variant) if one in charges]
        beside = {*variant.easier, *variant.harder}
        listed = [one for one in listed if one not in beside and not one.startswith(f"{movement.id}/")]
        for sits in (False, True):  # who sits looks among what is for them
            places = [charges[one].get("not_named", 0) for one in listed if is_for(one, sits=sits)]
            assert places == sorted(places), variant.id


def is_for(name, *, sits):
    return catalogue().variant(name)[1].is_on_a_seat is sits


def test_whoever_spares_a_shoulder_gets_the_first_that_is_listed():
    """The wall walk lists push-ups at the wall before a plank there."""
    Case(
        TWELVE_MINUTES + "8 wall walks",
        athlete(limits=("shoulder",)),
        "27 push-ups against the wall",
        Because.LIMIT,
        "your sore shoulder",
    ).check()
