"""Minutes and other turns that a row names: `Min 2: rest`, `Min 3` above its lines, `even: 8 burpees`."""

import re

from core.notation.lines.pieces import Piece

_RESTING = re.compile(
    r"^[\W_]*(?:(?:minutes?|min|station)\s?)?(?:(?P<n>[1-9][0-9]?)(?:st|nd|rd|th)?(?: min(?:ute)?)?"
    r"|(?P<odd>odd|even)(?:\s?min(?:ute)?s?)?)(?:\s?[:\-=.)]|(?<=min [1-9])\s)\s*"
    r"(?:rest|recover(?:y)?|break|off)[\W_]*$"
)
_STATION = re.compile(
    r"((?:\b(?:minutes?|min|station) [1-9][0-9]?|\b[1-9](?:st|nd|rd|th) (?:min(?:ute)?|station)"
    r"|\b(?:odd|even)(?:\s?min(?:ute)?s?)?)\s?)[:\-=]"
)
_ALONE = re.compile(
    r"^[\W_]*(?:(?:minutes?|min|station)\s?(?P<n>[1-9][0-9]?)|(?P<nth>[1-9])(?:st|nd|rd|th)\s(?:min(?:ute)?|station)"
    r"|(?P<odd>odd|even)(?:\s?min(?:ute)?s?)?)[\W_]*$"
)
_REST = re.compile(r"^[\W_]*(?:rest|recover(?:y)?)[\W_]*$")


def resting_station(text: str) -> int | None:
    """The station at which a row says to rest."""
    match = _RESTING.match(text)
    return int(match["n"] or ("odd", "even").index(match["odd"]) + 1) if match else None


def station_alone(text: str) -> int | None:
    """The station that a row names and nothing else."""
    match = _ALONE.match(text)
    if match is None:
        return None
    number = match["n"] or match["nth"]
    return int(number) if number else ("odd", "even").index(match["odd"]) + 1


def is_rest(text: str) -> bool:
    return _REST.match(text) is not None


def bound(text: str) -> str:
    """The text with stations bound to what follows, so that their colons part nothing."""
    return _STATION.sub(r"\1)", text)


def share_station(pieces: list[Piece]) -> None:
    """`Min 2: 10 push-ups, 10 squats`: both are done in that minute."""
    station = None
    for piece in pieces:
        station = piece.station = piece.station or station
