"""`make train`: what the choice learns from the examples and the building half of the corpus. A development tool."""

import gzip
import hashlib
import json
import random
from collections.abc import Iterable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any, Final, NamedTuple

from core.choosers import Chooser, as_chooser
from core.understanding import clauses, lexicon, marks, quantities, text
from core.understanding import features as features_module
from core.understanding.choosing import WEIGHTS
from core.understanding.clauses import Piece, pieces
from core.understanding.examples import FOLDER as EXAMPLES
from core.understanding.examples import Example, Speaker, examples
from core.understanding.features import features
from core.understanding.lexicon import FOLDER as LEXICON
from core.understanding.lexicon import Lexicon
from core.understanding.marks import Marked, mark
from core.understanding.understand import joining
from tests.corpus.judge import cases

SPEAKERS: Final[tuple[Speaker, ...]] = ("athlete", "coach")
QUESTIONS: Final = (
    "equipment", "limits", "weight", "ability", "pain", "effort", "consent", "screening", "score", "zone",
)  # fmt: skip
BUILDING: Final = Path(__file__).parent / "building" / "messages"
# How much an example counts where it is moved into another situation than its own.
_ASKED_SOMETHING_ELSE, _NOT_ASKED = 0.5, 0.3
_WORDS_THAT_SAY_IT: Final = 4
# Weak, and soon stopped: what it is unsure of it should be unsure of.
STRENGTH: Final = 1.0
_STEPS: Final = 60
_SCALE: Final = 24
_LEAST: Final = 0.11
_SEEN_AT_LEAST: Final = 2
_HARDLY: Final = 0.001


class Row(NamedTuple):
    """What is learned from: a stretch by its features, and the act it is."""

    facts: tuple[str, ...]
    act: str
    weight: float = 1.0


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
        elif len(example.text.split()) >= _WORDS_THAT_SAY_IT:
            yield _row(example, "", _NOT_ASKED, known)


def _row(example: Example, question: str, weight: float, known: Lexicon | None) -> Row:
    marked = mark(example.text, known=known, asks_place=question == "zone")
    found = features(marked, 0, len(marked.words), question, session=example.act == "scored")
    return Row(tuple(dict.fromkeys(found)), example.act, weight)


def told_rows(messages: Iterable[Mapping[str, Any]], speaker: Speaker, first: Chooser) -> Iterator[Row]:
    """The messages of a speaker, parted among the acts that are known to be in them as `first` finds likeliest."""
    for case in messages:
        if case["role"] != speaker:
            continue
        acts = list(dict.fromkeys(one["act"] for one in case["expect"])) or ["small_talk"]
        if not set(acts) <= set(first.acts):
            continue
        question = case.get("question", "")
        people = tuple(case["people"]) if case.get("people") else None
        marked = mark(case["text"], people, asks_place=question == "zone", names_small=speaker == "coach")
        found_pieces = pieces(marked, joining(), boards=speaker == "coach")
        for start, end, act in _parted(marked, found_pieces, acts, question, first):
            found = features(marked, start, end, question, session=bool(case.get("session")))
            yield Row(tuple(dict.fromkeys(found)), act)


def _parted(
    marked: Marked, found: Sequence[Piece], acts: Sequence[str], question: str, first: Chooser
) -> Iterator[tuple[int, int, str]]:
    if len(acts) == 1 or len(found) < len(acts):
        if len(acts) == 1:
            yield 0, len(marked.words), acts[0]
        return
    chances = [first.chances(features(marked, one.start, one.end, question)) for one in found]
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


def learned(found: Sequence[Row], strength: float = STRENGTH) -> dict[str, Any]:
    """The acts, and of each feature what it speaks for: pairs of an act's number and a small whole number."""
    from sklearn.feature_extraction import DictVectorizer  # noqa: PLC0415 - only for training
    from sklearn.linear_model import LogisticRegression  # noqa: PLC0415

    counts: dict[str, int] = {}
    for row in found:
        for fact in row.facts:
            counts[fact] = counts.get(fact, 0) + 1
    vectorizer = DictVectorizer()
    table = vectorizer.fit_transform(
        [{fact: 1.0 for fact in row.facts if counts[fact] >= _SEEN_AT_LEAST} for row in found]
    )
    model = LogisticRegression(C=strength, max_iter=_STEPS, tol=1e-3)
    model.fit(table, [row.act for row in found], sample_weight=[row.weight for row in found])
    # Between two acts one row tells of both.
    speaks, bias = list(model.coef_), list(model.intercept_)
    if len(model.classes_) == len(("one", "other")):
        speaks, bias = [-speaks[0], speaks[0]], [-bias[0], bias[0]]
    pairs = {}
    for at, fact in enumerate(vectorizer.get_feature_names_out()):
        strong = [
            (act, round(float(one[at]) * _SCALE)) for act, one in enumerate(speaks) if abs(one[at]) >= _LEAST
        ]
        pairs[str(fact)] = [number for pair in strong if pair[1] for number in pair]
    return {
        "acts": [str(one) for one in model.classes_],
        "bias": [round(float(one) * _SCALE) for one in bias],
        "scale": _SCALE,
        "facts": {fact: numbers for fact, numbers in pairs.items() if numbers},
    }


def taught(speaker: Speaker, messages: Sequence[Mapping[str, Any]]) -> dict[str, Any]:
    """First of the examples alone; then of them and of the messages as that understanding parts them."""
    own = list(rows(examples(), speaker))
    first = as_chooser(learned(own))
    return learned([*own, *told_rows(messages, speaker, first)])


def digest() -> str:
    """Of everything that the weights depend on."""
    files = [
        *sorted(EXAMPLES.glob("*.toml")),
        *sorted(LEXICON.glob("*.toml")),
        *sorted(BUILDING.glob("*.jsonl")),
        *(Path(str(one.__file__)) for one in (clauses, features_module, lexicon, marks, quantities, text)),
        Path(__file__),
    ]
    return hashlib.sha256(b"".join(path.read_bytes() for path in files)).hexdigest()


def main() -> None:
    messages = list(cases(BUILDING.glob("*.jsonl")))
    document = {"digest": digest()} | {speaker: taught(speaker, messages) for speaker in SPEAKERS}
    data = json.dumps(document, separators=(",", ":"), sort_keys=True).encode()
    WEIGHTS.write_bytes(gzip.compress(data, mtime=0))


if __name__ == "__main__":
    main()
