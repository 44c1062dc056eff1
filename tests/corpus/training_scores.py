"""`make train`: which reading of a score was meant, from what people write in the building half. A development tool."""

import hashlib
import random
import re
import tomllib
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any, Final, NamedTuple

import numpy as np

from core.choosers import document_of, write_weights
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import numbers, said, spoken
from core.notation.scores.choosing import (
    candidates,
    facts,
    of_each,
    of_loads,
    of_minutes,
    of_rounds,
    of_times,
    readings,
)
from core.notation.scores.choosing.candidates import Heard, Reading
from core.notation.scores.choosing.choice import WEIGHTS
from core.notation.scores.choosing.facts import Around, facts_of
from core.notation.scores.reading import LONGEST_SCORE
from core.notation.scores.said import all_told
from core.notation.scores.spoken import with_signs_told
from core.notation.text import in_lines
from core.scores.values import ReadScore, Score
from core.scores.ways import Way, way_of
from core.sessions.values import Block, Session
from tests.corpus.judge import cases, unlike_score

HERE: Final = Path(__file__).parent
REPLIES: Final = HERE / "building" / "replies"
WAYS: Final = HERE / "building" / "scores" / "ways.jsonl"
TELLINGS: Final = HERE / "asides" / "tellings.toml"
BESIDE: Final = HERE / "asides" / "numbers.toml"
LIGHTER: Final = HERE / "asides" / "lighter.toml"
# What is put together from what was written counts less than that.
_OURS, _MIXED = 1.0, 0.3
# How many are put together for each that was written.
_MORE: Final = 2.0
STRENGTH: Final = 0.6
_STEPS: Final = 150
_SCALE: Final = 64
_LEAST: Final = 0.02
_SEEN_AT_LEAST: Final = 2
_NEAR: Final = 0.002
AGAIN: Final = (
    "sorry, ",
    "no wait, ",
    "i mean ",
    "correction: ",
    "scrap that, ",
    "make that ",
    "oops ",
    "wait no. ",
    "sorry fat fingers ",
    "actually ",
    "no, ",
    "no it was ",
    "* ",
)
EARLIER: Final = (
    "last week ",
    "last time it was ",
    "in march i had ",
    "was ",
    "before that ",
    "my best is ",
    "i wanted ",
    "aimed for ",
    "Bo got ",
    "Ana: ",
    "my wife did ",
    "goal was ",
    "better than ",
)


class Told(NamedTuple):
    """A text of a block; `hand`: who wrote it. `is_meant`: whether a score is right; None where none is told."""

    text: str
    block: Block
    hand: str
    weight: float
    is_meant: Callable[[Score], bool] | None


class Row(NamedTuple):
    """All readings of a text by their facts, and which of them are right; the first is that nothing is told."""

    facts: tuple[Sequence[str], ...]
    right: tuple[bool, ...]
    weight: float
    hand: str


def told() -> list[Told]:
    """What was written of sessions with one scored part."""
    paths = [*sorted(REPLIES.glob("*.jsonl")), WAYS]
    written = [one for path in paths for one in _of_file(path)]
    return [*written, *_of_messages(), *_of_tellings()]


def _of_file(path: Path) -> Iterator[Told]:
    for case in cases([path]):
        session = read_session(case["session"], catalogue()).session
        at = _only_scored(session)
        expect = case["expect"]
        if session is None or at is None or "parts" in expect:
            continue
        nothing = case["ask"] or not expect or expect.get("none")
        is_meant = None if nothing else _as_expected(expect, at, session)
        weight = _OURS if path == WAYS else 1.0
        yield Told(case["text"], session.blocks[at], path.stem, weight, is_meant)


def _only_scored(session: Session | None) -> int | None:
    scored = [at for at, block in enumerate(session.blocks) if block.scored] if session else []
    return (
        scored[0]
        if session and len(scored) == 1 and way_of(session.blocks[scored[0]]) is not Way.DONE
        else None
    )


def _as_expected(expect: Mapping[str, Any], at: int, session: Session) -> Callable[[Score], bool]:
    """Whether a score is as it was meant; whether less was done is not told by its numbers."""
    numbers = {name: one for name, one in expect.items() if name != "scaled"}

    def is_meant(score: Score) -> bool:
        plain = score.model_copy(update={"scaled": False})
        return not unlike_score(numbers, ReadScore(score=plain, sure=True, block=at), session)

    return is_meant


