"""What counts as written: exactly what the coach wrote, or as near to it as the coach lets count."""

from collections.abc import Iterable
from decimal import Decimal

from core.scaling.values import Change, Version, VersionBlock, VersionLine
from core.scaling.ways import SAME_LOAD
from core.scores.values import Tolerance
from core.sessions.values import Block, Session

MAY_COUNT = {Change.NONE, Change.LOAD, Change.IMPLEMENT}


def counts_as_written(session: Session, blocks: Iterable[VersionBlock], tolerance: Tolerance) -> bool:
    """Whether a version is ranked as written: every line is, in all of the time that was written."""
    made = tuple(blocks)
    lines = (line for block in made for line in block.every_line)
    return all(line_counts(line, tolerance) for line in lines) and not _is_shortened(session, made)


def block_counts(written: Block, made: VersionBlock, tolerance: Tolerance) -> bool:
    """Whether one block of a version is as written: what is eased elsewhere says nothing of it."""
    return (
        all(line_counts(line, tolerance) for line in made.every_line) and minutes_had(written, made) is None
    )


# So many of a block's lines being other movements make it other work (estimate).
_OTHER_WORK = 0.5


def is_other_work(made: VersionBlock) -> bool:
    """Whether so much was done otherwise that more of it says nothing: other movements, or rest instead."""
    others = [line.change in {Change.MOVEMENT, Change.REST} for line in made.lines]
    return bool(others) and sum(others) >= _OTHER_WORK * len(others)


def judged(session: Session, version: Version, tolerance: Tolerance) -> Version:
    """The version as it counts under another tolerance."""
    as_written = version.easing is None and counts_as_written(session, version.blocks, tolerance)
    return version.model_copy(update={"as_written": as_written, "tolerance": tolerance})


def line_counts(line: VersionLine, tolerance: Tolerance) -> bool:
    """As written, heavier as the coach allowed it, or within the tolerance."""
    if line.change is Change.NONE:
        return True
    if line.change not in MAY_COUNT or (line.change is Change.IMPLEMENT and not tolerance.other_implement):
        return False
    return _is_heavy_enough(line, tolerance.lighter_percent)


def _is_heavy_enough(line: VersionLine, lighter_percent: int) -> bool:
    if line.written_kg is None:
        return line.load_kg is None
    if line.load_kg is None:
        return False
    least = line.written_kg * (100 - lighter_percent) / 100
    return line.load_kg * (line.count or 1) >= least * (1 - Decimal(str(SAME_LOAD)))


def minutes_had(written: Block, made: VersionBlock) -> float | None:
    """How long the block is on a day that is shorter than it; None where nothing was taken off."""
    if made.minutes != written.minutes:
        return made.minutes
    if made.cap_s != written.cap_s and made.cap_s is not None:
        return made.cap_s / 60
    return None


def _is_shortened(session: Session, made: tuple[VersionBlock, ...]) -> bool:
    return any(
        minutes_had(written, one) is not None
        or (written.scored and (one.rounds, one.scheme) != (written.rounds, written.scheme))
        for one, written in zip(made, session.blocks, strict=True)
    )
