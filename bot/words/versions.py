"""English words for a version's parts, as plain text: lines with their reasons, headings, cautions, group notes.

Shared by the private chat and the command line; escaping for a platform is the caller's.
"""

from collections.abc import Callable
from decimal import Decimal

from bot.words.text import listed, plural, with_article
from core.desk.reference import catalogue, limit, limits
from core.measures import AmountUnit, MassUnit, as_marked, from_kg, in_words
from core.movements.values import Variant
from core.scaling.values import (
    Because,
    Caution,
    Change,
    NeedsCoach,
    Reason,
    Say,
    VersionBlock,
    VersionLine,
    Withheld,
)
from core.sessions.values import Format

KEPT = {
    "movement": "the movement stays the same",
    "reps": "the number stays the same",
    "pattern": "it trains the same thing",
}

PLACES = {
    "jumping": "there's no jumping where you train",
    "running": "there's no room to run where you train",
    "overhead": "the ceiling is low where you train",
}

MINUTE = 60

BUILD_UP = (
    "How much is safe for you here nobody knows yet: start light, build up, and stop with three left in you"
)


def block_heading(block: VersionBlock) -> str:
    """`20 minutes, as many rounds as you can`; `21-15-9 for time`."""
    if block.format is Format.AMRAP:
        return f"{_number(block.minutes or 0)} minutes, as many rounds as you can"
    if block.format is Format.FOR_TIME:
        return f"{_rounds(block)}for time{_cap(block)}"
    return HEADINGS[block.format](block)


def _intervals(block: VersionBlock) -> str:
    """`4 rounds, 40 s work and 20 s rest at each`; `Every minute for 10 minutes`; `Every 90 s, 5 times`."""
    rounds = f", {block.rounds} times" if block.rounds else ""
    if block.work_s and block.rest_s:
        turns = f"{block.rounds} rounds, " if block.rounds else ""
        return f"{turns}{_time(block.work_s)} work and {_time(block.rest_s)} rest at each"
    if block.every_s and block.minutes:
        return f"Every {_each(block.every_s)} for {_number(block.minutes)} minutes"
    if block.every_s:
        return f"Every {_each(block.every_s)}{rounds}"
    return f"Intervals{rounds}"


def _each(seconds: float) -> str:
    return "minute" if seconds == MINUTE else _time(seconds)


def _time(seconds: float) -> str:
    """`45 s`, `3 minutes`."""
    if seconds < MINUTE or seconds % MINUTE:
        return f"{_number(seconds)} s"
    minutes = seconds / MINUTE
    return f"{_number(minutes)} minute{'' if minutes == 1 else 's'}"


def _sets(block: VersionBlock) -> str:
    sets = f"{block.rounds} sets" if block.rounds and block.rounds > 1 else "One set"
    rest = f", {_time(block.rest_s)} rest after each" if block.rest_s else ""
    return f"{sets}{rest}"


def _within(block: VersionBlock) -> str:
    return f" in {_number(block.minutes)} minutes" if block.minutes else ""


def _quality(block: VersionBlock) -> str:
    rounds = f"{block.rounds} rounds, " if block.rounds and block.rounds > 1 else ""
    return f"{rounds}no clock: take your time".capitalize()


HEADINGS: dict[Format, Callable[[VersionBlock], str]] = {
    Format.INTERVALS: _intervals,
    Format.SETS: _sets,
    Format.HOLD: lambda _: "Hold as long as your position stays clean",
    Format.MAX_REPS: lambda block: f"As many as you can{_within(block)}, stopping before they get ugly",
    Format.MAX_LOAD: lambda block: (
        f"Work up to the heaviest that stays clean{_within(block)}; stop with one or two left in you"
    ),
    Format.TIME_TRIAL: lambda block: f"As fast as you can hold evenly{_cap(block)}",
    Format.QUALITY: _quality,
}


def _rounds(block: VersionBlock) -> str:
    if block.scheme:
        return "-".join(map(str, block.scheme)) + " "
    return f"{block.rounds} rounds " if block.rounds and block.rounds > 1 else ""


def _cap(block: VersionBlock) -> str:
    return f", {_number(block.cap_s / 60)} minutes at most" if block.cap_s else ""


def line_words(line: VersionLine, units: MassUnit) -> str:
    """A line and, where something changed, why: `8 push-ups with your hands on a table. A lighter way, ...`."""
    what, why = what_words(line, units), reason_words(line, units)
    return f"{what}. {why}" if why else what


def what_words(line: VersionLine, units: MassUnit) -> str:
    """What to do, without why: `12 goblet squats (16 kg kettlebell)`."""
    if line.change is Change.REST:
        return f"Rest instead of {line.written}"
    label = _variant(line).label
    parts = [_amount(line), label, f"({_load(line, units)})" if line.load_kg is not None else ""]
    words = " ".join(part for part in parts if part)
    return f"{words}, on each side" if line.per_side else words


