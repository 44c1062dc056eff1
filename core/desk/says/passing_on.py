"""What is said about words that athletes have for their coach."""

from datetime import date

from core.desk.outcome import Said
from core.values import Value


class WordShown(Value):
    """`passed`: the coach sees it."""

    id: int
    on: date
    text: str
    passed: bool


class OfferWord(Said):
    """To the athlete: whether the coach shall read their words, and of which group where they are in several.

    `unread`: nobody here could read them.
    """

    word: int
    text: str
    unread: bool = True
    groups: tuple[tuple[int, str], ...] = ()


class WordPassed(Said):
    """To the athlete: their coach in `group` reads it as they wrote it. `unread`: as nobody here could."""

    word: int
    text: str
    group: str
    unread: bool = False


class WordForgotten(Said):
    """To the athlete: it is gone."""


class MyWords(Said):
    """To the athlete: what they said for their coach."""

    words: tuple[WordShown, ...]


class AthleteSays(Said):
    """To the coach: words that an athlete wants them to read."""

    athlete: str
    text: str
