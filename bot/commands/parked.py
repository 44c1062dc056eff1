"""`bellwether parked` and `bellwether replay`: what was given up, and trying it anew."""

import asyncio
from collections.abc import Mapping, Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Annotated, Any

import typer

from bot.commands.console import AsJson, print_json, print_text
from bot.settings import database_of_settings
from core.desk.post_office import GivenUp, ParkedItem, Store
from core.desk.upkeep import DatabaseTrouble, must_be_current
from core.errors import InputError

Database = Annotated[
    str | None, typer.Option(help="The database; without it, the one of BELLWETHER_DATABASE.")
]
_SHOWN = 120


def parked(database: Database = None, as_json: AsJson = False) -> None:
    """List what was given up: updates that couldn't be handled, and letters that couldn't be delivered.

    What people wrote is only shown with --json.
    """
    updates, letters = asyncio.run(_found(place_of(database)))
    if as_json:
        print_json({"updates": [asdict(one) for one in updates], "letters": [asdict(one) for one in letters]})
    elif not updates and not letters:
        print_text("Nothing was given up.")
    else:
        print_text("\n".join([*map(update_line, updates), *map(letter_line, letters)]))


def replay(
    what: Annotated[
        list[str] | None, typer.Argument(help="As `bellwether parked` names them: update-7, letter-12.")
    ] = None,
    everything: Annotated[bool, typer.Option("--all", help="All that was given up.")] = False,
    database: Database = None,
) -> None:
    """Try anew what was given up. A bot that runs on the database takes it up within seconds."""
    if bool(what) == everything:
        raise InputError("replay", "name what to try anew, such as letter-12, or say --all.")
    wanted = None if everything else _wanted(what or [])
    done = asyncio.run(_replayed(place_of(database), wanted))
    missing = sorted(set(what or []) - set(done))
    if missing:
        raise InputError(
            missing[0],
            "is not among what was given up (`bellwether parked` lists that), or its file was let go since.",
        )
    print_text(f"Trying anew: {', '.join(done)}." if done else "Nothing was given up.")


def update_line(one: ParkedItem) -> str:
    """One parked update, for people: who waits where, and why; not what they said."""
    kind = next((name for name in one.body if name != "update_id"), "update").replace("_", " ")
    return f"update-{one.id}: {kind} of {one.received_at:%Y-%m-%d %H:%M} UTC in chat {one.lane}: {_cut(one.error)}"


def letter_line(one: GivenUp) -> str:
    """One letter that wasn't delivered, for people."""
    when = f"{one.created_at:%Y-%m-%d %H:%M} UTC"
    return f"letter-{one.id}: {one.purpose} of {when} to chat {one.address}: {_cut(one.why)}"


def _cut(why: str | None) -> str:
    words = " ".join((why or "no reason known").split())
    return words if len(words) <= _SHOWN else f"{words[:_SHOWN]}..."


def place_of(database: str | None) -> str:
    """The database that is meant. Raises DatabaseTrouble where there is none, InputError for one of another version."""
    place = database or database_of_settings()
    if "://" not in place and not Path(place).is_file():
        raise DatabaseTrouble(
            str(Path(place).absolute()),
            "there is no such file. --database or BELLWETHER_DATABASE names another.",
        )
    must_be_current(place)
    return place


def _wanted(what: Sequence[str]) -> Mapping[str, list[int]]:
    found: dict[str, list[int]] = {"update": [], "letter": []}
    for name in what:
        kind, _, number = name.partition("-")
        if kind not in found or not number.isdecimal() or len(number) > 18:  # noqa: PLR2004 - as ids are
            raise InputError(name, "should be like update-7 or letter-12.")
        found[kind].append(int(number))
    return found


async def _found(place: str) -> tuple[list[ParkedItem], list[GivenUp]]:
    async with Store(place) as store, store.reading() as unit:
        return await unit.inbox.parked(), await unit.undelivered.all()


async def _replayed(place: str, wanted: Mapping[str, list[int]] | None) -> list[str]:
    def ids(kind: str) -> Any:
        return None if wanted is None else wanted[kind]

    async with Store(place) as store, store.unit() as unit:
        updates = await unit.inbox.replay(ids("update"))
        letters = await unit.undelivered.replay(ids("letter"))
    return [*(f"update-{one}" for one in updates), *(f"letter-{one}" for one in letters)]
