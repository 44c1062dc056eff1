"""Words for what is asked of an athlete, what was understood, and what is known."""

from collections.abc import Sequence

from bot.words.en.talk.plainly import PLAINLY
from bot.words.text import fill, listed, plural, with_article
from bot.words.things import label_of_thing
from bot.words.versions import limit_names
from bot.words.wording import Button, Row, Worded, wording
from core.athletes.values import Equipment
from core.desk.commands import (
    ChoosePair,
    GiveGentle,
    GoGentle,
    LeaveOut,
    NoLimits,
    OwnNothing,
    OwnTicked,
    SkipBodyMass,
    TellAbility,
    TellStage,
    TickThing,
)
from core.desk.reference import catalogue, everything
from core.desk.versions.says import AnswerKept, AskAbout, AskWeight, ThingLeftOut, Understood
from core.measures import MassUnit, as_marked
from core.scaling.values import Ask, Question


@wording("en", AskWeight)
def ask_weight(said: AskWeight) -> Worded:
    label = catalogue().implement(said.thing.implement).label
    text = fill(
        "How heavy is the {label}, in {units}? Just the number; several are fine.",
        label=label,
        units=said.units,
    )
    if said.thing.each > 1:
        text = fill(
            "How heavy are the {label}s, in {units} each? Just the number.", label=label, units=said.units
        )
    if said.again:
        text = f"I didn't get that. {text}"
    return Worded(text, ((Button("I can't tell, leave it out", LeaveOut(session=said.session)),),))


@wording("en", ThingLeftOut)
def thing_left_out(said: ThingLeftOut) -> Worded:
    label = catalogue().implement(said.thing.implement).label
    text = "Then I leave the {label} out for now. Once you know, tell me, like <i>{label} 16 kg</i>."
    return Worded(fill(text, label=label))


@wording("en", AskAbout)
def ask_about(said: AskAbout) -> Worded:
    text = question_text(said)
    before = said.understood and understood(said.understood)
    if said.again and said.question.ask is Ask.LIMITS:
        before = f"{before or ''} I only know the commoner things. If it is something a doctor should have a say in, ask them before you train with it; I can go gentle with you until then."
    if said.again and said.question.ask is Ask.PAIR:
        before = PLAINLY["pair"]
    if said.left is not None:
        before = still_to_come(said.left)
    return Worded(f"{before}\n\n{text}" if before else text, (*answers(said), *something_gentle(said)))


def still_to_come(left: int) -> str:
    """Why there is no version yet."""
    if left == 1:
        return "One short question more, then your version is there."
    return f"At most {left} short questions more, then your version is there."


def something_gentle(said: AskAbout) -> tuple[Row, ...]:
    """Whoever is asked the same once more may train without an answer."""
    if said.session is None or not said.known or said.question.ask is Ask.STAGE:
        return ()
    return ((Button("Something gentle now", GiveGentle(session=said.session)),),)


def question_text(said: AskAbout) -> str:
    example = "a 20 lb dumbbell and a chair" if said.units is MassUnit.LB else "a 10 kg dumbbell and a chair"
    mass = "137" if said.units is MassUnit.LB else "62"
    texts = {
        Ask.EQUIPMENT: (
            f"What do you have to train with? Tell me in your own words, like <i>{example}</i>. Or tap what is at "
            "hand: a bag with bottles or books in it is a fine weight."
        ),
        Ask.LIMITS: (
            "Is there anything your body needs to spare? Like <i>sore left wrist</i>, <i>no jumping</i> or "
            "<i>pregnant</i>."
        ),
        Ask.BODY_MASS: (
            f"What do you weigh, in {said.units}? Just the number, like <i>{mass}</i>. It helps me judge "
            "push-ups and the like. Nobody else sees it, and you may skip it."
        ),
        Ask.PAIR: (
            f"Your coach wrote two loads, {two_loads(said.question, said.units)}: the heavier for whoever is used to lifting, "
            "the lighter for whoever is newer to it. Which is meant for you? In doubt, the lighter: you'll get what fits you."
        ),
        Ask.STAGE: STAGE_TEXTS.get(said.question.about or "", ""),
        Ask.ABILITY: ability_text(said.question, said.units),
    }
    return (
        IN_SHORT.get(said.question.ask, texts[said.question.ask]) if said.known else texts[said.question.ask]
    )


