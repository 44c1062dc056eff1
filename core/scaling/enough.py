"""How much of a set is enough for whom: what leaves them breath, what keeps its form, what a coach gives beginners."""

from collections.abc import Iterator, Sequence
from math import inf

from core.ability.evidence import Shown
from core.measures import AmountUnit
from core.movements.values import Demand, Part
from core.scaling.athlete import Athlete
from core.scaling.careful import DOWN
from core.scaling.fit import Fit, likely
from core.scaling.ways import LinePlan, Near
from core.scaling.works import FEW_EASY, FEWEST_LIGHT, HALF, SOME_EASY, Lift, Option, Work

# Long straining holds push the blood pressure up: who must not hold their breath holds so long at most (estimate).
LONGEST_HOLD_S = 25.0
# Steps are for the unsteady as long as each is as sure as the first: so many a side (estimate).
MOST_STEPS = 6.0
# Whoever is new takes so much longer for each, and works at most so much of a minute that comes again (estimates; the
# rest of a third of each minute is common practice).
SLOWER, AT_WORK = 1.2, 2 / 3
# Of a set that takes their breath whoever isn't used to training does so much (common practice, no source).
NEW_SHARE = 2 / 3
IN_TURN, FEW_IN_TURN = 2, 6
# So nearly all of a set is all of it (estimate).
A_HAIR_LESS = 0.9
# What is sore does some of it, to be moved and no more (estimate).
SORE_SHARE = 2 / 3

# Whoever takes care does so much of what they can, as it comes again: never their best in every round, and half where a
# fall is what must not be; and holds so long what nobody saw them hold (estimates).
CAREFUL_SHARE, FRAIL_SHARE = 2 / 3, 1 / 2
FIRST_HOLD_S, FIRST_LEAN_S = 20.0, 25.0
# What moves less than so much of what was shown is easier (estimate: nobody knows a ratio to the tenth).
EASIER, TIMES_EASIER = 0.9, 2.0

# Many of what is light instead of a few heavy ones: so long all their sets last together, and so many are left at least
# (estimates: three sets of ten or twelve a side for five heavy fives, common practice).
MANY_S, FEWEST_SETS = 225.0, 3


