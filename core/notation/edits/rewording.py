"""A line that couldn't be read, put in other words: `swap the dock pulls for single-arm rows`."""

import re

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.session import read_session
from core.notation.edits.wordings import Edit
from core.notation.lines.reading import read_piece
from core.notation.names.catalogued import lexicon


def reworded(text: str, edit: Edit, movements: Catalogue, unit: MassUnit = MassUnit.KG) -> str | None:
    """The text with other words for those of the one unread line that has them, or without that line.

    A new name takes the place of the old one, a whole line that of the line. None where nothing gets clearer by it.
    """
    unread = {one.line for one in read_session(text, movements, unit).not_understood}
    spoken = re.compile(rf"(?<!\w){re.escape(edit.target)}(?!\w)", re.IGNORECASE)
    lines = text.splitlines()
    holding = [number for number in unread if edit.target and spoken.search(lines[number - 1])]
    if len(holding) != 1:
        return None
    at = holding[0] - 1
    whole = read_piece(edit.new.lower(), 0, lexicon(movements), unit).says_anything
    put = edit.new if whole else spoken.sub(lambda _: edit.new, lines[at], count=1)
    new = "\n".join([*lines[:at], *([put] if edit.new else []), *lines[at + 1 :]])
    return new if len(read_session(new, movements, unit).not_understood) < len(unread) else None
