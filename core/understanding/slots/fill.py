"""Act -> how its fields are filled. An act whose needed fields aren't told isn't taken: it fills to nothing."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any, Final, cast

from pydantic import ValidationError

from core.athletes.values import Equipment
from core.scores.ways import Way, way_of
from core.understanding.acts import ACTS, AnyAct
from core.understanding.quantities import Quantity
from core.understanding.slots import body, days, equipment, people, places, scores, units
from core.understanding.slots.abilities import abilities
from core.understanding.slots.stretch import Stretch, exact_kg, in_kg

# Adults; beyond these it is a slip or another unit.
_LIGHTEST_KG, _HEAVIEST_KG = 30, 300
_HARDEST: Final = 10
_LONGEST_DAY_MIN: Final = 600
# `please could you tell the coach that ...`: a later `that` belongs to the matter.
_WORDS_BEFORE_THE_MATTER: Final = 8
_SENTENCE_ENDS: Final = frozenset(".!?\n")
_THIS_DAY: Final = frozenset({"today", "tonight"})
_WEEKS: Final = frozenset({"this week", "next week"})
# Not what a class recurs on.
_NO_RULE: Final = frozenset(
    {"today", "tomorrow", "this week", "next week", "last week", "next month", "yesterday"}
)
# Told of somebody else, these are nothing that the speaker tells of themselves.
_OF_ONESELF: Final = frozenset({"spares", "hurt", "condition", "sore", "sick", "weighs", "can", "scored"})

Fields = dict[str, Any]
# None: not taken; several: as many acts.
Filler = Callable[[Stretch], Fields | Sequence[Fields] | None]


def fill(act: str, stretch: Stretch) -> tuple[AnyAct, ...]:
    """The acts of this name that a stretch tells; none where what they need isn't there, or is beyond all bounds."""
    if (
        act in _OF_ONESELF
        and body.is_of_another(stretch)
        and not (act == "scored" and stretch.marks("person"))
    ):
        return ()
    try:
        filled = FILLERS.get(act, _as_it_is)(stretch)
        if filled is None:
            return ()
        several = [filled] if isinstance(filled, dict) else filled
        return tuple(
            cast("AnyAct", ACTS[fields.pop("act", act)](**{"text": stretch.said} | fields))
            for fields in several
        )
    except ValidationError:
        return ()


def _as_it_is(_: Stretch) -> Fields:
    return {}


def _things(stretch: Stretch) -> Fields | None:
    found = equipment.equipment(stretch)
    return {"equipment": found} if found else None


def _has(stretch: Stretch) -> Fields | None:
    found = equipment.equipment(stretch)
    place = "gym" if stretch.values("everything") else None
    return {"equipment": found, "until": days.until(stretch), "place": place} if found else None


def _shares(stretch: Stretch) -> Fields:
    return {"equipment": equipment.equipment(stretch), "person": people.partner(stretch)}


def _lost(stretch: Stretch) -> Fields | None:
    """What is gone is said with a no, so a no doesn't take it away."""
    named = stretch.values("thing", "other_thing")
    found = [one for one in equipment.equipment(stretch, gone=True) if one.implement in named]
    left = [name for name in named if name not in {one.implement for one in found}]
    found += [Equipment(implement=name) for name in left]
    return {"equipment": tuple(found)} if found else None


def _spares(stretch: Stretch) -> Sequence[Fields] | None:
    """What hurts is one telling, what is to be left out another."""
    until = days.until(stretch)
    joints, wishes = body.joints(stretch), tuple(stretch.values("wish"))
    told: list[Fields] = [{"limits": joints, "side": body.side(stretch), "until": until}] if joints else []
    told += [{"limits": wishes, "until": until}] if wishes else []
    return told or None


def _well_again(stretch: Stretch) -> Fields | None:
    limits = body.spared(stretch)
    return {"limits": limits} if limits or stretch.context.question == "pain" else None


def _condition(stretch: Stretch) -> Fields | None:
    found = body.conditions(stretch)
    return {"limits": found} if found else None


