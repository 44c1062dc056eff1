"""Pain becomes a limit with a side, a severity and a day to ask again. Only the athlete says it is over."""

from collections.abc import Mapping
from datetime import date, timedelta
from typing import Final

from core.athletes.circumstances import ASKED_OF
from core.athletes.values import Complaint, Profile, Severity, Side

# "How is the wrist after a week?" (common practice, no source).
REVIEW_AFTER = timedelta(days=7)

# There is one of each of these.
WITHOUT_SIDES: Final = frozenset({"neck", "low-back", "upper-back", "belly-muscle"})


def complained(profile: Profile, limit: str, side: Side | None, severity: Severity, today: date) -> Profile:
    """The profile with this pain as a limit.

    Told again, the newest word counts; `since` stays, and the side where none is said.
    """
    before = of_limit(profile, limit)
    told = Complaint(
        limit=limit,
        side=side or (before.side if before else None),
        severity=severity,
        since=before.since if before else today,
        review_on=today + REVIEW_AFTER,
    )
    others = tuple(one for one in profile.complaints if one.limit != limit)
    limits = tuple(dict.fromkeys((*(profile.limits or ()), limit)))
    return profile.model_copy(update={"limits": limits, "complaints": (*others, told)})


def healed(profile: Profile, *limit_ids: str) -> Profile:
    """The profile without these limits."""
    return with_limits(profile, tuple(one for one in profile.limits or () if one not in limit_ids))


def with_limits(profile: Profile, limits: tuple[str, ...] | None) -> Profile:
    """The profile with these limits instead; what was told of those that are gone goes with them."""
    kept = tuple(one for one in profile.complaints if one.limit in (limits or ()))
    gone = {field: None for limit, field in ASKED_OF.items() if limit not in (limits or ())}
    return profile.model_copy(update={"limits": limits, "complaints": kept, **gone})


def sides_of(profile: Profile) -> Mapping[str, Side]:
    """The side of each limit that has one."""
    told = [one for one in profile.complaints if one.limit in (profile.limits or ())]
    return {one.limit: one.side for one in told if one.side}


def of_limit(profile: Profile, limit: str) -> Complaint | None:
    """What was told of a limit that still stands."""
    if limit not in (profile.limits or ()):
        return None
    return next((one for one in profile.complaints if one.limit == limit), None)
