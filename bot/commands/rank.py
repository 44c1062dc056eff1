"""`bellwether rank FILE.json`: a scoreboard and team totals from scores in a file."""

import re
from collections.abc import Iterator
from decimal import Decimal
from typing import Annotated, Any

import typer
from pydantic import BaseModel, ConfigDict, Field, ValidationError

from bot.commands.console import AsJson, print_json, print_text
from bot.commands.given import Mistakes, problems, text_of
from core.desk.sessions.trial import board_of
from core.errors import InputError
from core.scores.values import Board, Entry, Score
from core.sessions.values import Format

Count = Annotated[int, Field(ge=0, le=1_000_000)]
Amount = Annotated[float, Field(ge=0, le=10_000_000, allow_inf_nan=False)]


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", strict=True)


class ScoreRow(_Strict):
    """One score of the file; every field but `name` may be left out or null."""

    name: Annotated[str, Field(min_length=1)]
    team: str | None = None
    scaled: bool | None = None
    rounds: Count | None = None
    reps: Count | None = None
    seconds: Amount | None = None
    load_kg: Amount | None = None
    capped: bool | None = None

    def entry(self) -> Entry:
        load = None if self.load_kg is None else Decimal(str(self.load_kg))
        unit = "kg" if load is not None else "s" if self.seconds is not None else "reps"
        score = Score(
            value=None,
            unit=unit if self.rounds is None else "rounds",
            rounds=self.rounds,
            reps=self.reps,
            seconds=self.seconds,
            load_kg=load,
            capped=bool(self.capped),
            scaled=bool(self.scaled),
        )
        return Entry(name=self.name, team=self.team or None, score=score)


class RankFile(_Strict):
    format: Annotated[Format, Field(strict=False)]
    cap_s: Annotated[float, Field(gt=0, allow_inf_nan=False)] | None = None
    scores: list[ScoreRow]


def rank(
    file: Annotated[str, typer.Argument(metavar="FILE.json", help="The scores; - is standard input.")],
    as_json: AsJson = False,
) -> None:
    """Rank scores: as written before scaled, finished before capped, level ones share a rank."""
    given = read_rank_file(text_of(file), file)
    board = board_of(given.format, [row.entry() for row in given.scores], given.cap_s)
    if as_json:
        print_json(board_document(board))
    else:
        print_text("\n".join(_lines(board)))


def read_rank_file(text: str, file: str = "") -> RankFile:
    """The scores of a text, which stands in `file`. Raises InputError naming every entry that is wrong."""
    try:
        return RankFile.model_validate_json(text)
    except ValidationError as error:
        raise Mistakes(
            [
                InputError(", ".join(filter(None, [file, _place(steps, words)])), words)
                for steps, words in problems(error, RankFile)
            ]
        ) from None


def _place(steps: tuple[str, ...], words: str) -> str:
    """`score 3, reps`, `cap_s`, or the line where the text stops being JSON."""
    match steps:
        case ("scores", number):
            return f"score {number}"
        case ("scores", number, field, *_):
            return f"score {number}, {field}"
    broken = re.search("at line ([0-9]+)", words)
    return steps[0] if steps else f"line {broken[1] if broken else 1}"


def board_document(board: Board) -> dict[str, Any]:
    """The JSON form of a scoreboard."""
    return {
        "table": [
            {"rank": place.rank, "name": place.name, "text": place.text, "scaled": place.score.scaled}
            for place in board.places
        ],
        "teams": [team.model_dump() for team in board.teams],
    }


def _lines(board: Board) -> Iterator[str]:
    for place in board.places:
        scaled = "  (scaled)" if place.score.scaled else ""
        yield f"{place.rank:>3}. {place.name}  {place.text}{scaled}"
    if board.teams:
        yield ""
    for team in board.teams:
        points = f"{team.points} {'point' if team.points == 1 else 'points'}"
        yield f"{team.rank:>3}. {team.team}  {points}: {', '.join(team.names)}"