def _hurt(stretch: Stretch) -> Fields | None:
    limits = body.joints(stretch)
    told = limits or stretch.context.question == "pain" or stretch.means("hurt")
    return {"limits": limits, "side": body.side(stretch)} if told else None


def _sore(stretch: Stretch) -> Fields:
    return {"where": body.muscle(stretch)}


def _sign(stretch: Stretch) -> Fields | None:
    """Only what the lexicon knows: what only sounds like one is asked about."""
    told = stretch.first("sign")
    return {"sign": told} if told else None


def _weighs(stretch: Stretch) -> Fields | None:
    """A weight alone may be what was lifted, where that is the score, or of what else the message tells."""
    is_bare = not stretch.means("weight") and not any(True for _ in stretch.helps("self_word"))
    beside = not stretch.is_whole and stretch.context.question != "weight"
    if is_bare and (_lifts(stretch) or beside):
        return None
    loads = [exact_kg(one.value) for one in stretch.quantities("load")]
    bare = [in_kg(one.value, stretch.context.units) for one in stretch.quantities("number")]
    found = [one for one in loads or bare if _LIGHTEST_KG <= one <= _HEAVIEST_KG]
    return {"body_mass_kg": found[0]} if found else None


def _lifts(stretch: Stretch) -> bool:
    session = stretch.context.session
    return session is not None and any(block.scored and way_of(block) is Way.LOAD for block in session.blocks)


def _can(stretch: Stretch) -> Sequence[Fields] | None:
    """What is planned for another day is no ability yet."""
    planned = [one for one in days.days(stretch, counted=False) if one not in _THIS_DAY]
    return None if planned else abilities(stretch) or None


def _scored(stretch: Stretch) -> Sequence[Fields] | None:
    """Of each person what is told beside them; of one's own also whether it was lighter, or as written."""
    day = next((one for one in days.days(stretch, counted=False) if one not in _THIS_DAY), None)
    told = [
        {"score": one, "day": day, "person": _whose(part)}
        for part in stretch.parts("person")
        for one in scores.results(part)
    ]
    beside = scores.said_of_it(stretch) if told and not stretch.marks("person") else None
    return [*told, {"act": beside}] if beside else told or None


def _whose(part: Stretch) -> str | None:
    """The one who is named beside it; not who is spoken of only when it was told: `14:08. What did Bo get?`."""
    named, numbers = part.marks("person"), [one for one in part.marks() if one.quantity]
    if not named or not numbers or numbers[-1].start > named[0].start:
        return part.first("person")
    between = part.marked.text.tokens[numbers[-1].end : named[0].start]
    return None if any(one.word in _SENTENCE_ENDS for one in between) else part.first("person")


def _corrects(stretch: Stretch) -> Fields | None:
    told = scores.results(stretch)
    return {"score": told[-1]} if told else None


def _effort(stretch: Stretch) -> Fields | None:
    bare = stretch.quantities("number", "range")
    typed = [one for one in bare if stretch.marked.text.tokens[one.start].kind == "number"]
    told = stretch.quantities("effort") or typed or _without_articles(bare)
    fitting = [one.value for one in told if 0 <= one.value <= _HARDEST]
    return {"value": fitting[0]} if fitting else None


def _without_articles(told: Sequence[Quantity]) -> Sequence[Quantity]:
    """`un ocho`, `ne gute acht`: a one in words may be an article, and counts only where nothing else does."""
    return [one for one in told if one.value != 1] or told


def _has_minutes(stretch: Stretch) -> Fields | None:
    told = days.minutes(stretch)
    if told is None:
        bare = [int(one.value) for one in stretch.quantities("number") if one.value >= 1]
        told = bare[0] if bare and stretch.means("short", "only") else None
    return {"minutes": told if told is None or told <= _LONGEST_DAY_MIN else None}


def _elsewhere(stretch: Stretch) -> Fields:
    found = equipment.equipment(stretch)
    return {"place": places.where(stretch), "until": days.until(stretch), "equipment": found or None}


def _back_after(stretch: Stretch) -> Fields:
    return {"days": days.in_days(stretch)}


