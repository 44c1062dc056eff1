"""Plain scores of many kinds of parts (corpus/asides/tellings.toml): nearly all are read, and hardly one wrong."""

import tomllib
from pathlib import Path

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score

FILE = Path(__file__).parents[3] / "corpus" / "asides" / "tellings.toml"
PARTS = tomllib.loads(FILE.read_text(encoding="utf-8"))["part"]


def reads(part, told):
    session = read_session(part["board"], catalogue()).session
    assert session is not None
    return [(words, read_score(words, session)) for words in told]


def test_nearly_all_are_read_and_none_as_another_score():
    found = [
        (read.sure, read.score and read.score.value, part["told"][words], words)
        for part in PARTS
        for words, read in reads(part, part.get("told", {}))
    ]
    wrong = [
        words for sure, value, wanted, words in found if sure and value != pytest.approx(wanted, rel=0.005)
    ]
    assert len(found) > 200
    assert sum(sure for sure, *_ in found) >= 0.85 * len(found)
    assert not wrong


def test_what_leaves_a_question_is_asked():
    sure = [words for part in PARTS for words, read in reads(part, part.get("asked", ())) if read.sure]
    assert not sure
