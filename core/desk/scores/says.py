"""What is said about scores, what counts as written, and the scoreboard in the group."""

from collections.abc import Mapping
from datetime import date, datetime
from decimal import Decimal
from typing import ClassVar, Literal

from core.athletes.values import Complaint, Equipment, Side
from core.desk.outcome import Said
from core.forecast.values import Progress, Trend
from core.measures import MassUnit
from core.notation.body.sides import joints_in, read_sides
from core.scaling.values import VersionLine
from core.scores.values import Board, Mark, Score, Tolerance
from core.values import Value


class ScoreNoted(Said):
    """What was understood, and where it stands: rank `rank` of `of`, or None where it isn't ranked.

    `unseen`: they have no version of the session, so nobody knows how it was done. `in_group`: everybody
    reads it, as there is no private chat. `part`: its number, as people
    call it, where several are scored. `group`: its title, for who belongs to several. `title`, `day`: of the
    session that it is of. `apart`: it was other work than was written, and has no place among the others. `is_best`:
    better than every time before that they did the same. `again`: they told a score of this session before.
    """

    score_id: int
    score: Score
    text: str
    rank: int | None
    of: int
    corrected: bool = False
    unseen: bool = False
    in_group: bool = False
    part: int | None = None
    for_whom: str | None = None
    group: str | None = None
    title: str | None = None
    day: date | None = None
    apart: bool = False
    is_best: bool = False
    again: bool = False

    @property
    def hurting(self) -> Mapping[str, Side | None]:
        """The joints that their words name as hurting, by their limits, each with its side where that is told."""
        pain = self.score.pain or ""
        sides = read_sides(pain)
        return {joint: sides.get(joint) for joint, _ in joints_in(pain)}


class ScoreNeedsConsent(Said):
    """A score of somebody who didn't agree to anything being kept: it isn't. `of`: whose it is, if a coach told it."""

    group: int
    in_group: bool
    of: str | None = None


class ScoreNeedsAge(Said):
    """A score of somebody who didn't say yet that they are an adult. `of`: as in ScoreNeedsConsent."""

    of: str | None = None


class ScoreEntered(Said):
    """To the athlete: somebody entered a score for them."""

    score_id: int
    by: str
    text: str


class ScoreJudged(Said):
    """To the athlete: a coach took their score out, or lets it count again."""

    text: str
    by: str
    counts: bool


class JudgeScores(Said):
    """To the coach: the scores of a session, to look at one by one. `scores`: id, and what to show of it."""

    group: int
    title: str | None
    scores: tuple[tuple[int, str], ...]


class ScoreCard(Said):
    """To the coach: one score with its history, on their clock. `earlier`: what was said before, oldest first."""

    score_id: int
    name: str
    text: str
    typed: str
    by: str
    counts: bool
    earlier: tuple[str, ...]
    markings: tuple[tuple[Mark, str, datetime], ...]


class AskScore(Said):
    """The one thing to settle before a score is stored. `name`: whose, where it isn't one's own.

    `meant`: the session, where a yes settles it. `choices`: the readings, or `parts` the parts of `session` from 1,
    one of which is meant.
    """

    ask: str
    name: str | None = None
    meant: int | None = None
    session: int | None = None
    choices: tuple[str, ...] = ()
    parts: tuple[int, ...] = ()


class AskToReplace(Said):
    """A second score came for the same session; which one counts is asked. `name`: whose, where it isn't one's own."""

    session: int
    name: str | None = None
    before: str
    now: str


class AskWhose(Said):
    """A coach told a score: is it `name`'s, or (None) the coach's own? Nothing is kept before the yes.

    `title`, `day`: of the session that it is of, where that isn't today's.
    """

    session: int
    text: str
    name: str | None = None
    title: str | None = None
    day: date | None = None


class ScoreOfOne(Value):
    """What became of what a coach told of one person beside others, in `words`: `text` is the score that was read.

    `state`: noted; a change of `before`, or not sure, until the coach says so; the same as before; of which part isn't
    told; no score that can be read; nothing of them may be kept yet, or nobody is called so.
    """

    name: str
    state: Literal["noted", "change", "same", "part", "how_far", "unclear", "no_consent", "no_age", "unknown"]
    words: str
    text: str = ""
    before: str | None = None
    part: int | None = None
    scaled: bool = False
    score_id: int | None = None


class ScoresTogether(Said):
    """The scores of several people that a coach told in one message. `word`: where the message is kept, for a tap.

    `block`: of which part the coach said that they are; `parts`: block and number of those it may be. `like`: a score
    of this session.
    """

    rows: tuple[ScoreOfOne, ...]
    session: int
    word: int
    block: int | None
    parts: tuple[tuple[int, int], ...]
    like: str
    title: str | None
    day: date
    group: str

    def of(self, *states: str) -> tuple[ScoreOfOne, ...]:
        return tuple(one for one in self.rows if one.state in states)


