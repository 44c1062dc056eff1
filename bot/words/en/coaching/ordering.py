"""Words for what a coach orders for one athlete: what has become of it, or why nothing has."""

from collections.abc import Mapping
from datetime import date
from typing import Final

from bot.words.text import fill, plural
from bot.words.versions import limit_names
from bot.words.wording import Button, Worded, wording
from core.desk.coaching.commands import TakeOrdersBack
from core.desk.coaching.says import (
    AwayTold,
    BackTold,
    OnlyTheyErase,
    Ordered,
    OrderNotDone,
    OrdersGone,
)

_NOT_DONE: Final[Mapping[str, str]] = {
    "unclear": (
        "I didn't get what {name} shall do, so nothing has changed. Tap the line below, or write it like <i>no burpees for "
        "{name} this week</i>, <i>rows instead of planks for {name}</i>, <i>{name} lighter</i>."
    ),
    "rounds": (
        "Rounds are the same for everybody, so nothing has changed for {name}. Fewer of a line I can give: <i>half the burpees for "
        "{name}</i>; or less of everything: <i>easy week for {name}</i>."
    ),
    "one_session": (
        "A step easier or harder I can only take in a session that is there, so nothing has changed for {name}. Tap a line "
        "below, or write <i>easy week for {name}</i>, or a limit that stays: <i>{name}: {goes} at most 20 kg</i>."
    ),
    "no_line": "There are no {goes} in {title}, so nothing has changed for {name}.",
    "more": "I can give {name} less than you wrote, never more, so nothing has changed. To have more of it, change the session.",
    "no_step": "There's no such step for {name} that is safe and there at home, so nothing has changed.",
    "no_number": "Nothing in {title} has {amount}, so nothing has changed for {name}.",
    "not_theirs": (
        "{name} told me of nothing that weighs {amount} kg, so nothing has changed. Once they have it and write it to me, like "
        "<i>got a {amount} kg kettlebell</i>, I can give it."
    ),
    "nothing_fits": (
        "I can't give {name} {comes}: nothing of that is safe for them with what I know of them and their kit. Nothing has "
        "changed; a line can be changed by a tap below."
    ),
}
_STANDS: Final[Mapping[str, str]] = {
    "out": "no {goes}",
    "bare": "nothing in the hands",
    "fewer": "fewer {goes}",
    "half": "half the {goes}",
}


@wording("en", Ordered)
def ordered(said: Ordered) -> Worded:
    what = _STANDS.get(said.step, "your choice for the {goes}").format(goes=of_movement(said.movement))
    what = limit_names([said.limit], {}) if said.limit else what
    text = (
        fill("<b>{name}</b>, {when}: {what}.", name=said.athlete, when=lasting(said), what=what)
        if said.lasts
        else fill("Done for <b>{name}</b>, in {title} only", name=said.athlete, title=titled(said))
        + (fill(": {what}.", what=what) if said.limit else ".")
    )
    if said.so_already and not said.lasts:
        text = fill(
            "For <b>{name}</b> nothing in {title} can be nearer to what you wrote, with what I know of {name} and their kit."
            if said.step == "written"
            else "For <b>{name}</b> this changes no line in {title}: it is so already. See below.",
            name=said.athlete,
            title=titled(said),
        )
    if said.counted:
        text += " How many of it I work out from what the session asks; a tap on its line makes it fewer."
    goes_out = fill(" Tap OK below and {name} gets it.", name=said.athlete) if said.seen else ""
    back = TakeOrdersBack(group=said.group, person=said.person, order=said.order)
    return Worded(text + goes_out, ((Button("Take it back", back),),))


def titled(said: Ordered) -> str:
    return said.title or f"{said.day:%A}"


def lasting(said: Ordered) -> str:
    """`always`, `until Sunday 8 March`, `on Friday 6 March`."""
    if said.until is None:
        return "in every session from now on"
    return f"on {on(said.until)}" if said.since == said.until else f"until {on(said.until)}"


def on(day: date) -> str:
    return f"{day:%A %-d %B}"


def of_movement(movement: str | None) -> str:
    return plural(movement) if movement else "work"


@wording("en", OrderNotDone)
def order_not_done(said: OrderNotDone) -> Worded:
    return Worded(
        fill(
            _NOT_DONE[said.why],
            name=said.athlete,
            goes=of_movement(said.movement),
            comes=(of_movement(said.to) + (" in that way" if said.way else ""))
            if said.to
            else "anything else",
            title=said.title or "this session",
            amount="" if said.amount is None else f"{said.amount:g}",
        )
    )


@wording("en", AwayTold)
def away_told(said: AwayTold) -> Worded:
    until = f" until {on(said.until)}" if said.until else " until you take it back"
    if said.until == said.since:
        until = " alone"
    text = fill(
        "<b>{name}</b> is left out from {since}{until}: I name {name} neither among those who need you nor among those I wait "
        "for. Sessions and reminders stay open to {name}.",
        name=said.athlete,
        since=on(said.since),
        until=until,
    )
    back = TakeOrdersBack(group=said.group, person=said.person, order=said.order)
    return Worded(text, ((Button("Take it back", back),),))


@wording("en", BackTold)
def back_told(said: BackTold) -> Worded:
    if not said.was_away:
        return Worded(
            fill("Good. {name} wasn't left out of anything, so nothing changes.", name=said.athlete)
        )
    return Worded(fill("<b>{name}</b> is counted in again.", name=said.athlete))


@wording("en", OrdersGone)
def orders_gone(said: OrdersGone) -> Worded:
    if said.none:
        text = "<b>{name}</b> gets what I'd give them: nothing of yours stands for {name}."
        return Worded(fill(text, name=said.athlete))
    return Worded(fill("Taken back: <b>{name}</b> gets what I'd give them.", name=said.athlete))


@wording("en", OnlyTheyErase)
def only_they_erase(said: OnlyTheyErase) -> Worded:
    return Worded(
        fill(
            "What I keep of {name} only {name} can have erased, with /forget. One score of theirs you take off the board with "
            "<i>delete {name}'s score</i>.",
            name=said.athlete,
        )
    )
