"""Where one telling of a row ends and the next begins: `Bench 5 x 5. Then 3 rounds for time: ...`.

A clause is a row of its own that keeps its columns, so that a paragraph is read like a board of several rows.
"""

import re
from collections.abc import Iterator
from itertools import groupby, pairwise
from typing import NamedTuple

from core.notation.boards.headings import LACKS, day, days_in, heading, heading_behind
from core.notation.phrases.shapes import possible
from core.notation.quantities import DURATION
from core.notation.text import Row
from core.sessions.values import BlockKind

# A sentence ends before a capital or a number; behind `!` and `?` before anything.
_END = re.compile(r"(?<=[\w)%\"'])\s?(?:[!?][!?.]*|\.)[)\"']?\s+(?=(\w))")
# `max. 20 min`, `5 per side alt. 10`: no sentence ends here.
_SHORTENED = re.compile(
    r"\b(?:max|min|mins|sec|secs|approx|ca|no|nr|alt|ea|incl|excl|vs|e\.g|i\.e|w|reps?|rds?|x)$",
    re.IGNORECASE,
)
_LACKING = re.compile(rf"(?:^|(?<=[\s(.,;*\-]))(?:{LACKS})$", re.IGNORECASE)
_ROUNDS = re.compile(r"[0-9]{1,2}\s(?:rounds?|rds|sets|times|min(?:ute)?s?\samrap)\b", re.IGNORECASE)
_SETS_OF_REPS = re.compile(r"(?<![\w.])[1-9][0-9]?\s?x\s?[1-9][0-9]?(?![\w.'\"])", re.IGNORECASE)
_ROUNDS_OF_ALL = re.compile(r"[1-9][0-9]?\s(?:rounds?|rds|rft)\b[^,;:.]{0,20}:\s", re.IGNORECASE)
_IN_LIST = re.compile(r"(?<![\w.])(?P<n>[1-9])[).]\s?(?=(?:[0-9]{1,4}(?:[./][0-9]{1,3})?)?\s?[^\W\d_])")
# `odd min 12 swings, even min 10 sit-ups`: each turn is told by itself.
_TURN = re.compile(
    r"(?<=[\w,;:.)]\s)(?:(?:odd|even)\s(?:min(?:ute)?s?\b)|(?:min(?:ute)?|station)\s[1-9](?:\s?[:)=\-]|\s(?=[0-9]{1,3}\s|rest\b)))",
    re.IGNORECASE,
)
_AROUND = re.compile(r"(?P<first>buy[ -]?in)|cash[ -]?out|buy[ -]?out", re.IGNORECASE)
_FINISH = re.compile(r"finish (?:with|w)\b", re.IGNORECASE)
_DOSE = re.compile(r"[0-9]{1,2}\s?(?:x\s?[0-9]|sets?\b)", re.IGNORECASE)
_SETS = re.compile(
    r"(?<![\w.])[1-9][0-9]?\s?x\s?(?:[0-9]{3,4}\b|[0-9.]{1,4}\s?(?:s(?:ec)?|min|k?m|k)\b|[0-9]{1,3}['\"])",
    re.IGNORECASE,
)
_FAR = rf"(?:{DURATION}|[0-9.]{{1,4}}\s?k?m)"
_ONCE = re.compile(
    r"\W*(?:(?:for time|ft|rft|buy[ -]?in)\W+)?[0-9]{1,4}(?:\.[0-9])?\s?(?:k?m|k|cals?)?\b[^0-9,;:]*",
    re.IGNORECASE,
)
_SCHEME = re.compile(r"[0-9]{1,3}(?:\s?-\s?[0-9]{1,3}){2,9}\s(?!k?m\b|s\b|sec|min|kg|lb|cal)", re.IGNORECASE)
# Nobody rests for so long (an estimate).
_LONG = re.compile(r"(?<![0-9.:])(?:[5-9]|[1-9][0-9])\s?(?:min|')|[1-9]\s?km?\b", re.IGNORECASE)
# At the ends of what runners, rowers and riders do (common practice, no source).
_EASILY = r"(?:easy|gentle|slow|jog(?:ging)?|walk(?:ing)?)"
_AT_EASE = re.compile(
    rf"(?:(?:easy|gentle|slow) )?{_FAR} (?:of )?(?:very )?{_EASILY}(?: (?:run|row|jog|bike|ride|spin))?"
    rf"|(?:easy |gentle )?(?:jog|walk) {_FAR}"
)
_LIST_NUMBER = re.compile(r"^[\W_]*\w{1,2}$")
_JOINT = re.compile(
    r"[,;]?\s(?:and\s)?then,?\s|[,;]?\sand\s(?=finish\sw(?:ith)?\b)|\s\+\s|[,;]\s", re.IGNORECASE
)
_WORK = re.compile(r"[^\W\d_]{2}")
_DIGIT = re.compile("[0-9]")
_OPENERS = frozenset({"format", "rounds", "scheme", "every_s"})


class Clause(NamedTuple):
    """`is_first` of those between two empty rows, `behind` those that come after it; `is_alone`: all of its row."""

    row: Row
    is_first: bool
    is_alone: bool
    behind: tuple[Row, ...]


def clauses(every: tuple[Row, ...]) -> Iterator[Clause]:
    """The clauses of rows, in order."""
    for is_empty, paragraph in groupby(every, key=lambda row: not row.text.strip()):
        if is_empty:
            continue
        parts = [tuple(_of_row(row)) for row in paragraph]
        told = tuple(part for row in parts for part in row)
        alone = [len(row) == 1 for row in parts for _ in row]
        for at, part in enumerate(told):
            yield Clause(part, at == 0, alone[at], told[at + 1 :])


