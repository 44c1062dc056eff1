"""`bellwether preview SESSION.txt --roster ROSTER.toml`: how a session lands on a group, with no chat."""

from collections.abc import Iterable, Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Annotated, Any

import typer

from bot.commands.console import AsJson, print_aside, print_json, print_text
from bot.commands.given import Gathering, Mistakes, near_of, text_of
from bot.commands.reading import problem_of, session_document
from bot.commands.roster import read_roster
from bot.words.aloud import aloud_words
from bot.words.forecasts import forecast_words, pacing_words
from bot.words.headings import block_heading
from bot.words.reasons import reason_words
from bot.words.text import listed
from bot.words.versions import (
    caution_words,
    eased_words,
    effort_words,
    in_minutes_words,
    in_turn,
    line_words,
    need_words,
    withheld_words,
)
from core.athletes.values import Profile
from core.desk.reference import catalogue
from core.desk.sessions.preview import Made, costs_in_words, expect, read_text, reckon, try_on
from core.errors import InputError
from core.forecast.values import Outlook
from core.measures import MassUnit
from core.notation.values import NotUnderstood, ReadSession
from core.scaling.values import (
    Change,
    Explained,
    GroupLine,
    GroupView,
    Priced,
    Version,
    VersionBlock,
    VersionLine,
    Withheld,
)
from core.sessions.values import Session

Outcome = Version | Withheld

COUNTS = (
    (Change.NONE, "as written"),
    (Change.LOAD, "another load"),
    (Change.IMPLEMENT, "another implement"),
    (Change.VARIANT, "an easier or harder way"),
    (Change.MOVEMENT, "another movement"),
    (Change.AMOUNT, "less of it"),
)
MOST_NAMED = 5


def preview(
    session: Annotated[
        Path, typer.Argument(metavar="SESSION.txt", help="The session as the coach wrote it.")
    ],
    roster: Annotated[Path, typer.Option(metavar="ROSTER.toml", help="The athletes.")],
    as_json: AsJson = False,
    why: Annotated[
        str | None,
        typer.Option(metavar="NAME", help="Tell why each line of this athlete is so, and what was next."),
    ] = None,
) -> None:
    """Show how a session lands on a group: every athlete's version, and the counts.

    What isn't understood of the session is in nobody's version. It is named, and the command then ends with 2.
    What was taken and may not be meant like that is named too.
    """
    read, people = _given(session, roster)
    _show(read, people, why=why, as_json=as_json)
    for doubt in _named_in(session, [one for one in read.unread if one.is_taken]):
        print_aside(str(doubt))
    if left := _named_in(session, [one for one in read.unread if not one.is_taken]):
        raise Mistakes([*left, InputError(str(session), "this is in nobody's version")])


def _show(read: ReadSession, people: list[Profile], *, why: str | None, as_json: bool) -> None:
    assert read.session is not None, "asked before"
    year = datetime.now(tz=UTC).year
    if why is not None:
        print_text("\n".join(_reckoning(read.session, _named(people, why), year)))
        return
    made, view = try_on(read.session, people, year)
    if as_json:
        print_json(
            {
                "session": session_document(read),
                "versions": [_version(*one, year) for one in made],
                "group": _group(view),
            }
        )
    else:
        print_text("\n".join(_pages(made, view, year)))


def _named(people: list[Profile], name: str) -> Profile:
    """The athlete of this name; raises InputError."""
    found = next((one for one in people if one.name.casefold() == name.casefold()), None)
    if found is None:
        near = near_of(name, (one.name for one in people))
        raise InputError("--why", f"nobody called {name} in the roster{near}")
    return found


def _reckoning(session: Session, profile: Profile, year: int) -> Iterator[str]:
    """What was chosen, and what would have been next, with what each point is for."""
    yield f"{profile.name}: points say how far a way is from what you wrote. The fewest are taken."
    for block in reckon(session, profile, year):
        for line in block:
            yield line.written
            yield from _priced("taken", line.chosen)
            yield from _runner_up(line) if line.runner_up else ["  nothing else would do"]


