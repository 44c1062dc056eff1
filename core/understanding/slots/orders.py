"""What a coach orders for somebody, out of a stretch: which line, and what shall become of it."""

import re
from calendar import day_name
from collections.abc import Mapping, Sequence
from itertools import pairwise
from typing import Any, Final

from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.movements.values import Pattern
from core.notation.lines.reading import read_piece
from core.notation.names.catalogued import lexicon
from core.understanding.marks import Mark
from core.understanding.slots import days
from core.understanding.slots.order_words import (
    Named,
    all_movements,
    is_stood_on,
    movements,
    said,
    says,
    table,
)
from core.understanding.slots.stretch import Stretch

# So many words before and behind a name may say how it is done; the likelier first.
_AROUND: Final = ((2, 0), (1, 0), (0, 3), (0, 2), (0, 0))
_WHOSE: Final = re.compile(r"\b(?:his|her|their|hers) ")
_BESIDE: Final = frozenset({"and", "n", "but", "for", "to"})
_BACK_ON: Final = re.compile(r"\bback (?:(?:on|from|again|next|this|by) )*(?:mon|tue|wed|thu|fri|sat|sun)")
WEEKDAYS: Final = tuple(one.lower() for one in day_name)
_LEAVES: Final = frozenset({"leave", "count", "keep"})
# Between what says a step and the movement of it.
_NEAR: Final = 4
_OF_ALL: Final = frozenset(
    {"normal", "easier", "harder", "bare", "written", "rest", "half", "fewer", "shorter", "away", "back"}
)
# These are of no line.
_OF_SOMEBODY: Final = frozenset({"away", "back", "normal"})
# Where one word may say several steps, what says most counts.
_FIRST: Final = (
    "normal",
    "back",
    "away",
    "shorter",
    "rest",
    "bare",
    "written",
    "half",
    "fewer",
    "allowed",
    "more",
    "easier",
    "harder",
    "out",
)


def like_before(stretch: Stretch, before: Mapping[str, Any]) -> dict[str, Any]:
    """The fields of an order that is told by the one `before` it: `Tam 5`, `Bo none`, `Ilse the same`; else {}."""
    people = {at for one in stretch.marks("person") for at in range(one.start, one.end)}
    rest = [stretch.word(at) for at in range(stretch.start, stretch.end) if at not in people]
    words = " ".join(one for one in rest if one.isalnum() and one not in _BESIDE)
    if is_only_when(stretch):
        return {key: one for key, one in before.items() if key not in {"day", "until"}} | _when(stretch)
    if words in table()["like_before"]["same"]:
        return dict(before)
    if words in table()["like_before"]["none"] and before.get("movement"):
        return {**before, "step": "out", "amount": None, "to": None, "way": None}
    is_of_load = before.get("step") in {"load", "at_most"}
    numbers = stretch.quantities("number", *(["load"] if is_of_load else ["reps"]))
    is_number = len(numbers) == 1 and re.fullmatch(r"(?:only )?[0-9.]+ ?[a-z]*", words)
    if is_number and before.get("amount"):
        return {**before, "amount": numbers[0].value}
    is_of_them = len(numbers) == 1 and re.fullmatch(
        r"(?:only |just |max )?[0-9.]+ of (?:them|these|those)", words
    )
    told = {key: before[key] for key in ("movement", "day", "until") if before.get(key)}
    return {**told, "step": "amount", "amount": numbers[0].value} if is_of_them and "movement" in told else {}


def tells_when(stretch: Stretch) -> bool:
    return bool(_when(stretch))


def is_only_when(stretch: Stretch) -> bool:
    """`Finn til friday`: nothing beside a name but how long, or on which day."""
    nothing_else = not movements(stretch) and not any(True for _ in said(stretch, "steps"))
    return nothing_else and bool(_when(stretch))


def order(stretch: Stretch) -> dict[str, Any]:
    """The fields of an order; {} where nothing is ordered that anybody could carry out by itself."""
    if says(stretch, "told") or any(at == stretch.start for at, _, _ in said(stretch, "asked")):
        return {}
    if stretch.marks("part", "maybe_part", "condition") and not movements(stretch) and not _is_back(stretch):
        return {}
    found = (
        _back_on(stretch)
        or _of_some_rounds(stretch)
        or _spared(stretch)
        or _swapped(stretch)
        or _capped(stretch)
        or _stepped(stretch)
        or _counted(stretch)
        or _done_a_way(stretch)
        or _number_for_number(stretch)
    )
    if found.get("step") == "away":
        return found if found.get("until") else found | _away_till(stretch)
    return _lasting(stretch, found | _when(stretch)) if found else {}


