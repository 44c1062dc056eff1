"""Whether a part of a board is as it was meant, however it is told: the interface leaves several ways."""

import re
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from core.movements.lookup import catalogue
from tests.corpus.fitting import ENOUGH, field_fits, fits

# What a text doesn't tell must not be read into it either.
NEVER_ADDED = ("scheme", "cap_s", "buy_in", "cash_out", "loads_kg", "load_rule")
LINES = frozenset({"lines", "buy_in", "cash_out"})
# The interface names no kinds and not all formats; these are what the strangers called them.
KINDS = {"warm_up": "warm-up", "cool_down": "cool-down", "conditioning": "main", "accessory": None}
FORMATS = {"emom": "intervals", "rounds": "quality"}
WITHOUT_A_BREAK = frozenset({"amrap", "max_reps", "hold"})
# The most weights that one line tells: of a pair, the first and the second.
PAIR = 2
# Where a line keeps what its coach said of it.
KEPT_IN = ("notes", "written", "implement", "variant", "movement", "tempo", "side")
JOINING = frozenset(
    (
        "a",
        "an",
        "the",
        "of",
        "on",
        "in",
        "with",
        "to",
        "and",
        "or",
        "as",
        "at",
        "for",
        "your",
        "is",
        "w",
        "against",
    )
)


def parts_of(expected: Mapping[str, Any]) -> list[Mapping[str, Any]]:
    """The parts that were meant, in one spelling."""
    parts = [*expected.get("blocks", ()), *(one for day in expected.get("days", ()) for one in day["blocks"])]
    return [_one_spelling(one) for one in _told_once(parts)]


def parts_read(blocks: Iterable[Mapping[str, Any]]) -> list[Mapping[str, Any]]:
    """The parts that were read, in the same spelling."""
    return [_told_in_full(_one_spelling(one)) for one in _told_once(blocks)]


def missing_of_board(told: list[Mapping[str, Any]], found: list[Mapping[str, Any]]) -> str:
    """The first thing that isn't as it was meant; empty if all is."""
    if len(told) > len(found):
        # A part that names nothing to do is no part of a session: its words stand as unread at their place.
        told = [one for one in told if one.get("lines")]
    if len(told) != len(found):
        return "number of blocks"
    return next(
        (what for one, read in zip(told, found, strict=True) if (what := next(unlike(one, read), ""))), ""
    )


def unlike(expected: Mapping[str, Any], found: Mapping[str, Any]) -> Iterator[str]:
    """Each thing of a part that isn't as it was meant."""
    yield from unlike_fields(expected, told_together(expected, found))


def _one_spelling(block: Mapping[str, Any]) -> Mapping[str, Any]:
    """The same part told in one way, where the interface leaves several and the strangers chose their own words."""
    block = {**block, "kind": KINDS.get(block.get("kind") or "", block.get("kind"))}
    block["format"] = FORMATS.get(block.get("format") or "", block.get("format"))
    lines = block.get("lines") or []
    # As much as can be of one thing in so many minutes is max_reps however it is called.
    if block["format"] == "amrap" and len(lines) == 1 and not (lines[0].get("amount") or block.get("scheme")):
        block["format"] = "max_reps"
    # What is held for so long so often are sets of a hold.
    if (
        block["format"] == "sets"
        and lines
        and all(one.get("unit") == "s" and one.get("amount") for one in lines)
    ):
        block["format"] = "hold"
    if block["format"] == "intervals" and block.get("every_s") and block.get("rounds"):
        block.pop("minutes", None)  # told twice
    block = _set_by_set(_by_the_clock(block))
    # What is done once through has no buy-in or cash-out.
    if block["format"] == "for_time" and not (block.get("rounds") or block.get("scheme")):
        around = [line for name in ("buy_in", "lines", "cash_out") for line in block.get(name) or ()]
        block |= {"buy_in": [], "lines": around, "cash_out": []}
    # The time there is to find the heaviest weight is its minutes, and heavy it is in any case.
    if block["format"] == "max_load":
        block["lines"] = [{**line, "load_rule": None} for line in lines]
        block |= {"minutes": block["cap_s"] / 60, "cap_s": None} if block.get("cap_s") else {}
    return {name: one for name, one in block.items() if one is not None or name not in ("kind", "format")}


def _by_the_clock(block: dict[str, Any]) -> dict[str, Any]:
    """What goes on without a break is told as minutes or as work; sets that begin by the clock are intervals."""
    work = (block.get("work_s") or 0) / 60
    if block["format"] in WITHOUT_A_BREAK and work and (block.get("minutes") or work) == work:
        return {**block, "minutes": work, "work_s": None}
    on_the_clock = block["format"] == "sets" and block.get("every_s")
    return {**block, "format": "intervals"} if on_the_clock else block