def _movement(stretch: Stretch) -> Fields:
    return {"movement": stretch.named("movement")}


def _how_to(stretch: Stretch) -> Fields | None:
    """A word of the trade: one that is only that, else a word of every day that is asked about like one."""
    loose = (stretch.marked.helps(at, "term_word") for at in stretch.helps("term_word"))
    term = stretch.first("term") or _of_a_board(stretch)
    term = term or (next(loose, None) if stretch.means("question") else None)
    # A bell is a thing, and a swing to some: asked about like a word, it is the thing.
    only = [one for one in stretch.marks("movement") if one.value("thing") is None]
    return {"term": term} if term and not only else {"movement": stretch.first("movement")}


def _of_a_board(stretch: Stretch) -> str | None:
    """How boards write things: `16/12`, `4 sets`."""
    told = stretch.quantities("number", "load")
    pair = any(one.end < stretch.end and stretch.word(one.end) == "/" for one in told) and len(told) > 1
    return "two loads" if pair else "sets" if "sets" in [one.kind for one in stretch.quantities()] else None


def _swap(stretch: Stretch) -> Fields:
    """Which movement goes, and which comes: `rows instead of runs`, `swap runs for rows`, `rows instead`."""
    named = stretch.marks("movement")
    ids = [one.value("movement") for one in named]
    said = [(at, stretch.marked.helps(at, "instead")) for at in stretch.helps("instead")]
    before_of = [at for at, how in said if how in {"of", "other"}]
    if len(named) > 1:
        turned = any(named[0].end <= at < named[1].start for at in before_of)
        return {"movement": ids[1], "to": ids[0]} if turned else {"movement": ids[0], "to": ids[1]}
    if not named:
        return {}
    alone = [at for at, how in said if how == "alone"]
    if alone and not before_of and alone[0] >= named[0].end and not stretch.means("what"):
        return {"to": ids[0]}
    return {"movement": ids[0]}


def _day(stretch: Stretch) -> Fields:
    return {"day": days.day(stretch)}


def _each_day(stretch: Stretch) -> Sequence[Fields]:
    named = days.days(stretch)
    # `tuesday is off this week only`: the week says which tuesday.
    return [{"day": one} for one in named if one not in _WEEKS] or [{"day": one} for one in named] or [{}]


def _each_day_wanted(stretch: Stretch) -> Sequence[Fields]:
    """`thursday and not friday`: without the refused day."""
    wanted = days.wanted(stretch)
    return [{"day": one} for one in wanted] if wanted else _each_day(stretch)


def _remind(stretch: Stretch) -> Fields:
    return {"minutes_before": days.minutes(stretch)}


def _quiet(stretch: Stretch) -> Fields:
    since, to = days.clocks(stretch)
    return {"since": since, "to": to}


def _units(stretch: Stretch) -> Fields | None:
    wanted = units.wanted(stretch)
    return {"units": wanted} if wanted else None


def _zone(stretch: Stretch) -> Fields | None:
    place = (
        places.offset(stretch)
        or stretch.first("city")
        or stretch.first("zone_name")
        or places.behind_in(stretch)
    )
    if place is None and stretch.context.question == "zone":
        place = places.unknown_words(stretch)
    return {"place": place} if place else None


def _with_person(*more: Callable[[Stretch], Fields]) -> Filler:
    """One act for each person who is named, with what is told beside them."""

    def filler(stretch: Stretch) -> Sequence[Fields] | None:
        found: list[Fields] = []
        for part in stretch.parts("person"):
            person = part.first("person")
            told = {name: value for one in more for name, value in one(part).items()}
            found += [{"person": person, "text": part.said} | told] if person else []
        return found or None

    return filler


def _maybe_person(stretch: Stretch) -> Sequence[Fields]:
    return [{"person": person} for person in stretch.values("person")] or [
        {"person": stretch.named("person")}
    ]


