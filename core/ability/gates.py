"""What a body must have shown, or be likely to bear, before something is asked of it: whatever the strength says.

Common practice, no source: upside down from about eight floor push-ups on; running and jumping as written only for
whoever has shown it, or is neither old, nor heavy, nor unused to it.
"""

from functools import cached_property

from core.ability.capacity import Capacity
from core.ability.norms import age_of
from core.athletes.values import Sex
from core.movements.values import Demand, Movement, Pattern, Variant

PUSH_UPS_FOR_UPSIDE_DOWN = 8
# From so many on their hands may be as low as the line allows (estimate).
PUSH_UPS_FOR_LOW_HANDS = 8
OLD = 65
OLD_FOR_THE_UNUSED = 40
FRAIL_FROM = 75
LONG_OFF = 26
HEAVY_KG = {Sex.MALE: 110, Sex.FEMALE: 95, None: 105}

# Whoever can do so many is able: nothing empty-handed is made believe to be work for them (estimates).
ABLE = {"push-up/floor": 10, "air squat/floor": 20}

POUNDING = frozenset({Demand.IMPACT, Demand.JUMPING})
# Beside that, what whoever is new and hardly does a floor push-up isn't given: a hurry down and up again (estimate).
PUSH_UPS_TO_HURRY = 3
HURRIED = POUNDING | {Demand.UP_AND_DOWN}


class Gates:
    """What one athlete's body may be asked."""

    def __init__(self, capacity: Capacity, year: int | None) -> None:
        self._capacity = capacity
        profile = capacity.profile
        mass = profile.body_mass_kg
        age = age_of(profile, year)
        unused = profile.experience == "new" or (profile.weeks_off or 0) >= LONG_OFF
        self._is_new = profile.experience == "new"
        old = age >= OLD or (unused and age >= OLD_FOR_THE_UNUSED)
        self.is_old = age >= FRAIL_FROM and profile.experience != "trained"
        self.may_pound = not old and (mass is None or mass < HEAVY_KG[profile.sex])
        self._shown = {one.movement for one in profile.evidence if one.reps != 0} | {
            one.partition("/")[0] for one in profile.skills
        }

    def is_shut(self, movement: Movement, variant: Variant) -> bool:
        """Whether the body isn't ready for this, as far as is known."""
        demands = variant.demands
        if movement.id in self._shown:
            return False
        if Demand.UPSIDE_DOWN in demands and movement.pattern is not Pattern.MOBILITY:
            return self._capacity.sure_of_body("push-up/floor") < PUSH_UPS_FOR_UPSIDE_DOWN
        if self._is_new and not self._holds_itself_up and not HURRIED.isdisjoint(demands):
            return True
        return not self.may_pound and not POUNDING.isdisjoint(demands)

    @cached_property
    def may_lean_low(self) -> bool:
        """Whether enough floor push-ups go to do many with the hands on something low."""
        return self._capacity.sure_of_body("push-up/floor") >= PUSH_UPS_FOR_LOW_HANDS

    @cached_property
    def _holds_itself_up(self) -> bool:
        """Whether some floor push-ups go, so that hurrying down and up again is safe."""
        return self._capacity.sure_of_body("push-up/floor") >= PUSH_UPS_TO_HURRY

    @cached_property
    def is_able(self) -> bool:
        """Whether somebody can do what ordinary training asks."""
        return self._capacity.does_any_of(ABLE)
