import pytest

from core.athletes.values import Profile, Screening, Today
from core.desk.scores.as_done import is_ranked


@pytest.mark.parametrize(
    ("known", "ranked"),
    [
        ({}, True),  # in the group, and not asked anything yet: a score is a fact
        ({"screening": Screening.CLEAR, "limits": ()}, True),
        ({"screening": Screening.CLEAR, "limits": ("wrist",)}, True),
        ({"screening": Screening.MODERATE}, False),
        ({"screening": Screening.CLEAR, "limits": ("pregnancy",)}, False),
        ({"screening": Screening.CLEAR, "today": Today(sick=True)}, False),
    ],
)
def test_nobody_who_goes_gently_is_ranked_without_a_version_either(known, ranked):
    """Common practice, no source."""
    assert is_ranked(Profile(name="Lene", **known)) is ranked
