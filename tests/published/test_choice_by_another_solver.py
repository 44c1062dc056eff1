"""The choice against OR-Tools CP-SAT: one weighted solve must find the same value (Google OR-Tools 9)."""

from random import Random

from core.scaling.choice import choose, value_of
from tests.support.choices import some_sections
from tests.support.cp_sat import solve

INSTANCES = 300


def test_an_independent_solver_finds_no_better_choice():
    random = Random(65)
    for _ in range(INSTANCES):
        sections = some_sections(random)
        assert value_of(sections, choose(sections))[:-1] == solve(sections)
