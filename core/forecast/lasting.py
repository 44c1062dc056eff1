"""How long a version's block takes, scored or not."""

from core.forecast.clock import ends_of
from core.forecast.doing import Done, in_order, rounds_of
from core.forecast.people import People
from core.scaling.values import Change, VersionBlock
from core.sessions.values import Format

# Where nobody says: how long to work up to a weight, to breathe between sets, and how many at a time (estimates).
TO_WORK_UP_S, TO_BREATHE_S, SOME = 720.0, 60.0, 10.0


def seconds_of(block: VersionBlock, people: People) -> float:
    """How long the block takes, with its rests: by its clock, or as long as the middle of the people takes."""
    ends_s = None if block.format is Format.FOR_TIME else ends_of(block)
    if ends_s is not None:
        return ends_s + (block.rest_s or 0.0) * (block.format is not Format.INTERVALS)
    if block.format is Format.MAX_LOAD:
        return TO_WORK_UP_S
    done = Done(_as_usual(block), people)
    rest_s = TO_BREATHE_S if block.rest_s is None and block.format is Format.SETS else block.rest_s or 0.0
    for work, round_reps in in_order(done, tuple(rounds_of(block))):
        done.line(work, round_reps or SOME)
        done.change()
        if work is done.lines[-1]:
            done.floor.rest(rest_s)
    took = float(done.floor.time[0])
    return took if block.cap_s is None else min(took, block.cap_s)


def _as_usual(block: VersionBlock) -> VersionBlock:
    """Without the lines of which nothing is done."""
    return block.model_copy(
        update={
            str(name): tuple(line for line in lines if line.change is not Change.REST)
            for name, lines in block.parts
        }
    )
