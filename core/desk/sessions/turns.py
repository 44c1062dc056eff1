"""How often each line of a session comes up, and which does so more often after a change that didn't name it."""

from core.desk.sessions.says import MoreOften
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.writing import write_line
from core.sessions.values import Block, Line, Session

MINUTE_S = 60


def more_often(before: Session, after: Session, units: MassUnit) -> MoreOften | None:
    """The first line that is as it was, and has more turns, as another line that took turns with it is gone.

    None where the coach changed how long or how often all of it goes.
    """
    for old, new in zip(before.blocks, after.blocks, strict=False):
        if len(new.lines) >= len(old.lines) or turns_of(old) != turns_of(new):
            continue
        had = {line.movement: times(old, line) for line in old.lines}
        for line in new.lines:
            was, now = had.get(line.movement), times(new, line)
            if was is not None and now > was:
                return MoreOften(line=write_line(line, units, catalogue()), was=was, now=now)
    return None


def turns_of(block: Block) -> int:
    """All turns of a block by the clock; 0 where there are none."""
    if not block.every_s:
        return 0
    return int(block.rounds or (block.minutes or 0) * MINUTE_S // block.every_s)


def times(block: Block, line: Line) -> int:
    """How often a line comes up: in each turn, or in that of its station."""
    if line.station is None:
        return turns_of(block)
    stations = (one.station or 0 for one in block.lines)
    cycle = max((*stations, *block.rest_stations))
    return (turns_of(block) - line.station) // cycle + 1
