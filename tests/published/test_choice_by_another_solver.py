"""The choice against OR-Tools CP-SAT: one solve must find the same cost (Google OR-Tools 9)."""

from random import Random

from core.scaling.choice import choose
from tests.support.choices import MEETING, some_sections
from tests.support.cp_sat import solve

INSTANCES = 300


def test_an_independent_solver_finds_no_better_choice():
    random = Random(65)
    for _ in range(INSTANCES):
        sections = some_sections(random)
        cost, _ = choose(sections, MEETING)
        assert cost == solve(sections, MEETING)