def sets_of(rounds: int, done: Sequence[tuple[LinePlan, Option]]) -> int:
    """How many sets of many stand for so many heavy ones; as many as are written where anything of it is heavy."""
    longest = 0.0
    for plan, option in done:
        if not plan.heavy or option.way is None or option.part <= 1:
            return rounds
        sides = 2 if option.way.per_side else 1
        longest = max(longest, option.way.set_s * option.part * sides)
    return min(rounds, max(FEWEST_SETS, int(MANY_S // longest))) if longest else rounds


def most_of(work: Work) -> float:
    """The share of the amount that is safe for them: of a hold, of steps, of what is sore."""
    way, athlete = work.way, work.athlete
    if not way.amount or not way.set_amount:
        return 1.0
    if athlete.must_breathe and way.unit is way.movement.unit_of(way.variant) is AmountUnit.SECONDS:
        return min(1.0, LONGEST_HOLD_S / way.amount)
    if athlete.is_unsteady and way.steps:
        return min(1.0, MOST_STEPS / way.set_amount)
    moved = way.counts_reps and not work.plan.heavy and athlete.is_sore(way)
    return SORE_SHARE if moved else 1.0


def few_of(work: Work) -> float:
    """The share of the amount that is a set of what its own cue asks for few of, where nobody wrote it."""
    few, amount = work.way.variant.few, work.way.amount
    return 1.0 if not few or not amount or work.way.near is Near.WRITTEN else min(1.0, few / amount)


def careful_of(lift: Lift, whole: Fit) -> float:
    """The share of the amount that whoever takes care does of what they may hardly do, counted as it comes again.

    Of an easier way never fewer than a harder one has shown.
    """
    work = lift.work
    way, athlete = work.way, work.athlete
    if not (athlete.takes_care and way.amount and way.set_amount) or work.plan.heavy:
        return 1.0
    if way.is_hold:
        first = FIRST_HOLD_S if way.demands & DOWN else FIRST_LEAN_S
        return 1.0 if athlete.capacity.knows(way.movement) else min(1.0, first / way.amount)
    share = CAREFUL_SHARE if athlete.capacity.has_tried(way.id) else share_at_once(athlete)
    reps = max(min(share * likely(whole), most_shown(lift)), shown_by_harder(lift))
    once = reps / way.set_amount * work.plan.rung
    pieces = 1.0 if athlete.is_frail else work.plan.pieces
    return min(1.0, once * pieces) if way.counts_reps else 1.0


def share_at_once(athlete: Athlete) -> float:
    """How much of what they can somebody does in a set that comes again."""
    if athlete.is_frail:
        return FRAIL_SHARE
    return CAREFUL_SHARE if athlete.takes_care else 1.0


def goes_often(lift: Lift, fitting: Fit) -> bool:
    """Whether eight of what is light are likely a set that is hard, and no harder."""
    task, amount = lift.task, lift.work.way.amount
    overhead = lift.work.athlete.sits and Demand.OVERHEAD in lift.work.way.variant.demands
    if task is None or not amount or overhead:
        return False
    return FEWEST_LIGHT / amount * task.set_amount <= task.window.high * likely(fitting)


def most_shown(lift: Lift) -> float:
    """Of squats and the like as many as whoever mustn't fall does again of the most that they ever showed.

    What they showed of a harder way speaks of an easier one: twice as many go (estimate).
    """
    athlete, way = lift.work.athlete, lift.work.way
    if not (athlete.is_frail and way.counts_reps):
        return inf
    shown = max((one.reps for one in _alike(lift) if not _is_harder(one, lift)), default=0.0)
    most = float(int(CAREFUL_SHARE * shown)) or TIMES_EASIER * shown_by_harder(lift)
    return max(1.0, most) if most else inf


def shown_by_harder(lift: Lift) -> float:
    """As many as they did of what is harder than this, and of its kind."""
    return max((one.reps for one in _alike(lift) if _is_harder(one, lift)), default=0.0)


def _alike(lift: Lift) -> Iterator[Shown]:
    kin = lift.work.way.kin
    return (one for one in lift.work.athlete.capacity.tests if kin.k and one.kin.pattern == kin.pattern)


def _is_harder(shown: Shown, lift: Lift) -> bool:
    """Whether more was moved, weighed by how much of it each way lets one move."""
    return EASIER * shown.relative_kg > lift.moved_kg / lift.work.way.variant.ratio.value


def most_new(lift: Lift, whole: Fit) -> float:
    """With a weight that they never showed as many as half of what surely goes, for whoever is new.

    Overhead for anybody two thirds of what is likely, and no more than eight, if they showed nothing of the kind.
    """
    work = lift.work
    if not work.way.grips or work.plan.works_up or work.is_shown:
        return inf
    if not work.athlete.is_new:
        seen = Demand.OVERHEAD not in work.way.variant.demands or any(_alike(lift))
        return inf if seen else min(FEWEST_LIGHT, max(1.0, float(int(CAREFUL_SHARE * likely(whole)))))
    share = FRAIL_SHARE if work.athlete.is_frail else CAREFUL_SHARE
    return max(1.0, float(int(share * whole.cautious)), shown_by_harder(lift))


def enough_of(work: Work) -> float:
    """The share of the amount that whoever begins, comes back or goes gently does, of a way that they could do so.

    Nobody splits hairs: nine of ten are ten.
    """
    way, plan = work.way, work.plan
    if plan.heavy or not (way.amount and way.set_s) or not work.athlete.does_less:
        return 1.0
    at_will = way.unit is AmountUnit.SECONDS is not way.movement.unit_of(way.variant)
    usual = max(way.dose.gentle_s * plan.pieces / way.set_s, FEWEST_LIGHT / way.amount) * plan.rung
    part = min(1.0, 1.0 if at_will else usual, _of_the_unused(work))
    return min(part, 1.0) if part < A_HAIR_LESS else 1.0


def least_of(work: Work) -> float:
    """The share of the amount below which what stands in is no set, for the same people, as long as it is light."""
    way, plan = work.way, work.plan
    if (
        way.near <= Near.VARIANT
        or way.grips
        or not way.counts_reps
        or not way.set_s
        or not work.athlete.does_less
    ):
        return 0.0
    return min(way.dose.least_s / way.set_s, plan.most_more)


def longest_of(work: Work, *, light_set: bool = False) -> float:
    """The share of the amount above which nobody does more of what is light: slow ones make a set sooner.

    In place of a few heavy ones ten are enough for the sake of a joint, and eight of what the legs drive overhead.
    """
    way = work.way
    if not (way.amount and way.set_s):
        return inf
    usual = max(1.0, way.dose.most_s / way.set_s)
    if not light_set:
        return usual
    driven = Demand.OVERHEAD in way.variant.demands and Part.SQUAT in way.movement.trains_of(way.variant)
    if driven or work.athlete.spares_a_joint(work.plan.ways[0]):
        return max(1.0, (FEWEST_LIGHT if driven else SOME_EASY) / way.amount)
    return max(usual, FEWEST_LIGHT / way.amount)


def _of_the_unused(work: Work) -> float:
    """How much of a set whoever isn't used to training or comes back to it does.

    What leaves them breath, and a rest in each minute.
    """
    way, plan = work.way, work.plan
    begins = work.athlete.is_unused or (work.athlete.goes_gently and not work.athlete.light_duty)
    if not (begins and way.amount and way.counts_reps) or plan.scheme:
        return 1.0
    part = max(NEW_SHARE, FEW_EASY / way.amount) if _tires_the_unused(work) and not plan.light else 1.0
    # Of a few from side to side the nearest even number.
    part = max(part, FEW_IN_TURN / way.amount) if way.step == IN_TURN and way.amount <= FEWEST_LIGHT else part
    if plan.turn_s is None:
        return part
    sides = 2 if way.per_side else 1
    takes = SLOWER * way.amount * sides * way.variant.seconds.value
    return min(part, AT_WORK * plan.turn_s / takes)


def _tires_the_unused(work: Work) -> bool:
    """Whether a set takes their breath; with a weight or down into the knees, if they can't do yet what is usual."""
    way = work.way
    trained = way.movement.trains_of(way.variant)
    if trained.get(Part.BREATH, 0.0) >= HALF and not way.holds:
        return True
    return way.movement.main_of(way.variant) is Part.SQUAT and not work.athlete.gates.is_able
