"""A score of one part: read in its way, with what is said beside it, and doubted where it must be."""

import re
from collections import Counter
from collections.abc import Callable
from typing import Any, Final, NamedTuple

from core.measures import AmountUnit, MassUnit
from core.notation.scores import asking
from core.notation.scores.accounted import accounts_for, left_over
from core.notation.scores.asides import without_asides
from core.notation.scores.choosing.candidates import Heard, Reading
from core.notation.scores.choosing.checking import is_alike, opinion
from core.notation.scores.done import read_done
from core.notation.scores.each import read_counts
from core.notation.scores.lighter import OF_LOADS, is_lighter
from core.notation.scores.lines_told import first_named
from core.notation.scores.loads import heaviest, read_load
from core.notation.scores.minutes import read_minutes
from core.notation.scores.numbers import Number
from core.notation.scores.other_names import names_another
from core.notation.scores.plausible import implausible
from core.notation.scores.remarks import Remarks, note, take_remarks
from core.notation.scores.round_counts import beyond_round
from core.notation.scores.rounds import read_rounds
from core.notation.scores.said import Told, all_told, told
from core.notation.scores.sides import read_sides
from core.notation.scores.stretches import stretches
from core.notation.scores.timed_each import read_holds, read_splits
from core.notation.scores.times import made_by_others, read_time
from core.notation.scores.wording import says
from core.notation.talk.chat import NOT_COUNTED, NOT_FINISHED
from core.notation.text import Strip
from core.scores.values import SETTLED_BY_YES, Doubt, ReadScore, Score
from core.scores.ways import TELLINGS, Way, way_of
from core.sessions.counting import is_in_kcal
from core.sessions.values import Block

Reader = Callable[[Told, Block, MassUnit], ReadScore | None]
READERS: Final[dict[Way, Reader]] = {
    Way.ROUNDS: read_rounds,
    Way.TIME: read_time,
    Way.HOLD: read_holds,
    Way.HOLDS: read_holds,
    Way.REPS: read_counts,
    Way.SETS_OF_REPS: read_counts,
    Way.CALORIES: read_counts,
    Way.DISTANCE: read_counts,
    Way.LOAD: read_load,
    Way.SPLITS: read_splits,
    Way.COUNTS: read_counts,
    Way.MINUTES: read_minutes,
    Way.DONE: read_done,
}
_STOPPED_EARLY: Final = re.compile(r"\b(?:had to|i) (?:stop|quit)(?:ped)?\b|\bgave up\b")
_FRAMES: Final = says("frames")
_BELOW_ZERO: Final = re.compile(r"^\s*-[0-9]|(?<=[\s:])-[0-9]")
_ASKS: Final = says("asks")
# These say that the number isn't all of it.
_DOUBTFUL: Final = says("doubtful")
# `2 didn't count` is no word of somebody who didn't count.
_NOT_COUNTED: Final = re.compile(rf"(?<![0-9] )(?<!ones )(?<!them )(?:{NOT_COUNTED.pattern})")


def read_in_block(words: str, block: Block, unit: MassUnit) -> ReadScore:
    """What the rules read, where the choice that is learned agrees; what that is sure of where they read nothing."""
    lines, words = words, " ".join(words.split())
    if _BELOW_ZERO.search(words):
        return asking.not_positive()
    if _ASKS.search(words):
        return asking.unreadable(block)
    said = told(words)
    strip = Strip(said.words)
    remarks = take_remarks(strip)
    beside = _Beside(said, strip.text, remarks, block, unit)
    read = _by_rules(lines, beside)
    if way_of(block) is Way.DONE or not (read.sure or read.doubt in _MAY_BE_A_STORY):
        return read
    return _checked(read, Heard(all_told(words), block, unit), beside)


class _Beside(NamedTuple):
    """What is told beside a score: all that was `said`, `left` of it what is no remark, and for what it is read."""

    said: Told
    left: str
    remarks: Remarks
    block: Block
    unit: MassUnit


