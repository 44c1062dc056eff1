"""Why a line became what it is: what stood in the way of what was written, as data.

The true cause is found by asking what would be if one thing were otherwise: were the load there, were there no
limit, were the person as strong as they may well be.
"""

from decimal import Decimal
from math import inf, log
from typing import NamedTuple

from core.ability.demand import load_moved
from core.ability.kinship import COMPOUND
from core.measures import AmountUnit
from core.movements.values import Demand, Hold, Part, Pattern
from core.scaling.athlete import Athlete
from core.scaling.barriers import Barrier
from core.scaling.breath import is_out_of_reach
from core.scaling.careful import is_too_quick, times_unheld
from core.scaling.fit import ABOUT, Task, fit, hopeful, is_heavy
from core.scaling.gear import BARBELL, Load
from core.scaling.heaviest import heaviest_of, meant_kg, most_kg
from core.scaling.options import cheapest
from core.scaling.orders import NO_ORDERS
from core.scaling.parts import kept_of, without
from core.scaling.values import Because, Keeps, Reason
from core.scaling.ways import SAME_LOAD, Grip, LinePlan, Near
from core.scaling.works import Option

# So far below what is meant, in log units, a set is called light for whoever does it as written (estimate).
LIGHT_FOR_THEM = 0.25

# What is known of a person, and not only feared.
SURE = {Because.TOO_HEAVY, Because.TOO_OFTEN, Because.LIGHT_DUTY}


class Obstacle(NamedTuple):
    """What stands in the way; `about` as in Reason."""

    because: Because
    about: str | None = None


def reason_for(plan: LinePlan, option: Option, athlete: Athlete) -> Reason:
    """The reason for the chosen option of a line: of what it offers as well, beside that."""
    plan = _as_offered(plan, option)
    if option.exact and option.part == 1 and not option.build_up:
        return Reason(because=Because.TOO_LIGHT if _is_light(plan, option, athlete) else Because.AS_WRITTEN)
    because, about = obstacle_to(plan, athlete, option) or _without_obstacle(plan, option, athlete)
    if option.build_up:
        because, about = Because.UNKNOWN_HEAVY, None
    lacking = because in {Because.NOT_OWNED, Because.NOT_ASKED}
    if lacking and about is None and _has_a_weight(plan, option, athlete):
        about = _asked_for(plan, athlete)
    return Reason(
        because=because,
        about=about,
        load_kg=plan.load_kg(athlete.pair),
        keeps=keeps(plan, option),
        only_one=because is Because.NOT_OWNED and _is_one_of_two(plan, athlete, about),
        suits_kg=_heavier_that_suits(plan, option, athlete) if because is Because.NOT_OWNED else None,
        more_kg=_more_than_written(plan, option, athlete),
        eased_for=_sore_place(option, athlete, about),
        more=_is_more(plan, option),
        next_kg=_next_kg(plan, option, athlete) if because is Because.UNTESTED else None,
        without=_without(plan, option),
    )


def _as_offered(plan: LinePlan, option: Option) -> LinePlan:
    """The line as if the coach had written nothing but the choice of which this is a way."""
    if option.way is None:
        return plan
    offered = (one for one in plan.ways if one.near is Near.WRITTEN and one.movement is option.way.movement)
    written = next(offered, plan.ways[0])
    return plan if written is plan.ways[0] else plan._replace(ways=(written, *plan.ways))


def _without(plan: LinePlan, option: Option) -> Part | None:
    """The part of a compound that is left out: nobody looks for the squat in a jump."""
    written, way = plan.ways[0], option.way
    if way is None or way.near <= Near.VARIANT or written.movement.pattern not in COMPOUND:
        return None
    gone = without((written.movement, written.variant), (way.movement, way.variant))
    return None if gone is Part.PRESS and Demand.OVERHEAD in way.variant.demands else gone


def _is_more(plan: LinePlan, option: Option) -> bool:
    """Whether more are done than the coach wrote, where both are counted alike."""
    way, line = option.way, plan.line
    if way is None or way.amount is None or option.part <= 1:
        return False
    return line.amount is None or round(way.amount * option.part) > line.amount


def _next_kg(plan: LinePlan, option: Option, athlete: Athlete) -> Decimal | None:
    """The next heavier of the same, no heavier than written, that may well go: for whoever needn't take care."""
    way, task = option.way, None if option.way is None else athlete.task(plan, option.way)
    if way is None or task is None or option.hold is None or option.load is None or athlete.takes_care:
        return None
    grip = next(grip for grip in way.grips if grip.hold == option.hold)
    loads = (load for load in athlete.gear.loads(*grip.held) if load.value > option.load.value)
    nearest = min(loads, key=lambda load: load.value, default=None)
    if nearest is None or nearest.value > heaviest_of(athlete, plan, grip) or athlete.goes_no_heavier:
        return None
    return nearest.kg if hopeful(task, athlete.own_kg(way) + grip.per_kg * nearest.value) else None


def _sore_place(option: Option, athlete: Athlete, about: str | None) -> str | None:
    """What is sore today and works in it, where that isn't what the reason is about."""
    if option.way is None or not athlete.is_sore(option.way):
        return None
    place = athlete.spares(option.way)
    return place if place != about and place in athlete.profile.today.sore else None


def _more_than_written(plan: LinePlan, option: Option, athlete: Athlete) -> Decimal | None:
    """How much more it is than what is written, where what both arms do counts for both; None where it is no more."""
    written = plan.load_kg(athlete.pair)
    if written is None or option.way is None or option.load is None:
        return None
    grip = next(grip for grip in option.way.grips if grip.hold == option.hold)
    more = option.load.kg - Decimal(str(round(grip.written, 3))) * written
    return more if more > Decimal(str(SAME_LOAD)) * written else None


