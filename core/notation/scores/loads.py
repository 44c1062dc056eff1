"""The heaviest that went, and how often it was lifted: `5x5 @ 60 kg`, `failed at 110, got 105`, `8,8,7 @ 62.5`."""

import itertools
import re
from collections.abc import Sequence
from decimal import Decimal
from typing import Final, NamedTuple

from core.measures import AmountUnit, MassUnit
from core.notation.quantities import kilograms
from core.notation.scores import asking
from core.notation.scores.each import BOTH_SIDES, counted
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.notation.scores.wording import says
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_all
from core.sessions.values import Block, Format

# A bare number beyond it may well be in pounds (estimate).
_HEAVY_BARE_KG: Final = 180
_AS_WRITTEN: Final = re.compile(r"\b(?:rx'?d?|as (?:written|prescribed|planned))\b")
# A number that can only be a load, though no unit stands behind it.
_LIFTED_WITH: Final = ("@", "used", "using")
_REPS_FIRST: Final = re.compile(r"^\s?(?:@|at|with|for|of)\s?$")


class _Lifted(NamedTuple):
    load_kg: Decimal
    number: Number
    reps: int | None
    sure: bool


def load_score(load_kg: Decimal, reps: int | None = None) -> Score:
    return Score(value=float(load_kg), unit="kg", load_kg=load_kg, reps=reps)


def read_load(said: Told, block: Block, unit: MassUnit) -> ReadScore | None:
    lifted = _concluded(_that_went(_lifted(said, block, unit), said, unit), said)
    if not any(one.load_kg for one in lifted) and (weightless := _weightless(said, block)):
        return weightless
    if not lifted:
        return _as_written(said, block) or _repetitions_alone(said, block)
    if len(lifted) > 1 and said.has(BOTH_SIDES) and len({one.load_kg for one in lifted}) > 1:
        return asking.which_number(tuple(load_score(one.load_kg) for one in lifted[:2]))
    lifted = _as_often(lifted, block)
    heaviest = max(lifted, key=lambda one: one.load_kg)
    sets = (
        _repetitions(said, block, {one.number for one in lifted})
        or _of_each(lifted, block)
        or _loads_of_each(lifted, said, block)
    )
    reps = heaviest.reps or (int(sets[0]) if len(sets) == 1 else None)
    score = load_score(heaviest.load_kg, reps).model_copy(update={"sets": sets if len(sets) > 1 else ()})
    if block.format is Format.MAX_LOAD and _is_story(lifted, heaviest, said):
        return asking.meant(score)
    doubtful = not heaviest.sure and heaviest.load_kg > _HEAVY_BARE_KG and heaviest.reps is None
    return asking.meant(score) if doubtful else ReadScore(score=score, sure=True)


def _lifted(said: Told, block: Block, unit: MassUnit) -> list[_Lifted]:
    """Every load that went, with how often where that is told; bare numbers that are too many for repetitions too."""
    found: list[_Lifted] = []
    most = _most_in_a_set(block)
    if (hundreds := _spoken_hundreds(said)) is not None:
        return [_Lifted(kilograms(str(hundreds), None, unit), said.of("bare")[0], None, sure=False)]
    for one in said.counting:
        if one.kind == "hands" or (
            one.kind == "load" and (one.unit or one.second or one.text.startswith(_LIFTED_WITH))
        ):
            reps = int(one.second) if one.second and one.kind == "load" else None
            reps = reps or _before(one, said) or _behind(one, said, most)
            found.append(
                _Lifted(kilograms(f"{one.value:g}", one.unit or None, unit), one, reps, bool(one.unit))
            )
        elif one.kind in {"load", "bare"} and one.value > most:
            reps = _before(one, said) or _behind(one, said, most)
            found.append(_Lifted(kilograms(f"{one.value:g}", None, unit), one, reps, sure=False))
        elif one.kind == "times" and one.value > most:
            found.append(
                _Lifted(kilograms(f"{one.value:g}", None, unit), one, int(one.second or 0), sure=False)
            )
        elif one.kind == "times" and (one.second or 0) > most:
            found.append(_Lifted(kilograms(f"{one.second:g}", None, unit), one, None, sure=False))
    in_full = [one for one in found if one.sure]
    # Where some are told with their unit, a bare number is a load only in one list with them.
    return (
        found
        if not in_full or len(in_full) == len(found)
        else [one for one in found if one.sure or not _is_prose(one.number, said)]
    )