# What was asked just before.
IN_SHORT = {
    Ask.EQUIPMENT: "What do you have to train with? A few words will do, or tap what is at hand.",
    Ask.LIMITS: "Is there anything your body needs to spare? A word or two will do.",
    Ask.BODY_MASS: "What do you weigh? You may skip it.",
    Ask.PAIR: "Two loads are written: the heavier first. Which is meant for you? In doubt, the lighter.",
}


def two_loads(question: Question, units: MassUnit) -> str:
    """`24 kg and 16 kg`; an example where the question was kept without them."""
    return listed([as_marked(load, units) for load in question.loads_kg]) or "like 16/12"


def ability_text(question: Question, units: MassUnit) -> str:
    what = asked_for(question)
    at = "at" if " with " in what else "with"
    load = f" {at} {as_marked(question.load_kg, units)}" if question.load_kg is not None else ""
    return fill(
        "How many {movement}{load} can you do in a row when you're fresh? A guess will do: tap one, or type a "
        "number.",
        movement=what,
        load=load,
    )


def asked_for(question: Question) -> str:
    """The movement by its name, or the way it is done where that isn't the usual one."""
    if question.movement is None or question.variant is None:
        return plural(question.movement or "repetition")
    movement, variant = catalogue().variant(f"{question.movement}/{question.variant}")
    return plural(movement.id) if variant is movement.variants[0] else variant.label


def answers(said: AskAbout) -> tuple[Row, ...]:
    session, question = said.session, said.question
    match question.ask:
        case Ask.EQUIPMENT:
            return household_answers(session, question.ticked)
        case Ask.LIMITS:
            fine = Button("No, all fine", NoLimits(session=session))
            gentle = Button("Go gentle with me", GoGentle(session=session))
            return ((fine,), (gentle,)) if said.again else ((fine,),)
        case Ask.BODY_MASS:
            return ((Button("Skip", SkipBodyMass(session=session)),),)
        case Ask.PAIR:
            first = Button("The first (heavier)", ChoosePair(session=session, pair=1))
            return (
                (first, Button("The second (lighter), or not sure", ChoosePair(session=session, pair=2))),
            )
        case Ask.STAGE:
            return stage_answers(session, question.about or "")
        case Ask.ABILITY:
            return ability_answers(session, question)


# What a household has, as it stands on its button; two in a row.
HOUSEHOLD_LABELS = {
    "bag": "A bag to fill",
    "jug": "A big bottle or jug",
    "chair": "A sturdy chair",
    "table": "A heavy table",
    "stairs": "Stairs",
    "bar": "A bar to hang from",
}

STAGE_TEXTS = {
    "pregnancy": (
        "Which week of your pregnancy are you in, and has your midwife or doctor said yes to training? Tap, or tell "
        "me like <i>week 24, cleared</i>."
    ),
    "after-birth": (
        "How long ago was the birth, and has your midwife or doctor said yes to training? Tap, or tell me like "
        "<i>20 weeks, cleared</i>."
    ),
    "seated": "When you sit: does your trunk hold itself, and can you get down to the floor and up again?",
}

# In the order of what can be tapped (core.athletes.circumstances).
STAGE_LABELS = {
    "pregnancy": (
        "Up to week 13, with their yes",
        "Up to week 13, no word yet",
        "Week 14 to 27, with their yes",
        "Week 14 to 27, no word yet",
        "From week 28, with their yes",
        "From week 28, no word yet",
    ),
    "after-birth": (
        "No yes from them yet",
        "Under 12 weeks, with their yes",
        "Longer, with their yes",
        "More than a year",
    ),
    "seated": (
        "Trunk holds, floor is fine",
        "Trunk holds, no floor",
        "I lean on something, floor is fine",
        "I lean on something, no floor",
    ),
}


def household_answers(session: int | None, ticked: Sequence[str]) -> tuple[Row, ...]:
    """Several can be ticked; the last button says that this is all."""
    buttons = [
        Button(
            f"\N{CHECK MARK} {label}" if one in ticked else label,
            TickThing(session=session, thing=one),
        )
        for one, label in HOUSEHOLD_LABELS.items()
    ]
    rows = tuple(tuple(buttons[place : place + 2]) for place in range(0, len(buttons), 2))
    if not ticked:
        return (*rows, (Button("Nothing, just me", OwnNothing(session=session)),))
    return (*rows, (Button("That's all I have", OwnTicked(session=session)),))


