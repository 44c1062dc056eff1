"""Words for signing up, reminders, attendance, and how somebody wants to be reminded."""

from datetime import time

from bot.words.en.classes.setting_up import come_row
from bot.words.en.moments import city, here, moment_beside, short, span
from bot.words.text import escape, fill
from bot.words.wording import Button, Row, Worded, wording
from core.calendar.values import Quiet
from core.desk.classes.commands import (
    AskHabit,
    SetDigest,
    SetLead,
    SetOwnZone,
    SetQuiet,
    StayAway,
    TellAttended,
    WantDigest,
)
from core.desk.classes.says import (
    AskAboutHabit,
    AskAttended,
    AttendanceNoted,
    ClassReminder,
    MyReminders,
    SignedUp,
    SignUpDropped,
    SignUpNoted,
)
from core.desk.commands import MyVersion


@wording("en", SignedUp)
def signed_up(said: SignedUp) -> Worded:
    when = here(said.date)
    if not said.coming:
        return Worded(fill("OK, you're not in for {when}.", when=when))
    already = "You're in already" if said.again else "You're in"
    if not said.private:
        return Worded(
            fill("{in_}: {when}. Talk to me in private once, and I'll remind you.", in_=already, when=when)
        )
    return Worded(fill("{in_}: {when}.", in_=already, when=when))


@wording("en", SignUpNoted)
def sign_up_noted(said: SignUpNoted) -> Worded:
    head = "You're in already" if said.again else "You're in"
    lines = [f"{head}: " + fill("<b>{title}</b>, {when}.", title=said.date.title, when=here(said.date))]
    if said.remind_at is not None:
        lines.append(fill("I'll remind you {when}.", when=moment_beside(said.remind_at, said.date.starts)))
    elif said.date.link:
        lines.append(escape(said.date.link))
    away = Button("Can't make it", StayAway(class_id=said.date.class_id, slot=said.date.slot))
    return Worded("\n".join(lines), ((away, Button("Reminders", AskHabit(which="lead"))),))


@wording("en", SignUpDropped)
def sign_up_dropped(said: SignUpDropped) -> Worded:
    text = (
        "You weren't down for {title}, {when}: all settled."
        if said.again
        else "OK, you're not in for {title}, {when}."
    )
    text = fill(text, title=said.date.title, when=short(said.date.starts))
    return Worded(text, (come_row(said.date),))


@wording("en", ClassReminder)
def class_reminder(said: ClassReminder) -> Worded:
    lines = [
        fill(
            "<b>{title}</b> {soon}: {when}.",
            title=said.date.title,
            soon=soon(said.minutes_left),
            when=here(said.date),
        )
    ]
    if said.date.link:
        lines.append(escape(said.date.link))
    away = (Button("Can't make it", StayAway(class_id=said.date.class_id, slot=said.date.slot)),)
    version = ((Button("My version", MyVersion(session=said.session)),),) if said.session else ()
    return Worded("\n".join(lines), (*version, away))


def soon(minutes: int) -> str:
    """`starts in 45 minutes`, `starts in 2 hours`, `has begun`."""
    if minutes < 0:
        return "has begun"
    if minutes < 1:
        return "starts now"
    return f"starts in {span(minutes)}"


@wording("en", AskAttended)
def ask_attended(said: AskAttended) -> Worded:
    text = fill("Were you there? {title}, {when}.", title=said.date.title, when=short(said.date.starts))
    row = tuple(
        Button(label, TellAttended(class_id=said.date.class_id, slot=said.date.slot, yes=yes))
        for label, yes in (("Yes", True), ("No", False))
    )
    return Worded(text, (row,))


@wording("en", AttendanceNoted)
def attendance_noted(said: AttendanceNoted) -> Worded:
    return Worded(
        "Good to hear! If you have a score, just write it to me."
        if said.yes
        else "Noted. Another time, then!"
    )


BY_THE_CLOCK = "I can't ring at a time of its own, only so long before a class: an alarm on your phone does that best.\n\n"


@wording("en", MyReminders)
def my_reminders(said: MyReminders) -> Worded:
    head = "Saved. " if said.saved else BY_THE_CLOCK if said.by_the_clock else ""
    own = "your clock" if said.own_zone else "your group's clock"
    lines = [
        f"{head}I remind you of classes you've signed up for <b>{lead_words(said.lead_minutes)}</b>.",
        fill("Clock: {zone} ({own})", zone=city(said.zone), own=own),
        f"Quiet hours: {quiet_words(said.quiet)}",
    ]
    buttons = [
        Button("How early", AskHabit(which="lead")),
        Button("Quiet hours", AskHabit(which="quiet")),
        Button("My clock", AskHabit(which="own_zone")),
    ]
    rows: list[Row] = [tuple(buttons)]
    if said.coach:
        lines.append(f"Evening digest: {digest_words(said.digest_at)}")
        rows.append((Button("Evening digest", AskHabit(which="digest")),))
    return Worded("\n".join(lines), tuple(rows))


def digest_words(at: time | None) -> str:
    return "none" if at is None else f"{at:%H:%M}, on your group's clock"


def lead_words(minutes: int) -> str:
    return f"{span(minutes)} before" if minutes else "when they start"


def quiet_words(quiet: Quiet | None) -> str:
    return "none" if quiet is None else f"{quiet.start:%H:%M} to {quiet.end:%H:%M}"


@wording("en", AskAboutHabit)
def ask_about_habit(said: AskAboutHabit) -> Worded:
    if said.zones:
        rows = tuple((Button(zone.replace("_", " "), SetOwnZone(zone=zone)),) for zone in said.zones)
        return Worded("Which one do you mean?", rows)
    texts = {
        "lead": "How long before a class shall I remind you? Tap one, or write it, like <i>90 minutes</i>.",
        "quiet": "When shall I leave you alone? Tap one, or write it, like <i>22:00 to 7:00</i>.",
        "own_zone": "Which clock do you live by? Write a city near you, like <i>Lisbon</i>.",
        "digest": "When shall the evening digest come? Tap one, or write a time, like <i>21:30</i>.",
    }
    sorry = "I couldn't read that. " if said.again else ""
    return Worded(sorry + texts[said.which], habit_rows(said.which))


def habit_rows(which: str) -> tuple[Row, ...]:
    match which:
        case "lead":
            return (tuple(Button(span(minutes), SetLead(minutes=minutes)) for minutes in (15, 30, 60, 120)),)
        case "quiet":
            nights = tuple(
                Button(f"{start}:00 to {end}:00", SetQuiet(start=start * 60, end=end * 60))
                for start, end in ((22, 7), (21, 8))
            )
            return (nights, (Button("None", SetQuiet(start=0, end=0)),))
        case "digest":
            hours = tuple(Button(f"{hour}:00", SetDigest(minute=hour * 60)) for hour in (19, 20, 21))
            return (hours, (Button("No digest", WantDigest(yes=False)),))
    return ()
