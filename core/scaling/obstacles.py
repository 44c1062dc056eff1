"""What stands in the way of what was written, first things first: a limit, the place, a thing, a load, strength."""

from typing import NamedTuple

from core.ability.demand import load_moved
from core.movements.values import Hold
from core.scaling.athlete import Athlete
from core.scaling.barriers import Barrier
from core.scaling.breath import is_out_of_reach
from core.scaling.careful import DOWN, goes_down_again
from core.scaling.fit import ABOUT, Task, fit, hopeful, is_heavy
from core.scaling.gear import Load
from core.scaling.heaviest import meant_kg, most_kg
from core.scaling.options import cheapest
from core.scaling.orders import NO_ORDERS
from core.scaling.values import Because
from core.scaling.ways import SAME_LOAD, Grip, LinePlan
from core.scaling.works import Option

# What is known of a person, and not only feared.
SURE = {Because.TOO_HEAVY, Because.TOO_OFTEN, Because.LIGHT_DUTY}


class Obstacle(NamedTuple):
    """What stands in the way; `about` as in Reason."""

    because: Because
    about: str | None = None


def obstacle_to(plan: LinePlan, athlete: Athlete, option: Option | None = None) -> Obstacle | None:
    """What stands in the way of what was written, first things first; None if only the other lines do.

    Whoever wasn't asked yet what is there isn't told that they don't have it. `option`: what is done instead, as far
    as that is known.
    """
    found = _obstacle_to(plan, athlete, option)
    if found is not None and found.because is Because.NOT_OWNED and athlete.profile.equipment is None:
        return Obstacle(Because.NOT_ASKED, found.about)
    return found


def _obstacle_to(plan: LinePlan, athlete: Athlete, option: Option | None) -> Obstacle | None:
    """A skill comes after the things: on what isn't there nothing is learned, is loud, or has to be gone easy on."""
    written, barrier = plan.ways[0], athlete.barrier(plan.ways[0])
    if barrier is not None and _comes_first(barrier):
        missing = _missing(plan, athlete, barred=True)
        anyway = missing is not None and _would_be_so_anyway(plan, athlete, option, barrier)
        return missing if missing is not None and anyway else Obstacle(*barrier)
    if _is_left_for_a_limit(plan, athlete, option):
        return Obstacle(Because.LIMIT, athlete.shunned_for(written))
    if (missing := _missing(plan, athlete, barred=barrier is not None)) is not None:
        return missing
    if barrier is not None:
        return Obstacle(*barrier)
    up = _stays_up(plan, athlete, option)
    ability = Obstacle(Because.ON_THE_FEET) if up else _too_much(plan, athlete)
    if not written.variant.holds or _is_owned(plan, athlete) or _is_among_what_is_there(plan, option):
        return ability
    return _lacking_or(ability, plan, athlete, option)


def _would_be_so_anyway(plan: LinePlan, athlete: Athlete, option: Option | None, barrier: Barrier) -> bool:
    """Whether the same would be done without the limit, for want of what isn't there."""
    if option is None or option.way is None or barrier.because is not Because.LIMIT:
        return False
    return cheapest(plan, athlete.without_limits, NO_ORDERS).way is option.way


def _is_among_what_is_there(plan: LinePlan, option: Option | None) -> bool:
    """Whether the heaviest is looked for, nobody said on what, and some weight is taken."""
    return plan.works_up and plan.line.implement is None and option is not None and option.load is not None


def _is_left_for_a_limit(plan: LinePlan, athlete: Athlete, option: Option | None) -> bool:
    """Whether another way is done that leaves what a limit would rather leave."""
    way = None if option is None else option.way
    return athlete.shuns(plan.ways[0]) and way is not None and not athlete.shuns(way)


def _stays_up(plan: LinePlan, athlete: Athlete, option: Option | None) -> bool:
    """Whether what is written on the floor is done standing, so that nobody gets down and up in every round."""
    way = None if option is None else option.way
    down = plan.breathless and goes_down_again(plan.ways[0], athlete)
    return down and way is not None and not way.demands & DOWN


