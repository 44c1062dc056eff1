"""Words for a day that is different, and for equipment that comes and goes."""

from datetime import date

from bot.words.en.adjusting import SET_NAMES, on
from bot.words.en.questions import thing, things
from bot.words.text import fill, listed
from bot.words.things import label_of_thing
from bot.words.wording import Button, Row, Worded, wording
from core.athletes.values import Different, Equipment, SetName
from core.desk.reference import catalogue
from core.desk.says.today import (
    AskDifferent,
    AskMinutes,
    AskPlace,
    AskSet,
    AskSick,
    AskSore,
    AskWhichThing,
    AsUsualAgain,
    ChangeUndone,
    DayNoted,
    EquipmentChanged,
)
from core.desk.today import PLACES, SORE_PLACES, kind_of
from core.desk.version_commands import (
    AddThing,
    AsUsual,
    BeElsewhere,
    BeShort,
    BeSick,
    BeSore,
    DayLasts,
    UndoEquipment,
)
from core.measures import MassUnit, in_words

MINUTES = (5, 10, 15, 20, 30, 45)
PLACE_LABELS: dict[SetName, str] = {"home": "At home", "gym": "In a gym", "trip": "Away from home"}


@wording("en", AskDifferent)
def ask_different(said: AskDifferent) -> Worded:
    rows: list[Row] = [
        (Button("Sick", BeSick(version=said.version_id)), Button("Sore", BeSore(version=said.version_id))),
        (
            Button("Short of time", BeShort(version=said.version_id)),
            Button("Another place", BeElsewhere(version=said.version_id)),
        ),
    ]
    if said.different:
        rows.append((Button("As usual again", AsUsual(session=said.session_id)),))
    return Worded("What's different today?", tuple(rows))


@wording("en", AskSick)
def ask_sick(said: AskSick) -> Worded:
    rows = (
        (Button("Fever, or really ill", BeSick(version=said.version_id, how="fever")),),
        (Button("Getting over it, no fever", BeSick(version=said.version_id, how="recovering")),),
    )
    return Worded("I'm sorry to hear that. How is it?", rows)


@wording("en", AskSore)
def ask_sore(said: AskSore) -> Worded:
    buttons = [
        Button(place.capitalize(), BeSore(version=said.version_id, where=place)) for place in SORE_PLACES
    ]
    rows = tuple(tuple(buttons[start : start + 3]) for start in range(0, len(buttons), 3))
    return Worded(
        "Where are your muscles sore? A pain in a joint is something else: tell me under the line.", rows
    )


@wording("en", AskMinutes)
def ask_minutes(said: AskMinutes) -> Worded:
    buttons = [Button(f"{one} minutes", BeShort(version=said.version_id, minutes=one)) for one in MINUTES]
    return Worded("How long have you got for the main part?", (tuple(buttons[:3]), tuple(buttons[3:])))


@wording("en", AskPlace)
def ask_place(said: AskPlace) -> Worded:
    rows = tuple(
        (Button(PLACE_LABELS[place], BeElsewhere(version=said.version_id, place=place)),)
        for place in PLACES
        if place != said.here
    )
    return Worded("Where do you train today?", rows)


@wording("en", AskSet)
def ask_set(said: AskSet) -> Worded:
    examples = {"home": "two 10s and a chair", "gym": "everything", "trip": "a band"}
    unread = fill("I didn't get “{words}”. ", words=listed(said.unread)) if said.unread else ""
    text = fill(
        "What do you have to train with {where}? Tell me in your own words, like <i>{example}</i> or "
        "<i>nothing</i>.",
        where=SET_NAMES[said.place],
        example=examples[said.place],
    )
    return Worded(unread + text)


@wording("en", DayNoted)
def day_noted(said: DayNoted) -> Worded:
    lasts = "for today" if said.different.until == said.today else f"until {on(said.different.until)}"
    text = fill("Noted: {what}, {lasts}.", what=different_words(said.different), lasts=lasts)
    if said.different.sick == "fever":
        text += (
            " Rest until it's gone and two days more, drink, and see a doctor if it's high or stays. After that we "
            "begin with ten easy minutes."
        )
    if said.session_id is None:
        return Worded(text)
    if said.choices and said.different.place:
        text += " Does it last longer? Tap until when."
    session = said.session_id
    last = tuple(Button(f"Until {day:%a %-d %b}", last_until(said, session, day)) for day in said.choices)
    usual = (Button("As usual again", AsUsual(session=session)),)
    return Worded(text, (last, usual) if last else (usual,))


def last_until(said: DayNoted, session: int, day: date) -> DayLasts:
    return DayLasts(session=session, kind=kind_of(said.different), until=day.toordinal())


SICK = {"fever": "fever or really ill", "recovering": "getting over something"}


def different_words(one: Different) -> str:
    """`sore legs`, `15 minutes`; plain text."""
    if one.sick:
        return SICK[one.sick]
    if one.minutes is not None:
        return f"{one.minutes:g} minutes"
    if one.place:
        return SET_NAMES[one.place]
    if one.lacks:
        return f"without the {label_of_thing(one.lacks)}"
    return "sore all over" if one.sore == "all over" else f"sore {one.sore}"


@wording("en", AsUsualAgain)
def as_usual_again(said: AsUsualAgain) -> Worded:
    if said.gently:
        return Worded(
            "Good that you're better. With less than two days since the fever, rest a little longer. Otherwise we "
            "begin with ten easy minutes today."
        )
    return Worded("As usual again, then.")


@wording("en", EquipmentChanged)
def equipment_changed(said: EquipmentChanged) -> Worded:
    parts = []
    if said.came:
        parts.append(fill("New: {things}.", things=things(said.came, said.units)))
    if said.went:
        parts.append(fill("Gone: {things}.", things=listed([gone(one, said.units) for one in said.went])))
    now = things(said.now, said.units)
    parts.append(fill("{where} you have now: {now}.", where=SET_NAMES[said.place].capitalize(), now=now))
    return Worded(" ".join(parts), ((Button("Undo", UndoEquipment(change=said.undo)),),))


def gone(one: Equipment, units: MassUnit) -> str:
    if one.loads_kg or one.to_kg is not None:
        return thing(one, units)
    return f"the {label_of_thing(one)}"


@wording("en", ChangeUndone)
def change_undone(said: ChangeUndone) -> Worded:
    now = "not told yet" if said.now is None else things(said.now, said.units)
    return Worded(fill("Undone. {where}: {now}.", where=SET_NAMES[said.place].capitalize(), now=now))


@wording("en", AskWhichThing)
def ask_which_thing(said: AskWhichThing) -> Worded:
    (load, *_), each = said.thing.loads_kg, said.thing.each
    row = tuple(
        Button(
            catalogue().implement(one).label.capitalize(),
            AddThing(place=said.place, implement=one, kg=load, each=each),
        )
        for one in said.implements[:4]
    )
    return Worded(fill("{load} of what?", load=in_words(load, said.units)), (row,))
