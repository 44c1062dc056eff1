"""The coach's text with a change carried out in it: everything else stays as it was typed."""

import re
from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from math import log

from core.measures import AmountUnit, MassUnit, from_kg
from core.movements.lookup import Catalogue
from core.notation.boards.row_reader import read_row
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_line
from core.notation.edits.becoming import Carry, become
from core.notation.edits.parts import called, line_of, part_in_front, without_part
from core.notation.edits.placing import added, moved, of_part, put_behind
from core.notation.edits.rewording import reworded
from core.notation.edits.spots import Spot, piece_of, readings, spot_meant, spots_named
from core.notation.edits.wordings import Edit, as_it_shall_be
from core.notation.lines.pieces import Piece, as_line
from core.notation.names.catalogued import Lexicon, lexicon
from core.notation.phrases.aims import Facts
from core.notation.text import plain_row
from core.sessions.values import BlockKind

_AROUND_THE_WORK = frozenset({BlockKind.WARM_UP, BlockKind.COOL_DOWN})
_BLOCK_WORDS = re.compile(
    r"^(?:it|this|that|(?:the )?(?:time|whole thing|session|workout|block|amrap|emom|clock))$"
)
_IT = re.compile(r"^(?:it|this|that)\s+(?:an? )?")
_NUMBER = re.compile(r"^[0-9]{1,4}(?:\s?[a-z]{1,4})?$")
_AMOUNT = re.compile(r"[0-9]{1,4}(?:-[0-9]{1,4})?(?:\s?(?:m|km|s|sec|min|k?cal)\b)?")
_HOW_MUCH = {
    AmountUnit.METRES: r"[0-9]+(?:[.,][0-9]+)?\s?(?:km|k|m|met(?:re|er)s|kilomet(?:re|er)s)\b",
    AmountUnit.SECONDS: r"[0-9]+(?::[0-9]{2}|\s?(?:minutes?|mins?|seconds?|secs?|s|hours?|h)\b|')",
    AmountUnit.KCAL: r"[0-9]+\s?(?:k?cals?|calories)\b",
    AmountUnit.REPS: r"[0-9]+",
}
_PAIR = re.compile(r"(?:@\s?)?[0-9]{1,3}(?:[.,][0-9])?\s?/\s?[0-9]{1,3}(?:[.,][0-9])?")
# `make the emom 15`: what, and how much, with no word between.
_FACT_AND_NUMBER = re.compile(
    r"((?:time )?(?:cap|limit)|amrap|emom|clock|rest|breaks?) ([0-9]{1,3}(?: ?(?:min|minutes|s|sec))?)"
)
# As coaches write them behind a number, the longest first.
_MINUTES = (" minutes", " minute", "minutes", " mins", " min", "mins", "min", "'")
_NAMED_FACT = {
    "cap_s": re.compile(r"\b(?:time )?(?:cap|limit)\b"),
    "rest_s": re.compile(r"\b(?:rest|break|pause)s?\b"),
    "rounds": re.compile(r"\b(?:rounds?|sets?|rds)\b"),
    "minutes": re.compile(r"\b(?:amrap|emom|clock|time|minutes|duration|length|it)\b"),
}


def edited(
    text: str,
    edit: Edit,
    movements: Catalogue,
    unit: MassUnit = MassUnit.KG,
    carry: Carry | None = None,
) -> str | None:
    """The text after the change; None where it doesn't say which line is meant, or what it should become.

    `carry` tells how much of a movement stands for the old one where they don't count in the same.
    """
    return checked(text, _after(text, edit, movements, unit, carry), movements, unit)


def _after(text: str, edit: Edit, movements: Catalogue, unit: MassUnit, carry: Carry | None) -> str | None:
    """The text with the change, whether or not it can be read."""
    match edit.verb:
        case "name":
            return called(text, edit.new, movements, unit)
        case "add":
            return added(text, edit, movements, unit)
        case "move" | "out":
            return moved(text, edit, movements, unit)
        case "drop":
            line = _dropped(text, edit, lexicon(movements), unit)
            part = line or without_part(text, edit.target, movements, unit)
            return part or reworded(text, edit, movements, unit)
    return _otherwise(text, edit, movements, unit, carry)


