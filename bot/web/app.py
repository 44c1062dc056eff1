"""What the bot answers over HTTP: is it well, and what has it got to do."""

from collections.abc import Awaitable, Callable, Iterable, Mapping
from dataclasses import dataclass, field

from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import JSONResponse, PlainTextResponse, Response
from starlette.routing import Route

_TEXT_FORMAT = "text/plain; version=0.0.4; charset=utf-8"


@dataclass(frozen=True, slots=True)
class Health:
    """`status` is for people: `ok`, or what is wrong; `told`: what else there is to know, by name."""

    status: str = "ok"
    told: Mapping[str, float | None] = field(default_factory=dict)

    @property
    def is_well(self) -> bool:
        return self.status == "ok"


@dataclass(frozen=True, slots=True)
class Figure:
    """One measured number, with labels where there are several of a name."""

    name: str
    value: float
    labels: Mapping[str, str] = field(default_factory=dict)


def make_app(
    health: Callable[[], Awaitable[Health]], figures: Callable[[], Awaitable[Iterable[Figure]]]
) -> Starlette:
    """Answer `GET /health` (200, or 503 when unwell) and `GET /metrics`."""

    async def answer_health(_request: Request) -> Response:
        found = await health()
        return JSONResponse({"status": found.status, **found.told}, status_code=200 if found.is_well else 503)

    async def answer_metrics(_request: Request) -> Response:
        lines = "".join(f"{as_line(figure)}\n" for figure in await figures())
        return PlainTextResponse(lines, media_type=_TEXT_FORMAT)

    return Starlette(routes=[Route("/health", answer_health), Route("/metrics", answer_metrics)])


def as_line(figure: Figure) -> str:
    """Write a figure in the plain text exposition format."""
    labels = ",".join(f'{key}="{value}"' for key, value in figure.labels.items())
    name = f"{figure.name}{{{labels}}}" if labels else figure.name
    return f"bellwether_{name} {figure.value:g}"
