"""How well messages, boards and scores are understood: the judge's tables over the corpora."""

from pathlib import Path

from tests.corpus.boards import judge_sessions
from tests.corpus.judge import cases, in_words, judge, judge_replies

JUDGES = {"messages": judge, "sessions": judge_sessions, "replies": judge_replies, "scores": judge_replies}
CORPUS = Path(__file__).parents[1] / "corpus"


def table() -> str:
    """A part for each file. Of the untouched half figures only: nobody looks at its cases."""
    return "\n".join(part for half in ("building", "untouched") for part in _of_half(half))


def _of_half(half: str) -> list[str]:
    return [part for kind in JUDGES for part in _of_kind(half, kind)]


def _of_kind(half: str, kind: str) -> list[str]:
    most = 12 if half == "building" else 0
    paths, judge_them = sorted((CORPUS / half / kind).glob("*.jsonl")), JUDGES[kind]
    parts = [in_words(f"{half} {path.stem}", judge_them(cases([path])), most=most) for path in paths]
    alone = len(paths) < 2
    return parts if alone else [*parts, in_words(f"{half}, all {kind}", judge_them(cases(paths)), most=0)]
