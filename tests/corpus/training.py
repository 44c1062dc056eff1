"""`make train`: what the choice learns from the examples and the building half of the corpus. A development tool."""

import hashlib
import random
from collections.abc import Iterable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any, Final

from core.choosers import Chooser, as_chooser, write_weights
from core.understanding import clauses, lexicon, marks, parting, quantities, text
from core.understanding import features as features_module
from core.understanding.choosing import WEIGHTS, Ear, as_ear
from core.understanding.clauses import Piece, pieces
from core.understanding.examples import FOLDER as EXAMPLES
from core.understanding.examples import NOTHING, Example, Speaker, examples
from core.understanding.features import WHOLE, features
from core.understanding.lexicon import FOLDER as LEXICON
from core.understanding.lexicon import Lexicon
from core.understanding.marks import Marked, mark
from core.understanding.parting import BEGINS, facts_of_places, odds_of_places
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
# What the places of an example count that tells one thing.
_WITHOUT_PARTS: Final = 0.5


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


def places(found: Sequence[Example], known: Lexicon | None = None) -> Iterator[Whole]:
    """Each place of the examples where a telling might begin, and whether one does."""
    told = dict.fromkeys((one.text, one.question, one.speaker) for one in found)
    starts: dict[tuple[str, str, Speaker | None], list[int]] = {one: [] for one in told}
    for one in found:
        starts[one.text, one.question, one.speaker].append(one.start)
    for (said, question, speaker), begun in starts.items():
        marked = mark(said, known=known, asks_place=question == "zone", names_small=speaker == "coach")
        weight = 1.0 if max(begun) else _WITHOUT_PARTS
        firsts = {
            next((at for at, one in enumerate(marked.text.tokens) if one.start >= start), 0)
            for start in begun
        }
        for at, facts in facts_of_places(marked).items():
            yield Whole(tuple(dict.fromkeys(facts)), frozenset({BEGINS} if at in firsts else ()), weight)


def told_rows(
    messages: Iterable[Mapping[str, Any]], speaker: Speaker, first: Ear, begins: Chooser
) -> Iterator[Row]:
    """The messages of a speaker, parted among the acts that are known to be in them as `first` finds likeliest."""
    for case in messages:
        if case["role"] != speaker:
            continue
        acts = list(dict.fromkeys(one["act"] for one in case["expect"])) or [NOTHING]
        if not set(acts) <= set(first.one.names):
            continue
        question = case.get("question", "")
        marked = _marked(case)
        found_pieces = pieces(marked, odds_of_places(marked, begins), boards=speaker == "coach")
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


def taught(speaker: Speaker, messages: Sequence[Mapping[str, Any]], begins: Chooser) -> dict[str, Any]:
    """First of the examples alone; then of them and of the messages as that understanding parts them."""
    own, own_wholes = list(rows(examples(), speaker)), list(wholes(examples(), speaker))
    first = as_ear({"one": learned(own), "each": learned_each(own_wholes)})
    return {
        "one": learned([*own, *told_rows(messages, speaker, first, begins)]),
        "each": learned_each([*own_wholes, *told_wholes(messages, speaker)]),
    }


def digest() -> str:
    """Of everything that the weights depend on."""
    files = [
        *sorted(EXAMPLES.glob("*/*.toml")),
        *sorted(LEXICON.glob("*.toml")),
        *sorted(BUILDING.glob("*.jsonl")),
        *(
            Path(str(one.__file__))
            for one in (clauses, features_module, lexicon, marks, parting, quantities, text)
        ),
        Path(__file__),
        Path(learning.__file__),
    ]
    return hashlib.sha256(b"".join(path.read_bytes() for path in files)).hexdigest()


def main() -> None:
    messages = list(cases(BUILDING.glob("*.jsonl")))
    begun = learned_each(list(places(examples())))
    taught_each = {speaker: taught(speaker, messages, as_chooser(begun)) for speaker in SPEAKERS}
    document = {"digest": digest(), BEGINS: begun} | taught_each
    write_weights(WEIGHTS, document)


if __name__ == "__main__":
    main()
