from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.scores.ranking import Unrankable, rank
from core.scores.values import Entry, Score
from core.sessions.values import Format


def entry(name, team=None, **score):
    return Entry(name=name, team=team, score=Score(value=None, unit="reps", **score))


def placed(format_, *entries, cap_s=None):
    return [(place.rank, place.name) for place in rank(format_, entries, cap_s).places]


def test_in_an_amrap_more_rounds_then_more_repetitions_stand_first():
    entries = entry("Ada", rounds=7, reps=2), entry("Bo", rounds=7, reps=12), entry("Cy", rounds=8, reps=0)
    assert placed(Format.AMRAP, *entries) == [(1, "Cy"), (2, "Bo"), (3, "Ada")]


def test_as_written_stands_before_scaled_however_much_was_done():
    entries = entry("Ada", rounds=9, reps=0, scaled=True), entry("Bo", rounds=1, reps=0)
    assert placed(Format.AMRAP, *entries) == [(1, "Bo"), (2, "Ada")]


def test_other_work_stands_behind_all_others_without_a_place_however_much_of_it_was_done():
    entries = [
        entry("Ada", rounds=5, reps=0, scaled=True),
        entry("Bo", rounds=12, reps=0, scaled=True).model_copy(update={"apart": True}),
        entry("Cy", rounds=4, reps=0),
    ]
    assert placed(Format.AMRAP, *entries) == [(1, "Cy"), (2, "Ada"), (None, "Bo")]


def test_of_timed_intervals_whoever_missed_one_stands_behind_whoever_did_all():
    entries = (
        entry("Ada", seconds=380, rounds=4, capped=True),
        entry("Bo", seconds=500),
        entry("Cy", seconds=490),
    )
    assert placed(Format.INTERVALS, *entries) == [(1, "Cy"), (2, "Bo"), (3, "Ada")]


def test_sets_of_who_told_no_load_rank_by_repetitions_behind_the_loads():
    entries = entry("Ada", reps=30), entry("Bo", reps=31), entry("Cy", load_kg=Decimal(20))
    assert placed(Format.SETS, *entries) == [(1, "Cy"), (2, "Bo"), (3, "Ada")]


def test_for_time_the_quickest_stands_first_and_whoever_finished_before_the_capped():
    entries = (
        entry("Ada", capped=True, reps=80),
        entry("Bo", seconds=500),
        entry("Cy", capped=True, reps=81),
        entry("Di", seconds=499),
    )
    assert placed(Format.FOR_TIME, *entries, cap_s=900) == [(1, "Di"), (2, "Bo"), (3, "Cy"), (4, "Ada")]


def test_a_time_beyond_the_cap_is_not_finished():
    board = rank(Format.FOR_TIME, [entry("Ada", seconds=901), entry("Bo", seconds=900)], 900)
    assert [(place.name, place.text) for place in board.places] == [("Bo", "15:00"), ("Ada", "capped")]


def test_level_scores_share_a_rank_and_the_next_one_is_counted_on():
    entries = [entry(name, seconds=seconds) for name, seconds in (("Ada", 9), ("Bo", 9), ("Cy", 10))]
    assert placed(Format.TIME_TRIAL, *entries) == [(1, "Ada"), (1, "Bo"), (3, "Cy")]


@pytest.mark.parametrize(
    ("format_", "first", "second"),
    [
        (Format.HOLD, {"seconds": 90}, {"seconds": 60}),
        (Format.MAX_REPS, {"reps": 42}, {"reps": 40}),
        (Format.SETS, {"load_kg": Decimal(60)}, {"load_kg": Decimal("57.5")}),
        (Format.MAX_LOAD, {"load_kg": Decimal(60)}, {"load_kg": Decimal("57.5")}),
        (Format.INTERVALS, {"reps": 45}, {"reps": 44}),
        (Format.INTERVALS, {"seconds": 200}, {"seconds": 210}),
    ],
)
def test_every_format_has_its_own_order(format_, first, second):
    assert placed(format_, entry("Bo", **second), entry("Ada", **first)) == [(1, "Ada"), (2, "Bo")]


@pytest.mark.parametrize(
    ("format_", "score", "text"),
    [
        (Format.AMRAP, {"rounds": 7, "reps": 12}, "7 rounds + 12"),
        (Format.AMRAP, {"rounds": 1, "reps": 0}, "1 round"),
        (Format.FOR_TIME, {"seconds": 523}, "8:43"),
        (Format.FOR_TIME, {"seconds": 3725.5}, "1:02:05.5"),
        (Format.FOR_TIME, {"capped": True, "reps": 120}, "capped, 120 reps"),
        (Format.MAX_REPS, {"reps": 42}, "42 reps"),
    ],
)
def test_a_score_is_shown_in_words(format_, score, text):
    (place,) = rank(format_, [entry("Ada", **score)]).places
    assert place.text == text


def test_calories_are_shown_as_such():
    score = Score(value=120, unit="kcal", reps=120)
    assert score.in_words() == "120 cal"
    assert score.model_copy(update={"capped": True}).in_words() == "capped, 120 cal"


def test_a_load_is_shown_in_its_unit():
    assert Score(value=60, unit="kg", load_kg=Decimal(60)).in_words() == "60 kg"


def test_a_team_earns_a_point_for_everybody_its_members_leave_behind_and_for_themselves():
    entries = (
        entry("Ada", "red", reps=40),
        entry("Bo", "blue", reps=30),
        entry("Cy", "blue", reps=20),
        entry("Di", None, reps=10),
    )
    teams = rank(Format.MAX_REPS, entries).teams
    assert [(team.rank, team.team, team.points, team.names) for team in teams] == [
        (1, "blue", 5, ("Bo", "Cy")),
        (2, "red", 4, ("Ada",)),
    ]


def test_a_score_that_lacks_what_is_ranked_by_is_named():
    with pytest.raises(Unrankable, match=r"score 2 \(Bo\): an amrap needs rounds"):
        rank(Format.AMRAP, [entry("Ada", rounds=7), entry("Bo", seconds=500)])


def test_nobody_is_ranked_in_a_block_without_a_score():
    with pytest.raises(Unrankable, match="quality has no ranking"):
        rank(Format.QUALITY, [entry("Ada", reps=7)])


@given(st.lists(st.tuples(st.integers(0, 5), st.integers(0, 5), st.booleans()), max_size=20))
def test_everybody_has_one_place_and_nobody_passes_a_better_score(scores):
    entries = [
        entry(str(number), rounds=rounds, reps=reps, scaled=scaled)
        for number, (rounds, reps, scaled) in enumerate(scores)
    ]
    places = rank(Format.AMRAP, entries).places
    assert sorted(place.name for place in places) == sorted(one.name for one in entries)
    keys = [(place.score.scaled, -(place.score.rounds or 0), -(place.score.reps or 0)) for place in places]
    assert keys == sorted(keys)
    assert all(
        place.rank == 1 + sum(key < own for key in keys) for place, own in zip(places, keys, strict=True)
    )


def test_rounds_of_every_minute_are_shown_with_all_that_was_done_in_them():
    score = Score(value=168, unit="reps", rounds=12, reps=168)
    (place,) = rank(Format.INTERVALS, [Entry(name="Ada", score=score)]).places
    assert place.text == "12 rounds, 168 reps"