def _checked(read: ReadScore, heard: Heard, beside: _Beside) -> ReadScore:
    second = opinion(read.score, heard, read.between)
    if read.sure:
        if second.agrees or second.likely:
            return read if second.agrees else _asked_between(read, second.likely)
        return _with_pain(asking.unreadable(beside.block), beside.remarks, way_of(beside.block))
    if second.sure is not None:
        score = _with_all(second.sure.score, beside)
        return _slip(second.sure, heard) or _judged(ReadScore(score=score, sure=True), beside.said, beside)
    return _asked_between(read, second.likely) if read.doubt is Doubt.UNREADABLE and second.likely else read


def _asked_between(read: ReadScore, likely: tuple[Reading, ...]) -> ReadScore:
    """Which of the two likeliest was meant, the one that the rules read first."""
    own = () if read.score is None else (read.score,)
    others = [one.score for one in likely if not any(is_alike(one.score, score) for score in own)]
    scores = (*own, *others)
    return asking.which_number(scores[:2]) if len(scores) > 1 else asking.meant(scores[0])


def _slip(reading: Reading, heard: Heard) -> ReadScore | None:
    """The question about what was meant so, and can't be: `14:60`, or more than a round has."""
    clocks = (one for at, _ in reading.uses if (one := heard.numbers[at]).kind == "clock")
    if slip := next((one for one in clocks if one.second), None):
        return asking.unsure(Doubt.IMPOSSIBLE, f"{slip.text.strip()} looks like a slip. What was your time?")
    return beyond_round(reading.score, heard.block) if way_of(heard.block) is Way.ROUNDS else None


def _by_rules(lines: str, beside: _Beside) -> ReadScore:
    """What the whole message tells; where that isn't sure, what its sentences tell that are, if all tell one."""
    said, block = beside.said, beside.block
    whole = _read(said, beside)
    if whole.sure or whole.doubt not in _MAY_BE_A_STORY:
        return whole
    tried = [(own, _read(own, beside)) for own in map(told, stretches(lines))]
    told_so = [(own, read) for own, read in tried if read.sure and read.score is not None]
    if len({read.score.value for _, read in told_so if read.score}) != 1:
        return whole
    own, read = told_so[0]
    assert read.score is not None
    is_all = not _told_beside(own, said, read.score, block) and not _is_doubted(said, beside.remarks)
    return read if is_all else asking.meant(read.score)


# Beside a score that is plain, the rest of a message may tell of anything.
_MAY_BE_A_STORY: Final = frozenset(
    {Doubt.UNREADABLE, Doubt.MEANT, Doubt.WHICH_NUMBER, Doubt.HOW_FAR, Doubt.UNCOUNTED}
)


# Numbers of these kinds outside the sentence that tells a score may say that it was another.
_OF_SCORES: Final = frozenset(
    {
        "bare",
        "clock",
        "span",
        "rounds",
        "reps",
        "times",
        "cal",
        "metres",
        "load",
        "hands",
        "left",
        "of",
        "some",
    }
)


def _told_beside(own: Told, said: Told, score: Score, block: Block) -> bool:
    """Whether the rest of the message has numbers that may be of a score, too."""
    inside = Counter(one.text for one in own.numbers)
    return any(
        one.kind in _OF_SCORES and not inside[one.text] and not accounts_for(one, score, block)
        for one in said.counting
    )


def _read(own: Told, beside: _Beside) -> ReadScore:
    """The score that `own` tells, a stretch of all that was said."""
    block, way = beside.block, way_of(beside.block)
    own = without_asides(own, block)
    read = _numbers_read(own, block, beside.unit) or _without_number(own.words, block)
    if read.score is None:
        return _with_pain(read, beside.remarks, way)
    return _judged(read.model_copy(update={"score": _with_all(read.score, beside)}), own, beside)


