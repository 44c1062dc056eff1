"""Pain becomes a limit with a side, a severity and a day to ask again. Only the athlete says it is over."""

from datetime import date, timedelta

from core.athletes.values import Complaint, Profile, Severity, Side

# "How is the wrist after a week?" (common practice, no source).
REVIEW_AFTER = timedelta(days=7)


def complained(profile: Profile, limit: str, side: Side | None, severity: Severity, today: date) -> Profile:
    """The profile with this pain as a limit. Told again, the newest word counts and `since` stays."""
    before = of_limit(profile, limit)
    told = Complaint(
        limit=limit,
        side=side,
        severity=severity,
        since=before.since if before else today,
        review_on=today + REVIEW_AFTER,
    )
    others = tuple(one for one in profile.complaints if one.limit != limit)
    limits = tuple(dict.fromkeys((*(profile.limits or ()), limit)))
    return profile.model_copy(update={"limits": limits, "complaints": (*others, told)})


def healed(profile: Profile, limit: str) -> Profile:
    """The profile without this limit."""
    return with_limits(profile, tuple(one for one in profile.limits or () if one != limit))


def with_limits(profile: Profile, limits: tuple[str, ...] | None) -> Profile:
    """The profile with these limits instead; what was told of those that are gone goes with them."""
    kept = tuple(one for one in profile.complaints if one.limit in (limits or ()))
    return profile.model_copy(update={"limits": limits, "complaints": kept})


def of_limit(profile: Profile, limit: str) -> Complaint | None:
    """What was told of a limit that still stands."""
    if limit not in (profile.limits or ()):
        return None
    return next((one for one in profile.complaints if one.limit == limit), None)