def _otherwise(
    text: str, edit: Edit, movements: Catalogue, unit: MassUnit, carry: Carry | None
) -> str | None:
    """What is there becomes another: a line, a part that is named, else how the work is done."""
    for target, new in _partings(edit, lexicon(movements), unit):
        changed = _changed(text, target, new, edit, movements, unit, carry)
        if checked(text, changed, movements, unit):
            return changed
    told = part_told(text, edit, movements, unit)
    if told is not None:
        return _of_part(text, *told, movements, unit)
    return (
        _with_fact(text, edit, movements, unit)
        or _of_its_only_line(text, edit, movements, unit)
        or reworded(text, edit, movements, unit)
    )


def part_told(text: str, edit: Edit, movements: Catalogue, unit: MassUnit) -> tuple[list[int], str] | None:
    """The parts that are named in front of what they become, [] where the text has none such; None where none is."""
    session = read_session(text, movements, unit).session
    if session is None or edit.verb != "change":
        return None
    told = part_in_front(edit.target or edit.new, session)
    if told is None or (edit.target and told[1]):
        return None
    return told[0], edit.new if edit.target else told[1]


def _of_part(text: str, parts: list[int], new: str, movements: Catalogue, unit: MassUnit) -> str | None:
    """`Make the warm-up 15 min`, `the warm-up is a jog`: of the one line that it consists of."""
    spot = line_of(text, parts[0], movements, unit) if len(parts) == 1 else None
    told = piece_of(new, lexicon(movements), unit)
    if spot is None or told.unread or told.is_loose or not (told.says_anything or told.meaning):
        return None
    became = become(spot.piece, told, None)
    if told.meaning:
        became = replace(became, meaning=told.meaning, text=told.text)
    as_told = _written(became, replace(spot, alone=True), movements, unit)
    return put(text, spot, as_told)


def _of_its_only_line(text: str, edit: Edit, movements: Catalogue, unit: MassUnit) -> str | None:
    """`Make it 8 k`: how much of the only line of the work that is counted so, whether or not it has a name."""
    known = lexicon(movements)
    told = piece_of(edit.new, known, unit)
    bare = told.amount and not (told.meaning or told.unread or told.sets)
    if not bare or told.unit is None or (edit.target and not _BLOCK_WORDS.match(edit.target.lower())):
        return None
    read = read_session(text, movements, unit)
    easy = {
        row
        for row, part in read.rows
        if read.session and read.session.blocks[part - 1].kind in _AROUND_THE_WORK
    }
    work = [
        (at, piece)
        for at, one in readings(text, known, unit)
        for piece in one.pieces
        if piece.amount and at + 1 not in easy
    ]
    alike = [(at, piece) for at, piece in work if piece.unit is told.unit and not piece.sets]
    if len(alike) != 1 or (told.unit is AmountUnit.SECONDS and len(work) > 1):
        return None
    at, _ = alike[0]
    lines = text.splitlines()
    lines[at] = re.sub(_HOW_MUCH[told.unit], told.text, lines[at], count=1, flags=re.IGNORECASE)
    return "\n".join(lines)


def names_a_line(text: str, edit: Edit, movements: Catalogue, unit: MassUnit = MassUnit.KG) -> bool:
    """Whether the wish is about a line of the text, even if it can't be carried out."""
    told = part_told(text, edit, movements, unit)
    return bool(_lines_named(text, edit, lexicon(movements), unit) or (told and told[0]))


def fact_in(words: str, movements: Catalogue, unit: MassUnit = MassUnit.KG) -> Edit | None:
    """The change that words ask for which say how a session goes and nothing else: `5 rounds`, `cap 15 min`."""
    edit = as_it_shall_be(words)
    return edit if edit and _fact(edit, lexicon(movements), unit)[0] else None


def lines_meant(
    text: str, edit: Edit, movements: Catalogue, unit: MassUnit = MassUnit.KG, carry: Carry | None = None
) -> tuple[tuple[int, str], ...]:
    """The lines that the wish may be about, if each could be changed so: what `Edit.at` says, and their words.

    Whoever speaks of the run means that of the work, not the one that warms them up for it.
    """
    spots = _of_the_work(text, _lines_named(text, edit, lexicon(movements), unit), movements, unit)
    able = (one for one in spots if edited(text, edit._replace(at=one.at), movements, unit, carry))
    return tuple((one.at, one.piece.text.strip()) for one in able)