def _lasting(stretch: Stretch, found: dict[str, Any]) -> dict[str, Any]:
    """`Keep him easy`, of no line and no day, is of all that come, and so is a most; `easy week` is of this one."""
    if found.get("step") == "at_most":
        return found if found.keys() & {"day", "until"} else found | {"until": "always"}
    if found != {"step": "easier"}:
        return found
    if "week" in stretch.words:
        return found | {"day": "this week"}
    return found | {"until": "always"} if says(stretch, "keeps") else found


def explains(stretch: Stretch, fields: Mapping[str, Any]) -> bool:
    """Whether the fields of an order say every movement and every number that is in its words."""
    if fields.get("step") == "rounds":
        return True
    meant = {fields.get("movement"), fields.get("to")}
    if any(one.movement not in meant for one in movements(stretch)):
        return False
    if fields.get("step") == "amount" and any(is_stood_on(stretch, one) for one in stretch.marks("thing")):
        return False
    if fields.get("step") == "other" and fields.get("movement") and len(_numbers(stretch)) == 1:
        return True  # how many of what comes is worked out, and it is said so
    told = {f"{fields[kind]:g}" for kind in ("amount", "instead_of") if fields.get(kind) is not None}
    days_told = f"{fields.get('day') or ''} {fields.get('until') or ''}".split()
    within = [
        one
        for one in stretch.marks()
        if (one.quantity and f"{one.quantity.value:g}" in told) or (days_told and _is_when(stretch, one))
    ]
    return all(
        token.kind != "number" or token.word in told or any(one.start <= at < one.end for one in within)
        for at, token in enumerate(stretch.marked.text.tokens[stretch.start : stretch.end], stretch.start)
    )


def _is_when(stretch: Stretch, one: Mark) -> bool:
    """A day, or how long."""
    return one.value("day", "month", "short_day") is not None or (
        one.quantity is not None and one in stretch.marks("span", "number", "date")
    )


def tells_why(stretch: Stretch) -> bool:
    """Whether words tell of somebody's body or years, which only they can tell: `he has a bad disc`."""
    of_body = stretch.marks("condition", "illness", "part", "maybe_part")
    named = [place for one in movements(stretch) for place in range(one.start, one.end)]
    return any(one.start not in named for one in of_body) or (says(stretch, "aged") and _has_figure(stretch))


def _has_figure(stretch: Stretch) -> bool:
    return any(one.kind == "number" for one in stretch.marked.text.tokens[stretch.start : stretch.end])


def _back_on(stretch: Stretch) -> dict[str, Any]:
    """`Tam is back from monday`: away until the day before."""
    named = days.days(stretch)
    is_back = len(named) == 1 and _BACK_ON.search(" ".join(stretch.words)) and not movements(stretch)
    eve = (
        {day: before for before, day in pairwise((*WEEKDAYS, WEEKDAYS[0]))}.get(named[0]) if is_back else None
    )
    return {"step": "away", "until": eve} if eve else {}


def _of_some_rounds(stretch: Stretch) -> dict[str, Any]:
    """`3 of the 400s as walks`, `skips the last round`."""
    words = stretch.marked.words
    counted = any(
        stretch.marked.text.tokens[at].kind == "number" and words[at + 1 : at + 3] == ("of", "the")
        for at in range(stretch.start, stretch.end)
    )
    return {"step": "rounds"} if counted or says(stretch, "of_some") else {}


def _spared(stretch: Stretch) -> dict[str, Any]:
    """`No jumping for Odd`: no line is named, but what is in many."""
    found = [one for one in stretch.values("wish") if one not in table()["wishes"]]
    return {"step": "spare", "limit": found[0]} if len(found) == 1 and not movements(stretch) else {}


def _is_back(stretch: Stretch) -> bool:
    """`Finn is back`, `take it all back for Finn` name no part of a body."""
    is_told = any(step in {"back", "normal"} for _, _, step in said(stretch, "steps"))
    return is_told or bool(_back_on(stretch))