def _of_tellings() -> Iterator[Told]:
    for part in tomllib.loads(TELLINGS.read_text(encoding="utf-8"))["part"]:
        session = read_session(part["board"], catalogue()).session
        at = _only_scored(session)
        if session is None or at is None:
            continue
        block = session.blocks[at]
        yield from (
            Told(text, block, "tellings", _OURS, _comes_to(value)) for text, value in part["told"].items()
        )
        yield from (Told(text, block, "tellings", _OURS, None) for text in part.get("asked", ()))


_SCORED: Final = frozenset({"scored", "corrects"})
_OTHER_TONGUES: Final = ("german", "spanish")


def _of_messages() -> Iterator[Told]:
    """What athletes wrote of a session: their score, or something else."""
    for path in sorted((HERE / "building" / "messages").glob("*.jsonl")):
        if path.stem.startswith(_OTHER_TONGUES):
            continue
        for case in cases([path]):
            session = read_session(case["session"], catalogue()).session if case.get("session") else None
            at = _only_scored(session)
            if session is None or at is None or case["role"] != "athlete":
                continue
            scores = [act.get("score") for act in case["expect"] if act["act"] in _SCORED]
            if len(scores) < 2 and (not scores or scores[0]):
                is_meant = _as_expected(scores[0], at, session) if scores else None
                yield Told(case["text"], session.blocks[at], f"messages {path.stem}", 1.0, is_meant)


def _comes_to(value: float) -> Callable[[Score], bool]:
    return lambda score: score.value is not None and abs(score.value - value) < _NEAR * max(1, abs(value))


def row(one: Told) -> Row:
    words = " ".join(in_lines(with_signs_told(one.text)).lower()[:LONGEST_SCORE].split())
    heard = Heard(all_told(words), one.block)
    around = Around(heard)
    found: list[Reading | None] = [None, *readings.readings(heard)]
    meant = [one.is_meant is not None and read is not None and one.is_meant(read.score) for read in found]
    meant[0] = not any(meant)
    return Row(tuple(facts_of(around, read) for read in found), tuple(meant), one.weight, one.hand)


def mixed(found: Sequence[Told], seed: int = 7) -> Iterator[Told]:
    """More of the same hands: a score with something beside it, put right, or beside an earlier one."""
    chance = random.Random(seed)
    asides = list(_asides())
    for hand in sorted({one.hand for one in found}):
        own = [one for one in found if one.hand == hand and one.is_meant is not None]
        for _ in range(int(_MORE * len(own))):
            one = chance.choice(own)
            others = [other for other in own if other.block == one.block and other is not one]
            pair = others and chance.random() < 0.5
            text = (
                _beside_another(one.text, chance.choice(others).text, chance)
                if pair
                else _beside(one.text, asides, chance)
            )
            yield one._replace(text=text, weight=one.weight * _MIXED)


def _asides() -> Iterator[str]:
    beside = tomllib.loads(BESIDE.read_text(encoding="utf-8"))["beside"]
    lighter = tomllib.loads(LIGHTER.read_text(encoding="utf-8"))
    talk = [
        case["text"]
        for case in cases(sorted((HERE / "building" / "messages").glob("*.jsonl")))
        if _is_talk(case)
    ]
    yield from (re.sub("[{}]", "", one) for one in (*beside, *beside))
    yield from (one for told in lighter.values() for one in told)
    yield from talk


_LONGEST_TALK: Final = 160


def _is_talk(case: Mapping[str, Any]) -> bool:
    acts = {act["act"] for act in case["expect"]}
    return (
        case["role"] == "athlete" and not acts & {"scored", "corrects"} and len(case["text"]) < _LONGEST_TALK
    )


def _beside(text: str, asides: Sequence[str], chance: random.Random) -> str:
    between, aside = chance.choice((". ", ". ", ", ", "\n", " - ", " ")), chance.choice(asides)
    return f"{text}{between}{aside}" if chance.random() < 0.7 else f"{aside}{between}{text}"


