"""Words for whoever isn't at their best today, by what it is from."""

from collections.abc import Mapping
from typing import Final

from bot.words.wording import Button, Row, Worded, wording
from core.desk.today.says import NotAtTheirBest
from core.desk.versions.commands import BeShort, BeSick, ChangeLines

# What is light under a cold is common practice ("above the neck"), no source; with fever nobody trains.
_SAID: Final[Mapping[str, str]] = {
    "period": (
        "That can be rough. Moving gently often helps, and resting is just as right: you decide, today counts either way. Any "
        "line can be made easier, or all of it shorter. If it's much worse than usual, have it looked at."
    ),
    "cold": (
        "With a cold it goes by where it sits. Only above the neck, a runny nose, and no fever: gently is fine, stop if it gets "
        "worse. Fever, a cough from the chest, aching all over: rest, and start gently once it's gone."
    ),
    "tired": (
        "Then less is the clever thing today: shorter, or an easier line, and you'll still have done something good. If you're "
        "dead on your feet, sleep is training, too."
    ),
    "hangover": (
        "Drink some water and eat something first. Gently is fine once you feel steady; dizzy or sick, leave it for today."
    ),
    # Blood services ask for no hard work on the day, and no heavy lifting with that arm (from memory); the rest is common
    # practice, no source.
    "blood": (
        "Then nothing hard today: after giving blood rest for the day, drink a lot, and lift nothing heavy with that arm. A walk is "
        "fine. Light-headed? Lie down with your legs up."
    ),
    "fasting": (
        "Then gently, and rather short: easy strength or a walk, best close to when you may eat and drink. Shaky, dizzy or sick: "
        "stop. With diabetes, pregnant or on medicine ask your doctor before you train on an empty stomach."
    ),
    "jab": (
        "A sore arm and a tired day or two are usual. Feeling fine: gently is fine, with that arm spared. Feverish or worn out: "
        "rest until it's gone. Chest pain, short breath or a racing heart after it: get medical help."
    ),
    "full": "Give it an hour or two, then start slowly. Feeling sick or crampy: walk, and go on later.",
    "heat": (
        "In the heat do less and slower: in the shade, early or late, more rests, water at hand; what feels hard is hard. Dizzy, "
        "headache, sick or no sweat any more: stop, cool down, get help. With heart trouble, pregnant or on medicine rather "
        "leave it, or train where it's cool."
    ),
    "frost": (
        "Warm up longer, in layers, and start slower; the first steps may be icy, so inside is as good: write <i>swap the run for "
        "something indoors</i>. With asthma or a heart condition stay in, and ask your doctor about the cold."
    ),
}


@wording("en", NotAtTheirBest)
def not_at_their_best(said: NotAtTheirBest) -> Worded:
    return Worded(_SAID[said.cause], rows_for(said))


def rows_for(said: NotAtTheirBest) -> tuple[Row, ...]:
    if said.version is None:
        return ()
    if said.cause == "cold":
        ill = Button("Fever, or it's in the chest", BeSick(version=said.version, how="fever"))
        gently = Button("No fever: gently today", BeSick(version=said.version, how="recovering"))
        return ((gently,), (ill,))
    change = Button("Change a line", ChangeLines(version=said.version))
    if said.minutes is None:
        return ((change,),)
    return ((Button("Shorter today", BeShort(version=said.version, minutes=said.minutes)), change),)
