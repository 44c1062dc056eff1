"""`make train`: what the choice learns from the examples and the building half of the corpus. A development tool."""

import hashlib
import random
from collections.abc import Iterable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any, Final

from core.choosers import write_weights
from core.understanding import clauses, lexicon, marks, quantities, text
from core.understanding import features as features_module
from core.understanding.choosing import WEIGHTS, Ear, as_ear
from core.understanding.clauses import Piece, pieces
from core.understanding.examples import FOLDER as EXAMPLES
from core.understanding.examples import NOTHING, Example, Speaker, examples
from core.understanding.features import WHOLE, features
from core.understanding.lexicon import FOLDER as LEXICON
from core.understanding.lexicon import Lexicon
from core.understanding.marks import Marked, mark
from core.understanding.understand import joining
from tests.corpus import learning
from tests.corpus.judge import cases
from tests.corpus.learning import Row, Whole, learned, learned_each

SPEAKERS: Final[tuple[Speaker, ...]] = ("athlete", "coach")
QUESTIONS: Final = (
    "equipment", "limits", "weight", "ability", "pain", "effort", "consent", "screening", "score", "zone",
)  # fmt: skip
BUILDING: Final = Path(__file__).parent / "building" / "messages"
# How much an example counts where it is moved into another situation than its own.
_ASKED_SOMETHING_ELSE, _NOT_ASKED = 0.5, 0.3
_WORDS_THAT_SAY_IT: Final = 4
# How many pairs of examples are told in one breath, for each example that stands alone, and what one counts.
_PAIRS: Final = 0.6
_OF_A_PAIR: Final = 0.6
_OF_SEVERAL: Final = 1.5
_BETWEEN: Final = (", ", ". ", " ", "! ", "; ")
_IN_A_SESSION: Final = 0.3
_HARDLY: Final = 0.001


def rows(found: Sequence[Example], speaker: Speaker, known: Lexicon | None = None) -> Iterator[Row]:
    """Every example of a speaker, some of them in other situations too."""
    chance = random.Random(7)
    for example in found:
        if example.speaker not in {None, speaker}:
            continue
        yield _row(example, example.question, 1.0, known)
        if speaker == "coach":
            continue
        if not example.question:
            yield _row(example, chance.choice(QUESTIONS), _ASKED_SOMETHING_ELSE, known)
        elif _says_it_alone(example):
            yield _row(example, "", _NOT_ASKED, known)


def _row(example: Example, question: str, weight: float, known: Lexicon | None) -> Row:
    marked = mark(example.text, known=known, asks_place=question == "zone")
    inside = [
        at
        for at, token in enumerate(marked.text.tokens)
        if example.start <= token.start and (example.end is None or token.end <= example.end)
    ]
    found = features(marked, inside[0], inside[-1] + 1, question, session=example.act == "scored")
    return Row(tuple(dict.fromkeys(found)), example.act, weight)


def wholes(found: Sequence[Example], speaker: Speaker, known: Lexicon | None = None) -> Iterator[Whole]:
    """Every example of a speaker with all that it tells, in other situations too, and pairs of them in one breath."""
    chance = random.Random(5)
    own = [one for one in found if one.speaker in {None, speaker}]
    alone = [one for one in own if one.end is None]

    def whole(text: str, question: str, acts: Iterable[str], weight: float) -> Whole:
        session = chance.random() < _IN_A_SESSION
        marked = mark(text, known=known, asks_place=question == "zone", names_small=speaker == "coach")
        return Whole(_facts_of_all(marked, question, session=session), frozenset(acts) - {NOTHING}, weight)

    for one in alone:
        yield whole(one.text, one.question, [one.act], 1.0)
        if speaker == "athlete" and not one.question:
            yield whole(one.text, chance.choice(QUESTIONS), [one.act], _ASKED_SOMETHING_ELSE)
        elif speaker == "athlete" and _says_it_alone(one):
            yield whole(one.text, "", [one.act], _NOT_ASKED)
    for said, asked in dict.fromkeys((one.text, one.question) for one in own if one.end is not None):
        acts = [one.act for one in own if (one.text, one.question) == (said, asked)]
        yield whole(said, asked, acts, _OF_SEVERAL)
    for _ in range(round(_PAIRS * len(alone))):
        one, other = chance.choice(alone), chance.choice(alone)
        fitting = other.question in {"", one.question} or _says_it_alone(other)
        if fitting and one.language == other.language:
            both = one.text.rstrip(".") + chance.choice(_BETWEEN) + other.text
            yield whole(both, one.question, [one.act, other.act], _OF_A_PAIR)


