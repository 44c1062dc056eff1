"""A weight out of what every household has, for a line that asks for one and an athlete without any."""

from decimal import Decimal

from core.athletes.household import HOUSEHOLD
from core.athletes.values import Profile
from core.movements.lookup import Catalogue
from core.movements.values import Movement
from core.scaling.values import Improvised
from core.sessions.values import Line, Session

BAG = HOUSEHOLD["bag"]


def improvised(session: Session, profile: Profile, catalogue: Catalogue) -> Improvised | None:
    """The first line that a bag would do for, where no weight is known to be there; None where there is one.

    Whoever was never asked counts as well: not asked is not "you don't have it".
    """
    if any(catalogue.implement(one.implement).kind == "held" for one in profile.equipment or ()):
        return None
    fitting = (
        line
        for line in session.every_line
        if line.loads_kg and _takes_a_bag(catalogue.movement(line.movement))
    )
    line = next(fitting, None)
    return None if line is None else Improvised(movement=line.movement, load_kg=_load(line, profile))


def _takes_a_bag(movement: Movement) -> bool:
    return any(hold.implement == BAG.implement for way in movement.variants for hold in way.holds)


def _load(line: Line, profile: Profile) -> Decimal:
    """What is written for them, as far as a bag goes, in whole kilos."""
    assert BAG.to_kg is not None, "a bag is filled"
    written = line.loads_kg[min(profile.meant_pair, len(line.loads_kg)) - 1]
    return min(BAG.to_kg, max(Decimal(1), written.quantize(Decimal(1))))
