"""Words for the scoreboard, and for what somebody did before."""

from collections.abc import Mapping

from bot.words.text import bullets, fill, plural
from bot.words.versions import mark_words, what_words
from bot.words.wording import Button, Row, Worded, wording
from core.desk.commands import SeeScores
from core.desk.profile.commands import SaveScores
from core.desk.scores.says import (
    NoScoresYet,
    PastScore,
    PastScores,
    Scoreboard,
)
from core.measures import MassUnit
from core.scores.values import Board, Place, Score


@wording("en", NoScoresYet)
def no_scores_yet(said: NoScoresYet) -> Worded:
    if said.own:
        return Worded(
            "Nobody is on the board so far. Yours is noted; it has no rank this time, and doesn't need one."
        )
    if said.unranked:
        told = "One score was" if said.unranked == 1 else f"{said.unranked} scores were"
        return Worded(
            f"Nobody is on the board so far. {told} told without a rank; the evening's digest has them."
        )
    if said.judge:
        of = fill(" for “{title}”", title=said.title) if said.title else ""
        return Worded(f"No scores yet{of}. They write theirs to me, or you do: <i>Ilse got 7+12</i>.")
    return Worded("No scores yet. Be the first: just write me yours.")


@wording("en", Scoreboard)
def scoreboard(said: Scoreboard) -> Worded:
    title = said.title or f"{said.day:%A, %-d %B}"
    shown = [(number, board) for number, board in said.boards if board.places]
    where = f" · {said.group}" if said.group else ""
    parts = [fill("<b>Scoreboard · {title}{where}</b>", title=title, where=where)]
    if not shown:
        parts.append("No scores yet.")
    for number, board in shown:
        if len(said.boards) > 1:
            parts.append(fill("<i>Part {number}</i>", number=number))
        parts.append(ranking(board, marks_of(said, number)))
    return Worded("\n\n".join(parts), (judging(said.session_id),) if said.judge else ())


@wording("en", PastScores)
def past_scores(said: PastScores) -> Worded:
    if not said.scores:
        what = f"with {plural(said.movement)} " if said.movement else ""
        return Worded(fill("I know of no score of yours {what}so far.", what=what))
    head = (
        f"Your last scores with {plural(said.movement)}:"
        if said.movement
        else "Your last scores, the newest first:"
    )
    return Worded(fill("{head}\n", head=head) + bullets([past_score(one, said.units) for one in said.scores]))


def past_score(one: PastScore, units: MassUnit) -> str:
    """`24 November: 7 rounds + 12, scaled (10 push-ups, 12 goblet squats @ 10 kg)`; HTML."""
    of = f" ({', '.join(what_words(line, units) for line in one.lines)})" if one.lines else ""
    return fill(
        "{day}: {score}{kind}{of}",
        day=f"{one.on:%-d %B}",
        score=one.score.in_words(units),
        kind=", scaled" if one.score.scaled else "",
        of=of,
    )


BEHIND = "Scaled <i>(placed after everybody who did it as written)</i>"


def ranking(board: Board, marks: Mapping[str, str]) -> str:
    """As written first, then scaled with what was lighter, each under its own heading; other work has no place."""
    placed = [place for place in board.places if place.rank is not None]
    written = [place for place in placed if not place.score.scaled]
    scaled = [place for place in placed if place.score.scaled]
    apart = [place for place in board.places if place.rank is None]
    groups = [
        ("As written", written),
        (BEHIND if written else "Scaled", scaled),
        ("Other work, no place", apart),
    ]
    return "\n\n".join(f"{head}\n{rows(places, marks)}" for head, places in groups if places)


def rows(places: list[Place], marks: Mapping[str, str]) -> str:
    return "\n".join(
        fill(
            "{rank} {name}  {score}{short}{mark}",
            rank="•" if place.rank is None else f"{place.rank}.",
            name=place.name,
            score=place.text,
            short=short_day(place.score),
            mark=f" · {marks[place.name]}" if marks.get(place.name) else "",
        )
        for place in places
    )


# More of them would hide the score.
MARKED = 2


def marks_of(said: Scoreboard, part: int) -> dict[str, str]:
    """By name, what was lighter: `hands on a chair, 10 kg dumbbell`."""
    return {
        one.name: ", ".join(dict.fromkeys(mark_words(line, said.units) for line in one.lines[:MARKED]))
        for one in said.eased
        if one.part == part
    }


def short_day(score: Score) -> str:
    """A score of less time than the others had must not look like one of all of it."""
    return "" if score.minutes is None else f" (had {score.minutes:g} min)"


def judging(session_id: int) -> Row:
    look = Button("Look at the scores", SeeScores(session=session_id))
    return look, Button("As a file", SaveScores(session=session_id))
