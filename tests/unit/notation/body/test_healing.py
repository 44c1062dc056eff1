"""Nothing is healed by a no: what is said to be no better hurts, whatever is fine again beside it."""

import pytest

from core.notation.body.complaints import read_complaint
from core.notation.body.healing import no_better
from core.understanding.understand import understand
from core.understanding.values import Context, Message

SAID = [
    ("shoulder's no better", (), ("shoulder",)),
    ("my shoulder is no better, knee is all good", ("knee",), ("shoulder",)),
    ("elbow better, knee worse", ("elbow",), ("knee",)),
    ("back is ok, hip isn't", ("low-back",), ("hip",)),
    ("wrist is fine again, but my back went when i did the deadlifts", ("wrist",), ("low-back",)),
    ("my knee doesn't hurt any more", ("knee",), ()),
    ("knee is much better, not sore at all", ("knee",), ()),
]


@pytest.mark.parametrize(("text", "well", "hurt"), SAID)
def test_each_joint_is_well_or_hurts_by_what_its_own_clause_says(text, well, hurt):
    acts = understand(Message(text=text, role="athlete"), Context()).acts
    told = {
        name: tuple(one for act in acts if act.act == name for one in act.limits)
        for name in ("well_again", "hurt")
    }
    assert told == {"well_again": well, "hurt": hurt}


@pytest.mark.parametrize(("text", "_", "hurt"), SAID)
def test_no_complaint_is_read_as_over_where_something_is_no_better(text, _, hurt):
    told = read_complaint(text)
    assert not (hurt and told and told.kind == "over")
    assert no_better(text) == hurt