def _numbers_read(own: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    return read_sides(own, block) or READERS[way_of(block)](own, block, unit)


def _with_all(score: Score, beside: _Beside) -> Score:
    """A score with what is told beside it."""
    said, block, more = beside.said, beside.block, dict[str, Any]()
    if score.unit == AmountUnit.REPS and is_in_kcal(block):
        more["unit"] = AmountUnit.KCAL
    if way_of(block) not in OF_LOADS and (load := heaviest(said, beside.unit)):
        more["load_kg"] = load
    score = _with_remarks(score.model_copy(update=more), beside.remarks, Strip(beside.left), said, block)
    lighter = score.scaled or is_lighter(said, score, block, beside.unit)
    return score.model_copy(update={"scaled": lighter, "claimed": score.claimed and not lighter})


def _without_number(words: str, block: Block) -> ReadScore:
    """The question to somebody who told no number: kinder where they say why."""
    if way_of(block) is Way.DONE:
        return asking.unreadable(block)
    if NOT_COUNTED.search(words):
        return asking.uncounted(block)
    early = NOT_FINISHED.search(words) or _STOPPED_EARLY.search(words)
    return asking.how_many_when_stopped(block) if early else asking.unreadable(block)


def _with_pain(read: ReadScore, remarks: Remarks, way: Way) -> ReadScore:
    """Pain is kept even where no score was understood, and nothing else of one that no yes can confirm."""
    if remarks.pain is None:
        return read.model_copy(update={"score": None})
    return read.model_copy(update={"score": Score(value=None, unit=TELLINGS[way].unit, pain=remarks.pain)})


def _with_remarks(score: Score, remarks: Remarks, strip: Strip, said: Told, block: Block) -> Score:
    _take_numbers(strip, said, block)
    left = _FRAMES.sub(" ", strip.text.replace(Strip.MARK, " "))
    told = {"scaled": score.scaled or remarks.scaled, "claimed": remarks.as_written}
    return score.model_copy(update={**told, "pain": remarks.pain, "note": note(left)})


_JOINT: Final = re.compile(r"(?:\W|\b(?:and|plus|n|with|then|x|for|at|of|the|in|into)\b)*")


def _take_numbers(strip: Strip, said: Told, block: Block) -> None:
    """The numbers, what joins them, and what of the session they count are no note."""
    end = 0
    for one in said.numbers:
        if one.kind in {"beside", "some"}:
            continue
        start = end if end and _JOINT.fullmatch(said.words[end : one.start]) else one.start
        named = first_named(said.behind(one), block)
        skipped = named and _JOINT.fullmatch(said.behind(one)[: named.start])
        end = one.end + (named.end if named and skipped else 0)
        strip.blank(start, end)


# Beside these many a number is told of something else; elsewhere one that is left over is a doubt.
_MUCH_BESIDE: Final = frozenset({Way.TIME, Way.LOAD, Way.DONE})
# What has no business beside a score told so: something else was done too, or it is of another part.
_FOREIGN: Final[dict[Way, frozenset[str]]] = {
    Way.LOAD: frozenset({"clock", "cal", "metres", "rounds"}),
    Way.ROUNDS: frozenset({"clock", "of", "times"}),
    Way.TIME: frozenset({"times"}),
    Way.HOLD: frozenset({"reps", "rounds", "cal", "metres"}),
    Way.HOLDS: frozenset({"reps", "cal", "metres"}),
    Way.REPS: frozenset({"clock", "rounds", "cal"}),
    Way.SETS_OF_REPS: frozenset({"clock", "cal", "metres"}),
    Way.CALORIES: frozenset({"clock", "rounds", "reps"}),
    Way.DISTANCE: frozenset({"clock", "rounds", "reps"}),
    Way.SPLITS: frozenset({"reps", "cal"}),
    Way.COUNTS: frozenset({"clock"}),
    Way.MINUTES: frozenset({"cal"}),
}


def _is_foreign(said: Told, score: Score, block: Block) -> bool:
    way = way_of(block)
    own = {str(line.unit) for line in block.every_line}
    foreign = (
        _FOREIGN.get(way, frozenset())
        - ({"cal"} if "kcal" in own else set())
        - ({"metres"} if "m" in own else set())
    )
    if way is Way.LOAD and block.rounds:
        foreign -= {"rounds"}
    if block.minutes and all(one.value <= 60 * block.minutes for one in said.of("clock")):
        foreign -= {"clock"}
    if way is Way.TIME and score.capped:
        foreign -= {"times"}
    return bool(said.of(*foreign))


def _is_too_much_left(said: Told, score: Score, block: Block) -> bool:
    """A number that nothing accounts for; beside a time or a weight, two, or one of which nothing is said."""
    way = way_of(block)
    left = () if made_by_others(said) else left_over(said, score, block)
    if way not in _MUCH_BESIDE:
        return bool(left)
    return len(left) > 1 or (way not in OF_LOADS and any(_is_listed(one, said) for one in left))


def _is_full_of_numbers(said: Told, score: Score, block: Block) -> bool:
    """Whether so many numbers of anything stand in it that the score may well be another of them."""
    return sum(not accounts_for(one, score, block) for one in said.counting) >= _MANY


# Of messages with so many, one in four was read wrong where its shapes were not known (counted on the building half).
_MANY: Final = 3


_MARK_BEFORE: Final = re.compile(
    r"(?:^|[,;/|&]|\band)\s*(?:(?:i|only|just|did|got|managed|made|done|was)\s+)*$"
)
_MARK_BEHIND: Final = re.compile(r"^\s*(?:$|[,;/|&]|and\b)")


def _is_listed(one: Number, said: Told) -> bool:
    """`45 / 8:05`: a number of which nothing is said may be the score of another part."""
    before, behind = said.words[: one.start], said.words[one.end :]
    return one.kind == "bare" and bool(_MARK_BEFORE.search(before) and _MARK_BEHIND.match(behind))


def _around_loads(said: Told) -> str:
    """The sentences that tell a load: of what else was done that day nothing is asked."""
    loads = said.of("load", "times", "hands", "bare", "reps")
    pieces = re.split(r"[.;!](?=\s|$)", said.words)
    starts = [sum(len(piece) + 1 for piece in pieces[:at]) for at in range(len(pieces))]
    return " ".join(
        piece
        for piece, start in zip(pieces, starts, strict=True)
        if any(start <= one.start < start + len(piece) for one in loads)
    )


def _judged(read: ReadScore, said: Told, beside: _Beside) -> ReadScore:
    assert read.score is not None
    block, remarks, way = beside.block, beside.remarks, way_of(beside.block)
    if not read.sure:
        return read if read.doubt in SETTLED_BY_YES else _with_pain(read, remarks, way)
    if doubt := implausible(read.score, block):
        return doubt if doubt.doubt in SETTLED_BY_YES else _with_pain(doubt, remarks, way)
    another = (
        _is_foreign(said, read.score, block)
        or _is_too_much_left(said, read.score, block)
        or (way is not Way.LOAD and _is_full_of_numbers(said, read.score, block))
        or (way is Way.LOAD and _is_far_from_before(said, read.score))
        or (way is Way.LOAD and names_another(_around_loads(said), block))
    )
    return asking.meant(read.score) if another or _is_doubted(said, remarks) else read


def _is_far_from_before(said: Told, score: Score) -> bool:
    """`155 today, my best was 70`: nobody lifts twice as much; pounds are told, or only one of two bells was."""
    loads = [one for one in said.numbers if one.kind in {"bare", "load"} and one.value > _A_WEIGHT]
    before = [one.value for one in loads if said.is_said(one, "before")]
    return bool(before) and float(score.load_kg or 0) > _TWICE * max(before)


# Lighter than any bar: by so much somebody got better.
_A_WEIGHT: Final = 15
_TWICE: Final = 2.0


def _is_doubted(said: Told, remarks: Remarks) -> bool:
    doubtful = any(shape.search(said.words) for shape in (_DOUBTFUL, _NOT_COUNTED))
    return remarks.about or said.is_about or doubtful
