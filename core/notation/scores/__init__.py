"""An athlete's words -> Score. Nothing is guessed silently: what isn't sure comes with its one question."""

from core.notation.scores.parts import PartScore, read_parts
from core.notation.scores.reading import read_score

__all__ = ["PartScore", "read_parts", "read_score"]
