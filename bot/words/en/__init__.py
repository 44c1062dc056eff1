"""English. Importing it registers every wording."""

from bot.words.en import common, groups, joining, questions, reports, scores, sessions, versions

__all__ = ["common", "groups", "joining", "questions", "reports", "scores", "sessions", "versions"]
