"""English words for a version's parts, as plain text: lines with their reasons, headings, cautions, group notes.

Shared by the private chat and the command line; escaping for a platform is the caller's.
"""

import re
from collections.abc import Iterable, Mapping, Sequence
from decimal import Decimal

from bot.words.headings import MINUTE, number
from bot.words.reasons import reason_words, thing_words
from bot.words.text import listed, sentence, singular, with_article
from bot.words.things import label_of
from core.athletes.values import Easing, Side
from core.desk.reference import catalogue, limit
from core.measures import AmountUnit, MassUnit, as_marked, in_words
from core.movements.values import Pattern, Variant
from core.scaling.values import (
    Because,
    Caution,
    Change,
    NeedsCoach,
    Reason,
    Version,
    VersionBlock,
    VersionLine,
    Withheld,
)


def line_words(line: VersionLine, units: MassUnit, spared: set[str] | None = None) -> str:
    """A line and, where something changed, why: `8 push-ups with your hands on a table. A lighter way, ...`.

    `spared`: limits that lines before it named; one that is named now joins them.
    """
    what, why = what_words(line, units), reason_words(line, units, spared)
    return f"{what}. {why}" if why else what


def cue_words(line: VersionLine, units: MassUnit) -> str:
    """What the coach noted about a line; empty where that is nothing."""
    return coachs_words(line.cues, line.at_most_kg, units)


def coachs_words(cues: Sequence[str], at_most_kg: Decimal | None, units: MassUnit) -> str:
    """`Your coach: keep your back flat. At most 30 kg in your hands.`; plain text."""
    told = [sentence(words) for words in cues]
    if at_most_kg is not None:
        told.append(f"At most {in_words(at_most_kg, units)} in your hands.")
    return f"Your coach: {' '.join(told)}" if told else ""


def in_turn(block: VersionBlock, words: Sequence[str]) -> list[str]:
    """The words for every line of the block, under their minutes, with the minutes of rest between them."""
    first, last = len(block.buy_in), len(block.buy_in) + len(block.lines)
    told = [(line.station, said) for line, said in zip(block.lines, words[first:last], strict=True)]
    told += [(station, "rest") for station in block.rest_stations]
    if block.rest_stations:
        told.sort(key=lambda one: one[0] or 0)
    turn = "Minute" if block.every_s == MINUTE else "Station"
    return [
        *_once("First, once", words[:first]),
        *(f"{turn} {station}: {said}" if station else said for station, said in told),
        *_once("Then, once", words[last:]),
    ]


def _once(when: str, words: Sequence[str]) -> list[str]:
    """What is done before or after the rounds, so that nobody takes it for a line of each."""
    return [f"{when if place == 0 else 'and once'}: {said}" for place, said in enumerate(words)]


def what_words(line: VersionLine, units: MassUnit) -> str:
    """What to do, without why: `12 goblet squats (16 kg kettlebell)`."""
    if line.change is Change.REST:
        left_out = line.reason.because is Because.NO_TIME
        return f"{'Left out today: ' if left_out else 'Rest instead of '}{line.written}"
    label = _label(line)
    load = _held(line, label) if line.load_kg is None else f"({_load(line, units)})"
    label, notes = _at_their_pace(label, line)
    label = singular(label) if line.amount == 1 and line.unit is AmountUnit.REPS else label
    parts = [_amount(line), label, load]
    words = " ".join(part for part in parts if part)
    if line.amount is None and line.unit is AmountUnit.KCAL and not line.scheme:
        words = f"{words} for calories"
    return f"{words}{_on_sides(line)}{_beside(line, notes)}"


def _on_sides(line: VersionLine) -> str:
    """`, on each side`, `, left side`, `, 5 on each side in turn`."""
    if line.per_side:
        return ", on each side"
    if line.side != "alternating":
        return f", {line.side} side" if line.side else ""
    halves = line.amount is not None and line.unit is AmountUnit.REPS and line.amount % 2 == 0
    return (
        f", {number((line.amount or 0) / 2)} on each side in turn" if halves else ", one side after the other"
    )


