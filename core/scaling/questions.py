"""What still has to be asked before this session can be made personal.

Only what this session needs and nobody knows yet, and never the same twice. The first time that is equipment
and body mass in words, the rest by taps: which of a pair, limits, and at most two abilities.
"""

from collections.abc import Iterable, Sequence

from core.athletes.circumstances import ASKED_OF, to_ask
from core.athletes.equipment import heaviest
from core.athletes.values import Branch, Evidence, Profile
from core.movements.lookup import Catalogue
from core.scaling.athlete import Athlete
from core.scaling.guesses import guesses
from core.scaling.plan import plan_of
from core.scaling.values import Ask, Question
from core.scaling.version import withheld_from
from core.scaling.ways import LinePlan
from core.scaling.worth import candidates, worth
from core.sessions.values import Session

# No more than two abilities are asked for one session (one of whoever was asked for weeks or a seat instead), and only
# where the answer would change the choice of one line in five, on average.
MOST_ABILITIES = 2
WORTH_ASKING = 0.2


def next_question(profile: Profile, session: Session, catalogue: Catalogue) -> Question | None:
    """The next thing to ask this athlete for this session; None when a version can be made.

    Pure, and stateless: what was answered (or skipped) is in the profile. A tested movement counts as asked,
    with or without a count. Who may not train yet isn't asked how much they can do. Raises UnknownMovement.
    """
    plans = [
        line
        for block in plan_of(session, catalogue, profile.meant_pair)
        for lines in block.sections
        for line in lines
    ]
    if profile.equipment is None and any(_could_use_equipment(plan) for plan in plans):
        return Question(ask=Ask.EQUIPMENT)
    pair = _pair(profile, plans)
    if pair is not None:
        return pair
    spared = _spared(profile)
    if spared is not None:
        return spared
    if withheld_from(profile) is not None:
        return None
    if _needs_body_mass(profile, plans):
        return Question(ask=Ask.BODY_MASS)
    return _ability(profile, plans, catalogue)


def _pair(profile: Profile, plans: Sequence[LinePlan]) -> Question | None:
    """Which of two loads is meant: not asked of whoever is new to it, or could lift neither with what is there."""
    pairs = [plan.line.loads_kg for plan in plans if len(plan.line.loads_kg) > 1]
    told = profile.pair is not None or profile.sex is not None
    is_new = profile.branch is Branch.HEALTHY_INACTIVE or profile.experience == "new"
    if told or is_new or not any(min(loads) <= heaviest(profile.equipment or ()) for loads in pairs):
        return None
    return Question(ask=Ask.PAIR, loads_kg=pairs[0])


def _spared(profile: Profile) -> Question | None:
    if profile.limits is None or profile.spares_unasked:
        return Question(ask=Ask.LIMITS)
    about = to_ask(profile)
    return None if about is None else Question(ask=Ask.STAGE, about=about)


def _could_use_equipment(plan: LinePlan) -> bool:
    return any(way.variant.holds or way.variant.needs for way in plan.ways)


def _needs_body_mass(profile: Profile, plans: Iterable[LinePlan]) -> bool:
    """Body mass counts where it is moved beside a weight; alone it cancels out."""
    if profile.body_mass_kg is not None or profile.body_mass_skipped:
        return False
    return any(plan.loaded and plan.ways[0].variant.body_share.value > 0 for plan in plans)


def _ability(profile: Profile, plans: Sequence[LinePlan], catalogue: Catalogue) -> Question | None:
    """The ability worth most to know for this session, if any is worth a question; none for a few easy minutes."""
    asked = {evidence.movement for evidence in profile.evidence if evidence.kind not in {"easier", "score"}}
    most = MOST_ABILITIES - any(getattr(profile, field) is not None for field in ASKED_OF.values())
    if len(asked & {plan.ways[0].movement.id for plan in plans}) >= most:
        return None
    athlete = Athlete(profile, catalogue)
    if athlete.day.minutes_at_most is not None:
        return None
    unknown = [one for one in candidates(plans, athlete) if one.way.movement.id not in asked]
    worths = [worth(one, plans, athlete) for one in unknown]
    if max(worths, default=0.0) < WORTH_ASKING:
        return None
    best = unknown[worths.index(max(worths))]
    return Question(
        ask=Ask.ABILITY,
        movement=best.way.movement.id,
        variant=best.way.variant.id,
        load_kg=best.load.kg if best.load else None,
        guesses=guesses(athlete.ability(best.way), best.moved_kg),
    )


def answered_with_care(profile: Profile, session: Session, catalogue: Catalogue) -> tuple[int, Profile]:
    """How many questions are left, and the profile with the most careful answer to each. Raises UnknownMovement."""
    left = 0
    while question := next_question(profile, session, catalogue):
        left += 1
        careful = _most_careful(question, profile)
        if careful is None:
            break
        profile = careful
    return left, profile


def _most_careful(question: Question, profile: Profile) -> Profile | None:
    """None where none is careful enough: how far a pregnancy is, nobody guesses."""
    match question.ask:
        case Ask.EQUIPMENT:
            return profile.model_copy(update={"equipment": ()})
        case Ask.PAIR:
            return profile.model_copy(update={"pair": 2})
        case Ask.LIMITS:
            return profile.model_copy(update={"limits": profile.limits or (), "spares_unasked": False})
        case Ask.BODY_MASS:
            return profile.model_copy(update={"body_mass_skipped": True})
        case Ask.ABILITY if question.movement:
            unknown = Evidence(movement=question.movement, variant=question.variant)
            return profile.model_copy(update={"evidence": (*profile.evidence, unknown)})
    return None
