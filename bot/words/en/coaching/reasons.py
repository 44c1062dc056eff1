"""Words for why an athlete's version is as it is, to their coach: nobody's body is told that they keep to themselves."""

from typing import Final

from bot.words.reasons import thing_words
from bot.words.text import bullets, fill
from bot.words.versions import limit_names, what_words
from bot.words.wording import Button, Worded, wording
from core.desk.coaching.commands import LookAtAthlete
from core.desk.coaching.reasons_says import TheirLine, WhyTheirs
from core.scaling.values import Because

_WHY: Final = {
    Because.AS_WRITTEN: "as you wrote it",
    Because.SPACE: "where {name} trains there's no room for what you wrote",
    Because.SKILL: "{name} hasn't told me that they do what you wrote",
    Because.TOO_HEAVY: "what you wrote would be too much in a row for {name}, by what I know",
    Because.TOO_OFTEN: "what you wrote would be too much for {name} with these rests",
    Because.TOO_LIGHT: "what {name} has is light for this",
    Because.ON_THE_FEET: "{name} had better not get down and up in every round",
    Because.ONE_SETTING: "{name} has one thing to set for the whole block",
    Because.BEST_FIT: "of what {name} has this fits best",
    Because.UNTESTED: "nobody knows yet what {name} can do here, so it starts low",
    Because.UNKNOWN_HEAVY: "nothing shows yet that so heavy is safe for {name}",
    Because.LIGHT_DUTY: "it's kept easy on purpose for {name}",
    Because.NO_SAFE_OPTION: "I know nothing safe for {name} here",
    Because.NOTED: "your own note on {name}",
    Because.COACH: "your own choice",
    Because.NO_TIME: "{name} has fewer minutes today",
    Because.ASKED: "{name} asked for it",
}
_LACKS: Final = {
    Because.NOT_OWNED: "{name} told me of no {thing}",
    Because.NOT_ASKED: "I don't know yet whether {name} has {a_thing}",
}


@wording("en", WhyTheirs)
def why_theirs(said: WhyTheirs) -> Worded:
    tell = suits if said.question == "load" else because
    rows = [tell(one, said) for one in said.lines]
    heading = fill("<b>{name}</b>, {title}:", name=said.athlete, title=said.title or f"{said.day:%A}")
    text = f"{heading}\n{bullets(rows)}" if rows else nothing(said)
    look = LookAtAthlete(session=said.session, person=said.person)
    return Worded(text, ((Button(f"Show {said.athlete}"[:40], look),),))


def nothing(said: WhyTheirs) -> str:
    what = "has no load in it" if said.question == "load" else "is as you wrote it"
    return fill(
        "What <b>{name}</b> does of {title} " + what + ".",
        name=said.athlete,
        title=said.title or f"{said.day:%A}",
    )


def because(one: TheirLine, said: WhyTheirs) -> str:
    return fill(
        "{what}: {why}.",
        what=what_words(one.line, said.units),
        why=cause(one, said).format(name=said.athlete),
    )


def cause(one: TheirLine, said: WhyTheirs) -> str:
    """With `{name}` in it; a limit by its name only where the athlete lets their coach see it."""
    reason = one.line.reason
    if reason.because is Because.LIMIT:
        label = limit_names([reason.about], {}) if reason.about in said.shown and reason.about else ""
        return (
            f"{{name}} spares this: {label}"
            if label
            else "something that {name} spares and may tell you themselves"
        )
    lacks = _LACKS.get(reason.because)
    if lacks is None:
        return _WHY[reason.because]
    thing = thing_words(reason, said.units)
    bare = thing.partition(" ")[2] if thing.startswith(("a ", "an ")) else thing
    return lacks.replace("{thing}", bare).replace("{a_thing}", thing)


def suits(one: TheirLine, said: WhyTheirs) -> str:
    """How much a set takes of what they could do fresh, beside what the line asks."""
    line, what = one.line, what_words(one.line, said.units)
    if line.unbroken is None or line.set_cost is None:
        return fill("{what}: I can't tell how heavy that is for {name}.", what=what, name=said.athlete)
    low, high = line.cost_window or (0.0, 1.0)
    fits = (
        "that fits what the line asks"
        if low <= line.set_cost <= high
        else "on the light side for what the line asks"
    )
    fits = "on the heavy side for what the line asks" if line.set_cost > high else fits
    return fill(
        "{what}: I'd expect {n} in a row from {name} when fresh, {fits}.",
        what=what,
        n=f"some {line.unbroken:.0f}",
        name=said.athlete,
        fits=fits,
    )
