from decimal import Decimal

import pytest

from core.athletes.values import Screening, Today
from core.movements.lookup import catalogue
from core.scaling.group import view_of
from core.scaling.orders import Orders, Pin
from core.scaling.values import Because, Change, Withheld
from core.scaling.version import version_for
from tests.unit.scaling.people import athlete, did, lines, only_line, session, version

TEXT = "AMRAP 20\n10 push-ups\n12 goblet squats @ 16 kg"


@pytest.mark.parametrize(
    ("known", "because"),
    [
        ({"screening": Screening.STOP}, "screening"),
        ({"today": Today(sick=True)}, "rest"),
        ({"limits": ("fever",)}, "rest"),
        ({"limits": ("surgery",)}, "clearance"),
    ],
)
def test_no_version_where_there_must_be_none(known, because):
    made = version_for(session(TEXT), athlete(**known), catalogue())
    assert isinstance(made, Withheld)
    assert made.because == because


def test_nobody_is_prescribed_more_than_moderate_before_the_screening():
    made = version(TEXT, athlete(screening=None))
    assert made.effort_at_most == 4
    assert not made.scored


def test_pregnancy_is_for_the_coach_to_agree_first_and_carries_no_rank():
    made = version(TEXT, athlete(limits=("pregnancy",)))
    assert (made.needs_coach[0].because, made.needs_coach[0].line) == (Because.LIMIT, None)
    assert not made.scored


def test_a_short_day_shortens_the_block_and_is_not_as_written():
    strong = athlete(owns=["kettlebell 16"], tests=[did("push-up", 40), did("goblet squat", 30, 16)])
    assert version(TEXT, strong).as_written
    short = version(TEXT, strong.model_copy(update={"today": Today(minutes=12)}))
    assert short.blocks[0].minutes == 12
    assert not short.as_written


def test_what_is_done_for_time_ends_with_the_time_there_is_today():
    strong = athlete(tests=[did("push-up", 60), did("air squat", 90)])
    text = "3 rounds for time, cap 15 min\n10 push-ups\n20 air squats"
    assert version(text, strong).blocks[0].cap_s == 900
    short = version(text, strong.model_copy(update={"today": Today(minutes=10)}))
    assert short.blocks[0].cap_s == 600
    assert not short.as_written


def test_a_standing_choice_is_followed_and_says_so():
    who = athlete(owns=["chair", "table"], tests=[did("push-up", 30)])
    pin = Pin(block=1, line=1, variant="hands-on-table")
    line = lines(TEXT, who, orders=Orders(pins=(pin,)))[0]
    assert (line.variant, line.reason.because) == ("hands-on-table", Because.COACH)


def test_a_standing_choice_of_what_is_not_there_is_not_followed():
    pin = Pin(block=1, line=1, variant="hands-on-table")
    line = lines(TEXT, athlete(tests=[did("push-up", 30)]), orders=Orders(pins=(pin,)))[0]
    assert line.variant == "floor"


def test_far_heavier_than_written_only_if_the_coach_allows():
    who = athlete(owns=["kettlebell 24"], tests=[did("goblet squat", 60, 16)])
    text = "AMRAP 12\n12 goblet squats @ 16 kg"
    assert only_line(text, who).load_kg is None
    assert only_line(text, who, orders=Orders(heavier=True)).load_kg == 24


def test_an_adjustable_has_one_setting_for_the_whole_block():
    who = athlete(
        owns=["dumbbell 2.5 to 20 by 2.5"],
        tests=[did("goblet squat", 30, 15), did("single-arm row", 12, 7.5)],
    )
    found = lines("AMRAP 12\n12 goblet squats @ 16 kg\n9 single-arm rows each side @ 16 kg", who)
    assert len({line.load_kg for line in found if line.implement == "dumbbell"}) == 1


def test_heavy_without_evidence_means_lighter():
    who = athlete(owns=["kettlebell 8 32"], tests=[did("goblet squat", 30, 8)], sex="male", mass=80)
    line = only_line("AMRAP 12\n5 goblet squats @ 32 kg", who)
    assert line.unbroken is None or line.unbroken >= 8


def test_pounds_that_stand_for_the_written_kilograms_are_as_written():
    who = athlete(owns=["kettlebell 15.88"], tests=[did("goblet squat", 30, 15.88)])
    line = only_line("AMRAP 12\n12 goblet squats @ 16 kg", who)
    assert (line.change, line.load_kg) == (Change.NONE, Decimal("15.88"))


def test_the_group_view_counts_everybody_once_a_line():
    people = [
        athlete("Bo", owns=["kettlebell 16"], tests=[did("push-up", 40), did("goblet squat", 30, 16)]),
        athlete(
            "Ilse", owns=["chair", "dumbbell 12"], tests=[did("push-up", 7), did("goblet squat", 20, 12)]
        ),
        athlete("Tam", tests=[did("push-up", 6)]),
        athlete("Ute", screening=Screening.STOP),
    ]
    view = view_of([version_for(session(TEXT), one, catalogue()) for one in people])
    counted = ("as_written", "load", "implement", "variant", "movement", "amount", "rest")
    assert [sum(getattr(line, field) for field in counted) for line in view.lines] == [3, 3]
    assert [one.athlete for one in view.withheld] == ["Ute"]
    assert (view.lines[0].as_written, view.lines[0].variant) == (1, 2)
    assert (view.say[0].because, view.say[0].names) == (Because.TOO_HEAVY, ("Ilse", "Tam"))


def test_a_load_beside_a_plain_name_is_held_not_forgotten():
    who = athlete(owns=["2x dumbbell 10"], tests=[did("lunge", 24, 10, "two-weights")])
    line = only_line("AMRAP 12\n12 lunges 2 x 10 kg", who)
    assert (line.variant, line.count, line.load_kg, line.change) == ("two-weights", 2, 10, Change.NONE)


def test_light_duty_may_take_off_more_than_two_thirds():
    """A third of a hundred would cost more than half of what goes."""
    who = athlete(tests=[did("air squat", 12)], screening=Screening.MODERATE)
    line = only_line("AMRAP 15\n100 air squats", who)
    assert line.change is Change.AMOUNT
    assert line.amount < 100 / 3
    assert line.set_cost <= 0.5


def test_the_group_view_tells_what_those_do_who_lack_a_thing():
    people = [athlete(name, owns=[f"2x dumbbell {kg}"]) for name, kg in (("Bo", 8), ("Ilse", 12))]
    swings = session("AMRAP 12\n10 kettlebell swings @ 16/12 kg")
    view = view_of([version_for(swings, one, catalogue()) for one in people])
    (instead,) = view.say[0].instead
    assert instead.movement == "swing"
    assert (instead.lightest_kg, instead.heaviest_kg) == (Decimal(8), Decimal(12))