def _comes_first(barrier: Barrier) -> bool:
    """Whether it would stand in the way on anything that could be there."""
    return barrier.because in {Because.LIMIT, Because.SPACE} and barrier.about != "noise"


def _missing(plan: LinePlan, athlete: Athlete, *, barred: bool) -> Obstacle | None:
    """What isn't there at all. `barred` otherwise: at whatever load counts as there."""
    written = plan.ways[0]
    if not athlete.support(written.variant).there:
        need = next(need for need in written.variant.needs if athlete.gear.first_of(need) is None)
        return Obstacle(Because.NOT_OWNED, need[0])
    if barred and written.grips and not any(_has(grip, plan, athlete) for grip in written.grips):
        return Obstacle(Because.NOT_OWNED, _meant_thing(plan))
    return None


def _lacking_or(
    ability: Obstacle | None, plan: LinePlan, athlete: Athlete, option: Option | None
) -> Obstacle:
    """That the load isn't there, or the ability: whichever is why this `option` is done."""
    lacking = Obstacle(Because.NOT_OWNED, _meant_thing(plan))
    nearer = None if option is None else _passed_over(plan, athlete, option)
    if ability is None:
        return lacking if nearer is None or option is None else _why_not(nearer, plan, athlete, option)
    if option is not None and is_all_there_is(option, athlete):
        return lacking
    if option is not None and option.way is not None and option.way.movement is plan.ways[0].movement:
        told = ability.because in SURE or nearer is not None
        return ability if option.load is not None and told else lacking
    return ability if _is_lightest_heavy(plan, athlete) else lacking


def is_all_there_is(option: Option, athlete: Athlete) -> bool:
    """Whether the heaviest that is there was taken, and is light: more would have gone."""
    if option.hold is None or option.load is None or option.fit.light <= ABOUT:
        return False
    owned = athlete.gear.loads(option.hold.implement, option.hold.count)
    return bool(owned) and option.load.value >= owned[0].value


def _passed_over(plan: LinePlan, athlete: Athlete, option: Option) -> Load | None:
    """The load that is there and nearest below the written one, where a lighter one was taken.

    Then what isn't there is not the reason.
    """
    written, hold = plan.load_kg(athlete.pair), option.hold
    if written is None or option.load is None or hold is None or option.way is not plan.ways[0]:
        return None
    owned = athlete.gear.loads(hold.implement, hold.count)
    return next((load for load in owned if option.load.kg < load.kg <= written), None)


def _why_not(load: Load, plan: LinePlan, athlete: Athlete, option: Option) -> Obstacle:
    """Why not this load, which is nearer to the written one: a little heavy, or for the other lines' sake."""
    written = plan.ways[0]
    task = athlete.task(plan, written)
    moved = load_moved(written.variant, athlete.body_mass_kg, plan.hold, load.value)
    heavy = task is not None and (would := fit(task, moved)) and would.heavy > 0
    return Obstacle(Because.TOO_HEAVY if heavy else for_the_block(option))


def _is_owned(plan: LinePlan, athlete: Athlete) -> bool:
    return any(
        is_written(load, plan, athlete)
        for grip in plan.ways[0].grips
        if not grip.other
        for load in athlete.gear.loads(grip.hold.implement, grip.hold.count)
    )


def is_written(load: Load, plan: LinePlan, athlete: Athlete) -> bool:
    """Whether a load counts as the written one; any does where the coach wrote none."""
    meant = meant_kg(athlete, plan)
    return meant is None or abs(load.value - meant) <= SAME_LOAD * meant


def _has(grip: Grip, plan: LinePlan, athlete: Athlete) -> bool:
    """Whether what is meant is there at all, at whatever load; where the coach named none, anything is meant."""
    meant = not grip.other or plan.line.implement is None
    return meant and bool(athlete.gear.loads(grip.hold.implement, grip.hold.count))


