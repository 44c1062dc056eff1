"""One score out of words: the part it is of, and what of the words is said of it."""

import re
from collections.abc import Mapping, Sequence
from itertools import takewhile
from typing import Final

from core.measures import MassUnit
from core.notation.part_labels import find_part, names_several
from core.notation.part_places import block_of, place_of
from core.notation.scores import asking
from core.notation.scores.accounted import accounted, accounts_for, left_over
from core.notation.scores.in_block import read_in_block
from core.notation.scores.loads import heaviest
from core.notation.scores.numbers import Number
from core.notation.scores.part_names import blocks_named
from core.notation.scores.said import Told, told
from core.notation.scores.spoken import with_signs_told
from core.notation.scores.times import dotted
from core.notation.text import in_lines, plain
from core.scores.values import SETTLED_BY_YES, Doubt, ReadScore
from core.scores.ways import OWN, Way, way_of
from core.sessions.counting import is_in_kcal, times_in
from core.sessions.values import Block, Session

LONGEST_SCORE: Final = 500
_IN_ROUNDS: Final = re.compile(r"^[^+]*[0-9]\s?\+\s?[0-9][^+]*$|[0-9]\s?(?:rounds?|rds?)\b")
# What it was done with.
_USED: Final = re.compile(
    r"(?:\bw/?|\bwith|\busing|\bused|@)\s?(?:an?\s|the\s|my\s|two\s|2\s?x\s?)*[0-9]{1,3}(?:\.[0-9])?(?:\s?(?:kgs?|lbs?|s)\b)?"
)
_IN_KCAL: Final = re.compile(r"[0-9]\s?(?:k?cals?|calories)\b")


def read_score(
    text: str, session: Session, block: int | None = None, unit: MassUnit = MassUnit.KG
) -> ReadScore:
    """Reads what an athlete says of a session; bare loads are in `unit`. `block`: index of the one meant.

    Never raises for any text; raises IndexError for a block that the session doesn't have.
    """
    words = in_lines(with_signs_told(text)).lower()[:LONGEST_SCORE]
    if (
        block is None
        and sum(each.scored for each in session.blocks) > 1
        and (named := _part_named(words, session))
    ):
        block, words = named
    if block is not None:
        return read_in_block(words, session.blocks[block], unit).model_copy(update={"block": block})
    scored = tuple((index, each) for index, each in enumerate(session.blocks) if each.scored)
    read = _in_any(words, session, scored, unit) if scored else _in_unscored(words, session, unit)
    if read.sure and read.score is not None and names_several(words):
        return asking.meant(read.score).model_copy(update={"block": read.block})
    return read


def _part_named(words: str, session: Session) -> tuple[int, str] | None:
    """The only part that is meant, and what is said of it; `first` is when it was done where others are named."""
    named = find_part(words)
    block = block_of(named[0], session) if named else None
    if named is None or block is None:
        return None
    if named[0].of_scored and (blocks_named(words, session) - {block} or _tells_before(words, named[1])):
        return None
    return block, named[1]


def _tells_before(words: str, rest: str) -> bool:
    """`clean 67.5, missed 70. second one 6:51`: whether a sentence with a number ends before the part is named."""
    same = takewhile(lambda pair: pair[0] == pair[1], zip(words, rest, strict=False))
    before = "".join(one for one, _ in same).rstrip()
    return before.endswith((".", "!", ";")) and bool(told(before).counting)


def may_be_told_of(text: str, session: Session) -> bool:
    """Whether the words tell something in the kind of a score of the session, even if a question is left."""
    said = told(plain(with_signs_told(text)).lower()[:LONGEST_SCORE])
    scored = [block for block in session.blocks if block.scored]
    return (
        any(said.of(*OWN[way_of(block)]) for block in scored) or read_score(text, session).score is not None
    )


def _in_unscored(words: str, session: Session, unit: MassUnit) -> ReadScore:
    """Of what nobody scores: what is plainly told all the same."""
    for index, block in enumerate(session.blocks):
        if way_of(block) is Way.DONE and (read := read_in_block(words, block, unit)).sure:
            return read.model_copy(update={"block": index})
    return asking.nothing_scored()


