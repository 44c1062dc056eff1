"""Numbers that a board spells, made digits, and bare numbers of a list: `five sets`, `half a mile`, `1 squats`."""

import re
from collections.abc import Callable
from itertools import takewhile

from core.notation.quantities import NUMBER_WORDS
from core.notation.text import Row

_NO_COUNTS = {"a couple", "couple", "twice", "both"}
_SPELLED = {
    word: str(number) for word, number in NUMBER_WORDS.items() if word not in _NO_COUNTS and number > 1
}
_PHRASES = {
    "half a dozen": "6", "a dozen": "12", "a hundred": "100", "a score of": "20", "half a mile": "0.5 mile",
    "a mile": "1 mile", "half a minute": "30 sec", "half an hour": "30 min", "a minute and a half": "90 sec",
    "an hour": "60 min",
}  # fmt: skip
_COUNTED = r"(?:min(?:ute)?|sec(?:ond)?|hour|round|rd|set|series|rep(?:etition)?|time|met(?:re|er)|mile|km|lap|lot)s?\b"
_WORDS = re.compile(
    rf"(?<![\w\-])(?:(?P<phrase>{'|'.join(_PHRASES)})\b|(?P<word>{'|'.join(sorted(_SPELLED, key=len, reverse=True))})"
    rf"(?=[\s\-](?!arm|leg|hand|foot|side|way|up\b|hundred|dozen)[a-z])|(?P<one>one)(?=\s{_COUNTED}))",
    re.IGNORECASE,
)
# `5 sets of as many as you can`
_MOST = re.compile(
    r"(?:(?<=sets of )|(?<=[0-9] x ))as many (?:reps |repetitions )?as (?:you can|possible)",
    re.IGNORECASE,
)
_LIST = re.compile(r"^\s*(?P<n>[1-9])(?P<gap>\s)(?=[^\W\d_])")
_FEWEST_OF_A_LIST = 3


def in_digits(row: Row) -> Row:
    """The row with its spelled numbers as digits, every character at its typed column."""
    return _replaced(_replaced(row, _WORDS, _digits), _MOST, lambda _: "max")


def _replaced(row: Row, pattern: re.Pattern[str], said: Callable[[re.Match[str]], str]) -> Row:
    text, columns, done = "", row.columns[:0], 0
    for match in pattern.finditer(row.text):
        new = said(match)
        text += row.text[done : match.start()] + new
        columns += row.columns[done : match.start()] + (row.column(match.start()),) * len(new)
        done = match.end()
    if not done:
        return row
    return Row(row.number, text + row.text[done:], columns + row.columns[done:], row.typed)


def _digits(match: re.Match[str]) -> str:
    said = match[0].lower()
    return _PHRASES.get(said) or _SPELLED.get(said) or "1"


def with_lists(rows: tuple[Row, ...]) -> tuple[Row, ...]:
    """The rows with a bracket behind the numbers of a list that has none: `1 squats`, `2 lunges`, `3 plank`."""
    told = list(rows)
    at = 0
    while at < len(told):
        numbers = takewhile(lambda pair: _number(pair[1]) == pair[0], enumerate(told[at:], 1))
        counted = len(list(numbers))
        if counted >= _FEWEST_OF_A_LIST:
            told[at : at + counted] = map(_listed, told[at : at + counted])
        at += max(counted, 1)
    return tuple(told)


def _number(row: Row) -> int | None:
    match = _LIST.match(row.text)
    return int(match["n"]) if match else None


def _listed(row: Row) -> Row:
    match = _LIST.match(row.text)
    assert match is not None
    at = match.start("gap")
    column = row.column(at)
    return Row(
        row.number,
        f"{row.text[:at]}){row.text[at:]}",
        (*row.columns[:at], column, *row.columns[at:]),
        row.typed,
    )