def _asked_for(plan: LinePlan, athlete: Athlete) -> str | None:
    """The implement that the line asks for; of what goes with many, none that the coach didn't name."""
    hold, named = plan.hold, plan.line.implement
    if named is not None or hold is None:
        return named
    anything = plan.load_kg(athlete.pair) is None or hold.count > 1
    return None if anything and hold.implement != BARBELL else hold.implement


def _has_a_weight(plan: LinePlan, option: Option, athlete: Athlete) -> bool:
    """Whether as much as is written is in the hands, or anything where no load is: then no kilos are lacking."""
    written = plan.load_kg(athlete.pair)
    return option.load is not None and written in {None, option.load.kg}


def _heavier_that_suits(plan: LinePlan, option: Option, athlete: Athlete) -> Decimal | None:
    """The lightest load above the written one that is there, where another way is done for want of it and it fits."""
    written, task = plan.ways[0], athlete.task(plan, plan.ways[0])
    if (
        task is None
        or athlete.goes_no_heavier
        or plan.load_kg(athlete.pair) is None
        or option.way is None
        or option.way.near is Near.WRITTEN
    ):
        return None
    for grip in written.grips:
        above = [
            load for load in athlete.gear.loads(*grip.held) if load.value > heaviest_of(athlete, plan, grip)
        ]
        moved = athlete.own_kg(written) + grip.per_kg * above[-1].value if above else inf
        if above and not is_heavy(fit(task, moved)):
            return above[-1].kg
    return None


def _is_light(plan: LinePlan, option: Option, athlete: Athlete) -> bool:
    """Whether what is written is too light for whoever may go harder; the heaviest is, if all there is is light.

    Without a load it is for whoever is trained, where there is a rest to do it slowly.
    """
    if option.way is None or not option.fit.cost or athlete.goes_easy(option.way):
        return False
    in_haste = (
        plan.breathless or plan.easy or plan.turn_s is not None or option.way.unit is not AmountUnit.REPS
    )
    if plan.light:
        return False
    if not plan.loaded and (in_haste or not athlete.is_trained):
        return False
    if log(max(athlete.window(plan, option.way).low, 1e-9) / option.fit.cost) <= LIGHT_FOR_THEM:
        return False
    return not plan.works_up or _is_all_there_is(option, athlete)


def _is_one_of_two(plan: LinePlan, athlete: Athlete, about: str | None) -> bool:
    """Whether what is lacking is a second one of the written load, where two are meant."""
    return any(
        plan.load_kg(athlete.pair) is not None and is_written(load, plan, athlete)
        for grip in plan.ways[0].grips
        if grip.hold.count > 1 and not grip.other and about in {None, grip.hold.implement}
        for load in athlete.gear.loads(grip.hold.implement, 1)
    )


# From this share on, what is lost of the parts would be noticed (estimate).
MOST_LOST = 0.5
LOOSE = frozenset({Pattern.MOBILITY, Pattern.TRAVEL})


def _without_obstacle(plan: LinePlan, option: Option, athlete: Athlete) -> Obstacle:
    if option.way is not None and option.part < 1 and athlete.is_sore(option.way):
        return Obstacle(Because.LIGHT_DUTY, athlete.eases_for(option.way))
    why, written = _by_itself(plan, option, athlete), plan.ways[0]
    minds = why is Because.BEST_FIT and (times_unheld(written, athlete) or is_too_quick(written, athlete))
    return Obstacle(Because.LIMIT, athlete.careful_for) if minds and athlete.careful_for else Obstacle(why)


def _by_itself(plan: LinePlan, option: Option, athlete: Athlete) -> Because:
    if option.way is None:
        return Because.NO_SAFE_OPTION
    # There is nothing to work up to.
    if plan.works_up and option.load is not None and not option.works_up:
        return Because.LIGHT_DUTY if athlete.goes_easy(option.way) else Because.TOO_LIGHT
    if option.part < 1:
        return Because.TOO_HEAVY
    # More of what is written than its few heavy ones is for whoever goes easy.
    return Because.LIGHT_DUTY if option.exact and option.part > 1 else _for_the_block(option)


def _for_the_block(option: Option) -> Because:
    """One setting only where there is something to set."""
    return Because.BEST_FIT if option.thing is None else Because.ONE_SETTING


def keeps(plan: LinePlan, option: Option) -> Keeps | None:
    """What stays the same: for a changed amount the movement; for a changed movement its pattern, with the parts.

    What eases a joint is of one pattern, and eases no other; what is done for breath is done with other parts.
    """
    way = option.way
    if way is None:
        return None
    if way.movement.pattern is not plan.ways[0].movement.pattern:
        return None
    written = plan.ways[0]
    if way.movement is not written.movement:
        kept = kept_of((written.movement, written.variant), (way.movement, way.variant))
        same = kept.is_for_it and kept.lost <= MOST_LOST and way.movement.pattern not in LOOSE
        return "pattern" if same else None
    if way.near is Near.WRITTEN or option.part != 1:
        return "movement"
    return "reps" if way.amount and (way.amount, way.unit) == (written.amount, written.unit) else None


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
    ability = _too_much(plan, athlete)
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
    if option is not None and _is_all_there_is(option, athlete):
        return lacking
    if option is not None and option.way is not None and option.way.movement is plan.ways[0].movement:
        told = ability.because in SURE or nearer is not None
        return ability if option.load is not None and told else lacking
    return ability if _is_lightest_heavy(plan, athlete) else lacking


def _is_all_there_is(option: Option, athlete: Athlete) -> bool:
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
    return Obstacle(Because.TOO_HEAVY if heavy else _for_the_block(option))


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