def _variant(line: VersionLine) -> Variant:
    return catalogue().variant(f"{line.movement}/{line.variant}")[1]


def _amount(line: VersionLine) -> str:
    if line.amount is None:
        return "-".join(map(str, line.scheme))
    amount = _number(line.amount)
    if line.amount_to is not None and line.amount_to != line.amount:
        amount = f"{amount}-{_number(line.amount_to)}"
    return amount if line.unit is AmountUnit.REPS else f"{amount} {line.unit}{_of(line)}"


def _of(line: VersionLine) -> str:
    """`40 s of push-ups`, but `400 m run`."""
    movement, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    return " of" if movement.unit_of(variant) is AmountUnit.REPS else ""


def _load(line: VersionLine, units: MassUnit) -> str:
    assert line.load_kg is not None
    thing = catalogue().implement(line.implement or "")
    if thing.improvised:
        return f"{thing.label} filled to {in_words(line.load_kg, units)}"
    load = as_marked(line.load_kg, units)
    return f"two {load} {thing.label}s" if line.count == 2 else f"{load} {thing.label}"  # noqa: PLR2004


def _number(value: float) -> str:
    return f"{value:g}"


def reason_words(line: VersionLine, units: MassUnit) -> str:
    """Why a line is as it is, in a sentence or two; empty for a line as written."""
    why = _why(line, units)
    if not why:
        return ""
    kept = KEPT.get(line.reason.keeps or "")
    return f"{why}; {kept}." if kept and line.change is not Change.AMOUNT else f"{why}."


def _why(line: VersionLine, units: MassUnit) -> str:
    reason = line.reason
    match reason.because:
        case Because.AS_WRITTEN:
            return ""
        case Because.TOO_LIGHT:
            return _too_light(line)
        case Because.TOO_HEAVY:
            return _too_heavy(line, units)
        case Because.NOT_OWNED:
            return f"You don't have {_thing(reason, units)}{_so(line)}"
        case Because.UNKNOWN_HEAVY:
            return _unknown(line, units)
        case _:
            return _plainly(line)


PLAIN = {
    Because.SKILL: "You haven't done this one yet, so we start a step before it",
    Because.LIGHT_DUTY: "Easier on purpose, so that you stop with half of it left in you",
    Because.ONE_SETTING: "One setting for the whole block, so that you needn't change it in between",
    Because.COACH: "As was chosen for you",
    Because.NO_SAFE_OPTION: "I know nothing safe for you here today, so your coach hears of it",
}


ASKED = {
    "too-hard": "Easier, as it was too hard",
    "so": "Easier, as you asked",
    "sore": "Easier, as you're sore today",
    "too-easy": "Harder, as it was too easy",
    "bored": "Something else, for a change",
    "as-written": "As written, as you asked",
}


def _plainly(line: VersionLine) -> str:
    because, about = line.reason.because, line.reason.about or ""
    match because:
        case Because.UNTESTED:
            return _untested(line)
        case Because.LIMIT:
            return f"{_for_the_sake(about)}{_so(line)}"
        case Because.ASKED:
            return ASKED.get(about, "As you asked")
        case Because.LIGHT_DUTY if about:
            return f"Easier on purpose, for the sake of your {_spared(about)}"
        case Because.SPACE:
            return f"Changed because {PLACES.get(about, 'the place does not allow it')}"
        case _:
            return PLAIN[because]


def _spared(about: str) -> str:
    """A limit by its label; a sore place is its own word."""
    if about == "all over":
        return "sore muscles"
    labels = {one.id: one.label for one in limits()}
    return labels.get(about, f"sore {about}")


# Why a limit changes a line, by its kind; some are better said in words of their own.
SAKES = {
    "joint": "To spare your {label}",
    "wish": "As you said: {label}",
    "condition": "Kinder with {label}",
    "state": "Gently for now: {label}",
}
OWN_SAKES = {
    "pregnancy": "Kinder while you're pregnant",
    "after-birth": "Kinder in the months after birth",
    "after-illness": "Gently, as you're just over an illness",
    "surgery": "Gently after your surgery",
    "heat": "Easier on a hot day",
}


def _for_the_sake(about: str) -> str:
    """`To spare your sore wrist`, `Kinder while you're pregnant`."""
    one = limit(about)
    return OWN_SAKES.get(about) or SAKES[one.kind].format(label=one.label)


def _so(line: VersionLine) -> str:
    """What follows from an obstacle."""
    if line.change is Change.REST:
        return " and nothing else fits, so your coach hears of it"
    return ", so here's what fits instead" if line.change is Change.MOVEMENT else ""


