"""Words for what everybody gets of a session, and for why somebody needs the coach."""

from collections import defaultdict
from collections.abc import Sequence

from bot.words.text import bullets, fill, listed
from bot.words.versions import what_words
from bot.words.wording import Worded, wording
from core.desk.sessions.says import InNeed, WhoGetsWhat
from core.measures import MassUnit
from core.scaling.values import Because, Change, NeedsCoach, VersionLine

A_HANDFUL = 5


def in_four_words(one: InNeed) -> str:
    """Why somebody needs the coach, as short as it goes; what a limit is stays with the athlete."""
    if one.held:
        return "held for your OK"
    return _first(one.first) if one.first else "for your OK"


def by_why(needs: Sequence[InNeed]) -> str:
    """`Edda (another kind instead); Noor and Tam (only light things)`: who needs the coach, for each reason once.

    A handful by name, the gravest first; of a large group the others are counted.
    """
    told = "; ".join(f"{listed(names)} ({why})" for why, names in names_by_why(needs[:A_HANDFUL]).items())
    more = len(needs) - A_HANDFUL
    return f"{told}; and {more} more" if more > 0 else told


def rows_by_why(needs: Sequence[InNeed]) -> list[str]:
    """`another kind instead of “10 pull-ups”: Bo, Finn and 12 more`: for each reason a handful; HTML."""
    names: dict[tuple[str, str | None], list[str]] = defaultdict(list)
    for one in needs:
        names[in_four_words(one), None if one.held or not one.first else one.first.written].append(one.name)
    return [
        fill("{names}: {why}", names=a_handful(some), why=f"{why} (“{line}”)" if line else why)
        for (why, line), some in names.items()
    ]


def a_handful(names: Sequence[str]) -> str:
    """The first few by name, the others counted; plain text."""
    more = len(names) - A_HANDFUL
    return listed([*names[:A_HANDFUL], f"{more} more"] if more > 1 else [*names])


def names_by_why(needs: Sequence[InNeed]) -> dict[str, list[str]]:
    names: dict[str, list[str]] = defaultdict(list)
    for one in needs:
        names[in_four_words(one)].append(one.name)
    return names


def _first(need: NeedsCoach) -> str:
    if need.written is None:
        return "for your OK"
    if need.suits_kg is not None:
        return "only heavier things"
    if need.change is Change.REST:
        return "nothing safe there"
    if need.change is Change.MOVEMENT:
        return "another kind instead"
    return {
        Because.TOO_LIGHT: "only light things",
        Because.UNKNOWN_HEAVY: "untried so heavy",
    }.get(need.because, "for a closer look")


@wording("en", WhoGetsWhat)
def who_gets_what(said: WhoGetsWhat) -> Worded:
    parts = [
        fill("<b>{written}</b>\n", written=line.written) + bullets(_ways(line.each, said.units))
        for line in said.lines
    ]
    return Worded("\n\n".join(parts))


def _ways(each: Sequence[tuple[str, VersionLine]], units: MassUnit) -> list[str]:
    """Each way with who gets it; as written first, then what most get."""
    names: dict[tuple[bool, str], list[str]] = defaultdict(list)
    for name, line in each:
        same = line.change is Change.NONE
        names[not same, "as written" if same else what_words(line, units)].append(name)
    ways = sorted(names.items(), key=lambda one: (one[0][0], -len(one[1])))
    return [fill("{what}: {names}", what=what, names=listed(some)) for (_, what), some in ways]
