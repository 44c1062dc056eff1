"""Standard competition ranking, against its published example and against scipy."""

from hypothesis import given
from hypothesis import strategies as st

from core.scores.ranking import rank
from core.scores.values import Entry, Score
from core.sessions.values import Format


def ranks_of(counts):
    """Rank of each count of repetitions, in the order given."""
    entries = [
        Entry(name=str(number), score=Score(value=None, unit="reps", reps=count))
        for number, count in enumerate(counts)
    ]
    ranks = {place.name: place.rank for place in rank(Format.MAX_REPS, entries).places}
    return [ranks[str(number)] for number in range(len(counts))]


def test_level_scores_share_the_better_rank_and_leave_a_gap():
    # Standard competition ranking ("1224"): check-value list of the project, read and reproduced there.
    assert ranks_of([44, 42, 42, 41, 41, 41, 39]) == [1, 2, 2, 4, 4, 4, 7]


@given(st.lists(st.integers(0, 30), min_size=1, max_size=40))
def test_ranks_equal_those_of_scipy_rankdata_with_the_min_method(counts):
    # scipy.stats.rankdata(method="min") is the same ranking, counted from the smallest.
    from scipy.stats import rankdata  # noqa: PLC0415 - takes a second to load

    assert ranks_of(counts) == [int(place) for place in rankdata([-count for count in counts], method="min")]