def stage_answers(session: int | None, about: str) -> tuple[Row, ...]:
    labels = STAGE_LABELS.get(about, ())
    return tuple(
        (Button(label, TellStage(session=session, about=about, place=place)),)
        for place, label in enumerate(labels)
    )


def ability_answers(session: int | None, question: Question) -> tuple[Row, ...]:
    if question.movement is None or session is None:
        return ()
    buttons = [
        Button(
            label,
            TellAbility(session=session, movement=question.movement, reps=reps, load_kg=question.load_kg),
        )
        for reps, label in guess_labels(question.guesses)
    ]
    return (tuple(buttons[:3]), tuple(buttons[3:]))


def guess_labels(guesses: Sequence[int]) -> list[tuple[int, str]]:
    """A spread to tap from; any number can be typed."""
    if not guesses:
        return []
    *some, most = guesses
    return [(0, "None yet"), *((reps, f"About {reps}") for reps in some), (most, f"{most} or more")]


def understood(said: Understood) -> str:
    """What was taken from the last answer; empty where there is nothing to show."""
    parts = []
    if said.gently:
        parts.append("That's fine: we start gently, and find out together. Tell me after if it was too easy.")
    if said.equipment is not None:
        parts.append(fill("I've noted: {things}.", things=things(said.equipment, said.units)))
    if said.idle:
        parts.append(idle(said.idle))
    if said.estimated:
        known = {one.implement: one for one in said.equipment or ()}
        names = listed([label_of_thing(known.get(one, Equipment(implement=one))) for one in said.estimated])
        parts.append(
            fill("I've taken the usual weight for the {names}; tell me if yours differs.", names=names)
        )
    if said.limits is not None:
        parts.append(
            fill("I'll keep in mind: {limits}.", limits=limit_names(said.limits, dict(said.sides)))
            if said.limits
            else "Good."
        )
    if said.unread:
        parts.append(fill("I didn't get “{words}”.", words=", ".join(said.unread)))
    return " ".join(parts)


def idle(names: Sequence[str]) -> str:
    """Nothing that was named is dropped without a word."""
    others = listed([with_article(one) for one in names if one != "treadmill"])
    left = fill(
        "{named} changes nothing in your sessions, so I keep no note of it.",
        named=others[:1].upper() + others[1:],
    )
    return " ".join([ON_TREADMILL] * ("treadmill" in names) + [left] * bool(others))


# Common practice, no source: the belt carries on, so a metre is a metre.
ON_TREADMILL = (
    "You can do every run on a treadmill: same distance or time, and it counts the same. Hold the rail while it starts, and "
    "clip the stop cord on."
)


def things(equipment: tuple[Equipment, ...], units: MassUnit) -> str:
    """`two 10 kg dumbbells, a chair`; plain text."""
    if equipment == everything():
        return "everything that a gym has"
    return listed([thing(one, units) for one in equipment]) or "nothing, just you"


def thing(one: Equipment, units: MassUnit) -> str:
    """`an adjustable dumbbell, 2.5 kg to 24 kg (shared with Bo)`."""
    if one.shared_with is None:
        return what(one, units)
    return f"{what(one, units)} (shared{f' with {one.shared_with}' if one.shared_with else ''})"


def what(one: Equipment, units: MassUnit) -> str:
    label = label_of_thing(one)
    if one.loads_kg:
        loads = listed([as_marked(load, units) for load in one.loads_kg])
        several = len(one.loads_kg) > 1 and one.each == 1
        return f"{label}s of {loads}" if several else f"{counted(one.each, label)} of {loads}"
    if one.from_kg is not None and one.to_kg is not None:
        span = f"{as_marked(one.from_kg, units)} to {as_marked(one.to_kg, units)}"
        return f"{counted(one.each, f'adjustable {label}')}, {span}"
    if one.to_kg is not None:
        return f"{counted(one.each, label)} for up to {as_marked(one.to_kg, units)}"
    return with_article(label)


def counted(count: int, label: str) -> str:
    return with_article(label) if count == 1 else f"{count} {label}s"


@wording("en", AnswerKept)
def answer_kept(said: AnswerKept) -> Worded:
    noted = understood(said.understood) or "Noted."
    if said.waits:
        return Worded(noted)
    return Worded(f"{noted}\nSend /today for your version with that, or just wait for the next session.")
