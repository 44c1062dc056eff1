"""Words for the coach's evening digest: warm, plain, and shaming nobody."""

from bot.words.en.joining.entering import arriving
from bot.words.en.moments import city
from bot.words.text import bullets, escape, fill, listed
from bot.words.wording import Button, Worded, wording
from core.desk.classes.commands import AskHabit, WantDigest
from core.desk.classes.says import ClassDate
from core.desk.coaching.digest_says import (
    ClassDigest,
    ClassSignUps,
    Digest,
    SessionDigest,
    Trained,
    WhoIsIn,
    WhoTrained,
)

FAR_ABOVE = (
    "Six times running far above what I'd expect: {names}. They may be stronger than they told me, or the scores are "
    "counted otherwise. Only you see this."
)

STRAINED = (
    "It was nearly all they had, in their first sessions or twice in a row: {names}. A word from you, or something easier "
    "next time, may do them good. Only you see this."
)


@wording("en", Digest)
def digest(said: Digest) -> Worded:
    head = fill(
        "<b>So far today in {group}</b>, {day}" if said.so_far else "<b>Your evening with {group}</b>, {day}",
        group=said.group,
        day=f"{said.day:%A} {said.day.day} {said.day:%B}",
    )
    parts = [head, *(session(one) for one in said.sessions), *(class_(one) for one in said.classes)]
    if said.words:
        told = [fill("{name}: “{text}”", name=name, text=text) for name, text in said.words]
        parts.append("For you, in their words:\n" + bullets(told))
    if said.needs:
        parts.append(
            fill("They need a word from you about their version: {names}.", names=listed(said.needs))
        )
    else:
        parts.append("No question is waiting for you.")
    if said.stopped:
        parts.append(fill("No version for now: {names}.", names=listed(said.stopped)))
    if said.strained:
        parts.append(fill(STRAINED, names=listed(said.strained)))
    if said.above:
        parts.append(fill(FAR_ABOVE, names=listed(said.above)))
    parts += arriving(said.arriving)
    if not said.sessions and said.so_far:
        parts.insert(1, "No session was posted today.")
    if said.so_far:
        return Worded("\n\n".join(parts))
    row = (Button("Another hour", AskHabit(which="digest")), Button("No more digests", WantDigest(yes=False)))
    return Worded("\n\n".join(parts), (row,))


@wording("en", WhoIsIn)
def who_is_in(said: WhoIsIn) -> Worded:
    day = f"{said.day:%A} {said.day.day} {said.day:%B}"
    head = "<b>Who's in today</b>, {group}, {day}" if said.today else "<b>Who's in</b>, {group}, {day}"
    parts = [fill(head, group=said.group, day=day)]
    parts += [sign_ups(one) for one in said.classes] or ["There's no class that day."]
    parts += [seen_and_told(one) for one in said.sessions]
    if not said.sessions:
        parts.append("No session has been posted for it.")
    return Worded("\n\n".join(parts))


@wording("en", WhoTrained)
def who_trained(said: WhoTrained) -> Worded:
    week = "last week" if said.last else "this week, so far"
    parts = [fill("<b>Who trained {week}</b>, {group}", week=week, group=said.group)]
    if said.trained:
        told = [name if days == 1 else f"{name} ({days} days)" for name, days in said.trained]
        parts.append(fill("Told a score: {names}", names=listed(told)))
    if said.none:
        parts.append(
            fill("No score from {names}. That may be rest, or just a quiet week.", names=listed(said.none))
        )
    return Worded("\n".join(parts))


def when_it_is(date: ClassDate) -> str:
    """`Live class, 18:30, Oslo time`."""
    when = f"{date.starts:%H:%M}, {city(date.zone)} time"
    return fill("<b>{title}</b>, {when}", title=date.title, when=when)


def sign_ups(one: ClassSignUps) -> str:
    head = when_it_is(one.date)
    if not one.names:
        return f"{head}\nNobody has signed up yet."
    told = head + fill("\nSigned up ({count}): {names}", count=len(one.names), names=listed(one.names))
    return told + (fill("\nNot so far: {names}", names=listed(one.others)) if one.others else "")


def heading(one: SessionDigest, untitled: str) -> str:
    return fill(
        "<b>{title}</b>{mark}",
        title=one.title or untitled,
        mark=", before you changed it" if one.changed else ", withdrawn" if one.withdrawn else "",
    )


def seen_and_told(one: SessionDigest) -> str:
    lines = [heading(one, "The session")]
    told = [person.name for person in one.trained]
    lines.append(fill("Told a score: {names}", names=listed(told)) if told else "No scores yet.")
    if one.opened:
        lines.append(fill("Looked at their version: {names}", names=listed(one.opened)))
    if one.unseen:
        lines.append(fill("Haven't opened it yet: {names}.", names=listed(one.unseen)))
    return "\n".join(lines)


def session(one: SessionDigest) -> str:
    lines = [heading(one, "Today's session")]
    if one.trained:
        all_scaled = len(one.trained) > 1 and all(person.scaled for person in one.trained)
        lines.append(f"Trained: {len(one.trained)}{', all scaled' if all_scaled else ''}")
        lines.append(bullets([trained(person, plain=all_scaled) for person in one.trained]))
    else:
        lines.append("No scores yet. Some tell theirs the day after.")
    if one.opened:
        lines.append(fill("Looked at their version, not reported yet: {names}.", names=listed(one.opened)))
    if one.unseen:
        quiet = "Haven't opened it: {names}. That may be rest, or just a quiet day."
        lines.append(fill(quiet, names=listed(one.unseen)))
    return "\n".join(lines + pains(one))


def trained(person: Trained, *, plain: bool) -> str:
    text = fill("{name}: {scores}", name=person.name, scores="; ".join(person.scores))
    return f"{text}, scaled" if person.scaled and not plain else text


def pains(one: SessionDigest) -> list[str]:
    """By name only for those who share such notes; the others are a count."""
    shared = [
        escape(f"{name} mentioned pain: {where}." if where else f"{name} mentioned pain.")
        for name, where in one.pains
    ]
    others = one.pain_count - len(one.pains)
    if others:
        kept = (
            "One person mentioned pain to me; I keep"
            if others == 1
            else f"{others} people mentioned pain to me; I keep"
        )
        shared.append(f"{kept} the details to myself unless they share such notes. Ask around kindly.")
    return shared


def class_(one: ClassDigest) -> str:
    lines = [when_it_is(one.date)]
    for label, names in (
        ("There", one.there),
        ("Couldn't make it", one.missing),
        ("Haven't said", one.untold),
    ):
        if names:
            lines.append(fill("{label}: {names}", label=label, names=listed(names)))
    if not (one.there or one.missing or one.untold):
        lines.append("Nobody had signed up.")
    return "\n".join(lines)
