"""The screening before the first session, as a pure decision on a few answers.

Source: Riebe et al. 2015, Med Sci Sports Exerc 47(11):2473-2479: current activity, symptoms and known
disease, and the intended intensity decide. The branches are written from memory, unchecked against the paper.
"""

from datetime import date, timedelta

from core.athletes.values import Branch, Profile, ScreeningQuestion
from core.errors import Defect

__all__ = ["Answers", "Branch", "ScreeningQuestion", "next_screening_question", "screen"]

Answers = tuple[bool, ...]

LASTS = timedelta(days=365)


# (known disease, active), once adult and without symptoms.
_BY_DISEASE_AND_ACTIVITY = {
    (True, False): Branch.DISEASE_INACTIVE,
    (True, True): Branch.DISEASE_ACTIVE,
    (False, False): Branch.HEALTHY_INACTIVE,
    (False, True): Branch.HEALTHY_ACTIVE,
}


def is_due(profile: Profile, today: date) -> bool:
    """Whether to screen before the next session: never done, or over a year ago (common practice, no source)."""
    if profile.screening is None:
        return True
    return profile.screened_on is not None and today - profile.screened_on > LASTS


def next_screening_question(answers: Answers) -> ScreeningQuestion | None:
    """The question to ask after these answers; None once they suffice, which may be early."""
    if _decided_early(answers) or len(answers) >= len(ScreeningQuestion):
        return None
    return tuple(ScreeningQuestion)[len(answers)]


def screen(answers: Answers) -> Branch:
    """How it ends, from the answers in the order of the questions. Raises Defect while one is missing."""
    early = _decided_early(answers)
    if early is not None:
        return early
    if len(answers) != len(ScreeningQuestion):
        raise Defect(f"{len(answers)} answers don't decide a screening")
    return _BY_DISEASE_AND_ACTIVITY[answers[2], answers[3]]


def _decided_early(answers: Answers) -> Branch | None:
    if answers[:1] == (False,):
        return Branch.NOT_ADULT
    if answers[:2] == (True, True):
        return Branch.SYMPTOMS
    return None
