"""What is said to the coach about a session, posted or withdrawn, and the post in the group."""

from datetime import date, datetime
from typing import ClassVar, Literal

from core.desk.classes.says import ClassDate
from core.desk.outcome import Said
from core.forecast.values import GroupOutlook
from core.measures import AmountUnit, MassUnit
from core.notation.values import Corrected
from core.scaling.values import Gets, GroupView, NeedsCoach, VersionBlock
from core.values import Value


class Unread(Value):
    """A line of the coach's text with something unread in it, from there where its beginning was read.

    `guess`: what may be meant.

    `is_work`: something to do; else plain
    words to the group. `block`: the one, from 1, that it stands in, and `after` how many of its lines; None for
    what belongs to a line that was read.
    """

    line: int
    text: str
    guess: str | None = None
    is_work: bool = False
    block: int | None = None
    after: int | None = None

    @property
    def doubtful(self) -> bool:
        """Whether it was read, and may not be meant like that: `30 plank`."""
        return self.is_work and self.block is not None and self.after is None


class Marked(Value):
    """A row of the board as it was read; or, at its place, work of the coach's text that was not."""

    text: str
    unread: bool = False


class InNeed(Value):
    """Somebody whom the coach should look at: the first thing that needs them; None where they are only `held`."""

    person: int
    name: str
    first: NeedsCoach | None
    held: bool


class WhoGetsWhat(Said):
    """What everybody gets of each line of a session."""

    lines: tuple[Gets, ...]
    units: MassUnit


class HowItLands(Said):
    """What a group gets of a session. `needs`: whom the coach should look at. `expected`: what it comes to."""

    title: str | None
    view: GroupView
    needs: tuple[InNeed, ...]
    waiting: tuple[str, ...]
    expected: GroupOutlook | None = None


class ReadBack(HowItLands):
    """The session as understood, and how it lands on the group.

    `post_at`: on the group's clock, which is named by `zone` where the reader
    goes by another; `post_is_far`: in another week, so that its weekday alone would mislead. `expected`: what it
    comes to. `is_unscored`: of some part it wasn't said how it is scored. `earlier`: the revision of the draft that can
    be had back; `replaces`: it was another session.
    """

    session_id: int
    revision: int
    board: tuple[Marked, ...]
    unread: tuple[Unread, ...]
    corrected: tuple[Corrected, ...]
    group: str
    others: tuple[tuple[int, str], ...]
    post_at: datetime
    post_is_far: bool = False
    zone: str | None = None
    earlier: int | None = None
    replaces: bool = False
    is_unscored: bool = False


class DraftOver(Said):
    """What a read-back says once it isn't to be decided about any more."""

    title: str | None
    board: str
    because: Literal["posted", "later", "discarded", "changed", "replaced", "moved"]


class ExpectedOfGroup(Said):
    """To a coach: what today's session comes to, for each; None where nothing can be told."""

    expected: GroupOutlook | None


class WhatItWouldDo(Said):
    """To a coach: what a change would come to, that isn't made yet. `lines`: what was and what would be written."""

    lines: tuple[tuple[str, str], ...]
    before: GroupOutlook | None
    after: GroupOutlook | None


class NothingRead(Said):
    """Not one block could be read. `unknown`: movements that nobody here knows, where the format was clear."""

    unread: tuple[Unread, ...]
    unknown: tuple[str, ...] = ()


class WillPost(Said):
    """`at`: on the group's clock, named by `zone` where the reader goes by another.

    `beside`: the titles of what goes out there the same day, "" for one without. `drops`: whoever set it wants it gone.
    `before`: the time in whose place it came. `on_top`: the day that is written on it, where that is another.
    """

    at: datetime
    zone: str | None
    group: str
    session_id: int
    revision: int
    beside: tuple[str, ...] = ()
    title: str | None = None
    drops: bool = False
    before: datetime | None = None
    on_top: date | None = None


class AskOtherDay(Said):
    """To a coach who would post at a day what has another one on top: nothing is set yet.

    `at`: what was told; `own`: the same hour of the day on top, None where that is over.
    """

    stands_alone: ClassVar[bool] = True
    session_id: int
    revision: int
    title: str | None
    at: datetime
    on_top: date
    own: datetime | None


class Coming(Value):
    """A session that isn't posted yet; `at`: when it will be, on the group's clock; None for a draft."""

    title: str | None
    day: date
    group: str
    at: datetime | None
    zone: str | None


class WhichDraft(Said):
    """To a coach who has several drafts and didn't say which one goes out."""

    sessions: tuple[Coming, ...]


class WhatsComing(Said):
    """To a coach: what is to be posted, the first first, and their drafts behind it."""

    sessions: tuple[Coming, ...]


