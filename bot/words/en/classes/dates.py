"""Words for single dates of a class: called off, moved; and for a class that ends."""

from datetime import datetime

from bot.words.en.classes.setting_up import cancel_row, who_comes
from bot.words.en.moments import here, short
from bot.words.text import bullets, fill
from bot.words.wording import Button, Row, Worded, wording
from core.desk.classes.commands import (
    ComeTo,
    MoveDate,
    StayAway,
)
from core.desk.classes.says import (
    AskWhichDate,
    ClassDate,
    ClassEnded,
    DateCalledOff,
    DateMoved,
    NoSuchDate,
)
from core.desk.commands import LeaveIt


@wording("en", AskWhichDate)
def ask_which_date(said: AskWhichDate) -> Worded:
    lines = bullets(
        [
            fill("{title}, {when}. {who}", title=one.title, when=short(one.starts), who=who_comes(one))
            for one in said.dates
        ]
    )
    note = "Tap to confirm, and I'll tell the group and whoever is in."
    if not said.to:
        return Worded(f"Call this off?\n{lines}\n\n{note}", (*map(cancel_row, said.dates), leave_row()))
    rows = (move_row(one, slot, to) for one, (slot, to) in zip(said.dates, said.to, strict=True))
    return Worded(f"Move this?\n{lines}\n\n{note}", (*rows, leave_row()))


def leave_row() -> Row:
    return (Button("No, leave it", LeaveIt()),)


def move_row(one: ClassDate, slot: int, to: datetime) -> Row:
    label = f"{one.starts:%a} {one.starts.day} {one.starts:%B} → {short(to)}"
    return (Button(label, MoveDate(class_id=one.class_id, slot=one.slot, to=slot)),)


@wording("en", NoSuchDate)
def no_such_date(said: NoSuchDate) -> Worded:
    day = f" on {said.day:%A}, {said.day.day} {said.day:%B}" if said.day else ""
    if not said.next:
        return Worded(f"There's no class{day} that I know of, and none is planned.")
    return Worded(
        f"There's no class{day} that I know of. Do you mean one of these?",
        tuple(cancel_row(one) for one in said.next),
    )


@wording("en", DateCalledOff)
def date_called_off(said: DateCalledOff) -> Worded:
    text = fill("No class on {when}: {title} is called off.", when=here(said.date), title=said.date.title)
    if said.told is None:
        return Worded(text)
    return Worded(f"Done. {text} {told_words(said.told)}")


def told_words(told: int) -> str:
    if not told:
        return "Nobody had signed up; the group knows."
    return (
        f"I've told the group and the {told} who had signed up."
        if told > 1
        else "I've told the group and the one who had signed up."
    )


@wording("en", DateMoved)
def date_moved(said: DateMoved) -> Worded:
    text = fill(
        "{title} of {was} moves to <b>{when}</b>.",
        title=said.date.title,
        was=short(said.was),
        when=here(said.date),
    )
    if said.told is not None:
        return Worded(f"Done. {text} {told_words(said.told)}")
    row = (
        Button("I'm in", ComeTo(class_id=said.date.class_id, slot=said.date.slot)),
        Button("Can't make it", StayAway(class_id=said.date.class_id, slot=said.date.slot)),
    )
    return Worded(f"{text} Whoever had signed up is still in.", (row,))


@wording("en", ClassEnded)
def class_ended(said: ClassEnded) -> Worded:
    text = fill("The class {title} no longer takes place.", title=said.title)
    if said.told:
        text += " I've told whoever had signed up."
    return Worded(text)
