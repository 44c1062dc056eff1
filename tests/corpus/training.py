"""`make train`: what the choice learns from the examples, written to `weights/`. A development tool."""

import gzip
import hashlib
import json
import random
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any, Final

from core.understanding import features as features_module
from core.understanding.choosing import WEIGHTS
from core.understanding.examples import FOLDER as EXAMPLES
from core.understanding.examples import Example, Speaker, examples
from core.understanding.features import features
from core.understanding.lexicon import FOLDER as LEXICON
from core.understanding.lexicon import Lexicon
from core.understanding.marks import mark

SPEAKERS: Final[tuple[Speaker, ...]] = ("athlete", "coach")
QUESTIONS: Final = (
    "equipment", "limits", "weight", "ability", "pain", "effort", "consent", "screening", "score", "zone",
)  # fmt: skip
# How much an example counts where it is moved into another situation than its own.
_ASKED_SOMETHING_ELSE, _NOT_ASKED = 0.5, 0.3
_WORDS_THAT_SAY_IT: Final = 4
_STRENGTH: Final = 6.0
_SCALE: Final = 24
_LEAST: Final = 0.06
_SEEN_AT_LEAST: Final = 2

Row = tuple[tuple[str, ...], str, float]


def rows(found: Sequence[Example], speaker: Speaker, known: Lexicon | None = None) -> Iterator[Row]:
    """Features, act and weight of every example of a speaker, some of them in other situations too."""
    chance = random.Random(7)  # noqa: S311 - no secret
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
    return tuple(dict.fromkeys(found)), example.act, weight


def learned(found: Sequence[Row], strength: float = _STRENGTH) -> dict[str, Any]:
    """The acts, and of each feature what it speaks for: pairs of an act's number and a small whole number."""
    from sklearn.feature_extraction import DictVectorizer  # noqa: PLC0415 - only for training
    from sklearn.linear_model import LogisticRegression  # noqa: PLC0415

    counts: dict[str, int] = {}
    for facts, _, _ in found:
        for fact in facts:
            counts[fact] = counts.get(fact, 0) + 1
    vectorizer = DictVectorizer()
    table = vectorizer.fit_transform(
        [{fact: 1.0 for fact in facts if counts[fact] >= _SEEN_AT_LEAST} for facts, _, _ in found]
    )
    model = LogisticRegression(C=strength / 10, max_iter=400)
    model.fit(table, [act for _, act, _ in found], sample_weight=[weight for _, _, weight in found])
    # Between two acts one row tells of both.
    rows_of, bias = list(model.coef_), list(model.intercept_)
    if len(model.classes_) == len(("one", "other")):
        rows_of, bias = [-rows_of[0], rows_of[0]], [-bias[0], bias[0]]
    pairs = {}
    for at, fact in enumerate(vectorizer.get_feature_names_out()):
        strong = [
            (act, round(float(row[at]) * _SCALE)) for act, row in enumerate(rows_of) if abs(row[at]) >= _LEAST
        ]
        pairs[str(fact)] = [number for pair in strong if pair[1] for number in pair]
    return {
        "acts": [str(one) for one in model.classes_],
        "bias": [round(float(one) * _SCALE) for one in bias],
        "scale": _SCALE,
        "facts": {fact: numbers for fact, numbers in pairs.items() if numbers},
    }


def digest() -> str:
    """Of everything that the weights depend on."""
    files = [
        *sorted(EXAMPLES.glob("*.toml")),
        *sorted(LEXICON.glob("*.toml")),
        Path(features_module.__file__),
    ]
    return hashlib.sha256(b"".join(path.read_bytes() for path in files)).hexdigest()


def main() -> None:
    document = {"digest": digest()} | {
        speaker: learned(list(rows(examples(), speaker))) for speaker in SPEAKERS
    }
    data = json.dumps(document, separators=(",", ":"), sort_keys=True).encode()
    WEIGHTS.write_bytes(gzip.compress(data, mtime=0))


if __name__ == "__main__":
    main()
