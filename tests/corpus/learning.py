"""What is learned of rows: which act a stretch is, and of each act whether a text tells it at all."""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Final, NamedTuple

import numpy as np

from core.choosers import document_of

# Weak, and soon stopped: what it is unsure of it should be unsure of.
STRENGTH: Final = 1.0
_STEPS: Final = 60
_SCALE: Final = 24
_LEAST: Final = 0.11
_SEEN_AT_LEAST: Final = 2
# Before anything is known, an act is seldom told.
_SELDOM: Final = -4.0
_REMEMBERED: Final = 6


class Row(NamedTuple):
    """A stretch by its features, and the act it is."""

    facts: tuple[str, ...]
    act: str
    weight: float = 1.0


class Whole(NamedTuple):
    """A text by its features, and all acts that it tells; none where it tells nothing."""

    facts: tuple[str, ...]
    acts: frozenset[str]
    weight: float = 1.0


def learned(rows: Sequence[Row], strength: float = STRENGTH) -> dict[str, Any]:
    """Which one a row is, as a document for `as_chooser`."""
    from sklearn.linear_model import LogisticRegression  # noqa: PLC0415 - only for training

    facts, table = _table([row.facts for row in rows])
    model = LogisticRegression(C=strength, max_iter=_STEPS, tol=1e-3)
    model.fit(table, [row.act for row in rows], sample_weight=[row.weight for row in rows])
    speaks, bias = model.coef_, model.intercept_
    # Between two acts one row tells of both.
    if len(model.classes_) == len(("one", "other")):
        speaks, bias = np.stack([-speaks[0], speaks[0]]), np.array([-bias[0], bias[0]])
    return _document([str(one) for one in model.classes_], bias, facts, speaks)


def learned_each(wholes: Sequence[Whole]) -> dict[str, Any]:
    """Of each act whether it is told: a logistic regression for each, all fitted at once; a document as well."""
    from scipy.optimize import minimize  # noqa: PLC0415 - only for training

    facts, table = _table([one.facts for one in wholes])
    acts = sorted({act for one in wholes for act in one.acts})
    told = np.array([[act in one.acts for act in acts] for one in wholes], dtype=np.float32)
    weight = np.array([[one.weight] for one in wholes], dtype=np.float32)
    turned, size = table.T.tocsr(), (len(facts), len(acts))
    many = size[0] * size[1]

    def loss(found: Any) -> tuple[float, Any]:
        speaks, bias = found[:many].reshape(size).astype(np.float32), found[many:].astype(np.float32)
        odds = table @ speaks + bias
        off = weight * (1 / (1 + np.exp(-odds)) - told)
        cost = (weight * (np.logaddexp(0, odds) - told * odds)).sum() + (speaks**2).sum() / 2 / STRENGTH
        slope = np.concatenate([(turned @ off + speaks / STRENGTH).ravel(), off.sum(0)])
        return float(cost), slope.astype(np.float64)

    start = np.concatenate([np.zeros(many), np.full(len(acts), _SELDOM)])
    options = {"maxiter": _STEPS, "maxcor": _REMEMBERED}
    best = minimize(loss, start, jac=True, method="L-BFGS-B", options=options).x
    return _document(acts, best[many:], facts, best[:many].reshape(size).T)


def _document(names: Sequence[str], bias: Any, facts: Sequence[str], speaks: Any) -> dict[str, Any]:
    """`speaks[name][fact]`; what hardly says anything is left out."""
    spoken = {
        fact: [
            (int(name), round(float(speaks[name, at]) * _SCALE))
            for name in np.flatnonzero(np.abs(speaks[:, at]) >= _LEAST)
        ]
        for at, fact in enumerate(facts)
    }
    said = {fact: pairs for fact, pairs in spoken.items() if pairs}
    return document_of(names, [round(float(one) * _SCALE) for one in bias], _SCALE, said)


def _table(told: Sequence[Iterable[str]]) -> tuple[list[str], Any]:
    """The facts that are seen often enough, and a sparse row of ones for each text."""
    from scipy.sparse import csr_matrix  # noqa: PLC0415 - only for training

    counts = Counter(fact for facts in told for fact in facts)
    place: Mapping[str, int] = {
        fact: at for at, fact in enumerate(sorted(one for one, n in counts.items() if n >= _SEEN_AT_LEAST))
    }
    rows = [[place[fact] for fact in facts if fact in place] for facts in told]
    columns = [at for row in rows for at in row]
    ends = np.cumsum([0, *map(len, rows)])
    ones = np.ones(len(columns), dtype=np.float32)
    return list(place), csr_matrix((ones, columns, ends), shape=(len(rows), len(place)))
