"""Why a line became what it is: what stood in the way of what was written, as data.

The true cause is found by asking what would be if one thing were otherwise: were the load there, were there no
limit, were the person as strong as they may well be.
"""

from decimal import Decimal
from math import inf, log

from core.ability.kinship import COMPOUND
from core.measures import AmountUnit
from core.movements.values import Demand, Part, Pattern
from core.scaling.athlete import Athlete
from core.scaling.careful import is_too_quick, times_unheld
from core.scaling.fit import fit, hopeful, is_heavy
from core.scaling.gear import BARBELL
from core.scaling.heaviest import heaviest_of
from core.scaling.obstacles import Obstacle, for_the_block, is_all_there_is, is_written, obstacle_to
from core.scaling.parts import kept_of, without
from core.scaling.sore import sore_in
from core.scaling.values import Because, Keeps, Reason
from core.scaling.ways import SAME_LOAD, LinePlan, Near
from core.scaling.works import Option

# So far below what is meant, in log units, a set is called light for whoever does it as written (estimate).
LIGHT_FOR_THEM = 0.25


def reason_for(plan: LinePlan, option: Option, athlete: Athlete) -> Reason:
    """The reason for the chosen option of a line: of what it offers as well, beside that."""
    plan = _as_offered(plan, option)
    if option.exact and option.part == 1 and not option.build_up:
        light = _is_light(plan, option, athlete)
        return Reason(
            because=Because.TOO_LIGHT if light else Because.AS_WRITTEN,
            eased_for=None if light or plan.easy else _sore_place(option, athlete),
        )
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


def _sore_place(option: Option, athlete: Athlete, about: str | None = None) -> str | None:
    """What is sore today and works in it, where that isn't what the reason is about."""
    place = None if option.way is None else sore_in(option.way, athlete)
    return place if place != about else None


def _more_than_written(plan: LinePlan, option: Option, athlete: Athlete) -> Decimal | None:
    """How much more it is than what is written, where what both arms do counts for both; None where it is no more.

    Nor where the hips lift instead what the line holds up: nobody compares the two.
    """
    written = plan.load_kg(athlete.pair)
    if written is None or option.way is None or option.load is None:
        return None
    if plan.ways[0].movement.pattern is Pattern.SQUAT and option.way.movement.pattern is Pattern.HINGE:
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
    return not plan.works_up or is_all_there_is(option, athlete)


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
    if why is Because.BEST_FIT and written.movement.pattern is Pattern.TRAVEL and athlete.must_spare(written):
        return Obstacle(Because.LIGHT_DUTY, athlete.eases_for(written))
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
    return Because.LIGHT_DUTY if option.exact and option.part > 1 else for_the_block(option)


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
