"""An athlete's words -> Score. Nothing is guessed silently: what isn't sure comes with its one question."""

import re
from dataclasses import replace
from typing import Any

from core.measures import AmountUnit, MassUnit
from core.notation import asking
from core.notation.chat import NOT_COUNTED, NOT_FINISHED, is_like_a_score
from core.notation.other_names import names_another
from core.notation.part_labels import LAST, Part, find_part
from core.notation.plausible import implausible
from core.notation.quantities import NUMBER, NUMBER_WORDS, kilograms
from core.notation.remarks import Remarks, note, take_remarks
from core.notation.score_words import LOAD, read_number
from core.notation.text import Strip, plain
from core.scores.values import SETTLED_BY_YES, ReadScore, Score
from core.sessions.counting import is_in_kcal
from core.sessions.values import Block, Format, Session

__all__ = ["is_like_a_score", "read_score"]

LONGEST_SCORE = 500
UNITS = {
    Format.AMRAP: "rounds",
    Format.FOR_TIME: "s",
    Format.TIME_TRIAL: "s",
    Format.HOLD: "s",
    Format.SETS: "kg",
    Format.MAX_LOAD: "kg",
    Format.MAX_REPS: "reps",
    Format.INTERVALS: "reps",
    Format.QUALITY: "reps",
}
_STOPPED_EARLY = re.compile(r"\b(?:had to|i) (?:stop|quit)(?:ped)?\b|\bgave up\b")
_IN_ROUNDS = re.compile(r"^[^+]*[0-9]\s?\+\s?[0-9][^+]*$|[0-9]\s?(?:rounds?|rds?)\b")
_IN_KCAL = re.compile(r"[0-9]\s?(?:k?cals?|calories)\b")
_FRAMES = re.compile(
    r"\b(?:i )?(?:did|got|made|finished|done|completed|managed|scored|came in|took me|my (?:score|time"
    r"|result)(?: is| was)?"
    r"|score|time|result|it|w/|kb|db|today|final|all|just|in|at|with|total|k?cals?|calories)\b"
)
# What they say of how it came to the other number is none of its own.
_MISSED = re.compile(
    r"\b(?:missed|skipped|dropped|lost|forgot|miscounted|(?:short|off) by|over-?counted)\s(?:out on |by )?"
    r"(?:one|1|two|2|a|the last)(?:\s(?:of them|rounds?|reps?|rep))?(?=[\W_]*$|[,;.!()])"
    r"|\b(?:one|1|two|2) (?:too many|less|fewer|short|off)\b"
)
_TIMED = {Format.FOR_TIME, Format.TIME_TRIAL}
# In these a weight is told beside the score, never as it.
_LOAD_BESIDE = {Format.AMRAP, Format.FOR_TIME, Format.INTERVALS, Format.MAX_REPS}
_OF_LOADS = {Format.SETS, Format.MAX_LOAD}
_BELOW_ZERO = re.compile(r"^\s*-[0-9]|(?<=[\s:])-[0-9]")
_TENS = re.compile(
    r"\b(twenty|thirty|forty|fifty|sixty)[\- ](one|two|three|four|five|six|seven|eight|nine)\b"
)
_NUMBER_WORD = "|".join(word for word in NUMBER_WORDS if " " not in word)
_COUNTING = "|".join(word for word, number in NUMBER_WORDS.items() if " " not in word and number > 1)
_WORDS = re.compile(
    rf"\b({_NUMBER_WORD})\b(?=\s?(?:rounds?|rds?|reps?|and|plus|\+|min|sec|full|complete|extra|$))"
    rf"|(?<=\bminutes\s)({_NUMBER_WORD})\b|(?<=\bminutes and\s)({_NUMBER_WORD})\b|(?<=\bminute\s)({_NUMBER_WORD})\b"
    rf"|\b({_COUNTING})\b(?=\s?(?:[,;.!?)]|for\b|on\b|kg\b|kilos?\b))"
)
# What was before, what failed, and what time of day it was are no score of today.
_BEFORE = (
    r"(?:last (?:week|time|month|year)|prev(?:ious(?:ly)?)?|up from|used to be|never before(?: under)?|pb was"
    r"|old (?:pb|best))"
)
_FAILED = "(?:stapled|buried|crushed|failed|wouldn'?t|didn'?t|wasn'?t|missed|too heavy|no go|nearly)"
_OTHER_TIMES = re.compile(
    rf"\b{_BEFORE}\b[^.;,!?0-9]{{0,20}}[0-9]+(?:[.:,][0-9]+)?(?:\s?(?:kg|lbs?|reps?|rounds?))?"
    rf"|[0-9]+(?:\.[0-9]+)?(?:\s?kg)?\s{_FAILED}\b[^.;,!?0-9]*"
    r"|\b(?:failed|missed|lost)(?: at| on)? [0-9]+(?:\.[0-9]+)?(?:\s?kg)?(?: twice| once)?\b(?! reps?)"
    r"|(?<=[0-9][ ,;.])[^0-9]{0,30}\bat [0-9]{1,2}:[0-5][0-9](?= ?(?:am|pm|w|with|$))"
)
# A number that nothing was made of; with one of these units it can be no score.
_BESIDE = (
    "kgs?|kilos?|lbs?|pounds?|min(?:ute)?s?|sec(?:ond)?s?|s|hours?|h|days?|weeks?|years?|yrs?|am|pm|bpm|times"
    "|of (?:10|ten)|caps?|kcals?|cals?|watts?|k|km|m|met(?:er|re)s?|miles?|degrees?|st|nd|rd|th|x"
)
_LOOSE_NUMBER = re.compile(
    r"(?<![\w.:,+/-])(?<!rpe )(?<!effort )(?<!day )(?<!week )(?<!weeks )(?<!hr )(?<!heart rate )"
    r"[0-9]+(?:[.:,][0-9]+)?(?![0-9.:]*[0-9])"
    rf"(?!\s?(?:{_BESIDE})\b|\s?%)(?!\w)"
)
# These say that the number isn't all of it.
_DOUBTFUL = re.compile(
    r"\b(?:short of|except|apart from|not counting|minus|penalt(?:y|ies)|or maybe|my watch says|halfway"
    r"|half (?:of|a|the)|(?:and|n) (?:a bit|some|something|change)|a bit of|most of|part of"
    r"|two tries|(?:second|another) (?:try|go|attempt)"
    r"|called it|one less|one more|plus the|without the)\b"
)
_AT_LOAD = re.compile(rf"@\s?(?P<a>{NUMBER})(?P<u>)(?![0-9.:%])")
_HALF_MORE = re.compile(r"(?<=[0-9]) and a half\b")