class NotPosted(Said):
    """Its time came, and who had set it coaches the group no more.

    To them, and with what could be posted (`board`, `session_id`, `revision`) to those who coach it now.
    """

    group: str
    title: str | None
    board: str | None = None
    session_id: int = 0
    revision: int = 0


class WasPosted(Said):
    """`day`: the one that it counts for, where `on_top` of it another is written."""

    group: str
    session_id: int
    title: str | None = None
    day: date | None = None
    on_top: date | None = None


class WasDiscarded(Said):
    session_id: int
    revision: int
    title: str | None = None


class SeveralDays(Said):
    """A text of several days is as many sessions; `left`: rows of days at which nothing is done."""

    count: int
    left: tuple[str, ...] = ()


class NoCoachHere(Said):
    """A session, pasted by somebody who coaches no group."""


class GroupPost(Said):
    """`counts`: each movement, and what counts as one of it.

    `lighter` and `no_equipment`: ready ways through the session, for those who never ask for their own version.
    `replaces`: it is a change of an earlier post.
    """

    session_id: int
    title: str | None
    day: date
    board: str
    notes: tuple[str, ...]
    counts: tuple[tuple[str, str], ...] = ()
    classes: tuple[ClassDate, ...] = ()
    lighter: tuple[VersionBlock, ...] = ()
    no_equipment: tuple[VersionBlock, ...] = ()
    units: MassUnit = MassUnit.KG
    replaces: bool = False


class PostReplaced(Said):
    """What an earlier post says from now on: itself, and that another one counts."""

    post: GroupPost


class AsPosted(Said):
    """To an athlete whose version waits: the session as the group reads it."""

    post: GroupPost


class AmendedAfterPost(Said):
    """A change in words to what stands in the group already: it follows as a new draft."""

    group: str


class AmountCarried(Said):
    """Another movement was put in a line without a number: what it became, about as long in doing."""

    was: str
    now: str
    name: str


class LineLike(Value):
    """A movement of a session, and less of it: repetitions, metres or seconds."""

    movement: str
    amount: int
    unit: AmountUnit


class NotAmended(Said):
    """Changes in words, some of which can't be carried out: `left`, as they were said. `done`: others were.

    `like`: a line of this session with another number, as a change that can be told.
    """

    left: tuple[str, ...] = ()
    done: bool = False
    like: LineLike | None = None


class SoAlready(Said):
    """What a coach told of the session is how it is read already."""

    words: str


class MoreOften(Said):
    """A line that nobody spoke of comes up more often, as another of its turns was left out."""

    line: str
    was: int
    now: int


class AskLine(Said):
    """Several lines may be meant by a change: which each is, and its words."""

    stands_alone: ClassVar[bool] = True
    session_id: int
    revision: int
    wish: str
    lines: tuple[tuple[int, str], ...]


class AskChangeOrNew(Said):
    """It may be a session, or a change of the one in hand. `group`: where that one stands already."""

    stands_alone: ClassVar[bool] = True
    session_id: int
    text: str
    group: str | None


class DraftWrong(Said):
    """The draft in hand isn't what was meant. `earlier`: what it was before, if it was another."""

    session_id: int
    revision: int
    earlier: int | None


class AskWhen(Said):
    """To the coach: no moment to come was named; `over`: the one that was, on the group's clock."""

    title: str | None = None
    over: datetime | None = None


class AskPostWithout(Said):
    """To a coach who would post what isn't all read: these lines are in nobody's version. `minute`: when; None: now."""

    stands_alone: ClassVar[bool] = True
    session_id: int
    revision: int
    lines: tuple[str, ...]
    minute: int | None = None


class NoHabit(Said):
    """A coach wants sessions posted at some hour each time, and there is no such habit."""


class NothingOfDay(Said):
    """There is no session of the day that was named."""


class AskWithdraw(Said):
    """Nothing is withdrawn without a yes. `changed`: it took the place of an earlier post, which may count again.

    `draft`: id and revision of the one in hand, which may be meant instead.
    """

    session_id: int
    group: str
    title: str | None
    day: date
    changed: bool
    draft: tuple[int, int] | None = None


class SessionKept(Said):
    """The coach thought better of it."""


class WasWithdrawn(Said):
    """`again`: the earlier post counts again."""

    group: str
    again: bool


class PostWithdrawn(Said):
    """What the post says from now on: not what was in it, as nobody should do it."""

    title: str | None
    day: date


class SessionWithdrawn(Said):
    """To somebody who has a version of it and told no score. `again`: the earlier session, if it counts again."""

    group: str
    title: str | None
    day: date
    again: int | None
