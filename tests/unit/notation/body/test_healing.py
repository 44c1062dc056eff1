"""Nothing is healed by a no: what is said to be no better hurts, whatever is fine again beside it."""

import pytest

from core.notation.body.complaints import read_complaint
from core.notation.body.healing import hurts_somewhere, injured, no_better
from core.understanding.understand import understand
from core.understanding.values import Context, Message

SAID = [
    ("shoulder's no better", (), ("shoulder",)),
    ("my shoulder is no better, knee is all good", ("knee",), ("shoulder",)),
    ("elbow better, knee worse", ("elbow",), ("knee",)),
    ("back is ok, hip isn't", ("low-back",), ("hip",)),
    ("wrist is fine again, but my back went when i did the deadlifts", ("wrist",), ("low-back",)),
    ("my knee doesn't hurt any more", ("knee",), ()),
    ("foot's all good today, but tweaked my hammy on the run", ("ankle",), ("hamstring",)),
    ("my shoulder clicks on the presses and it aches at night", (), ("shoulder",)),
    ("calf went on the last rep", (), ("calf",)),
    ("my knee is worse today and my back is not better", (), ("knee", "low-back")),
    ("15 mins, tweaked my calf on the run, sold my bench", (), ("calf",)),
    ("strained my groin, back is fine", ("low-back",), ("groin",)),
    ("knee is much better, not sore at all", ("knee",), ()),
    ("my back pain is gone", ("low-back",), ()),
    ("the pain in my knee hasn't gone", (), ("knee",)),
    ("knees fine, shoulder not so good", ("knee",), ("shoulder",)),
    ("back ok wrist still iffy", ("low-back",), ("wrist",)),
    ("knee good, back a bit meh", ("knee",), ("low-back",)),
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


@pytest.mark.parametrize(
    "text", ["my quads are sore", "hamstrings feel tight", "did 3 x 12 calf raises, went well"]
)
def test_a_muscle_that_was_trained_is_no_injury(text):
    assert read_complaint(text) is None
    assert injured(text) == ()


@pytest.mark.parametrize(
    ("text", "hurts"),
    [
        ("no not sore, like pinching when i go overhead", True),
        ("pulled a muscle", True),
        ("it doesn't hurt when i run", False),
        ("pulled the sandbag", False),
    ],
)
def test_what_hurts_may_have_no_name(text, hurts):
    assert hurts_somewhere(text) is hurts
