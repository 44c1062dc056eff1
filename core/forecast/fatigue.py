"""What work leaves behind, and how it fades: a debt for each reserve and one for the whole body.

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
# From so many on it fades as after work of the whole body (estimate; 32 push-ups are some 40 in two minutes: a coach).
LONG_SET = 30.0
# Towards the time that is needed, from below: enough to lie within a tenth of a second.
_STEPS = 4
_NEARLY = np.float32(1e-6)


def slow_share(unbroken: Floats) -> Floats:
    """How much of a set's debt fades slowly, by how many repetitions would have gone.

    The more they are, the more a set is like going on until nothing goes, of which it was measured (`WHOLE_BODY`).
    """
    of_lifting, of_all = LIFTING[1].share, WHOLE_BODY[1].share
    longer = np.clip((unbroken - FULL_SET) / (LONG_SET - FULL_SET), 0.0, 1.0)
    return of_lifting * np.minimum(1.0, unbroken / FULL_SET) + (of_all - of_lifting) * longer


class Debts:
    """One row for each reserve, and the last for the whole body. `speed`: how fast each of the people recovers.

    In single precision, which an exponential takes a fraction of the time for and which is far more than is known.
    """

    def __init__(self, reserves: int, speed: Floats) -> None:
        self._owed = np.zeros((2, reserves + 1, len(speed)), dtype=np.float32)
        self._body = np.arange(reserves + 1) == reserves
        seconds = [[part.seconds for part in parts] for parts in (LIFTING, WHOLE_BODY)]
        self._rates = (speed / np.array(seconds).T[:, :, None]).astype(np.float32)

    @property
    def now(self) -> Floats:
        return np.asarray(self._owed[0] + self._owed[1])

    def add(self, debt: Floats, slow: Floats) -> None:
        """`debt`: for each reserve and the body; `slow`: the share of it that fades slowly."""
        slowly = debt * slow
        self._owed[0] += debt - slowly
        self._owed[1] += slowly

    def rest(self, seconds: Floats) -> None:
        """Let time go by."""
        left = np.exp(-self._rates * seconds.astype(np.float32))
        self._owed[:, :-1] *= left[:, :1]
        self._owed[:, -1] *= left[:, 1]

    def work(self, seconds: Floats, taken: Floats) -> None:
        """Let time go by at work: of what it draws on less fades, the more of it is `taken` (a row each)."""
        free = (seconds * np.maximum(0.0, 1 - taken)).astype(np.float32)
        self._owed[:, :-1] *= np.exp(-self._rates[:, :1] * free[:-1])
        self._owed[:, -1] *= np.exp(-self._rates[:, 1] * free[-1])

    def until(self, most: Floats) -> Floats:
        """Seconds until every debt is at `most` (a row for each); 0 where it is already."""
        over = self.now - most
        passed = np.zeros(over.shape[1])
        waiting = np.flatnonzero(over.max(axis=0) > _NEARLY)
        if not len(waiting):
            return passed
        row = over[:, waiting].argmax(axis=0)
        fast, slow = self._owed[:, row, waiting]
        of_fast, of_slow = self._rates[:, self._body[row].astype(int), waiting]
        goal, found = most[row, waiting].astype(np.float32), np.zeros(len(waiting), dtype=np.float32)
        for _ in range(_STEPS):
            left, less = fast * np.exp(-found * of_fast), slow * np.exp(-found * of_slow)
            found += np.maximum(0, left + less - goal) / (left * of_fast + less * of_slow + _NEARLY)
        passed[waiting] = found
        return passed
