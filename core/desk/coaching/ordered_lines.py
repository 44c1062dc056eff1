"""What a coach's order in words asks of the lines of a session, and whether a line is so."""

from collections.abc import Iterator, Mapping
from decimal import Decimal
from typing import Any, Final

from core.athletes.values import Profile
from core.desk.coaching.holds import Holds, is_meant, stands_in
from core.desk.coaching.ordering_says import WhyNot
from core.desk.coaching.overseeing import pin_for
from core.desk.sessions.landing import Tried
from core.desk.versions.showing import EVERY_LINE, written_at
from core.movements.lookup import catalogue
from core.movements.values import Pattern
from core.scaling.orders import Pin
from core.scaling.values import Spot, Version, VersionLine
from core.sessions.values import Line
from core.store.records import SessionRecord
from core.understanding.acts import Order

# What an order asks of a line whatever it is like; the others are a step from what is shown.
_ASKS: Final[Mapping[str, Any]] = {
    "out": lambda order: {"without": order.called or order.movement},
    "other": lambda order: {"movement": order.to, "variant": order.way},
    "bare": lambda _: {"bare": True},
    "fewer": lambda _: {"share": 0.75},
    "half": lambda _: {"share": 0.5},
    "load": lambda order: {"load_kg": Decimal(f"{order.amount:g}")},
}
_WHATEVER_IS_THERE: Final[Mapping[str | None, WhyNot]] = {
    "rounds": "rounds",
    "number": "no_number",
    "more": "more",
}
_STEPS: Final = frozenset({"easier", "harder", "written"})


def as_written_there(order: Order, shown: SessionRecord) -> Order:
    """`No rows`, where bent-over rows are all the rows that stand there: these are meant."""
    if order.movement is None or order.called or stands_in(shown, order):
        return order
    written = {line.movement for line in shown.session.every_line}
    called = [one for one in written if one.split()[-1] == order.movement.split()[-1]]
    if len(called) != 1:
        return order
    return order.model_copy(update={"movement": called[0], "called": order.movement})


def alike(order: Order) -> Iterator[Order]:
    """The same with what is called like it: rows may be on a machine, with a bell or under a table."""
    if order.step != "other" or order.to is None or order.movement is None or travels(order.movement):
        return
    called = order.to.split()[-1]
    others = (one.id for one in catalogue().movements if one.id.split()[-1] == called)
    yield from (order.model_copy(update={"to": one}) for one in others if one != order.to)


def travels(movement: str) -> bool:
    return catalogue().movement(movement).pattern is Pattern.TRAVEL


def owns_load(profile: Profile, kg: float) -> bool:
    """Whether they have anything that weighs so much, or can be made to."""
    return any(
        kg in {float(load) for load in one.loads_kg}
        or (one.to_kg is not None and float(one.from_kg or 0) <= kg <= float(one.to_kg))
        for one in profile.equipment or ()
    )


def standing(order: Order) -> dict[str, Pin]:
    """What counts wherever the movement is written; nothing where it is a step from what is shown."""
    asks = _ASKS.get(order.step or "")
    if asks is None or (order.step == "other" and order.movement is None):
        return {}
    return {order.movement or EVERY_LINE: Pin(block=1, line=1, **asks(order))}


def pins_of(order: Order, record: SessionRecord, one: Tried) -> Iterator[tuple[str, Pin]]:
    """Each movement that is written and meant, with what its line becomes."""
    assert isinstance(one.version, Version), "who has no version is not looked at"
    for spot, line in one.version.spots:
        written = written_at(record.session, spot)
        meant = is_meant(order, written) or is_meant(order, line.movement)
        pin = pin_of(order, record, one, spot, line) if meant else None
        if pin is not None:
            yield written, pin


def pin_of(order: Order, record: SessionRecord, one: Tried, spot: Spot, line: VersionLine) -> Pin | None:
    """None where there is no such step, or it would be more than is written."""
    if order.step is not None and order.step in _STEPS:
        return pin_for(record, one, spot, line, order.step)
    asks = _ASKS.get(order.step or "")
    if asks is not None:
        return Pin(**spot._asdict(), **asks(order))
    asked: Line = getattr(record.session.blocks[spot.block - 1], spot.part)[spot.line - 1]
    if order.step == "number":
        return pin_for_number(order, spot, asked)
    written = asked.amount
    if order.step == "less" and written and 0 < (order.amount or 0) < written:
        return Pin(**spot._asdict(), share=1 - (order.amount or 0) / written)
    if order.step != "amount" or order.amount is None or not written or order.amount > written:
        return None
    return Pin(**spot._asdict(), share=order.amount / written)


def pin_for_number(order: Order, spot: Spot, asked: Line) -> Pin | None:
    """`16 not 24`, of the line that has that load or that many; None of all others."""
    new, old = order.amount or 0, order.instead_of
    if old in {float(one) for one in asked.loads_kg}:
        return Pin(**spot._asdict(), load_kg=Decimal(f"{new:g}"))
    is_less = asked.amount == old and 0 < new <= (old or 0)
    return Pin(**spot._asdict(), share=new / asked.amount) if is_less and asked.amount else None


def why_not(order: Order, holds: Holds, pins: Mapping[str, Pin]) -> WhyNot | None:
    """Why nothing can come of an order; None where something can."""
    if pins:
        return None
    if order.step in _WHATEVER_IS_THERE:
        return _WHATEVER_IS_THERE[order.step]
    if order.step is None or (order.step == "other" and order.movement is None):
        return "unclear"
    if holds.record is None:
        return "one_session"
    if order.movement is not None and not stands_in(holds.record, order):
        return "no_line"
    return "more" if order.step in {"amount", "less"} else "no_step"


def work_of(one: Tried) -> list[tuple[Any, ...]]:
    """What they do of each line, whatever it is for."""
    assert isinstance(one.version, Version), "who has no version is not looked at"
    return [
        (line.movement, line.variant, line.implement, line.count, line.load_kg, line.amount, line.scheme)
        for _, line in one.version.spots
    ]


def is_so_already(pin: Pin, line: VersionLine) -> bool:
    """Whether the line is what was ordered by whatever else: their own wish of the day goes first."""
    asks = pin.without is not None or pin.movement is not None or pin.bare
    as_named = is_done_so(pin, line) and not pin.leaves_out(line.movement)
    return asks and as_named and not (pin.bare and line.load_kg)


def is_done_so(pin: Pin, line: VersionLine) -> bool:
    """The movement and the way that are named, where they are."""
    return pin.movement in {None, line.movement} and pin.variant in {None, line.variant}
