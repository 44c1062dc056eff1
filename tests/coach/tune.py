"""`make tune`: looks for better points near those of the table on the tuning half, and prints the share of both halves.

Of each case every option is worked out once, with how many times it is charged what; other points then only change a
product and where it is least. Neighbours are taken to stay as they are, so what is found is judged once more, whole.
One entry at a time goes up and down by a quarter; what is gained is kept if it is worth more than it strays from the
numbers that were set by hand. Nothing is written: a coach changes `core/scaling/costs.toml`.
"""

import sys
from collections.abc import Iterator, Sequence
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from core.athletes.circumstances import in_circumstances
from core.movements.lookup import catalogue
from core.scaling.athlete import Athlete
from core.scaling.costs import Costs, costs
from core.scaling.lines import line_of
from core.scaling.options import every_option
from core.scaling.orders import Orders
from core.scaling.plan import plan_for
from core.scaling.rows import PARTS, Usual, usual_of
from core.scaling.values import Because, Part, Reason, Spot
from core.scaling.version import withheld_from
from core.scaling.ways import BlockPlan, LinePlan
from core.scaling.works import Option
from tests.coach.judge import (
    TUNING,
    UNTOUCHED,
    YEAR,
    Case,
    athlete_of,
    block_of,
    cases_in,
    judged,
    likeness,
    outcome_of,
    share,
)

# A never outweighs some that are signed; straying from the hand-set numbers costs so much per natural logarithm.
NEVER, STRAYING = 1.0, 0.4
STEP = 1.25
FIXED = frozenset({"rest", "build_up", "make_believe"})
ROUNDS = 6
WORTH = {"signed": 1.0, "refused": 0.0, "never": -NEVER}
UNEXPLAINED = Reason(because=Because.AS_WRITTEN)


class Line(NamedTuple):
    """Of each option of a case: how many times it is charged each entry, and what it is worth to give it."""

    counts: NDArray[np.float64]
    worth: NDArray[np.float64]


def line_of_case(case: Case) -> Line | None:
    """None where there is no session for them, or none that can be read, whatever the points."""
    profile, session = in_circumstances(athlete_of(case.athlete)), block_of(case.session, case.line)
    if session is None or withheld_from(profile) is not None:
        return None
    athlete = Athlete(profile, catalogue(), YEAR)
    (plan,) = plan_for(session, athlete.easing, catalogue(), athlete.pair)
    usual = usual_of(1, plan, athlete, Orders())
    spots = {Spot(1, part, n): one for part, n, one in _lines(plan)}
    spot = max(spots, key=lambda at: likeness(spots[at].written, case.line))
    options = list(every_option(spots[spot], athlete, Orders()))
    beside = _beside(spot, plan, usual)
    counts = np.array([_counts(option, beside) for option in options])
    lines = (line_of(1, spots[spot], option, athlete, UNEXPLAINED) for option in options)
    return Line(counts, np.array([WORTH[outcome_of(case, line)] for line in lines]))


def _lines(plan: BlockPlan) -> Iterator[tuple[Part, int, LinePlan]]:
    for part, lines in zip(PARTS, plan.sections, strict=True):
        for n, one in enumerate(lines, 1):
            yield part, n, one


def _beside(spot: Spot, plan: BlockPlan, usual: Usual) -> list[Option]:
    """What is done before and after a line, the round closing on itself."""
    count = sum(part == spot.part for part, _, _ in _lines(plan))
    around = {(spot.line - 2) % count + 1, spot.line % count + 1} - {spot.line}
    return [usual[spot._replace(line=line)] for line in around]


def _counts(option: Option, beside: Sequence[Option]) -> list[float]:
    counts = dict.fromkeys(Costs._fields, 0.0)
    for charge in option.bill:
        counts[charge.entry] += charge.points / getattr(costs(), charge.entry)
    for other in beside:
        if option.way and other.way and option.way.movement is other.way.movement:
            counts["repeats"] += 1
        counts["change"] += bool(option.held and other.held and option.held != other.held)
    return list(counts.values())


def tuned(lines: Sequence[Line]) -> Costs:
    """The best points that were found near those of the table."""
    hand = best = np.array(costs(), dtype=float)
    worth = _worth(best, hand, lines)
    for _ in range(ROUNDS):
        before = worth
        for place, entry in enumerate(Costs._fields):
            for times in (STEP, 1 / STEP, STEP**2, STEP**-2) if entry not in FIXED else ():
                tried = best.copy()
                tried[place] = max(1.0, round(best[place] * times))
                if (found := _worth(tried, hand, lines)) > worth:
                    best, worth = tried, found
        if worth == before:
            break
    return Costs(*(int(points) for points in best))


def _worth(points: NDArray[np.float64], hand: NDArray[np.float64], lines: Sequence[Line]) -> float:
    given = sum(float(line.worth[np.argmin(line.counts @ points)]) for line in lines)
    return given - STRAYING * float(np.abs(np.log(np.maximum(points, 1) / np.maximum(hand, 1))).sum())


def main() -> None:
    found = (line_of_case(case) for case in cases_in(TUNING))
    best = tuned([line for line in found if line is not None])
    for entry, tuned_, hand in zip(best._fields, best, costs(), strict=True):
        if tuned_ != hand:
            _say(f"{entry}: {hand} by hand, {tuned_} tuned")
    for name, folder in (("tuning", TUNING), ("untouched", UNTOUCHED)):
        cases = cases_in(folder)
        for how, table in (("by hand", None), ("tuned", best)):
            verdicts = judged(cases, table)
            never = sum(one.outcome == "never" for one in verdicts)
            _say(f"{name}, {how}: {share(verdicts):.1f} of 100 signed, {never} never")


def _say(words: str) -> None:
    sys.stdout.write(f"{words}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    main()
