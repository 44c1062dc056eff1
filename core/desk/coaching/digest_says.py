"""What is said to a coach of a day: who trained, who looked, who was in class, and what is so far."""

from datetime import date

from core.desk.classes.says import ClassDate
from core.desk.joining.says import Arriving
from core.desk.outcome import Said
from core.values import Value


class Trained(Value):
    """Somebody's scores of a session, in words."""

    name: str
    scores: tuple[str, ...]
    scaled: bool


class SessionDigest(Value):
    """What became of a session. `opened`: saw their version, told nothing yet. `unseen`: who didn't open it.

    `pains`: name and words of those who share such notes; `pain_count`: of everybody. `changed`: a later post took
    its place. `withdrawn`: its coach took it back.
    """

    title: str | None
    trained: tuple[Trained, ...]
    opened: tuple[str, ...]
    unseen: tuple[str, ...]
    pains: tuple[tuple[str, str], ...]
    pain_count: int
    changed: bool = False
    withdrawn: bool = False


class ClassDigest(Value):
    """Who of those signed up was there, was not, or hasn't told."""

    date: ClassDate
    there: tuple[str, ...]
    missing: tuple[str, ...]
    untold: tuple[str, ...]


class ClassSignUps(Value):
    """Who is signed up for a date of a class. `others`: who isn't, where these were asked about."""

    date: ClassDate
    names: tuple[str, ...]
    others: tuple[str, ...] = ()


class WhoIsIn(Said):
    """To a coach who asks: sign-ups of a day, who looked at their version, who told a score."""

    group: str
    day: date
    today: bool
    classes: tuple[ClassSignUps, ...]
    sessions: tuple[SessionDigest, ...]


class WhoTrained(Said):
    """To a coach who asks of a week: names with the days on which they told a score, and who told none.

    `last`: it is the week before this one.
    """

    group: str
    last: bool
    trained: tuple[tuple[str, int], ...]
    none: tuple[str, ...]


class Digest(Said):
    """The evening digest of a group.

    `needs`: athletes whose version needs the coach; `stopped`: who have none for now, as their answers decided.
    `words`: name, and what they said for their coach. `above`: whose last six scores are all far above what was
    expected of them. `strained`: for whom it was nearly all they had, as a beginner or twice in a row.
    `so_far`: asked for before the evening.
    """

    group: str
    day: date
    sessions: tuple[SessionDigest, ...]
    classes: tuple[ClassDigest, ...]
    needs: tuple[str, ...]
    arriving: Arriving
    stopped: tuple[str, ...] = ()
    words: tuple[tuple[str, str], ...] = ()
    above: tuple[str, ...] = ()
    strained: tuple[str, ...] = ()
    so_far: bool = False