def _in_any(words: str, session: Session, scored: tuple[tuple[int, Block], ...], unit: MassUnit) -> ReadScore:
    """The only scored block, or the only one that the words fit; else which one is asked."""
    reads = {index: read_in_block(words, block, unit) for index, block in scored}
    if len(scored) == 1:
        index = scored[0][0]
        return reads[index].model_copy(update={"block": index})
    fitting = [
        index
        for index, block in scored
        if reads[index].sure
        and not _is_told_of_another(words, index, scored)
        and not _lists_one(reads[index], block)
    ]
    named = blocks_named(words, session)
    if len(fitting) > 1:
        said_of = [index for index, block in scored if index in fitting and is_said_of(words, block)]
        fitting = said_of or [index for index in fitting if named == {index}]
    loads = {index for index, block in scored if way_of(block) is Way.LOAD}
    asked = tuple((place_of(index, session) - 1, block) for index, block in scored)
    several = len(named) > 1 and len(told(words).counting) > 1
    if len(fitting) == 1 and named and (fitting[0] not in named or several):
        return _of_the_clock(words, reads, scored) or of_which(asked, scored)
    told_too = loads.difference(fitting) and (
        heaviest(told(words), unit)
        or any(_is_lifted_too(reads[at], reads, fitting, dict(scored)) for at in loads)
    )
    if (
        len(fitting) == 1
        and not told_too
        and not _is_some_left(words, reads[fitting[0]], dict(scored)[fitting[0]])
        and not _is_another_told(words, fitting[0], reads[fitting[0]], scored)
    ):
        return reads[fitting[0]].model_copy(update={"block": fitting[0]})
    return _of_the_clock(words, reads, scored) or of_which(asked, scored)


def _of_the_clock(
    words: str, reads: Mapping[int, ReadScore], scored: Sequence[tuple[int, Block]]
) -> ReadScore | None:
    """One time is of the one part that is for time, whatever it was done with: `15:50 w the 16s`.

    None where a number is told beside it that may be the score of another part.
    """
    timed = [index for index, block in scored if way_of(block) is Way.TIME]
    said = told(_USED.sub(" ", words))
    times = said.of("clock", "span")
    others = {kind for index, block in scored if index not in timed for kind in OWN[way_of(block)]}
    if len(timed) != 1 or len(times) > 1 or said.of(*others - {"bare", "span", "clock", "left", "hands"}):
        return None
    read = reads[timed[0]]
    if read.score is None or not (read.sure or (times and read.doubt in SETTLED_BY_YES)):
        return None
    of_another = (one for one in said.of("bare") if not accounts_for(one, read.score, dict(scored)[timed[0]]))
    return None if any(of_another) else read.model_copy(update={"block": timed[0]})


def of_which(asked: tuple[tuple[int, Block], ...], scored: Sequence[tuple[int, Block]]) -> ReadScore:
    """Asked by the places that people count, kept by the indices."""
    return asking.which_block(asked).model_copy(update={"among": tuple(index for index, _ in scored)})


def _is_told_of_another(words: str, own: int, scored: Sequence[tuple[int, Block]]) -> bool:
    """Whether the words have the shape of another part's scores and not of this one's."""
    others = any(is_said_of(words, block) for index, block in scored if index != own)
    return others and not any(is_said_of(words, block) for index, block in scored if index == own)


def _lists_one(read: ReadScore, block: Block) -> bool:
    """Whether several numbers are told of what is done once: they may be those of several parts."""
    return read.score is not None and len(read.score.sets) > 1 and (block.rounds or times_in(block) or 1) == 1


def _is_lifted_too(
    read: ReadScore, reads: Mapping[int, ReadScore], fitting: Sequence[int], blocks: Mapping[int, Block]
) -> bool:
    """`clean 67.5 .. second one 6:51`: whether a weight may be told of a part beside the one that fits."""
    fit = [(score, blocks[at]) for at in fitting if (score := reads[at].score) is not None]
    load = read.score.value if read.score is not None and read.doubt is Doubt.MEANT else None
    return bool(load and fit) and not any(load in accounted(*told_of) for told_of in fit)


def _is_some_left(words: str, read: ReadScore, block: Block) -> bool:
    """Whether a number is told that is none of the part's, and so may be of another."""
    return read.score is not None and bool(left_over(told(words), read.score, block, alone=False))


def _is_another_told(words: str, own: int, read: ReadScore, scored: Sequence[tuple[int, Block]]) -> bool:
    """Whether a number is told in the kind of another part's scores, and not in that of this part's."""
    block = dict(scored)[own]
    kinds = {kind for index, other in scored if index != own for kind in OWN[way_of(other)]} - {
        *OWN[way_of(block)]
    }
    said = told(words)
    told_too = [*said.of(*kinds - {"load", "left", "span"}), *(_long_times(said) if "clock" in kinds else ())]
    return read.score is not None and any(not accounts_for(one, read.score, block) for one in told_too)


# Nobody rests or warms up for so long and tells it beside a score (estimate).
_LONG_S: Final = 180


def _long_times(said: Told) -> list[Number]:
    """What may be the time of a part, though it has no colon: `7 and a half minutes`, `the rest 9.58`."""
    minutes = [one for one in said.of("span") if one.value >= _LONG_S and not one.text.endswith("h")]
    return minutes + [
        one for one in said.numbers if (dotted(one) or 0) >= _LONG_S and not said.is_said(one, "before")
    ]


def is_said_of(words: str, block: Block) -> bool:
    """Whether the words have the shape of the block's own scores: `6+3` of rounds, `80 cal` of calories."""
    if _IN_ROUNDS.search(words):
        return way_of(block) is Way.ROUNDS
    return bool(_IN_KCAL.search(words)) and is_in_kcal(block)
