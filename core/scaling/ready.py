"""Three ready levels of a session, for those who never ask for their own version."""

from decimal import Decimal
from typing import NamedTuple

from core.athletes.values import Equipment, Evidence, Profile, Screening, Sex
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.scaling.gentler import gentler
from core.scaling.orders import NO_ORDERS, Orders
from core.scaling.plan import plan_of
from core.scaling.values import Version, VersionBlock
from core.scaling.version import version_for
from core.scaling.ways import LinePlan
from core.sessions.values import Session

# The light things that many people have at home (estimate), and what everybody's home has.
LIGHT_KG = tuple(Decimal(kg) for kg in (4, 6, 8, 10))
AT_HOME = (
    Equipment(implement="dumbbell", loads_kg=LIGHT_KG, each=2),
    Equipment(implement="chair"),
    Equipment(implement="table"),
)

# So many times the written work goes unbroken for whoever does it as written without a thought.
WITH_EASE = 2.5


class Ready(NamedTuple):
    """The blocks of each level. None of them knows anybody's limits: whoever has some asks for their own version."""

    as_written: tuple[VersionBlock, ...]
    lighter: tuple[VersionBlock, ...]
    no_equipment: tuple[VersionBlock, ...]


def ready_levels(session: Session, catalogue: Catalogue) -> Ready:
    """Three levels, each made for a typical athlete who is well and free of limits. Raises UnknownMovement."""
    return Ready(
        _blocks(session, _able(session, catalogue), catalogue),
        lighter(session, catalogue),
        _blocks(session, typical("no equipment", ()), catalogue),
    )


def lighter(session: Session, catalogue: Catalogue) -> tuple[VersionBlock, ...]:
    """With light things at home; no line costs the one it is made for more than as it is written."""
    who = typical("lighter", AT_HOME)
    blocks = _blocks(session, who, catalogue)
    pins = gentler(session, blocks, who, catalogue)
    return _blocks(session, who, catalogue, Orders(pins=pins)) if pins else blocks


def _blocks(
    session: Session, who: Profile, catalogue: Catalogue, orders: Orders = NO_ORDERS
) -> tuple[VersionBlock, ...]:
    version = version_for(session, who, catalogue, orders)
    assert isinstance(version, Version), "nobody typical is kept from training"
    return version.blocks


def typical(name: str, equipment: tuple[Equipment, ...]) -> Profile:
    """Somebody of whom nothing is known but what most people can do."""
    return Profile(
        name=name, sex=None, body_mass_skipped=True, screening=Screening.CLEAR, limits=(), equipment=equipment
    )


def _able(session: Session, catalogue: Catalogue) -> Profile:
    """Somebody who owns what is written, and has shown more than that."""
    plans = [line for block in plan_of(session, catalogue, 1) for lines in block.sections for line in lines]
    things = {need[0] for plan in plans for need in plan.ways[0].variant.needs}
    held = {
        (plan.hold.implement, plan.hold.count, plan.load_kg(1) or LIGHT_KG[-1]) for plan in plans if plan.hold
    }
    return Profile(
        name="as written",
        sex=Sex.MALE,
        screening=Screening.CLEAR,
        limits=(),
        equipment=(
            *(Equipment(implement=thing) for thing in sorted(things)),
            *(Equipment(implement=thing, loads_kg=(kg,), each=count) for thing, count, kg in sorted(held)),
        ),
        evidence=tuple(_shown(plan) for plan in plans if plan.ways[0].movement.k is not None),
    )


def _shown(plan: LinePlan) -> Evidence:
    way = plan.ways[0]
    amount = WITH_EASE * (way.set_amount or 1)
    holds = way.movement.unit_of(way.variant) is AmountUnit.SECONDS
    return Evidence(
        movement=way.movement.id,
        variant=way.variant.id,
        reps=None if holds else amount * (2 if way.movement.sides_of(way.variant) == "alternating" else 1),
        seconds=amount if holds else None,
        load_kg=(plan.load_kg(1) or LIGHT_KG[-1]) if plan.hold else None,
    )
