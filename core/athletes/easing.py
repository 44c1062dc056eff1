"""Days with less: an easy week, the weeks after a break, the first weeks of somebody new to training."""

from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from core.athletes.limits import DayRule
from core.athletes.values import Branch, Different, Easing, Profile, Screening

# In an easy week about a third of the work is left out, and the loads stay (common practice, no source).
EASY_WEEK = Easing(of="easy-week", share=2 / 3, effort_at_most=6)
# Whoever comes back does half at first and goes gently, then three quarters (estimates).
FIRST_WEEK_BACK = Easing(of="returning", share=0.5, effort_at_most=4)
SECOND_WEEK_BACK = Easing(of="returning", share=0.75, effort_at_most=6)
# Whoever is new goes gently first (the screening sees to that), then does three quarters for some weeks; so does
# whoever isn't used to training, by what they told or by age and weight (estimates).
NEW = Easing(of="new", share=0.75, effort_at_most=5)

MOST_EFFORT = 10

WEEK = timedelta(days=7)
WEEKS_BACK = 2
WEEKS_NEW = 4

# After so long without anything told, a break is asked about; nobody is asked twice within as long (estimate).
A_BREAK = timedelta(days=28)
# So much is done gently before more is offered, and after a no it is asked again so much later (estimates).
GENTLE_SESSIONS = 6
GENTLE_DAYS = timedelta(days=14)
ASKED_AGAIN = timedelta(days=14)

# Who starts gently without any disease, and for whom more is theirs to say.
STARTS_GENTLY = frozenset({Branch.HEALTHY_INACTIVE, Branch.CLEARED})


def easing_on(different: Iterable[Different], day: date) -> Easing | None:
    """What eases a day; of several the least of each counts, under the name of the gentlest."""
    easings = [_easing(one, day) for one in different if one.ease is not None]
    if not easings:
        return None
    gentlest = min(easings, key=lambda one: (one.share, one.effort_at_most))
    effort = min(one.effort_at_most for one in easings)
    return gentlest.model_copy(update={"effort_at_most": effort})


def eased_by(rule: DayRule, easing: Easing | None) -> Easing | None:
    """What eases a day beside what limits ask of it: the least share of both."""
    if rule.share is None:
        return easing
    if easing is None:
        effort = MOST_EFFORT if rule.effort_at_most is None else rule.effort_at_most
        return Easing(of="condition", share=rule.share, effort_at_most=effort)
    return easing.model_copy(update={"share": min(easing.share, rule.share)})


def _easing(one: Different, day: date) -> Easing:
    if one.ease == "easy-week":
        return EASY_WEEK
    if one.ease == "new":
        return NEW
    is_first = one.since is None or day < one.since + WEEK
    return FIRST_WEEK_BACK if is_first else SECOND_WEEK_BACK


def back_from(day: date) -> Different:
    """Two weeks that begin on this day, after a break."""
    return Different(since=day, until=day + WEEKS_BACK * WEEK - timedelta(days=1), ease="returning")


def beginning_on(day: date) -> Different:
    """The weeks of somebody new who has been gentle for long enough."""
    return Different(since=day, until=day + WEEKS_NEW * WEEK - timedelta(days=1), ease="new")


def easy_week_from(day: date) -> Different:
    """Seven days."""
    return Different(since=day, until=day + WEEK - timedelta(days=1), ease="easy-week")


def may_have_had_a_break(profile: Profile, trained: Sequence[date], day: date) -> bool:
    """Whether to ask: something was told once, nothing for long, and nobody asked meanwhile."""
    if not trained or any(one.ease and one.until >= day for one in profile.different):
        return False
    return all(day - one >= A_BREAK for one in (max(trained), profile.asked_on or date.min))


def may_do_more(profile: Profile, trained: Sequence[date], day: date) -> bool:
    """Whether somebody who started gently has done so for long enough to be asked."""
    began = profile.screened_on
    if profile.screening is not Screening.MODERATE or profile.branch not in STARTS_GENTLY or began is None:
        return False
    if day - began < GENTLE_DAYS or day - (profile.asked_on or date.min) < ASKED_AGAIN:
        return False
    return len({one for one in trained if one >= began}) >= GENTLE_SESSIONS
