"""The second ready level is lighter: no line of it costs whom it is made for more than as it is written."""

from decimal import Decimal
from itertools import cycle

import pytest

from bot.words.versions import what_words
from core.measures import AmountUnit, MassUnit
from core.movements.lookup import catalogue
from core.scaling.athlete import Athlete
from core.scaling.fit import fit
from core.scaling.gentler import SAME_COST, cost_as_written
from core.scaling.options import options_of
from core.scaling.orders import Orders
from core.scaling.plan import plan_of
from core.scaling.ready import AT_HOME, lighter, typical
from core.sessions.values import Block, Format, Line, Session
from tests.unit.scaling.people import session

LOADS = tuple(map(Decimal, (4, 8, 12, 16, 24, 40, 60)))
AMOUNTS = {AmountUnit.REPS: 10, AmountUnit.SECONDS: 30, AmountUnit.METRES: 100}
WHO = Athlete(typical("lighter", AT_HOME), catalogue())


def written(movement):
    """Each way of it as a part of its own: parts know nothing of each other, and one version holds them all."""
    return Session(
        blocks=tuple(map(part, cycle([movement]), movement.variants, cycle((Format.AMRAP, Format.SETS))))
    )


def part(movement, variant, format_):
    unit = movement.unit_of(variant)
    load = LOADS[catalogue().order(f"{movement.id}/{variant.id}") % len(LOADS)]
    line = Line(
        written=variant.label,
        movement=movement.id,
        variant=variant.id,
        amount=AMOUNTS[unit],
        unit=unit,
        loads_kg=(load,) if variant.holds else (),
    )
    return Block(format=format_, minutes=12, lines=(line,))


def costs(plan, line):
    """What a set of a version's line costs, reckoned anew from the load it moves."""
    way = next(way for way in (*plan.ways, *plan.harder) if way.id == f"{line.movement}/{line.variant}")
    task = WHO.task(plan, way)
    share = 1 if line.amount is None or not way.amount else line.amount / way.amount
    return 0 if task is None else fit(task, line.load_moved_kg, share).cost or 0


@pytest.mark.parametrize("movement", catalogue().movements, ids=lambda movement: movement.id)
def test_no_line_is_harder_than_written_unless_nothing_is_as_light(movement):
    made = written(movement)
    parts = zip(movement.variants, plan_of(made, catalogue(), 1), lighter(made, catalogue()), strict=True)
    for variant, planned, block in parts:
        (plan,), (line,) = planned.lines, block.lines
        most = cost_as_written(plan, WHO)
        if most is None or line.change == "rest":
            continue
        cost = costs(plan, line)
        if cost > most * SAME_COST:
            others = [one for one in options_of(plan, WHO, Orders()) if one.safe]
            assert all((one.fit.cost or 0) >= cost / SAME_COST for one in others), (variant.id, line)


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("10 deadlifts @ 24 kg", "10 deadlifts with a weight in each hand (two 10 kg dumbbells)"),
        ("10 deadlifts @ 16 kg", "10 deadlifts (10 kg dumbbell)"),
    ],
)
def test_a_load_that_isnt_there_brings_no_slower_or_deeper_way(text, what):
    (line,) = lighter(session(f"AMRAP 12\n{text}"), catalogue())[0].lines
    assert what_words(line, MassUnit.KG) == what


def test_what_was_light_enough_stays_as_it_was_chosen():
    text = "AMRAP 20\n12 goblet squats @ 24/16 kg\n10 push-ups\n10 swings @ 24/16 kg\n200 m run"
    (block,) = lighter(session(text), catalogue())
    assert "coach" not in {line.reason.because for line in block.lines}
