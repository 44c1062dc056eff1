"""Who begins with a thing that two people share."""

from decimal import Decimal

from hypothesis import given, settings
from hypothesis import strategies as st

from core.athletes.values import Equipment, Evidence, Profile, Screening
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.version import version_for

AMRAP = "AMRAP 12\n12 goblet squats @ 16/12 kg\n10 push-ups\n200 m run"
SETS = "5 x 5 goblet squats @ 16/12 kg, rest 2 min"


def dumbbell(partner):
    return Equipment(
        implement="dumbbell",
        from_kg=Decimal("2.5"),
        to_kg=Decimal(24),
        step_kg=Decimal("2.5"),
        shared_with=partner,
    )


def turn(name, partner, text=AMRAP, things=None):
    profile = Profile(
        name=name,
        equipment=things or (dumbbell(partner),),
        limits=(),
        screening=Screening.CLEAR,
        evidence=(Evidence(movement="goblet squat", reps=20, load_kg=Decimal(12)),),
    )
    session = read_session(text, catalogue()).session
    assert session is not None
    return version_for(session, profile, catalogue()).blocks[0].turn


@settings(deadline=None)
@given(st.text(min_size=1, max_size=8), st.text(min_size=1, max_size=8))
def test_two_people_never_begin_on_the_same_line(one, other):
    mine, theirs = turn(one, other), turn(other, one)
    if one.casefold() == other.casefold():
        return
    assert (mine.begin, mine.they_begin) == (theirs.they_begin, theirs.begin)
    assert mine.begin != mine.they_begin


def test_where_every_line_needs_it_they_take_turns():
    assert turn("Finn", "Noor", SETS).begin is None


def test_what_is_theirs_alone_or_not_used_has_no_turns():
    assert turn("Finn", None) is None
    assert turn("Finn", "Noor", "AMRAP 12\n10 push-ups\n200 m run") is None


def test_a_fixed_weight_needs_no_setting():
    shared = Equipment(implement="dumbbell", loads_kg=(Decimal(12),), shared_with="Noor")
    assert turn("Finn", "Noor", things=(shared,)).settings is False
