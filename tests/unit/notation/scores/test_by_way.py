"""More than five hundred scores, of every way in which a part is scored: how each is read, and how they rank."""

from collections import defaultdict
from pathlib import Path

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.scores.ranking import rank
from core.scores.values import Entry
from core.scores.ways import Way, likes, way_of
from tests.corpus.judge import cases, judge_replies

TABLE = Path(__file__).parents[3] / "corpus" / "building" / "scores" / "ways.jsonl"
ENOUGH, MOST_WRONG = 0.95, 0.005


def session(text):
    found = read_session(text, catalogue()).session
    assert found is not None
    return found


def test_nearly_all_are_read_as_they_were_meant_and_hardly_one_is_wrong_without_a_question():
    report = judge_replies(cases([TABLE]))
    assert report.count > 500
    assert report.exact >= ENOUGH * report.count, report.missed
    assert report.wrong <= MOST_WRONG * report.count, report.missed


def test_every_way_is_in_the_table():
    told: dict[Way, int] = defaultdict(int)
    for case in cases([TABLE]):
        for block in session(case["session"]).blocks:
            told[way_of(block)] += 1
    assert set(told) == set(Way)


# What people write, and by what it ranks: less stands first.
BOARDS = [
    ("AMRAP 12\n5 pull-ups\n10 push-ups\n15 squats",
     [("8+12", -252), ("9 rounds", -270), ("252 reps", -252), ("8 rounds plus the pull-ups", -245),
      ("two short of 9 rounds", -268)]),
    ("3 rounds for time, cap 12 min\n15 swings\n12 burpees\n9 pull-ups",
     [("9:41", 581), ("11:59", 719), ("nine forty one", 581), ("capped, 12 reps left", 1000 - 96),
      ("capped, 2 rounds + 15", 1000 - 87)]),
    ("2000 m row for time", [("7:52.4", 472.4), ("8 min 1 s", 481), ("7m52", 472)]),
    ("5 x 400 m run, rest 2 min",
     [("1:32 1:35 1:40 1:41 1:45", 493), ("1:35 each", 475), ("1:30 1:31 1:32 1:33 then stopped", 10_000 - 4),
      ("1:20 1:20, had to stop", 10_000 - 2)]),
    ("5 x 400 m run, rest 2 min\nscore: slowest round",
     [("1:32 1:35 1:40 1:41 1:45", 105), ("1:40 each", 100), ("slowest 1:39", 99)]),
    ("5 x 400 m run, rest 2 min\nscore: fastest",
     [("1:32 1:35 1:40 1:41 1:45", 92), ("1:40 each", 100), ("fastest 1:31", 91)]),
    ("Tabata squats\nscore: lowest round",
     [("12 11 11 10 10 9 9 9", -9), ("10 each", -10), ("lowest was 8", -8)]),
    ("EMOM 10\n12 swings",
     [("done", -120), ("failed minute 8", -84), ("9/10", -108), ("8 rounds + 5", -101), ("all 10", -120)]),
    ("3 x max pull-ups, rest 2 min", [("12 10 8", -30), ("31 total", -31), ("12, 10, 8 = 30", -30)]),
    ("10 min bike for calories", [("142", -142), ("142 cals", -142), ("150 cal", -150)]),
    ("12 min run, how far", [("2450m", -2450), ("2.5 km", -2500), ("2.4", -2400)]),
    ("max plank hold", [("1:35", -95), ("95 seconds", -95), ("2 min", -120)]),
    ("Wall sit 3 x max, 1 min rest", [("70 60 45", -175), ("1:00, 1:00, 1:00", -180)]),
    ("find a heavy single deadlift", [("failed at 110, got 105", -105), ("105", -105), ("107.5 kg", -107.5)]),
    ("5x5 back squat", [("60 kg", -60), ("5x5 @ 62.5", -62.5), ("50 55 60 60 60", -60)]),
]  # fmt: skip


@pytest.mark.parametrize(("board", "told"), BOARDS, ids=[text[:24] for text, _ in BOARDS])
def test_what_people_write_ranks_as_scipy_ranks_what_they_did(board, told):
    from scipy.stats import rankdata  # noqa: PLC0415 - takes a second to load

    found = session(board)
    block = found.blocks[0]
    entries = []
    for words, _ in told:
        read = read_score(words, found)
        assert read.sure, f"{words}: {read.ask}"
        entries.append(Entry(name=words, score=read.score))
    ranks = {place.name: place.rank for place in rank(block.format, entries, block.cap_s).places}
    assert [ranks[words] for words, _ in told] == [
        int(one) for one in rankdata([key for _, key in told], method="min")
    ]


def test_fixed_work_every_minute_is_held_or_not_whatever_one_of_it_is_counted_in():
    session = read_session(
        "EMOM 12\nmin 1: 150 m run\nmin 2: 12 thrusters\nmin 3: 30 s hollow hold", catalogue()
    ).session
    assert session is not None
    assert likes(session.blocks[0])[0] == "all 12"
    assert read_score("all rounds done", session).score.value == 12
