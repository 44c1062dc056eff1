"""What happens, told to a page as it happens: each event is one JSON document."""

import json
from collections.abc import AsyncIterator
from typing import TYPE_CHECKING, Any

from bot.rehearsal.acts import cast, read_clock, scenes, told
from bot.rehearsal.chats import Json

if TYPE_CHECKING:
    from bot.rehearsal.platform import Platform

_AT_ONCE = 400
_LOOKS_S = 0.4


async def feed(platform: "Platform", place: int) -> AsyncIterator[str]:
    """`happened` from `place` in the diary on, its id the place to go on from; and what changed of all else.

    `room`: whose diary it is, and how much stands in it; `cast`, `clock`, `scenes`, `backstage`: as the acts of these
    names tell them.
    """
    yield _event("room", {"id": platform.id, "entries": len(platform.diary.entries)})
    known: dict[str, Any] = {}
    while True:
        entries = platform.diary.entries[place : place + _AT_ONCE]
        place += len(entries)
        for name, now in (await _around(platform)).items():
            if known.get(name) != _changes_of(name, now):
                known[name] = _changes_of(name, now)
                yield _event(name, now)
        if entries:
            yield _event("happened", [told(entry) for entry in entries], place)
        else:
            await platform.diary.wait_beyond(place, _LOOKS_S)


async def _around(platform: "Platform") -> Json:
    return {
        "cast": cast(platform),
        "clock": read_clock(platform),
        "scenes": scenes(platform),
        "backstage": await platform.backstage.state() if platform.backstage else None,
    }


def _changes_of(name: str, now: Any) -> Any:
    """A running clock is no news; that it was set is."""
    return (now["runs"], now["version"]) if name == "clock" else now


def _event(name: str, document: Any, place: int | None = None) -> str:
    told_at = "" if place is None else f"id: {place}\n"
    return f"{told_at}event: {name}\ndata: {json.dumps(document)}\n\n"
