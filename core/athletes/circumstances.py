"""What a pregnancy, the time after a birth, a seat, a break and the place come to: limits, things, an easier day."""

from collections.abc import Iterable, Iterator

from core.athletes.easing import A_BREAK, FIRST_WEEK_BACK, WEEK
from core.athletes.values import AfterBirth, Equipment, Place, Pregnancy, Profile, Seated

# The thirds of a pregnancy end with these weeks; late, whatever the week, where none was told (common practice).
EARLY_UNTIL, MIDDLE_UNTIL = 13, 27
# Running waits for twelve weeks after a birth at the least (Goom, Donnelly & Brockwell 2019, from memory), jumping
# for longer, and after a year nothing is special any more (estimates).
SOON_AFTER, YEAR_AFTER = 12, 52

# Limits that a stage takes the place of, and what says that nobody has agreed yet.
STAGED = frozenset({"pregnancy", "after-birth"})
UNCLEARED = "uncleared"

# Things that a place may have without anybody's owning them, by the field that tells it.
OF_THE_PLACE = {"stairs": "stairs", "table": "table", "bar_in_door": "pull-up bar"}


def in_circumstances(profile: Profile) -> Profile:
    """The profile with all that its circumstances come to, for scaling to see; never stored. Twice is once."""
    place = profile.place
    equipment, space, today = profile.equipment, profile.space, profile.today
    if place is not None:
        equipment = _with_the_place(equipment, place)
        space = space if place.run_m != 0 else space.model_copy(update={"running": False})
    if today.easing is None and (profile.weeks_off or 0) * WEEK >= A_BREAK:
        today = today.model_copy(update={"easing": FIRST_WEEK_BACK})
    found = {"limits": limits_of(profile), "equipment": equipment, "space": space, "today": today}
    changed = {name: value for name, value in found.items() if value != getattr(profile, name)}
    return profile.model_copy(update=changed) if changed else profile


def limits_of(profile: Profile) -> tuple[str, ...] | None:
    """The limits that count: of a pregnancy and the time after a birth the stage, of a seat what is ruled out."""
    more = tuple(_brought(profile))
    if not more:
        return profile.limits
    told = profile.limits or ()
    kept = (one for one in told if one not in STAGED or one in more or not _is_staged(one, profile))
    return tuple(dict.fromkeys((*kept, *more)))


def _is_staged(limit: str, profile: Profile) -> bool:
    return (profile.pregnancy if limit == "pregnancy" else profile.after_birth) is not None


def _brought(profile: Profile) -> Iterator[str]:
    if profile.pregnancy is not None:
        yield from _of_pregnancy(profile.pregnancy)
    if profile.after_birth is not None:
        yield from _of_after_birth(profile.after_birth)
    if profile.seated is not None:
        yield from _of_seat(profile.seated)


def _of_pregnancy(pregnancy: Pregnancy) -> Iterator[str]:
    if pregnancy.week is None:
        yield "pregnancy"
        return
    early, middle = pregnancy.week <= EARLY_UNTIL, pregnancy.week <= MIDDLE_UNTIL
    yield "pregnancy-early" if early else "pregnancy-middle" if middle else "pregnancy-late"
    if not pregnancy.cleared:
        yield UNCLEARED


def _of_after_birth(after: AfterBirth) -> Iterator[str]:
    if not after.cleared:
        yield "after-birth"
    elif after.weeks is None or after.weeks < SOON_AFTER:
        yield "after-birth-early"
    elif after.weeks < YEAR_AFTER:
        yield "after-birth-later"


def _of_seat(seat: Seated) -> Iterator[str]:
    yield "seated"
    if seat.trunk is False:
        yield "no-trunk-hold"
    if seat.floor is False:
        yield "no-floor"


def _with_the_place(equipment: Iterable[Equipment] | None, place: Place) -> tuple[Equipment, ...] | None:
    """With what the place has; without what it is told not to have. Where nothing is known, only what it has."""
    lacking = {thing for field, thing in OF_THE_PLACE.items() if getattr(place, field) is False}
    kept = [one for one in equipment or () if one.implement not in lacking]
    owned = {one.implement for one in kept}
    found = [thing for field, thing in OF_THE_PLACE.items() if getattr(place, field)]
    more = [Equipment(implement=thing) for thing in found if thing not in owned]
    return None if equipment is None and not more else (*kept, *more)
