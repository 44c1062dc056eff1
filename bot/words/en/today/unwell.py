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
