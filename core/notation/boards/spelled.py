"""Numbers that a board spells, made digits, and bare numbers of a list: `five sets`, `half a mile`, `1 squats`."""

import re
from collections.abc import Iterator
from itertools import takewhile

from core.notation.quantities import NUMBER_WORDS
from core.notation.text import Row, replaced

_NO_COUNTS = {"a couple", "couple", "twice", "both"}
_SPELLED = {
    word: str(number) for word, number in NUMBER_WORDS.items() if word not in _NO_COUNTS and number > 1
}
_PHRASES = {
    "half a dozen": "6", "a dozen": "12", "a hundred": "100", "a score of": "20", "half a mile": "0.5 mile",
    "a mile": "1 mile", "half a minute": "30 sec", "half an hour": "30 min", "a minute and a half": "90 sec",
    "an hour": "60 min", "easy hour": "easy 60 min", "steady hour": "steady 60 min",
}  # fmt: skip
_COUNTED = r"(?:min(?:ute)?|sec(?:ond)?|hour|round|rd|set|series|rep(?:etition)?|time|met(?:re|er)|mile|km|lap|lot)s?\b"
_UNITS = "one|two|three|four|five|six|seven|eight|nine"
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_TEN = "|".join(_TENS)
# `four hundred`, `two hundred and fifty`, `fifty five`
_LARGE = re.compile(
    rf"(?<![\w\-])(?=(?:{_UNITS}|an?)[\s\-]hundred\b|(?:{_TEN})\b)(?:(?P<hundreds>{_UNITS}|an?)[\s\-]hundred\b(?:\s(?:and\s)?(?=(?:{_TEN})\b))?)?"
    rf"(?:(?P<tens>{_TEN})\b(?:[\s\-](?P<ones>{_UNITS})\b(?!\s(?:{_COUNTED})))?)?(?![\w\-])",
    re.IGNORECASE,
)
_WORDS = re.compile(
    rf"(?<![\w\-])(?:(?P<phrase>{'|'.join(_PHRASES)})\b|(?P<word>{'|'.join(sorted(_SPELLED, key=len, reverse=True))})"
    rf"(?=[\s\-](?!arm|leg|hand|foot|side|way|weight|up\b|hundred|dozen)[a-z])|(?P<one>one)(?=\s{_COUNTED})"
    rf"|(?P<of>(?<=sets of\s))(?:{'|'.join(sorted(_SPELLED, key=len, reverse=True))})\b"
    rf"|(?P<nth>(?<=minute\s)|(?<=station\s)|(?<=piece\s)|(?<=block\s)|(?<=part\s)|(?<=round\s))(?:one|two|three|four|five|six)(?=\s?[:.,\-]))",
    re.IGNORECASE,
)
# `3 x 10 1-arm rows`
_ONE_SIDED = re.compile(r"(?<![\w.,/\-])1[\s\-]?(?P<side>arm|leg)(?:ed)?(?=\s[a-z])", re.IGNORECASE)
# `right arm press`; what hangs or holds by one arm has its own names
_OTHER_ARM = re.compile(
    r"\b(?P<side>left|right)[\s\-]arm(?=\s(?:(?:db|kb|dumbbell|kettlebell|push|floor|strict|overhead)\s)?"
    r"(?:press|row|snatch|swing|clean|jerk|curl))",
    re.IGNORECASE,
)
# The only name in digits; a load stands behind a name.
_HIPS = re.compile(
    r"(?<![\w/@.])(?<![a-z/@]\s)90/90s?(?:\s(?:hip\s)?switch(?:es)?\b)?(?![\w/])", re.IGNORECASE
)
# Whom it is for: `over 60s`
_DECADES = re.compile(r"\b(?P<who>over|under|the|for)(?P<gap>[\s\-])(?P<n>[4-9])0s\b", re.IGNORECASE)
_AGES = {"4": "forties", "5": "fifties", "6": "sixties", "7": "seventies", "8": "eighties", "9": "nineties"}
# Nothing is rowed.
_IN_A_ROW = re.compile(r"\bin a row\b(?!er)", re.IGNORECASE)
# `5 sets of as many as you can`
_MOST = re.compile(
    r"(?:as many (?!rounds|reps|repetitions|sets|times|laps)"
    r"(?P<many>[a-z][a-z\- ]{2,24}?) as (?:possible|you can(?: (?:do|get|manage))?)"
    r"|(?:see )?how (?:many|far)(?! rounds| reps) (?:can you (?P<verb>row|run|ride|ski|walk)"
    r"|(?P<what>[a-z][a-z\- ]{2,24}?) (?:you can|can you)(?: (?:do|get|manage))?)\b[?]?)"
    r"|how long (?:can you|you can) (?:hold )?(?:an? |the |your )?(?P<held>[a-z][a-z\- ]{2,24}?)\b[?]"
    r"|(?:(?<=sets of )|(?<=[0-9] x ))as many (?:reps |repetitions )?as (?:you can|possible)",
    re.IGNORECASE,
)
# `5 x (3 pull-ups + 6 push-ups)`
_ROUNDS_OF = re.compile(
    r"(?<![\w.])(?P<n>[1-9][0-9]?)\s?x\s?\((?P<what>[^()]*[0-9][^()]*[+,&/][^()]*[^\W\d_]{3}[^()]*)\)",
    re.IGNORECASE,
)
_LIST = re.compile(
    r"^\s*(?P<n>[1-9])(?P<gap>\s)(?=[^\W\d_])(?!(?:min(?:ute)?s?|sec(?:ond)?s?|s|k?m|cals?|rounds?|rds|sets?|x)\b)"
)
_LETTERS = re.compile(r"[^\W\d_]+")
_NUMERALS = ("I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X")
_ROMAN = re.compile(r"^\s*(I{1,3}|IV|VI{0,3}|IX|X)(?:\s?[.:)]\s|\s)\s*")
_LETTER = re.compile(
    r"^\s*(?!A (?:few|minute|couple|bit|little|short|quick|good|long)\b)"
    r"([A-H])(?:[1-9]?[.):\-]|[1-9]\s|(?P<gap>\s{1,3})(?=[^\W_]))"
)
_FEWEST_OF_A_LIST = 3