def _at_their_pace(label: str, line: VersionLine) -> tuple[str, str | None]:
    """What the coach wants easy is called so where it stands in, too: the label and the words that are left beside it.

    A brisk walk is an easy walk then, and a walk where the coach wrote no more than that.
    """
    if label.startswith(BRISK) and _WALK.search(line.written) and not _BRISKLY.search(line.written):
        label = label.removeprefix(BRISK)
    told = line.notes.split("; ") if line.notes else []
    wanted = EASY in told or EASY in line.written.lower().split()
    if wanted and label.removeprefix(BRISK) == WALK:
        left = [one for one in told if one != EASY]
        return f"{EASY} {label.removeprefix(BRISK)}", "; ".join(left) or None
    is_lost = wanted and EASY not in told and not any(word in label.split() for word in (EASY, GENTLY))
    goes = catalogue().movement(line.movement).pattern is Pattern.TRAVEL
    return (f"{EASY} {label}" if is_lost and goes else label), line.notes


def _beside(line: VersionLine, notes: str | None) -> str:
    """What the coach wrote with a line: `; 60/50 cm`, `; tempo 31x1`, `; stop with 2 left in you`."""
    tempo = f"tempo {line.tempo}" if line.tempo else None
    leaves = f"stop with {number(line.leaves)} left in you" if line.leaves is not None else None
    pieces = f"in {line.pieces} pieces, sitting down between them" if line.pieces > 1 else None
    return "".join(f"; {said}" for said in (tempo, leaves, pieces, notes) if said)


# `push-ups with your hands on a chair`: how, and not whose.
_HOW = re.compile(r"\b(?:with (?:your |the )?(?P<how>.+)|(?P<from>from (?:your |the )?.+))$")


def mark_words(line: VersionLine, units: MassUnit) -> str:
    """What of a line was otherwise, as short as it goes: `hands on a chair`, `10 kg dumbbell`, `fewer squats`."""
    label = _label(line)
    if line.change is Change.REST:
        return f"no {line.movement}"
    if line.change is Change.AMOUNT:
        return f"fewer {label}"
    if line.change in {Change.LOAD, Change.IMPLEMENT} and line.load_kg is not None:
        return _load(line, units)
    how = _HOW.search(label) if line.change is Change.VARIANT else None
    return (how["how"] or how["from"].replace("your", "the")) if how else label


def _variant(line: VersionLine) -> Variant:
    return catalogue().variant(f"{line.movement}/{line.variant}")[1]


def _amount(line: VersionLine) -> str:
    minutes, most = (line.amount or 0) / MINUTE, (line.amount_to or line.amount or 0) / MINUTE
    if line.unit is AmountUnit.SECONDS and minutes in WHOLE_MINUTES and most in WHOLE_MINUTES:
        said = number(minutes) if minutes == most else f"{number(minutes)}-{number(most)}"
        return f"{said} min{_of(line)}"
    amount = "-".join(map(str, line.scheme)) if line.amount is None else number(line.amount)
    if line.amount is not None and line.amount_to is not None and line.amount_to != line.amount:
        amount = f"{amount}-{number(line.amount_to)}"
    return amount if not amount or line.unit is AmountUnit.REPS else f"{amount} {line.unit}{_of(line)}"


def _of(line: VersionLine) -> str:
    """`40 s of push-ups`, but `400 m run`."""
    movement, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    return " of" if movement.unit_of(variant) is AmountUnit.REPS else ""


def _label(line: VersionLine) -> str:
    """The way's own words, naming what is there: `bridges with your feet on a bench`, `toes-to-bar (rings)`."""
    variant, thing = _variant(line), line.implement
    usual = next((need[0] for need in variant.needs if thing in need[1:]), None)
    if thing is None or usual is None:
        return variant.label
    usually, here = (catalogue().implement(one).label for one in (usual, thing))
    if with_article(usually) in variant.label:
        return variant.label.replace(with_article(usually), with_article(here))
    return f"{variant.label} ({here})"


def _held(line: VersionLine, label: str) -> str:
    """`(barbell)`: what is held where the load is still to be found; nothing where the label names it."""
    if line.implement is None or not any(hold.fits(line.implement, None) for hold in _variant(line).holds):
        return ""
    thing = catalogue().implement(line.implement).label
    if thing in label:
        return ""
    return f"(two {thing}s)" if line.count == 2 else f"({thing})"  # noqa: PLR2004


def _load(line: VersionLine, units: MassUnit) -> str:
    assert line.load_kg is not None
    thing = catalogue().implement(line.implement or "")
    if thing.improvised:
        return _filled(label_of(thing.id, line.load_kg), in_words(line.load_kg, units), line.count)
    load = as_marked(line.load_kg, units)
    if line.count == 2:  # noqa: PLR2004
        return f"two {load} {thing.label}s"
    shared = any(hold.fits(thing.id, 2) for hold in _variant(line).holds)
    return f"one {load} {thing.label} in both hands" if shared else f"{load} {thing.label}"


