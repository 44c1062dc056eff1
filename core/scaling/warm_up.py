"""A warm-up that fits a version, where the coach wrote none: easy lines for what the session is going to use."""

from collections.abc import Iterator, Sequence

from core.ability.demand import load_moved
from core.athletes.values import Profile
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Movement, Pattern, Variant
from core.scaling.athlete import Athlete
from core.scaling.values import Change, Version, VersionBlock
from core.scaling.version import version_for
from core.sessions.values import Block, BlockKind, Format, Line, Session

# Common practice, no source: get warm first, move what will be used, then some easy ones of what is to come.
# Warm by an easy way of what is travelled on today, else on the spot; the first that is fine.
GENTLY = {
    "row": ("row/easy",),
    "ride": ("ride/easy",),
    "run": ("run/easy", "run/brisk-walk"),
    "shuttle run": ("shuttle run/walk",),
    "rope skip": ("rope skip/no-rope-step",),
    "double-under": ("rope skip/no-rope-step",),
    "stair climb": ("stair climb/walk", "stair climb/lowest-step"),
    "wheelchair push": ("wheelchair push/easy",),
    "arm cranking": ("arm cranking/machine",),
}
ON_THE_SPOT = ("march/high-knees", "march/on-the-spot", "seated march/arms")
WARMING_S = 60
MOVING: dict[Pattern, tuple[str, ...]] = {
    Pattern.SQUAT: ("hip circle", "ankle rock"),
    Pattern.LUNGE: ("leg swing", "hip circle"),
    Pattern.HINGE: ("cat-cow", "leg swing"),
    Pattern.HORIZONTAL_PUSH: ("arm circle", "wrist circle"),
    Pattern.VERTICAL_PUSH: ("arm slide", "arm circle"),
    Pattern.HORIZONTAL_PULL: ("shoulder roll", "trunk rotation"),
    Pattern.VERTICAL_PULL: ("arm circle", "shoulder roll"),
    Pattern.HANG: ("wrist circle", "arm circle"),
    Pattern.INVERSION: ("wrist circle", "arm slide"),
    Pattern.ARMS: ("arm circle",),
    Pattern.TRUNK: ("cat-cow", "trunk rotation"),
    Pattern.LIFT: ("arm circle", "hip circle"),
    Pattern.CARRY: ("shoulder roll",),
    Pattern.JUMP: ("ankle rock", "leg swing"),
    Pattern.TRAVEL: ("leg swing", "ankle rock"),
}
MOVING_REPS = 8
EASY_REPS = 5
MOST_MOVING = 2
MOST_EASY = 2
ROUNDS = 2
# Who has fewer minutes than these goes through it once (estimate).
LONG = 30.0
# And with fewer than these only gets warm and does a few easy ones: the day is for the work (estimate).
SHORT = 12.0

# An easy one goes at least this often for everybody (a set then costs a quarter at most).
GOES_EASILY = 20.0


def warm_up_for(
    session: Session, version: Version, profile: Profile, catalogue: Catalogue
) -> VersionBlock | None:
    """Up to five easy lines before this version, two where time is short.

    None where the coach wrote one, all is rest, or nothing is fine. Made like any other block, so limits, place and
    things count as they do in the version.
    """
    if any(block.kind is BlockKind.WARM_UP for block in session.blocks):
        return None
    athlete = Athlete(profile, catalogue, session.date.year if session.date else None)
    patterns = _patterns(version, catalogue)
    if not patterns:
        return None
    minutes = profile.today.minutes or LONG
    moving = () if minutes < SHORT else _moving(patterns, athlete)
    easy = _easy(patterns, version, athlete, MOST_EASY if minutes >= SHORT else 1)
    lines = (*_warming(version, athlete), *moving, *easy)
    if not lines:
        return None
    block = Block(
        kind=BlockKind.WARM_UP,
        format=Format.QUALITY,
        rounds=ROUNDS if minutes >= LONG else 1,
        scored=False,
        lines=tuple(lines),
    )
    made = version_for(Session(date=session.date, blocks=(block,)), profile, catalogue)
    return made.blocks[0].model_copy(update={"block": 0}) if isinstance(made, Version) else None


