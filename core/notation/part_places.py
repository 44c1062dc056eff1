"""Which block of a session people mean by a part: the second one, B, the last."""

import re
from typing import Final

from core.notation.part_labels import LAST, Part, find_part
from core.notation.text import plain
from core.sessions.values import BlockKind, Session

_AROUND: Final = frozenset({BlockKind.WARM_UP, BlockKind.COOL_DOWN})


def block_of(part: Part, session: Session) -> int | None:
    """The index of the block that is called so; None where there is none. A warm-up is no part that people count."""
    scored = [index for index, block in enumerate(session.blocks) if block.scored]
    if part.number == LAST:
        return scored[-1] if scored else None
    at, parts = part.number - 1, parts_of(session)
    if not part.of_scored and at < len(parts) and parts[at] in scored:
        return parts[at]
    return scored[at] if at < len(scored) else None


def parts_of(session: Session) -> list[int]:
    """The indices of the blocks that are counted as parts; all where there is nothing else."""
    found = [index for index, block in enumerate(session.blocks) if block.kind not in _AROUND]
    return found or list(range(len(session.blocks)))


def part_alone(text: str, session: Session) -> int | None:
    """The index of the block in `part 2`, `the second one`; None where more is told, or no part of the session."""
    named = find_part(plain(text).lower().strip(" .!"))
    return block_of(named[0], session) if named and not re.search(r"[0-9]", named[1]) else None


def place_of(block: int, session: Session) -> int:
    """Which part people call a block, from 1."""
    parts = parts_of(session)
    return (parts.index(block) if block in parts else block) + 1
