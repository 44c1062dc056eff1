"""`bellwether classes CLASSES.toml --from DATE --to DATE`: dates of classes, and everybody's reminders."""

from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Annotated, Any
from zoneinfo import ZoneInfo

import typer

from bot.commands.class_file import read_classes
from bot.commands.console import AsJson, print_json, print_text
from core.desk.classes.timetable import Meeting, Reminded, meetings, reminders
from core.errors import InputError


def classes(
    file: Annotated[Path, typer.Argument(metavar="CLASSES.toml", help="The classes, and who is reminded.")],
    first: Annotated[str, typer.Option("--from", metavar="DATE", help="The first class-local date.")],
    last: Annotated[str, typer.Option("--to", metavar="DATE", help="The last one, inclusive.")],
    as_json: AsJson = False,
) -> None:
    """Show when classes take place between two dates, and when each athlete is reminded."""
    begins, ends = _day(first, "--from"), _day(last, "--to")
    if begins > ends:
        raise InputError("--to", f"{last} comes before {first}")
    given = read_classes(file)
    held = meetings(given.classes, begins, ends)
    due = list(reminders(held, given.athletes))
    if as_json:
        print_json(
            {"occurrences": [_meeting(one) for one in held], "reminders": [_reminder(one) for one in due]}
        )
    else:
        print_text("\n".join(_lines(held, due)))


def _day(text: str, place: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise InputError(place, f"{text!r} is no date like 2026-03-02") from None


def _meeting(one: Meeting) -> dict[str, Any]:
    return {
        "class": one.of.title,
        "local": _local(one.occurrence.local),
        "utc": _utc(one.occurrence.starts),
        "minutes": one.of.minutes,
        "link": one.of.link,
    }


def _reminder(one: Reminded) -> dict[str, Any]:
    due = one.reminder.due
    return {
        "athlete": one.athlete,
        "class": one.meeting.of.title,
        "due_utc": due and _utc(due),
        "local": due and _local(_wall(due, one)),
        "moved": one.reminder.moved,
        "starts_utc": _utc(one.meeting.occurrence.starts),
    }


def _wall(moment: datetime, one: Reminded) -> datetime:
    return moment.astimezone(ZoneInfo(one.habits.zone)).replace(tzinfo=None)


def _local(moment: datetime) -> str:
    return moment.isoformat(timespec="seconds" if moment.second else "minutes")


def _utc(moment: datetime) -> str:
    return f"{_local(moment.astimezone(UTC).replace(tzinfo=None))}Z"


def _lines(held: tuple[Meeting, ...], due: list[Reminded]) -> Iterator[str]:
    if not held:
        yield "No class between these dates."
    for one in held:
        yield f"{one.occurrence.local:%a %Y-%m-%d %H:%M} {one.of.zone}  {one.of.title}, {one.of.minutes} min"
        yield from (f"    {_told(reminded)}" for reminded in due if reminded.meeting is one)


def _told(one: Reminded) -> str:
    if one.reminder.due is None:
        return f"{one.athlete} isn't reminded: {one.reminder.moved}"
    when = f"{_wall(one.reminder.due, one):%a %H:%M} {one.habits.zone}"
    moved = f", moved {one.reminder.moved}" if one.reminder.moved else ""
    return f"{one.athlete} is reminded {when}{moved}"