def _runner_up(line: Explained) -> Iterator[str]:
    assert line.runner_up is not None, "asked before"
    yield from _priced("next best", line.runner_up)
    if line.runner_up.cost == line.chosen.cost:
        yield "    as many points: the way that the catalogue has first is taken"
    elif line.runner_up.cost < line.chosen.cost:
        yield "    fewer by itself; beside the other lines it repeats one, or needs another thing in the hands"


def _priced(place: str, one: Priced) -> Iterator[str]:
    yield f"  {place}: {one.what}, {one.cost} {'point' if one.cost == 1 else 'points'}"
    yield from (f"    {points:>3}  {costs_in_words()[entry]}" for entry, points in one.charges.items())


def _given(session: Path, roster: Path) -> tuple[ReadSession, list[Profile]]:
    """Both files; raises InputError naming all that is wrong in either."""
    gathering, people = Gathering(), list[Profile]()
    read = ReadSession(session=None)
    with gathering.one():
        read = _read(session)
    with gathering.one():
        people = read_roster(roster, catalogue())
    if gathering.found:
        gathering.found[:0] = _named_in(session, read.unread)
    gathering.settle()
    return read, people


def _read(path: Path) -> ReadSession:
    """The session; raises InputError where nothing of it is one, naming every line that isn't understood."""
    text = text_of(path)
    read = read_text(text)
    if not text.strip() or not (read.unread or read.session):
        raise InputError(str(path), "no session in it")
    if read.session is None:
        raise Mistakes(_named_in(path, read.unread))
    return read


def _named_in(path: Path, found: Iterable[NotUnderstood]) -> list[InputError]:
    return [InputError(f"{path}, line {one.line}", problem_of(one)) for one in found]


def _version(profile: Profile, outcome: Outcome, year: int) -> dict[str, Any]:
    head: dict[str, Any] = {"athlete": profile.name, "as_written": False, "blocks": [], "cautions": []}
    if isinstance(outcome, Withheld):
        return {**head, "withheld": outcome.because, "cautions": [withheld_words(outcome)], "needs_coach": []}
    return {
        **head,
        "as_written": outcome.as_written,
        "scored": outcome.scored,
        "effort_at_most": outcome.effort_at_most,
        "blocks": [
            _block(block, expected, profile.units)
            for block, expected in zip(outcome.blocks, expect(outcome, profile, year), strict=True)
        ],
        "cautions": [caution_words(one) for one in outcome.cautions],
        "needs_coach": [need_words(one, profile.units) for one in outcome.needs_coach],
    }


def _block(block: VersionBlock, expected: Outlook | None, units: MassUnit) -> dict[str, Any]:
    return {
        "block": block.block,
        "format": block.format,
        "minutes": block.minutes,
        "rounds": block.rounds,
        "scheme": block.scheme,
        "buy_in": [_line(line, units) for line in block.buy_in],
        "lines": [_line(line, units) for line in block.lines],
        "cash_out": [_line(line, units) for line in block.cash_out],
        "forecast": _forecast(expected) if expected else None,
        "pacing": list(pacing_words(expected)) if expected else [],
    }


def _forecast(expected: Outlook) -> dict[str, Any]:
    one = expected.forecast
    edges = {"low": one.low, "expected": one.expected, "high": one.high}
    return {"unit": one.unit} | {name: round(value, 2) for name, value in edges.items()}


def _line(line: VersionLine, units: MassUnit) -> dict[str, Any]:
    return {
        **line.model_dump(exclude={"reason"}),
        "load_moved_kg": _rounded(line.load_moved_kg, 1),
        "unbroken": _rounded(line.unbroken, 1),
        "set_cost": _rounded(line.set_cost, 3),
        "cost_window": line.cost_window and [_rounded(edge, 3) for edge in line.cost_window],
        "because": line.reason.because,
        "reason": reason_words(line, units) or "As written.",
    }


