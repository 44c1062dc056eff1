"""Times of work that is done for time."""

import re
from collections.abc import Iterator, Sequence
from typing import Final

from core.measures import AmountUnit, MassUnit
from core.notation.scores import asking
from core.notation.scores.capped import CAPPED, MADE_IT, not_finished
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.scores.values import Doubt, ReadScore, Score
from core.sessions.values import Block, Format

MINUTE_S: Final = 60
_OVER: Final = re.compile(r"\b(?:over|past|after|beyond) the (?:time )?cap\b")
# A bare number from there on is no number of minutes.
_A_DISTANCE: Final = 400
# A number beside a time is kilometres if it is as near to what was set.
_NEAR_KM: Final = 2
_INSTEAD: Final = re.compile(r"\binstead\b|\bonly goes? to\b|\bcuts? out\b")
# Between the two halves of a time: `8 43`, `two minutes and two`.
_SPACE: Final = re.compile(r"\s(?:and\s)?")


def time_score(seconds: float) -> Score:
    return Score(value=seconds, unit="s", seconds=seconds)


def read_time(said: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    times = list(times_in(said, block))
    beyond = [one for one in times if block.cap_s is not None and one[0] > block.cap_s]
    if said.has(_OVER) and beyond:
        return asking.beyond_cap(block.cap_s or 0)
    if stopped := _under_the_cap(said, block) or not_finished(said, block, unit, times):
        return stopped
    if slip := next((one for one in said.of("clock") if one.second), None):
        return asking.unsure(Doubt.IMPOSSIBLE, f"{slip.text.strip()} looks like a slip. What was your time?")
    if block.rest_s and len(times) == block.rounds and all(plain for _, _, plain in times):
        return ReadScore(score=_of_rounds([seconds for seconds, _, _ in times]), sure=True)
    if _is_other_distance(said, block):
        return asking.meant(time_score(times[0][0])) if times else None
    return _one_of(times, said)


_UNDER: Final = re.compile(
    r"\s?(?:left on the clock|under the (?:time )?cap|inside the (?:time )?cap|before the (?:time )?cap|to spare)\b"
)


def _under_the_cap(said: Told, block: Block) -> ReadScore | None:
    """`finished with 2:20 left on the clock`."""
    left = [one for one in said.of("clock", "span") if _UNDER.match(said.behind(one))]
    others = [one for one in said.of("clock") if one not in left]
    if block.cap_s is None or len(left) != 1 or others or left[0].value >= block.cap_s:
        return None
    return ReadScore(score=time_score(block.cap_s - left[0].value), sure=True)


def _of_rounds(each: Sequence[float]) -> Score:
    """Of rounds with a rest between, each timed by itself: what they took together."""
    return time_score(sum(each)).model_copy(update={"sets": tuple(each)})


def _one_of(times: Sequence[tuple[float, Number, bool]], said: Told) -> ReadScore | None:
    """The only time that is told; of several the sum, or else which one is asked."""
    if (whole := _added_up([seconds for seconds, _, _ in times])) is not None:
        return ReadScore(score=whole, sure=True)
    chosen = [one for one in times if said.is_said(one[1], "sum")] or list(times)
    if not chosen:
        return None
    chosen = [one for one in chosen if one[1] == made_by_others(said)] or chosen
    values = {seconds for seconds, _, _ in chosen}
    if len(values) > 1:
        return asking.which_number(tuple(time_score(one[0]) for one in chosen[:2]))
    seconds, _, plain = chosen[-1]
    score = time_score(seconds)
    return ReadScore(score=score, sure=True) if plain else asking.meant(score)


def _added_up(times: Sequence[float]) -> Score | None:
    """`4:10, 4:38, 4:31 so 13:19`: what all of it took, and what each stretch of it did."""
    for at, whole in enumerate(times):
        others = (*times[:at], *times[at + 1 :])
        if len(others) > 1 and abs(sum(others) - whole) < _A_TENTH:
            return time_score(whole).model_copy(update={"sets": others})
    return None


_A_TENTH: Final = 0.1


def made_by_others(said: Told) -> Number | None:
    """`17:31, splits 5:20 5:58 6:13`: the time that all others make, to a second each."""
    clocks = [one for one in said.numbers if one.kind == "clock"]
    whole = sum(one.value for one in clocks)
    return next((one for one in clocks if len(clocks) > 2 and abs(whole - 2 * one.value) < len(clocks)), None)  # noqa: PLR2004


def times_in(said: Told, block: Block) -> Iterator[tuple[float, Number, bool]]:
    """Every time that is told, in seconds, with the number it begins with, and whether it can be nothing else."""
    full = said.of("clock", "span")
    plain = [one for one in full if one.kind == "clock" and not one.second]
    spans = [one for one in full if one.kind == "span" and not _is_the_cap(one, block, said)]
    if plain or spans:
        yield from ((one.value, one, True) for one in plain)
        yield from ((one.value + _seconds_behind(one, said), one, True) for one in spans if not plain)
        return
    yield from bare_times(said)


def _is_the_cap(one: Number, block: Block, said: Told) -> bool:
    return one.value == block.cap_s and said.has(CAPPED) and not said.has(MADE_IT)


def _seconds_behind(one: Number, said: Told) -> float:
    """`two minutes and two`, `9 minutes forty`."""
    later = [other for other in said.numbers if other.start >= one.end]
    behind = later[0] if later else None
    is_second = (
        behind is not None
        and behind.kind in {"bare", "span"}
        and behind.value < MINUTE_S
        and _SPACE.fullmatch(said.gap(one, behind))
        and one.value >= MINUTE_S
    )
    return behind.value if is_second and behind else 0


def bare_times(said: Told) -> Iterator[tuple[float, Number, bool]]:
    """`17.42`, `8 43`, `843`, `9`: minutes and seconds without a sign that says so."""
    bare = said.of("bare")
    taken = -1
    for at, one in enumerate(bare):
        if at <= taken:
            continue
        other = bare[at + 1] if at + 1 < len(bare) else None
        if (seconds := dotted(one)) is not None:
            yield seconds, one, True
        elif (
            other
            and _is_seconds(other)
            and one.value == one.whole
            and re.fullmatch(r" (?:and )?", said.gap(one, other))
        ):
            taken = at + 1
            yield one.value * MINUTE_S + other.value, one, True
        elif len(bare) == 1:
            yield from _run_on(one)


def dotted(one: Number) -> float | None:
    """`17.42`, and with tenths `1.52.3`."""
    parts = one.text.strip().replace(",", ".").split(".")
    if len(parts) < 2 or len(parts[1]) != 2 or int(parts[1]) >= MINUTE_S:  # noqa: PLR2004 - minutes and seconds
        return None
    return int(parts[0]) * MINUTE_S + float(".".join(parts[1:]))


def _is_seconds(one: Number) -> bool:
    return bool(re.fullmatch(r"[0-5]?[0-9](?:\.[0-9])?", one.text.strip())) and (len(one.text.strip()) > 1)


def _run_on(one: Number) -> Iterator[tuple[float, Number, bool]]:
    text = one.text.strip()
    if re.fullmatch(r"[0-9]{1,2}[0-5][0-9]", text):
        yield int(text[:-2]) * MINUTE_S + int(text[-2:]), one, False
    elif one.value == one.whole:
        yield one.value * MINUTE_S, one, False


def _is_other_distance(said: Told, block: Block) -> bool:
    """Whether they tell of another distance than was set."""
    set_m = [line.amount for line in block.lines if line.unit is AmountUnit.METRES and line.amount]
    if block.format is not Format.TIME_TRIAL or len(set_m) != 1:
        return False
    far = [one.value for one in said.of("metres")]
    for one in said.of("bare"):
        far += [one.value] if one.value >= _A_DISTANCE else []
        is_in_km = said.of("clock") and set_m[0] / _NEAR_KM < one.value * 1000 < set_m[0] * _NEAR_KM
        far += [one.value * 1000] if is_in_km else []
    others = [one for one in far if abs(one - set_m[0]) > set_m[0] / 50]
    return said.has(_INSTEAD) or bool(others and len(others) == len(far) and "split" not in said.words)
