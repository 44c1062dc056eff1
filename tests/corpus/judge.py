"""Judges what is read of messages, boards and scores: exact, wrong without asking, asked, unread."""

import json
import re
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path
from time import perf_counter
from typing import Any, TypeVar

from core.movements.lookup import catalogue
from core.notation.scores import read_score
from core.notation.scores.parts import read_parts
from core.notation.session import read_session
from core.scores.values import ReadScore
from core.sessions.counting import reps_in_all, reps_in_round, times_in
from core.sessions.values import Format, Session
from core.understanding.acts import document
from core.understanding.understand import understand
from core.understanding.values import Context, Message

HERE = Path(__file__).parent
# Loads and times are told in round numbers.
NEAR = 0.06
MOVEMENTS = frozenset({"movement", "to"})
WORDS = frozenset({"text", "change"})
# What isn't printed, since it goes without saying.
UNSAID = {"each": 1}
ENOUGH = 0.7
# What a text doesn't tell must not be read into it either.
NEVER_ADDED = ("scheme", "cap_s", "buy_in", "cash_out", "loads_kg", "load_rule")
LINES = frozenset({"lines", "buy_in", "cash_out"})
# The interface names no kinds and not all formats; these are what the strangers called them.
KINDS = {"warm_up": "warm-up", "cool_down": "cool-down", "conditioning": "main", "accessory": None}
FORMATS = {"emom": "intervals", "rounds": "quality"}
WITHOUT_A_BREAK = frozenset({"amrap", "max_reps", "hold"})
# The most weights that one line tells: of a pair, the first and the second.
PAIR = 2
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


