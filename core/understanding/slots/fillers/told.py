"""The fields of what an athlete tells."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from core.athletes.values import Equipment
from core.notation.body.healing import injured, no_better, pain_is_gone, well_beside
from core.scores.ways import Way, way_of
from core.understanding.quantities import Quantity
from core.understanding.slots import body, days, equipment, people, places, scores
from core.understanding.slots.abilities import abilities
from core.understanding.slots.exchanged import exchanged, things_in
from core.understanding.slots.fillers.plain import THIS_DAY, Fields, Filler, day, movement
from core.understanding.slots.stretch import Stretch, exact_kg, in_kg

# Adults; beyond these it is a slip or another unit.
_LIGHTEST_KG, _HEAVIEST_KG = 30, 300
_SCORES = ("plus", "clock", "rounds", "reps", "load", "cal", "distance")
_HARDEST: Final = 10
_LONGEST_DAY_MIN: Final = 600
_SENTENCE_ENDS: Final = frozenset(".!?\n")


def _things(stretch: Stretch) -> Fields | Sequence[Fields] | None:
    if told := _each_exchange(stretch):
        return told
    found = things_in(stretch, replace(stretch, start=0))
    return {"equipment": found} if found else None


def _each_exchange(stretch: Stretch) -> Sequence[Fields]:
    """What came and what went in one breath, each by its own verb."""
    return [{"act": one.verb, "equipment": one.things} for one in exchanged(stretch)]


def _has(stretch: Stretch) -> Fields | Sequence[Fields] | None:
    if told := _each_exchange(stretch):
        return told
    found = equipment.equipment(stretch)
    place = "gym" if stretch.values("everything") else None
    return {"equipment": found, "until": days.until(stretch), "place": place} if found else None


def _shares(stretch: Stretch) -> Fields:
    return {"equipment": equipment.equipment(stretch), "person": people.partner(stretch)}


def _lost(stretch: Stretch) -> Fields | Sequence[Fields] | None:
    """What is gone is said with a no, so a no doesn't take it away."""
    if told := _each_exchange(stretch):
        return told
    named = stretch.values("thing", "other_thing")
    found = [one for one in equipment.equipment(stretch, gone=True) if one.implement in named]
    left = [name for name in named if name not in {one.implement for one in found}]
    found += [Equipment(implement=name) for name in left]
    return {"equipment": tuple(found)} if found else None


def _spares(stretch: Stretch) -> Sequence[Fields] | None:
    """What hurts is one telling, what is to be left out another."""
    until = days.until(stretch)
    joints, wishes = (*body.joints(stretch), *body.muscles(stretch)), tuple(stretch.values("wish"))
    told: list[Fields] = [{"limits": joints, "side": body.side(stretch), "until": until}] if joints else []
    told += [{"limits": wishes, "until": until}] if wishes else []
    return told or None


def _well_again(stretch: Stretch) -> Sequence[Fields] | None:
    """What is said to be no better in the same breath hurts: nothing is healed by a no."""
    named = (*body.spared(stretch), *body.muscles(stretch))
    bad = tuple(one for one in no_better(stretch.said) if one in named)
    limits = tuple(one for one in named if one not in bad)
    told: list[Fields] = (
        [{"limits": limits}] if limits or (not bad and stretch.context.question == "pain") else []
    )
    told += [{"act": "hurt", "limits": bad, "side": body.side(stretch)}] if bad else []
    return told or None


def _condition(stretch: Stretch) -> Fields | None:
    found = body.conditions(stretch)
    return {"limits": found} if found else None


def _hurt(stretch: Stretch) -> Sequence[Fields] | None:
    """Where one thing hurts and another one is fine, each is a telling of its own."""
    named = (*body.joints(stretch), *body.muscles(stretch))
    tells_both = injured(stretch.said) or pain_is_gone(stretch.said)
    well = tuple(one for one in well_beside(stretch.said) if one in named and tells_both)
    limits = tuple(one for one in named if one not in well)
    told = limits or (not well and (stretch.context.question == "pain" or stretch.means("hurt")))
    hurting: list[Fields] = [{"limits": limits, "side": body.side(stretch)}] if told else []
    return [*({"act": "well_again", "limits": (one,)} for one in well), *hurting] or None


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
    planned = [one for one in days.days(stretch, counted=False) if one not in THIS_DAY]
    return None if planned else abilities(stretch) or None


def _scored(stretch: Stretch) -> Sequence[Fields] | None:
    """Of each person what is told beside them; of one's own also whether it was lighter, or as written."""
    day = next((one for one in days.days(stretch, counted=False) if one not in THIS_DAY), None)
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
    fits = all(0 <= one.value <= _HARDEST for one in told)
    return {"value": told[0].value} if told and fits else None


def _without_articles(told: Sequence[Quantity]) -> Sequence[Quantity]:
    """`un ocho`, `ne gute acht`: a one in words may be an article, and counts only where nothing else does."""
    return [one for one in told if one.value != 1] or told


def _has_minutes(stretch: Stretch) -> Fields | None:
    told = days.minutes(stretch)
    if told is None:
        bare = [int(one.value) for one in stretch.quantities("number") if one.value >= 1]
        told = bare[0] if bare and stretch.means("short", "only") else None
        of_days = days.in_days(stretch) is not None
        if told is None and (bare or of_days):
            return None  # `I have 58 years` tells no time of today
    return {"minutes": told if told is None or told <= _LONGEST_DAY_MIN else None}


def _elsewhere(stretch: Stretch) -> Fields:
    found = equipment.equipment(stretch)
    return {"place": places.where(stretch), "until": days.until(stretch), "equipment": found or None}


def _back_after(stretch: Stretch) -> Fields:
    return {"days": days.in_days(stretch)}


# So many days of it make somebody used to it, and fewer some (estimate).
_USED_TO_IT, _SOME = 730, 180


def _trains(stretch: Stretch) -> Fields | None:
    """`Never done this`, `been lifting 8 years`: in words, or by how long."""
    told = stretch.first("level")
    if told:
        return {"level": told}
    since = days.in_days(stretch) or 0
    return {"level": "trained" if since >= _USED_TO_IT else "some"} if since >= _SOME else None


def _yes_or_no(stretch: Stretch) -> Fields | None:
    """Not where a score stands beside it: `yes 7+12` tells that, and no button may be tapped by it."""
    about_oneself = stretch.context.question in {"consent", "screening"}
    return None if stretch.quantities(*_SCORES) and not about_oneself else {}


FILLERS: Final[Mapping[str, Filler]] = {
    "agrees": _yes_or_no,
    "declines": _yes_or_no,
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
    "trains": _trains,
    "too_hard": movement,
    "too_easy": movement,
    "skips": day,
}
