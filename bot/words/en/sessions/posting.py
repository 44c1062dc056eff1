"""Words for the coach's side of a session, and for the post in the group."""

from bot.words.aloud import aloud_words
from bot.words.en.classes.setting_up import class_rows, class_times
from bot.words.en.sessions.expecting import group_words
from bot.words.en.sessions.landing import by_why
from bot.words.en.sessions.scheduling import clock, on_clock
from bot.words.text import bullets, escape, fill, listed
from bot.words.versions import what_words
from bot.words.wording import Button, DoorButton, Row, Worded, wording
from core.desk.coaching.commands import SeeNeeds, SeeWhoGetsWhat
from core.desk.commands import DiscardSession, MoveDraft, PostLater, PostSession, RestoreDraft
from core.desk.sessions.says import (
    AsPosted,
    DraftOver,
    GroupPost,
    HowItLands,
    Marked,
    NoCoachHere,
    NothingRead,
    PostReplaced,
    ReadBack,
    SeveralDays,
    Unread,
)
from core.scaling.values import GroupLine, GroupView, VersionBlock

REPLACES_DRAFT = "It takes the place of the draft before it, which you can have back below."
UNSCORED = "What doesn't say how it's scored is done without a clock. If the time counts, write <i>for time</i> beside it."
WAYS = (
    ("as_written", "as written"),
    ("load", "another load"),
    ("implement", "another implement"),
    ("variant", "an easier or harder way"),
    ("movement", "another movement"),
    ("amount", "less of it"),
    ("rest", "nothing safe"),
)


@wording("en", ReadBack)
def read_back(said: ReadBack) -> Worded:
    title = fill("\n<b>{title}</b>", title=said.title) if said.title else ""
    parts = [
        fill("<b>Here's how I read it, for {group}</b>", group=said.group) + title,
        *([REPLACES_DRAFT] if said.replaces else []),
        *missing(said.unread),
        "\n".join(board_row(one) for one in said.board),
        *corrections(said),
        *([UNSCORED] if said.is_unscored else []),
        *notes(said.unread),
        landing(said),
    ]
    return Worded("\n\n".join(parts), decisions(said))


OVER = {
    "posted": "Posted.",
    "later": "It has its time.",
    "discarded": "Discarded.",
    "changed": "Changed since: the newer one below counts.",
    "replaced": "Another session took its place: the one below.",
    "moved": "It went to another group: the one below.",
}


@wording("en", DraftOver)
def draft_over(said: DraftOver) -> Worded:
    title = fill("<b>{title}</b>\n\n", title=said.title) if said.title else ""
    return Worded(f"{title}{escape(said.board)}\n\n<i>{OVER[said.because]}</i>")


def board_row(row: Marked) -> str:
    return fill("⚠ <i>{text}</i> (not read)", text=row.text) if row.unread else escape(row.text)


def corrections(said: ReadBack) -> list[str]:
    lines = [
        fill("Line {line}: I took “{text}” for {read}.", line=one.line, text=one.text, read=one.read_as)
        for one in said.corrected
    ]
    return ["\n".join(lines)] if lines else []


UNREAD_WORK = (
    "<b>These lines are in nobody's version yet</b>, because I couldn't read them. Give me other words, like "
    "<i>swap sky reaches for presses</i>, send the session again, or post it as it is:"
)
DOUBTFUL = (
    "<b>I'm not sure of these lines</b>, and took them as you see below. Send the session again if you meant something "
    "else:"
)


def missing(unread: tuple[Unread, ...]) -> list[str]:
    """Work that is in nobody's version is said first; then what is in them, and may not be meant like that."""
    work = [one for one in unread if one.is_work]
    groups = (
        (UNREAD_WORK, [one for one in work if not one.doubtful]),
        (DOUBTFUL, [one for one in work if one.doubtful]),
    )
    return [f"{said}\n{bullets([not_read(one) for one in some])}" for said, some in groups if some]


def notes(unread: tuple[Unread, ...]) -> list[str]:
    lines = [fill("“{text}”", text=one.text) for one in unread if not one.is_work]
    return ["Posted with it as your words to the group:\n" + bullets(lines)] if lines else []