def read_score(
    text: str, session: Session, block: int | None = None, unit: MassUnit = MassUnit.KG
) -> ReadScore:
    """Reads what an athlete says of a session; bare loads are in `unit`. `block`: index of the one meant.

    Never raises for any text; raises IndexError for a block that the session doesn't have.
    """
    words = plain(text).lower()[:LONGEST_SCORE]
    if block is None and (named := find_part(words)):
        block = block_of(named[0], session)
        words = words if block is None else named[1]
    if block is not None:
        return _in_block(words, session.blocks[block], unit).model_copy(update={"block": block})
    scored = tuple((index, each) for index, each in enumerate(session.blocks) if each.scored)
    return _in_any(words, scored, unit)


def block_of(part: Part, session: Session) -> int | None:
    """The index of the block that is called so; None where there is none."""
    scored = [index for index, block in enumerate(session.blocks) if block.scored]
    if part.number == LAST:
        return scored[-1] if scored else None
    at = part.number - 1
    if not part.of_scored and at in scored:
        return at
    return scored[at] if at < len(scored) else None


def _in_any(words: str, scored: tuple[tuple[int, Block], ...], unit: MassUnit) -> ReadScore:
    """The only scored block, or the only one that the words fit; else which one is asked."""
    if not scored:
        return asking.nothing_scored()
    reads = {index: _in_block(words, block, unit) for index, block in scored}
    loads = {index for index, block in scored if block.format in _OF_LOADS}
    fitting = [index for index, read in reads.items() if read.sure]
    if len(scored) == 1:
        index = scored[0][0]
        return reads[index].model_copy(update={"block": index})
    if len(fitting) > 1:
        fitting = [index for index, block in scored if index in fitting and is_said_of(words, block)]
    told_too = loads.difference(fitting) and LOAD.search(words)
    if len(fitting) == 1 and not told_too:
        return reads[fitting[0]].model_copy(update={"block": fitting[0]})
    return asking.which_block(scored)


