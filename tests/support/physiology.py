"""Invented people who train.  Each muscle group loses strength per repetition (exponential load-repetition
curve) and regains it from three pools; the whole body has an oxygen uptake with lag and ceiling and a finite
oxygen debt.  Sessions are played repetition by repetition from rest.  Numbers without a source are estimates."""

from __future__ import annotations

import math
import zlib
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

GROUPS: tuple[str, ...] = ("push", "pull", "legs", "hips", "core", "grip")


@dataclass(frozen=True)
class Line:
    """One line of a workout: repetitions of a movement, or a run of some metres."""

    movement: str
    reps: int = 0
    external_kg: float = 0.0
    metres: float = 0.0


@dataclass(frozen=True)
class _Move:
    """Load per group (share of body mass, multiple of external kg); seconds; oxygen (ml/kg) per repetition
    without and per unit of external/body mass; share of recovery that goes on inside the cycle."""

    load: dict[str, tuple[float, float]]
    seconds: float
    oxygen: float
    oxygen_ext: float = 0.0
    pause: float = 0.0


# Push-up share of body mass 0.64-0.69: Ebben 2011, Suprak 2011.  Swing oxygen from about
# 34 ml/kg/min with 16 kg at 22 a minute: Farrar 2010.  Other oxygen: lifted mass x height at 20 %
# efficiency plus a quarter for the lowering.  Remaining shares, seconds and pauses: estimates.
MOVES: dict[str, _Move] = {
    "push-up": _Move({"push": (0.66, 1.0), "core": (0.22, 0.3)}, 1.5, 0.65, 0.9),
    "air squat": _Move({"legs": (0.85, 1.0), "hips": (0.45, 0.6)}, 1.65, 1.2, 1.4),
    "goblet squat": _Move({"legs": (0.85, 1.1), "hips": (0.45, 0.8), "core": (0.10, 0.7)}, 2.1, 1.25, 1.6),
    "swing": _Move({"hips": (0.45, 1.9), "grip": (0.0, 1.5), "core": (0.10, 0.5)}, 1.65, 0.6, 4.5, 0.1),
    "sit-up": _Move({"core": (0.50, 1.0)}, 2.2, 0.75, 0.9),
    "burpee": _Move({"push": (0.50, 1.0), "legs": (0.70, 1.0), "core": (0.25, 0.3)}, 4.4, 3.35, 3.5, 0.2),
    "pull-up": _Move({"pull": (0.95, 1.0), "grip": (0.45, 0.5)}, 2.0, 1.35, 1.4),
    "lunge": _Move({"legs": (0.92, 1.2), "hips": (0.50, 0.8)}, 1.8, 1.15, 1.5, 0.1),
}
# Median one-repetition maximum as multiple of body mass (body share included) at 80 kg men and
# 65 kg women: (man some, man trained, woman some, woman trained).  Estimates.
STRENGTH: dict[str, tuple[float, float, float, float]] = {
    "push": (1.00, 1.13, 0.74, 0.90),
    "pull": (1.13, 1.33, 0.87, 1.12),
    "legs": (1.82, 2.00, 1.68, 1.86),
    "hips": (1.88, 2.10, 1.65, 1.86),
    "core": (1.04, 1.14, 0.96, 1.07),
    "grip": (1.15, 1.30, 0.95, 1.08),
}
POOL_SHARE = np.array([0.62, 0.31, 0.07])  # of each loss of strength; estimate
POOL_TAU_S = np.array([32.0, 210.0, 3600.0])  # fast like phosphocreatine (Harris 1976); rest estimates
REST_O2 = 3.5  # ml/kg/min at rest, convention


def _curve(reps: float, endurance: float) -> float:
    """Fraction of maximum left after reps: Mayhew et al. 1992 (0.522 + 0.419 exp(-0.055 r)), made
    to start at 1 and with the floor itself wearing off slowly (estimate), so light loads end too."""
    return 0.46 * math.exp(-0.055 * (reps - 1)) + 0.54 * math.exp((1 - reps) / endurance)


def _curve_reps(fraction: float, endurance: float) -> float:
    """Repetitions to failure at a fraction of maximum: _curve inverted by bisection."""
    if fraction >= 1.0:
        return 0.0
    low, high = 1.0, 900.0
    for _ in range(40):
        mid = (low + high) / 2
        low, high = (mid, high) if _curve(mid, endurance) > fraction else (low, mid)
    return low


