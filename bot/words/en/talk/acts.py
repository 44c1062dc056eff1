"""What can be told, asked or wished, in a few words each: for a question between two, and for the command line."""

from collections.abc import Mapping, Sequence
from typing import Any

ACTS: Mapping[str, str] = {
    "has": "what you have to train with",
    "has_nothing": "that you have nothing to train with",
    "got": "something new you have",
    "lost": "something you don't have any more",
    "shares": "something you share",
    "spares": "something you want to spare",
    "well_again": "that it's fine again",
    "sign": "a stop sign",
    "condition": "something about your health",
    "weighs": "your weight",
    "can": "what you can do",
    "scored": "a score",
    "corrects": "a correction of a score",
    "effort": "how hard it was",
    "hurt": "that something hurts",
    "nothing_hurt": "that nothing hurts",
    "sore": "sore muscles",
    "has_minutes": "that you're short of time",
    "sick": "that you're sick",
    "well": "that you're well again",
    "elsewhere": "that you're somewhere else",
    "home_again": "that you're home again",
    "back_after": "that you're back after a break",
    "wants_easy": "that you'd like it easier",
    "too_hard": "that it's too hard",
    "too_easy": "that it's too easy",
    "did_as_written": "that you did it as written",
    "did_scaled": "that you scaled it",
    "agrees": "yes",
    "declines": "no",
    "skips": "that you skip it",
    "my_version": "your session of today",
    "how_long": "how long it takes",
    "how_to_pace": "how to pace it",
    "how_to": "how something is done",
    "how_heavy": "how heavy to go",
    "swap": "something else instead",
    "my_history": "what you did before",
    "my_progress": "how you're getting on",
    "board": "the board",
    "when_is_class": "when class is",
    "class_link": "the link to class",
    "why": "why you have what you have",
    "my_data": "what is known of you",
    "help": "what I can do",
    "joins_class": "that you're in for class",
    "leaves_class": "that you can't make class",
    "remind": "a reminder",
    "no_reminders": "no reminders",
    "quiet": "quiet hours",
    "zone": "your time zone",
    "units": "kilos or pounds",
    "to_coach": "a word for your coach",
    "forget_me": "to be forgotten",
    "export_me": "a file of your data",
    "session": "a session",
    "edit": "a change of the session",
    "post": "to post it",
    "withdraw": "to take it back",
    "class": "a class",
    "class_change": "a class that moves",
    "class_off": "a class that's off",
    "order": "something for one athlete",
    "note_fault": "how somebody moves",
    "easy_week": "an easy week",
    "announce": "a word to everybody",
    "teach": "how something is done, for everybody",
    "event": "an event",
    "who_reported": "who has reported",
    "how_is": "how somebody is doing",
    "who_needs_me": "who needs you",
    "what_if": "what a change would do",
    "roster": "who is in the group",
    "thanks": "thanks",
    "greeting": "hello",
    "small_talk": "nothing in particular",
}


def ask_between(acts: Sequence[str]) -> str | None:
    """One short question that settles which of two it is; None where nothing is near."""
    if not acts:
        return None
    return f"Do you mean {' or '.join(ACTS[act] for act in acts)}?"


def in_words(act: Mapping[str, Any]) -> str:
    """One act as a line: what it is, then what was told of it."""
    told = {name: value for name, value in act.items() if name not in {"act", "text"}}
    fields = ", ".join(f"{name} {value}" for name, value in told.items())
    return f"{ACTS[act['act']]}: {fields}" if fields else ACTS[act["act"]]