def _filled(label: str, load: str, count: int | None) -> str:
    two = count == 2  # noqa: PLR2004
    return f"two {label}s filled to {load} each" if two else f"{label} filled to {load}"


# From so many on nobody counts in seconds.
WHOLE_MINUTES = range(2, 600)
BRISK, WALK, EASY, GENTLY = "brisk ", "walk", "easy", "gently"
_WALK = re.compile(rf"\b{WALK}(?:ing)?\b", re.IGNORECASE)
_BRISKLY = re.compile(r"\b(?:brisk|fast|power|quick|strong|hard)", re.IGNORECASE)
# Shares in percent.
SHARES = {50: "Half", 67: "About two thirds", 75: "Three quarters"}
WHY_LESS = {
    "condition": ", for the sake of your health",
    "new": ", so that you build up step by step",
    "returning": ", as you're back after a break",
    "easy-week": ", as it's an easy week",
}


def eased_words(easing: Easing, *, is_told: bool = False) -> str:
    """`Half of the work, as you're back after a break`; `is_told`: why is known."""
    percent = round(100 * easing.share)
    share = SHARES.get(percent, f"About {percent} %")
    return f"{share} of the work{'' if is_told else WHY_LESS[easing.of]}"


# How breath tells an effort, on the scale of 0 to 10: moderate is 5 and 6, where one talks and doesn't sing (talk test
# and scale of effort: American College of Sports Medicine, guidelines for exercise testing and prescription; from memory).
TALKS = {
    4: "you can chat as you go",
    5: "you can talk, but wouldn't sing",
    6: "you can talk in short sentences",
}


def effort_words(effort: int) -> str:
    """`6 of 10 at most: you can talk in short sentences`."""
    talks = TALKS.get(max(effort, min(TALKS)))
    return f"{effort} of 10 at most" + (f": {talks}" if talks else "")


def in_minutes_words(version: Version) -> str:
    """That it was cut for want of time, and to how much."""
    return f"Cut to fit your {number(version.in_minutes or 0)} minutes, warm-up and rests included."


def joint(limit_id: str) -> str:
    """`wrist`, `lower back`."""
    return limit(limit_id).label.removeprefix("sore ")


def sided(limit_id: str, side: Side | None) -> str:
    """`left wrist`, `wrist, on both sides`, `lower back`."""
    if side == "both":
        return f"{joint(limit_id)}, on both sides"
    return f"{side} {joint(limit_id)}" if side else joint(limit_id)


def limit_names(ids: Iterable[str], sides: Mapping[str, Side]) -> str:
    """`sore wrist (left) and no jumping`."""
    return listed([f"{limit(one).label} ({sides[one]})" if one in sides else limit(one).label for one in ids])


def caution_words(caution: Caution) -> str:
    """The caution of a limit or of a thing in use."""
    if caution.of == "limit":
        words = limit(caution.id).caution
        return f"{sided(caution.id, caution.side).capitalize()}: {words}" if caution.side else words
    return catalogue().implement(caution.id).caution


def need_words(need: NeedsCoach, units: MassUnit) -> str:
    """What the coach should look at. What a limit is stays with the athlete."""
    if need.written is None:
        return "Needs your OK before the session."
    return f"“{need.written}” {_need(need, units)}."


def _need(need: NeedsCoach, units: MassUnit) -> str:
    if need.suits_kg is not None:
        return f"isn't there so light; their {as_marked(need.suits_kg, units)} would suit them, if you let them go heavier"
    if need.change is Change.MOVEMENT:
        return "is missing from their version: something of another kind stands in"
    match need.because:
        case Because.TOO_LIGHT:
            return "is light for them: allow more, or choose something harder"
        case Because.UNKNOWN_HEAVY:
            return "is untried: nothing shows yet how much is safe"
        case Because.NOT_OWNED | Because.NOT_ASKED:
            return f"needs {thing_words(Reason(because=need.because, about=need.about), units)}, and nothing else fits"
        case _:
            return "has no safe version for them"


def withheld_words(withheld: Withheld) -> str:
    """Why there is no version, to the athlete."""
    return {
        "screening": "No session until you've been cleared by a doctor.",
        "clearance": "First ask a doctor or midwife whether you may train. As soon as you may, change what you spare under /me, "
        "and we start gently.",
        "rest": "Rest today. Training with a fever or an infection can harm the heart; come back when you're well.",
        "unclear": "Something I know about you doesn't add up, so I give you no version that might be wrong. /me shows what I "
        "know: tell me your equipment and what you spare once more, or ask your coach.",
    }[withheld.because]
