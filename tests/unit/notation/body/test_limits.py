import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.athletes.limits import limits
from core.notation.body.limits import read_limits
from core.notation.values import ReadLimits


@pytest.mark.parametrize(
    ("said", "ids"),
    [
        ("sore wrist, no jumping and I'm on beta blockers", ("wrist", "no-jumping", "beta-blockers")),
        ("my left knee hurts", ("knee",)),
        ("lower back", ("low-back",)),
        ("I don\N{RIGHT SINGLE QUOTATION MARK}t jump", ("no-jumping",)),
        ("I cannot jump; avoid running", ("no-jumping", "no-running")),
        ("24 weeks pregnant", ("pregnancy",)),
        ("hip replacement last year", ("joint-replacement",)),
        ("No Jumps\nBad Knees", ("no-jumping", "knee")),
        ("knee, the other knee", ("knee",)),
        ("i had a C-section 3 months ago", ("after-birth",)),
        ("gave birth 8 weeks ago", ("after-birth",)),
        ("had a baby in march", ("after-birth",)),
        ("12 weeks postpartum", ("after-birth",)),
        ("6 months post-partum", ("after-birth",)),
        ("sprained my ankle two weeks ago", ("ankle",)),
        ("pregnant, 20 weeks", ("pregnancy",)),
        ("left and right wrist", ("wrist",)),
        ("knee pain, otherwise fine", ("knee",)),
        ("bad back, tired today", ("low-back",)),
        ("the pregnancy is going well", ("pregnancy",)),
        ("an inguinal hernia", ("hernia",)),
        ("a hernea", ("hernia",)),
        ("slipped disk", ("low-back",)),
        ("my knee is fine but my wrist hurts", ("wrist",)),
        ("I'm in a wheelchair", ("seated",)),
        ("wheelchair user, sore shoulder", ("seated", "shoulder")),
        ("I cannot stand up", ("seated",)),
        ("can't stand for long", ("seated",)),
        ("seated only, no floor", ("seated", "no-floor")),
        ("paraplegic", ("seated",)),
        ("below the knee amputation", ("seated",)),
        ("I have a pacemaker", ("heart",)),
        ("two stents", ("heart",)),
        ("heart failure", ("heart-failure",)),
        ("COPD", ("copd",)),
        ("had a stroke", ("stroke",)),
        ("I have MS", ("ms",)),
        ("Parkinson's", ("parkinsons",)),
        ("parkinsons disease and bad balance", ("parkinsons", "unsteady")),
        ("it was a very hot day", ("heat",)),
    ],
)
def test_limits_are_read_in_peoples_own_words(said, ids):
    assert read_limits(said).limits == ids


@pytest.mark.parametrize(
    "said",
    [
        "none",
        "No",
        "nothing to avoid.",
        "I'm fine",
        "no problems",
        "no knee pain",
        "n/a",
        "not really",
        "all good, thanks",
        "no limits that I know of",
        "nope, all good",
        "nope all good",
        "my knee is fine",
        "my knee is fine now",
        "wrist healed years ago",
        "both shoulders are perfectly ok",
        "I'm tired today",
        "just a bit tired",
        "none, just tired",
        "Nothing. Out of shape!",
    ],
)
def test_nothing_to_avoid_is_an_answer(said):
    assert read_limits(said) == ReadLimits(limits=())


@pytest.mark.parametrize("said", ["my sholder hurts", "sore shouldr"])
def test_a_slip_of_the_pen_is_understood(said):
    assert read_limits(said).limits == ("shoulder",)


def test_what_is_not_understood_is_told_beside_what_is():
    read = read_limits("bad back,\n  blorp")
    assert (read.limits, read.not_understood) == (("low-back",), ("blorp",))


@pytest.mark.parametrize(
    "said",
    [
        "my knee is mostly fine",
        "my knee is not ok",
        "my knee isn't fine",
        "knee is fine if I don't jump",
        "my knee is fine unless I run",
    ],
)
def test_fine_with_an_if_is_a_limit(said):
    assert "knee" in (read_limits(said).limits or ())


@pytest.mark.parametrize("said", ["20 weeks", "left", "3 months ago"])
def test_what_only_adds_to_a_limit_says_nothing_alone(said):
    assert read_limits(said).limits is None


@pytest.mark.parametrize(
    "said",
    ["used to have a bad back", "my knee is better", "surgery 3 years ago", "gave birth years ago",
     "my asthma is fine"],
)  # fmt: skip
def test_what_is_said_to_be_over_is_left_to_a_person(said):
    assert read_limits(said) == ReadLimits(limits=None, not_understood=(said,))


@pytest.mark.parametrize(
    "said",
    [
        "can't stand burpees",
        "I can't stand the noise",
        "arm amputee",
        "amputee",
        "I'm seated all day at work",
    ],
)
def test_dislike_a_desk_and_a_missing_arm_are_no_reason_to_sit(said):
    assert read_limits(said).limits is None


def test_part_nothing_part_something_is_the_something():
    assert read_limits("no pain, no problems, no jumping").limits == ("no-jumping",)


@pytest.mark.parametrize("said", ["", "   ", "???", "\N{SLIGHTLY SMILING FACE}", "asdf qwerty", "sandwich"])
def test_words_that_say_nothing_known_are_no_answer(said):
    assert read_limits(said).limits is None


def test_no_with_a_joint_and_a_deed_is_a_limit_not_a_denial():
    assert read_limits("no knee bending").limits == ("knee",)


@given(
    st.lists(
        st.sampled_from([(one.id, name) for one in limits() for name in one.names]), min_size=1, max_size=4
    )
)
def test_every_spelling_of_the_table_is_read_in_any_company(told):
    read = read_limits(", ".join(name for _, name in told))
    assert read.limits is not None
    assert set(read.limits) == {limit_id for limit_id, _ in told}
    assert read.not_understood == ()


@given(st.text(max_size=200))
def test_no_text_breaks_the_reading(said):
    read = read_limits(said)
    assert read.limits is None or set(read.limits) <= {one.id for one in limits()}


@pytest.mark.parametrize(
    ("said", "limits"),
    [
        ("wrist, can't bend it back", ("wrist",)),
        ("I can't bend my wrist back", ("wrist",)),
        ("knee hurts when I pull it all the way back", ("knee",)),
        ("I'm back to training, sore knee", ("knee",)),
        ("can't bend my back", ("low-back",)),
        ("can't move back", ("low-back",)),
        ("bad back from work", ("low-back",)),
    ],
)
def test_back_may_say_which_way(said, limits):
    assert read_limits(said).limits == limits


def test_which_way_alone_names_nothing():
    assert read_limits("can't bend it back").limits is None


@pytest.mark.parametrize(
    ("said", "limits"),
    [
        ("not my back, only my wrist", ("wrist",)),
        ("not my back only my wrist", ("wrist",)),
        ("it's not my back, it's my wrist", ("wrist",)),
        ("my wrist, not my back", ("wrist",)),
        ("my knee doesn't hurt, just the ankle", ("ankle",)),
        ("not only my back, my wrist too", ("low-back", "wrist")),
        ("wrist not right", ("wrist",)),
        ("my back is not good", ("low-back",)),
    ],
)
def test_a_joint_that_is_not_it_is_left_alone(said, limits):
    assert read_limits(said).limits == limits
