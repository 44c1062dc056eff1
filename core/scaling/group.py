"""How a session lands on a whole group, and what is worth saying aloud."""

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence

from core.scaling.values import (
    Because,
    Change,
    Gets,
    GroupLine,
    GroupView,
    Instead,
    Say,
    Spot,
    Version,
    VersionLine,
    Withheld,
)

# A coach says two or three things aloud, no more, and nothing that concerns one person alone.
MOST_SAID = 3
FEWEST_TO_SAY = 2
# Of what they do instead so many ways are named: who hears five remembers none.
MOST_INSTEAD = 2
UNSAID = {Because.AS_WRITTEN, Because.COACH, Because.ONE_SETTING, Because.LIGHT_DUTY, Because.NOTED}

FIELDS = {
    Change.NONE: "as_written",
    Change.LOAD: "load",
    Change.IMPLEMENT: "implement",
    Change.VARIANT: "variant",
    Change.MOVEMENT: "movement",
    Change.AMOUNT: "amount",
    Change.REST: "rest",
}


def view_of(outcomes: Sequence[Version | Withheld]) -> GroupView:
    """The group view of versions of one session, in the order of its lines."""
    versions = [outcome for outcome in outcomes if isinstance(outcome, Version)]
    by_line: dict[tuple[int, int], list[tuple[str, VersionLine]]] = defaultdict(list)
    for version in versions:
        for block in version.blocks:
            for line in () if block.is_left_out else block.lines:
                by_line[block.block, line.line].append((version.athlete, line))
    return GroupView(
        lines=tuple(_count(place, lines) for place, lines in by_line.items()),
        say=_worth_saying(by_line, len(versions)),
        withheld=tuple(outcome for outcome in outcomes if isinstance(outcome, Withheld)),
    )


def gets_of(outcomes: Sequence[Version | Withheld]) -> tuple[Gets, ...]:
    """What everybody gets of each line, in the order of the lines."""
    versions = [outcome for outcome in outcomes if isinstance(outcome, Version)]
    by_line: dict[Spot, list[tuple[str, VersionLine]]] = defaultdict(list)
    for version in versions:
        for spot, line in version.spots:
            by_line[spot].append((version.athlete, line))
    return tuple(Gets(written=each[0][1].written, each=tuple(each)) for each in by_line.values())


def _count(place: tuple[int, int], lines: Sequence[tuple[str, VersionLine]]) -> GroupLine:
    counts = Counter(FIELDS[line.change] for _, line in lines)
    nobody = tuple(athlete for athlete, line in lines if line.change is Change.REST)
    block, number = place
    return GroupLine(block=block, line=number, written=lines[0][1].written, nobody=nobody, **counts)


def _worth_saying(
    by_line: dict[tuple[int, int], list[tuple[str, VersionLine]]], athletes: int
) -> tuple[Say, ...]:
    """The reasons that most people share, the commonest first."""
    found = [
        Say(
            block=block,
            line=number,
            written=lines[0][1].written,
            because=because,
            about=about,
            names=tuple(name for name, _ in theirs),
            of=athletes,
            instead=_instead([line for _, line in theirs]),
        )
        for (block, number), lines in by_line.items()
        for (because, about), theirs in _by_reason(lines).items()
        if len(theirs) >= FEWEST_TO_SAY
    ]
    return tuple(sorted(found, key=lambda say: -len(say.names))[:MOST_SAID])


def _by_reason(
    lines: Iterable[tuple[str, VersionLine]],
) -> dict[tuple[Because, str | None], list[tuple[str, VersionLine]]]:
    theirs: dict[tuple[Because, str | None], list[tuple[str, VersionLine]]] = defaultdict(list)
    for athlete, line in lines:
        if line.reason.because not in UNSAID:
            theirs[line.reason.because, line.reason.about].append((athlete, line))
    return theirs


def _instead(lines: Iterable[VersionLine]) -> tuple[Instead, ...]:
    """What most of them do, and with what: that answers whoever asks what else will do."""
    by_way: dict[tuple[str, str], list[VersionLine]] = defaultdict(list)
    for line in lines:
        if line.change is not Change.REST:
            by_way[line.movement, line.variant].append(line)
    commonest = sorted(by_way.items(), key=lambda one: -len(one[1]))[:MOST_INSTEAD]
    return tuple(_with_loads(*way, some) for way, some in commonest)


def _with_loads(movement: str, variant: str, lines: Iterable[VersionLine]) -> Instead:
    loads = [line.load_kg for line in lines if line.load_kg is not None]
    lightest, heaviest = min(loads, default=None), max(loads, default=None)
    return Instead(movement=movement, variant=variant, lightest_kg=lightest, heaviest_kg=heaviest)
