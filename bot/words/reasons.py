"""English words for why a line is as it is: plain text, shared by the private chat and the command line."""

from decimal import Decimal

from bot.words.text import plural, with_article
from core.desk.reference import catalogue, limit, limits
from core.measures import AmountUnit, MassUnit, as_marked, from_kg
from core.movements.values import Part
from core.scaling.values import Because, Change, Reason, VersionLine

KEPT = {"movement": "the movement stays the same", "pattern": "it trains the same parts of you"}
KEPT_AMOUNT = {
    AmountUnit.REPS: "the number stays the same",
    AmountUnit.SECONDS: "the time stays the same",
    AmountUnit.METRES: "the distance stays the same",
    AmountUnit.KCAL: "the number stays the same",
}
LESS = {
    AmountUnit.REPS: "Fewer, so that every one of them stays clean",
    AmountUnit.SECONDS: "Shorter, so that it stays clean to the end",
    AmountUnit.METRES: "Shorter, so that it stays clean to the end",
    AmountUnit.KCAL: "Fewer, so that you keep your pace to the end",
}
SO_MUCH = {
    AmountUnit.REPS: "for so many in a row",
    AmountUnit.SECONDS: "for so long",
    AmountUnit.METRES: "for so far",
    AmountUnit.KCAL: "for so many",
}

SO_OFTEN = "so often, with these rests"

HOW_MUCH = {
    AmountUnit.REPS: "many you can do",
    AmountUnit.SECONDS: "long you can hold it",
    AmountUnit.METRES: "far you get",
    AmountUnit.KCAL: "many you can do",
}

PLACES = {
    "jumping": "there's no jumping where you train",
    "running": "there's no room for it where you train",
    "overhead": "the ceiling is low where you train",
    "wall": "there's no free wall where you train",
    "doorway": "there's no doorway where you train",
    "noise": "nothing heavy may thud where you train",
}

BUILD_UP = (
    "How much is safe for you here nobody knows yet: start light, build up, and stop with three left in you"
)


def reason_words(line: VersionLine, units: MassUnit, spared: set[str] | None = None) -> str:
    """Why a line is as it is, in a sentence or two; empty for a line as written.

    A limit among those `spared` was named in the reason before: once is enough, but where nothing fits.
    """
    units = _marked_in(line, units)
    why = "For the same reason" if _is_named(line, spared) else _why(line, units)
    if not why:
        return _eased(line).strip()
    kept = _more_often(line) or _kept(line)
    beside = f"{_without(line)}{_more(line, units)}{_eased(line)}"
    return f"{why}; {kept}.{beside}" if kept else f"{why}.{beside}"


def _marked_in(line: VersionLine, units: MassUnit) -> MassUnit:
    """The units of what is in the hands, so that no line is told in two."""
    marked = "" if line.load_kg is None else as_marked(line.load_kg, units)
    return next((one for one in MassUnit if marked.endswith(f" {one}")), units)


def _eased(line: VersionLine) -> str:
    """For which sore place it is kept easy, where that isn't the reason itself."""
    sore = line.reason.eased_for
    return f" Kept easy, for the sake of your {_spared(sore)}." if sore else ""


WITHOUT = {
    Part.SQUAT: "The squat",
    Part.HINGE: "The bend from the hips",
    Part.PRESS: "The press overhead",
    Part.PUSH: "The push",
    Part.ROW: "The row",
    Part.PULL: "The pull",
}


def _without(line: VersionLine) -> str:
    """Which part of a compound is left out, so that nobody looks for it."""
    part = line.reason.without
    return "" if part is None else f" {WITHOUT[part]} is left out."


def _more(line: VersionLine, units: MassUnit) -> str:
    """That it is heavier than the coach wrote, if it is."""
    more = line.reason.more_kg
    if more is None:
        return ""
    each = " each" if line.count == 2 else ""  # noqa: PLR2004
    return f" It's {_in_units(more, units)}{each} more than written: break it up as you like."


def _is_named(line: VersionLine, spared: set[str] | None) -> bool:
    """Whether the reason that was said last is the same limit: "likewise" points at nothing else."""
    because, about = line.reason.because, line.reason.about
    if spared is None or line.change is Change.REST:
        return False
    named = because is Because.LIMIT and about in spared
    spared.clear()
    if because is Because.LIMIT and about is not None:
        spared.add(about)
    return named


def _more_often(line: VersionLine) -> str | None:
    """That there is more of it than written, where the reason doesn't say so by itself."""
    if not line.reason.more or line.reason.because is Because.TOO_LIGHT:
        return None
    return "more of them, as each is lighter" if line.unit is AmountUnit.REPS else None


