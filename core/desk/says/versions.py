"""What is said on the way to a personal version."""

from decimal import Decimal

from core.athletes.values import Equipment
from core.desk.outcome import Said
from core.measures import MassUnit
from core.scaling.values import NeedsCoach, Question, Version, Withheld
from core.sessions.values import Session


class Understood(Said):
    """What was just taken from the athlete's words, so that a misreading is seen at once."""

    equipment: tuple[Equipment, ...] | None = None
    limits: tuple[str, ...] | None = None
    unread: tuple[str, ...] = ()
    units: MassUnit = MassUnit.KG


class AskAbout(Said):
    """The next question this session needs. `again`: the last answer could not be read."""

    session: int | None
    question: Question
    units: MassUnit
    understood: Understood | None = None
    again: bool = False


class ShowVersion(Said):
    version_id: int
    session_id: int
    session: Session
    version: Version
    units: MassUnit
    notes: tuple[str, ...] = ()
    understood: Understood | None = None


class NoVersion(Said):
    """No version today, for the athlete's own sake."""

    withheld: Withheld


class CoachNeeded(Said):
    """To the coach: lines of an athlete's version that somebody should look at."""

    athlete: str
    needs: tuple[NeedsCoach, ...]
    units: MassUnit


class NothingPosted(Said):
    """No session is posted yet in the athlete's groups."""


class HowTo(Said):
    """The cue cards of a version: movement and variant ids."""

    variants: tuple[tuple[str, str], ...]


class Me(Said):
    """What is known of the athlete; shown to nobody else."""

    name: str
    equipment: tuple[Equipment, ...] | None
    limits: tuple[str, ...] | None
    body_mass_kg: Decimal | None
    units: MassUnit
    groups: tuple[str, ...]


class AnswerKept(Said):
    """A changed answer was stored."""

    understood: Understood
