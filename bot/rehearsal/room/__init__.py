"""The rehearsal room as a plain page: all chats of the stand-in, live, with everything one needs beside it."""

from importlib.resources import files

from starlette.requests import Request
from starlette.responses import Response
from starlette.routing import Route

_KINDS = {"html": "text/html", "css": "text/css", "js": "text/javascript"}
_NAMES = ("page.html", "room.css", "room.js", "drawing.js", "clock.js")
# Nothing from elsewhere: it works without a network, and words that people write can't make it fetch anything.
_ONLY_FROM_HERE = {"content-security-policy": "default-src 'self'", "cache-control": "no-store"}


async def _page(_: Request) -> Response:
    return _file("page.html")


async def _part(request: Request) -> Response:
    name = request.path_params["name"]
    return _file(name) if name in _NAMES else Response("Not Found", 404)


async def _no_icon(_: Request) -> Response:
    return Response(status_code=204)


def _file(name: str) -> Response:
    content = files(__package__).joinpath(name).read_bytes()
    kind = _KINDS[name.rpartition(".")[2]]
    return Response(content, media_type=f"{kind}; charset=utf-8", headers=_ONLY_FROM_HERE)


ROUTES = (Route("/", _page), Route("/room/{name}", _part), Route("/favicon.ico", _no_icon))
