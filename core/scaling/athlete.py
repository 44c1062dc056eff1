"""One athlete as scaling sees them: ability, equipment, barriers and how hard it may get."""

from decimal import Decimal
from functools import cached_property
from math import inf
from typing import NamedTuple, TypeVar

from core.ability.capacity import Ability, Capacity
from core.ability.demand import load_moved
from core.ability.whole_body import Rate, rate_of
from core.athletes.limits import day_rule, lightened
from core.athletes.values import Profile
from core.movements.lookup import Catalogue
from core.movements.values import Demand, Movement, Variant
from core.scaling.barriers import (
    LIGHT_DUTY_EFFORT,
    Barrier,
    asks_for_less,
    barrier_of,
    effort_at_most,
    flags,
    is_on_light_duty,
    ruled_out_for,
)
from core.scaling.fit import (
    NEVER_TOO_LIGHT,
    OF_A_LOAD,
    OF_AN_EASIER_WAY,
    OF_AN_UNTRIED_LOAD,
    OF_NO_LOAD_WHERE_ONE_IS_WRITTEN,
    OF_THE_HEAVIEST,
    Lightness,
    Task,
)
from core.scaling.gear import at_hand, gear_of
from core.scaling.intent import LIGHT_DUTY, Window
from core.scaling.notes import NO_NOTES, Notes
from core.scaling.values import Because
from core.scaling.ways import AS_WRITTEN, Grip, LinePlan, Way

# A run breathes like the row that it stands for: so many times its rate is the same work (estimate).
AS_MUCH_BREATH = 1.25


Bound = TypeVar("Bound", int, float)


class Support(NamedTuple):
    """What a variant leans on. `there` is False where something it needs is missing."""

    implement: str | None = None
    height_cm: Decimal | None = None
    there: bool = True


NOTHING = Support()


