"""Set work every minute (or two): how many of them were held, `all 12`, `failed minute 8`, `11 rounds and 8`."""

import re
from typing import Final

from core.measures import MassUnit
from core.notation.quantities import kilograms
from core.notation.scores import asking
from core.notation.scores.each import read_counts
from core.notation.scores.lines_told import first_named, named_lines
from core.notation.scores.loads import load_score
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.notation.scores.timed_each import read_splits
from core.notation.scores.wording import says
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_round, reps_of, times_in
from core.sessions.values import Block

_ALL: Final = says("held_all")
_FELL: Final = says("held_fell")
_REACHED: Final = re.compile(
    r"\b(?:made it|got|went|lasted|survived|held on?)\s(?:in)?(?:to|until|till|up to)\s(?:the\s)?$"
)
_THROUGH: Final = re.compile(r"\b(?:through|thru|after|up to and including|held)\s(?:the\s)?$")
_MISSED: Final = says("held_missed")
_LAST: Final = says("held_last")
_FEWER: Final = re.compile(r"\binstead\b|\beach\b|\bthen\b")


def read_minutes(said: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    every = times_in(block)
    if every is None:
        return None
    if lifted := _lifted(said, block, every):
        return asking.meant(load_score(kilograms(f"{max(lifted):g}", None, unit)))
    clocks = said.of("clock") or [one for one in said.of("bare") if "." in one.text]
    if 1 < len(clocks) <= every and not said.of("rounds"):
        return read_splits(said, block, unit)
    held = _held(_without_lines(said, block), every)
    if held is not None:
        return _score(held, said, block)
    read = read_counts(said, block, unit)
    return _less_than_one(read, block) if read and read.score else read


def _lifted(said: Told, block: Block, every: int) -> list[float]:
    """`60 62.5 65 70`: more than anybody does in a turn, and than there are turns."""
    most = max((line.amount or 0 for line in block.lines), default=0)
    bare = [one.value for one in said.of("bare")]
    is_list = len(bare) > 2 and not said.of("clock", "reps", "rounds", "cal")  # noqa: PLR2004 - sets of them
    return bare if is_list and min(bare) > max(every, 2 * most, reps_in_round(block) or 0) else []


def _less_than_one(read: ReadScore, block: Block) -> ReadScore | None:
    """`all 8 but dropped to 2 reps`: less than one of them had is no score of all."""
    assert read.score is not None
    few = (read.score.reps or 0) < (reps_in_round(block) or 0) and not read.score.sets
    return None if few else read


def _without_lines(said: Told, block: Block) -> Told:
    """`every minute, but 8 push-ups instead of 10`: how many of a line there were is no number of minutes."""
    return Told(
        said.words,
        tuple(one for one in said.numbers if one.kind != "bare" or not _names_line(one, said, block)),
    )


def _names_line(one: Number, said: Told, block: Block) -> bool:
    return next((named.start <= 1 for named in named_lines(said.behind(one), block)), False)


def _held(said: Told, every: int) -> int | None:
    for reader in (_of, _missed, _fell, _rounds, _minutes, _all, _alone):
        if (held := reader(said, every)) is not None:
            return held
    return None


def _of(said: Told, every: int) -> int | None:
    bare = said.of("bare")
    if len(bare) == 2 and said.gap(*bare).strip() == "/" and bare[1].whole == every:  # noqa: PLR2004 - `11/12`
        return bare[0].whole
    found = [one for one in said.of("of", "ten") if (one.second or 10) == every and one.whole <= every]
    if found and _MISSED_OF.search(said.words[: found[0].start]):
        return every - found[0].whole
    return found[0].whole if found else None


_MISSED_OF: Final = re.compile(r"\b(?:missed|failed|lost|skipped|dropped)\s(?:only |just )?$")
_ALL_BUT: Final = re.compile(r"\b(?:all but|except(?: for)?|apart from)\s(?:the )?$")


def _missed(said: Told, every: int) -> int | None:
    """`missed one`, `all but the last 2`, `failed the last one`."""
    turns = said.of("turn")
    if len(turns) == 1 and _ALL_BUT.search(said.words[: turns[0].start]):
        return every - 1
    if turns and not said.has(_MISSED):
        return None
    if left := said.of("left"):
        return (
            every - left[-1].whole
            if said.words[: left[-1].start].count("rep") == 0 and left[-1].whole < every
            else None
        )
    return every - 1 if said.has(_LAST) or said.has(_MISSED) else None


def _fell(said: Told, every: int) -> int | None:
    """`died in minute 7, so 6 full ones`: the ones before it were held."""
    for one in said.of("turn"):
        before = said.words[: one.start]
        if one.whole <= every and _THROUGH.search(before):
            return one.whole
        if one.whole <= every and (_FELL.search(before) or _FELL_BEHIND.match(said.behind(one))):
            return one.whole - 1
    return None


def _rounds(said: Told, every: int) -> int | None:
    rounds = said.of("rounds", "sets") or _with_plus(said)
    bare = [one for one in said.of("bare") if rounds and one.start >= rounds[0].end]
    if any(rounds[0].whole + one.whole == every and "then" in said.gap(rounds[0], one) for one in bare):
        return every
    return rounds[0].whole if rounds and rounds[0].whole <= every else None


def _minutes(said: Told, every: int) -> int | None:
    """`11 minutes`; but a rest or the whole time of it says nothing."""
    spans = [one for one in said.of("span") if one.value % 60 == 0 and one.value / 60 <= every]
    return int(spans[0].value / 60) if spans else None


def _all(said: Told, every: int) -> int | None:
    bare = [one for one in said.of("bare") if one.value == one.whole]
    listed = len(bare) > 1 and not _FEWER.search(said.words)
    return (
        every
        if said.has(_ALL) and not listed and not _lone_below(bare, every) and not said.of("reps", "cal")
        else None
    )


def _lone_below(bare: list[Number], every: int) -> bool:
    return len(bare) == 1 and bare[0].whole < every


def _alone(said: Told, every: int) -> int | None:
    bare = said.of("bare")
    return (
        bare[0].whole if len(bare) == 1 and bare[0].whole <= every and not said.has(_FEWER_OF_THEM) else None
    )


# `kept it to 8 from halfway`: repetitions, and nobody knows of how many minutes.
_FEWER_OF_THEM: Final = re.compile(r"\b(?:kept|dropped|went down|down|cut|switched|changed)\b|\bfrom\b")


def _score(held: int, said: Told, block: Block) -> ReadScore:
    """Whole minutes with their repetitions, where these can be counted; and what was done of the next one."""
    more = _more(said)
    reps = reps_held(block, held)
    score = Score(
        value=float(held) if reps is None else float(reps + more),
        unit="rounds" if reps is None else "reps",
        rounds=held,
        reps=None if reps is None else reps + more,
        scaled=_is_less(said, block),
    )
    about = next((one for one in said.of("turn") if _REACHED.search(said.words[: one.start])), None)
    if _is_patchy(said):
        return asking.meant(score)
    return (
        asking.meant(score) if about and not said.of("rounds", "span") else ReadScore(score=score, sure=True)
    )


def _is_less(said: Told, block: Block) -> bool:
    """`8 swings from minute 6` of twelve."""
    for one in said.of("bare"):
        named = first_named(said.behind(one), block)
        if named and named.start <= 1 and one.value < (block.lines[named.line].amount or 0):
            return True
    return False


def _is_patchy(said: Told) -> bool:
    """Some minutes are spoken of that were neither the first to fail nor the last to be held."""
    turns = said.of("turn", "turns")
    if said.of("turns") or len(turns) > 1:
        return True
    return bool(turns) and not any(_is_an_end(one, said) for one in turns)


def _is_an_end(one: Number, said: Told) -> bool:
    before = said.words[: one.start]
    fell = _FELL.search(before) or _FELL_BEHIND.match(said.behind(one))
    return bool(fell or any(shape.search(before) for shape in (_THROUGH, _REACHED, _FROM_THERE)))


_FELL_BEHIND: Final = re.compile(r"[^0-9.]{0,12}\b(?:failed|died|was too much|broke me|got me)\b")
_FROM_THERE: Final = re.compile(r"\b(?:from|since|in|on)\s(?:the\s)?$")


def _with_plus(said: Told) -> tuple[Number, ...]:
    """`6 + 8`: minutes, and what was done of the next."""
    bare = said.of("bare")
    return bare[:1] if len(bare) == 2 and said.gap(*bare).strip() in {"+", "plus"} else ()  # noqa: PLR2004 - a pair


def _more(said: Told) -> int:
    rounds = said.of("rounds", "span") or _with_plus(said)
    if not rounds:
        return 0
    later = [one for one in said.of("bare", "reps") if one.start >= rounds[0].end]
    joined = later and re.fullmatch(r"\s?(?:and|\+|plus|&|,|with|then)\s?", said.gap(rounds[0], later[0]))
    return later[0].whole if joined else 0


def reps_held(block: Block, held: int) -> int | None:
    """Repetitions of so many minutes; where turns are taken, each with its own."""
    stations = sorted({line.station for line in block.lines if line.station} | set(block.rest_stations))
    if not stations:
        whole = reps_in_round(block)
        return None if whole is None else whole * held
    turns = [[reps_of(line) for line in block.lines if line.station == station] for station in stations]
    counts = [count for at in range(held) for count in turns[at % len(turns)]]
    return None if None in counts else sum(count for count in counts if count)