def _of_the_work(text: str, spots: list[Spot], movements: Catalogue, unit: MassUnit) -> list[Spot]:
    """Those outside of warm-up and cool-down; all where none is."""
    if len(spots) < 2:  # noqa: PLR2004 - of one nothing is to choose
        return spots
    read = read_session(text, movements, unit)
    parts = dict(read.rows)
    blocks = read.session.blocks if read.session else ()
    kinds = {one.at: blocks[parts[one.row + 1] - 1].kind for one in spots if one.row + 1 in parts}
    return [one for one in spots if kinds.get(one.at) not in _AROUND_THE_WORK] or spots


def _lines_named(text: str, edit: Edit, known: Lexicon, unit: MassUnit) -> list[Spot]:
    if edit.verb in {"add", "move", "out", "name"}:
        return []
    targets = [piece_of(edit.target, known, unit)] if edit.verb == "drop" else []
    targets += [target for target, _ in _partings(edit, known, unit)]
    return next(filter(None, (spots_named(text, one, known, unit) for one in targets if one.meaning)), [])


def _partings(edit: Edit, known: Lexicon, unit: MassUnit) -> Iterator[tuple[Piece, str]]:
    """What is meant and what it becomes; `the row 200 m` is parted behind the longest name."""
    if edit.target and not _NUMBER.match(edit.target):
        piece = piece_of(edit.target, known, unit)
        if piece.meaning and not piece.is_loose:
            yield piece, edit.new
        return
    if edit.target and (piece := piece_of(edit.new, known, unit)).meaning:
        yield replace(piece, amount=None), _only_amount(piece, edit.new)  # `8 push-ups instead of 10`
    if not edit.target and edit.new[:1].isdigit():
        piece = piece_of(edit.new, known, unit)
        if piece.meaning and not (piece.unread or piece.is_loose):
            yield replace(piece, amount=None), _only_amount(piece, edit.new)  # `I meant 12 lunges`
    words = edit.new.split()
    for end in range(len(words) - 1, 0, -1):
        piece = piece_of(" ".join(words[:end]), known, unit)
        if piece.meaning and not (piece.meaning.near or piece.unread or piece.is_loose):
            yield piece, " ".join(words[end:])


def _only_amount(piece: Piece, new: str) -> str:
    """`12 lunges` of jumping lunges says how many, not another movement."""
    amount = _AMOUNT.match(new)
    in_all = " total" if "total" in piece.notes else ""
    return f"{amount[0]}{in_all}" if amount and not piece.loads_kg else new


def _changed(
    text: str,
    target: Piece,
    new: str,
    edit: Edit,
    movements: Catalogue,
    unit: MassUnit,
    carry: Carry | None,
) -> str | None:
    known = lexicon(movements)
    meant = spot_meant(text, target, known, unit, edit.at)
    if meant and meant.piece.loads_kg and _PAIR.fullmatch(new):
        new = f"@ {new.removeprefix('@').strip()}"  # a pair beside a load is the load
    if meant and is_rather_load(new, meant.piece, unit):
        new = f"@ {new} {unit}"
    told = piece_of(new, known, unit)
    if meant is None or told.unread or told.is_loose or not (told.meaning or told.says_anything):
        return None
    if edit.verb == "swap" and not told.meaning:
        return None
    return put(text, meant, _written(become(meant.piece, told, carry), meant, movements, unit))


def is_rather_load(new: str, piece: Piece, unit: MassUnit) -> bool:
    """Whether a bare number is far nearer to what is lifted than to how often: `squats to 85` of 5 @ 80 kg."""
    if not new.isdigit() or len(piece.loads_kg) != 1 or not piece.amount or not int(new):
        return False
    load = float(from_kg(Decimal(str(piece.loads_kg[0])), unit))
    as_load, as_amount = (abs(log(int(new) / one)) for one in (load, piece.amount))
    return 2 * as_load < as_amount


def _written(piece: Piece, spot: Spot, movements: Catalogue, unit: MassUnit) -> str:
    line = as_line(piece)
    words = write_line(line if spot.alone else line.model_copy(update={"notes": None}), unit, movements)
    if piece.most:
        words = f"max {words}"
    return f"{piece.sets} x {words}" if piece.sets else words


def put(text: str, spot: Spot, words: str) -> str:
    lines = text.splitlines()
    line = lines[spot.row]
    old = line[spot.start : spot.end]
    between = old[len(old.rstrip()) :] if line[spot.end :] else ""
    lines[spot.row] = f"{line[: spot.start]}{words}{between}{line[spot.end :]}"
    return "\n".join(lines)


