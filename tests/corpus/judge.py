"""Judges what is understood of a corpus of messages: exact, wrong without asking, asked, unread."""

import json
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from time import perf_counter
from typing import Any

from core.movements.lookup import catalogue
from core.notation.session import read_session
from core.understanding.acts import document
from core.understanding.understand import understand
from core.understanding.values import Context, Message

HERE = Path(__file__).parent
# Loads and times are told in round numbers.
NEAR = 0.06
MOVEMENTS = frozenset({"movement", "to"})
WORDS = frozenset({"text", "change"})
ENOUGH = 0.7


@dataclass
class Report:
    """Figures of one set of messages; `confusions`: what was expected, and what was read."""

    count: int = 0
    exact: int = 0
    wrong: int = 0
    asked: int = 0
    unread: int = 0
    seconds: float = 0.0
    longest: float = 0.0
    confusions: Counter[tuple[str, str]] = field(default_factory=Counter)
    missed: list[tuple[Mapping[str, Any], list[dict[str, Any]], tuple[str, ...]]] = field(
        default_factory=list
    )


def cases(paths: Iterable[Path]) -> Iterator[dict[str, Any]]:
    for path in sorted(paths):
        for line in path.read_text(encoding="utf-8").splitlines():
            if line.strip():
                yield json.loads(line)


def judge(found: Iterable[Mapping[str, Any]]) -> Report:
    report = Report()
    for case in found:
        _judge_one(case, report)
    return report


def _judge_one(case: Mapping[str, Any], report: Report) -> None:
    session = read_session(case["session"], catalogue()).session if case.get("session") else None
    people = tuple(case["people"]) if case.get("people") else None
    message = Message(text=case["text"], role=case["role"])
    context = Context(question=case.get("question", ""), session=session, people=people)
    began = perf_counter()
    read = understand(message, context)
    took = perf_counter() - began
    acts = [document(act) for act in read.acts]
    report.count += 1
    report.seconds += took
    report.longest = max(report.longest, took)
    left, extra = compared(case, acts)
    read_all = case.get("unread_ok", True) or not read.unread
    if not left and not extra and read_all:
        report.exact += 1
        return
    report.missed.append((case, acts, read.unread))
    if extra:
        report.wrong += 1
    elif read.between:
        report.asked += 1
    else:
        report.unread += 1
    expected = "+".join(sorted(one["act"] for one in left)) or "-"
    report.confusions[expected, "+".join(sorted(one["act"] for one in extra)) or "-"] += 1


def compared(
    case: Mapping[str, Any], acts: list[dict[str, Any]]
) -> tuple[list[Mapping[str, Any]], list[dict[str, Any]]]:
    """What was expected and isn't there, and what is there and wasn't allowed."""
    left, extra = list(case["expect"]), []
    for act in acts:
        fitting = next((one for one in left if fits(one, act)), None)
        if fitting is not None:
            left.remove(fitting)
        elif act["act"] not in case.get("allow", ()):
            extra.append(act)
    return left, extra


def fits(expected: Any, found: Any) -> bool:
    """Whether all that is expected is found; what isn't mentioned isn't checked."""
    if isinstance(expected, dict):
        return isinstance(found, dict) and all(
            name in found and _field_fits(name, one, found[name]) for name, one in expected.items()
        )
    if isinstance(expected, list):
        return _lists_fit(expected, found)
    if isinstance(expected, bool) or not isinstance(expected, int | float):
        return str(expected).lower() == str(found).lower()
    try:
        return abs(float(found) - expected) <= NEAR
    except (TypeError, ValueError):
        return False


def _field_fits(name: str, expected: Any, found: Any) -> bool:
    if name in MOVEMENTS:
        return _is_one_movement(expected, found)
    return _nearly_says(expected, found) if name in WORDS else fits(expected, found)


def _nearly_says(expected: str, found: str) -> bool:
    """Whether most words are the same: where somebody's own words begin and end is a matter of taste."""
    one, other = set(str(expected).lower().split()), set(str(found).lower().split())
    return len(one & other) >= ENOUGH * len(one)


def _is_one_movement(expected: str, found: str) -> bool:
    """Whether two names mean one movement of the catalogue."""
    one, other = catalogue().by_name(expected), catalogue().by_name(found)
    return fits(expected, found) or (
        one is not None and other is not None and one.movement.id == other.movement.id
    )


def _lists_fit(expected: list[Any], found: Any) -> bool:
    if not isinstance(found, list | tuple) or len(expected) != len(found):
        return False
    left = list(found)
    for one in expected:
        fitting = next((other for other in left if fits(one, other)), None)
        if fitting is None:
            return False
        left.remove(fitting)
    return True


def in_words(name: str, report: Report, *, most: int = 12) -> str:
    """The table that `make bench` prints."""
    count = max(report.count, 1)
    shares = (report.exact, report.wrong, report.asked, report.unread)
    told = "  ".join(
        f"{label} {share / count:6.1%}"
        for label, share in zip(("exact", "wrong", "asked", "unread"), shares, strict=True)
    )
    times = f"{1000 * report.seconds / count:.2f} ms a message, longest {1000 * report.longest:.0f} ms"
    rows = [f"{name:<28} {report.count:>5}  {told}  {times}"]
    rows += [
        f"    {count:>3}  {one} -> {other}" for (one, other), count in report.confusions.most_common(most)
    ]
    return "\n".join(rows)
