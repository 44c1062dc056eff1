"""English. Importing it registers every wording."""

from bot.words.en import (
    adjusting,
    classes,
    common,
    dates,
    digest,
    groups,
    joining,
    overseeing,
    own,
    questions,
    reminders,
    reports,
    scores,
    sessions,
    today,
    versions,
)

__all__ = [
    "adjusting",
    "classes",
    "common",
    "dates",
    "digest",
    "groups",
    "joining",
    "overseeing",
    "own",
    "questions",
    "reminders",
    "reports",
    "scores",
    "sessions",
    "today",
    "versions",
]
