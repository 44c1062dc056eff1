"""What a pregnancy, the time after a birth, a seat, a break and the place come to: limits, things, an easier day."""

from collections.abc import Iterable, Iterator, Mapping
from datetime import date

from core.athletes.easing import A_BREAK, FIRST_WEEK_BACK, WEEK
from core.athletes.values import AfterBirth, Equipment, Place, Pregnancy, Profile, Seated

# The thirds of a pregnancy end with these weeks; late, whatever the week, where none was told (common practice).
EARLY_UNTIL, MIDDLE_UNTIL = 13, 27
# Running waits for twelve weeks after a birth at the least (Goom, Donnelly & Brockwell 2019, from memory), jumping
# for longer, the belly is folded again after half a year, and after a year nothing is special any more (estimates).
SOON_AFTER, HALF_A_YEAR_AFTER, YEAR_AFTER = 12, 26, 52

# Limits that a stage takes the place of, and what says that nobody has agreed yet.
STAGED = frozenset({"pregnancy", "after-birth"})
UNCLEARED = "uncleared"

# Things that a place may have without anybody's owning them, by the field that tells it.
OF_THE_PLACE = {"stairs": "stairs", "table": "table", "bar_in_door": "pull-up bar"}


# Of whom a circumstance is asked, by their limit, and in which field of the profile it stands.
ASKED_OF: Mapping[str, str] = {"pregnancy": "pregnancy", "after-birth": "after_birth", "seated": "seated"}

# What can be tapped instead of told: the middle of a third, a time after the birth, what a seat allows.
TAPPED: Mapping[str, tuple[Pregnancy | AfterBirth | Seated, ...]] = {
    "pregnancy": (
        Pregnancy(week=7, cleared=True),
        Pregnancy(week=7),
        Pregnancy(week=20, cleared=True),
        Pregnancy(week=20),
        Pregnancy(week=33, cleared=True),
        Pregnancy(week=33),
    ),
    "after-birth": (
        AfterBirth(cleared=False),
        AfterBirth(weeks=8, cleared=True),
        AfterBirth(weeks=20, cleared=True),
        AfterBirth(weeks=YEAR_AFTER, cleared=True),
    ),
    "seated": (
        Seated(trunk=True, floor=True),
        Seated(trunk=True, floor=False),
        Seated(trunk=False, floor=True),
        Seated(trunk=False, floor=False),
    ),
}


def to_ask(profile: Profile) -> str | None:
    """The limit of which more has to be known, if any is left."""
    told = profile.limits or ()
    return next(
        (one for one, field in ASKED_OF.items() if one in told and getattr(profile, field) is None), None
    )


def in_circumstances(profile: Profile, day: date | None = None) -> Profile:
    """The profile with all that its circumstances come to, for scaling to see; never stored. Twice is once.

    On a `day`, weeks that were told before have gone on.
    """
    place = profile.place
    equipment, space, today = profile.equipment, profile.space, profile.today
    if place is not None:
        equipment = _with_the_place(equipment, place)
        space = space if place.run_m != 0 else space.model_copy(update={"running": False})
    if today.easing is None and (profile.weeks_off or 0) * WEEK >= A_BREAK:
        today = today.model_copy(update={"easing": FIRST_WEEK_BACK})
    found = {"limits": limits_of(profile, day), "equipment": equipment, "space": space, "today": today}
    changed = {name: value for name, value in found.items() if value != getattr(profile, name)}
    return profile.model_copy(update=changed) if changed else profile


def limits_of(profile: Profile, day: date | None = None) -> tuple[str, ...] | None:
    """The limits that count: of a pregnancy and the time after a birth the stage, of a seat what is ruled out."""
    more = tuple(_brought(profile, day))
    if not more:
        return profile.limits
    told = profile.limits or ()
    kept = (one for one in told if one not in STAGED or one in more or not _is_staged(one, profile))
    return tuple(dict.fromkeys((*kept, *more)))


def _is_staged(limit: str, profile: Profile) -> bool:
    return (profile.pregnancy if limit == "pregnancy" else profile.after_birth) is not None


def _brought(profile: Profile, day: date | None) -> Iterator[str]:
    if profile.pregnancy is not None:
        yield from _of_pregnancy(profile.pregnancy, _since(profile.pregnancy.on, day))
    if profile.after_birth is not None:
        yield from _of_after_birth(profile.after_birth, _since(profile.after_birth.on, day))
    if profile.seated is not None:
        yield from _of_seat(profile.seated)


def _since(told_on: date | None, day: date | None) -> int:
    """Whole weeks since something was told."""
    return (day - told_on) // WEEK if day and told_on else 0


def _of_pregnancy(pregnancy: Pregnancy, later: int) -> Iterator[str]:
    if pregnancy.week is None:
        yield "pregnancy"
        return
    week = pregnancy.week + later
    early, middle = week <= EARLY_UNTIL, week <= MIDDLE_UNTIL
    yield "pregnancy-early" if early else "pregnancy-middle" if middle else "pregnancy-late"
    if not pregnancy.cleared:
        yield UNCLEARED


def _of_after_birth(after: AfterBirth, later: int) -> Iterator[str]:
    if not after.cleared:
        yield "after-birth"
    elif after.weeks is None or after.weeks + later < SOON_AFTER:
        yield "after-birth-early"
    elif after.weeks + later < HALF_A_YEAR_AFTER:
        yield "after-birth-middle"
    elif after.weeks + later < YEAR_AFTER:
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