def _swapped(stretch: Stretch) -> dict[str, Any]:
    """`rows not planks`, `no planks, rows instead`, `swap the plank for rows`: which goes, and which comes."""
    named = movements(stretch)
    if len(named) == 1:  # `sit to stands instead of half squats` are two ways of one
        named = all_movements(stretch)
    if len(named) != 2:  # noqa: PLR2004 - one goes, one comes
        return {}
    one, other = named
    refused = [at for at, _, _ in said(stretch, "not")]
    out = [at for at, _, step in said(stretch, "steps") if step == "out"]
    if not _instead(stretch) and all(
        each.refused or any(each.start - _NEAR <= at < each.start for at in out) for each in named
    ):
        return {}  # `no burpees, no runs`
    joined = any(one.end <= at < other.start for at, _, _ in said(stretch, "for"))
    if other.refused or any(one.end <= at < other.start for at in (*refused, *out)):
        goes, comes = other, one
    elif (
        one.refused
        or any(one.start - _NEAR <= at < one.start for at in out)
        or (says(stretch, "swap") and joined)
    ):
        goes, comes = one, other
    elif joined and says(stretch, "gives"):
        goes, comes = other, one
    else:
        return {}
    way = _way(stretch, comes)
    if goes.movement == comes.movement and way == _way(stretch, goes):
        return {}
    return {"step": "other", "movement": goes.movement, "to": comes.movement, "way": way}


def _family(one: Named) -> str | None:
    """`No squats` without a word about which: whatever is called so. None where the name is of one alone."""
    family = one.movement.split()[-1]
    is_bare = one.movement == family or one.end - one.start == 1
    is_way_to_go = catalogue().movement(one.movement).pattern is Pattern.TRAVEL
    others = (each.id for each in catalogue().movements if each.id != one.movement)
    return (
        family
        if is_bare and not is_way_to_go and any(each.split()[-1] == family for each in others)
        else None
    )


def _instead(stretch: Stretch) -> bool:
    """`Rows instead`, of what was told before."""
    return any(stretch.marked.helps(at, "instead") == "alone" for at in stretch.helps("instead"))


def _way(stretch: Stretch, named: Named) -> str | None:
    """How the movement is to be done, in the words around its name: `box squats`, `push-ups on a bench`."""
    known = lexicon(catalogue())
    for before, behind in _AROUND:
        start, end = max(stretch.start, named.start - before), min(stretch.end, named.end + behind)
        words = _WHOSE.sub("", stretch.marked.text.words(start, end).lower())
        piece = read_piece(words, 0, known, MassUnit.KG)
        meaning = piece.meaning
        if meaning and not piece.unread and meaning.movement == named.movement and meaning.variant:
            return meaning.variant
    return None


def _done_a_way(stretch: Stretch) -> dict[str, Any]:
    """`Tam should do his push-ups on a bench`: the same, in the way that is told."""
    named = movements(stretch)
    is_for_them = stretch.words[-2:-1] == ("for",)
    is_given = says(stretch, "gives") or _is_listed(stretch) or is_for_them
    way = _way(stretch, named[0]) if len(named) == 1 and is_given else None
    return (
        {"step": "other", "movement": named[0].movement, "to": named[0].movement, "way": way} if way else {}
    )


def _is_listed(stretch: Stretch) -> bool:
    """`Ada: knee push-ups`."""
    return any(stretch.word(one.end) == ":" for one in stretch.marks("person"))


def _number_for_number(stretch: Stretch) -> dict[str, Any]:
    """`16 not 24`: of which line, only the session tells."""
    numbers = stretch.quantities("number", "load")
    refused = [at for at, _, _ in said(stretch, "not")]
    if len(numbers) != 2 or not any(numbers[0].end <= at < numbers[1].start for at in refused):  # noqa: PLR2004
        return {}
    named = movements(stretch)
    told = {"step": "number", "amount": numbers[0].value, "instead_of": numbers[1].value}
    return told | ({"movement": named[0].movement} if len(named) == 1 else {})


def _stepped(stretch: Stretch) -> dict[str, Any]:
    """What is said of the one movement that is named, or of all of the session."""
    named = movements(stretch)
    told = _steps(stretch, named)
    if not named:
        return _of_all(stretch, told[0][2]) if told else {}
    if len(named) > 1:
        return {}
    one = named[0]
    near = [
        step
        for at, end, step in told
        if step != "out" or 0 <= one.start - end <= _NEAR or at < one.start < end
    ]
    if near or one.refused:
        return _of_line(stretch, near[0] if near else "out", one)
    if not _instead(stretch) or _numbers(stretch):
        return {}
    way = _way(stretch, one)
    return {"step": "other", "to": one.movement} | ({"movement": one.movement, "way": way} if way else {})


