"""How long a session is, as far as it says so itself."""

from core.sessions.values import Block, BlockKind, Session

_A_MINUTE_S = 60


def minutes_of(session: Session) -> tuple[float | None, bool]:
    """The minutes of its scored parts, and whether they are only the most there is; None where one tells none."""
    blocks = [one for one in session.blocks if one.kind in {BlockKind.MAIN, BlockKind.STRENGTH}]
    told = [_minutes(one) for one in blocks or session.blocks]
    capped = any(one.minutes is None and one.every_s is None for one in blocks)
    known = [one for one in told if one is not None]
    return (sum(known), capped) if known and len(known) == len(told) else (None, False)


def _minutes(block: Block) -> float | None:
    if block.minutes is not None:
        return block.minutes
    if block.every_s is not None and block.rounds is not None:
        return block.rounds * block.every_s / _A_MINUTE_S
    return None if block.cap_s is None else block.cap_s / _A_MINUTE_S