def _is_lightest_heavy(plan: LinePlan, athlete: Athlete) -> bool:
    """Whether even the lightest load that is there for it is too heavy, as far as anybody knows."""
    written = plan.ways[0]
    owned = [
        load for grip in written.grips for load in athlete.gear.loads(grip.hold.implement, grip.hold.count)
    ]
    task = athlete.task(plan, written)
    if not owned or task is None:
        return False
    lightest = min(load.value for load in owned)
    moved = load_moved(written.variant, athlete.body_mass_kg, plan.hold, lightest)
    return is_heavy(fit(task, moved))


def _meant_thing(plan: LinePlan) -> str | None:
    """The implement, if the coach wrote it or the movement knows no other."""
    if plan.line.implement is not None:
        return plan.line.implement
    things = {hold.implement for hold in plan.ways[0].variant.holds}
    return things.pop() if len(things) == 1 else None


def _too_much(plan: LinePlan, athlete: Athlete) -> Obstacle | None:
    """Whether a set is too much, and whether for the sake of ease, of strength, or of what nobody knows."""
    written = plan.ways[0]
    task, moved = athlete.task(plan, written), _written_kg(plan, athlete)
    if _is_capped(plan, athlete):
        return Obstacle(Because.LIGHT_DUTY, athlete.eases_for(written))
    if task is None or not is_heavy(would := fit(task, moved)):
        return _out_of_breath(plan, athlete)
    usual = Task(task.ability, task.set_amount, plan.windows[athlete.pair - 1], task.counts_reps)
    if task.light_duty and not is_heavy(fit(usual, moved)):
        return Obstacle(Because.LIGHT_DUTY, athlete.eases_for(written))
    if not athlete.capacity.knows(written.movement) and hopeful(usual, moved):
        return Obstacle(Because.UNTESTED, written.movement.id)
    if would.refused is Because.UNKNOWN_HEAVY and plan.hold is not None:
        return Obstacle(Because.UNKNOWN_HEAVY)  # of a weight; one's own body is known
    once = None if plan.unhurried is None else usual._replace(window=plan.unhurried)
    goes = once is not None and not is_heavy(fit(once, moved))
    return Obstacle(Because.TOO_OFTEN if goes else Because.TOO_HEAVY)


def _out_of_breath(plan: LinePlan, athlete: Athlete) -> Obstacle | None:
    """Whether breathing can't keep up with what is written, or shouldn't have to."""
    written = plan.ways[0]
    if not is_out_of_reach(plan, written, athlete):
        return None
    easy = athlete.goes_easy(written)
    return Obstacle(Because.LIGHT_DUTY, athlete.eases_for(written)) if easy else Obstacle(Because.TOO_HEAVY)


def _is_capped(plan: LinePlan, athlete: Athlete) -> bool:
    """Whether so much is not lifted by whoever should go easy, or must not hold their breath."""
    written, meant = plan.ways[0], meant_kg(athlete, plan)
    grip = next((grip for grip in written.grips if grip.hold == plan.hold), None)
    if meant is None or grip is None or athlete.is_noted:
        return False
    return meant > most_kg(athlete, plan, written, grip)


def _written_kg(plan: LinePlan, athlete: Athlete) -> float:
    """Load moved as written; where no load is written, with the lightest that is there."""
    outside = plan.load_kg(athlete.pair)
    load = _lightest(plan.hold, athlete) if outside is None else float(outside)
    return load_moved(plan.ways[0].variant, athlete.body_mass_kg, plan.hold, load)


def _lightest(hold: Hold | None, athlete: Athlete) -> float:
    loads = athlete.gear.loads(hold.implement, hold.count) if hold else ()
    return loads[-1].value if loads else 0.0


def for_the_block(option: Option) -> Because:
    """One setting only where there is something to set."""
    return Because.BEST_FIT if option.thing is None else Because.ONE_SETTING
