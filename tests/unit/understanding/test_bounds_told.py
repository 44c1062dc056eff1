"""When it should be quiet, when it goes out, and by how much a weight goes up."""

from decimal import Decimal

import pytest

from core.understanding.acts import document
from core.understanding.understand import understand
from core.understanding.values import Context, Message


def act(text, name, role="athlete", question=""):
    acts = understand(Message(text=text, role=role), Context(question=question)).acts
    return next(document(one) for one in acts if one.act == name)


def test_quiet_lies_between_what_is_said_after_and_before():
    told = act("nothing before 7 am or after 9 pm please, no messages then", "quiet")
    assert (told["from"], told["to"]) == ("21:00", "07:00")


def test_a_post_for_tonight_waits_for_tonight():
    assert (
        act("AMRAP 18: 5 pull-ups, 10 step-ups, 15 sit-ups. Post it tonight", "post", "coach")["when"]
        == "tonight"
    )


@pytest.mark.parametrize(
    "text", ["dumbbells 2 to 20 kg going up in twos", "dumbbells 2 to 20 kg in steps of 2"]
)
def test_the_step_of_a_range_may_be_said_behind_it(text):
    (thing,) = act(text, "has", question="equipment")["equipment"]
    assert Decimal(str(thing["step_kg"])) == 2
