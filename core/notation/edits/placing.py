"""A line more in the coach's text, or a line at another place of it."""

import re
from typing import Final

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.session import read_session
from core.notation.edits.retelling import part_named
from core.notation.edits.spots import Spot, piece_of, spot_meant, spots_in, spots_named
from core.notation.edits.wordings import BEHIND, END, START, Edit
from core.notation.names.catalogued import lexicon
from core.notation.values import ReadSession
from core.sessions.values import BlockKind, Format

# What a wish calls the beginning and the end, with what easy work there is, and what it is headed with.
_BEGINS, _ENDS = (BlockKind.WARM_UP, "Warm-up: "), (BlockKind.COOL_DOWN, "Cool-down: ")
_PLACES: Final = {START: _BEGINS, END: _ENDS, BEHIND: _ENDS}
_EASY: Final = re.compile(r"\b(?:easy|gentle|slow|light|walk\w*|stretch\w*|jog\w*|cool)\b")
# Done once where nobody says how often.
_ONCE: Final = frozenset((Format.FOR_TIME, Format.QUALITY, Format.TIME_TRIAL))
_BLANKS: Final = re.compile(r"\n{3,}")
_BULLETS: Final = " -*\u2022+\t"


def added(text: str, edit: Edit, movements: Catalogue, unit: MassUnit) -> str | None:
    """One more line: first or last of all, behind the one or in the part that is named, else where was spoken of."""
    known = lexicon(movements)
    told = piece_of(edit.new, known, unit)
    spots = list(spots_in(text, known, unit))
    if not told.meaning or told.unread or not told.says_anything or not spots:
        return None
    read = read_session(text, movements, unit)
    if edit.target in _PLACES and (edit.target != END or not _goes_on_once(read, edit.new)):
        return _at_an_end(text, edit, read)
    edit = edit._replace(target=edit.target.removeprefix(END))
    part = part_named(edit.target, read.session) if edit.target and read.session else None
    if edit.target and part is None:
        after = spot_meant(text, piece_of(edit.target, known, unit), known, unit)
        return put_behind(text, [after] if after and after.alone else [], edit.new)
    return put_behind(text, of_part(edit, part, text, movements, unit) or spots, edit.new)


def _goes_on_once(read: ReadSession, new: str) -> bool:
    """Whether the work ends with what is done once, so that its end is the end of all: `for time: 50 squats`."""
    work = _work_of(read)
    if not work or read.session is None or _EASY.search(new.lower()):
        return False
    last = read.session.blocks[work[-1]]
    return last.format in _ONCE and not (last.rounds or last.scheme)


def _work_of(read: ReadSession) -> list[int]:
    """The places of the parts that no cool-down is."""
    blocks = read.session.blocks if read.session else ()
    return [at for at, one in enumerate(blocks) if one.kind is not BlockKind.COOL_DOWN]


def _at_an_end(text: str, edit: Edit, read: ReadSession) -> str | None:
    """Before all the work or behind it: what is easy warms up or cools down, what isn't comes before that."""
    kind, heading = _PLACES[edit.target]
    begins = kind is BlockKind.WARM_UP
    parts = [one.kind for one in read.session.blocks] if read.session else []
    if not read.rows:
        return None
    lines = text.splitlines()
    work = _work_of(read)
    if not begins and not _EASY.search(edit.new.lower()) and work:
        at = max(row for row, part in read.rows if part - 1 in work)
        return _BLANKS.sub(
            "\n\n", "\n".join([*lines[:at], "", f"Finisher: {edit.new}", "", *lines[at:]])
        ).strip("\n")
    told = [row for row, _ in read.rows]
    at = min(told) - 1 if begins else max(told)
    if parts[0 if begins else -1] is kind:
        heading = heading if begins else ""
    put = [f"{heading}{edit.new}", ""] if begins else ["", f"{heading}{edit.new}"] if heading else [edit.new]
    return "\n".join([*lines[:at], *put, *lines[at:]])


def moved(text: str, edit: Edit, movements: Catalogue, unit: MassUnit) -> str | None:
    """The text with the row of a line at the end of the part that is named, or behind it as one of its own."""
    read, known = read_session(text, movements, unit), lexicon(movements)
    if read.session is None:
        return None
    of_its_own = edit.verb == "out"
    to, left = (part_named(words, read.session) for words in (edit.new, edit.beside))
    parts = {row - 1: part - 1 for row, part in read.rows}
    found = spots_named(text, piece_of(edit.target, known, unit), known, unit)
    if of_its_own:
        found = [one for one in found if to in {None, parts.get(one.row)}]
        to = parts.get(found[0].row) if len(found) == 1 else None
    elif to is not None:
        found = [one for one in found if parts.get(one.row) != to and left in {None, parts.get(one.row)}]
    if to is None or len(found) != 1 or not found[0].alone:
        return None
    gone = found[0].row
    there = [one.row for one in spots_in(text, known, unit) if parts.get(one.row) == to and one.row != gone]
    if not there:
        return None
    lines = text.splitlines()
    row = lines.pop(gone)
    after = max(there) + (max(there) < gone)
    put = ["", f"Finisher: {row.strip(_BULLETS)}", ""] if of_its_own else [row]
    return "\n".join([*lines[:after], *put, *lines[after:]]).rstrip("\n")


def put_behind(text: str, spots: list[Spot], words: str) -> str | None:
    """The text with a row more behind the last of these lines."""
    if not spots:
        return None
    lines = text.splitlines()
    last = spots[-1].row
    return "\n".join([*lines[: last + 1], words, *lines[last + 1 :]])


def of_part(edit: Edit, part: int | None, text: str, movements: Catalogue, unit: MassUnit) -> list[Spot]:
    """The lines of the part in which something is added: the one named, or spoken of, else the last work."""
    read, known = read_session(text, movements, unit), lexicon(movements)
    parts = dict(read.rows)
    near = spot_meant(text, piece_of(edit.beside, known, unit), known, unit) if edit.beside else None
    if part is None:
        part = parts.get(near.row + 1, 0) - 1 if near else max(_work_of(read), default=-1)
    return [one for one in spots_in(text, known, unit) if parts.get(one.row + 1) == part + 1]
