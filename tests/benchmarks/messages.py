"""How well messages are understood: the judge's table over the corpora."""

from pathlib import Path

from tests.corpus.judge import cases, in_words, judge

CORPUS = Path(__file__).parents[1] / "corpus"


def table() -> str:
    """A part for each file. Of the untouched half figures only: nobody looks at its cases."""
    return "\n".join(part for half in ("building", "untouched") for part in _of_half(half))


def _of_half(half: str) -> list[str]:
    most = 12 if half == "building" else 0
    paths = sorted((CORPUS / half / "messages").glob("*.jsonl"))
    parts = [in_words(f"{half} {path.stem}", judge(cases([path])), most=most) for path in paths]
    return [*parts, in_words(f"{half}, all", judge(cases(paths)), most=0)] if paths else []
