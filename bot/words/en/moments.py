"""English for moments and spans of time."""

from datetime import datetime

from bot.words.text import escape, listed
from core.desk.classes.says import ClassDate


def city(zone: str) -> str:
    """`America/New_York` -> `New York`."""
    return zone.rsplit("/", 1)[-1].replace("_", " ")


def short(moment: datetime) -> str:
    """`Tue 3 March 18:30`."""
    return f"{moment:%a} {moment.day} {moment:%B %H:%M}"


def here(one: ClassDate) -> str:
    return f"{short(one.starts)}, {city(one.zone)} time"


def everywhere(one: ClassDate) -> str:
    """HTML: a moment that the app shows on each reader's own clock, and where it can't, on the group's."""
    return f'<tg-time unix="{int(one.starts.timestamp())}" format="wDt">{escape(here(one))}</tg-time>'


def moment_beside(moment: datetime, other: datetime) -> str:
    """`at 17:30`, or with its day where that is another."""
    return f"at {moment:%H:%M}" if moment.date() == other.date() else f"on {short(moment)}"


def span(minutes: int) -> str:
    """`45 minutes`, `2 hours`, `1 hour and 30 minutes`, `2 days`."""
    days, rest = divmod(minutes, 24 * 60)
    hours, left = divmod(rest, 60)
    parts = [(days, "day"), (hours, "hour"), (left, "minute")]
    return (
        listed([f"{count} {unit}{'s' if count != 1 else ''}" for count, unit in parts if count])
        or "0 minutes"
    )