def _too_light(line: VersionLine) -> str:
    if line.change is Change.NONE:
        return "Light for you, so make every repetition perfect; going heavier is for your coach to say"
    return "What you have is light for this, so it's made harder"


def _too_heavy(line: VersionLine, units: MassUnit) -> str:
    written = line.reason.load_kg
    if line.change is Change.AMOUNT:
        return "Fewer, so that every one of them stays clean"
    if written is None:
        return "As written would be heavy for so many in a row, so this is a lighter way"
    heavy = f"{_in_units(written, units)} would be heavy for so many in a row"
    if line.load_kg is not None and line.load_kg < written:
        return f"{heavy}, so this is lighter"
    return f"{heavy}{' like this' if line.load_kg is not None else ''}, so this is an easier way"


def _unknown(line: VersionLine, units: MassUnit) -> str:
    if line.amount is None and not line.scheme:
        return BUILD_UP
    if line.reason.load_kg is None:
        return "Nothing tells me yet that you're strong enough for it as written, so we start lighter"
    load = _in_units(line.reason.load_kg, units)
    return f"Nothing tells me yet that {load} is safe for you, so we start lighter"


def _untested(line: VersionLine) -> str:
    what = plural(line.reason.about or "")
    less = "with fewer" if line.change is Change.AMOUNT else "lighter"
    return f"I don't know your {what} yet, so we start {less}; tell me how many you can do"


def _in_units(kg: Decimal, units: MassUnit) -> str:
    """A load as the coach wrote it, for whoever reckons in pounds to the nearest one: `35 lb`."""
    if units is MassUnit.KG:
        return as_marked(kg, units)
    return f"{round(from_kg(kg, units))} {units}"


def _thing(reason: Reason, units: MassUnit) -> str:
    """`a table`, `a 16 kg dumbbell`, `16 kg` where any implement would do."""
    thing = catalogue().implement(reason.about) if reason.about else None
    label = thing.label if thing else ""
    if reason.load_kg is None or (thing and thing.kind == "there"):
        return with_article(label) if label else "a weight for this"
    load = _in_units(reason.load_kg, units)
    return with_article(f"{load} {label}") if label else f"{load} for this"


def caution_words(caution: Caution) -> str:
    """The caution of a limit or of a thing in use."""
    if caution.of == "limit":
        return limit(caution.id).caution
    return catalogue().implement(caution.id).caution


def need_words(need: NeedsCoach, units: MassUnit) -> str:
    """What the coach should look at. What a limit is stays with the athlete."""
    if need.written is None:
        return "Needs your OK before the session."
    return f"“{need.written}” {_need(need, units)}."


def _need(need: NeedsCoach, units: MassUnit) -> str:
    if need.change is Change.MOVEMENT:
        return "is missing from their version: something of another kind stands in"
    match need.because:
        case Because.TOO_LIGHT:
            return "is light for them, perhaps allow more"
        case Because.UNKNOWN_HEAVY:
            return "is untried: nothing shows yet how much is safe"
        case Because.NOT_OWNED:
            return f"needs {_thing(Reason(because=need.because, about=need.about), units)}, and nothing else fits"
        case _:
            return "has no safe version for them"


def withheld_words(withheld: Withheld) -> str:
    """Why there is no version, to the athlete."""
    return {
        "screening": "No session until you've been cleared by a doctor.",
        "clearance": "First ask a doctor or midwife whether you may train; then we start gently.",
        "rest": "Rest today. Training with a fever or an infection can harm the heart; come back when you're well.",
    }[withheld.because]


ALOUD = {
    Because.NOT_OWNED: "{names} lack the equipment for “{written}”: say what else will do",
    Because.LIMIT: "{count} of {of} spare something in “{written}”: say that it may look different",
    Because.SPACE: "{names} have no room for “{written}”",
    Because.SKILL: "{names} haven't done “{written}” yet: show the step before it",
    Because.TOO_HEAVY: "“{written}” is heavy for {names}: lighter is right, full range first",
    Because.TOO_LIGHT: "“{written}” is light for {names}: slow and perfect, or allow more",
    Because.UNTESTED: "nobody knows yet how {names} do with “{written}”: start light, ask how many go",
    Because.UNKNOWN_HEAVY: "“{written}” is untried for {names}: build up, stop with three left",
}


def aloud_words(say: Say) -> str:
    """One thing worth saying to the group. A limit is the athlete's own business: counted, never named."""
    template = ALOUD.get(say.because, "look at “{written}” with {names}")
    return template.format(names=listed(say.names), written=say.written, count=len(say.names), of=say.of)
