"""Where the rows of a block go: into its lines, its buy-in or cash-out, or a minute of their own."""

from core.notation.boards.drafts import Draft, Rest
from core.notation.boards.reading import Reading
from core.sessions.values import Format


def send(draft: Draft, reading: Reading) -> None:
    """Notes where this row, and what stands under it, belongs."""
    _send_to_part(draft, reading)
    draft.station = reading.station or draft.station
    if reading.rest_station:
        draft.rests.append(Rest(reading.rest_station, reading.row))
    elif reading.is_rest and draft.station:
        draft.rests.append(Rest(draft.station, reading.row))
    elif reading.is_rest and _is_each_a_minute(draft):
        for number, placed in enumerate(draft.lines, 1):
            placed.piece.station = number
        draft.rests.append(Rest(len(draft.lines) + 1, reading.row))
    elif reading.is_rest:
        draft.notes.append(reading.row.text.strip())


def _is_each_a_minute(draft: Draft) -> bool:
    """Whether a minute of rest below tells that each line on the clock has a minute of its own."""
    alone = len({placed.row.number for placed in draft.lines}) == len(draft.lines) > 0
    return "every_s" in draft.facts and alone and not any(piece.station for piece in draft.pieces)


def _send_to_part(draft: Draft, reading: Reading) -> None:
    if reading.where != "lines" and not reading.pieces:
        draft.where = reading.where
    elif reading.facts:
        draft.where = "lines"
    elif reading.then and draft.lines and _ends(draft):
        draft.where = "cash_out"


def _ends(draft: Draft) -> bool:
    """Whether its rounds are over before what comes `then`: as many as possible never are."""
    said = draft.facts.get("format")
    counted = draft.facts.get("scheme") or (draft.facts.get("rounds") or 1) > 1
    return bool(counted) and said in {None, Format.FOR_TIME, Format.QUALITY}
