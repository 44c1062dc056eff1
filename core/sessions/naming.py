"""Which of several blocks of one kind a block is, so that a reader can tell them apart."""

from collections import Counter
from collections.abc import Sequence

from core.sessions.values import Block


def places(blocks: Sequence[Block]) -> tuple[int | None, ...]:
    """For each block its number among those of its kind; None for the only one."""
    several = {kind for kind, count in Counter(block.kind for block in blocks).items() if count > 1}
    seen = Counter[str]()
    found: list[int | None] = []
    for block in blocks:
        seen[block.kind] += 1
        found.append(seen[block.kind] if block.kind in several else None)
    return tuple(found)
