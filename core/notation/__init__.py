"""What people type -> values of the core, and back. The only part that knows slang."""

from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.notation.talk.chat import is_like_a_score, is_like_a_session
from core.notation.values import Corrected, NotUnderstood, ReadSession

__all__ = [
    "Corrected",
    "NotUnderstood",
    "ReadSession",
    "is_like_a_score",
    "is_like_a_session",
    "read_score",
    "read_session",
]
