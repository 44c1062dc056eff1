"""Words for classes: set up, listed, managed, signed up for."""

from bot.words.en.moments import city, everywhere, short
from bot.words.text import bullets, escape, fill, listed
from bot.words.wording import Button, Row, Worded, wording
from core.desk.classes.commands import (
    CancelDate,
    ChangeClass,
    ComeTo,
    ConfirmClass,
    DropClass,
    EndClass,
    ManageClass,
    PlaceClass,
    StayAway,
)
from core.desk.classes.says import (
    AskClass,
    ClassDate,
    ClassDropped,
    ClassList,
    ClassPlan,
    ClassReadBack,
    ClassReady,
    ClassToManage,
    NewClass,
)

DAYS = ("Mondays", "Tuesdays", "Wednesdays", "Thursdays", "Fridays", "Saturdays", "Sundays")
NOON = 12
EXAMPLE = "<code>class Tuesdays 18:30, 45 min, https://example.org/room</code>"


def rhythm(plan: ClassPlan) -> str:
    """`Tuesdays at 18:30`, `every other Tuesday`, `once, on Sat 14 March 10:00`; plain text."""
    if not plan.weekdays:
        return f"once, on {short(plan.first)}"
    days = "every day" if len(plan.weekdays) == len(DAYS) else listed([DAYS[day] for day in plan.weekdays])
    other = ", every other week" if plan.weeks > 1 else ""
    return f"{days} at {plan.first:%H:%M}{other}"


def described(plan: ClassPlan) -> str:
    """HTML: a class in a few lines."""
    lines = [
        fill("<b>{title}</b>", title=plan.title),
        fill(
            "{when}, {place} time, {minutes} minutes",
            when=rhythm(plan),
            place=city(plan.zone),
            minutes=plan.minutes,
        ),
    ]
    if plan.link:
        lines.append(escape(plan.link))
    return "\n".join(lines)


@wording("en", ClassReadBack)
def class_read_back(said: ClassReadBack) -> Worded:
    head = fill("<b>Here's how I read your class, for {group}</b>", group=said.group)
    parts = [head, described(said.plan)]
    if said.plan.weekdays:
        parts.append(fill("The first one is {when}{half}.", when=short(said.plan.first), half=half(said)))
    if not said.half_known:
        parts.append("Is that in the morning or in the evening?")
    if said.replaces:
        parts.append("It takes the place of the one before, and whoever had signed up hears of it.")
    rows: list[Row] = [*yes_rows(said), (Button("No", DropClass(class_id=said.plan.class_id)),)]
    rows += [
        (Button(f"For {title[:40]} instead", PlaceClass(class_id=said.plan.class_id, group=group)),)
        for group, title in said.others
    ]
    return Worded("\n\n".join(parts), tuple(rows))


def half(said: ClassReadBack) -> str:
    """A morning that was only read so is said aloud."""
    morning = said.half_known and said.plan.first.hour < NOON
    return ", in the morning" if morning else ""


def yes_rows(said: ClassReadBack) -> list[Row]:
    """One yes; where the hour may be of the morning or the evening, two."""
    yes = ConfirmClass(class_id=said.plan.class_id)
    if said.half_known:
        return [(Button("Yes, set it up", yes),)]
    hour, minute = said.plan.first.hour, said.plan.first.minute
    later = ConfirmClass(class_id=said.plan.class_id, evening=True)
    return [
        (
            Button(f"Yes, {hour:02}:{minute:02}", yes),
            Button(f"Yes, {(hour + 12) % 24:02}:{minute:02}", later),
        )
    ]


@wording("en", AskClass)
def ask_class(said: AskClass) -> Worded:
    texts = {
        "day": "On which day is it? Like <i>Tuesdays</i>, <i>Monday and Thursday</i> or <i>14 March</i>.",
        "time": "At what time does it start? Like <i>18:30</i>.",
        "past": "That moment has passed already. Which day do you mean?",
        "all": f"How should it be from now on? Write it like {EXAMPLE}. What you leave out stays as it is.",
    }
    return Worded(texts[said.missing])


