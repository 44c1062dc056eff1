"""One athlete as scaling sees them: ability, equipment, barriers and how hard it may get."""

from functools import cached_property
from typing import TypeVar

from core.ability.capacity import Ability, Capacity
from core.ability.demand import load_moved
from core.ability.gates import Gates
from core.ability.whole_body import Rate, rate_of
from core.athletes.easing import NEW, eased_by
from core.athletes.limits import day_rule, lightened, limit, ruled_out, shunned, shunned_by
from core.athletes.values import Profile
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Demand, Movement, Pattern, Variant
from core.scaling.barriers import (
    LIGHT_DUTY_EFFORT,
    SORE,
    Barrier,
    asks_for_less,
    barrier_of,
    effort_at_most,
    flags,
    is_on_light_duty,
    ruled_out_for,
)
from core.scaling.fit import Task
from core.scaling.gear import at_hand, gear_of
from core.scaling.intent import LIGHT_DUTY, Window, by_effort
from core.scaling.notes import NO_NOTES, Notes
from core.scaling.support import NOTHING, Support, support_of
from core.scaling.values import Because
from core.scaling.ways import LinePlan, Near, Way

# Up to here an effort is moderate (on the scale of 0 to 10, 5 and 6 are; estimate).
MODERATE_EFFORT = 5
# Eight of fifteen that were shown are about half of them (estimate).
ABOUT_HALF = 1.08
# Shoulders that push a chair all day press overhead again and again at such a share of what goes (estimate).
OVERHEAD_AGAIN, OVERHEAD = 0.5, flags({Demand.OVERHEAD})
# So long a walk isn't walked in a room (estimate).
A_WALK_S = 300.0
Bound = TypeVar("Bound", int, float)


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
        self.is_new = profile.experience == "new"
        self.is_trained = profile.experience == "trained"
        self.easing = easing = eased_by(self.day, profile.today.easing or (NEW if self.is_unused else None))
        self.effort_at_most = _least(effort_at_most(profile), easing.effort_at_most if easing else None)
        # No set costs over half, and nothing is scored (estimates).
        self.light_duty = is_on_light_duty(profile)
        # Whoever comes back does sets as light, but may run.
        self.goes_gently = self.light_duty or (
            easing is not None and easing.effort_at_most <= LIGHT_DUTY_EFFORT
        )
        self.minutes = _least(profile.today.minutes, self.day.minutes_at_most)
        self.ruled_out = ruled_out_for(profile)
        self.spared = ruled_out(profile.limits or ())
        self.sits = bool(self.ruled_out & flags({Demand.STANDING}))
        self.is_unsteady = not self.sits and bool(self.ruled_out & flags({Demand.BALANCE}))
        self._lightened = flags(lightened(profile.limits or ()))
        self._shunned = flags(shunned(profile.limits or ()))
        self.must_breathe = bool(self.ruled_out & flags({Demand.BREATH_HOLDING}))
        self._wishes = {one for one in profile.limits or () if limit(one).kind == "wish"}
        self._sore = bool(profile.today.sore)
        self._eased = notes.eased
        self._is_unburdened = not (self.goes_gently or self._lightened or self._sore or self._eased)
        self._barriers: dict[str, Barrier | None] = {}
        self._spared: dict[str, str | None] = {}
        self._kept_from: dict[str, bool] = {}

    @cached_property
    def without_notes(self) -> "Athlete":
        """The same, if no coach had noted anything."""
        return Athlete(self.profile, self.catalogue, self._year)

    @cached_property
    def without_limits(self) -> "Athlete":
        """The same, if there were no limit to mind."""
        return Athlete(self.profile.model_copy(update={"limits": ()}), self.catalogue, self._year, self.notes)

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
        """Whether there is an expected score and a rank: nobody chases either under a cap on their effort."""
        return self.day.scored and self.effort_at_most is None

    @cached_property
    def is_unused(self) -> bool:
        """Whether they are told to be new, or are old or heavy and not told to be trained."""
        experience = self.profile.experience
        return self.is_new or (experience == "some" and not self.gates.may_pound)

    @cached_property
    def does_less(self) -> bool:
        """Whether a usual set is enough for them: who isn't used to it, comes back, or is held to a moderate effort."""
        return self.is_unused or self.is_held_back

    @cached_property
    def is_frail(self) -> bool:
        """Whether a fall must not be: for what they have or their age, unless they can do what training asks."""
        return not (self.sits or self.gates.is_able) and (self.may_fall or self.gates.is_old)

    @cached_property
    def careful_for(self) -> str | None:
        """For whose sake a hand holds on and nothing is done fast: what makes a fall likely, else a condition."""
        limits = sorted(map(limit, self.profile.limits or ()), key=lambda one: not one.frail)
        minds = (one.id for one in limits if one.frail or one.kind in {"condition", "state"})
        return next(minds, None)

    @cached_property
    def may_fall(self) -> bool:
        """Whether something that they have makes a fall likely, or hard."""
        return any(limit(one).frail for one in self.profile.limits or ())

    @cached_property
    def takes_care(self) -> bool:
        """The one measure of caution that all lines share.

        For whoever does less or might fall, or has a body to mind and hasn't shown what ordinary training asks.
        """
        unshown = self.has_to_spare and not self.gates.is_able
        return self.does_less or self.is_unsteady or self.is_frail or unshown

    @cached_property
    def has_to_spare(self) -> bool:
        """Whether there is a body to mind, and not only a wish."""
        return any(limit(one).kind != "wish" for one in self.profile.limits or ())

    @property
    def is_held_back(self) -> bool:
        """Whether their effort is moderate at most."""
        return self.effort_at_most is not None and self.effort_at_most <= MODERATE_EFFORT

    def goes_easy(self, way: Way) -> bool:
        """Whether no set of this way may cost over half: light duty, a limit that lightens it, soreness, a note."""
        if self._is_unburdened:
            return False
        return self.goes_gently or way.movement.pattern in self._eased or self.spares(way) is not None

    def shuns(self, way: Way) -> bool:
        """Whether a limit would rather leave what this way asks for."""
        return bool(way.demands & self._shunned)

    def shunned_for(self, way: Way) -> str | None:
        """The limit that would rather leave what this way asks for."""
        return shunned_by(self.profile.limits or (), way.variant.demands) if self.shuns(way) else None

    def spares(self, way: Way) -> str | None:
        """The limit or sore place for whose sake a way goes easy."""
        if not way.demands & self._lightened and not self._sore:
            return None
        if way.id not in self._spared:
            self._spared[way.id] = asks_for_less(self.profile, way.movement, way.variant)
        return self._spared[way.id]

    def joint_in(self, way: Way) -> str | None:
        """The sore joint that a way is made to spare, or goes easy on: it is used all the same."""
        if not self._joints:
            return None
        if self.spared.intersection(way.variant.spares):
            return next(
                (one for one in self._joints if set(limit(one).rules_out) & set(way.variant.spares)), None
            )
        spared = self.spares(way)
        return spared if spared in self._joints else None

    @cached_property
    def _joints(self) -> tuple[str, ...]:
        return tuple(one for one in self.profile.limits or () if limit(one).may_hurt)

    def must_spare(self, way: Way) -> bool:
        """Whether it is more than a wish for whose sake a way goes easy: who leaves out jumps may run."""
        spared = self.spares(way)
        return spared is not None and spared not in self._wishes

    def eases_for(self, way: Way) -> str | None:
        """For whose or what sake it goes easy: a limit, a sore place, or the weeks after a break."""
        returns = self.easing is not None and self.easing.of == "returning"
        return self.spares(way) or ("returning" if returns else None)

    def is_kept_from_easier(self, way: Way) -> bool:
        """Whether a limit rules out a way of the same movement that is a step easier."""
        if not self.profile.limits:
            return False
        if way.id not in self._kept_from:
            easier = (name for name in way.variant.easier if name.partition("/")[0] == way.movement.id)
            barriers = (barrier_of(self.profile, *self.catalogue.variant(name)) for name in easier)
            self._kept_from[way.id] = any(
                one is not None and one.because is Because.LIMIT for one in barriers
            )
        return self._kept_from[way.id]

    def is_sore(self, way: Way) -> bool:
        """Whether what is sore today does the work of this way."""
        return self._sore and way.movement.pattern in self._sore_patterns

    @cached_property
    def _sore_patterns(self) -> frozenset[Pattern]:
        every = frozenset(Pattern)
        return frozenset().union(*(SORE.get(place, every) for place in self.profile.today.sore))

    def spares_a_joint(self, written: Way) -> bool:
        """Whether a sore joint rules out what is written."""
        barrier = self.barrier(written)
        return (
            barrier is not None
            and barrier.because is Because.LIMIT
            and barrier.about is not None
            and limit(barrier.about).may_hurt
        )

    def task(self, plan: LinePlan, way: Way) -> Task | None:
        """What a set of this way asks; None where no count applies."""
        if way.set_amount is None:
            return None
        easy = self.goes_easy(way) or self._lifts_lightly(plan, way)
        window = self._meant(plan, way)
        ability = self.capacity.of(way.movement, way.variant, way.id, way.kin)
        if not easy:
            meant_easy = plan.easy or plan.light
            return Task(ability, way.set_amount, window, way.counts_reps, meant_easy=meant_easy)
        shown = bool(way.holds) and self.capacity.has_shown(way.movement)
        most = self._most_of_a_set(window) * (ABOUT_HALF if shown else 1)
        return Task(ability, way.set_amount, window.under(most), way.counts_reps, most)

    def _most_of_a_set(self, window: Window) -> float:
        """Half of what goes; whoever only comes back breaks as usual what is broken into several sets, half as much."""
        return window.high if self.comes_back and window.high > 1 else LIGHT_DUTY

    def _lifts_lightly(self, plan: LinePlan, way: Way) -> bool:
        """Whoever must not hold their breath does no set that is nearly all that goes."""
        return self.must_breathe and plan.heavy and bool(way.holds)

    @cached_property
    def goes_no_heavier(self) -> bool:
        """Whether nothing is heavier than written for them: who is new, comes back, or has something to spare."""
        begins = self.easing is not None and self.easing.of in {"new", "returning"}
        return self.has_to_spare or begins or self.is_unused or self.goes_gently

    @cached_property
    def does_no_more(self) -> bool:
        """Whether nothing is added to what is light for them: who is new, or has a condition to mind."""
        minds = any(limit(one).kind in {"condition", "state"} for one in self.profile.limits or ())
        return minds or self.is_unused

    @property
    def comes_back(self) -> bool:
        """Whether they go gently after a break, and for nothing else."""
        return self.goes_gently and not (self.light_duty or self.profile.limits)

    def should_be_hard(self, plan: LinePlan, way: Way) -> bool:
        """Whether being too light counts: not for who goes easy, starts with a skill, or is kept light by a note.

        Nor where the coach wants it easy.

        Nor without a load for whoever isn't used to it, or has a cap on their effort.
        """
        if plan.easy or plan.light or (not plan.loaded and self.does_less):
            return False
        learning = way.near <= Near.VARIANT and self._is_learning(plan)
        return not (
            learning or self.goes_easy(way) or self.is_forgiven(way) or self._lifts_lightly(plan, way)
        )

    def has_shown(self, task: Task | None, way: Way, moved_kg: float) -> bool:
        """Whether so heavy a load of this movement was lifted before."""
        tested = None if task is None else task.ability.tested_kg
        return tested is not None and self.capacity.knows(way.movement) and moved_kg <= tested

    def window(self, plan: LinePlan, way: Way) -> Window:
        """What a set of this line is meant to cost this athlete."""
        meant = self._meant(plan, way)
        return meant.under(self._most_of_a_set(meant)) if self.goes_easy(way) else meant

    def _meant(self, plan: LinePlan, way: Way) -> Window:
        """What a set of this way is meant to cost: where the coach wrote an effort, no more than their own cap."""
        meant, rule = plan.windows[self.pair - 1].times(way.less), plan.line.load_rule
        if self.sits and plan.breathless and way.demands & OVERHEAD:
            meant = meant.under(OVERHEAD_AGAIN)
        told = rule is not None and rule.effort is not None and way.counts_reps
        if self.effort_at_most is None or not way.set_amount or not told:
            return meant
        return meant.under(by_effort(self.effort_at_most, way.set_amount).high)

    def within_reach(self, plan: LinePlan, *, asked: bool) -> tuple[Way, ...]:
        """Ways of a line for which everything is there; with those that are too hard, where they are `asked` for."""
        things, holds = self.gear.things, self.gear.holds
        ways = (plan.sitting if self.sits else plan.reachable).within(things, holds)
        return (*ways, *(way for way in plan.harder if way.is_within(things, holds))) if asked else ways

    def barrier(self, way: Way) -> Barrier | None:
        """What rules a way out, whatever its load."""
        if way.is_written_walk and (self.profile.place is None or self._goes_out(way)):
            return None if self._is_fit_to_walk(way) else self._find_barrier(way)
        if way.id not in self._barriers:
            self._barriers[way.id] = self._find_barrier(way)
        return self._barriers[way.id]

    def _goes_out(self, way: Way) -> bool:
        """Whether they leave the house for so long a walk, however small it is: not who might fall."""
        falls = self.is_unsteady or self.is_frail
        return way.unit is AmountUnit.SECONDS and (way.amount or 0.0) >= A_WALK_S and not falls

    def _is_fit_to_walk(self, way: Way) -> bool:
        """Whether nothing but a want of room stands against a walk that is written: there is a way somewhere."""
        barrier = self._find_barrier(way)
        return barrier is None or barrier == Barrier(Because.SPACE, "running")

    def is_forgiven(self, way: Way) -> bool:
        """Whether nothing is too light, for a note's sake."""
        return self.is_noted and way.movement.pattern in self.notes.forgiven

    def _is_learning(self, plan: LinePlan) -> bool:
        """Whether the written line is a skill yet to be learned: one starts light with it."""
        barrier = self.barrier(plan.ways[0])
        return barrier is not None and barrier.because is Because.SKILL

    @cached_property
    def gates(self) -> Gates:
        """What their body may be asked."""
        return Gates(self.capacity, self._year)

    @cached_property
    def is_used_to_jumps(self) -> bool:
        """Whether a jump is no new risk: for whoever is able, isn't new to it and may land."""
        return not self.is_new and self.gates.may_pound and self.gates.is_able and not self.goes_gently

    @cached_property
    def has_weights(self) -> bool:
        """Whether there is a weight that is made for it, which is taken before a band."""
        held = (implement for implement, _ in self.gear.holds)
        return any(not self.catalogue.implement(one).improvised for one in held)

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
        return support_of(variant, self.gear, self.catalogue) if variant.needs else NOTHING

    def _has_skill(self, way: Way) -> bool:
        """Shown, told, or, of lifts, learned by whoever trains: a weight can be as light as it needs to be."""
        lifts = bool(way.holds) and self.profile.experience in {"some", "trained"}
        by = way.variant.shown_by
        as_strong = by is not None and self.capacity.sure_of_body(by.of) >= by.reps
        return lifts or as_strong or way.id in self.capacity.skills

    def _find_barrier(self, way: Way) -> Barrier | None:
        barred = way.bars & self.ruled_out
        if barred and (found := barrier_of(self.profile, way.movement, way.variant)) is not None:
            return found
        if way.skill and not self._has_skill(way):
            return Barrier(Because.SKILL, way.movement.id)
        if self.gates.is_shut(way.movement, way.variant):
            return Barrier(Because.UNTESTED, way.movement.id)
        return None


def _least(*bounds: Bound | None) -> Bound | None:
    """The lowest of those that are set."""
    return min((bound for bound in bounds if bound is not None), default=None)