def _that_went(lifted: Sequence[_Lifted], said: Told, unit: MassUnit) -> list[_Lifted]:
    """Without those that failed, told a second time too: `170 nearly, saved me at 170`."""
    failed = {
        kilograms(f"{one.value:g}", one.unit or None, unit)
        for one in said.numbers
        if one.kind in {"load", "bare"} and said.is_said(one, "failed")
    }
    return [one for one in lifted if one.load_kg not in failed] or list(lifted)


def _as_often(lifted: list[_Lifted], block: Block) -> list[_Lifted]:
    """Of a heavy triple only what was lifted three times, where anything was."""
    asked = block.lines[0].amount if block.format is Format.MAX_LOAD and block.lines else None
    enough = [one for one in lifted if one.reps is None or one.reps >= (asked or 0)]
    return enough or lifted


def _concluded(lifted: list[_Lifted], said: Told) -> list[_Lifted]:
    """`145 was glued to the floor, so 140`."""
    named = [one for one in lifted if said.is_said(one.number, "sum")]
    return named[-1:] or lifted


# Between loads that were all lifted; other words may say that one of them wasn't.
_ON: Final = says("lifted_on")
_NO_WEIGHT: Final = says("no_weight")
_DONE: Final = says("each_all")


def _is_story(lifted: Sequence[_Lifted], heaviest: _Lifted, said: Told) -> bool:
    """Of several loads in other words than a list, one may have failed in words that nobody knows."""
    if len({one.load_kg for one in lifted}) < 2 or heaviest.reps:  # noqa: PLR2004 - several
        return False
    spans = sorted((one.number.start, one.number.end) for one in lifted)
    gaps = [said.words[end:start] for (_, end), (start, _) in itertools.pairwise(spans)]
    behind = re.split(r"[.;!,(]", said.behind(heaviest.number))[0]
    return not all(_ON.fullmatch(gap) for gap in (*gaps, behind))


def _is_prose(one: Number, said: Told) -> bool:
    return bool(
        re.match(r"\s?[a-z]{3,}", said.behind(one))
        and not re.match(r"\s?(?:and|then|for|all)\b", said.behind(one))
    )


def _of_each(lifted: Sequence[_Lifted], block: Block) -> tuple[float, ...]:
    """`80x8 80x8 80x6`: told with the load of every set."""
    reps = [one.reps for one in lifted if one.reps]
    return tuple(float(one) for one in reps) if len(reps) == len(lifted) == _sets(block) else ()


_ALL_SETS: Final = re.compile(r"\b(?:all|every|each)(?: of)?(?: the)?(?: [0-9]{1,2})? ?sets?\b|\bacross\b")


def _loads_of_each(lifted: Sequence[_Lifted], said: Told, block: Block) -> tuple[float, ...]:
    """`80 80 82.5 82.5 85` of five sets, `95 all 5 sets`."""
    often = _sets(block) if block.format is Format.SETS else 1
    loads = tuple(float(one.load_kg) for one in lifted)
    if len(loads) == 1 and said.has(_ALL_SETS):
        return loads * often
    return loads if len(loads) == often else ()


def _spoken_hundreds(said: Told) -> int | None:
    """`one forty` of a bar."""
    bare = said.of("bare")
    apart = len(bare) == 2 and said.gap(*bare) == " " and said.is_spoken  # noqa: PLR2004 - two words
    return (
        bare[0].whole * 100 + bare[1].whole
        if apart and bare[0].value < _TENTH and bare[1].value >= _TENTH
        else None
    )