def not_read(one: Unread) -> str:
    text = fill("line {line}: “{text}”", line=one.line, text=one.text)
    return text if one.guess is None else text + fill(" (did you mean {guess}?)", guess=one.guess)


@wording("en", HowItLands)
def how_it_lands(said: HowItLands) -> Worded:
    title = fill("<b>{title}</b>\n\n", title=said.title) if said.title else ""
    return Worded(title + landing(said))


def landing(said: HowItLands) -> str:
    parts = []
    if any(people(line) for line in said.view.lines):
        parts.append("<b>How it lands on your people</b>\n" + bullets(view_lines(said.view)))
        parts += group_words(said.expected)
    elif not said.waiting:
        parts.append("Nobody has joined me yet, so I can't say how it lands.")
    if said.needs:
        fine = max((people(line) for line in said.view.lines), default=0) - len(said.needs)
        text = (
            "{fine} fine, {count} need you: {names}."
            if len(said.needs) > 1
            else "{fine} fine, {count} needs you: {names}."
        )
        parts.append(fill(text, fine=fine, count=len(said.needs), names=by_why(said.needs)))
    for text, names in withheld(said.view):
        parts.append(fill(text, names=listed(names)))
    if said.view.say:
        parts.append(
            "<b>Worth saying aloud</b>\n" + bullets([escape(aloud_words(one)) for one in said.view.say])
        )
    if said.waiting:
        parts.append(
            fill(
                "Not counted yet, as they haven't told me what I need for it: {names}.",
                names=listed(said.waiting),
            )
        )
    return "\n\n".join(parts)


def view_lines(view: GroupView) -> list[str]:
    return [fill("{written}: {ways}", written=line.written, ways=ways(line)) for line in view.lines]


def people(line: GroupLine) -> int:
    return sum(getattr(line, field) for field, _ in WAYS)


def ways(line: GroupLine) -> str:
    """`3 as written, 1 another load, nothing safe for Bo`; plain text."""
    counts = [f"{getattr(line, field)} {words}" for field, words in WAYS if getattr(line, field)]
    if line.nobody:
        counts[-1] = f"nothing safe for {listed(line.nobody)}"
    return ", ".join(counts)


def decisions(said: ReadBack) -> tuple[Row, ...]:
    minute = int(said.post_at.timestamp()) // 60
    later = PostLater(session=said.session_id, revision=said.revision, minute=minute)
    lost = any(one.is_work and not one.doubtful for one in said.unread)
    now = "Post without them" if lost else "Post now"
    rows: list[Row] = [
        (
            Button(now, PostSession(session=said.session_id, revision=said.revision)),
            Button(f"Post {clock(said.post_at, dated=said.post_is_far)}{on_clock(said.zone)}", later),
        ),
        (Button("Discard", DiscardSession(session=said.session_id, revision=said.revision)),),
    ]
    if said.earlier is not None:
        label = "Back to the one before" if said.replaces else "Back to how it was"
        back = RestoreDraft(session=said.session_id, revision=said.revision, earlier=said.earlier)
        rows.append((Button(label, back),))
    at = {"session": said.session_id, "revision": said.revision}
    if said.needs:
        rows.insert(0, (Button("Go through who needs you", SeeNeeds(**at)),))
    if any(people(line) for line in said.view.lines):
        rows.insert(1, (Button("Who gets what", SeeWhoGetsWhat(**at)),))
    rows += [
        (
            Button(
                f"For {title[:40]} instead",
                MoveDraft(session=said.session_id, revision=said.revision, group=group),
            ),
        )
        for group, title in said.others
    ]
    return tuple(rows)


OPEN_END = "Something is still open in that. Send it like this, with your own numbers, and I can read it:"


def offered(one: Unread) -> str:
    return fill("“{text}” → <code>{guess}</code>", text=one.text, guess=one.guess)