def told_wholes(messages: Iterable[Mapping[str, Any]], speaker: Speaker) -> Iterator[Whole]:
    for case in messages:
        if case["role"] == speaker:
            facts = _facts_of_all(_marked(case), case.get("question", ""), session=bool(case.get("session")))
            yield Whole(facts, frozenset(one["act"] for one in case["expect"]) - {NOTHING})


def _facts_of_all(marked: Marked, question: str, *, session: bool) -> tuple[str, ...]:
    """Of a text that may tell several things; that it is all of a message says nothing then."""
    found = features(marked, 0, len(marked.words), question, session=session)
    return tuple(fact for fact in dict.fromkeys(found) if fact != WHOLE)


def _marked(case: Mapping[str, Any]) -> Marked:
    people = tuple(case["people"]) if case.get("people") else None
    asks_place, small = case.get("question") == "zone", case["role"] == "coach"
    return mark(case["text"], people, asks_place=asks_place, names_small=small)


def _says_it_alone(example: Example) -> bool:
    """Whether it says enough to be understood without its question."""
    return len(example.text.split()) >= _WORDS_THAT_SAY_IT


def told_rows(messages: Iterable[Mapping[str, Any]], speaker: Speaker, first: Ear) -> Iterator[Row]:
    """The messages of a speaker, parted among the acts that are known to be in them as `first` finds likeliest."""
    for case in messages:
        if case["role"] != speaker:
            continue
        acts = list(dict.fromkeys(one["act"] for one in case["expect"])) or [NOTHING]
        if not set(acts) <= set(first.one.names):
            continue
        question = case.get("question", "")
        marked = _marked(case)
        found_pieces = pieces(marked, joining(), boards=speaker == "coach")
        for start, end, act in _parted(marked, found_pieces, acts, question, first):
            found = features(marked, start, end, question, session=bool(case.get("session")))
            yield Row(tuple(dict.fromkeys(found)), act)


def _parted(
    marked: Marked, found: Sequence[Piece], acts: Sequence[str], question: str, first: Ear
) -> Iterator[tuple[int, int, str]]:
    if len(acts) == 1 or len(found) < len(acts):
        if len(acts) == 1:
            yield 0, len(marked.words), acts[0]
        return
    chances = [first.hear(features(marked, one.start, one.end, question)).chances for one in found]
    likeliest = _likeliest(chances, acts)
    if likeliest:
        yield from _joined(found, likeliest)


def _likeliest(chances: Sequence[Mapping[str, float]], acts: Sequence[str]) -> list[str]:
    """An act for each piece, so that every act has one at least."""
    best: dict[frozenset[str], tuple[float, list[str]]] = {frozenset(): (1.0, [])}
    for one in chances:
        grown: dict[frozenset[str], tuple[float, list[str]]] = {}
        for had, (so_far, chosen) in best.items():
            for act in acts:
                value = so_far * max(one.get(act, 0.0), _HARDLY)
                key = had | {act}
                if value > grown.get(key, (0.0, []))[0]:
                    grown[key] = (value, [*chosen, act])
        best = grown
    return best.get(frozenset(acts), (0.0, []))[1]


def _joined(found: Sequence[Piece], chosen: Sequence[str]) -> Iterator[tuple[int, int, str]]:
    start = 0
    for at in range(1, len(found) + 1):
        if at == len(found) or chosen[at] != chosen[start]:
            yield found[start].start, found[at - 1].end, chosen[start]
            start = at


def taught(speaker: Speaker, messages: Sequence[Mapping[str, Any]]) -> dict[str, Any]:
    """First of the examples alone; then of them and of the messages as that understanding parts them."""
    own, own_wholes = list(rows(examples(), speaker)), list(wholes(examples(), speaker))
    first = as_ear({"one": learned(own), "each": learned_each(own_wholes)})
    return {
        "one": learned([*own, *told_rows(messages, speaker, first)]),
        "each": learned_each([*own_wholes, *told_wholes(messages, speaker)]),
    }


def digest() -> str:
    """Of everything that the weights depend on."""
    files = [
        *sorted(EXAMPLES.glob("*/*.toml")),
        *sorted(LEXICON.glob("*.toml")),
        *sorted(BUILDING.glob("*.jsonl")),
        *(Path(str(one.__file__)) for one in (clauses, features_module, lexicon, marks, quantities, text)),
        Path(__file__),
        Path(learning.__file__),
    ]
    return hashlib.sha256(b"".join(path.read_bytes() for path in files)).hexdigest()


def main() -> None:
    messages = list(cases(BUILDING.glob("*.jsonl")))
    document = {"digest": digest()} | {speaker: taught(speaker, messages) for speaker in SPEAKERS}
    write_weights(WEIGHTS, document)


if __name__ == "__main__":
    main()
