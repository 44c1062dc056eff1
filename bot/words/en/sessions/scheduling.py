"""Words for when a session goes out: set, asked, moved, listed, dropped."""

from datetime import datetime
from functools import partial

from bot.words.en.moments import city
from bot.words.text import bullets, escape, fill, listed
from bot.words.wording import Button, Worded, wording
from core.desk.coaching.commands import WithdrawSession
from core.desk.commands import BackToTime, DiscardSession, LeaveIt, PostLater, PostSession, RestoreDraft
from core.desk.sessions.says import (
    AskOtherDay,
    AskPostWithout,
    AskWhen,
    Coming,
    NoHabit,
    NotPosted,
    WasDiscarded,
    WasPosted,
    WhatsComing,
    WhichDraft,
    WillPost,
)


def named(title: str | None) -> str:
    """HTML: the session by its name; one without is the one in hand."""
    return fill("“{title}”", title=title) if title else "it"


def clock(at: datetime, *, dated: bool) -> str:
    return f"{at:%a %-d %b %H:%M}" if dated else f"{at:%a %H:%M}"


def moment(at: datetime, zone: str | None) -> str:
    """Always with its date: a weekday alone may be that of another week."""
    return f"{at:%A, %-d %B at %H:%M}{on_clock(zone)}"


def on_clock(zone: str | None) -> str:
    """Whose time it is, where that isn't plain."""
    return f", {city(zone)} time" if zone else ""


@wording("en", WillPost)
def will_post(said: WillPost) -> Worded:
    when = moment(said.at, said.zone)
    text = f"I'll post {named(said.title)}" + fill(" to {group} on {when}.", group=said.group, when=when)
    if said.on_top:
        text += f" (It says {said.on_top:%A} on top.)"
    if said.drops:
        text = fill(
            "“{title}” is set to go to {group} on {when}. Shall I drop it?",
            title=said.title or "A session",
            group=said.group,
            when=when,
        )
    if said.beside:
        others = listed([f"“{one}”" if one else "one without a title" for one in said.beside])
        text += fill(
            " Another goes out that day too: {others}. For another day: <i>make it Monday</i>.", others=others
        )
    away = Button("Discard", DiscardSession(session=said.session_id, revision=said.revision))
    now = Button("Post now", PostSession(session=said.session_id, revision=said.revision))
    if said.before is None:
        return Worded(text, ((away, Button("No, leave it", LeaveIt())) if said.drops else (now, away),))
    minute = int(said.before.timestamp()) // 60
    back = BackToTime(session=said.session_id, revision=said.revision, minute=minute)
    return Worded(text, ((now, away), (Button(f"Back to {clock(said.before, dated=False)}", back),)))


@wording("en", WhichDraft)
def which_draft(said: WhichDraft) -> Worded:
    return Worded(
        f"Which one? You have several drafts, so I've posted nothing:\n{bullets([coming(one) for one in said.sessions])}\n"
        "Tap the key under it, or name its day: <code>post monday's at 6</code>."
    )


@wording("en", WhatsComing)
def whats_coming(said: WhatsComing) -> Worded:
    if not said.sessions:
        return Worded("Nothing is scheduled, and there is no draft.")
    how = "Another time: <i>make it 7</i>. What is in it: <i>make the run 200 m</i>. Or <i>post it</i>, or <i>discard it</i>."
    return Worded(f"{bullets([coming(one) for one in said.sessions])}\n{how}")


def coming(one: Coming) -> str:
    told = partial(fill, what=one.title or f"{one.day:%A, %-d %B}", group=one.group)
    if one.at is None:
        return told("<b>{what}</b> for {group}: a draft, without a time yet")
    return told("<b>{what}</b> for {group}: {when}", when=moment(one.at, one.zone))


@wording("en", NotPosted)
def not_posted(said: NotPosted) -> Worded:
    named = f"“{said.title}”" if said.title else "A session"
    told = partial(fill, what=named, group=said.group)
    if said.board is None:
        return Worded(
            told(
                "{what} for {group} has not gone out: you don't coach the group any more. Its coaches can post it."
            )
        )
    text = told(
        "{what} for {group} was to go out now. Whoever set it doesn't coach the group any more, so it is up to you:"
    )
    row = (Button("Post now", PostSession(session=said.session_id, revision=said.revision)),)
    return Worded(f"{text}\n\n{escape(said.board)}", (row,))


@wording("en", NoHabit)
def no_habit(_: NoHabit) -> Worded:
    return Worded(
        "I never post by a habit, so nothing has changed: each session goes out when you say, like "
        "<code>post it friday 6pm</code>. The hour of the last one is offered under each."
    )


@wording("en", AskPostWithout)
def ask_post_without(said: AskPostWithout) -> Worded:
    at = {"session": said.session_id, "revision": said.revision}
    post = PostSession(**at) if said.minute is None else PostLater(minute=said.minute, **at)
    lines = bullets([fill("“{text}”", text=one) for one in said.lines])
    text = "Not yet: I couldn't read this, so that it would be in nobody's version. Give me other words, or post without it."
    return Worded(f"{text}\n{lines}", ((Button("Post without them", post),),))


@wording("en", AskWhen)
def ask_when(said: AskWhen) -> Worded:
    """A moment that is over is no moment to post at."""
    what = fill("“{title}”", title=said.title) if said.title else "it"
    over = f"{moment(said.over, None)} is over. " if said.over else ""
    hint = "Write it like <i>post it tomorrow at 7</i>, or tap Post now above."
    return Worded(f"{over}When shall I post {what}? {hint}")


@wording("en", WasDiscarded)
def was_discarded(said: WasDiscarded) -> Worded:
    gone = f"Discarded: {named(said.title)}" if said.title else "Discarded"
    back = RestoreDraft(session=said.session_id, revision=said.revision, earlier=said.revision)
    return Worded(f"{gone}. Send me another whenever you like.", ((Button("Bring it back", back),),))


@wording("en", AskOtherDay)
def ask_other_day(said: AskOtherDay) -> Worded:
    text = f"{named(said.title)} says {said.on_top:%A} on top, and nothing of yours is for {said.at:%A}. When shall it go out?"

    def at(when: datetime) -> Button:
        minute = int(when.timestamp()) // 60
        post = PostLater(session=said.session_id, revision=said.revision, minute=minute)
        return Button(f"Post {clock(when, dated=False)}", post)

    return Worded(text[:1].upper() + text[1:], (tuple(at(one) for one in (said.own, said.at) if one),))


@wording("en", WasPosted)
def was_posted(said: WasPosted) -> Worded:
    what = f": {named(said.title)}" if said.title else ""
    text = (
        fill("Posted to {group}", group=said.group) + what + ". Everybody can tap for their own version now."
    )
    if said.on_top and said.day:
        text += f" It says {said.on_top:%A} on top, and counts for today, {said.day:%A}."
    return Worded(text, ((Button("Withdraw it", WithdrawSession(session=said.session_id)),),))