def is_said_of(words: str, block: Block) -> bool:
    """Whether the words have the shape of the block's own scores: `6+3` of rounds, `80 cal` of calories."""
    if _IN_ROUNDS.search(words):
        return block.format is Format.AMRAP
    return bool(_IN_KCAL.search(words)) and is_in_kcal(block)


def _in_block(words: str, block: Block, unit: MassUnit) -> ReadScore:
    if _BELOW_ZERO.search(words):
        return asking.not_positive()
    strip = Strip(
        _in_digits(_OTHER_TIMES.sub(" ", words if block.format in _TIMED else _MISSED.sub(" ", words)))
    )
    remarks = take_remarks(strip)
    if NOT_COUNTED.search(words):
        remarks = replace(remarks, about=True)
    load = (strip.take(LOAD) or strip.take(_AT_LOAD)) if block.format in _LOAD_BESIDE else None
    read = read_number(strip, block, unit)
    read = read or _without_number(words, block)
    if read.score is None:
        return _with_pain(read, remarks, block)
    if read.sure and (other := read_number(Strip(strip.text), block, unit)) and other.score and other.sure:
        return asking.which_number((read.score, other.score))
    more: dict[str, Any] = {"load_kg": kilograms(load["a"], load["u"], unit)} if load else {}
    more |= {"unit": AmountUnit.KCAL} if read.score.unit == AmountUnit.REPS and is_in_kcal(block) else {}
    score = _with_remarks(read.score.model_copy(update=more), remarks, strip)
    score = score.model_copy(update={"scaled": score.scaled or _is_lighter(score, block)})
    if read.sure and _tells_more(strip.text, block):
        return asking.meant(score)
    return _judged(read.model_copy(update={"score": score}), block, remarks)


def _tells_more(left: str, block: Block) -> bool:
    """Whether what is left over may change the score: another number, a doubt, or another movement."""
    words = left.replace(Strip.MARK, " ")
    if block.rounds:
        words = re.sub(rf"\b{block.rounds}\s?(?:rounds?|rds?|sets?)\b", " ", words)
    another = block.format in _OF_LOADS and names_another(words, block)
    return bool(_LOOSE_NUMBER.search(words) or _DOUBTFUL.search(words) or another)


def _is_lighter(score: Score, block: Block) -> bool:
    """Whether less was lifted than is written for anybody."""
    written = [min(line.loads_kg) for line in block.lines if line.loads_kg]
    return score.load_kg is not None and bool(written) and score.load_kg < min(written)


def _in_digits(words: str) -> str:
    """Numbers in words as digits, where they count something."""
    said = _TENS.sub(lambda word: str(NUMBER_WORDS[word[1]] + NUMBER_WORDS[word[2]]), words)
    said = _WORDS.sub(lambda word: str(NUMBER_WORDS[word[0]]), said)
    return said if re.search(r"rounds?|rds?", said) else _HALF_MORE.sub(".5", said)


def _without_number(words: str, block: Block) -> ReadScore:
    """The question to somebody who told no number: kinder where they say why."""
    if block.format is Format.QUALITY:
        return asking.unreadable(block)
    if NOT_COUNTED.search(words):
        return asking.uncounted(block)
    early = NOT_FINISHED.search(words) or _STOPPED_EARLY.search(words)
    return asking.how_many_when_stopped(block) if early else asking.unreadable(block)


def _with_pain(read: ReadScore, remarks: Remarks, block: Block) -> ReadScore:
    """Pain is kept even where no score was understood, and nothing else of one that no yes can confirm."""
    if remarks.pain is None:
        return read.model_copy(update={"score": None})
    return read.model_copy(update={"score": Score(value=None, unit=UNITS[block.format], pain=remarks.pain)})


def _with_remarks(score: Score, remarks: Remarks, strip: Strip) -> Score:
    left = _FRAMES.sub(" ", strip.text.replace(Strip.MARK, " "))
    return score.model_copy(update={"scaled": remarks.scaled, "pain": remarks.pain, "note": note(left)})


def _judged(read: ReadScore, block: Block, remarks: Remarks) -> ReadScore:
    assert read.score is not None
    if not read.sure:
        return read if read.doubt in SETTLED_BY_YES else _with_pain(read, remarks, block)
    if doubt := implausible(read.score, block):
        return doubt if doubt.doubt in SETTLED_BY_YES else _with_pain(doubt, remarks, block)
    return asking.meant(read.score) if remarks.about else read
