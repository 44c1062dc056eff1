"""Judges what is read of messages and scores: exact, wrong without asking, asked, unread."""

import json
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path
from time import perf_counter
from typing import Any, TypeVar

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.notation.scores.parts import read_parts
from core.scores.values import ReadScore
from core.sessions.counting import reps_in_all, reps_in_round, times_in
from core.sessions.values import Format, Session
from core.understanding.acts import document
from core.understanding.understand import understand
from core.understanding.values import Context, Message
from tests.corpus.fitting import fits

HERE = Path(__file__).parent
SCORE_FIELDS = frozenset({"rounds", "reps", "seconds", "load_kg"})
T = TypeVar("T")


@dataclass
class Report:
    """Figures of one set of messages; `confusions`: what was expected, and what was read.

    `exact`: as its writer meant it, or as a second reader understood it; `by_first` the former alone. `agreed`: how
    often the two readers are of one mind, of the `twice` that both read: nobody can be asked for more.
    """

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
    by_first: int = 0
    twice: int = 0
    agreed: int = 0

    @property
    def rows(self) -> list[str]:
        """What else is printed of it."""
        return []

    def heard(self, *, first: bool, second: list[bool]) -> None:
        """Whether it is as its writer meant it, and whether as a second reader understood it."""
        self.by_first += first
        self.twice += bool(second)


def cases(paths: Iterable[Path]) -> Iterator[dict[str, Any]]:
    """Every case, with the reading of a second reader (`second`) where there is one."""
    for path in sorted(paths):
        seconds = _second_of(path)
        for case in _lines_of(path):
            yield case | ({"second": seconds[case["id"]]} if case["id"] in seconds else {})


def _second_of(path: Path) -> dict[str, dict[str, Any]]:
    beside = path.parent.parent / "second" / f"{path.parent.name}.jsonl"
    return {one["id"]: one for one in _lines_of(beside)} if beside.exists() else {}


def _lines_of(path: Path) -> Iterator[dict[str, Any]]:
    lines = path.read_text(encoding="utf-8").splitlines()
    yield from (json.loads(line) for line in lines if line.strip())


def readings(case: Mapping[str, Any]) -> tuple[Mapping[str, Any], ...]:
    """What whoever wrote it meant, and how a second careful reader understood it who saw neither that nor ours."""
    return (case, {**case, **case["second"]}) if "second" in case else (case,)


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
    (left, extra), *others = (compared(one, acts) for one in readings(case))
    report.heard(first=not (left or extra), second=[not any(other) for other in others])
    if not all(any(other) for other in others):
        left, extra = [], []
    if "second" in case:
        report.agreed += not any(compared(case, case["second"]["expect"]))
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


def judge_replies(found: Iterable[Mapping[str, Any]]) -> Report:
    """Scores: `wrong` is sure and other than it was meant; `asked` is not sure where nothing need be asked."""
    report = Report()
    for case in found:
        session = read_session(case["session"], catalogue()).session
        if session is None:
            count_in(report, case, "" if _tells_nothing(case) else "session", "unread", [])
            continue
        reads = timed(report, partial(_read_reply, case["text"], session))
        missing = _missing_of_reply(case, reads, session)
        kind = "wrong" if all(one.sure for one in reads) else "asked"
        told = [one.model_dump(mode="json", exclude_defaults=True) for one in reads]
        count_in(report, case, missing, kind if missing else "exact", told)
    return report


def _read_reply(text: str, session: Session) -> tuple[ReadScore, ...]:
    return tuple(one.read for one in read_parts(text, session)) or (read_score(text, session),)


def _missing_of_reply(case: Mapping[str, Any], reads: tuple[ReadScore, ...], session: Session) -> str:
    parts = [one for one in case["expect"].get("parts") or [case["expect"]] if not one.get("none")]
    nothing = case["ask"] or _tells_nothing(case)
    if nothing or not all(one.sure for one in reads):
        claims = [one for one in reads if one.sure and not _is_only_done(one, session)]
        return ("nothing sure" if claims else "") if nothing else "sure"
    if len(parts) != len(reads):
        return "number of parts"
    pairs = zip(parts, reads, strict=True)
    return next((what for pair in pairs if (what := unlike_score(*pair, session))), "")


def _is_only_done(read: ReadScore, session: Session) -> bool:
    """Whether it says no more than that all there was is done: no number that anybody would have to tell."""
    assert read.score is not None
    block = session.blocks[read.block]
    whole = block.format is Format.INTERVALS and read.score.rounds == times_in(block)
    return read.score.value is None or (whole and not read.score.sets)


def _tells_nothing(case: Mapping[str, Any]) -> bool:
    """Whether there is no score in it that could be kept."""
    return not case["expect"] or bool(case["expect"].get("none"))


def unlike_score(expected: Mapping[str, Any], read: ReadScore, session: Session) -> str:
    """The first field of a score that differs, of those that a score can hold."""
    assert read.score is not None
    score = read.score.model_dump(mode="json")
    told = {name: one for name, one in expected.items() if name in SCORE_FIELDS}
    if "load_kg" in told:
        told.pop("reps", None)  # as many as the session says
    whole = reps_in_round(session.blocks[read.block])
    if "rounds" in told and score["capped"] and score["rounds"] is None and whole:
        # whoever is capped is counted in repetitions from the start
        told["reps"] = told.pop("rounds") * whole + told.get("reps", 0)
    if (left := expected.get("reps_left")) is not None:
        told["reps"] = (reps_in_all(session.blocks[read.block]) or 0) - left
    for name in ("splits", "sets"):
        told |= {"sets": [float(one) for one in expected[name]]} if name in expected else {}
    for name in ("calories", "distance_m"):
        told |= {"value": expected[name]} if name in expected else {}
    if score["unit"] == "m" and score["value"]:
        score["value"] = round(score["value"])  # nobody tells less than a metre
        told |= {"value": round(told["value"])} if "value" in told else {}
    flags = {name: bool(expected.get(name)) for name in ("scaled", "capped")}
    flags["capped"] |= bool(expected.get("unfinished")) and score["capped"]
    return next((name for name, one in (told | flags).items() if not fits(one, score[name])), "")


def timed(report: Report, work: Callable[[], T]) -> T:
    began = perf_counter()
    done = work()
    took = perf_counter() - began
    report.seconds += took
    report.longest = max(report.longest, took)
    return done


def count_in(
    report: Report, case: Mapping[str, Any], missing: str, kind: str, found: list[dict[str, Any]]
) -> None:
    report.count += 1
    kind = kind if missing else "exact"
    setattr(report, kind, getattr(report, kind) + 1)
    if missing:
        report.missed.append((case, found, (missing, kind)))
        report.confusions[missing, kind] += 1


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
    if report.twice:
        rows.append(
            f"    as their writers meant them alone {report.by_first / count:.1%}; "
            f"two careful readers agree on {report.agreed / report.twice:.1%}"
        )
    rows += [f"    {row}" for row in report.rows]
    rows += [
        f"    {count:>3}  {one} -> {other}" for (one, other), count in report.confusions.most_common(most)
    ]
    return "\n".join(rows)
