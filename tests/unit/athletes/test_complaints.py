from datetime import date

from core.athletes.complaints import complained, healed, of_limit, with_limits
from core.athletes.values import Profile, Severity

TUESDAY, NEXT_TUESDAY = date(2026, 3, 3), date(2026, 3, 10)
ILSE = Profile(name="Ilse", limits=("no-jumping",))


def test_pain_becomes_a_limit_that_is_asked_about_after_a_week():
    hurt = complained(ILSE, "wrist", "left", Severity.CLEAR, TUESDAY)
    assert hurt.limits == ("no-jumping", "wrist")
    told = of_limit(hurt, "wrist")
    assert (told.side, told.severity, told.review_on) == ("left", Severity.CLEAR, NEXT_TUESDAY)


def test_told_again_it_keeps_its_beginning():
    hurt = complained(ILSE, "wrist", "left", Severity.CLEAR, TUESDAY)
    again = complained(hurt, "wrist", "left", Severity.LITTLE, NEXT_TUESDAY)
    assert again.limits == hurt.limits
    assert len(again.complaints) == 1
    assert again.complaints[0].since == TUESDAY
    assert again.complaints[0].severity is Severity.LITTLE


def test_the_first_limit_may_be_pain():
    assert complained(Profile(name="Bo"), "knee", None, Severity.BAD, TUESDAY).limits == ("knee",)


def test_what_has_healed_is_no_limit_any_more():
    hurt = complained(ILSE, "wrist", None, Severity.CLEAR, TUESDAY)
    assert healed(hurt, "wrist") == ILSE


def test_limits_told_anew_forget_what_was_told_of_the_others():
    hurt = complained(ILSE, "wrist", None, Severity.CLEAR, TUESDAY)
    assert with_limits(hurt, ("knee",)).complaints == ()
    assert with_limits(hurt, ("wrist",)).complaints == hurt.complaints