def _of_row(row: Row) -> Iterator[Row]:
    for start, end in pairwise(sorted({*_marks(row.text)})):
        yield Row(row.number, " " * start + row.text[start:end], row.columns[:end], row.typed)


def _marks(text: str) -> list[int]:
    sentences = [
        0,
        *_listed(text),
        *days_in(text.lower()),
        *(match.start() for match in _TURN.finditer(text)),
        *(match.end() for match in _END.finditer(text) if _ends(match, text)),
        len(text),
    ]
    sentences.sort()
    marks = [0]
    for start, end in pairwise(sentences):
        marks += [
            joint.start() for joint in _JOINT.finditer(text, start, end) if _parts(text, marks[-1], joint)
        ]
        marks.append(end)
    return marks


def _listed(text: str) -> list[int]:
    """Where the numbers of a list stand in one row: `1) 10 burpees 2) 12 swings`."""
    found = list(_IN_LIST.finditer(text))
    counted = [int(match["n"]) for match in found]
    return (
        [match.start() for match in found]
        if len(found) > 1 and counted == [*range(1, len(found) + 1)]
        else []
    )


def _ends(match: re.Match[str], text: str) -> bool:
    before, after = text[: match.start()], match[1]
    if _LIST_NUMBER.match(before) or _is_open(before):
        return False
    if "." not in match[0]:
        return not _LACKING.search(text[: match.start() + 1].rstrip())
    heads = after.islower() and _heads(text[match.end() :], BlockKind.WARM_UP, BlockKind.COOL_DOWN)
    begins = after.isdigit() and (not _SHORTENED.search(before) or _ROUNDS.match(text, match.end()))
    return after.isupper() or heads or bool(begins)


def _is_open(text: str) -> bool:
    """Whether a bracket is open: what stands in it belongs together."""
    return any(text.count(one) > text.count(other) for one, other in ("()", "[]"))


def _parts(text: str, start: int, joint: re.Match[str]) -> bool:
    """Whether both sides of a joint say how something is done: `tabata squats, tabata sit-ups`."""
    around = _AROUND.match(text, joint.end())
    ends = (text[start : joint.start()], text[joint.end() :])
    if _is_easy_beside_sets(*ends) or _are_sets_before_rounds(*ends):
        return True
    if _has_heading_behind(joint[0], *ends):
        return True
    if _FINISH.match(text, joint.end()) or _calms_down(text, start, joint):
        return True
    if (around and not around["first"]) or ("then" in joint[0].lower() and _DOSE.match(text, joint.end())):
        return True
    then = "then" in joint[0].lower() or _is_scheme_behind_a_run(text, start, joint)
    if then and _WORK.search(text, start, joint.start()) and _opener(text, joint.end()) is not None:
        return True
    before = _opener(text, start)
    told = before is not None and _WORK.search(text, before, joint.start())
    return bool(told) and _opener(text, joint.end()) is not None


def _is_scheme_behind_a_run(text: str, start: int, joint: re.Match[str]) -> bool:
    """`1k run, 50-40-30 sit-ups / swings, 1k run`: what is done once stands in front of what goes down."""
    return (
        _SCHEME.match(text, joint.end()) is not None
        and _ONCE.fullmatch(text, start, joint.start()) is not None
    )


def _has_heading_behind(joint: str, before: str, after: str) -> bool:
    """`2k wu, 5 x 1k, 1k cd`: a heading behind what it is of parts it from what stands around it."""
    if "then" not in joint.lower():
        after = after.split(",", maxsplit=1)[0]
    return any(_DIGIT.search(one) and heading_behind(one.lower()) for one in (before, after))


def _is_easy_beside_sets(before: str, after: str) -> bool:
    """`10 min easy, 6 x 1 min fast`, `8 x 400 m, jog 10 min`: what is done at ease around sets is no part of them.

    Behind them so little is their rest: `6 x 4 min row, 2 min easy`.
    """
    if _SETS.match(after.lstrip()):
        front = before.rsplit(":", maxsplit=1)[-1].strip().lower()
        return _AT_EASE.fullmatch(front) is not None or (
            _heads(front, *BlockKind) and not _DIGIT.search(front)
        )
    ends = _AT_EASE.fullmatch(after.strip(" .").lower())
    return ends is not None and _LONG.search(after) is not None and _SETS.search(before) is not None


def _are_sets_before_rounds(before: str, after: str) -> bool:
    """`squat 5x5, 3 rounds: 10 dips, 10 rows`: what has sets of its own stands in front of the rounds."""
    return _SETS_OF_REPS.search(before) is not None and _ROUNDS_OF_ALL.match(after.lstrip()) is not None


def _calms_down(text: str, start: int, joint: re.Match[str]) -> bool:
    """Whether the cool-down begins behind work in the same row: `5 x 3 min row, w/d 1 km`."""
    return (
        _heads(text[joint.end() :], BlockKind.COOL_DOWN)
        and _DIGIT.search(text, start, joint.start()) is not None
    )


def _heads(text: str, *kinds: BlockKind) -> bool:
    """Whether a heading of one of these kinds stands in front."""
    found = heading(text.lower())
    return found is not None and found[0] in kinds


def _opener(text: str, start: int) -> int | None:
    """Where words for a format end that begin here."""
    lower = text.lower()
    while start < len(lower) and not lower[start].isalnum():
        start += 1
    start += day(lower[start:])
    if around := _AROUND.match(text, start):
        return around.end()
    rest = lower[start:]
    for phrase in possible(rest):
        if (match := phrase.pattern.match(rest)) and phrase.facts(match).keys() & _OPENERS:
            return start + match.end()
    return None