def _class(stretch: Stretch) -> Fields:
    named = " and ".join(one for one in days.days(stretch, counted=False) if one not in _NO_RULE)
    every = any(True for _ in stretch.helps("every_word"))
    links = [one.typed for one in stretch.marked.text.tokens if one.kind == "link"]
    return {
        "rule": (f"every {named}" if every else named) if named else None,
        "time": days.one_clock(stretch, of_class=True),
        "minutes": days.minutes(stretch),
        "link": links[0] if links else None,
    }


def _class_change(stretch: Stretch) -> Fields:
    found = days.days(stretch)
    clock = days.one_clock(stretch, of_class=True)
    to = " ".join(one for one in (*found[1:2], clock) if one)
    return {"day": found[0] if found else None, "to": to or None}


def _post(stretch: Stretch) -> Fields | None:
    """Not where it is refused: `don't post yet`."""
    if any(True for _ in stretch.helps("denial")):
        return None
    own = days.days(stretch)
    # The day stands above a board; what is told after it has days of its own.
    above = replace(stretch, start=0, end=stretch.end)
    named = next((one for one in own or days.days(above) if one not in _THIS_DAY), None)
    told = [one for one in (named, days.one_clock(stretch)) if one]
    later = "tonight" if "tonight" in own else "now"
    return {"when": " ".join(told) or later}


def _withdraw(stretch: Stretch) -> Fields:
    said = (stretch.marked.helps(at, "what_word") for at in stretch.helps("what_word"))
    return {"what": next(said, "session")}


def _what_if(stretch: Stretch) -> Fields:
    """What stands behind the `if`."""
    ifs = list(stretch.helps("if_word"))
    start = ifs[-1] + 1 if ifs else stretch.start
    return {"change": (stretch.marked.text.words(start, stretch.end) or stretch.said).rstrip(" ?!.")}


def _passed_on(stretch: Stretch) -> Fields:
    """The words that are for somebody else, without those that say so: `... so tell everyone well done`."""
    passing = list(stretch.helps("passes_on"))
    if passing and (words := _behind(stretch, passing[-1] + 1)):
        return {"text": words}
    colons = [at for at in range(stretch.start, stretch.end) if stretch.word(at) == ":"]
    thats = [at for at in stretch.helps("that_word") if at <= stretch.start + _WORDS_BEFORE_THE_MATTER]
    start = next(iter(thats or colons), None)
    words = stretch.marked.text.words(start + 1, stretch.end) if start is not None else ""
    return {"text": words or stretch.said}


def _behind(stretch: Stretch, at: int) -> str:
    while stretch.word(at) in {",", ":"} or stretch.marked.helps(at, "that_word") is not None:
        at += 1
    return stretch.marked.text.words(at, stretch.end) if at < stretch.end else ""


FILLERS: Final[Mapping[str, Filler]] = {
    "has": _has,
    "got": _things,
    "lost": _lost,
    "shares": _shares,
    "spares": _spares,
    "well_again": _well_again,
    "sign": _sign,
    "condition": _condition,
    "weighs": _weighs,
    "can": _can,
    "scored": _scored,
    "corrects": _corrects,
    "effort": _effort,
    "hurt": _hurt,
    "sore": _sore,
    "has_minutes": _has_minutes,
    "elsewhere": _elsewhere,
    "back_after": _back_after,
    "too_hard": _movement,
    "too_easy": _movement,
    "skips": _day,
    "how_long": _maybe_person,
    "how_to": _how_to,
    "how_heavy": _movement,
    "swap": _swap,
    "my_history": _movement,
    "board": _day,
    "when_is_class": _day,
    "why": _movement,
    "joins_class": _each_day_wanted,
    "leaves_class": _each_day,
    "remind": _remind,
    "no_reminders": _day,
    "quiet": _quiet,
    "zone": _zone,
    "units": _units,
    "to_coach": _passed_on,
    "announce": _passed_on,
    "post": _post,
    "withdraw": _withdraw,
    "class": _class,
    "class_change": _class_change,
    "class_off": _each_day,
    "order": _with_person(),
    "note_fault": _with_person(_movement),
    "easy_week": _maybe_person,
    "teach": _movement,
    "event": _day,
    "who_reported": _day,
    "how_is": _with_person(),
    "what_if": _what_if,
}