def _rounded(value: float | None, digits: int) -> float | None:
    return None if value is None else round(value, digits)


def _group(view: GroupView) -> dict[str, Any]:
    return {
        "lines": [line.model_dump() for line in view.lines],
        "say": [aloud_words(one) for one in view.say],
    }


def _pages(made: Made, view: GroupView, year: int) -> Iterator[str]:
    """The group first, as the coach speaks to all of them; then everybody's own."""
    yield from _group_page(made, view)
    for profile, outcome in made:
        yield ""
        yield from _page(profile, outcome, year)


def _group_page(made: Made, view: GroupView) -> Iterator[str]:
    yield "The group"
    for line in view.lines:
        yield f"  {line.written}: {_counts(line, made)}"
    if view.withheld:
        yield f"  No session today: {listed([one.athlete for one in view.withheld])}."
    if view.say:
        yield "Worth saying aloud"
        yield from (f"  - {aloud_words(one)}" for one in view.say)


def _page(profile: Profile, outcome: Outcome, year: int) -> Iterator[str]:
    if isinstance(outcome, Withheld):
        yield f"{profile.name}: {withheld_words(outcome)}"
        return
    yield profile.name + _how_it_counts(outcome)
    if not _is_known(profile):
        yield "  Nothing tells yet what this athlete can do: everything here is a guess. Ask before you go by it."
    if outcome.easing is not None and outcome.is_less:
        yield f"  {eased_words(outcome.easing)}."
    if outcome.in_minutes is not None:
        yield f"  {in_minutes_words(outcome)}"
    for block, expected in zip(outcome.blocks, expect(outcome, profile, year), strict=True):
        yield f"  {block_heading(block)}"
        spared = set[str]()
        lines = [line_words(line, profile.units, spared) for line in block.every_line]
        yield from (f"    {words}" for words in in_turn(block, lines))
        yield from _expected(expected)
    if outcome.effort_at_most is not None:
        yield f"  Effort {effort_words(outcome.effort_at_most)}. Rest whenever you like."
    yield from (f"  Take care: {caution_words(one)}" for one in outcome.cautions)
    yield from (f"  For the coach: {need_words(one, profile.units)}" for one in outcome.needs_coach)


def _expected(outlook: Outlook | None) -> Iterator[str]:
    """What a block comes to, where that is known nearly enough, and how to pace it."""
    if outlook is None or not outlook.is_to_pace_by:
        return
    plan = outlook.is_telling and outlook.forecast.is_to_plan_with
    range_ = [f"{forecast_words(outlook.forecast)}."] if plan else []
    told = [*range_, *pacing_words(outlook)]
    yield from [f"    {'Expected' if range_ else 'Pace'}: {' '.join(told)}"] if told else []


def _is_known(profile: Profile) -> bool:
    return bool(profile.evidence or profile.skills or profile.experience or profile.learned)


def _how_it_counts(version: Version) -> str:
    return ": as written" if version.is_exact else ": counts as written" if version.as_written else ""


def _counts(line: GroupLine, made: Made) -> str:
    """`8 as written, another load for Ilse and Bo`: by name, as long as they are few."""
    counts = []
    for change, words in COUNTS:
        names = _names(line, change, made)
        named = change is not Change.NONE and len(names) <= MOST_NAMED
        counts += [f"{words} for {listed(names)}" if named else f"{len(names)} {words}"] if names else []
    return ", ".join(counts + ([f"nothing safe for {listed(line.nobody)}"] if line.nobody else []))


def _names(line: GroupLine, change: Change, made: Made) -> list[str]:
    return [
        profile.name
        for profile, outcome in made
        if isinstance(outcome, Version)
        for one in outcome.blocks[line.block - 1].lines
        if one.line == line.line and one.change is change
    ]