def _kept(line: VersionLine) -> str | None:
    """What stays the same, or why it is less; beside a request it would be one thing too many."""
    if line.reason.because is Because.UNTESTED:
        return None
    if line.change is Change.AMOUNT:
        less = _less(line)
        said = line.reason.because in {Because.TOO_HEAVY, Because.TOO_OFTEN, Because.LIGHT_DUTY}
        return None if said and line.reason.keeps == "movement" else less[0].lower() + less[1:]
    return KEPT_AMOUNT[line.unit] if line.reason.keeps == "reps" else KEPT.get(line.reason.keeps or "")


def _less(line: VersionLine) -> str:
    """Why it is less: what is done for breath can hardly be unclean."""
    movement, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    for_breath = line.unit is AmountUnit.REPS and movement.main_of(variant) is Part.BREATH
    return "Fewer, so that you keep your breath" if for_breath else LESS[line.unit]


def _why(line: VersionLine, units: MassUnit) -> str:
    reason = line.reason
    match reason.because:
        case Because.AS_WRITTEN | Because.NO_TIME:
            return ""
        case Because.TOO_LIGHT:
            return _too_light(line)
        case Because.TOO_HEAVY | Because.TOO_OFTEN:
            often = reason.because is Because.TOO_OFTEN
            return _too_heavy(line, units, SO_OFTEN if often else SO_MUCH[line.unit])
        case Because.NOT_OWNED | Because.NOT_ASKED:
            return f"{_lacking(reason, units)}{_so(line)}"
        case Because.UNKNOWN_HEAVY:
            return _unknown(line, units)
        case _:
            return _plainly(line, units)


def _lacking(reason: Reason, units: MassUnit) -> str:
    if reason.because is Because.NOT_ASKED:
        return f"I don't know yet whether you have {thing_words(reason, units)}"
    if reason.about in AT_HOME:
        return f"I don't know of {thing_words(reason, units)} where you train"
    if reason.suits_kg is not None:
        suits = _in_units(reason.suits_kg, units)
        return f"You don't have {thing_words(reason, units)} (your {suits} would suit you too, if your coach says so)"
    if not reason.only_one or reason.load_kg is None:
        return f"You don't have {thing_words(reason, units)}"
    label = f" {catalogue().implement(reason.about).label}" if reason.about else " weight"
    return f"You have only one {_in_units(reason.load_kg, units)}{label}, and this takes two"


# What a home may have though nobody said so.
AT_HOME = frozenset({"chair", "table", "stairs"})

PLAIN = {
    Because.SKILL: "You haven't told me that you do this one, so we start a step before it",
    Because.LIGHT_DUTY: "Easier on purpose, so that plenty is left in you at the end",
    Because.ON_THE_FEET: "Done standing, so that you needn't get down and up in every round",
    Because.ONE_SETTING: "One setting for the whole block, so that you needn't change it in between",
    Because.BEST_FIT: "Of what you have, this fits best here",
    Because.NOTED: "Lighter for now: your coach noted something about how you do this",
    Because.COACH: "Your coach's choice",
    Because.NO_SAFE_OPTION: "I know nothing safe for you here today, so your coach hears of it",
}


ASKED = {
    "too-hard": "Easier, as it was too hard",
    "so": "Easier, as you asked",
    "sore": "Easier, as you're sore today",
    "too-easy": "Harder, as it was too easy",
    "swap": "Something else, as you asked",
    "weather": "Something else, as you can't go out for it today",
    "bored": "Something else, for a change",
    "as-written": "As written, as you asked",
}


def _plainly(line: VersionLine, units: MassUnit) -> str:
    because, about = line.reason.because, line.reason.about or ""
    match because:
        case Because.UNTESTED:
            return _untested(line, units)
        case Because.LIMIT:
            return _for_a_limit(line, about)
        case Because.ASKED:
            return ASKED.get(about, "As you asked")
        case Because.LIGHT_DUTY if about:
            return _easy_for(about)
        case Because.SPACE:
            return f"Changed because {PLACES.get(about, 'the place does not allow it')}"
        case _:
            return _by_itself(line)


def _by_itself(line: VersionLine) -> str:
    """A reason that needs no more words; only what is held can be lighter."""
    fits = line.reason.because in {Because.BEST_FIT, Because.ONE_SETTING}
    if fits and line.change is Change.LOAD and line.reason.more_kg:
        return "As written it's light for you, so it's heavier"
    words = PLAIN[line.reason.because]
    return words if line.load_kg is not None else words.replace("Lighter for now", "Easier for now", 1)


def _easy_for(about: str) -> str:
    """A state that isn't somebody's own thing to spare has words of its own."""
    if about in OWN_SAKES:
        return f"{OWN_SAKES[about]}: easy on purpose"
    kind = next((one.kind for one in limits() if one.id == about), None)
    return (
        f"{_for_the_sake(about)}: easy on purpose"
        if kind == "condition"
        else f"Easier on purpose, for the sake of your {_spared(about)}"
    )


def _spared(about: str) -> str:
    """A limit by its label; a sore place is its own word."""
    if about == "all over":
        return "sore muscles"
    labels = {one.id: one.label for one in limits()}
    return labels.get(about, f"sore {about}")


