import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.ability.capacity import Ability
from core.athletes.circumstances import ASKED_OF, TAPPED
from core.athletes.values import Branch, Profile, Screening, Seated
from core.movements.lookup import catalogue
from core.scaling.guesses import guesses
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
            return who.model_copy(update={"equipment": things("dumbbell 16", "chair")})
        case Ask.PAIR:
            return who.model_copy(update={"pair": 2})
        case Ask.LIMITS:
            return who.model_copy(update={"limits": ()})
        case Ask.STAGE:
            field = ASKED_OF[question.about]
            return who.model_copy(update={field: TAPPED[question.about][-1]})
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


def test_a_strong_one_with_a_light_weight_is_asked_about_what_nobody_could_foretell():
    """Fewer than ten squats would surprise anybody; push-ups nobody can guess (common practice, no source)."""
    text = "Warm-up\n10 air squats\nAMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n8 burpees"
    told = [did("goblet squat", 60, 8)]
    question = ask(athlete(owns=["dumbbell 8"], mass=88, pair=1, sex=None, tests=told), text)
    assert question is None or question.movement != "air squat"


def test_numbers_to_tap_fit_what_is_asked_about():
    """A light weight goes more often than a heavy one, and a count to tap must not be the ceiling."""
    ability = Ability(strength_kg=90, spread=0.25, k=50, tested_kg=None, heavy_shown=False)
    light, heavy = guesses(ability, 50), guesses(ability, 65)
    assert light[-1] > heavy[-1]
    assert light[-1] >= ability.unbroken(50, 0.8)


@given(st.floats(5, 300), st.floats(5, 80), st.floats(0, 0.6), st.floats(1, 300))
def test_five_numbers_rise_from_a_few_whatever_is_asked(strength, k, spread, moved):
    found = guesses(Ability(strength, spread, k, None, heavy_shown=False), moved)
    assert len(set(found)) == 5
    assert list(found) == sorted(found)
    assert found[0] <= 5


@pytest.mark.parametrize(
    "who",
    [
        NEW.model_copy(update={"equipment": ()}),
        NEW.model_copy(update={"equipment": things("dumbbell 1", "chair")}),
        NEW.model_copy(update={"equipment": things("kettlebell 24"), "branch": Branch.HEALTHY_INACTIVE}),
        NEW.model_copy(update={"equipment": things("kettlebell 24"), "experience": "new"}),
    ],
)
def test_whoever_is_new_or_could_lift_neither_is_not_asked_which_load_is_meant(who):
    assert Ask.PAIR not in {question.ask for question in interview(who)}


def test_the_loads_that_are_asked_about_are_those_on_the_board():
    question = ask(NEW.model_copy(update={"equipment": things("kettlebell 16")}))
    assert (question.ask, question.loads_kg) == (Ask.PAIR, (24, 16))


@pytest.mark.parametrize("limit", ["heart-failure", "surgery", "fever"])
def test_who_may_not_train_yet_is_not_asked_how_much_they_can_do(limit):
    known = {"equipment": (), "pair": 2}
    assert ask(NEW.model_copy(update={**known, "limits": (limit,)})) is None
    assert ask(NEW.model_copy(update={**known, "limits": ()})) is not None


def test_who_sits_is_not_asked_for_squats():
    told = {"equipment": (), "pair": 2, "limits": ("seated",), "seated": Seated(trunk=True, floor=True)}
    assert ask(NEW.model_copy(update=told), "AMRAP 12\n15 squats\n10 burpees") is None


@pytest.mark.parametrize("limit", ["pregnancy", "after-birth", "seated"])
def test_whoever_is_asked_for_weeks_or_a_seat_is_asked_for_one_ability_less(limit):
    asked = [one.ask for one in interview(NEW.model_copy(update={"limits": (limit,)}))]
    assert asked.count(Ask.STAGE) == 1
    assert asked.count(Ask.ABILITY) <= 1
    plain = [one.ask for one in interview(NEW.model_copy(update={"limits": ()}))]
    assert len(asked) <= len(plain)


def test_whoever_spares_a_wrist_is_asked_for_no_weeks():
    asked = [one.ask for one in interview(NEW.model_copy(update={"limits": ("wrist",)}))]
    assert Ask.STAGE not in asked