class _Body:
    """State of one person within one session."""

    def __init__(self, person: Person, day: int) -> None:
        self.p, self.t = person, 0.0
        self.cap, self.vo2, self.debt_max = person._form(day)
        self.pools = {g: np.zeros(3) for g in GROUPS}
        self.uptake, self.debt = REST_O2 + 1.0, 0.0
        self._cache: dict[tuple[str, float], dict[str, tuple[float, float]]] = {}

    def ceiling(self) -> float:
        """Sustainable uptake, ml/kg/min: drifts down by 3 % per e-fold beyond 10 min (estimate)."""
        return self.vo2 * (self.p._threshold - 0.03 * max(0.0, math.log(max(self.t, 1.0) / 600)))

    def needs(self, name: str, kg: float) -> dict[str, tuple[float, float]]:
        """Per group: (fraction of fresh maximum needed, loss of strength per repetition)."""
        if (name, kg) not in self._cache:
            out = self._cache[name, kg] = {}
            for g, (share, ext) in MOVES[name].load.items():
                skill = self.p._skill[name] if g == next(iter(MOVES[name].load)) else 1.0
                f = (share * self.p.body_mass_kg + ext * kg) / (self.cap[g] * skill)
                reps = _curve_reps(f, self.p._endurance[g])
                out[g] = (f, (1 - f) / reps if reps >= 1 else 1.0)
        return self._cache[name, kg]

    def able(self, name: str, kg: float) -> float:
        """Repetitions the weakest group still has; breathlessness takes up to 5 % (estimate)."""
        winded = 0.05 * (self.debt / self.debt_max) ** 2
        return min(
            (1 - winded - float(self.pools[g].sum()) - f) / loss
            for g, (f, loss) in self.needs(name, kg).items()
        )

    def fresh(self, name: str, kg: float) -> float:
        """Repetitions the weakest group has when rested."""
        return min((1 - f) / loss for f, loss in self.needs(name, kg).values())

    def _breathe(self, seconds: float, work_ml: float) -> None:
        """Uptake follows demand with a lag of 30 s (Whipp 1972); shortfall adds to the debt."""
        demand = work_ml / seconds * 60 + REST_O2
        self.uptake += (min(self.ceiling(), demand + self.debt / 1.1) - self.uptake) * (
            1 - math.exp(-seconds / 30)
        )
        self.debt = max(0.0, self.debt + (demand - self.uptake) * seconds / 60)

    def _recover(self, seconds: float, keep: dict[str, float]) -> None:
        for g in GROUPS:
            self.pools[g] *= np.exp(-seconds * keep.get(g, 1.0) * self.p._recovery / POOL_TAU_S)

    def rest(self, seconds: float) -> None:
        """Stand still; long rests are cut into steps of at most 5 s."""
        while seconds > 1e-9:
            step = min(5.0, seconds)
            self._breathe(step, 0.0)
            self._recover(step, {})
            self.t, seconds = self.t + step, seconds - step

    def rep(self, name: str, kg: float, haste: float = 1.0, ease: float = 0.45) -> None:
        """One repetition; tempo slows near failure and, by ease, when out of breath (estimate)."""
        move, needs = MOVES[name], self.needs(name, kg)
        tired = 1 - min(1.0, max(0.0, self.able(name, kg) / max(self.fresh(name, kg), 1.0)))
        winded = min(1.2, self.debt / self.debt_max)
        seconds = move.seconds * self.p._tempo * haste * (1 + 0.35 * tired**3 + ease * winded**2)
        self._breathe(seconds, (move.oxygen + move.oxygen_ext * kg / self.p.body_mass_kg) * self.p._waste)
        self._recover(seconds, dict.fromkeys(needs, move.pause))
        for g, (_, loss) in needs.items():
            self.pools[g] += loss * POOL_SHARE
        self.t += seconds

    def run(self, metres: float, effort: float, fastest: float, until: float) -> float:
        """Run in pieces of 25 m at an effort relative to the ceiling; returns metres done."""
        done = 0.0
        while done < metres and self.t < until:
            piece = min(25.0, metres - done)
            room = 1 + 0.12 * (1 - 2 * self.debt / self.debt_max)
            legs = 1 - 0.25 * float(self.pools["legs"].sum())
            speed = min(
                max((self.ceiling() * effort * room - REST_O2) / self.p._run_cost / 60 * legs, 1.4), fastest
            )
            self._breathe(piece / speed, self.p._run_cost * piece)
            self._recover(piece / speed, {"legs": 0.6, "hips": 0.8})
            self.pools["legs"] += 0.00006 * piece * POOL_SHARE
            self.t, done = self.t + piece / speed, done + piece
        return done