# Why a limit changes a line, by its kind; some are better said in words of their own.
SAKES = {
    "joint": "To spare your {label}",
    "muscle": "To spare your {label}",
    "wish": "As you said: {label}",
    "condition": "Kinder with {label}",
    "state": "Gently for now: {label}",
}
OWN_SAKES = {
    "pregnancy": "Kinder while you're pregnant",
    "pregnancy-early": "Kinder while you're pregnant",
    "pregnancy-middle": "Kinder while you're pregnant",
    "pregnancy-late": "Kinder while you're pregnant",
    "after-birth": "Kinder in the months after birth",
    "after-birth-early": "Kinder in the months after birth",
    "after-birth-middle": "Kinder in the months after birth",
    "after-birth-later": "Kinder in the year after birth",
    "after-illness": "Gently, as you're just over an illness",
    "surgery": "Gently after your surgery",
    "heat": "Easier on a hot day",
    "returning": "As you're just back after a break",
}


def _for_the_sake(about: str) -> str:
    """`To spare your sore wrist`, `Kinder while you're pregnant`."""
    one = limit(about)
    return OWN_SAKES.get(about) or SAKES[one.kind].format(label=one.label)


# How a sake is told of something else that stands in: a sentence of its own.
STANDS_IN = {
    "To spare": "This spares",
    "Kinder": "This is kinder",
    "Easier": "This is easier",
    "Gently": "This goes gently",
}


def _for_a_limit(line: VersionLine, about: str) -> str:
    """`To spare your sore wrist` of the same movement, `This spares your sore wrist` of another."""
    sake = _for_the_sake(about)
    opening = next((one for one in STANDS_IN if sake.startswith(one)), None)
    if line.change is not Change.MOVEMENT or opening is None:
        return f"{sake}{_so(line)}"
    return sake.replace(opening, STANDS_IN[opening], 1)


def _so(line: VersionLine) -> str:
    """What follows from an obstacle."""
    if line.change is Change.REST:
        return " and nothing else fits, so your coach hears of it"
    return ", so here's what fits instead" if line.change is Change.MOVEMENT else ""


# From here on it is more that makes a light weight hard, and not how it is done (estimate).
MANY = 8


def _too_light(line: VersionLine) -> str:
    if line.change is Change.NONE and line.implement is None:
        return "Light for you, so take three seconds down each time"
    if line.change is Change.NONE and line.load_kg is None:
        return "The heaviest you have is light for this, so make every repetition slow and perfect"
    if line.change is Change.NONE:
        return "Light for you, so make every repetition perfect; going heavier is for your coach to say"
    if line.change is Change.AMOUNT or (line.amount or 0) >= MANY:
        return "What you have is light for this, so you do more of it"
    return "What you have is light for this, so it's made harder"


def _too_heavy(line: VersionLine, units: MassUnit, so_much: str) -> str:
    written = line.reason.load_kg
    if line.change is Change.AMOUNT and line.reason.keeps == "movement":
        return _less(line)
    if written is None:
        return f"As written would be heavy {so_much}, so this is a lighter way"
    heavy = f"{_in_units(written, units)} would be heavy {so_much}"
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


def _untested(line: VersionLine, units: MassUnit) -> str:
    about = line.reason.about or ""
    unit = catalogue().movement(about).unit
    reps = unit is AmountUnit.REPS
    less = _how_it_starts(line, reps=reps)
    what = plural(about) if reps else f"the {about}"
    easy = (
        ""
        if line.reason.next_kg is None
        else f"; if the first ones are easy, take {as_marked(line.reason.next_kg, units)}"
    )
    return f"I don't know yet how you do with {what}, so we start {less}{easy}. Tell me how {HOW_MUCH[unit]}"


def _how_it_starts(line: VersionLine, *, reps: bool) -> str:
    """Another movement may be done with more in the hands, and none with nothing in them is called lighter."""
    if line.change is Change.AMOUNT:
        return "with fewer" if reps else "with less"
    if line.change is Change.MOVEMENT:
        return "with something easier"
    return "lighter" if line.load_kg is not None else "with an easier way"


def _in_units(kg: Decimal, units: MassUnit) -> str:
    """A load as the coach wrote it, for whoever reckons in pounds to the nearest one: `35 lb`."""
    if units is MassUnit.KG:
        return as_marked(kg, units)
    return f"{round(from_kg(kg, units))} {units}"


def thing_words(reason: Reason, units: MassUnit) -> str:
    """`a table`, `a 16 kg dumbbell`, `16 kg` where any implement would do."""
    thing = catalogue().implement(reason.about) if reason.about else None
    label = thing.label if thing else ""
    if reason.load_kg is None or (thing and thing.kind == "there"):
        return with_article(label) if label else "a weight made for this"
    load = _in_units(reason.load_kg, units)
    return with_article(f"{load} {label}") if label else f"{load} for this"
