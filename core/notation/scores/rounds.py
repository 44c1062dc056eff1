"""Rounds and repetitions of an amrap: `7+12`, `212 reps`, `5 rounds plus the thrusters`, `one short of 8 rounds`."""

import itertools
import re
from collections.abc import Sequence
from typing import Final

from core.measures import AmountUnit, MassUnit
from core.notation.scores import asking
from core.notation.scores.lines_told import (
    before_line,
    count_of,
    first_named,
    line_called,
    named_lines,
    total,
)
from core.notation.scores.numbers import Number
from core.notation.scores.round_counts import beyond_round, rounds_score
from core.notation.scores.said import Told
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_round, reps_of
from core.sessions.values import Block

_JOINT: Final = re.compile(
    r"[\s,]*(?:(?:\+|plus|and|&|n|with|then|w/)[\s,]*)*(?:an? )?(?:extra |another |into |the )*[\s,]*"
)
_PLUS: Final = re.compile(r"[\s,]*(?:\+|plus)\s?")
_PAIR: Final = re.compile(r"\s?[/,-]\s?|\s|\s?(?:and|&|n)\s?")
_MINUS: Final = re.compile(r"\b(?:minus|without|except|not|no|all but|apart from|less)\b")
_SOME: Final = re.compile(r"\b(?:some|half (?:of )?(?:a|the)|most of|part of|a few|a bit of|a couple)\b")
# `plus the wallies`: something of the next round, in words that nobody knows.
_UNKNOWN: Final = re.compile(r"\W*(?:plus|\+)\W*(?:the|all|some|most|a|half)?\s?[a-z]")
_ADDED: Final = re.compile(r"\+|\b(?:plus|and|then|n|into)\b")
_FILLER: Final = re.compile(
    r"^\W*(?:(?:plus|and|then|n|with|\+|the|a|into|all|my|of|did|done|had|got|through|i|just|also)\W+)*$"
)
# A person keeps up some forty light repetitions a minute at most (common practice, no source).
_REPS_A_MINUTE: Final = 40
_LONGEST_MIN: Final = 60
_OTHERS: Final = ("clock", "span", "metres", "cal", "times", "load", "of")


def read_rounds(said: Told, block: Block, _: MassUnit) -> ReadScore | None:
    for reader in (_short, _in_rounds, _in_turn, _plus, _in_reps, _listed, _alone):
        if read := reader(said, block):
            return read
    return None


def sure(score: Score) -> ReadScore:
    return ReadScore(score=score, sure=True)


def _short(said: Told, block: Block) -> ReadScore | None:
    """`one rep short of 8 rounds`, `4 rounds and one short of finishing the thrusters`."""
    short = said.of("short", "left")
    whole = reps_in_round(block)
    rounds = said.of("rounds")
    if whole and (less := _less(said, rounds)):
        return sure(rounds_score(*divmod(rounds[0].whole * whole - less, whole), block))
    if not short or not whole:
        return None
    missing = short[-1].whole
    named = list(named_lines(said.words[short[-1].end :], block))
    if rounds and rounds[-1].start > short[-1].start:
        return sure(rounds_score(*divmod(rounds[-1].whole * whole - missing, whole), block))
    if rounds and named:
        upto = total([reps_of(line) for line in block.lines[: named[-1].line + 1]])
        return sure(rounds_score(rounds[0].whole, (upto or missing) - missing, block))
    return None


def _less(said: Told, rounds: Sequence[Number]) -> int:
    """`9 rounds minus 4 reps`."""
    later = [one for one in said.of("reps", "bare") if rounds and one.start >= rounds[0].end]
    minus = later and re.fullmatch(r"\W*(?:minus|less|but|short by|-)\s", said.gap(rounds[0], later[0]))
    return later[0].whole if minus else 0


