"""What is there to lean on or hang from, and how high it is."""

from decimal import Decimal
from typing import NamedTuple

from core.movements.lookup import Catalogue
from core.movements.values import Variant
from core.scaling.gear import Gear


class Support(NamedTuple):
    """What a variant leans on. `there` is False where something it needs is missing."""

    implement: str | None = None
    height_cm: Decimal | None = None
    there: bool = True


NOTHING = Support()


def support_of(variant: Variant, gear: Gear, catalogue: Catalogue) -> Support:
    """Of the things that a variant needs, the first that is there; none is there where any is missing."""
    thing, *more = map(gear.first_of, variant.needs)
    if thing is None or None in more:
        return Support(there=False)
    return Support(thing, _height_cm(thing, gear, catalogue) if variant.body_share.by_height else None)


def _height_cm(thing: str, gear: Gear, catalogue: Catalogue) -> Decimal | None:
    told, usual = gear.height_cm(thing), catalogue.implement(thing).height_cm
    return told if told is not None else Decimal(str(usual.value)) if usual else None
