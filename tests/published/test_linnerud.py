"""The priors of strength against twenty men whom they never saw (the source stands in `tests.support.linnerud`).

Their 50-251 sit-ups lie far above our 8-51: how they were counted isn't told, and we would rather start low. The
benchmarks print the figures of both.
"""

import pytest

from tests.support.linnerud import CHINS, inside


@pytest.mark.parametrize("variant_id", ["pull-up/strict", "chin-up/strict"])
def test_about_nine_in_ten_men_do_as_many_chins_as_expected(variant_id):
    assert inside(variant_id, CHINS) >= 17