def _dropped(text: str, edit: Edit, known: Lexicon, unit: MassUnit) -> str | None:
    piece = piece_of(edit.target, known, unit)
    is_clear = piece.meaning and not (piece.unread or piece.is_loose)
    spot = spot_meant(text, piece, known, unit, edit.at) if is_clear else None
    if spot is None:
        return None
    if spot.alone:
        return "\n".join(line for number, line in enumerate(text.splitlines()) if number != spot.row)
    return re.sub(
        r"(?m)^\s*[,;+&]\s*|(?:\s*[,;+&]\s*|\s+and\s+)$|(?<=:)\s*[,;+&]|([,;+&])\s*(?=[,;+&])",
        "",
        put(text, spot, ""),
    )


def _with_fact(text: str, edit: Edit, movements: Catalogue, unit: MassUnit) -> str | None:
    """`make it 15 minutes`, `change the cap to 20`, `make it 4 rounds`: the number in its row."""
    known = lexicon(movements)
    name, value = _fact(edit, known, unit)
    if name is None:
        return None
    holding = [(n, one) for n, one in readings(text, known, unit) if name in one.facts]
    if not holding and name == "cap_s":
        return put_behind(text, of_part(edit, None, text, movements, unit), f"Time cap: {value / 60:g} min")
    if len(holding) != 1:
        return None
    number, reading = holding[0]
    return _renumbered(text, number, reading.facts[name], value, name)


def _fact(edit: Edit, known: Lexicon, unit: MassUnit) -> tuple[str | None, float]:
    """Which fact of a block is to change, and to what."""
    if parted := _FACT_AND_NUMBER.fullmatch(edit.new.lower()) if not edit.target else None:
        edit = edit._replace(target=parted[1], new=parted[2])
    target = edit.target.lower()
    words = f"{target} {edit.new}".lower() if not _BLOCK_WORDS.match(target) else edit.new.lower()
    reading = read_row(plain_row(_IT.sub("", words.strip())), known, unit)
    if reading.unread or any(one.says_anything and (one.meaning or one.sets) for one in reading.pieces):
        return None, 0  # `the cap should be 18 min and the snatches 8` is more than a cap
    said: Facts = reading.facts
    if "cap_s" in said and "rounds" in said:
        return None, 0  # two changes
    for name in ("cap_s", "rest_s", "every_s", "rounds", "minutes"):
        if name in said:
            return name, float(said[name])
    number = re.fullmatch(r"([0-9]{1,3})(?:\s?(?:min(?:ute)?s?|'))?", edit.new.lower())
    for name, pattern in _NAMED_FACT.items():
        if number and pattern.search(target):
            return name, float(number[1]) * (60 if name in {"cap_s", "rest_s"} else 1)
    return None, 0


def _renumbered(text: str, number: int, old: float, new: float, name: str) -> str | None:
    """The row with the one number that says the old value saying the new one."""
    lines = text.splitlines()
    for said, to in _spellings(old, new, name):
        pattern = rf"(?<![0-9.:]){re.escape(said)}(?![0-9.:])"
        if len(re.findall(pattern, lines[number])) == 1:
            lines[number] = re.sub(pattern, to, lines[number])
            return "\n".join(lines)
    return None


def _spellings(old: float, new: float, name: str) -> Iterator[tuple[str, str]]:
    if name in {"rounds", "minutes"}:
        yield f"{old:g}", f"{new:g}"
        yield f"{old:g}:00", f"{new:g}:00"
        return
    yield f"{old // 60:g}:{old % 60:02g}", f"{new // 60:g}:{new % 60:02g}"
    if old % 60 == 0 and new % 60 == 0:
        yield f"{old / 60:g}", f"{new / 60:g}"
    elif old % 60 == 0:
        yield from ((f"{old / 60:g}{unit}", f"{new:g} s") for unit in _MINUTES)
    yield f"{old:g}", f"{new:g}"


def checked(before: str, after: str | None, movements: Catalogue, unit: MassUnit) -> str | None:
    """The changed text, if it reads as another session and nothing in it became unreadable."""
    if after is None:
        return None
    old, new = read_session(before, movements, unit), read_session(after, movements, unit)
    if new.session is None or len(new.not_understood) > len(old.not_understood):
        return None
    alike = old.session is not None and _bare(old.session) == _bare(new.session)
    return None if alike else after


def _bare(session: object) -> str:
    return re.sub(r"written='[^']*'|written=\"[^\"]*\"", "", repr(session))