def _set_by_set(block: dict[str, Any]) -> dict[str, Any]:
    """Sets of one thing, each with its own amount or weight, as a line each; how many there are goes without saying."""
    lines = block.get("lines") or []
    if block["format"] != "sets" or not lines:
        return block
    loads = lines[0].get("loads_kg") or []
    if len(lines) == 1 and len(loads) > PAIR:
        scheme = block.get("scheme") or [lines[0].get("amount")] * len(loads)
        lines = [
            {**lines[0], "amount": amount, "loads_kg": [load]}
            for amount, load in zip(scheme, loads, strict=False)
        ]
        block = {**block, "lines": lines, "scheme": None}
    one = len({line.get("movement") for line in lines}) == 1
    counted = one and len(lines) > 1 and block.get("rounds") == len(lines)
    return {**block, "rounds": None} if counted else block


def _told_in_full(block: Mapping[str, Any]) -> Mapping[str, Any]:
    """How hard a part is, is said of each of its lines; how often and how long an interval goes tell each other."""
    if hard := (block.get("effort") or {}).get("words"):
        lines = [{**line, "notes": f"{line.get('notes') or ''}; {hard}"} for line in block.get("lines") or ()]
        block = {**block, "lines": lines}
    every_s, rounds, minutes = (block.get(name) for name in ("every_s", "rounds", "minutes"))
    if block.get("format") != "intervals" or not every_s:
        return block
    often = {"rounds": rounds or (minutes and minutes * 60 / every_s)}
    return {**block, **often, "minutes": minutes or (rounds and rounds * every_s / 60)}


def _told_once(blocks: Iterable[Mapping[str, Any]]) -> list[Mapping[str, Any]]:
    """Equal amraps one after the other are one that is done so often, as some write it."""
    told: list[Mapping[str, Any]] = []
    for block in blocks:
        last = told[-1] if told else None
        if last and block.get("format") == "amrap" and _is_again(last, block):
            told[-1] = {**last, "rounds": (last.get("rounds") or 1) + 1}
        else:
            told.append(block)
    return told


def _is_again(one: Mapping[str, Any], other: Mapping[str, Any]) -> bool:
    return all(one.get(name) == other.get(name) for name in ("format", "minutes", "lines"))


def told_together(expected: Mapping[str, Any], found: Mapping[str, Any]) -> Mapping[str, Any]:
    """Sets of one thing that are read line by line, as one line where they are meant as one."""
    told, read = expected.get("lines") or [], found.get("lines") or []
    alike = len({(line.get("movement"), line.get("amount")) for line in read}) == 1
    if len(told) != 1 or len(read) != expected.get("rounds") or not alike or found.get("rounds"):
        return found
    kept = {name: told[0].get(name) for name in ("loads_kg", "load_rule")}
    return {**found, "rounds": len(read), "lines": [{**read[0], **kept}]}


def unlike_fields(expected: Mapping[str, Any], found: Mapping[str, Any]) -> Iterator[str]:
    """Each field of a part or a line that differs."""
    for name in {**expected, **dict.fromkeys(NEVER_ADDED)}:
        told, read = expected.get(name), found.get(name)
        if name not in LINES:
            if not (is_kept(told, found) if name == "notes" else _says_the_same(name, told, read)):
                yield name
        elif len(told or ()) != len(read or ()):
            yield f"number of {name}"
        else:
            for pair in zip(told or (), read or (), strict=True):
                yield from unlike_fields(*pair)


def is_kept(note: str | None, line: Mapping[str, Any]) -> bool:
    """Whether most words of a note are in what the line holds: which field holds a thing is nobody's concern."""
    said = _words(note or "")
    kept = _words(" ".join(str(line.get(name) or "") for name in KEPT_IN))
    return not said or len(said & kept) >= ENOUGH * len(said)


def _words(said: str) -> set[str]:
    """The words that carry meaning, each thing by the name it has in the catalogue."""
    found: set[str] = set()
    for word in re.findall(r"[\w']+", said.lower().replace("-", " ")):
        thing = catalogue().implement_by_name(word)
        found.add(thing.id if thing else word.removesuffix("s"))
    return found - JOINING


def _says_the_same(name: str, told: Any, read: Any) -> bool:
    if not told or not read:
        return not told and not read
    if name == "load_rule":
        return any(
            fits(one, read.get(rule)) or rule == "heavy" for rule, one in told.items() if read.get(rule)
        )
    return field_fits(name, told, read)
