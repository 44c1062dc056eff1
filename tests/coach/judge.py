"""What coaches would sign: their cases, each judged by the version that `bellwether preview` makes of it."""

import re
import sys
import tempfile
import tomllib
from collections import Counter
from collections.abc import Iterable, Sequence
from functools import cache
from pathlib import Path
from typing import Any, Literal, NamedTuple

from bot.commands.roster import read_roster
from bot.words.versions import what_words
from core.athletes.circumstances import in_circumstances
from core.athletes.values import Profile
from core.desk.sessions.preview import read_text
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.scaling.costs import Costs
from core.scaling.values import Change, Version, VersionLine, Withheld
from core.scaling.version import version_for
from core.sessions.values import Block, Line, Session

HERE = Path(__file__).parent
TUNING, UNTOUCHED = HERE / "tuning", HERE / "untouched"

# The year in which the cases were written: it tells how old somebody is.
YEAR = 2026

Answer = dict[str, Any]
Outcome = Literal["signed", "refused", "never"]


class Case(NamedTuple):
    """One line of a session for one athlete: what a coach would sign, any of several, and what none would."""

    id: str
    kind: str
    who: str
    athlete: str
    session: str
    line: str
    accept: list[Answer]
    never: list[Answer]
    why: str


class Verdict(NamedTuple):
    """How a case came out; `line` is what the athlete was given, None where there is no session for them.

    A session that can't be read is refused.
    """

    case: Case
    outcome: Outcome
    line: VersionLine | None


@cache
def cases_in(folder: Path) -> tuple[Case, ...]:
    """Every case of a folder, in the order of its files."""
    return tuple(case for file in sorted(folder.glob("*.toml")) for case in cases_of(file))


def cases_of(file: Path) -> list[Case]:
    return [Case(**row) for row in tomllib.loads(file.read_text(encoding="utf-8"))["case"]]


def judged(cases: Iterable[Case], table: Costs | None = None) -> list[Verdict]:
    """The verdict of each case, with these points or with those of the table."""
    return [_judge(case, table) for case in cases]


def share(verdicts: Sequence[Verdict]) -> float:
    """How many of a hundred are signed."""
    return 100 * sum(one.outcome == "signed" for one in verdicts) / len(verdicts)


def table_of(verdicts: Sequence[Verdict]) -> list[tuple[str, str]]:
    """Rows to print: per kind of person, then all together."""
    kinds = dict.fromkeys(one.case.kind for one in verdicts)
    rows = [(kind, _counted([one for one in verdicts if one.case.kind == kind])) for kind in sorted(kinds)]
    return [*rows, ("all together", _counted(verdicts))]


def _counted(verdicts: Sequence[Verdict]) -> str:
    counts = Counter(one.outcome for one in verdicts)
    return f"{counts['signed']} of {len(verdicts)} signed, {counts['never']} never"


def _judge(case: Case, table: Costs | None) -> Verdict:
    profile, session = athlete_of(case.athlete), block_of(case.session, case.line)
    if session is None:
        return Verdict(case, "refused", None)
    made = version_for(session, in_circumstances(profile), catalogue(), year=YEAR, table=table)
    line = _line(made, case.line)
    return Verdict(case, outcome_of(case, line), line)


def outcome_of(case: Case, line: VersionLine | None) -> Outcome:
    """What a coach says to a line."""
    if any(_matches(answer, line) for answer in case.never):
        return "never"
    return "signed" if any(_matches(one, line) for one in case.accept) else "refused"


@cache
def athlete_of(text: str) -> Profile:
    """The athlete, read as from the roster of a preview."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder, "roster.toml")
        file.write_text(f'[[athlete]]\nname="Ilse"\n{text}', encoding="utf-8")
        return read_roster(file, catalogue())[0]


@cache
def session_of(text: str) -> Session | None:
    return read_text(text).session


@cache
def block_of(text: str, words: str) -> Session | None:
    """Of a session the block with the line that is meant: no other has a say in it. None for what can't be read."""
    session = session_of(text)
    if session is None:
        return None
    return session.model_copy(update={"blocks": (max(session.blocks, key=lambda one: _said(one, words)),)})


def _said(block: Block, words: str) -> tuple[bool, int]:
    return max((likeness(line.written, words) for line in _lines(block)), default=(False, 0))


def _lines(block: Block) -> tuple[Line, ...]:
    return (*block.buy_in, *block.lines, *block.cash_out)


def likeness(written: str, words: str) -> tuple[bool, int]:
    """Whether a written text holds these words, or else how many of them."""
    wanted, there = set(words.casefold().split()), set(written.casefold().split())
    return words.casefold() in written.casefold(), len(wanted & there)


def _line(made: Version | Withheld, words: str) -> VersionLine | None:
    """The line of the version that is meant."""
    if isinstance(made, Withheld):
        return None
    return max((line for _, line in made.spots), key=lambda line: likeness(line.written, words))


def _matches(answer: Answer, line: VersionLine | None) -> bool:
    """Whether a line is one of the answers that are meant: keys that are left out don't matter."""
    if line is None or line.change is Change.REST:
        return bool(re.search(answer.get("movement", ""), "rest")) and not answer.keys() - {"movement"}
    return (
        bool(re.search(answer.get("movement", ""), f"{line.movement} {line.variant}"))
        and _is_thing(answer.get("implement"), line)
        and _is_within(answer.get("load_kg"), [] if line.load_kg is None else [float(line.load_kg)])
        and _is_within(answer.get("amount"), line.scheme or ([] if line.amount is None else [line.amount]))
    )


def _is_thing(implement: str | None, line: VersionLine) -> bool:
    if implement == "none":
        return line.load_kg is None and line.count is None
    return implement in {None, line.implement}


def _is_within(bounds: Sequence[float] | None, found: Sequence[float]) -> bool:
    return bounds is None or any(bounds[0] <= one <= bounds[1] for one in found)


def table() -> list[tuple[str, str]]:
    """Rows for the benchmarks: the tuning half per kind of person, and of the untouched half the figures alone."""
    tuning, untouched = judged(cases_in(TUNING)), judged(cases_in(UNTOUCHED))
    return [
        *((f"coaches, tuning: {kind}", told) for kind, told in table_of(tuning)),
        *((f"coaches, untouched: {kind}", told) for kind, told in table_of(untouched)),
    ]


def main() -> None:
    """Prints the figures of both halves; with `-v` every case of the tuning half that isn't signed, and what it got.

    More words print only the tuning cases that hold one of them in their id or kind, signed or not.
    """
    words = [word for word in sys.argv[1:] if word != "-v"]
    tuning = judged(cases_in(TUNING))
    for one in tuning:
        asked = any(word in f"{one.case.id} {one.case.kind}" for word in words)
        if asked or (not words and "-v" in sys.argv and one.outcome != "signed"):
            _say(one)
    for name, verdicts in (("tuning", tuning), ("untouched", judged(cases_in(UNTOUCHED)))):
        for kind, told in table_of(verdicts) if not words else ():
            sys.stdout.write(f"{name:9} {kind:30} {told}\n")


def _say(verdict: Verdict) -> None:
    case, line = verdict.case, verdict.line
    given = "no session" if line is None else what_words(line, MassUnit.KG)
    because = "" if line is None else f" [{line.reason.because}]"
    sys.stdout.write(
        f"{verdict.outcome.upper()} {case.id} ({case.kind}): {case.who}\n  {case.line!r} -> {given}{because}\n"
        f"  why: {case.why}\n  accept: {case.accept}\n  never: {case.never}\n"
    )


if __name__ == "__main__":
    main()
