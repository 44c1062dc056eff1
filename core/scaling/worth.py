"""What it would be worth to know an ability: on how many lines of this session the answer would change the choice.

Everything somebody does speaks of all they can do, so that any answer may change many lines. What anybody could
have foretold counts half: that somebody does ten squats says little.
"""

from collections.abc import Iterator, Sequence
from math import erfc, log, sqrt
from typing import NamedTuple

from core.ability.demand import load_moved
from core.athletes.values import Evidence
from core.scaling.athlete import Athlete
from core.scaling.gear import Load
from core.scaling.heaviest import heaviest_of
from core.scaling.options import cheapest
from core.scaling.orders import Orders
from core.scaling.ways import LinePlan, Way
from core.scaling.works import Option

# The answers that are tried: what the weak third, the middle and the strong third would say.
ANSWERS = ((-1.0, 0.3), (0.0, 0.4), (1.0, 0.3))

# Whether a set goes must be open (from 0, known, to 1, even chances) for a closer look.
OPEN = 0.08


class Candidate(NamedTuple):
    """An ability that could be asked for: of the written way of a line, with the load that would be taken."""

    plan: LinePlan
    way: Way
    load: Load | None
    moved_kg: float


def candidates(plans: Sequence[LinePlan], athlete: Athlete) -> Iterator[Candidate]:
    """Abilities whose answer could matter: nothing that a limit, the place or missing things decide already."""
    seen = set()
    for plan in plans:
        way = plan.ways[0]
        counts = way.counts_reps and way.set_amount is not None
        barrier = athlete.barrier(way)
        if not counts or way.movement.id in seen or not athlete.support(way.variant).there:
            continue
        if barrier is not None and not (way.variant.skill and barrier.about == way.movement.id):
            continue
        if (load := _load(plan, athlete)) is not None or not way.variant.holds:
            seen.add(way.movement.id)
            value = load.value if load else 0.0
            yield Candidate(plan, way, load, load_moved(way.variant, athlete.body_mass_kg, plan.hold, value))


def worth(one: Candidate, plans: Sequence[LinePlan], athlete: Athlete) -> float:
    """On how many lines the choice would be another one after the answer, on average; a foregone one counts half."""
    openness = _openness(one, athlete)
    if openness < OPEN:
        return 0.0
    now = _choices(plans, athlete)
    return (
        (1 + openness)
        / 2
        * sum(
            share * sum(before != after for before, after in zip(now, _choices(plans, told), strict=True))
            for z, share in ANSWERS
            for told in [_told(one, athlete, z)]
        )
    )


def _load(plan: LinePlan, athlete: Athlete) -> Load | None:
    """The load that would be taken by somebody strong enough: as near to the written one as there is."""
    written = plan.load_kg(athlete.pair)
    owned = [
        (grip.other, load)
        for grip in plan.ways[0].grips
        for load in athlete.gear.loads(grip.hold.implement, grip.hold.count)
        if load.value <= heaviest_of(athlete, plan, grip)
    ]
    if not owned:
        return None
    if written is None:
        return min(owned, key=lambda one: (one[0], one[1].kg))[1]
    return min(owned, key=lambda one: (abs(one[1].kg - written), one[0], one[1].kg))[1]


def _told(one: Candidate, athlete: Athlete, z: float) -> Athlete:
    """The athlete, had they told what goes at this quantile."""
    reps = round(athlete.ability(one.way).unbroken(one.moved_kg, z))
    load = one.load.kg if one.load else None
    # What is told now is the latest.
    last = max((known.on for known in athlete.profile.evidence if known.on), default=None)
    told = Evidence(
        movement=one.way.movement.id, variant=one.way.variant.id, on=last, reps=reps, load_kg=load
    )
    known = (*athlete.profile.evidence, told)
    return Athlete(athlete.profile.model_copy(update={"evidence": known}), athlete.catalogue)


def _choices(plans: Sequence[LinePlan], athlete: Athlete) -> list[tuple[object, ...]]:
    """What each line would be by itself."""
    return [_seen(cheapest(plan, athlete, Orders())) for plan in plans]


def _seen(option: Option) -> tuple[object, ...]:
    return option.way and option.way.id, option.held, option.support, option.part, option.build_up


def _openness(one: Candidate, athlete: Athlete) -> float:
    """How open it is whether a set goes: 4 p (1 - p), with p the chance that it costs more than meant."""
    ability = athlete.ability(one.way)
    if one.moved_kg <= 0 or ability.spread <= 0 or one.way.set_amount is None:
        return 0.0
    needed = one.way.set_amount / (athlete.window(one.plan, one.way).high)
    strength = one.moved_kg * (1 + needed / ability.k)
    z = (log(strength) - log(ability.strength_kg)) / ability.spread
    p = 0.5 * erfc(-z / sqrt(2))
    return 4 * p * (1 - p)
