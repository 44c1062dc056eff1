"""What is said about how a session felt."""

from core.desk.outcome import Said
from core.scores.values import Hurt
from core.sessions.values import Session


class AskEffort(Said):
    session: int


class AskPart(Said):
    """One part is scored; what of the other? `part`: its number in the session, from 1."""

    session: int
    written: Session
    part: int


class EffortNoted(Said):
    """Told again, once all else about the session was told."""

    effort: int


class AskHurt(Said):
    session: int


class AskWhere(Said):
    """Where it hurts, so that it can be spared."""

    session: int


class HurtNoted(Said):
    hurt: Hurt


class NothingSpared(Said):
    """They said that nothing needs sparing."""