def _in_turn(said: Told, block: Block) -> ReadScore | None:
    """`finished my 8th round and got 12 into the next`, `finished 6, got 4 squats into the 7th`."""
    turn = next((one for one in said.of("turn") if _is_a_round(one, said)), None)
    if turn is None or said.of("rounds"):
        return None
    done = _FINISHED.search(said.words[: turn.start])
    later = [one for one in said.of("bare", "reps") if one.start >= turn.end]
    before = [one for one in said.of("bare", "reps") if one.end <= turn.start]
    earlier = [one for one in before if one.value != turn.value - 1] or before
    more = _more(turn, later, said, block)
    if isinstance(more, ReadScore):
        return more
    reps = more if more is not None else _before_turn(earlier, turn, said, block)
    if done is None and not _WITHIN.search(said.words[: turn.start]):
        return None
    if more is None and (half := _HALFWAY.search(said.words)) and not earlier:
        return (
            asking.meant(rounds_score(turn.whole - 1, (reps_in_round(block) or 0) // 2, block))
            if half
            else None
        )
    score = rounds_score(turn.whole - (0 if done else 1), reps, block)
    return beyond_round(score, block) or sure(score)


def _is_a_round(turn: Number, said: Told) -> bool:
    return re.search(r"r(?:oun)?d", turn.text) is not None or bool(_WITHIN.search(said.words[: turn.start]))


_WITHIN: Final = re.compile(r"\b(?:in|into|on|of|through|during)\W+(?:the |my )?$")
_HALFWAY: Final = re.compile(r"\bhalf ?way\b|\bmiddle of\b")


def _before_turn(earlier: Sequence[Number], turn: Number, said: Told, block: Block) -> int:
    """`3 swings into round 7`: all before the swings, and three of them; a lone number counts by itself."""
    if not earlier:
        return 0
    named = first_named(said.words[earlier[0].end : turn.start], block)
    through = _through([(earlier[0].whole, named.line if named else None)], block)
    return through if isinstance(through, int) else earlier[0].whole


_FINISHED: Final = re.compile(r"\b(?:finished|completed|done|did|got through|through)\b(?:\W\w+){0,2}\W*$")


def _in_rounds(said: Told, block: Block) -> ReadScore | None:
    found = said.of("rounds")
    if not found:
        return None
    told = said.with_role("sum", "rounds") or found[0]
    others = [one for one in found if one.value != told.value]
    if others and not said.is_said(told, "sum"):
        return asking.which_number(
            (rounds_score(told.whole, 0, block), rounds_score(others[0].whole, 0, block))
        )
    pairs = [
        one
        for one in _pairs(said)
        if one[0].start > told.end
        and one[0].value != told.value
        and not _JOINT.fullmatch(said.gap(told, one[0]))
    ]
    if pairs:
        (rounds, reps), *_ = pairs
        return asking.which_number(
            (rounds_score(told.whole, 0, block), rounds_score(rounds.whole, reps.whole, block))
        )
    if told.value != told.whole:
        whole = reps_in_round(block)
        return sure(rounds_score(told.whole, whole // 2, block)) if whole else None
    return _with_more(told, said, block)


def _plus(said: Told, block: Block) -> ReadScore | None:
    """`7+12`; of two that differ one is asked for."""
    bare = said.of("bare", "reps", "cal", "metres")
    pairs = _pairs(said)
    if (
        not pairs
        and bare
        and bare[0].kind == "bare"
        and re.match(r"\s?(?:\+|plus|and)\s", said.behind(bare[0]))
    ):
        return _with_more(bare[0], said, block) if len(bare) == 1 else None
    if not pairs:
        return None
    scores = tuple(rounds_score(one.whole, other.whole, block) for one, other in pairs)
    if len({one.value for one in scores}) > 1:
        return asking.which_number(scores[:2])
    return _with_more(pairs[0][0], said, block)


def _pairs(said: Told) -> list[tuple[Number, Number]]:
    """Of `7 + 5 + 3` the first two: what goes on behind a pair is of the same score."""
    bare = said.of("bare", "reps", "cal", "metres")
    found: list[tuple[Number, Number]] = []
    end = 0
    for one, other in itertools.pairwise(bare):
        if one.kind == "bare" and one.value == one.whole and _PLUS.fullmatch(said.gap(one, other)):
            if one.start >= end:
                found.append((one, other))
            end = other.end
    return found


def _with_more(rounds: Number, said: Told, block: Block) -> ReadScore:
    """Whole rounds, and what is told behind them of the next one."""
    later = [
        one
        for one in said.counting
        if one.start >= rounds.end and one.kind in {"bare", "reps", "cal", "metres", "sets"}
    ]
    loose = [one for one in said.of("bare", "reps") if one.end <= rounds.start and one.kind == "reps"]
    more = _more(rounds, later, said, block)
    if more is None and loose:
        more = loose[0].whole
    if isinstance(more, ReadScore):
        return more
    score = rounds_score(rounds.whole, more or 0, block)
    return beyond_round(score, block) or sure(score)


def _more(rounds: Number, later: Sequence[Number], said: Told, block: Block) -> int | ReadScore | None:
    rest = said.words[rounds.end :]
    lines = list(named_lines(rest, block))
    if lines and _MINUS.search(rest[: lines[0].start]) and len(lines) == 1 and not later:
        return _all_but(rounds, lines[0].line, block)
    joined = _joined(rounds, later, said)
    if not joined:
        first = rest[: lines[0].start] if lines else ""
        if lines and _FILLER.match(first) and _ADDED.search(first):
            return _through([(None, one.line) for one in lines], block)
        unknown = _UNKNOWN.match(rest) or (lines and _SOME.search(rest[:40])) or _goes_on(rounds, said)
        return asking.meant(rounds_score(rounds.whole, 0, block)) if unknown else None
    if len(joined) == 1 and joined[0].kind == "metres":
        return _part_of_distance(rounds.whole, joined[0].whole, block)
    return _counted(rounds, joined, said, block)


def _goes_on(rounds: Number, said: Told) -> bool:
    """Whether more is told behind the rounds, in no way that is known."""
    later = [
        one
        for one in said.counting
        if one.start >= rounds.end and one.kind in {"bare", "reps", "cal", "metres", "turn", "some"}
    ]
    return any(not said.is_said(one, "each", "sum") for one in later)


def _joined(rounds: Number, later: Sequence[Number], said: Told) -> list[Number]:
    """The numbers behind the rounds that belong to the next round: nothing but joints and names of lines between."""
    found: list[Number] = []
    for one in later:
        gap = said.words[(found[-1] if found else rounds).end : one.start]
        if found and "." in gap:
            break
        if one.kind == "reps" and re.fullmatch(r"[\s.,]*", gap):
            found.append(one)
            continue
        if not _JOINT.fullmatch(gap) and not (found or re.search(r"\+|\bplus\b|\band\b", gap)):
            break
        found.append(one)
    return found


def _counted(rounds: Number, joined: Sequence[Number], said: Told, block: Block) -> int | ReadScore | None:
    """How many of the next round: told in all, or line by line."""
    told: list[tuple[int | None, int | None]] = []
    at = rounds.end
    for one in joined:
        between = said.words[at : one.start]
        told += [(None, named.line) for named in named_lines(between, block)]
        end = min((other.start for other in joined if other.start > one.start), default=len(said.words))
        name = re.match(r"\s?(?:of (?:the )?|x )?([a-z][a-z '-]*)", said.words[one.end : end])
        lines = list(named_lines(name[1], block)) if name else []
        near = lines and lines[0].start <= 1
        told.append((one.whole, lines[0].line if near else None))
        at = one.end + (name.end() if name and near else 0)
    if len(told) == 1 and told[0][1] is None:
        return told[0][0]
    if all(line is None for _, line in told):
        return sum(count or 0 for count, _ in told)
    through = _through(told, block)
    if isinstance(through, int) and _has_run_before(told, block):
        return asking.meant(rounds_score(rounds.whole, through, block))
    return through


def _through(told: Sequence[tuple[int | None, int | None]], block: Block) -> int | ReadScore | None:
    """How far somebody got: a line that is named is reached, one without a number done; a lone number goes on."""
    done = 0
    for count, line in told:
        if line is None:
            done += count or 0
            continue
        before, own = before_line(block, line), count_of(block.lines[line])
        if before is None or own is None:
            return asking.unreadable(block)
        in_full = 0 if block.lines[line].unit is AmountUnit.METRES else own
        done = max(done, before) + (in_full if count is None else count)
    return done


def _has_run_before(told: Sequence[tuple[int | None, int | None]], block: Block) -> bool:
    """Whether metres lie before what is counted: some add them to the repetitions."""
    lines = [line for _, line in told[:-1] if line is not None]
    return any(block.lines[line].unit is AmountUnit.METRES for line in lines)


def _all_but(rounds: Number, line: int, block: Block) -> ReadScore | None:
    """`7 rounds minus the run`: of the last one all but that."""
    before = total(
        [
            reps_of(one) if one.unit is not AmountUnit.METRES else 0
            for index, one in enumerate(block.lines)
            if index != line
        ]
    )
    if before is None:
        return None
    return sure(rounds_score(max(rounds.whole - 1, 0), before, block))


def _part_of_distance(rounds: int, metres: int, block: Block) -> ReadScore:
    """`6 rounds + 60 m`: all that stands before the distance was done too."""
    before = 0
    for line in block.lines:
        count = count_of(line)
        if count is None:
            break
        if line.unit is AmountUnit.METRES and metres < count:
            score = rounds_score(rounds, before + metres, block)
            return asking.part_of_line(score, rounds, metres, line.movement) if before else sure(score)
        before += count
    return asking.unreadable(block)


def _in_reps(said: Told, block: Block) -> ReadScore | None:
    """Told in all: `212 reps`."""
    found = said.of("reps", "cal")
    whole = reps_in_round(block)
    if not found:
        return None
    return sure(rounds_score(*divmod(found[-1].whole, whole), block)) if whole else asking.unreadable(block)


def _listed(said: Told, block: Block) -> ReadScore | None:
    """`6 n 9 n 9 n 1`: rounds, and line by line; `7/12` is asked about."""
    bare = said.of("bare")
    if len(bare) == 1 and re.fullmatch(r"[0-9]{1,3}\.[0-9]{2}", bare[0].text):
        whole, part = bare[0].text.split(".")
        score = rounds_score(int(whole), int(part), block)
        return beyond_round(score, block) or asking.meant(score)
    if len(bare) < 2 or any(  # noqa: PLR2004 - a pair
        not _PAIR.fullmatch(said.gap(*pair)) for pair in itertools.pairwise(bare)
    ):
        return None
    rounds, *more = (one.whole for one in bare)
    score = rounds_score(rounds, sum(more), block)
    if len(more) == 1:
        named = line_called(said.behind(bare[-1]).strip(" .,!)"), block)
        joined = re.fullmatch(r"\s?(?:and|&|n)\s?", said.gap(bare[0], bare[1])) or named is not None
        return beyond_round(score, block) or (sure(score) if joined else asking.meant(score))
    amounts = [count_of(line) for line in block.lines[: len(more)]]
    return sure(score) if more[:-1] == amounts[:-1] else None


def _alone(said: Told, block: Block) -> ReadScore | None:
    """A bare number is rounds, unless so many rounds would be a slip but so many repetitions not."""
    bare = said.of("bare")
    numbers = {one.value for one in bare}
    if len(numbers) != 1 or bare[0].value != bare[0].whole:
        return _half(bare, block) if len(bare) == 1 else None
    if line_called(said.behind(bare[0]).strip(" .,!)"), block) is not None or said.of(*_OTHERS[:3]):
        return None
    if len(bare) == 1 and (more := _more_told(bare[0], said, block)):
        return more
    number, whole = bare[0].whole, reps_in_round(block)
    if whole and number >= whole and said.is_said(bare[0], "sum"):
        return sure(rounds_score(*divmod(number, whole), block))
    if whole and number >= whole and number > (block.minutes or _LONGEST_MIN) * _REPS_A_MINUTE / whole:
        return asking.meant(rounds_score(*divmod(number, whole), block))
    return sure(rounds_score(number, 0, block))


def _more_told(one: Number, said: Told, block: Block) -> ReadScore | None:
    """`six. and the push-ups`; beside the number of a round in no way that is known it is asked about."""
    lines = list(named_lines(said.behind(one), block))
    first = said.behind(one)[: lines[0].start] if lines else ""
    if lines and _FILLER.match(first) and _ADDED.search(first):
        return _with_more(one, said, block)
    open_still = said.of("turn") and not said.is_said(one, "sum")
    return asking.meant(rounds_score(one.whole, 0, block)) if open_still else None


def _half(bare: Sequence[Number], block: Block) -> ReadScore | None:
    """`5.5`, which may be five and a half rounds or five and five."""
    whole = reps_in_round(block)
    half = bare[0].value == bare[0].whole + 0.5
    return asking.meant(rounds_score(bare[0].whole, whole // 2, block)) if whole and half else None
