"""What an athlete wants passed on: `tell my coach I have a metal plate in my foot`, `for the coach: back on Friday`."""

import re
from collections.abc import Iterable
from typing import Final

from core.notation.talk.chat import is_like_a_score

_COACH: Final = r"(?:my |the |our )?coach(?:es)?"
_TELL: Final = re.compile(
    rf"^\W*(?:(?:please|can you|could you|and|hey|hi|ok|also)\W+)*(?:tell|let|inform|notify) {_COACH}(?P<know> know)?"
    r"(?: please)?(?:\s*[,:\u2013-]\s*|\s+(?:that |about )?)(?P<words>\S.*)$",
    re.IGNORECASE | re.DOTALL,
)
_FOR: Final = re.compile(
    rf"^\W*(?:please\W+)?(?:(?:a |one |this )?(?:note |message |word |question |info )?(?:is )?(?:for|to) {_COACH}"
    rf"|pass (?:this|it) on to {_COACH})\s*[,:\u2013-]\s*(?P<words>\S.*)$",
    re.IGNORECASE | re.DOTALL,
)
_BEHIND: Final = re.compile(
    rf"^(?P<words>.*\w)\s*[,.;:!\u2013-]\s*(?:(?:please|can you|could you|and)\W+)*"
    rf"(?:(?:tell|inform|notify) {_COACH}|let {_COACH} know)(?: (?:that|this|so|about it|about this|please))*\W*$",
    re.IGNORECASE | re.DOTALL,
)
_MINE: Final = re.compile(
    r"^\W*(?:(?:show|see|list|what are)(?: me)? )?my notes(?: (?:for|to) (?:my |the )?coach)?\W*$"
    r"|^\W*what (?:did|have) i (?:tell|told|say|said)(?: to)? (?:my|the) coach\W*$",
    re.IGNORECASE,
)
# `Tell my coach to ...`, `let my coach see ...`: that asks for something else.
_ELSE: Final = re.compile(r"^(?:to|see|not to|if|whether|what|when|where|how|who|why)\b", re.IGNORECASE)


def read_for_coach(text: str, coaches: Iterable[str] = ()) -> str | None:
    """The words to pass on, as they were written; None where nothing is to be. A coach may be called by name."""
    text = _without_names(text, coaches)
    told = _TELL.match(text)
    if told and (_ELSE.match(told["words"]) or _lets_without_knowing(text, told)):
        return None
    match = told or _FOR.match(text) or _without_score(_BEHIND.match(text))
    return match["words"].strip() if match else None


def _without_score(behind: re.Match[str] | None) -> re.Match[str] | None:
    """A score is told to everybody: whoever adds `tell my coach` wants it taken."""
    return None if behind is None or is_like_a_score(behind["words"]) else behind


def _without_names(text: str, coaches: Iterable[str]) -> str:
    for name in coaches:
        called = rf"\b(tell|let|inform|notify) {re.escape(name)}(?!\w)"
        text = re.sub(called, r"\1 my coach", text, flags=re.IGNORECASE)
    return text


def _lets_without_knowing(text: str, told: re.Match[str]) -> bool:
    return told["know"] is None and bool(re.search(r"\blet\b", text[: told.start("words")], re.IGNORECASE))


def asks_for_own_words(text: str) -> bool:
    """`My notes`, `what did I tell my coach?`."""
    return bool(_MINE.match(text))
