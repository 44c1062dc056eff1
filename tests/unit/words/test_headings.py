"""What heads a block fits what somebody has to do it with."""

import pytest

from bot.words.headings import block_heading
from core.athletes.values import Equipment, Profile, Screening
from core.movements.lookup import catalogue
from core.notation.session import read_session
from core.scaling.version import version_for


def heading_for(screening=Screening.CLEAR, **told):
    session = read_session("build to a heavy 2 in the clean and jerk, 20 minutes", catalogue()).session
    assert session is not None
    version = version_for(session, Profile(name="Ilse", limits=(), screening=screening, **told), catalogue())
    return block_heading(version.blocks[0])


def test_whoever_has_a_bar_works_up_to_the_heaviest():
    assert "Work up to the heaviest" in heading_for(
        equipment=(Equipment(implement="barbell", loads_kg=(20, 60, 80)),)
    )


@pytest.mark.parametrize("gently", [False, True])
def test_with_empty_hands_there_is_nothing_to_work_up_to(gently):
    told = {"screening": Screening.MODERATE} if gently else {}
    said = heading_for(equipment=(), **told)
    assert "heaviest" not in said
    assert "with all the rest you need" in said
