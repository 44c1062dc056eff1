"""Two people and one thing: they start on different lines, or take turns."""

from core.athletes.values import Equipment, Profile
from core.scaling.values import Turn, VersionBlock, VersionLine
from core.sessions.values import Format

# Where everybody goes round the lines on their own, so that each may begin at another.
GOES_ROUND = {Format.AMRAP, Format.FOR_TIME, Format.INTERVALS, Format.QUALITY}


def turn_of(block: VersionBlock, profile: Profile) -> Turn | None:
    """How a shared thing is come by in this block; None where none is used.

    Both read the same lines in the same order, so the one whose name comes first begins with the thing.
    """
    shared = [one for one in profile.equipment or () if one.shared_with is not None]
    thing = next((one for one in shared if any(_uses(line, one) for line in block.every_line)), None)
    if thing is None or thing.shared_with is None:
        return None
    uses = [_uses(line, thing) for line in block.lines]
    turn = Turn(
        implement=thing.implement,
        shared_with=thing.shared_with,
        settings=thing.from_kg is not None or thing.to_kg is not None,
    )
    if block.format not in GOES_ROUND or block.rounds == 1 or all(uses) or not any(uses):
        return turn
    with_it = uses.index(True) + 1
    without_it = _next_without(uses, with_it)
    is_first = profile.name.casefold() <= thing.shared_with.casefold()
    mine, theirs = (with_it, without_it) if is_first else (without_it, with_it)
    return turn.model_copy(update={"begin": mine, "they_begin": theirs})


def _uses(line: VersionLine, thing: Equipment) -> bool:
    if line.implement != thing.implement or line.load_kg is None:
        return False
    if thing.loads_kg:
        return line.load_kg in thing.loads_kg
    return thing.to_kg is not None and line.load_kg <= thing.to_kg


def _next_without(uses: list[bool], start: int) -> int:
    """The place of the next line, going round, that leaves the thing alone."""
    after = [*range(start, len(uses)), *range(start)]
    place: int = next(place for place in after if not uses[place])
    return place + 1
