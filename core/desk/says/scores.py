"""What is said about scores, and the scoreboard in the group."""

from datetime import date

from core.desk.outcome import Said
from core.scores.values import Board, Score


class ScoreNoted(Said):
    """What was understood, and where it stands: rank `rank` of `of`, or None where it isn't ranked."""

    score_id: int
    score: Score
    text: str
    rank: int | None
    of: int
    corrected: bool = False
    for_whom: str | None = None


class AskScore(Said):
    """The one thing to settle before a score is stored. `meant`: the session, where a yes settles it."""

    ask: str
    meant: int | None = None


class ScoreTakenBack(Said):
    pass


class AskScoreAgain(Said):
    """The athlete wants to put a score right."""


class NotForScore(Said):
    """Today's session isn't scored."""


class Scoreboard(Said):
    session_id: int
    title: str | None
    day: date
    boards: tuple[tuple[int, Board], ...]


class NoScoresYet(Said):
    pass
