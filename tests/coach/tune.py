"""`make tune`: looks for better points near those of the table on the tuning half, and prints the share of both halves.

One entry at a time goes up and down by a quarter; what is gained is kept if it is worth more than it strays from the
numbers that were set by hand. Nothing is written: a coach changes `core/scaling/costs.toml`.
"""

import sys
from collections.abc import Sequence
from math import log

from core.scaling.costs import Costs, costs
from tests.coach.judge import TUNING, UNTOUCHED, Case, cases_in, judged, share

# A never outweighs some that are signed; straying from the hand-set numbers costs so much per natural logarithm.
NEVER, STRAYING = 1.0, 0.6
STEP = 1.25
FIXED = frozenset({"rest", "build_up", "make_believe"})
ROUNDS = 2


def tuned(cases: Sequence[Case]) -> Costs:
    """The best points that were found near those of the table."""
    hand = best = costs()
    worth = _worth(best, hand, cases)
    for _ in range(ROUNDS):
        for entry in (entry for entry in hand._fields if entry not in FIXED):
            for times in (STEP, 1 / STEP):
                tried = best._replace(**{entry: max(1, round(getattr(best, entry) * times))})
                if (found := _worth(tried, hand, cases)) > worth:
                    best, worth = tried, found
                    _say(f"{entry} {getattr(hand, entry)} -> {getattr(best, entry)}: {worth:.1f}")
    return best


def _worth(table: Costs, hand: Costs, cases: Sequence[Case]) -> float:
    verdicts = judged(cases, table)
    signed = sum(one.outcome == "signed" for one in verdicts)
    never = sum(one.outcome == "never" for one in verdicts)
    strayed = sum(abs(log(max(a, 1) / max(b, 1))) for a, b in zip(table, hand, strict=True))
    return signed - NEVER * never - STRAYING * strayed


def main() -> None:
    best = tuned(cases_in(TUNING))
    for entry, found, hand in zip(best._fields, best, costs(), strict=True):
        if found != hand:
            _say(f"{entry}: {hand} by hand, {found} tuned")
    for name, folder in (("tuning", TUNING), ("untouched", UNTOUCHED)):
        cases = cases_in(folder)
        _say(
            f"{name}: {share(judged(cases)):.1f} of 100 signed by hand, {share(judged(cases, best)):.1f} tuned"
        )


def _say(words: str) -> None:
    sys.stdout.write(f"{words}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    main()
