"""Judges what is read of boards: whole boards, and how far their parts and lines are right."""

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from functools import partial
from typing import Any

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from tests.corpus.fitting import field_fits
from tests.corpus.judge import Report, count_in, readings, timed
from tests.corpus.parts import missing_of_board, parts_of, parts_read, told_together, unlike_fields

Part = Mapping[str, Any]
HEADER = ("format", "minutes", "rounds", "scheme", "work_s", "rest_s", "cap_s", "every_s")
LINES = ("buy_in", "lines", "cash_out")
# What a miss is put down to, by the field that differs first.
CAUSES = {
    "kind": "kind",
    "movement": "movement",
    "rest_s": "rest",
    **dict.fromkeys(("amount", "amount_to", "unit"), "amount or unit"),
    **dict.fromkeys(("loads_kg", "load_rule", "count"), "load"),
    **dict.fromkeys(("side", "per_side", "tempo", "notes", "station"), "side, tempo, notes"),
}


@dataclass
class BoardReport(Report):
    """`parted`: boards with as many parts as were meant. Of all parts and lines that were meant: those right in
    their `headers` and in all of their `lines`, each of how many; `superfluous` lines were read and not meant.
    `causes`: one for each board that isn't exact.
    """

    parted: int = 0
    headers: Counter[bool] = field(default_factory=Counter)
    lines: Counter[bool] = field(default_factory=Counter)
    superfluous: int = 0
    causes: Counter[str] = field(default_factory=Counter)

    @property
    def rows(self) -> list[str]:
        told = (
            ("as many parts as meant", self.parted, self.count),
            ("headers right", self.headers[True], self.headers.total()),
            ("lines right", self.lines[True], self.lines.total()),
            ("superfluous lines", self.superfluous, self.lines.total()),
        )
        shares = "  ".join(f"{name} {one / max(all_, 1):.1%}" for name, one, all_ in told)
        return [shares, "  ".join(f"{name} {count}" for name, count in self.causes.most_common())]


def judge_sessions(found: Iterable[Mapping[str, Any]]) -> BoardReport:
    """Boards: `wrong` is other than it was meant with nothing named as unread; `asked` is with something."""
    report = BoardReport()
    for case in found:
        _judge_one(case, report)
    return report


def _judge_one(case: Mapping[str, Any], report: BoardReport) -> None:
    read = timed(report, partial(read_session, case["text"], catalogue()))
    blocks = read.session.model_dump(mode="json")["blocks"] if read.session else []
    parts = parts_read(blocks)
    meant = [parts_of(one["expect"]) for one in readings(case)]
    missing = [missing_of_board(one, parts) for one in meant]
    report.heard(first=not missing[0], second=[not one for one in missing[1:]])
    between = missing_of_board(meant[0], parts_read(meant[1])) if len(meant) > 1 else ""
    report.agreed += len(meant) > 1 and not between
    _compare(min(meant, key=lambda one: bool(missing_of_board(one, parts))), parts, report)
    missed = missing[0] if all(missing) else ""
    if missed:
        report.causes[_cause(missed, meant[0], parts) if missed != between else "label doubtful"] += 1
    kind = "asked" if blocks and read.not_understood else "wrong" if blocks else "unread"
    count_in(report, case, missed, kind, blocks)


def _compare(meant: list[Part], parts: list[Part], report: BoardReport) -> None:
    """Counts the headers and lines that are right."""
    report.parted += len(meant) == len(parts)
    pairs = _paired(meant, parts, _likeness)
    for told, read in pairs:
        if told is None:
            report.superfluous += len(_lines(read or {}))
            continue
        same = told_together(told, read or {})
        report.headers[not set(unlike_fields(_header(told), _header(same)))] += 1
        lines = _paired(_lines(told), _lines(same), _likeness_of_lines)
        report.superfluous += sum(line is None for line, _ in lines)
        for line, other in lines:
            if line is not None:
                report.lines[other is not None and not set(unlike_fields(line, other))] += 1


def _header(part: Part) -> Part:
    return {name: part[name] for name in HEADER if name in part}


def _lines(part: Part) -> list[Part]:
    return [line for name in LINES for line in part.get(name) or ()]


def _likeness(told: Part, read: Part) -> float:
    """How much of a part another one has; never nothing, so that parts without lines meet too."""
    pairs = _paired(_lines(told), _lines(read), _likeness_of_lines)
    both = sum(line is not None and other is not None for line, other in pairs)
    return both + 0.1 * (told.get("format") == read.get("format")) + 0.01


def _likeness_of_lines(told: Part, read: Part) -> float:
    if not field_fits("movement", told.get("movement") or "", read.get("movement") or ""):
        return 0.0
    return 1.0 + 0.1 * (not set(unlike_fields(told, read)))


def _paired(
    meant: list[Part], read: list[Part], likeness: Callable[[Part, Part], float]
) -> list[tuple[Part | None, Part | None]]:
    """Both lists side by side in their order, so that what stands beside each other is most alike."""
    best: dict[tuple[int, int], tuple[float, list[tuple[Part | None, Part | None]]]] = {(0, 0): (0.0, [])}
    for at, to in ((at, to) for at in range(len(meant) + 1) for to in range(len(read) + 1)):
        ways = [best[at, to]] if (at, to) in best else []
        if at:
            score, pairs = best[at - 1, to]
            ways.append((score, [*pairs, (meant[at - 1], None)]))
        if to:
            score, pairs = best[at, to - 1]
            ways.append((score, [*pairs, (None, read[to - 1])]))
        if at and to and (alike := likeness(meant[at - 1], read[to - 1])):
            score, pairs = best[at - 1, to - 1]
            ways.append((score + alike, [*pairs, (meant[at - 1], read[to - 1])]))
        best[at, to] = max(ways, key=lambda way: way[0])
    return best[len(meant), len(read)][1]


def _cause(missing: str, meant: list[Part], parts: list[Part]) -> str:
    """What the first difference comes from: parts that are parted otherwise have the same lines."""
    if missing.startswith("number"):
        told, read = ([line for part in some for line in _lines(part)] for some in (meant, parts))
        pairs = _paired(told, read, _likeness_of_lines)
        if any(other is None for _, other in pairs):
            return "movement"
        return "superfluous line" if any(line is None for line, _ in pairs) else "parting"
    return CAUSES.get(missing, "header")