def fits(expected: Any, found: Any) -> bool:
    """Whether all that is expected is found; what isn't mentioned isn't checked."""
    if isinstance(expected, dict):
        return isinstance(found, dict) and all(
            name in {*found, *UNSAID} and _field_fits(name, one, found.get(name, UNSAID.get(name)))
            for name, one in expected.items()
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
    if name == "implement":
        return _is_one_thing(expected, found)
    return _nearly_says(expected, found) if name in WORDS else fits(expected, found)


def _nearly_says(expected: str, found: str) -> bool:
    """Whether most words are the same: where somebody's own words begin and end is a matter of taste."""
    one, other = (set(re.findall(r"[\w'-]+", str(said).lower())) for said in (expected, found))
    return len(one & other) >= ENOUGH * len(one)


def _is_one_movement(expected: str, found: str) -> bool:
    """Whether two names mean one movement of the catalogue."""
    one, other = catalogue().by_name(expected), catalogue().by_name(found)
    return fits(expected, found) or (
        one is not None and other is not None and one.movement.id == other.movement.id
    )


def _is_one_thing(expected: str, found: str) -> bool:
    """Whether two names mean one thing of the catalogue."""
    one, other = catalogue().implement_by_name(expected), catalogue().implement_by_name(found)
    return fits(expected, found) or (one is not None and one == other)


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


def judge_sessions(found: Iterable[Mapping[str, Any]]) -> Report:
    """Boards: `wrong` is other than it was meant with nothing named as unread; `asked` is with something."""
    report = Report()
    for case in found:
        read = _timed(report, partial(read_session, case["text"], catalogue()))
        blocks = read.session.model_dump(mode="json")["blocks"] if read.session else []
        missing, *others = (_missing_of_board(one["expect"], blocks) for one in readings(case))
        report.heard(first=not missing, second=[not other for other in others])
        missing = missing if all(others) else ""
        if "second" in case:
            report.agreed += not _missing_of_board(case["expect"], case["second"]["expect"].get("blocks", []))
        kind = "asked" if blocks and read.not_understood else "wrong" if blocks else "unread"
        _count(report, case, missing, kind, blocks)
    return report


def _missing_of_board(expected: Mapping[str, Any], blocks: list[dict[str, Any]]) -> str:
    """The first thing that isn't as it was meant; empty if all is."""
    parts = [*expected.get("blocks", ()), *(one for day in expected.get("days", ()) for one in day["blocks"])]
    told, found = _told_once(parts), _told_once(blocks)
    if len(told) > len(found):
        # A part that names nothing to do is no part of a session: its words stand as unread at their place.
        told = [one for one in told if one.get("lines")]
    if len(told) != len(found):
        return "number of blocks"
    alike = [
        (_one_spelling(one), _told_in_full(_one_spelling(read)))
        for one, read in zip(told, found, strict=True)
    ]
    return next((what for one, read in alike if (what := _unlike(one, _told_together(one, read)))), "")


def _one_spelling(block: Mapping[str, Any]) -> Mapping[str, Any]:
    """The same part told in one way, where the interface leaves several and the strangers chose their own words."""
    block = {**block, "kind": KINDS.get(block.get("kind") or "", block.get("kind"))}
    block["format"] = FORMATS.get(block.get("format") or "", block.get("format"))
    lines = block.get("lines") or []
    # As much as can be of one thing in so many minutes is max_reps however it is called.
    if block["format"] == "amrap" and len(lines) == 1 and not (lines[0].get("amount") or block.get("scheme")):
        block["format"] = "max_reps"
    # What is held for so long so often are sets of a hold.
    if (
        block["format"] == "sets"
        and lines
        and all(one.get("unit") == "s" and one.get("amount") for one in lines)
    ):
        block["format"] = "hold"
    if block["format"] == "intervals" and block.get("every_s") and block.get("rounds"):
        block.pop("minutes", None)  # told twice
    block = _set_by_set(_by_the_clock(block))
    # What is done once through has no buy-in or cash-out.
    if block["format"] == "for_time" and not (block.get("rounds") or block.get("scheme")):
        around = [line for name in ("buy_in", "lines", "cash_out") for line in block.get(name) or ()]
        block |= {"buy_in": [], "lines": around, "cash_out": []}
    # The time there is to find the heaviest weight is its minutes, and heavy it is in any case.
    if block["format"] == "max_load":
        block["lines"] = [{**line, "load_rule": None} for line in lines]
        block |= {"minutes": block["cap_s"] / 60, "cap_s": None} if block.get("cap_s") else {}
    return {name: one for name, one in block.items() if one is not None or name not in ("kind", "format")}


def _by_the_clock(block: dict[str, Any]) -> dict[str, Any]:
    """What goes on without a break is told as minutes or as work; sets that begin by the clock are intervals."""
    work = (block.get("work_s") or 0) / 60
    if block["format"] in WITHOUT_A_BREAK and work and (block.get("minutes") or work) == work:
        return {**block, "minutes": work, "work_s": None}
    on_the_clock = block["format"] == "sets" and block.get("every_s")
    return {**block, "format": "intervals"} if on_the_clock else block


def _set_by_set(block: dict[str, Any]) -> dict[str, Any]:
    """Sets of one thing, each with its own amount or weight, as a line each; how many there are goes without saying."""
    lines = block.get("lines") or []
    if block["format"] != "sets" or not lines:
        return block
    loads = lines[0].get("loads_kg") or []
    if len(lines) == 1 and len(loads) > PAIR:
        scheme = block.get("scheme") or [lines[0].get("amount")] * len(loads)
        lines = [
            {**lines[0], "amount": amount, "loads_kg": [load]}
            for amount, load in zip(scheme, loads, strict=False)
        ]
        block = {**block, "lines": lines, "scheme": None}
    one = len({line.get("movement") for line in lines}) == 1
    counted = one and len(lines) > 1 and block.get("rounds") == len(lines)
    return {**block, "rounds": None} if counted else block


def _told_in_full(block: Mapping[str, Any]) -> Mapping[str, Any]:
    """How often and how long an interval goes tell each other."""
    every_s, rounds, minutes = (block.get(name) for name in ("every_s", "rounds", "minutes"))
    if block.get("format") != "intervals" or not every_s:
        return block
    often = {"rounds": rounds or (minutes and minutes * 60 / every_s)}
    return {**block, **often, "minutes": minutes or (rounds and rounds * every_s / 60)}


def _told_once(blocks: Iterable[Mapping[str, Any]]) -> list[Mapping[str, Any]]:
    """Equal amraps one after the other are one that is done so often, as some write it."""
    told: list[Mapping[str, Any]] = []
    for block in blocks:
        last = told[-1] if told else None
        if last and block.get("format") == "amrap" and _is_again(last, block):
            told[-1] = {**last, "rounds": (last.get("rounds") or 1) + 1}
        else:
            told.append(block)
    return told


def _is_again(one: Mapping[str, Any], other: Mapping[str, Any]) -> bool:
    return all(one.get(name) == other.get(name) for name in ("format", "minutes", "lines"))


def _told_together(expected: Mapping[str, Any], found: Mapping[str, Any]) -> Mapping[str, Any]:
    """Sets of one thing that are read line by line, as one line where they are meant as one."""
    told, read = expected.get("lines") or [], found.get("lines") or []
    alike = len({(line.get("movement"), line.get("amount")) for line in read}) == 1
    if len(told) != 1 or len(read) != expected.get("rounds") or not alike or found.get("rounds"):
        return found
    kept = {name: told[0].get(name) for name in ("loads_kg", "load_rule")}
    return {**found, "rounds": len(read), "lines": [{**read[0], **kept}]}


def _unlike(expected: Mapping[str, Any], found: Mapping[str, Any]) -> str:
    for name in {**expected, **dict.fromkeys(NEVER_ADDED)}:
        told, read = expected.get(name), found.get(name)
        if name not in LINES:
            if not _says_the_same(name, told, read):
                return name
        elif len(told or ()) != len(read or ()):
            return f"number of {name}"
        elif what := next(
            (one for pair in zip(told or (), read or (), strict=True) if (one := _unlike(*pair))), ""
        ):
            return what
    return ""


def _says_the_same(name: str, told: Any, read: Any) -> bool:
    if not told or not read:
        return not told and not read
    if name == "load_rule":
        return any(
            fits(one, read.get(rule)) or rule == "heavy" for rule, one in told.items() if read.get(rule)
        )
    return _field_fits(name, told, read)


def judge_replies(found: Iterable[Mapping[str, Any]]) -> Report:
    """Scores: `wrong` is sure and other than it was meant; `asked` is not sure where nothing need be asked."""
    report = Report()
    for case in found:
        session = read_session(case["session"], catalogue()).session
        if session is None:
            _count(report, case, "" if _tells_nothing(case) else "session", "unread", [])
            continue
        reads = _timed(report, partial(_read_reply, case["text"], session))
        missing = _missing_of_reply(case, reads, session)
        kind = "wrong" if all(one.sure for one in reads) else "asked"
        told = [one.model_dump(mode="json", exclude_defaults=True) for one in reads]
        _count(report, case, missing, kind if missing else "exact", told)
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
    return next((what for pair in pairs if (what := _unlike_score(*pair, session))), "")


def _is_only_done(read: ReadScore, session: Session) -> bool:
    """Whether it says no more than that all there was is done: no number that anybody would have to tell."""
    assert read.score is not None
    block = session.blocks[read.block]
    whole = block.format is Format.INTERVALS and read.score.rounds == times_in(block)
    return read.score.value is None or (whole and not read.score.sets)


def _tells_nothing(case: Mapping[str, Any]) -> bool:
    """Whether there is no score in it that could be kept."""
    return not case["expect"] or bool(case["expect"].get("none"))


def _unlike_score(expected: Mapping[str, Any], read: ReadScore, session: Session) -> str:
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
    flags = {name: bool(expected.get(name)) for name in ("scaled", "capped")}
    flags["capped"] |= bool(expected.get("unfinished")) and score["capped"]
    return next((name for name, one in (told | flags).items() if not fits(one, score[name])), "")


def _timed(report: Report, work: Callable[[], T]) -> T:
    began = perf_counter()
    done = work()
    took = perf_counter() - began
    report.seconds += took
    report.longest = max(report.longest, took)
    return done


def _count(
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
    rows += [
        f"    {count:>3}  {one} -> {other}" for (one, other), count in report.confusions.most_common(most)
    ]
    return "\n".join(rows)
