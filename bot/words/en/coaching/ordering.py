"""Words for what a coach orders for one athlete: what has become of it, or why nothing has."""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Final

from bot.words.text import fill, listed, plural
from bot.words.versions import limit_names
from bot.words.wording import Button, Worded, in_rows, wording
from core.desk.coaching.commands import TakeOrdersBack
from core.desk.coaching.ordering_says import (
    AwayTold,
    BackTold,
    HeldNow,
    InForce,
    NobodyCalled,
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
    "less": "{amount} off the {goes}",
    "half": "half the {goes}",
    "load": "{amount} kg for the {goes}",
    "amount": "{amount} for the {goes}",
    "away": "left out",
    "at_most": "{amount} kg at most in the hands altogether",
    "harder": "the {goes} a step up",
    "written": "the {goes} as written",
}
_OF_ALL: Final[Mapping[str, str]] = {
    "fewer": "less of everything",
    "half": "half of everything",
    "easier": "everything a step easier",
    "harder": "everything a step up",
    "written": "everything as written",
}
# These are safe for anybody.
_LESS: Final = frozenset({"out", "bare", "fewer", "half", "easier", "at_most"})
_EASY: Final = (
    "easy days, with about two thirds of the work at the usual weights, an effort of six at most, no ranks"
)


@wording("en", Ordered)
def ordered(said: Ordered) -> Worded:
    text = stands(said) if said.lasts or not said.tried else done_in(said)
    if said.counted:
        text += " How many of it I work out from what the session asks; a tap on its line makes it fewer."
    if said.spares:
        text += fill(" What stands in spares, for that session: {what}.", what=limit_names(said.spares, {}))
    if said.seen:
        text += fill(" Tap OK below and {name} gets it.", name=said.athlete)
    back = TakeOrdersBack(group=said.group, person=said.person, order=said.order)
    return Worded(text, ((Button("Take it back", back),),))


def stands(said: Ordered) -> str:
    """What counts in sessions to come, or in one of which there is no version yet."""
    text = fill("<b>{name}</b>, {when}: {what}.", name=said.athlete, when=lasting(said), what=kept(said))
    if said.tried or said.limit or said.step in _LESS:
        return text
    return text + fill(" {name} gets it as far as it is safe.", name=said.athlete)


def kept(said: Ordered) -> str:
    return _EASY if said.step == "easier" else asked(said)


def done_in(said: Ordered) -> str:
    """What became of one session."""
    if said.so_already and said.step == "written":
        text = "For <b>{name}</b> nothing in {title} can be nearer to what you wrote, with what I know of {name} and their kit."
    elif said.so_already:
        text = "For <b>{name}</b> this changes no line in {title}: it is so already. See below."
    else:
        text = "Done for <b>{name}</b>, in {title} only: {what}."
    return fill(text, name=said.athlete, title=titled(said), what=asked(said))


def asked(said: Ordered) -> str:
    """`no burpees`, `rows for the planks`."""
    if said.limit:
        return limit_names([said.limit], {})
    usual = "{comes} for the {goes}" if said.to not in {None, said.movement} else "your choice for the {goes}"
    usual = "the {goes} a step easier" if said.step == "easier" else usual
    if said.movement is None and said.step in _OF_ALL:
        return _OF_ALL[said.step]
    return _STANDS.get(said.step, usual).format(
        goes=of_movement(said.movement),
        comes=of_movement(said.to),
        amount="" if said.amount is None else f"{said.amount:g}",
    )


def titled(said: Ordered) -> str:
    return said.title or f"{said.day:%A}"


def lasting(said: Ordered) -> str:
    """`in every session from now on`, `until Sunday 8 March`, `from the next session until Sunday 8 March`."""
    if not said.lasts:
        return f"once there is a version for {titled(said)}"
    if said.since and said.since == said.until:
        return f"on {on(said.since)}"
    begins = "" if said.tried else "from the next session "
    begins = f"from {on(said.since)} " if said.since and said.since > said.day else begins
    if said.until is None:
        return f"{begins}until you take it back" if begins else "in every session from now on"
    return f"{begins}until {on(said.until)}"


def on(day: date) -> str:
    return f"{day:%A %-d %B}"


def of_movement(movement: str | None) -> str:
    return plural(movement) if movement else "work"


# So many fill a screen.
_A_SCREEN: Final = 12


@wording("en", InForce)
def in_force(said: InForce) -> Worded:
    if not said.orders:
        whom = said.athlete or "anybody"
        none = "Nobody is left out." if said.away else "No order of yours stands for {whom}."
        return Worded(fill(none, whom=whom))
    shown = said.orders[:_A_SCREEN]
    rows = [
        fill("{n}. <b>{name}</b>, {when}: {what}", n=n, name=one.athlete, when=lasting(one), what=kept(one))
        for n, one in enumerate(shown, 1)
    ]
    more = len(said.orders) - len(shown)
    text = "What stands of yours:\n" + "\n".join(rows) + (f"\nAnd {more} more." if more else "")
    buttons = [
        Button(f"Take back {n}", TakeOrdersBack(group=one.group, person=one.person, order=one.order))
        for n, one in enumerate(shown, 1)
    ]
    return Worded(text, tuple(in_rows(buttons, 3)))


@wording("en", HeldNow)
def held_now(said: HeldNow) -> Worded:
    if not said.names:
        return Worded("You hold nobody's versions: they go out at once.")
    text = "You see these versions first: {names}. <i>Release {name}</i> lets theirs go out at once again."
    return Worded(fill(text, names=listed(said.names), name=said.names[0]))


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
    days = (
        f"from {on(said.since)} until {on(said.until)}"
        if said.until
        else f"from {on(said.since)} until you take it back"
    )
    if said.until == said.since:
        days = f"on {on(said.since)}, that day only"
    text = fill(
        "<b>{name}</b> is left out {days}: I name {name} neither among those who need you nor among those I wait "
        "for. Sessions and reminders stay open to {name}.",
        name=said.athlete,
        days=days,
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
    if said.movement:
        text = "Taken back: what you had me leave out or change of the {goes} for <b>{name}</b> counts no longer."
        return Worded(fill(text, goes=of_movement(said.movement), name=said.athlete))
    return Worded(fill("Taken back: <b>{name}</b> gets what I'd give them.", name=said.athlete))


@wording("en", NobodyCalled)
def nobody_called(said: NobodyCalled) -> Worded:
    who = fill("I know {names}.", names=listed(said.known)) if said.known else "Nobody has joined me yet."
    return Worded(
        fill("I know nobody called {names}, so nothing has changed there. ", names=alternatives(said.names))
        + f"{who} Whoever is missing joins me with a tap on a button of mine in the group."
    )


def alternatives(names: Sequence[str]) -> str:
    """`Bo`, `Bo or Tam`; plain text."""
    *first, last = names
    return f"{', '.join(first)} or {last}" if first else last


@wording("en", OnlyTheyErase)
def only_they_erase(said: OnlyTheyErase) -> Worded:
    return Worded(
        fill(
            "What I keep of {name} only {name} can have erased, with /forget. One score of theirs you take off the board with "
            "<i>delete {name}'s score</i>.",
            name=said.athlete,
        )
    )