@wording("en", ClassReady)
def class_ready(said: ClassReady) -> Worded:
    text = fill(
        "Done: {title}, {when}. I've told {group}, and I'll remind everybody who signs up.",
        title=said.plan.title, when=rhythm(said.plan), group=said.group,
    )  # fmt: skip
    hint = "No class one day? Just write me <i>no class next Tuesday</i>. /classes shows them all."
    return Worded(f"{text}\n{hint}")


@wording("en", ClassDropped)
def class_dropped(_: ClassDropped) -> Worded:
    return Worded(f"Dropped, nothing was set up. Write it anew whenever you like, like {EXAMPLE}.")


@wording("en", NewClass)
def new_class(said: NewClass) -> Worded:
    head = "The class has changed:" if said.changed else "There's a live class now:"
    parts = [head, described(said.plan), f"Next: {everywhere(said.next)}"]
    return Worded("\n\n".join(parts), (come_row(said.next),))


def come_row(one: ClassDate) -> Row:
    return (Button(f"I'm in: {short(one.starts)}", ComeTo(class_id=one.class_id, slot=one.slot)),)


def class_times(dates: tuple[ClassDate, ...]) -> list[str]:
    """HTML lines for a group's post: the day's classes."""
    return [
        fill("Live today: {title}, ", title=one.title)
        + everywhere(one)
        + fill(" ({minutes} min)", minutes=one.minutes)
        for one in dates
    ]


def class_rows(dates: tuple[ClassDate, ...]) -> tuple[Row, ...]:
    """A sign-up button for each of the day's classes."""
    return tuple(
        (Button(f"I'm in at {one.starts:%H:%M}", ComeTo(class_id=one.class_id, slot=one.slot)),)
        for one in dates
    )


@wording("en", ClassList)
def class_list(said: ClassList) -> Worded:
    if not said.dates:
        hint = f" Set one up by writing {EXAMPLE}." if said.coach else ""
        return Worded(f"No live class is planned.{hint}", manage_rows(said))
    head = fill("<b>Live classes</b>, on {place} time", place=city(said.dates[0].zone))
    lines = bullets([listed_date(one, coach=said.coach) for one in said.dates])
    rows = [sign_up_row(one) for one in said.dates[:6]]
    return Worded(f"{head}\n{lines}", (*rows, *manage_rows(said)))


def listed_date(one: ClassDate, *, coach: bool) -> str:
    text = fill(
        "{when}: {title}, {minutes} min", when=short(one.starts), title=one.title, minutes=one.minutes
    )
    if one.coming:
        text += ". <b>You're in</b>"
    if coach:
        text += fill(". {who}", who=who_comes(one))
    return text


def who_comes(one: ClassDate) -> str:
    return f"In so far: {listed(one.names)}" if one.names else "Nobody has signed up yet"


def sign_up_row(one: ClassDate) -> Row:
    if not one.coming:
        return come_row(one)
    return (Button(f"Can't make it: {short(one.starts)}", StayAway(class_id=one.class_id, slot=one.slot)),)


def manage_rows(said: ClassList) -> tuple[Row, ...]:
    return tuple(
        (Button(f"Change {title[:40]}", ManageClass(class_id=class_id)),) for class_id, title in said.manage
    )


@wording("en", ClassToManage)
def class_to_manage(said: ClassToManage) -> Worded:
    class_id = said.plan.class_id
    dates = bullets([fill("{when}. {who}", when=short(one.starts), who=who_comes(one)) for one in said.dates])
    rows: list[Row] = [cancel_row(one) for one in said.dates]
    rows.append(
        (Button("Change it", ChangeClass(class_id=class_id)), Button("End it", EndClass(class_id=class_id)))
    )
    return Worded(f"{described(said.plan)}\n\n{dates}".rstrip(), tuple(rows))


def cancel_row(one: ClassDate) -> Row:
    return (Button(f"No class {short(one.starts)}", CancelDate(class_id=one.class_id, slot=one.slot)),)
