"""A session with less to do: fewer minutes, rounds, sets or repetitions, and the same loads."""

from math import floor

from core.athletes.values import Easing
from core.measures import AmountUnit
from core.sessions.values import Block, BlockKind, Format, Line, Session
from core.values import Value

# Getting warm and calming down are no work to leave out.
KEPT = {BlockKind.WARM_UP, BlockKind.COOL_DOWN}

# Amounts that are done once are told in such steps.
ROUND_TO = {AmountUnit.METRES: 50, AmountUnit.SECONDS: 5}
MINUTE, LONG_S = 60, 180
# Of so many minutes people take off five at a time.
MANY_S, BY_FIVES = 1200, 300


class Cut(Value):
    """A share of each block for want of time, 0 for one that is left out; empty where there is time for all."""

    shares: tuple[float, ...] = ()

    def of(self, place: int) -> float:
        return self.shares[place] if self.shares else 1.0


NO_CUT = Cut()


def eased(session: Session, easing: Easing) -> Session:
    """The session with this share of its work. What is done for as much as goes stays: effort says how hard."""
    return in_shares(session, shares_of(session, easing))


def shares_of(session: Session, easing: Easing | None, cut: Cut = NO_CUT) -> tuple[float, ...]:
    """How much of each block is done; all of one that is left out, as none of it will be."""
    eased_by = 1.0 if easing is None else easing.share
    return tuple(
        (1.0 if block.kind in KEPT else eased_by) * (cut.of(place) or 1.0)
        for place, block in enumerate(session.blocks)
    )


def in_shares(session: Session, shares: tuple[float, ...]) -> Session:
    """The session with such a share of each block."""
    blocks = (
        block if share == 1 else _eased(block, share)
        for block, share in zip(session.blocks, shares, strict=True)
    )
    return session.model_copy(update={"blocks": tuple(blocks)})


def _eased(block: Block, share: float) -> Block:
    """Less of the first of these that the block has: turns, minutes, a scheme, rounds; else of every line."""
    once = {part: _less(getattr(block, part), share) for part in ("buy_in", "cash_out")}
    block = block.model_copy(update=once)
    if block.minutes is not None:
        return block.model_copy(update={"minutes": _minutes(block, block.minutes, share)})
    if block.scheme:
        return block.model_copy(update={"scheme": tuple(_part(reps, share) for reps in block.scheme)})
    if block.rounds is not None and block.rounds > 1:
        return block.model_copy(update={"rounds": _part(block.rounds, share)})
    if (
        block.kind in KEPT
        or block.format in {Format.FOR_TIME, Format.TIME_TRIAL}
        or _is_one_long_piece(block)
    ):
        return block.model_copy(update={"lines": _less(block.lines, share)})
    return block


def _is_one_long_piece(block: Block) -> bool:
    """Whether it is ten easy minutes of something, or the like."""
    return all(line.unit is AmountUnit.SECONDS and (line.amount or 0) >= LONG_S for line in block.lines)


def _minutes(block: Block, minutes: float, share: float) -> float:
    """Whole minutes; of turns as many as make whole cycles, one at least."""
    if block.every_s is None:
        return float(_part(minutes, share))
    stations = [line.station for line in block.lines if line.station is not None]
    cycle = max((*stations, *block.rest_stations), default=1) * block.every_s / MINUTE
    return max(1, floor(minutes * share / cycle + 1e-9)) * cycle


def _less(lines: tuple[Line, ...], share: float) -> tuple[Line, ...]:
    return tuple(
        line.model_copy(
            update={
                "amount": _amount(line, line.amount, share),
                "amount_to": _amount(line, line.amount_to, share),
                "second_amount": _amount(line, line.second_amount, share),
            }
        )
        for line in lines
    )


def _amount(line: Line, amount: float | None, share: float) -> float | None:
    if amount is None:
        return None
    minutes = line.unit is AmountUnit.SECONDS and amount >= LONG_S
    step = (BY_FIVES if amount >= MANY_S else MINUTE) if minutes else ROUND_TO.get(line.unit, 1)
    return float(max(step * round(amount * share / step), min(step, amount)))


def _part(count: float, share: float) -> int:
    """A half begun counts, and one is always left."""
    return max(1, floor(count * share + 0.5))
