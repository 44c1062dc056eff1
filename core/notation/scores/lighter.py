"""Whether less was done than is written: in words, with less weight, fewer of a line, an easier way, another thing."""

import re
from collections.abc import Iterator, Sequence
from functools import cache
from typing import Final

from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.movements.names import key
from core.notation.names.catalogued import lexicon
from core.notation.scores.lines_told import first_named, named_lines
from core.notation.scores.loads import lightest
from core.notation.scores.numbers import Number
from core.notation.scores.said import Told
from core.notation.scores.wording import says
from core.notation.text import plain
from core.scores.values import Score
from core.scores.ways import Way, way_of
from core.sessions.counting import reps_in_round
from core.sessions.values import Block, Line

_SAYS: Final = says("beside_made_easier")
_WALKED: Final = says("walked")
_NOT_OF_THE_WORK: Final = says("not_of_the_work")
_CLAUSE: Final = re.compile(r"[.;!?](?=\s|$)|[,()\n]|\s-\s|\b(?:but|because|bc|coz|cos)\b")
_CUT: Final = re.compile(r"\b(?:cut|reduced|lowered|halved) (?:the |all |my )")
_FIGURE: Final = r"[0-9]+(?:\.[0-9])?"
_INSTEAD: Final = (
    re.compile(
        rf"(?P<n>{_FIGURE})[^0-9.;]{{0,24}}\b(?:instead of|not|rather than) (?:the )?(?P<k>{_FIGURE})(?![0-9:])"
    ),
    re.compile(
        rf"\b(?:swap|chang|switch|exchang|trad)\w* (?:the |my )?(?P<k>{_FIGURE})[^0-9.;]{{0,12}}"
        rf"\b(?:for|to|into) (?:the |an? )?(?P<n>{_FIGURE})(?![0-9:])"
    ),
)
_LADDER: Final = re.compile(r"(?<![0-9:-])[0-9]{1,3}(?:\s?-\s?[0-9]{1,3}){2,}(?![0-9:-])")
_WORD: Final = re.compile(r"[a-z][a-z'-]*")
_PIECE: Final = re.compile(r"[,;.!?()|+\n]|\s-\s|[0-9]+")
_LONGEST_NAME: Final = 3
# Shorter names are words for other things, too: `row`, `step`, `hang`.
_SHORTEST: Final = 5
# Before a thing that was used; a thing by itself between two commas was, too.
_USED: Final = frozenset(
    {"with", "w", "using", "used", "on", "onto", "off", "from", "to", "against", "under", "in", "had"}
)
_BEFORE_A_THING: Final = 3
# Whoever carries more, or something around the waist, did no less.
_NO_LESS: Final = frozenset({"weight vest", "stick"})
# In these a weight is the score; in the others it is told beside it.
OF_LOADS: Final = frozenset({Way.LOAD, Way.DONE})


def is_lighter(said: Told, score: Score, block: Block, unit: MassUnit) -> bool:
    says_so = (_SAYS, _WALKED) if len(block.lines) > 1 else (_SAYS,)
    clauses = [one for one in _CLAUSE.split(_without_slips(said.words)) if not _NOT_OF_THE_WORK.search(one)]
    return (
        any(
            _says_less(one, block)
            for clause in clauses
            for shape in says_so
            for one in shape.finditer(clause)
        )
        or _weighs_less(said, score, block, unit)
        or _is_less(said, score, block)
        or _is_easier(said, block)
        or _does_another(said, block)
    )


def says_less(text: str) -> bool:
    """Whether words tell that less was done, of whatever session: `skipped the runs`, `all but the last round`."""
    words = plain(text).lower()
    return any(
        shape.search(words) for shape in (_SAYS, _WALKED, _FEWER_ROUNDS, _SO_MANY_OF, _LEFT_ANYTHING_OUT)
    )


def _says_less(match: re.Match[str], block: Block) -> bool:
    """Whether it says more than the name of a line: `72.5 on the bench` of a bench press is as written."""
    words = _WORD.findall(match[0])
    things = {key(word) for word in words if words[0] in _USED and catalogue().implement_by_name(word)}
    return not any(things & set(map(key, _WORD.findall(line.written.lower()))) for line in block.lines)


def _without_slips(words: str) -> str:
    """`wihtout the weigth`: letters that changed places."""
    return _WORD.sub(lambda word: _TURNED.get("".join(sorted(word[0])), word[0]), words)