_TENTH: Final = 10


def _before(one: Number, said: Told) -> int | None:
    """`3 @ 85 kg`, `5 reps 90 kg`."""
    earlier = [other for other in said.counting if other.end <= one.start]
    if not earlier or earlier[-1].kind not in {"bare", "reps", "times"}:
        return None
    if earlier[-1].kind == "times":
        return int(earlier[-1].second or 0) or None
    return (
        earlier[-1].whole
        if _REPS_FIRST.match(said.gap(earlier[-1], one)) or one.text.startswith("@")
        else None
    )


def _behind(one: Number, said: Told, most: float) -> int | None:
    """`60 for 3`, `105 x 2`."""
    later = [other for other in said.counting if other.start >= one.end and other.kind in {"bare", "reps"}]
    told = (
        later
        and re.fullmatch(r"\s?(?:x|for|times)(?: only)?\s?", said.gap(one, later[0]))
        and later[0].value <= most
    )
    return later[0].whole if told else None


def _most_in_a_set(block: Block) -> float:
    """More than so many repetitions of a set are no repetitions; two more than written are done now and then."""
    written = [line.amount_to or line.amount or 0 for line in block.lines if line.unit is AmountUnit.REPS]
    return max((*written, *block.scheme), default=0) + (2 if block.format is Format.SETS else 0)


def _repetitions(said: Told, block: Block, loads: set[Number]) -> tuple[float, ...]:
    """How many each set had, where they are told in one list."""
    most = _most_in_a_set(block)
    bare = [one for one in said.of("bare", "reps") if one not in loads and 0 < one.value <= most]
    return tuple(one.value for one in bare) if len(bare) >= _sets(block) > 1 else ()


def _sets(block: Block) -> int:
    return block.rounds or len(block.scheme) or len(block.lines)


def _as_written(said: Told, block: Block) -> ReadScore | None:
    loads = {load for line in block.lines for load in line.loads_kg}
    if len(loads) != 1 or not said.has(_AS_WRITTEN):
        return None
    return ReadScore(score=load_score(loads.pop()), sure=True)


def _weightless(said: Told, block: Block) -> ReadScore | None:
    """`did all of it, no weights`, `0 kg`: all repetitions of the sets, and lighter than written."""
    is_nought = any(one.value == 0 for one in said.of("load"))
    whole = reps_in_all(block) if block.format is Format.SETS else None
    if whole is None or not (is_nought or said.has(_NO_WEIGHT)):
        return None
    score = counted(whole, "reps").model_copy(update={"scaled": True})
    return ReadScore(score=score, sure=True) if is_nought or said.has(_DONE) else asking.meant(score)


def _repetitions_alone(said: Told, block: Block) -> ReadScore | None:
    """`12, 12, 10` of three sets: how many each had, and no load."""
    if block.format is not Format.SETS or said.of("span", "clock"):
        return None
    sets = _repetitions(said, block, set())
    if len(sets) != _sets(block):
        return None
    return ReadScore(score=counted(sum(sets), "reps").model_copy(update={"sets": sets}), sure=True)


def heaviest(said: Told, unit: MassUnit) -> Decimal | None:
    """A load told beside a score that is none."""
    return max(_beside(said, unit), default=None)


def lightest(said: Told, unit: MassUnit) -> Decimal | None:
    return min(_beside(said, unit), default=None)


def _beside(said: Told, unit: MassUnit) -> list[Decimal]:
    plain = [
        one
        for one in said.of("load", "hands")
        if one.kind == "hands" or one.unit or one.text.startswith(_LIFTED_WITH) or not one.second
    ]
    return [kilograms(f"{one.value:g}", one.unit or None, unit) for one in plain]
