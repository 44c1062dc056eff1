"""Words that take something back: the last thing that was taken, or a score that is named."""

import re
from collections.abc import Iterable
from typing import Final, NamedTuple

from core.notation.people import find_name
from core.notation.talk.chat import is_like_a_score
from core.notation.text import plain

_SO: Final = r"(?:me|mine|my score|true|right|correct|what i (?:did|meant|said|lifted))"
_UNDO: Final = re.compile(
    r"^(?:(?:no|oh|oops|sorry|wait|hang on|hold on|ok|okay|actually|please|pls|hm+|argh|ah|can you|could you"
    r"|can i|i want to|i'd like to|how do i|let's)\W+)*"
    r"(?:undo|revert|take (?:it|that|this|the last (?:one|thing|bit)) back|take back (?:that|the last (?:one|thing)|it)"
    r"|scratch that|ignore that|reverse that|roll (?:it|that) back"
    r"|i (?:didn't|did not) mean (?:that|it|to)|that was (?:wrong|a mistake|not right|an accident|my mistake)"
    r"|my mistake|mistake|my bad|wrong one|misclick"
    rf"|(?:no\W+)?(?:(?:that|this|it)(?:'s| is|s)? )?(?:all |completely )?(?:wrong|false|incorrect|not {_SO})"
    rf"|(?:that|this|it) (?:wasn't|isn't|was not) {_SO}"
    r"|that was not what i meant|put it back(?: (?:how|as|the way) it was)?"
    r"|(?:make it |back )?(?:as|how|like) it was(?: before)?)"
    r"(?:\W+(?:that|it|this|please|pls|again|last|the|one|thing|change|my|all|of|now|sorry|thanks|then|message))*\W*$"
)
_OFF: Final = (
    r"(?:delete|remove|erase|scrap|wipe|drop|undo|cancel|withdraw|get rid of|take (?:off|down|out|away|back)"
    r"|take\b(?=.{0,30}\b(?:off|down|out|away|back)\b)|don'?t count|do not count)"
)
_SCORE: Final = re.compile(
    rf"\b{_OFF}\b.{{0,30}}\b(?:scores?|results?|(?<!next )(?<!this )(?<!every )times?|entry|numbers?)\b"
    r"(?!.*\b(?:reminder|class)\b)"
)
_OFF_THE_BOARD: Final = re.compile(
    r"\b(?:don't|do not|dont|not|never|rather not|without|no)\b.{0,25}\b(?:on|in|to|onto) (?:the|that|this|your) "
    r"(?:board|scoreboard|leaderboard|ranking|list)\b"
    rf"|\b(?:{_OFF}|keep|leave|take)\b(?: (?:me|us|it|that|this|him|her|them|@(?:'s?)?|(?:my |his |their )?(?:last )?"
    r"(?:name|entry|scores?|results?|times?|numbers?))){0,3} (?:off|from) (?:the|that) "
    r"(?:board|scoreboard|leaderboard|ranking|list)\b"
)
_HIDE: Final = re.compile(
    r"\b(?:stop|hide|remove)\b.{0,30}\b(?:on|from) (?:the|that) (?:board|scoreboard|leaderboard)\b"
)
# `Delete Jonas 5 rounds`: by what was reached.
_TOLD_OF: Final = re.compile(r"^(?:delete|remove|erase|scrap|wipe) @(?:'?s)? (?P<score>.*[0-9].*)$")
_NO_ORDER: Final = re.compile(r"^(?:why|when|what|who|which|if|is|did|does|will|was|would)\b|\bcap\b")


# `Scrap ada's knee push-ups thing`: by what it was about.
_A_THING: Final = re.compile(
    rf"^{_OFF} (?:that |the )?@(?!.*\b(?:scores?|results?|times?)\b).{{0,40}}\b(?:thing|order|change|bit)$"
)


class ScoreGone(NamedTuple):
    """Whose score is to go; None is the speaker's. `board`: only from the board. `told`: which, by what was reached."""

    person: str | None
    board: bool
    told: str = ""


def asks_to_undo(text: str) -> bool:
    """`undo`, `take that back`, `oops that was wrong`: nothing else in it."""
    return bool(_UNDO.match(_words(text)))


def undoes_for(text: str, people: Iterable[str]) -> str | None:
    """`Take it back for Bente`, `undo that Bente thing`: for whom, where nothing else is in it."""
    found = find_name(text.replace("\u2019", "'"), people)
    rest = re.sub(r"\s*(?:\b(?:for|with|of|about|to)\s+)?@", "", found.rest) if found else ""
    return found.name if found and (asks_to_undo(rest) or _A_THING.match(_words(found.rest))) else None


def score_to_go(text: str, people: Iterable[str] = ()) -> ScoreGone | None:
    """`delete my score`, `remove jonas' result from yesterday`, `I don't want my score on the board`; never a board."""
    if "\n" in text.strip():
        return None
    found = find_name(text.replace("\u2019", "'"), people)
    words = _words(found.rest if found else text)
    if _NO_ORDER.search(words):
        return None
    told = _TOLD_OF.match(words)
    if told and is_like_a_score(told["score"]):
        return ScoreGone(found.name if found else None, board=False, told=told["score"])
    board = bool(_OFF_THE_BOARD.search(words) or _HIDE.search(words))
    if not board and not _SCORE.search(words):
        return None
    return ScoreGone(found.name if found else None, board)


def _words(text: str) -> str:
    return re.sub(r"\s+", " ", plain(text).replace("\u2019", "'").casefold()).strip(" .!?")