_TURNED: Final = {
    "".join(sorted(word)): word for word in ("without", "weight", "weights", "instead", "scaled", "lighter")
}


def _weighs_less(said: Told, score: Score, block: Block, unit: MassUnit) -> bool:
    """Whether less was lifted than is written for anybody; of sets the heaviest counts, of rounds every one."""
    written = [min(line.loads_kg) for line in block.lines if line.loads_kg]
    told = score.load_kg if way_of(block) in OF_LOADS else lightest(said, unit)
    if told is not None and written and float(told) < max(float(min(written)), _planned(said, block)):
        return True
    return way_of(block) not in OF_LOADS and _went_down(said)


def _planned(said: Told, block: Block) -> float:
    """`60 on the bar, coach wanted 80`: the load of the board that they say was meant for them."""
    written = {float(load) for line in block.lines for load in line.loads_kg}
    meant = (one.value for one in said.numbers if one.value in written and said.is_said(one, "before"))
    return max(meant, default=0.0)


def _went_down(said: Told) -> bool:
    """`the first 6 with 12 kg and then 8 kg`."""
    loads = [one.value for one in said.of("load", "hands") if one.unit]
    return len(loads) > 1 and loads[-1] < loads[0]


def _is_less(said: Told, score: Score, block: Block) -> bool:
    """`13:13, only 40 squats` of fifty, `without the run`; two of three in some of the minutes."""
    found = (one for shape in _INSTEAD for one in shape.finditer(said.words))
    less = any(float(one["n"]) < float(one["k"]) for one in found) or _climbs_less(said.words, block)
    if _CUT.search(said.words) or (less and way_of(block) not in OF_LOADS):
        return True
    if way_of(block) is Way.MINUTES:
        whole = reps_in_round(block)
        return bool(score.sets and whole and len(block.lines) == 1 and min(score.sets) < whole)
    if score.capped:
        return False
    if way_of(block) not in OF_LOADS and _leaves_out(said, block):
        return True
    return any(_is_fewer(one, said, block) for one in said.of("bare", "metres"))


def _climbs_less(words: str, block: Block) -> bool:
    """`15-12-9` of 21-15-9."""
    ladders = ([int(one) for one in re.findall("[0-9]+", match[0])] for match in _LADDER.finditer(words))
    return any(len(one) == len(block.scheme) and sum(one) < sum(block.scheme) for one in ladders)


_LEFT_OUT: Final = says("left_out")
_LEFT_ANYTHING_OUT: Final = re.compile(_LEFT_OUT.pattern.removesuffix("$"))
_A_ROUND: Final = says("a_round")
_FEWER_ROUNDS: Final = says("fewer_rounds")
_SO_MANY_OF: Final = re.compile(
    r"(?<![0-9.:])(?P<n>[0-9]{1,2}) (?:out )?of (?:the |all )?(?P<all>[0-9]{1,2})(?![0-9.:])"
)
# Of each round, and not as far as somebody got in the last.
_OF_EACH: Final = re.compile(r"^\W*(?:each|every|per|a) (?:round|time|set)|^\W*each\b")
_HALF_OF: Final = re.compile(r"\bhalf (?:of )?(?:the|my|all) (?:the )?$")


def _leaves_out(said: Told, block: Block) -> bool:
    """A line, or rounds where it is written how many: `all but the burpees`, `3 of 5`, `missed the last round`."""
    return any(
        _LEFT_OUT.search(said.words[: one.start]) or _HALF_OF.search(said.words[: one.start])
        for one in named_lines(said.words, block)
    ) or (bool(block.rounds) and _does_fewer_rounds(said.words, block.rounds or 0))


def _does_fewer_rounds(words: str, rounds: int) -> bool:
    fewer = any(int(one["n"]) < int(one["all"]) == rounds for one in _SO_MANY_OF.finditer(words))
    starts = (one.start() for one in re.finditer(r"(?<=\s)\S", words))
    return (
        fewer
        or _FEWER_ROUNDS.search(words) is not None
        or any(_A_ROUND.match(words[at:]) and _LEFT_OUT.search(words[:at]) for at in starts)
    )


def _is_fewer(one: Number, said: Told, block: Block) -> bool:
    """Whether less of a line is told than is written: of all that was done for time, or of each round of others."""
    behind = said.words[one.end :]
    named = first_named(behind, block)
    if named is None or named.start > 1 or not 0 < one.value < (block.lines[named.line].amount or 0):
        return False
    return way_of(block) is Way.TIME or _OF_EACH.match(behind[named.end :]) is not None


