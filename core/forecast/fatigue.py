"""What work leaves behind, and how it fades: a debt for each reserve and one for the whole body (design 6.5).

All arrays end in one place for each of the people that an athlete may turn out to be (`people`). A debt of one is
all there is: nothing more goes. What a set leaves fades in two parts (`core.ability.recovery`); a set of few
repetitions leaves less of the slow one, so that three at a three-repetition load are there again after two minutes
(Scudese et al. 2015, J Strength Cond Res 29(11):3079-3083).
"""

import numpy as np
from numpy.typing import NDArray

from core.ability.recovery import LIFTING, WHOLE_BODY

Floats = NDArray[np.float64]

# From so many repetitions on a set to failure leaves the whole slow part (estimate: between three, above, and the
# seven of five sets of five).
FULL_SET = 8.0
# Towards the time that is needed, from below: enough to lie within a tenth of a second.
_STEPS = 5
_NEARLY = 1e-9


def slow_share(unbroken: Floats) -> Floats:
    """How much of a set's debt fades slowly, by how many repetitions would have gone."""
    return LIFTING[1].share * np.minimum(1.0, unbroken / FULL_SET)


class Debts:
    """One row for each reserve, and the last for the whole body. `speed`: how fast each of the people recovers."""

    def __init__(self, reserves: int, speed: Floats) -> None:
        self._owed = np.zeros((2, reserves + 1, len(speed)))
        local, body = ([part.seconds for part in parts] for parts in (LIFTING, WHOLE_BODY))
        self._seconds = np.array([[[local[part]]] * reserves + [[body[part]]] for part in (0, 1)]) / speed

    @property
    def now(self) -> Floats:
        return np.asarray(self._owed[0] + self._owed[1])

    def add(self, debt: Floats, slow: Floats) -> None:
        """`debt`: for each reserve and the body; `slow`: the share of it that fades slowly."""
        self._owed[0] += debt * (1 - slow)
        self._owed[1] += debt * slow

    def rest(self, seconds: Floats) -> None:
        """Let time go by; whoever works at something else meanwhile recovers too."""
        self._owed *= np.exp(-seconds / self._seconds)

    def until(self, most: Floats) -> Floats:
        """Seconds until every debt is at `most` (a row for each); 0 where it is already."""
        over = self.now - most
        passed = np.zeros(over.shape[1])
        waiting = np.flatnonzero((over > _NEARLY).any(axis=0))
        if not len(waiting):
            return passed
        worst = over[:, waiting].argmax(axis=0), waiting
        fast, slow = self._owed[0][worst], self._owed[1][worst]
        of_fast, of_slow = self._seconds[0][worst], self._seconds[1][worst]
        goal, found = most[worst], np.zeros(len(waiting))
        for _ in range(_STEPS):
            left, less = fast * np.exp(-found / of_fast), slow * np.exp(-found / of_slow)
            found += np.maximum(0.0, left + less - goal) / np.maximum(
                left / of_fast + less / of_slow, _NEARLY
            )
        passed[waiting] = found
        return passed