@wording("en", NothingRead)
def nothing_read(said: NothingRead) -> Worded:
    if said.unknown:
        names = listed([f"“{name}”" for name in said.unknown[:8]])
        return Worded(
            fill("I see how it's done, but I don't know {names} yet. Is there another name?", names=names)
        )
    if said.unread and all(one.guess for one in said.unread):
        return Worded(f"{OPEN_END}\n\n{bullets([offered(one) for one in said.unread[:5]])}")
    text = (
        "I couldn't find a session in that. Begin with how it's done, like <code>AMRAP 12</code> or "
        "<code>4 rounds for time</code>, then one movement a line, like <code>10 push-ups</code>."
    )
    lines = bullets([not_read(one) for one in said.unread[:5]])
    return Worded(f"{text}\n\n{lines}" if lines else text)


@wording("en", SeveralDays)
def several_days(said: SeveralDays) -> Worded:
    text = f"That's {said.count} days, so here are {said.count} sessions, one for each."
    if not said.left:
        return Worded(text)
    return Worded(f"{text} Nothing to do here:\n\n{bullets([escape(one) for one in said.left])}")


def withheld(view: GroupView) -> list[tuple[str, list[str]]]:
    """Who gets no version today, and for whom none can be worked out."""
    unclear = [one.athlete for one in view.withheld if one.because == "unclear"]
    resting = [one.athlete for one in view.withheld if one.because != "unclear"]
    said = (
        ("No version today: {names}.", resting),
        ("I can't work out a version for {names}: something I know about them doesn't add up.", unclear),
    )
    return [(text, names) for text, names in said if names]


@wording("en", NoCoachHere)
def no_coach_here(_: NoCoachHere) -> Worded:
    return Worded(
        "That looks like a session. Only a coach can post one to a group. If you coach a group, be one of "
        "its admins and tap “Start with me” under my greeting there. If it was a score, write it like <code>7+12</code>."
    )


def standards(counts: tuple[tuple[str, str], ...]) -> list[str]:
    """What counts as a repetition; folded away, since most know it."""
    lines = [
        fill("{movement}: {counts}", movement=movement.capitalize(), counts=one) for movement, one in counts
    ]
    return (
        ["<b>What counts</b>\n<blockquote expandable>" + "\n".join(lines) + "</blockquote>"] if lines else []
    )


def levels(said: GroupPost) -> list[str]:
    """Two ready ways beside what is written; folded away, since your own version fits better."""
    ways = (("Lighter", said.lighter), ("Without equipment", said.no_equipment))
    told = [
        fill("{name}: {lines}.", name=name, lines="; ".join(level(blocks, said)))
        for name, blocks in ways
        if blocks
    ]
    if not told:
        return []
    folded = "<blockquote expandable>" + "\n".join(told) + "</blockquote>"
    return [f"<b>Ready ways</b>, if nothing hurts and nothing must be spared\n{folded}"]


def level(blocks: tuple[VersionBlock, ...], said: GroupPost) -> list[str]:
    lines = (line for one in blocks if one.scored or len(blocks) == 1 for line in one.every_line)
    return list(dict.fromkeys(what_words(line, said.units) for line in lines))


REPLACES = "<b>Changed:</b> this takes the place of the earlier post. A score you told for that one stays."
# At the end, where a post of several messages has its buttons.
REPLACED = "<b>Changed since:</b> the newer post below is what counts now."


@wording("en", PostReplaced)
def post_replaced(said: PostReplaced) -> Worded:
    return Worded("\n\n".join([*post_parts(said.post), REPLACED]))


@wording("en", GroupPost)
def group_post(said: GroupPost) -> Worded:
    parts = [
        *([REPLACES] if said.replaces else []),
        *post_parts(said),
        "Tap for your own version. Done? Send me your score in private, or as a reply to this.",
    ]
    return Worded(
        "\n\n".join(parts), ((DoorButton("My version", f"v{said.session_id}"),), *class_rows(said.classes))
    )


@wording("en", AsPosted)
def as_posted(said: AsPosted) -> Worded:
    end = "This is what everybody got. Your own version comes here as soon as your coach has looked at it."
    return Worded("\n\n".join([*post_parts(said.post), end]))


def post_parts(said: GroupPost) -> list[str]:
    title = said.title or f"{said.day:%A, %-d %B}"
    parts = [fill("<b>{title}</b>", title=title), escape(said.board)]
    if said.notes:
        parts.append(bullets([escape(note) for note in said.notes]))
    parts += standards(said.counts)
    parts += levels(said)
    return [*parts, *class_times(said.classes)]
