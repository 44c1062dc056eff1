"""What nobody would believe of an athlete is asked about; what is only good or bad isn't."""

from decimal import Decimal

import pytest

from core.forecast.doubt import is_incredible
from core.forecast.people import People
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.scaling.values import Version
from core.scaling.version import version_for
from tests.unit.forecast.test_forecast import YEAR, athlete


def doubted(board, words, **known):
    session = read_session(board, catalogue()).session
    assert session is not None
    version = version_for(session, athlete(**known), catalogue(), year=YEAR)
    score = read_score(words, session).score
    assert score is not None
    assert isinstance(version, Version)
    return is_incredible(score, version.blocks[0], People(athlete(**known), catalogue(), YEAR))


@pytest.mark.parametrize(("kilograms", "is_doubted"), [(80, False), (150, False), (230, True), (240, True)])
def test_a_weight_beyond_anybody_like_them_is_doubted(kilograms, is_doubted):
    assert doubted("5 x 5 back squat, rest 3 min", f"{kilograms} kg") is is_doubted


def test_who_is_heavier_and_has_shown_more_is_believed():
    shown = athlete().evidence[3].model_copy(update={"load_kg": Decimal(160)})
    assert not doubted("5 x 5 back squat, rest 3 min", "230 kg", evidence=(shown,))
