"""What each line of a version cost, and why it beat the runner-up: so that anybody can argue with the table."""

from collections.abc import Iterator

from core.athletes.values import Profile
from core.movements.lookup import Catalogue
from core.scaling.athlete import Athlete
from core.scaling.blocks import Chosen, chosen_blocks
from core.scaling.easing import NO_CUT, Cut
from core.scaling.options import options_of
from core.scaling.orders import Orders
from core.scaling.values import Explained, Priced
from core.scaling.works import Option
from core.sessions.values import Session


def explained(
    session: Session,
    profile: Profile,
    catalogue: Catalogue,
    orders: Orders,
    *,
    year: int | None = None,
    cut: Cut = NO_CUT,
) -> tuple[tuple[Explained, ...], ...]:
    """For every block, what its lines cost by themselves, and what would have been next; in the order of the lines.

    Of the same choice that a version is made of; nothing for a block that `cut` leaves out. Repeated neighbours and
    changes of what is held may count beside that. Raises UnknownMovement.
    """
    athlete = Athlete(profile, catalogue, session.date.year if session.date else year)
    blocks = chosen_blocks(session, athlete, orders, catalogue, cut=cut)
    return tuple(tuple(_lines(one)) for one in blocks)


def _lines(chosen: Chosen) -> Iterator[Explained]:
    for row, option in chosen.done:
        others = options_of(row.plan, row.athlete, chosen.orders)
        next_ = next((one for one in others if _name(one) != _name(option)), None)
        yield Explained(written=row.plan.written, chosen=_priced(option), runner_up=next_ and _priced(next_))


def _priced(option: Option) -> Priced:
    return Priced(
        what=_name(option), cost=option.cost, charges={charge.entry: charge.points for charge in option.bill}
    )


def _name(option: Option) -> str:
    if option.way is None:
        return "rest"
    held = ""
    if option.hold is not None and option.load is not None:
        two = "" if option.hold.count == 1 else f"{option.hold.count} x "
        held = f", {two}{option.load.kg:f} kg {option.hold.implement}"
    amount = "" if option.part == 1 else f", {option.part:.0%} of the amount"
    return f"{option.way.variant.label}{held}{amount}"
