# Branches after Riebe et al. 2015, Med Sci Sports Exerc 47(11):2473-2479; written from memory.
from itertools import product

import pytest

from core.athletes.screening import Branch, ScreeningQuestion, next_screening_question, screen
from core.athletes.values import Screening
from core.errors import Defect

YES, NO = True, False


@pytest.mark.parametrize(
    ("adult", "symptoms", "known_disease", "active", "branch", "allows"),
    [
        (NO, NO, NO, YES, Branch.NOT_ADULT, Screening.STOP),
        (YES, YES, NO, YES, Branch.SYMPTOMS, Screening.STOP),
        (YES, YES, YES, NO, Branch.SYMPTOMS, Screening.STOP),
        (YES, NO, YES, NO, Branch.DISEASE_INACTIVE, Screening.STOP),
        (YES, NO, YES, YES, Branch.DISEASE_ACTIVE, Screening.MODERATE),
        (YES, NO, NO, NO, Branch.HEALTHY_INACTIVE, Screening.MODERATE),
        (YES, NO, NO, YES, Branch.HEALTHY_ACTIVE, Screening.CLEAR),
    ],
)
def test_each_branch_ends_as_the_three_factors_say(adult, symptoms, known_disease, active, branch, allows):
    ended = screen((adult, symptoms, known_disease, active))
    assert (ended, ended.screening) == (branch, allows)


def test_whoever_says_that_care_cleared_them_restarts_lighter():
    assert Branch.CLEARED.screening is Screening.MODERATE


@pytest.mark.parametrize(
    ("answers", "question"),
    [
        ((), ScreeningQuestion.ADULT),
        ((YES,), ScreeningQuestion.SYMPTOMS),
        ((YES, NO), ScreeningQuestion.KNOWN_DISEASE),
        ((YES, NO, NO), ScreeningQuestion.ACTIVE),
        ((YES, NO, YES), ScreeningQuestion.ACTIVE),
    ],
)
def test_questions_come_in_order(answers, question):
    assert next_screening_question(answers) is question


@pytest.mark.parametrize("answers", [(NO,), (YES, YES), (YES, NO, NO, YES)])
def test_nothing_more_is_asked_once_it_is_decided(answers):
    assert next_screening_question(answers) is None
    assert screen(answers) in Branch


def test_a_screening_is_decided_exactly_when_no_question_is_left():
    for count in range(5):
        for answers in product([YES, NO], repeat=count):
            if next_screening_question(answers) is not None:
                with pytest.raises(Defect):
                    screen(answers)
            else:
                assert isinstance(screen(answers).screening, Screening)


def test_any_symptom_stops_whatever_else_is_answered():
    assert all(screen((YES, YES, *rest)).screening is Screening.STOP for rest in product([YES, NO], repeat=2))
