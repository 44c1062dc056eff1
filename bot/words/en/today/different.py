"""Words for a day that is different, and for equipment that comes and goes."""

from datetime import date

from bot.words.en.versions.adjusting import SET_NAMES, on
from bot.words.en.versions.questions import idle, thing, things
from bot.words.text import fill, listed
from bot.words.things import label_of_thing
from bot.words.wording import Button, Row, Worded, in_rows, wording
from core.athletes.values import Different, Equipment, SetName
from core.desk.reference import catalogue
from core.desk.today.different import PLACES, SORE_PLACES, kind_of
from core.desk.today.says import (
    AskBreak,
    AskDifferent,
    AskMinutes,
    AskMore,
    AskPlace,
    AskSet,
    AskSick,
    AskSore,
    AskWhichThing,
    AsUsualAgain,
    BackSoon,
    ChangeUndone,
    ClearedKept,
    CoachsEasyWeek,
    DayNoted,
    EquipmentChanged,
    MattersNot,
    MoreDecided,
    MoreLater,
    NothingWent,
)
from core.desk.versions.commands import (
    AddThing,
    AsUsual,
    BeBack,
    BeElsewhere,
    BeShort,
    BeSick,
    BeSore,
    DayLasts,
    DoMore,
    SayBreak,
    TakeItEasy,
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
    rows.append(
        (
            Button("Back after a break", BeBack(version=said.version_id)),
            Button("An easy week", TakeItEasy(version=said.version_id)),
        )
    )
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
    rows = tuple(in_rows(buttons, 3))
    return Worded(
        "Where are your muscles sore? A pain in a joint is something else: tell me under the line.", rows
    )


@wording("en", AskMinutes)
def ask_minutes(said: AskMinutes) -> Worded:
    buttons = [Button(f"{one} minutes", BeShort(version=said.version_id, minutes=one)) for one in MINUTES]
    return Worded("How long have you got, warm-up included?", (tuple(buttons[:3]), tuple(buttons[3:])))


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
    text = fill("Noted: {what}, {lasts}.", what=different_words(said.different), lasts=lasts(said))
    if said.different.sick == "fever":
        text += (
            " Rest until it's gone and two days more, drink, and see a doctor if it's high or stays. After that we "
            "begin with ten easy minutes."
        )
    text += EASED.get(said.different.ease or "", "")
    if said.session_id is None:
        return Worded(text)
    if said.choices and said.different.place:
        text += " Does it last longer? Tap until when."
    session = said.session_id
    last = tuple(Button(f"Until {day:%a %-d %b}", last_until(said, session, day)) for day in said.choices)
    usual = (Button("As usual again", AsUsual(session=session)),)
    return Worded(text, (last, usual) if last else (usual,))


EASED = {
    "returning": (
        " Welcome back! Half of everything in the first week, gently, then three quarters in the second; after that "
        "it's as usual again. Muscles forget slowly, joints need a moment longer."
    ),
    "easy-week": " About two thirds of the work, the weights you know, nothing to chase.",
}


@wording("en", AskBreak)
def ask_break(said: AskBreak) -> Worded:
    text = f"Good to see you! For {said.weeks} weeks I heard of no session of yours. Did you train meanwhile?"
    if said.weeks is None:
        text = "I didn't get that. Did you train in the last weeks? Yes or no will do, then you get your version."
    yes = Button("Yes, as usual", SayBreak(session=said.session_id, had=False))
    no = Button("No, I had a break", SayBreak(session=said.session_id, had=True))
    return Worded(text, ((yes, no),))


@wording("en", CoachsEasyWeek)
def coachs_easy_week(_: CoachsEasyWeek) -> Worded:
    return Worded(
        "Your coach has called this week easy, so it's theirs to change. Would you rather train as usual? Write "
        "<i>tell my coach</i> and why."
    )


@wording("en", BackSoon)
def back_soon(_: BackSoon) -> Worded:
    return Worded(
        "Welcome back! In so short a break you lose very little, so I leave your version as it is. If you'd rather "
        "begin gently, tap “Today is different” under it."
    )


@wording("en", AskMore)
def ask_more(said: AskMore) -> Worded:
    text = (
        f"That was session number {said.sessions} since you started gently. If it feels good, we can go on to a bit "
        "more: three quarters of the work for four weeks, then everything. You decide, and a limit that a doctor gave "
        "you still stands. Shall we?"
    )
    return Worded(
        text, ((Button("Yes, a bit more", DoMore(yes=True)), Button("Stay gentle", DoMore(yes=False))),)
    )


@wording("en", MoreLater)
def more_later(said: MoreLater) -> Worded:
    so_far = "one session" if said.sessions == 1 else f"{said.sessions or 'no'} sessions"
    return Worded(
        f"Good that it feels easy! You started gently, so that it lasts: after {said.needed} sessions and two weeks I ask "
        f"you whether it may be more. You've told me the score of {so_far} so far. Is one line too easy? Tap “Change a "
        "line” under your version."
    )


@wording("en", MoreDecided)
def more_decided(said: MoreDecided) -> Worded:
    if said.until is None:
        return Worded("Gentle it stays. I'll ask again in a while.")
    return Worded(
        f"Good! Your next versions have about three quarters of the work, until {on(said.until)}. Stop if anything "
        "feels wrong, and tell me if it's too much."
    )


def lasts(said: DayNoted) -> str:
    first, last = said.different.since, said.different.until
    if first is not None and first > said.today:
        return f"for {on(first)}" if first == last else f"from {on(first)} until {on(last)}"
    return "for today" if last == said.today else f"until {on(last)}"


def last_until(said: DayNoted, session: int, day: date) -> DayLasts:
    return DayLasts(session=session, kind=kind_of(said.different), until=day.toordinal())


EASES = {"new": "your first weeks", "returning": "back after a break", "easy-week": "an easy week"}
SICK = {"fever": "fever or really ill", "recovering": "getting over something"}


def different_words(one: Different) -> str:
    """`sore legs`, `15 minutes`; plain text."""
    if one.sick:
        return SICK[one.sick]
    if one.minutes is not None:
        return f"{one.minutes:g} minutes"
    if one.place:
        return SET_NAMES[one.place]
    if one.ease:
        return EASES[one.ease]
    if thing := one.lacks or one.extra:
        return f"{'without' if one.lacks else 'with'} the {label_of_thing(thing)}"
    return "sore all over" if one.sore == "all over" else f"sore {one.sore}"


@wording("en", AsUsualAgain)
def as_usual_again(said: AsUsualAgain) -> Worded:
    if said.gently:
        return Worded(
            "Good that you're better. With less than two days since the fever, rest a little longer. Otherwise we "
            "begin with ten easy minutes today."
        )
    return Worded("As usual again, then.")


@wording("en", ClearedKept)
def cleared_kept(_: ClearedKept) -> Worded:
    return Worded(
        "Good to hear! I go by that from your next version on; /today shows today's. What they told you comes before anything "
        "of mine."
    )


@wording("en", EquipmentChanged)
def equipment_changed(said: EquipmentChanged) -> Worded:
    parts = []
    if said.came:
        parts.append(fill("New: {things}.", things=things(said.came, said.units)))
    if said.idle:
        parts.append(idle(said.idle))
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


@wording("en", MattersNot)
def matters_not(said: MattersNot) -> Worded:
    if "treadmill" in said.names:
        return Worded(idle(said.names))
    return Worded("Good to have! None of my versions depend on it, so there's nothing to note.")


@wording("en", NothingWent)
def nothing_went(said: NothingWent) -> Worded:
    if said.now is None:
        return Worded("You haven't told me yet what you have, so there's nothing to take off.")
    what = listed(list(dict.fromkeys(what_went(one, said.units) for one in said.went)))
    text = "I hadn't noted {what} with you, so there's nothing to take off. At home you have: {now}."
    return Worded(fill(text, what=what, now=things(said.now, said.units)))


def what_went(one: Equipment, units: MassUnit) -> str:
    """A weight alone has no name, and what no version depends on no label."""
    if one.implement not in {known.id for known in catalogue().implements}:
        if not one.loads_kg:
            return f"a {one.implement}"
        return fill("anything of {load}", load=in_words(one.loads_kg[0], units))
    return gone(one, units) if one.loads_kg else f"a {label_of_thing(one)}"


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
