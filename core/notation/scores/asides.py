"""Numbers that are told beside a score: those among words with which nobody tells one, where another stands among such.

The words with which scores are told are few and known (`telling` in `wording.toml`); what else people tell is endless.
"""

import re
from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from core.notation.scores.lines_told import named_lines
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.notation.scores.wording import says, words_of
from core.scores.ways import OWN, Way, way_of
from core.sessions.values import Block

_TELLING: Final = words_of("telling")
# What is said of one of several is said of the score where each of them is told.
_OF_EACH: Final = words_of("of_each")
_IN_SEVERAL: Final = frozenset(
    {Way.SPLITS, Way.COUNTS, Way.HOLDS, Way.SETS_OF_REPS, Way.LOAD, Way.DONE, Way.MINUTES}
)
# These are told in words of their own, whatever stands around them.
_ALWAYS: Final = frozenset({"left", "short", "turn", "turns", "of", "some", "ten", "beside", "hands", "load"})
_BOUND: Final = re.compile(
    r"[.;!?](?=\s|$)|[,()\n:/&]|\s-+\s|\b(?:and|n|but|because|bc|cos|coz|cause|so|then|which|while|when|though|tho|or)\b|\+"
)
_WORD: Final = re.compile(r"[^\W\d_]+(?:['\u2019-][^\W\d_]+)*")


def without_asides(said: Told, block: Block) -> Told:
    """What is told, with the numbers set aside that stand among other words than scores are told with."""
    runs = tuple(_runs(said, block))
    plain = [one for run in runs if _is_plain(run, said, block) for one in run]
    if not plain:
        return said
    kept = {*plain}
    for run in runs:
        told = _tells_too(run, said)
        kept.update(one for one in run if told or _may_be_it(one, plain, block))
    numbers = tuple(
        one._replace(kind="beside")
        if one in said.counting and one.kind not in _ALWAYS and one not in kept
        else one
        for one in said.numbers
    )
    return replace(said, numbers=numbers)


def _runs(said: Told, block: Block) -> Iterator[list[Number]]:
    """The numbers that belong together: nothing but joints and words for scores between them, in one sentence."""
    run: list[Number] = []
    for one in said.counting:
        if one.kind in _ALWAYS:
            continue
        if run and _parts(said.gap(run[-1], one), block):
            yield run
            run = []
        run.append(one)
    if run:
        yield run


def _parts(gap: str, block: Block) -> bool:
    """Whether other words stand between two numbers, or one sentence ends; of what is told once a comma does, too."""
    ends = _END if way_of(block) in _IN_SEVERAL else _END_OF_ONE
    return bool(ends.search(gap)) or not _only_tells(gap, block)


def _may_be_it(one: Number, plain: list[Number], block: Block) -> bool:
    """Whether it is told in the kind of the block's scores, as no other is: which of them counts is a question."""
    own = OWN[way_of(block)]
    return one.kind in own and all(
        other.kind == one.kind or other.kind not in {"bare", *own} for other in plain
    )


def _is_plain(run: list[Number], said: Told, block: Block) -> bool:
    """Whether only words with which scores are told stand around it, up to the ends of its clause."""
    before = said.words[_begins(run[0], said) : run[0].start]
    behind = said.words[run[-1].end : _ends(run[-1], said)]
    timed = way_of(block) is Way.TIME and any(one.kind in OWN[Way.TIME] for one in run)
    return all(_only_tells(words, block, names=not timed) for words in (before, behind))


def _tells_too(run: list[Number], said: Told) -> bool:
    """Whether it may be a score all the same: a device's, part of it done in another way, or somebody else's."""
    clause = said.words[_begins(run[0], said) : _ends(run[-1], said)]
    pair = len(run) > 1 and "+" in said.gap(run[0], run[1])
    return pair or _TOO.search(clause) is not None or any(said.is_said(one, "device") for one in run)


def _begins(one: Number, said: Told) -> int:
    earlier = max((other.end for other in said.numbers if other.end <= one.start), default=0)
    bounds = [match.end() for match in _BOUND.finditer(said.words, 0, one.start)]
    return max([earlier, *bounds])


def _ends(one: Number, said: Told) -> int:
    later = min((other.start for other in said.numbers if other.start >= one.end), default=len(said.words))
    bounds = [match.start() for match in _BOUND.finditer(said.words, one.end)]
    return min([later, *bounds])


def _only_tells(words: str, block: Block, *, names: bool = True) -> bool:
    """Whether all words are such, or name what is done: beside a time they tell when that was over."""
    known = _TELLING | _OF_EACH if way_of(block) in _IN_SEVERAL else _TELLING
    for named in reversed(list(named_lines(words, block)) if names else []):
        words = words[: named.start] + words[named.end :]
    return all(word in known for word in _WORD.findall(words))


_TOO: Final = says("tells_too")
_END: Final = re.compile(r"[.;!?](?=\s|$)|[()\n]")
_END_OF_ONE: Final = re.compile(_END.pattern + r"|,(?=\s)(?!\s(?:plus|and|n|\+))")
