"""What is said about classes and reminders. Moments are aware, on the clock that the reader goes by."""

from datetime import date, datetime, time

from core.calendar.values import Quiet
from core.desk.outcome import Said
from core.values import Value


class ClassDate(Value):
    """One date of a class: `starts` on the reader's clock, which is called `zone`."""

    class_id: int
    slot: int
    title: str
    starts: datetime
    zone: str
    minutes: int
    link: str | None = None
    coming: bool = False
    names: tuple[str, ...] = ()


class ClassPlan(Value):
    """A class as planned: on `weekdays` (Monday is 0) every so many `weeks`, or once. `first`: its first date."""

    class_id: int
    title: str
    weekdays: tuple[int, ...]
    weeks: int
    first: datetime
    zone: str
    minutes: int
    link: str | None


class ClassReadBack(Said):
    """A class as understood; `half_known` false where it may be morning or evening."""

    stands_alone = True

    plan: ClassPlan
    group: str
    half_known: bool
    replaces: bool
    others: tuple[tuple[int, str], ...] = ()


class AskClass(Said):
    """What is missing of a class: `day`, `time`, `past` (it is over), or `all` of it anew."""

    missing: str
    title: str | None = None


class ClassReady(Said):
    plan: ClassPlan
    group: str


class ClassDropped(Said):
    pass


class NewClass(Said):
    """To the group: a class that takes place from now on."""

    plan: ClassPlan
    changed: bool
    next: ClassDate


class ClassList(Said):
    """The dates to come; `manage`: classes that the reader may change, by id and title."""

    dates: tuple[ClassDate, ...]
    manage: tuple[tuple[int, str], ...] = ()
    coach: bool = False


class ClassToManage(Said):
    """To its coach: a class with its next dates and who comes."""

    plan: ClassPlan
    dates: tuple[ClassDate, ...]


class AskWhichDate(Said):
    """To the coach: which date to call off, or with `to` (by slot) to move."""

    dates: tuple[ClassDate, ...]
    to: tuple[tuple[int, datetime], ...] = ()


class NoSuchDate(Said):
    """No class on that day."""

    day: date | None
    next: tuple[ClassDate, ...]


class DateCalledOff(Said):
    """To whoever was in; to the group and the coach too."""

    date: ClassDate
    told: int | None = None


class DateMoved(Said):
    """`date.starts` is the new moment."""

    date: ClassDate
    was: datetime
    told: int | None = None


class ClassEnded(Said):
    title: str
    told: int | None = None


class SignedUp(Said):
    """The short answer to a press in the group or in private. `private`: can be reminded."""

    date: ClassDate
    coming: bool
    again: bool
    private: bool


class SignUpNoted(Said):
    """In private: in for a date; `remind_at` None where it is too late for a reminder. `again`: they were before."""

    date: ClassDate
    remind_at: datetime | None = None
    again: bool = False


class SignUpDropped(Said):
    """`again`: they weren't in before either."""

    date: ClassDate
    again: bool = False


class ClassReminder(Said):
    """`minutes_left` to the start, below 0 once it has begun; `session`: whose version to show."""

    date: ClassDate
    minutes_left: int
    session: int | None


class AskAttended(Said):
    date: ClassDate


class AttendanceNoted(Said):
    yes: bool


class MyReminders(Said):
    """How the reader is reminded; `digest_at` for a `coach`, None where they want no digest.

    `by_the_clock`: they wished to be reminded at a time of day.
    """

    zone: str
    own_zone: bool
    lead_minutes: int
    quiet: Quiet | None
    coach: bool
    digest_at: time | None
    saved: bool = False
    by_the_clock: bool = False


class AskAboutHabit(Said):
    """`which`: `lead`, `quiet`, `own_zone` or `digest`. `again`: the last answer could not be read."""

    which: str
    again: bool = False
    zones: tuple[str, ...] = ()