_FOR_A_LINE: Final = re.compile(r"(?P<did>[a-z]+) for (?:the |all |my ){0,2}$")


def _does_another(said: Told, block: Block) -> bool:
    """`rowed for the runs`: something else in place of a line."""
    own = {line.movement for line in block.every_line}
    found = (
        match
        for one in named_lines(said.words, block)
        if (match := _FOR_A_LINE.search(said.words[: one.start]))
    )
    return any((meant := _movement_done(match["did"])) is not None and meant not in own for match in found)


def _movement_done(verb: str) -> str | None:
    """`rowed`, `cycled`; none of words that are no doing."""
    stems = (verb[: -len(end)] for end in ("ed", "d") if verb.endswith(end))
    meanings = (lexicon(catalogue()).exact(stem) for stem in stems if len(stem) >= _SHORTEST_VERB)
    return next((one.movement for one in meanings if one is not None), None)


_SHORTEST_VERB: Final = 3


def _is_easier(said: Told, block: Block) -> bool:
    """Whether a way is named that is easier than one of the block's, or a thing that none of them needs."""
    lines = block.every_line
    clauses = [one for one in _CLAUSE.split(said.words) if not _NOT_OF_THE_WORK.search(one)]
    pieces = [_WORD.findall(piece) for one in clauses for piece in _PIECE.split(one)]
    lifts = way_of(block) is Way.LOAD  # what is held there shows in its weight
    return any(
        _names_easier(piece, lines) or (not lifts and _names_a_thing(piece, lines)) for piece in pieces
    )


def _names(words: Sequence[str]) -> Iterator[tuple[int, str]]:
    """Where each run of up to three words begins, the longest first."""
    for size in range(min(_LONGEST_NAME, len(words)), 0, -1):
        yield from ((at, " ".join(words[at : at + size])) for at in range(len(words) - size + 1))


def _names_easier(words: Sequence[str], lines: Sequence[Line]) -> bool:
    for at, name in _names(words):
        meaning = lexicon(catalogue()).exact(name) if len(name) >= _SHORTEST else None
        if meaning is None or any(_is_named_by(name, line) for line in lines):
            continue
        if meaning.variant is None and any(meaning.movement == line.movement for line in lines):
            continue
        if "in" in words[max(at - 1, 0) : at]:  # `toes to bar in singles`
            continue
        movement = catalogue().movement(meaning.movement)
        named = f"{movement.id}/{meaning.variant or movement.variants[0].id}"
        if any(named in _in_place_of(line.movement, line.variant) for line in lines):
            return True
    return False


def _is_named_by(name: str, line: Line) -> bool:
    """Whether a name is the line's own, in full or in short: `squats` of back squats."""
    own = {key(word) for word in _WORD.findall(f"{line.written.lower()} {line.movement.replace('-', ' ')}")}
    said = {key(word) for word in re.split("[ -]", name)}
    return name in line.written.lower() or all(any(word.startswith(one) for one in own) for word in said)


@cache
def _in_place_of(movement_id: str, variant: str | None) -> frozenset[str]:
    """What is easier on its ladder, and what stands in for it."""
    movement = catalogue().movement(movement_id)
    way = f"{movement_id}/{variant or movement.variants[0].id}"
    return frozenset((*catalogue().below(way), *catalogue().instead(way)))


def _names_a_thing(words: Sequence[str], lines: Sequence[Line]) -> bool:
    for at, name in _names(words):
        thing = catalogue().implement_by_name(name)
        if thing is None or thing.id in _NO_LESS or any(name in line.written.lower() for line in lines):
            continue
        before = words[max(at - _BEFORE_A_THING, 0) : at]
        behind = words[at + len(name.split()) :]
        is_used = (not _USED.isdisjoint(before) and "left" not in before) or behind[:1] == ["for"]
        stands_alone = at > 0 and not behind and len(words) <= _LONGEST_NAME and words[0] != "the"
        if (is_used or stands_alone) and not any(thing.id in _things_of(line.movement) for line in lines):
            return True
    return False


@cache
def _things_of(movement_id: str) -> frozenset[str]:
    """What the ways of a movement need or hold that are no easier than its first."""
    movement = catalogue().movement(movement_id)
    easier = _in_place_of(movement_id, None)
    ways = [way for way in movement.variants if f"{movement_id}/{way.id}" not in easier]
    return frozenset(
        thing for way in ways for thing in (*way.things, *(hold.implement for hold in way.holds))
    )
