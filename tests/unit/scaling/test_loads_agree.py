"""What one person lifts agrees with what else they lift: from line to line, and from session to session."""

from decimal import Decimal

from hypothesis import given, settings
from hypothesis import strategies as st

from core.athletes.values import Equipment
from tests.unit.scaling.people import athlete, did, only_line

LIFTS = ("back squats", "deadlifts", "strict press", "bent over rows", "goblet squats", "floor press")
# From easy to heavy, as coaches write it.
SENSES = ("@ RPE 6", "@ RPE 8", "heavy")
REPS = (3, 5, 8, 10, 12)


def adjustable(implement, start, end, step, each=1):
    return Equipment(implement=implement, from_kg=start, to_kg=Decimal(end), step_kg=Decimal(step), each=each)


kits = st.sampled_from(
    (
        (adjustable("barbell", Decimal(20), 140, 2.5),),
        (adjustable("dumbbell", Decimal(4), 24, 2, each=2),),
        (adjustable("dumbbell", Decimal("2.5"), 20, 2.5),),
        (adjustable("backpack", None, 15, 1),),
    )
)
tests = st.lists(
    st.one_of(
        st.builds(lambda reps: did("push-up", reps), st.integers(1, 40)),
        st.builds(lambda reps, load: did("back squat", reps, load), st.integers(1, 10), st.integers(40, 120)),
        st.builds(lambda reps, load: did("deadlift", reps, load), st.integers(1, 10), st.integers(50, 150)),
    ),
    max_size=2,
).map(tuple)
people = st.builds(
    lambda kit, tests, sex, limits, experience: athlete(
        tests=tests, sex=sex, mass=72, limits=limits, experience=experience
    ).model_copy(update={"equipment": kit}),
    kits,
    tests,
    st.sampled_from(("female", "male")),
    st.sampled_from(((), (), ("knee",), ("shoulder",), ("high-blood-pressure",))),
    st.sampled_from(("new", "some", "trained")),
)


def given_as_written(who, lift, reps, sense):
    """What it is done with and how heavy; None where it is done in another number, or with no weight."""
    line = only_line(f"4 x {reps} {lift} {sense}, rest 2 min", who)
    if line.load_kg is None or line.amount != reps:
        return None
    return (line.movement, line.variant, line.implement, line.count), line.load_kg


@settings(max_examples=60, deadline=None)
@given(
    people,
    st.sampled_from(LIFTS),
    st.tuples(st.sampled_from(REPS), st.sampled_from(REPS)).map(sorted),
    st.tuples(st.integers(0, 2), st.integers(0, 2)).map(sorted),
)
def test_more_repetitions_are_never_heavier_and_a_heavier_sense_is_never_lighter(who, lift, reps, senses):
    (few, many), (easier, heavier) = reps, (SENSES[one] for one in senses)
    hard, easy = given_as_written(who, lift, few, heavier), given_as_written(who, lift, many, easier)
    if hard is not None and easy is not None and hard[0] == easy[0]:
        assert hard[1] >= easy[1]


@settings(max_examples=40, deadline=None)
@given(people, st.sampled_from(LIFTS), st.sampled_from(REPS), st.sampled_from(SENSES))
def test_a_few_light_ones_stay_a_few_and_are_no_heavier_than_any_others(who, lift, reps, sense):
    light, other = given_as_written(who, lift, reps, "light"), given_as_written(who, lift, reps, sense)
    if light is not None and other is not None and light[0] == other[0] and sense != SENSES[0]:
        assert light[1] <= other[1]


@settings(max_examples=40, deadline=None)
@given(people, st.sampled_from(LIFTS), st.sampled_from((2, 3, 5)))
def test_no_repetitions_are_added_to_what_is_to_be_light(who, lift, reps):
    line = only_line(f"4 x {reps} {lift} light, rest 2 min", who)
    assert line.load_kg is None or line.amount is None or line.amount <= reps
