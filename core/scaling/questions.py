"""What still has to be asked before this session can be made personal (design sections 1 and 4.3).

Only what this session needs and nobody knows yet, and never the same twice. The first time that is equipment
and body mass in words, the rest by taps: which of a pair, limits, and at most two abilities.
"""

from collections.abc import Iterable, Iterator
from math import erfc, exp, log, sqrt

from core.athletes.values import Profile
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.scaling.athlete import Athlete
from core.scaling.demand import load_moved
from core.scaling.fit import TOLERANCE
from core.scaling.gear import Load
from core.scaling.plan import LinePlan, Way, plan_of
from core.scaling.values import Ask, Question
from core.sessions.values import Session

# No more than two abilities are asked for one session, and only where the answer could matter: where it is
# neither sure that the set goes, nor that it doesn't (doubt is p (1 - p), a quarter at most).
MOST_ABILITIES = 2
WORTH_ASKING = 0.05


def next_question(profile: Profile, session: Session, catalogue: Catalogue) -> Question | None:
    """The next thing to ask this athlete for this session; None when a version can be made.

    Pure, and stateless: what was answered (or skipped) is in the profile. A tested movement counts as asked,
    with or without a count. Raises UnknownMovement.
    """
    plans = [line for block in plan_of(session, catalogue) for lines in block.sections for line in lines]
    if profile.equipment is None and any(_could_use_equipment(plan) for plan in plans):
        return Question(ask=Ask.EQUIPMENT)
    if profile.pair is None and profile.sex is None and any(len(plan.line.loads_kg) > 1 for plan in plans):
        return Question(ask=Ask.PAIR)
    if profile.limits is None:
        return Question(ask=Ask.LIMITS)
    if _needs_body_mass(profile, plans):
        return Question(ask=Ask.BODY_MASS)
    return _ability(profile, plans, catalogue)


def _could_use_equipment(plan: LinePlan) -> bool:
    return any(way.variant.holds or way.variant.needs for way in plan.ways)


def _needs_body_mass(profile: Profile, plans: Iterable[LinePlan]) -> bool:
    """Body mass counts where it is moved beside a weight; alone it cancels out."""
    if profile.body_mass_kg is not None or profile.body_mass_skipped:
        return False
    return any(plan.loaded and plan.ways[0].variant.body_share.value > 0 for plan in plans)


def _ability(profile: Profile, plans: Iterable[LinePlan], catalogue: Catalogue) -> Question | None:
    written = [plan for plan in plans if plan.ways[0].unit is AmountUnit.REPS]
    asked = {evidence.movement for evidence in profile.evidence if evidence.kind != "easier"}
    if len(asked & {plan.ways[0].movement.id for plan in written}) >= MOST_ABILITIES:
        return None
    athlete = Athlete(profile, catalogue)
    open_ones = [plan for plan in written if plan.ways[0].movement.id not in asked]
    doubts = [
        (_doubt(plan, athlete, load), -place, plan, load)
        for place, plan in enumerate(open_ones)
        for load in _to_ask_at(plan, athlete)
    ]
    if not doubts or (most := max(doubts, key=lambda doubt: doubt[:2]))[0] < WORTH_ASKING:
        return None
    _, _, plan, load = most
    way = plan.ways[0]
    return Question(
        ask=Ask.ABILITY, movement=way.movement.id, variant=way.variant.id, load_kg=load.kg if load else None
    )


def _to_ask_at(plan: LinePlan, athlete: Athlete) -> Iterator[Load | None]:
    """The load to ask about: unloaded, or the owned one nearest to what is written."""
    way = plan.ways[0]
    if athlete.barrier(way) is not None and not way.variant.skill:
        return
    if not way.variant.holds:
        yield None
        return
    written = plan.load_kg(athlete.pair)
    owned = [load for hold in way.variant.holds for load in athlete.gear.loads(hold.implement, hold.count)]
    if owned:
        yield min(owned, key=lambda load: (abs(load.kg - written) if written else -load.kg, load.kg))


def _doubt(plan: LinePlan, athlete: Athlete, load: Load | None) -> float:
    """How open it is whether a set goes: p (1 - p), with p the chance that it costs more than meant."""
    way = plan.ways[0]
    if way.set_amount is None:
        return 0.0
    ability = athlete.ability(way)
    moved = load_moved(way.variant, athlete.body_mass_kg, plan.hold, float(load.kg) if load else 0.0)
    if moved <= 0 or ability.spread <= 0:
        return 0.0
    p = _chance_too_heavy(way, plan, athlete, moved)
    return p * (1 - p)


def _chance_too_heavy(way: Way, plan: LinePlan, athlete: Athlete, moved_kg: float) -> float:
    """Chance that fewer repetitions go than the window with its tolerance needs."""
    assert way.set_amount is not None
    ability = athlete.ability(way)
    needed = way.set_amount / (athlete.window(plan, way).high * exp(TOLERANCE))
    strength = moved_kg * (1 + needed / ability.k)
    z = (log(strength) - log(ability.strength_kg)) / ability.spread
    return 0.5 * erfc(-z / sqrt(2))
