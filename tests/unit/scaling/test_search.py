"""The search for what a line could be ends early, and misses nothing: the same options as all of them priced."""

import pytest

from core.athletes.circumstances import in_circumstances
from core.movements.lookup import catalogue
from core.scaling.athlete import Athlete
from core.scaling.options import every_option, options_of
from core.scaling.orders import Orders
from core.scaling.plan import plan_for
from tests.coach.judge import TUNING, YEAR, athlete_of, block_of, cases_in

SOME = cases_in(TUNING)[::9]


def plans_of(case):
    who = Athlete(in_circumstances(athlete_of(case.athlete)), catalogue(), YEAR)
    session = block_of(case.session, case.line)
    assert session is not None
    (block,) = plan_for(session, who.easing, catalogue(), who.pair)
    return who, [plan for section in block.sections for plan in section]


def done_with(options):
    return {(one.way and one.way.id, one.hold, one.load and one.load.kg) for one in options}


@pytest.mark.parametrize("slack", [0, 6])
@pytest.mark.parametrize("case", SOME, ids=lambda case: case.id)
def test_what_costs_little_more_than_the_cheapest_is_found(case, slack):
    who, plans = plans_of(case)
    for plan in plans:
        every, found = list(every_option(plan, who, Orders())), options_of(plan, who, Orders(), slack)
        least = min(one.cost for one in every)
        assert found[0].cost == least
        assert done_with(found) >= done_with(one for one in every if one.cost <= least + slack)