def _of_line(stretch: Stretch, step: str, one: Named) -> dict[str, Any]:
    """What is said of a movement; a day off is of nothing, whatever is named beside it."""
    if step == "rest":
        return {"step": step}
    numbers = _numbers(stretch)
    if step == "fewer" and len(numbers) == 1 and not says(stretch, "at_most"):
        return {"step": "less", "movement": one.movement, "amount": numbers[0]}
    found: dict[str, Any] = {"step": step, "movement": one.movement}
    if step == "out" and (family := _family(one)):
        found["called"] = family
    return found | {"amount": next(iter(numbers), None)} if step == "more" else found


def _of_all(stretch: Stretch, step: str) -> dict[str, Any]:
    """What is said of no line: `Jonas skips tomorrow` leaves out the day."""
    if step == "out" and days.days(stretch) and not _numbers(stretch) and "class" not in stretch.words:
        return {"step": "away"}
    return {"step": step} if step in _OF_ALL else {}


def _steps(stretch: Stretch, named: Sequence[Named]) -> list[tuple[int, int, str]]:
    """What shall be done and where that is said, what says most first; who is left out is away, a line isn't."""
    if not named and _leaves_out(stretch):
        return [(stretch.start, stretch.start, "away")]
    spans = [(one.start, one.end) for one in all_movements(stretch)]
    spans += [(one.start, one.end) for one in stretch.marks("part", "maybe_part") if not _is_back(stretch)]
    inside = {at for start, end in spans for at in range(start, end)}
    told = [one for one in said(stretch, "steps") if one[0] not in inside]
    # `Rests 2 minutes between sets` is no day off.
    lasts = bool(stretch.quantities("span"))
    told = [
        one
        for one in told
        if not (one[2] == "rest" and lasts)
        and not (one[2] in _OF_SOMEBODY and named)
        and (one[2] != "allowed" or says(stretch, "again"))
    ]
    return sorted(told, key=lambda one: _FIRST.index(one[2]))


def _leaves_out(stretch: Stretch) -> bool:
    """`Leave Bo out`."""
    people = stretch.marks("person", "other_person")
    words = stretch.marked.words
    return any(
        one.start > stretch.start
        and words[one.start - 1] in _LEAVES
        and "out" in words[one.end : one.end + 1]
        for one in people
    )


def _numbers(stretch: Stretch) -> list[float]:
    return [one.value for one in stretch.quantities("number", "reps", "distance", "span", "load")]


def _capped(stretch: Stretch) -> dict[str, Any]:
    """`Bo: max 12 kg`, of whatever is in the hands."""
    loads = [] if movements(stretch) or not says(stretch, "at_most") else stretch.quantities("load")
    return {"step": "at_most", "amount": loads[0].value} if loads else {}


def _counted(stretch: Stretch) -> dict[str, Any]:
    """`give Bo 8 push-ups`, `the run 100 m for Lene`, `Nina should use 12 kg for swings`."""
    named = movements(stretch)
    is_told = any(says(stretch, kind) for kind in ("gives", "steps", "not"))
    if not named and stretch.quantities("rounds") and is_told:
        return {"step": "rounds"}
    if len(named) != 1 or not says(stretch, "gives"):
        return {}
    told: dict[str, Any] = {"movement": named[0].movement}
    if loads := stretch.quantities("load"):
        return told | {"step": "load", "amount": loads[0].value}
    numbers = stretch.quantities("number", "reps", "distance", "span")
    told |= {"step": "amount", "amount": numbers[0].value} if numbers else {}
    if len(numbers) == 1:
        return told
    is_changed = len(numbers) == 2 and says(stretch, "not")  # noqa: PLR2004 - one in place of the other
    return told | {"instead_of": numbers[1].value} if is_changed else {}


def _away_till(stretch: Stretch) -> dict[str, Any]:
    """`On holiday two weeks` needs no word for how long."""
    span = days.how_long(stretch, bare=True)
    return _when(stretch) or ({"until": span} if span else {})


def _when(stretch: Stretch) -> dict[str, Any]:
    until, named = days.until(stretch), days.days(stretch)
    if until is not None:
        return {"until": until}
    if says(stretch, "month"):
        return {"until": "month"}
    ends = any(stretch.word(at) != "to" for at in stretch.helps("until_word"))
    if says(stretch, "lasting") or (not named and ends):
        return {"until": "always"}
    return {"day": named[0]} if named else {}