class AskWhichIsOff(Said):
    """To the coach: several scores of one athlete stand, and one was to be taken off."""

    athlete: str
    person: int
    session: int
    scores: tuple["CountingScore", ...]


class NobodyCalled(Said):
    """A coach told a score of somebody, or of several, whom the group doesn't have."""

    names: tuple[str, ...]
    group: str


class AskWhatWeighs(Said):
    """Somebody without a version told a weight and nothing more: a thing's, a score or (`may_be_own`) theirs."""

    session: int
    kg: Decimal
    units: MassUnit
    may_be_own: bool


class ScoreLeft(Said):
    """What was asked about a score came to nothing. `words`: the score, where it was let go unanswered.

    `unknown`: they can't tell it.
    """

    words: str | None = None
    unknown: bool = False


class NoSuchScore(Said):
    """There is no score that could be taken away. `athlete`: of whom a coach spoke; None: the visitor's own."""

    athlete: str | None = None


class OffTheBoard(Said):
    """To the athlete: their score is no longer on the board, and they keep it."""


class NoPartForIt(Said):
    """`words`: what was told beside scores of parts, and is of no part that is scored."""

    words: tuple[str, ...]


class CountingScore(Value):
    """One of somebody's scores, in words. `part`: from 1, where the session has several."""

    score_id: int
    text: str
    part: int | None


class ScoreTakenBack(Said):
    """`text`, `part`: what went."""

    text: str
    part: int | None = None


class AskWhichGoes(Said):
    """Several things were told that may be wrong: scores that count, and `pains` of today."""

    scores: tuple[CountingScore, ...]
    pains: tuple[Complaint, ...] = ()
    group: int = 0


class SomebodyElses(Said):
    """What was told of somebody else is theirs to tell. `own`: the speaker told of themselves beside it."""

    words: str
    own: bool


class AskScoreAgain(Said):
    """The athlete wants to put a score right. `title`, `day`: of its session; `like`: how it may be told."""

    title: str | None
    day: date
    like: str


class NotForScore(Said):
    """Today's session isn't scored."""


class Eased(Value):
    """What was otherwise in the version of one on the board; `part`: its number, as people call it."""

    part: int
    name: str
    lines: tuple[VersionLine, ...]


class Scoreboard(Said):
    """The ranking of every part, by its number.

    `eased`: of everybody scaled, what it was; loads in `units`. `judge`: to the coach in private, who may look at
    the scores one by one. `group`: for who belongs to several.
    """

    session_id: int
    title: str | None
    day: date
    boards: tuple[tuple[int, Board], ...]
    eased: tuple[Eased, ...] = ()
    units: MassUnit = MassUnit.KG
    judge: bool = False
    group: str | None = None


class SessionChoice(Value):
    """A session to choose among others; `group`: the title of its group, where they are of several.

    `like`: how a score of it is told, which tells apart what has no title.
    """

    session: int
    day: date
    title: str | None
    like: str
    group: str | None = None


class AskWhichScore(Said):
    """What they typed may be a score of any of these sessions."""

    sessions: tuple[SessionChoice, ...]


class NoScoresYet(Said):
    """Nobody is on the board. `own`: the asker told a score, without a rank; `unranked`: so many did, to the coach.

    `judge`: to the coach, of the session of that `title`.
    """

    own: bool = False
    unranked: int = 0
    judge: bool = False
    title: str | None = None


class AskTolerance(Said):
    """To the coach: what counts as written in the group now, and what else may."""

    group: int
    title: str
    tolerance: Tolerance


class ToleranceSet(Said):
    """To the coach: what counts from now on. `moved`: so many scores of the last day changed their place."""

    title: str
    tolerance: Tolerance
    moved: int


class PastScore(Value):
    """A score that counts, and the lines of the athlete's version that it is of."""

    on: date
    score: Score
    lines: tuple[VersionLine, ...]


class ToldProgress(Said):
    """To an athlete: whether they get better, what came again, and what they are thought to be able to do."""

    stands_alone: ClassVar[bool] = True

    progress: Progress
    scores: int
    units: MassUnit


class HowTheyDo(Said):
    """To a coach who asks how one of theirs is doing: the latest scores in the coach's groups, the newest first.

    `owns`: what they have at home; None where they never told. `gently`: they start gently; why is theirs alone.
    `trend`: None while too few can be compared. `session_id`: one that they have a version of, to look at.
    """

    athlete: str
    person: int
    scores: tuple[tuple[date, Score], ...]
    trend: Trend | None
    session_id: int | None
    units: MassUnit
    owns: tuple[Equipment, ...] | None = None
    gently: bool = False


class PastScores(Said):
    """To an athlete who asked what they did before, the newest first; `movement`: the one that was asked about."""

    movement: str | None
    scores: tuple[PastScore, ...]
    units: MassUnit
