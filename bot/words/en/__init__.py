"""English. Importing it registers every wording."""

from bot.words.en import (
    classes,
    common,
    dates,
    digest,
    groups,
    joining,
    questions,
    reminders,
    reports,
    scores,
    sessions,
    versions,
)

__all__ = [
    "classes",
    "common",
    "dates",
    "digest",
    "groups",
    "joining",
    "questions",
    "reminders",
    "reports",
    "scores",
    "sessions",
    "versions",
]