def _patterns(version: Version, catalogue: Catalogue) -> Sequence[Pattern]:
    """What the version uses, in its order."""
    done = [line for _, line in version.spots if line.change is not Change.REST]
    return tuple(dict.fromkeys(catalogue.movement(line.movement).pattern for line in done))


def _warming(version: Version, athlete: Athlete) -> Iterator[Line]:
    used = dict.fromkeys(line.movement for _, line in version.spots if line.change is not Change.REST)
    gently = (one for movement in used for one in GENTLY.get(movement, ()))
    known = set(athlete.catalogue.ids())
    for name in (*gently, *ON_THE_SPOT):
        if name not in known:
            continue
        movement, variant = athlete.catalogue.variant(name)
        if _is_fine(movement, variant, athlete):
            yield _line(movement, variant, WARMING_S, AmountUnit.SECONDS)
            return


def _moving(patterns: Sequence[Pattern], athlete: Athlete) -> Iterator[Line]:
    """One for each pattern, no movement twice."""
    found: dict[str, Line] = {}
    for pattern in patterns:
        for movement, variant in _known(athlete, MOVING.get(pattern, ())):
            if movement.id not in found and _is_fine(movement, variant, athlete):
                found[movement.id] = _line(movement, variant, MOVING_REPS, AmountUnit.REPS)
                break
    yield from list(found.values())[:MOST_MOVING]


def _easy(patterns: Sequence[Pattern], version: Version, athlete: Athlete, most: int) -> Iterator[Line]:
    """Some easy ones of the first patterns that count repetitions."""
    done = {athlete.catalogue.movement(line.movement).pattern: line for _, line in reversed(version.spots)}
    counted = (done[pattern] for pattern in patterns if pattern is not Pattern.TRAVEL)
    found = (_easiest(f"{line.movement}/{line.variant}", athlete) for line in counted)
    known = [one for one in found if one is not None]
    for movement, variant in known[:most]:
        yield _line(movement, variant, EASY_REPS, AmountUnit.REPS)


def _easiest(variant_id: str, athlete: Athlete) -> tuple[Movement, Variant] | None:
    """The nearest way without a load of which many go and that trains the same mainly, only lighter."""
    book = athlete.catalogue
    movement, variant = book.variant(variant_id)
    near = (reach.id for reach in book.reachable(variant_id))
    names = (variant_id, *book.below(variant_id), *book.instead(variant_id), *near)
    for other, way in map(book.variant, names):
        if other.main_of(way) is movement.main_of(variant) and _is_light(other, way, athlete):
            return other, way
    return None


def _is_light(movement: Movement, variant: Variant, athlete: Athlete) -> bool:
    if movement.k is None or variant.holds or movement.unit_of(variant) is not AmountUnit.REPS:
        return False
    ability = athlete.capacity.of(movement, variant, f"{movement.id}/{variant.id}")
    sure, _ = ability.sure_and_median(load_moved(variant, athlete.body_mass_kg))
    return sure >= GOES_EASILY and _is_fine(movement, variant, athlete)


def _is_fine(movement: Movement, variant: Variant, athlete: Athlete) -> bool:
    """Neither ruled out nor spared, and what it needs is there."""
    return athlete.may_do(movement, variant) and athlete.support(variant).there


def _known(athlete: Athlete, names: Sequence[str]) -> Iterator[tuple[Movement, Variant]]:
    """Every variant of these movements, as far as the catalogue has them."""
    for movement in athlete.catalogue.movements:
        if movement.id in names:
            yield from ((movement, variant) for variant in movement.variants)


def _line(movement: Movement, variant: Variant, amount: float, unit: AmountUnit) -> Line:
    own = movement.unit_of(variant)
    unit = own if unit is AmountUnit.REPS else unit
    return Line(
        written=f"{amount:g} {variant.label}",
        movement=movement.id,
        variant=variant.id,
        amount=amount,
        unit=unit,
    )
