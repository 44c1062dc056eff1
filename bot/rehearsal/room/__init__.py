"""The rehearsal room as a page: what one person sees of the stand-in, live, with everything one needs beside it.

`/` is the page, `/room/NAME` its parts, `/room/file/ID` what people sent, `/room/feed` what happens, as server-sent
events (WHATWG HTML, 9.2).
"""

import re
from importlib.resources import files
from typing import TYPE_CHECKING
from urllib.parse import quote

from starlette.requests import Request
from starlette.responses import Response, StreamingResponse
from starlette.routing import Route

from bot.rehearsal.room.feed import feed

if TYPE_CHECKING:
    from bot.rehearsal.platform import Platform

_KINDS = {"html": "text/html", "css": "text/css", "js": "text/javascript"}
_PARTS = frozenset(one.name for one in files(__package__).iterdir() if one.name.endswith((".js", ".css")))
# Nothing from elsewhere: it works without a network, and words that people write can't make it fetch anything.
_ONLY_FROM_HERE = {
    "content-security-policy": (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; media-src 'self'; "
        "connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'"
    ),
    "cache-control": "no-store",
    "referrer-policy": "no-referrer",
    "x-content-type-options": "nosniff",
}
_RANGE = re.compile(r"bytes=(\d+)-(\d*)")
# What a page may show of a file that somebody sent; all else is saved and never opened here.
_SHOWN = {"png": "image/png", "jpg": "image/jpeg", "jpeg": "image/jpeg", "ogg": "audio/ogg"}


async def _page(_: Request) -> Response:
    return _part("page.html")


async def _named(request: Request) -> Response:
    name = request.path_params["name"]
    return _part(name) if name in _PARTS else Response("Not Found", 404)


async def _no_icon(_: Request) -> Response:
    return Response(status_code=204)


def _part(name: str) -> Response:
    content = files(__package__).joinpath(name).read_bytes()
    kind = _KINDS[name.rpartition(".")[2]]
    return Response(content, media_type=f"{kind}; charset=utf-8", headers=_ONLY_FROM_HERE)


def _ranged(request: Request, content: bytes, kind: str, headers: dict[str, str]) -> Response:
    """All of it or the one range that is asked for (RFC 9110, 14): a player looks at the end for how long it is."""
    asked = _RANGE.fullmatch(request.headers.get("range", ""))
    if asked is None or int(asked[1]) >= len(content):
        return Response(content, media_type=kind, headers=headers | {"accept-ranges": "bytes"})
    first, last = int(asked[1]), min(int(asked[2] or len(content)), len(content) - 1)
    told = {"content-range": f"bytes {first}-{last}/{len(content)}"}
    return Response(content[first : last + 1], 206, headers=headers | told, media_type=kind)


def routes(platform: "Platform") -> tuple[Route, ...]:
    async def file(request: Request) -> Response:
        found = platform.files.find(request.path_params["id"])
        if found is None:
            return Response("Not Found", 404)
        kind = _SHOWN.get(found.name.lower().rpartition(".")[2])
        how = "inline" if kind else f"attachment; filename*=UTF-8''{quote(found.name)}"
        headers = _ONLY_FROM_HERE | {"content-disposition": how}
        return _ranged(request, found.content, kind or "application/octet-stream", headers)

    async def happenings(request: Request) -> Response:
        known = request.headers.get("last-event-id") or request.query_params.get("place", "0")
        if not known.isdecimal():
            return Response("a place is a number", 400)
        return StreamingResponse(
            feed(platform, int(known)), media_type="text/event-stream", headers=_ONLY_FROM_HERE
        )

    return (
        Route("/", _page),
        Route("/room/feed", happenings),
        Route("/room/file/{id}", file),
        Route("/room/{name}", _named),
        Route("/favicon.ico", _no_icon),
    )
