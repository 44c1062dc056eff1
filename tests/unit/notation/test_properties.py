"""What holds for every text and every session, not only for the examples."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core.athletes.values import Equipment
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.notation.numbers import read_body_mass, read_reps
from core.notation.quantities import NUMBER_WORDS
from core.notation.scores import read_score
from core.notation.talk.chat import is_like_a_score, is_like_a_session
from core.notation.unknowing import does_not_know
from core.scores.values import SETTLED_BY_YES
from core.understanding.things import read_things, read_weight
from tests.strategies import any_text, sessions

SLOW = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow], max_examples=60)


def without_the_written_words(session):
    """The session but for the coach's own spelling of each line."""
    document = session.model_dump()
    for block in document["blocks"]:
        for name in ("lines", "buy_in", "cash_out"):
            block[name] = [line | {"written": ""} for line in block[name]]
    return document


@SLOW
@given(session=sessions(), unit=st.sampled_from(MassUnit))
def test_what_is_written_is_read_back_as_the_same_session(session, unit):
    read = read_session(write_session(session, unit), catalogue())
    assert read.not_understood == ()
    assert read.corrected == ()
    assert without_the_written_words(read.session) == without_the_written_words(session)


@SLOW
@given(text=any_text())
def test_any_text_is_read_or_named_and_what_was_read_can_be_written_and_read_again(text):
    read = read_session(text, catalogue())
    assert read.session is not None or read.not_understood
    if read.session is not None and not read.not_understood:
        again = read_session(write_session(read.session), catalogue())
        assert without_the_written_words(again.session) == without_the_written_words(read.session)


@pytest.mark.parametrize("number", ["zero", *NUMBER_WORDS])
@pytest.mark.parametrize(
    "text", ["3 rounds\n{} squats", "{} rounds\n10 squats, {} rest", "squats x {}", "rest {}"]
)
def test_a_number_in_words_is_read_or_named_wherever_it_stands(text, number):
    read = read_session(text.replace("{}", number), catalogue())
    assert read.session is not None or read.not_understood


@SLOW
@given(text=any_text())
def test_every_place_that_is_named_lies_within_the_text(text):
    lines = text.splitlines() or [""]
    for one in read_session(text, catalogue()).not_understood:
        assert 1 <= one.line <= len(lines)
        assert 1 <= one.column <= len(lines[one.line - 1]) + 1
        assert one.text in lines[one.line - 1]


@SLOW
@given(text=any_text(), session=sessions())
def test_a_score_is_sure_or_comes_with_its_one_question(text, session):
    read = read_score(text, session)
    assert read.sure is (read.ask is None) is (read.doubt is None)
    if read.doubt is not None and read.doubt not in SETTLED_BY_YES:
        assert read.score is None or (read.score.value, bool(read.score.pain)) == (None, True)
    if read.sure:
        assert read.score is not None
        assert read.score.value is not None
        assert read.score.value >= 0
        assert session.blocks[read.block].scored


@SLOW
@given(text=any_text())
def test_no_text_breaks_the_smaller_readers(text):
    read = read_things(text)
    assert read.equipment is None or all(load > 0 for thing in read.equipment for load in thing.loads_kg)
    assert not any(thing.loads_kg or thing.to_kg for thing in read.without_weight)
    weighed = read_weight(text, Equipment(implement="dumbbell"))
    assert weighed is None or all(thing.loads_kg or thing.to_kg for thing in weighed)
    mass = read_body_mass(text)
    assert mass is None or 30 <= mass <= 300
    reps = read_reps(text)
    assert reps is None or (0 <= reps <= 1000 and not does_not_know(text))
    assert isinstance(is_like_a_score(text), bool)
    assert isinstance(is_like_a_session(text), bool)
