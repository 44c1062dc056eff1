"""Points over days as a picture: a card with its own light ground, so it reads in a dark chat as in a light one."""

import io
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from textwrap import shorten
from typing import TYPE_CHECKING, Any, Final, Literal

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

# A telephone shows it so wide, in its own points; drawn finer by so much.
WIDE: Final = 390
_TALL, _TALL_MORE, _FINE, _INCH = 250, 210, 2.5, 72
_PAD: Final = 12 / _INCH
GROUND, INK, FAINT, LINE, BAND = "#f7f5ef", "#22312b", "#5c6a62", "#0b6b57", "#d5e7de"
# In points at that width; smaller is read by nobody in the middle of a day.
_BIG, _SMALL = 15.0, 12.0
# So many letters of the big ones stand beside each other.
LONGEST_TITLE, MOST_TICKS = 36, 4
# Of the reach of the values, above and below them.
_ROOM = 0.35


@dataclass(frozen=True, slots=True)
class Point:
    """A value on a day; `label` stands at it."""

    on: date
    value: float
    label: str = ""


@dataclass(frozen=True, slots=True)
class Panel:
    """One row of the picture. `points`: at least one, the earliest first.

    `band`: from where to where is as usual; `upside_down`: less is better, so less is above. `edges`: words for what
    lies above and below.
    """

    title: str
    points: tuple[Point, ...]
    band: tuple[float, float] | None = None
    edges: tuple[str, str] = ("", "")
    upside_down: bool = False


def as_picture(panels: Sequence[Panel]) -> bytes:
    """PNG, 975 pixels wide. `panels`: at least one."""
    written = io.BytesIO()
    drawn(panels).savefig(written, format="png", facecolor=GROUND)
    return written.getvalue()


def drawn(panels: Sequence[Panel]) -> "Figure":
    """As the library's figure, on its own canvas: nothing of it is kept anywhere."""
    # It takes longest of all libraries to load, and few ask for a picture.
    from matplotlib.backends.backend_agg import FigureCanvasAgg  # noqa: PLC0415
    from matplotlib.figure import Figure  # noqa: PLC0415
    from matplotlib.layout_engine import ConstrainedLayoutEngine  # noqa: PLC0415

    tall = _TALL + _TALL_MORE * (len(panels) - 1)
    layout = ConstrainedLayoutEngine(w_pad=_PAD, h_pad=_PAD, hspace=0.08)
    figure = Figure(figsize=(WIDE / _INCH, tall / _INCH), dpi=_INCH * _FINE, layout=layout)
    FigureCanvasAgg(figure)
    every = figure.subplots(len(panels), squeeze=False)
    for axes, panel in zip(every[:, 0], panels, strict=True):
        _draw(axes, panel)
    return figure


def _draw(axes: "Axes", panel: Panel) -> None:
    axes.set_facecolor(GROUND)
    title = shorten(panel.title, LONGEST_TITLE, placeholder=" …")
    axes.set_title(title, loc="left", color=INK, fontsize=_BIG, fontweight="bold", pad=10, parse_math=False)
    days: list[Any] = [point.on for point in panel.points]
    values = [point.value for point in panel.points]
    if panel.band is not None:
        axes.axhspan(*panel.band, color=BAND, linewidth=0)
    axes.plot(days, values, color=LINE, linewidth=2, marker="o", markersize=7)
    _scale(axes, panel)
    _label(axes, panel)
    for side in ("top", "right", "left"):
        axes.spines[side].set_visible(False)
    axes.spines["bottom"].set_color(FAINT)
    axes.tick_params(colors=FAINT, labelsize=_SMALL, length=0, pad=6)


def _scale(axes: "Axes", panel: Panel) -> None:
    """Room above and below for what stands there, and few days, none of them near another."""
    reach = [*(point.value for point in panel.points), *(panel.band or ())]
    room = _ROOM * ((max(reach) - min(reach)) or abs(max(reach)) or 1.0)
    low, high = min(reach) - room, max(reach) + room
    axes.set_ylim((high, low) if panel.upside_down else (low, high))
    axes.margins(x=0.12)
    axes.set_yticks([])
    first, last = panel.points[0].on, panel.points[-1].on
    shown: list[Any] = [last]
    for point in reversed(panel.points):
        if shown[-1] - point.on > (last - first) / MOST_TICKS:
            shown.append(point.on)
    axes.set_xticks(shown, [f"{day:%-d %b}" for day in shown])


def _label(axes: "Axes", panel: Panel) -> None:
    """What stands at the first and at the last point, and what above, below and within means."""
    _label_end(axes, panel, panel.points[-1], panel.points[-2:][0], "right")
    if panel.points[0].on < panel.points[-1].on:
        _label_end(axes, panel, panel.points[0], panel.points[1], "left")
    for words, height, side in zip(panel.edges, (1.0, 0.04), ("top", "bottom"), strict=True):
        axes.text(
            0,
            height,
            words,
            transform=axes.transAxes,
            color=FAINT,
            fontsize=_SMALL,
            va=side,
            parse_math=False,
        )


def _label_end(
    axes: "Axes", panel: Panel, point: Point, neighbour: Point, side: Literal["left", "right"]
) -> None:
    """On that side of the point where the line doesn't run."""
    is_above = point.value == neighbour.value or (point.value > neighbour.value) != panel.upside_down
    aside, up = (-6 if side == "left" else 6), (11 if is_above else -11)
    at: Any = (point.on, point.value)
    axes.annotate(
        point.label, at, (aside, up), textcoords="offset points", parse_math=False,
        color=INK, fontsize=_SMALL, ha=side, va="bottom" if is_above else "top",
    )  # fmt: skip