def _beside_another(text: str, other: str, chance: random.Random) -> str:
    """`other` was put right, or is of another day or person."""
    kind = chance.random()
    if kind < 0.4:
        return f"{other}{chance.choice(('. ', chr(10), ', ', ' '))}{chance.choice(AGAIN)}{text}"
    if kind < 0.7:
        return f"{text}{chance.choice(('. ', ', ', ' ('))}{chance.choice(EARLIER)}{other}"
    today = chance.choice(("today ", "now ", "", "this time "))
    return f"{chance.choice(EARLIER)}{other}{chance.choice(('. ', ', '))}{today}{text}"


def rows(found: Sequence[Told] | None = None) -> list[Row]:
    written = told() if found is None else found
    # Of what is put together, only what still can be read so.
    more = [one for one in map(row, mixed(written)) if not one.right[0]]
    return [row(one) for one in written] + more


def learned(found: Sequence[Row], strength: float = STRENGTH) -> dict[str, Any]:
    """The weights of a conditional choice: the right readings of each text together against all of it."""
    from scipy.optimize import minimize  # noqa: PLC0415 - only for training

    names, table, starts, right = _table(found)
    of_row = np.repeat(np.arange(len(found)), [len(one.facts) for one in found])
    weight = np.array([one.weight for one in found])
    turned = table.T.tocsr()

    def loss(speaks: Any) -> tuple[float, Any]:
        odds = table @ speaks
        grown = np.exp(odds - np.maximum.reduceat(odds, starts)[of_row])
        whole, meant = np.add.reduceat(grown, starts), np.add.reduceat(grown * right, starts) + _TINY
        cost = (weight * (np.log(whole) - np.log(meant))).sum() + (speaks**2).sum() / 2 / strength
        off = weight[of_row] * (grown / whole[of_row] - grown * right / meant[of_row])
        return float(cost), turned @ off + speaks / strength

    best = minimize(loss, np.zeros(len(names)), jac=True, method="L-BFGS-B", options={"maxiter": _STEPS}).x
    spoken = {
        name: [(0, round(float(one) * _SCALE))]
        for name, one in zip(names, best, strict=True)
        if abs(one) >= _LEAST
    }
    return document_of(["meant"], [0], _SCALE, spoken)


_TINY: Final = 1e-300


def _table(found: Sequence[Row]) -> tuple[list[str], Any, Any, Any]:
    """Names of facts, a row for each reading that counts them, where each text begins, and which are right."""
    from scipy.sparse import csr_matrix  # noqa: PLC0415 - only for training

    counts: dict[str, int] = {}
    for one in found:
        for fact in {fact for of in one.facts for fact in of}:
            counts[fact] = counts.get(fact, 0) + 1
    place = {fact: at for at, fact in enumerate(sorted(f for f, n in counts.items() if n >= _SEEN_AT_LEAST))}
    columns, ends = [], [0]
    for of in (of for one in found for of in one.facts):
        columns += [place[fact] for fact in of if fact in place]
        ends.append(len(columns))
    table = csr_matrix((np.ones(len(columns)), columns, ends), shape=(len(ends) - 1, len(place)))
    starts = np.cumsum([0, *(len(one.facts) for one in found)])[:-1]
    return list(place), table, starts, np.array([right for one in found for right in one.right], dtype=float)


CODE: Final = (
    numbers,
    said,
    spoken,
    candidates,
    facts,
    of_each,
    of_loads,
    of_minutes,
    of_rounds,
    of_times,
    readings,
)


def digest() -> str:
    """Of everything that the weights depend on, but for the catalogue and how sessions are read."""
    messages = sorted((HERE / "building" / "messages").glob("*.jsonl"))
    code = [Path(str(module.__file__)) for module in CODE]
    code.append(code[0].with_name("wording.toml"))
    files = [
        *sorted(REPLIES.glob("*.jsonl")),
        WAYS,
        TELLINGS,
        BESIDE,
        LIGHTER,
        *messages,
        *code,
        Path(__file__),
    ]
    return hashlib.sha256(b"".join(path.read_bytes() for path in files)).hexdigest()


def taught(found: Iterable[Row] | None = None) -> dict[str, Any]:
    return {"score": learned(list(found) if found is not None else rows())}


def main() -> None:
    write_weights(WEIGHTS, {"digest": digest()} | taught())


if __name__ == "__main__":
    main()
