"""Whatever is written, whatever must be spared, and with nothing at hand: there is something safe to do."""

from decimal import Decimal
from itertools import product

import pytest

from core.athletes.limits import brought, limits, ruled_out
from core.athletes.values import Profile, Screening
from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.scaling.values import Change
from core.scaling.version import version_for, withheld_from
from core.sessions.values import Block, Format, Line, Session

AMOUNTS = {AmountUnit.REPS: 10, AmountUnit.SECONDS: 30, AmountUnit.METRES: 100}
SPARING = (None, *(one.id for one in limits()))


def somebody(limit, mass_kg="70"):
    return Profile(
        name="Ines",
        screening=Screening.CLEAR,
        body_mass_kg=Decimal(mass_kg),
        equipment=(),
        limits=() if limit is None else (limit,),
    )


PEOPLE = [who for who in map(somebody, SPARING) if withheld_from(who) is None]


def need_of(way):
    """What it needs at least, where a seat is there without being told."""
    return {"seat" if "seat" in need else need[0] for need in way.needs}


def written(movement):
    """Each way of it as a part of its own: parts know nothing of each other, and one version holds them all."""
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


@pytest.mark.parametrize("movement", catalogue().movements, ids=lambda movement: movement.id)
def test_every_movement_has_a_safe_way_for_every_single_limit_or_reaches_the_coach(movement):
    session = written(movement)
    made = [(who, version_for(session, who, catalogue())) for who in PEOPLE]
    for (who, version), (number, variant) in product(made, enumerate(movement.variants)):
        (line,) = version.blocks[number].lines
        if line.change is Change.REST:
            assert (number + 1, 1) in {(need.block, need.line) for need in version.needs_coach}, (
                variant.id,
                who.limits,
            )
            continue
        _, way = catalogue().variant(f"{line.movement}/{line.variant}")
        assert not way.holds, (variant.id, who.limits)
        assert need_of(way) <= set(brought(who.limits)), (variant.id, who.limits)
        assert not ruled_out(who.limits) & set(way.demands), (variant.id, who.limits)
