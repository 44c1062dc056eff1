"""What is said about how a session felt."""

from core.desk.outcome import Said
from core.scores.values import Hurt


class AskEffort(Said):
    session: int


class AskHurt(Said):
    session: int


class AskWhere(Said):
    """Where it hurts, so that it can be spared."""

    session: int


class HurtNoted(Said):
    hurt: Hurt


class NothingSpared(Said):
    """They said that nothing needs sparing."""
