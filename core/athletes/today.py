"""Today is different: what was said of some days, as it counts on one of them. It never touches ability."""

from datetime import date, timedelta

from core.athletes.circumstances import in_circumstances
from core.athletes.easing import easing_on
from core.athletes.equipment import at, without
from core.athletes.values import Different, Profile, SetName, Today

# After a fever comes rest for two days more, then ten easy minutes for as long again (estimate, on the safe
# side; the caution of the limit "fever" says the same).
REST_AFTER_FEVER = timedelta(days=2)
EASY_AFTER_REST = timedelta(days=2)
EASY_MINUTES = 10.0
RECOVERING = "after-illness"


def as_of(profile: Profile, day: date) -> Profile:
    """The profile as it counts on a day: its circumstances, what is different then, what its scores still tell."""
    if profile.learned is not None:
        profile = profile.model_copy(update={"learned": profile.learned.as_of(day)})
    return in_circumstances(_differently(profile, differing(profile, day), day), day)


def _differently(profile: Profile, counts: tuple[Different, ...], day: date) -> Profile:
    if not counts:
        return profile
    placed = _placed(profile, counts)
    minutes = [one.minutes for one in counts if one.minutes is not None]
    sick = {health_on(one, day) for one in counts}
    limits = profile.limits
    if "recovering" in sick:
        minutes.append(EASY_MINUTES)
        limits = tuple(dict.fromkeys((*(limits or ()), RECOVERING)))
    today = Today(
        minutes=min(minutes, default=None),
        sick="fever" in sick,
        sore=tuple(dict.fromkeys(one.sore for one in counts if one.sore)),
        easing=easing_on(counts, day),
    )
    return placed.model_copy(update={"today": today, "limits": limits})


def differing(profile: Profile, day: date) -> tuple[Different, ...]:
    """What is different on a day."""
    return tuple(one for one in profile.different if counts_on(one, day))


def counts_on(different: Different, day: date) -> bool:
    """Whether it counts on this day; a fever is felt for some days after it."""
    return not is_over(different, day) and (different.since is None or different.since <= day)


def is_over(different: Different, day: date) -> bool:
    after = REST_AFTER_FEVER + EASY_AFTER_REST if different.sick == "fever" else timedelta(0)
    return day > different.until + after


def health_on(different: Different, day: date) -> str | None:
    """`fever` (rest), `recovering` (ten easy minutes) or None."""
    if different.sick == "fever" and day > different.until + REST_AFTER_FEVER:
        return "recovering"
    return different.sick


def said(profile: Profile, news: Different, day: date) -> Profile:
    """The profile with one more difference. It takes the place of an earlier one about the same.

    One that begins before or ends after stays for its other days: of two that count, the newest word does.
    """
    kept = [one for one in profile.different if not is_over(one, day) and not _is_replaced(one, news)]
    return profile.model_copy(update={"different": (*kept, news)})


def _is_replaced(one: Different, news: Different) -> bool:
    began, begins = one.since or date.min, news.since or date.min
    return _same_thing(one, news) and begins <= began <= news.until


def _same_thing(one: Different, other: Different) -> bool:
    if one.sore or other.sore:
        return one.sore == other.sore
    if one.lacks or other.lacks:
        return one.lacks == other.lacks
    if one.extra or other.extra:
        return bool(one.extra and other.extra)
    return _about(one) == _about(other)


def _about(one: Different) -> tuple[bool, bool, bool, bool]:
    return one.sick is not None, one.minutes is not None, one.place is not None, one.ease is not None


def place_on(profile: Profile, day: date) -> SetName:
    """Where they train on a day."""
    return _place(differing(profile, day))


def _place(counts: tuple[Different, ...]) -> SetName:
    said_of_place = next((one.place for one in reversed(counts) if one.place), None)
    return said_of_place or "home"


def _placed(profile: Profile, counts: tuple[Different, ...]) -> Profile:
    """With the equipment and the space of the place, less what isn't there, and with what else is."""
    place = _place(counts)
    equipment = at(profile, place)
    for one in counts:
        if one.lacks is not None and equipment is not None:
            equipment = without(equipment, one.lacks)
        if one.extra is not None and equipment is not None and one.extra not in equipment:
            equipment = (*equipment, one.extra)
    space = next((one.space for one in profile.sets if one.name == place), profile.space)
    return profile.model_copy(update={"equipment": equipment, "space": space})
