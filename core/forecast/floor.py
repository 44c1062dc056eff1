"""Doing the work: set after set, with the breaks that people take, for all that an athlete may turn out to be."""

import numpy as np

from core.forecast.fatigue import Debts, Floats
from core.forecast.work import Work

# In a session nobody works to the last repetition before they put it down (estimate).
STOPS_AT = 0.92
# What is put down is picked up again for so much of a fresh set, and not before a breath or two (estimates).
GOES_ON_WITH = 0.3
BREAK_S = 4.0
# Nobody waits longer in the middle of a line, come what may (estimate).
LONGEST_BREAK_S = 40.0
# From one line to the next (estimate; trained people keep up 23-30 mixed light repetitions a minute, changes
# included: common practice, no source).
CHANGE_S = 5.0
# With all that there is gone, a repetition takes so much longer (estimate: what is known as loss of speed in a set).
SLOWS = 0.3
# Whoever needs more parts than these for a line goes on like that.
_PARTS = 3
_SURE = 1e-9
# The rests are found from below, so that a repetition may be missing a hair.
_ALMOST = 0.01


class Floor:
    """The time so far, the debts, and into which parts the middle one of the people broke each line."""

    def __init__(self, reserves: int, speed: Floats, *, stops_at: float = STOPS_AT) -> None:
        self.time = np.zeros_like(speed)
        self.parts: dict[int, list[list[int]]] = {}
        self._debts = Debts(reserves, speed)
        self._stops_at = stops_at

    def rest(self, seconds: Floats | float) -> None:
        if np.any(seconds):
            waited = np.zeros_like(self.time) + seconds
            self._debts.rest(waited)
            self.time = self.time + waited

    def do(self, work: Work, amount: float) -> None:
        """All of it, however many breaks it takes."""
        left = np.full_like(self.time, amount)
        parts: list[int] = []
        while (left > _SURE).any():
            began = self.time
            done = self._part(work, left, first=not parts)
            left = left - done
            parts.append(round(float(done[0])))
            if len(parts) == _PARTS:
                # By then each part is like the last: there is as much rest in it as makes the next one go.
                self.time = self.time + left * (self.time - began) / np.maximum(done, _SURE)
                parts += [parts[-1]] * round(float(left[0]) / max(parts[-1], 1))
                break
        self.parts.setdefault(work.line, []).append([one for one in parts if one])

    def do_for(self, work: Work, seconds: float) -> Floats:
        """As many as go in so long; returns how many."""
        ends = self.time + seconds
        done, more = np.zeros_like(self.time), np.ones_like(self.time)
        first = True
        while (more > _SURE).any():
            more = self._part(work, np.full_like(self.time, np.inf), ends, first=first)
            done, first = done + more, False
        self.rest(np.maximum(0.0, ends - self.time))
        return done

    def to_failure(self, work: Work) -> Floats:
        """One set as far as it goes; returns how many."""
        return self._part(work, np.full_like(self.time, np.inf), first=True)

    def _part(self, work: Work, left: Floats, ends: Floats | float = np.inf, *, first: bool) -> Floats:
        """Rest until enough goes again, and do what goes then, at most what is left and until the end."""
        least = np.minimum(left, np.maximum(1.0, np.ceil(GOES_ON_WITH * work.unbroken)))
        # What alone is more than all there is comes one by one.
        most = self._stops_at - np.minimum(work.debt * least, self._stops_at - _SURE)
        waits = np.minimum(self._debts.until(np.where(work.debt > 0, most, np.inf)), LONGEST_BREAK_S)
        if not first:
            waits = np.maximum(waits, BREAK_S)
        waits = np.where(left > _SURE, waits, 0.0)
        waits = np.minimum(waits, np.maximum(0.0, ends - self.time))
        self.rest(waits)
        number = np.minimum(np.maximum(self._goes(work), least), left)
        number = np.minimum(number, np.maximum(0.0, ends - self.time) / work.seconds)
        if work.whole:
            number = np.floor(number + _ALMOST)
        self._take(work, number)
        return number

    def _goes(self, work: Work) -> Floats:
        room = np.maximum(0.0, self._stops_at - self._debts.now)
        with np.errstate(divide="ignore", invalid="ignore"):
            goes = np.where(work.debt > 0, room / work.debt, np.inf).min(axis=0)
        return np.asarray(goes)

    def _take(self, work: Work, number: Floats) -> None:
        tired = np.minimum(1.0, self._debts.now.max(axis=0) + work.debt.max(axis=0) * number / 2)
        seconds = number * work.seconds * (1 + SLOWS * tired)
        self._debts.work(seconds, work.debt * number)
        self._debts.add(work.debt * number, work.slow)
        self.time = self.time + seconds