class Person:
    """An invented person; sex, body_mass_kg, age and trained are visible, the rest is hidden."""

    def __init__(self, seed: int) -> None:
        rng = np.random.default_rng([seed, 77])
        self._seed = seed
        self.sex: str = "man" if rng.random() < 0.55 else "woman"
        self.trained: str = "trained" if rng.random() < 0.5 else "some"
        self.age: int = int(np.clip(rng.normal(34, 9), 18, 62))
        man, trained = self.sex == "man", self.trained == "trained"
        typical = 80.0 if man else 65.0
        self.body_mass_kg: float = round(float(np.clip(typical * math.exp(rng.normal(0, 0.13)), 46, 125)), 1)

        def spread(sd: float) -> float:
            return math.exp(sd * float(np.clip(rng.normal(), -2.3, 2.3)))

        # Relative strength falls with mass (power -1/3) and 0.6 % a year past 35; estimate.
        scale = (self.body_mass_kg / typical) ** (-1 / 3) * (1 - 0.006 * max(0, self.age - 35)) * spread(0.07)
        column = (0 if man else 2) + (1 if trained else 0)
        self._strength = {
            g: STRENGTH[g][column] * scale * spread(0.035 if g in ("legs", "hips", "core") else 0.07)
            for g in GROUPS
        }
        base = 215 * spread(0.16) * (1.1 if trained else 1.0)
        self._endurance = {g: base * spread(0.12) for g in GROUPS}
        self._skill = {m: spread(0.04) for m in MOVES}
        # Oxygen uptake: norms for active adults, minus 0.3 ml/kg/min a year past 30; estimate.
        mean = (45.0 if man else 41.0) + (5.0 if trained else 0.0) - 0.3 * max(0, self.age - 30)
        self._vo2 = float(np.clip(mean * (self.body_mass_kg / typical) ** -0.3 * spread(0.08), 36.5, 59))
        self._threshold = float(np.clip(rng.normal(0.87 if trained else 0.85, 0.02), 0.80, 0.92))
        self._debt = (55.0 if man else 46.0) * spread(0.12)  # ml/kg, Medbo 1988
        self._run_cost = 0.2 * spread(0.04)  # ml/kg/m, American College metabolic equation
        self._sprint = (7.4 if man else 6.3) * spread(0.07) * (1 - 0.005 * max(0, self.age - 30))
        self._recovery = spread(0.18) * (1.04 if trained else 1.0)
        self._tempo = spread(0.09) * (0.98 if trained else 1.06)
        self._waste = spread(0.06) * (1.0 if trained else 1.06)
        self._transition = 4.8 * spread(0.4)
        self._hot = float(rng.beta(1.5, 3)) * (0.8 if trained else 1.2)  # starts too fast
        self._margin = float(rng.uniform(0.04, 0.18))  # of fresh maximum
        self._chunk = float(rng.uniform(0.15, 0.35))
        self._patience = 14.0 * spread(0.35)  # longest planned break, s
        self._dawdle = 1.0 + (
            float(rng.uniform(0.3, 0.9)) if rng.random() < 0.2 else float(rng.uniform(0, 0.12))
        )
        self._quits = float(rng.uniform(0.3, 0.6)) if rng.random() < 0.2 else 0.05  # stops a set early
        self._gain_s, self._gain_e = (
            float(x) for x in rng.uniform(0.01, 0.05, 2) * (1.0 if trained else 2.2)
        )

    def _rng(self, day: int, label: str) -> np.random.Generator:
        return np.random.default_rng([self._seed, day & 0xFFFFFFFF, zlib.crc32(label.encode())])

    def _form(self, day: int) -> tuple[dict[str, float], float, float]:
        """Strength (kg) per group, uptake and debt of the day: noise, saturating progress over 12 weeks (estimates)."""
        rng, grown = self._rng(day, "form"), 1 - math.exp(-max(day, 0) / 84)
        whole = math.exp(rng.normal(0, 0.016)) * (1 + self._gain_s * grown)
        cap = {
            g: self._strength[g] * self.body_mass_kg * whole * math.exp(rng.normal(0, 0.006)) for g in GROUPS
        }
        vo2 = self._vo2 * math.exp(rng.normal(0, 0.02)) * (1 + self._gain_e * grown)
        return cap, vo2, self._debt * math.exp(rng.normal(0, 0.05))

    def _set(self, body: _Body, movement: str, kg: float, rng: np.random.Generator) -> int:
        """One set to failure; some stop one to three repetitions early."""
        leave, done = int(rng.integers(1, 4)) if rng.random() < self._quits else 0, 0
        while (
            body.able(movement, kg) >= (1 + leave if done else 1) and body.debt < body.debt_max and done < 500
        ):
            body.rep(movement, kg, ease=0.15)
            done += 1
        return done

    def test_reps(self, movement: str, external_kg: float, day: int) -> int:
        """Repetitions in one set to failure when fresh."""
        return self._set(
            _Body(self, day), movement, external_kg, self._rng(day, f"test{movement}{external_kg}")
        )

    def max_sets(self, sets: int, rest_s: float, movement: str, external_kg: float, day: int) -> int:
        """Total of several sets to failure with rest between (dawdlers take part of their extra)."""
        body, total = _Body(self, day), 0
        rng = self._rng(day, f"sets{sets}{rest_s}{movement}{external_kg}")
        for i in range(sets):
            body.rest(rest_s * (1 + 0.4 * (self._dawdle - 1) * rng.random()) if i else 0.0)
            total += self._set(body, movement, external_kg, rng)
        return total

    def _even_run(self, metres: float, body: _Body) -> float:
        """All-out seconds: oxygen balance; sprint-to-aerobic speed limit after Bundle, Hoyt & Weyand 2003."""
        low, high = metres / 9.0, metres / 0.8
        for _ in range(50):
            s = body.t = (low + high) / 2
            aerobic = (body.ceiling() - REST_O2) / self._run_cost / 60
            supply = aerobic * (s - 30 * (1 - math.exp(-s / 30))) + body.debt_max / self._run_cost
            reach = aerobic + max(0.0, self._sprint - aerobic) * math.exp(-0.013 * s)
            possible = supply >= metres and metres / s <= reach + 0.15 * aerobic
            low, high = (low, s) if possible else (s, high)
        return high

    def run_seconds(self, metres: float, day: int) -> float:
        """All-out even run; 1 % noise of execution on top of the form of the day."""
        return self._even_run(metres, _Body(self, day)) * (
            1 + abs(self._rng(day, f"run{metres}").normal(0, 0.01))
        )

    def _line(
        self, body: _Body, line: Line, part: Callable[[], float], until: float, rng: np.random.Generator
    ) -> float:
        """Do one line, pausing as needed; returns the share done by the time limit."""
        if line.metres > 0:
            effort = 0.95 + (0.2 * self._hot if part() < 0.15 else 0.0) + (0.05 if part() > 0.9 else 0.0)
            fastest = line.metres / self._even_run(line.metres, _Body(self, 0))
            return body.run(line.metres, effort, fastest, until) / line.metres
        name, kg, done = line.movement, line.external_kg, 0
        fresh = body.fresh(name, kg)
        while done < line.reps and body.t < until:
            hot = self._hot if part() < 0.15 else (0.6 if part() > 0.92 else 0.0)  # bad start, last spurt
            margin = 1 + self._margin * fresh * max(0.0, 1 - 1.5 * hot)
            breath = 0.62 + 0.3 * min(hot, 1.0)
            if body.able(name, kg) < min(margin, max(fresh, 1.0)) or body.debt > breath * body.debt_max:
                goal = min(margin + min(line.reps - done - 1, self._chunk * fresh), 0.95 * fresh)
                longest, waited = self._patience * (0.6 + 0.8 * rng.random()), 0.0
                while waited < 600 and body.t < until:
                    able, air = body.able(name, kg), body.debt / body.debt_max
                    if (
                        able >= 1
                        and air < 0.95
                        and (waited >= longest or (able >= goal and air < 0.9 * breath))
                    ):
                        break
                    body.rest(1.0)
                    waited += 1.0
                if body.able(name, kg) < 1:
                    return done / line.reps
                body.rest(waited * (self._dawdle - 1) * rng.random() * 2)
            body.rep(name, kg, 1 - 0.2 * hot)
            done += body.t <= until
        return done / line.reps if line.reps else 1.0

    def _go(self, rounds: int, lines: list[Line], until: float, day: int, label: str) -> tuple[float, float]:
        """Play a session: rounds done and seconds.  In the decimals 10 m of running count as one repetition."""
        body, rng = _Body(self, day), self._rng(day, f"{label}{lines}")
        weights = [x.metres / 10 if x.metres > 0 else float(x.reps) for x in lines]
        for r in range(rounds):
            gained = 0.0
            for i, line in enumerate(lines):

                def part(r: int = r, i: int = i) -> float:
                    return body.t / until if math.isfinite(until) else (r + i / len(lines)) / rounds

                body.rest(
                    self._transition * (1.0 if line.metres else 0.6) * (0.7 + 0.6 * rng.random())
                    if r or i
                    else 0.0
                )
                share = self._line(body, line, part, until, rng)
                gained += share * weights[i]
                if share < 1:
                    return r + gained / sum(weights), math.inf if body.t < until else until
        return float(rounds), body.t

    def amrap(self, minutes: float, lines: list[Line], day: int) -> float:
        """Rounds with decimals in a fixed time; stops counting at a movement the person cannot do."""
        return self._go(10_000, lines, minutes * 60, day, f"amrap{minutes}")[0]

    def for_time(self, rounds: int, lines: list[Line], day: int) -> float:
        """Seconds for the rounds; infinite if a movement is beyond the person."""
        return self._go(rounds, lines, math.inf, day, f"time{rounds}")[1]


def people(count: int, seed: int) -> list[Person]:
    """Invented people, the same for the same seed."""
    return [Person(int(s)) for s in np.random.default_rng(seed).integers(1, 2**31 - 1, count)]