class Athlete:
    """A profile with everything that is worked out from it once."""

    def __init__(
        self, profile: Profile, catalogue: Catalogue, year: int | None = None, notes: Notes = NO_NOTES
    ) -> None:
        self.profile = profile
        self.notes = notes
        self.is_noted = notes is not NO_NOTES
        self._year = year
        self.catalogue = catalogue
        self.capacity = Capacity(profile, catalogue, year)
        self.body_mass_kg = self.capacity.body_mass_kg
        self.gear = gear_of(at_hand(profile))
        self.pair = profile.meant_pair
        self.day = day_rule(profile.limits or ())
        easing = profile.today.easing
        self.effort_at_most = _least(effort_at_most(profile), easing.effort_at_most if easing else None)
        # No set costs over half, and nothing is scored (design 7).
        self.light_duty = is_on_light_duty(profile)
        # Whoever comes back does sets as light, but may run.
        self._goes_gently = self.light_duty or (
            easing is not None and easing.effort_at_most <= LIGHT_DUTY_EFFORT
        )
        self.minutes = _least(profile.today.minutes, self.day.minutes_at_most)
        self.ruled_out = ruled_out_for(profile)
        self.sits = bool(self.ruled_out & flags({Demand.STANDING}))
        self._lightened = flags(lightened(profile.limits or ()))
        self._sore = bool(profile.today.sore)
        self._eased = notes.eased
        self._is_unburdened = not (self._goes_gently or self._lightened or self._sore or self._eased)
        self._barriers: dict[str, Barrier | None] = {}
        self._spared: dict[str, str | None] = {}

    @cached_property
    def without_notes(self) -> "Athlete":
        """The same, if no coach had noted anything."""
        return Athlete(self.profile, self.catalogue, self._year)

    @cached_property
    def past_notes(self) -> "Athlete":
        """The same where the coach has decided since: the words are shown, and bind nothing."""
        return Athlete(self.profile, self.catalogue, self._year, self.notes.unbound())

    @cached_property
    def forgiven(self) -> "Athlete":
        """The same where a cap takes away what would be done: whatever it leaves is heavy enough."""
        return Athlete(self.profile, self.catalogue, self._year, self.notes.forgiving())

    def ability(self, way: Way) -> Ability:
        return self.capacity.of(way.movement, way.variant, way.id, way.kin)

    @property
    def scored(self) -> bool:
        """Whether there is an expected score and a rank."""
        return self.day.scored and not self.light_duty and self.profile.today.easing is None

    def goes_easy(self, way: Way) -> bool:
        """Whether no set of this way may cost over half: light duty, a limit that lightens it, soreness, a note."""
        if self._is_unburdened:
            return False
        return self._goes_gently or way.movement.pattern in self._eased or self.spares(way) is not None

    def spares(self, way: Way) -> str | None:
        """The limit or sore place for whose sake a way goes easy."""
        if not way.demands & self._lightened and not self._sore:
            return None
        if way.id not in self._spared:
            self._spared[way.id] = asks_for_less(self.profile, way.movement, way.variant)
        return self._spared[way.id]

    def task(self, plan: LinePlan, way: Way) -> Task | None:
        """What a set of this way asks; None where no count applies."""
        if way.set_amount is None:
            return None
        easy = self.goes_easy(way)
        window = plan.windows[self.pair - 1]
        ability = self.capacity.of(way.movement, way.variant, way.id, way.kin)
        return Task(
            ability,
            way.set_amount,
            window.under(LIGHT_DUTY) if easy else window,
            way.counts_reps,
            easy,
            _lightness(plan, way, ability, easy=easy or self._is_forgiven(way) or self._is_learning(plan)),
        )

    def bounds(self, way: Way) -> tuple[float, float]:
        """Loads moved outside of which a set of this way is sure not to fit."""
        if way.set_amount is None:
            return 0.0, inf
        kin = way.kin
        base = self.capacity.base(way.movement, way.variant, way.id, kin)
        easy = self.goes_easy(way)
        least, most = way.fitting[self.pair - 1 + 2 * easy]
        strength = base.strength_kg * kin.ratio
        if self._is_forgiven(way):
            least = 0.0
        return strength * least, strength * base.sure[kin.loaded][kin.reference] * most

    def most(self, way: Way, grip: Grip, *, heavier: bool) -> tuple[float, float]:
        """The heaviest that is allowed, and what is near enough to stand in for it; `heavier`: than is written."""
        most, nearly = (inf, inf) if heavier else grip.most(self.pair)
        if not self.is_noted:
            return most, nearly
        cap = self.notes.cap(way.movement.pattern, grip.hold.count)
        return min(most, cap), min(nearly, cap)

    def window(self, plan: LinePlan, way: Way) -> Window:
        """What a set of this line is meant to cost this athlete."""
        meant = plan.windows[self.pair - 1]
        return meant.under(LIGHT_DUTY) if self.goes_easy(way) else meant

    def within_reach(self, plan: LinePlan, *, asked: bool) -> tuple[Way, ...]:
        """Ways of a line for which everything is there; with those that are too hard, where they are `asked` for."""
        things, holds = self.gear.things, self.gear.holds
        ways = (plan.sitting if self.sits else plan.reachable).within(things, holds)
        return (*ways, *(way for way in plan.harder if way.is_within(things, holds))) if asked else ways

    def barrier(self, way: Way) -> Barrier | None:
        """What rules a way out, whatever its load."""
        if not way.bars & self.ruled_out and not way.skill:
            return None
        if way.id not in self._barriers:
            self._barriers[way.id] = self._find_barrier(way)
        return self._barriers[way.id]

    def _is_forgiven(self, way: Way) -> bool:
        """Whether nothing is too light, for a note's sake."""
        return self.is_noted and way.movement.pattern in self.notes.forgiven

    def _is_learning(self, plan: LinePlan) -> bool:
        """Whether the written line is a skill yet to be learned: one starts light with it."""
        barrier = self.barrier(plan.ways[0])
        return barrier is not None and barrier.because is Because.SKILL

    def is_out_of_reach(self, plan: LinePlan, way: Way) -> bool:
        """Whether breathing can't keep up with this work where it goes on without a rest.

        What asks for no more breath than the written line is what the coach meant, unless it should be easy.
        """
        met, meant = way.met, plan.ways[0].met
        if not plan.breathless or met is None or met <= self.rate.met:
            return False
        return meant is None or met > AS_MUCH_BREATH * meant or self.goes_easy(plan.ways[0])

    @cached_property
    def rate(self) -> Rate:
        """What rate of work they keep up."""
        return rate_of(self.profile, self._year)

    def may_do(self, movement: Movement, variant: Variant) -> bool:
        """Whether nothing rules a variant out or asks to go easy on it; what it needs is another matter."""
        barred = barrier_of(self.profile, movement, variant) is not None or (variant.seated and not self.sits)
        return not (barred or variant.skill or asks_for_less(self.profile, movement, variant))

    def own_kg(self, way: Way) -> float:
        """What is moved of the body itself, at the height that there is for it."""
        if way.share is not None:
            return way.share * self.body_mass_kg
        height = self.support(way.variant).height_cm
        return load_moved(way.variant, self.body_mass_kg, height_cm=None if height is None else float(height))

    def support(self, variant: Variant) -> Support:
        """What is there to lean on or hang from, at its height."""
        if not variant.needs:
            return NOTHING
        thing, *more = map(self.gear.first_of, variant.needs)
        if thing is None or None in more:
            return Support(there=False)
        return Support(thing, self._height_cm(thing) if variant.body_share.by_height else None)

    def _height_cm(self, thing: str) -> Decimal | None:
        told = self.gear.height_cm(thing)
        usual = self.catalogue.implement(thing).height_cm
        return told if told is not None else Decimal(str(usual.value)) if usual else None

    def _find_barrier(self, way: Way) -> Barrier | None:
        found = barrier_of(self.profile, way.movement, way.variant)
        if found is None and way.variant.skill and way.id not in self.capacity.skills:
            return Barrier(Because.SKILL, way.movement.id)
        return found


def _lightness(plan: LinePlan, way: Way, ability: Ability, *, easy: bool) -> Lightness:
    """How being too light counts for a way, but for the load that is written."""
    if plan.loaded and not easy:
        if plan.works_up and way.distance == AS_WRITTEN:
            return OF_THE_HEAVIEST
        untried = OF_AN_UNTRIED_LOAD if way.grips else OF_NO_LOAD_WHERE_ONE_IS_WRITTEN
        return untried if ability.tested_kg is None or plan.works_up else OF_A_LOAD
    return NEVER_TOO_LIGHT if way.distance == AS_WRITTEN else OF_AN_EASIER_WAY


def _least(*bounds: Bound | None) -> Bound | None:
    """The lowest of those that are set."""
    return min((bound for bound in bounds if bound is not None), default=None)