def in_digits(row: Row) -> Row:
    """The row with its spelled numbers as digits, every character at its typed column."""
    row = replaced(row, _ONE_SIDED, lambda match: f"single-{match['side']}")
    row = replaced(row, _OTHER_ARM, lambda match: f"{match['side']} single-arm")
    row = replaced(row, _DECADES, lambda match: f"{match['who']}{match['gap']}{_AGES[match['n']]}")
    row = replaced(row, _HIPS, lambda _: "hip switch")
    row = replaced(row, _IN_A_ROW, lambda _: "unbroken")
    told = replaced(replaced(replaced(row, _LARGE, _sum), _WORDS, _digits), _MOST, _most)
    return replaced(told, _ROUNDS_OF, lambda match: f"{match['n']} rounds: {match['what']}")


def _most(match: re.Match[str]) -> str:
    """`as many push-ups as possible` is the most of them."""
    return f"max {match['many'] or match['what'] or match['verb'] or match['held'] or ''}".strip()


def _sum(match: re.Match[str]) -> str:
    hundreds, tens, ones = ((match[name] or "").lower() for name in ("hundreds", "tens", "ones"))
    if not (hundreds or tens):
        return match[0]
    told = 100 * (NUMBER_WORDS.get(hundreds) or bool(hundreds)) + NUMBER_WORDS.get(ones, 0)
    return str(told + (10 * (_TENS.index(tens) + 2) if tens else 0))


def _digits(match: re.Match[str]) -> str:
    said = match[0].lower()
    return _PHRASES.get(said) or _SPELLED.get(said) or "1"


def with_lists(rows: tuple[Row, ...]) -> tuple[Row, ...]:
    """The rows with a bracket behind the numbers of a list that has none: `1 squats`, `2 lunges`, `3 plank`.

    So are letters: `A 6 pull-ups`, `B 8 dips`, and `C face pulls` behind `A1` and `B2`.
    """
    told = list(_lettered(_with_roman(rows)))
    at = 0
    while at < len(told):
        numbers = takewhile(lambda pair: _number(pair[1]) == pair[0], enumerate(told[at:], 1))
        counted = len(list(numbers))
        if _is_one_ladder(told[at : at + min(counted, 2)]):
            at += counted
            continue
        if counted >= _FEWEST_OF_A_LIST:
            told[at : at + counted] = map(_listed, told[at : at + counted])
        at += max(counted, 1)
    return tuple(told)


def _is_one_ladder(rows: list[Row]) -> bool:
    """Whether the numbers tell how many: `1 swing`, `2 swings` are no list."""
    told = [
        _LETTERS.findall(row.text[match.end() :].lower())[:2]
        for row in rows
        if (match := _LIST.match(row.text))
    ]
    return len(told) > 1 and len({tuple(word.rstrip("s") for word in said) for said in told}) == 1


def _lettered(rows: tuple[Row, ...]) -> Iterator[Row]:
    """The rows with a bracket behind each capital that counts on in its place."""
    last = "@"
    following = [match[1] for row in rows if (match := _LETTER.match(row.text))]
    for row in rows:
        match = _LETTER.match(row.text)
        counts_on = match is not None and match[1] in {last, chr(ord(last) + 1)}
        last = match[1] if match and counts_on else last
        bare = match is not None and counts_on and match["gap"] and len(set(following)) > 1
        yield _bracketed(row, match.start("gap")) if match and bare else row


def _with_roman(rows: tuple[Row, ...]) -> tuple[Row, ...]:
    """The rows with the roman numerals in front of them as numbers of a list, where they count on."""
    numerals = [match[1] for row in rows if (match := _ROMAN.match(row.text))]
    if numerals[:2] != list(_NUMERALS[:2]):
        return rows
    return tuple(replaced(row, _ROMAN, lambda match: f"{_NUMERALS.index(match[1]) + 1}) ") for row in rows)


def _number(row: Row) -> int | None:
    match = _LIST.match(row.text)
    return int(match["n"]) if match else None


def _listed(row: Row) -> Row:
    match = _LIST.match(row.text)
    assert match is not None
    return _bracketed(row, match.start("gap"))


def _bracketed(row: Row, at: int) -> Row:
    column = row.column(at)
    return Row(
        row.number,
        f"{row.text[:at]}){row.text[at:]}",
        (*row.columns[:at], column, *row.columns[at:]),
        row.typed,
    )
