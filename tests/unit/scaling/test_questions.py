import pytest

from core.athletes.values import Profile, Screening
from core.movements.lookup import catalogue
from core.scaling.questions import next_question
from core.scaling.values import Ask
from tests.unit.scaling.people import athlete, did, session, things

TEXT = "AMRAP 12\n10 push-ups\n12 goblet squats @ 24/16 kg\n15 sit-ups\n200 m run"
NEW = Profile(name="Ilse", screening=Screening.CLEAR)


def ask(who, text=TEXT):
    return next_question(who, session(text), catalogue())


def answered(who, question):
    """The profile after the most talkative of answers."""
    match question.ask:
        case Ask.EQUIPMENT:
            return who.model_copy(update={"equipment": things("dumbbell 12", "chair")})
        case Ask.PAIR:
            return who.model_copy(update={"pair": 2})
        case Ask.LIMITS:
            return who.model_copy(update={"limits": ()})
        case Ask.BODY_MASS:
            return who.model_copy(update={"body_mass_skipped": True})
        case Ask.ABILITY:
            said = did(question.movement, 9, question.load_kg)
            return who.model_copy(update={"evidence": (*who.evidence, said)})


def interview(who, text=TEXT):
    asked = []
    while (question := ask(who, text)) is not None:
        asked.append(question)
        who = answered(who, question)
        assert len(asked) < 20
    return asked


def test_equipment_comes_first_and_nothing_is_asked_twice():
    asked = interview(NEW)
    assert asked[0].ask is Ask.EQUIPMENT
    assert len({(question.ask, question.movement) for question in asked}) == len(asked)


def test_the_first_time_takes_two_short_texts_and_few_taps():
    asked = [question.ask for question in interview(NEW)]
    typed = [one for one in asked if one in {Ask.EQUIPMENT, Ask.BODY_MASS}]
    assert len(typed) <= 2
    assert len(asked) - len(typed) <= 6
    assert asked.count(Ask.ABILITY) <= 2


def test_a_session_without_a_pair_asks_for_none():
    assert Ask.PAIR not in {question.ask for question in interview(NEW, "AMRAP 12\n10 push-ups")}


def test_body_mass_is_not_asked_where_it_cancels_out():
    assert Ask.BODY_MASS not in {question.ask for question in interview(NEW, "AMRAP 12\n10 push-ups")}


def test_a_run_alone_needs_no_equipment_and_no_ability():
    assert {question.ask for question in interview(NEW, "AMRAP 12\n200 m run\n20 air squats")} <= {
        Ask.EQUIPMENT,
        Ask.LIMITS,
        Ask.ABILITY,
    }
    assert ask(NEW.model_copy(update={"limits": (), "equipment": ()}), "AMRAP 12\n200 m run") is None


def test_known_strength_is_not_asked_again():
    who = athlete(owns=["chair"], tests=[did("push-up", 9)])
    assert ask(who, "AMRAP 12\n10 push-ups") is None


@pytest.mark.parametrize("reps", [3, 200])
def test_ability_is_asked_only_where_the_answer_is_open(reps):
    question = ask(athlete(), f"AMRAP 12\n{reps} air squats")
    assert question is None


def test_ability_is_asked_at_a_load_that_is_there():
    who = athlete(owns=["kettlebell 8 12 20"])
    question = ask(who, "AMRAP 12\n12 goblet squats @ 24/16 kg")
    assert question is not None
    assert (question.movement, question.load_kg) == ("goblet squat", 12)
