"""Words for setting a group up."""

from bot.words.en import moments
from bot.words.text import fill
from bot.words.wording import Button, DoorButton, Worded, wording
from core.desk.commands import SendAgain, SetUnits, SetZone
from core.desk.joining.says import (
    AskUnits,
    AskZone,
    CoachReady,
    GroupClockSet,
    GroupGreeting,
    SendingAgain,
    TalkInPrivate,
    Undelivered,
)
from core.measures import MassUnit

# A spread of places to tap; every other zone can be typed.
NEAR = ("Europe/London", "Europe/Berlin", "America/New_York", "America/Los_Angeles")


@wording("en", GroupGreeting)
def greeting(said: GroupGreeting) -> Worded:
    text = fill(
        "Hello <b>{title}</b>! I help your coach give each of you your own version of every session, "
        "with what you have at home and what your body allows, and I keep the scoreboard.\n\n"
        "Tap below and we'll talk in private. Coach: you too, that's where you set me up.",
        title=said.title,
    )
    return Worded(text, ((DoorButton("Start with me", f"g{said.group}"),),))


@wording("en", TalkInPrivate)
def talk_in_private(said: TalkInPrivate) -> Worded:
    return Worded("Let's do that in private.", ((DoorButton("Talk to me", f"g{said.group}"),),))


@wording("en", AskZone)
def ask_zone(said: AskZone) -> Worded:
    zones = said.guesses or NEAR
    rows = tuple((Button(city(zone), SetZone(group=said.group, zone=zone)),) for zone in zones)
    if said.unread is None:
        text = fill(
            "You coach <b>{title}</b>. Which clock does the group go by?\nTap one, or type a city near you.",
            title=said.title,
        )
    elif said.guesses:
        text = fill("Which one do you mean by “{typed}”?", typed=said.unread)
    elif said.kept:
        text = fill(
            "I keep “{typed}”, and come back to it once I know which clock the group goes by. Tap one, or type a city near you.",
            typed=said.unread,
        )
    else:
        text = fill(
            "I need this to post and remind at the right hour. I don't know “{typed}”: try your country, or its capital.",
            typed=said.unread,
        )
    return Worded(text, rows)


@wording("en", Undelivered)
def undelivered(said: Undelivered) -> Worded:
    what = "Your session" if said.is_session else "Something I had to say"
    named = fill(" <b>{title}</b>", title=said.title) if said.title else ""
    if said.shut_out:
        why = "I can't write there any more: please add me to the group again, and then tap below."
    else:
        why = "I tried, and it wasn't taken. Tap below and I'll try once more."
    text = fill(f"{what}{named} never reached <b>{{group}}</b>. {why}", group=said.group)
    return Worded(text, ((Button("Try again", SendAgain(letter=said.letter)),),))


@wording("en", SendingAgain)
def sending_again(said: SendingAgain) -> Worded:
    return Worded(fill("I'm sending it to <b>{group}</b> again.", group=said.group))


def city(zone: str) -> str:
    """`America/New_York` -> `New York (America)`."""
    area, _, place = zone.partition("/")
    return f"{place.replace('_', ' ')} ({area})" if place else area


@wording("en", AskUnits)
def ask_units(said: AskUnits) -> Worded:
    row = (
        Button("Kilograms", SetUnits(group=said.group, units=MassUnit.KG)),
        Button("Pounds", SetUnits(group=said.group, units=MassUnit.LB)),
    )
    return Worded(
        fill(
            "Your group goes by the clock of {zone}. Do you write loads in kg or lb?",
            zone=moments.city(said.zone),
        ),
        (row,),
    )


@wording("en", GroupClockSet)
def group_clock_set(said: GroupClockSet) -> Worded:
    return Worded(
        fill(
            "<b>{title}</b> goes by the clock of {zone} now: posts, classes and the digest. What is set to be posted "
            "keeps its hour on the new clock.",
            title=said.title,
            zone=city(said.zone),
        )
    )


@wording("en", CoachReady)
def coach_ready(said: CoachReady) -> Worded:
    text = fill(
        "All set: <b>{title}</b>, {zone}, loads in {units}.\n\n"
        "Send me today's session right here, the way you'd write it on a board. For example:\n\n"
        "<code>AMRAP 12\n10 push-ups\n12 goblet squats @ {loads}\n200 m run</code>\n\n"
        "I'll read it back and show you how it lands on your people before anything is posted.",
        title=said.title,
        zone=city(said.zone),
        units=said.units,
        loads="35/25 lb" if said.units is MassUnit.LB else "16/12 kg",
    )
    return Worded(text)
