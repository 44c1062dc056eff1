"""Stop signs are heard in every language that is understood, and a friend's is a friend's."""

import pytest

from core.understanding.signs import alarm, tells_of_effort

TOLD = [
    "my chest hurts and I feel dizzy",
    "one calf is swollen and hot since the flight",
    "my calves cramp up on the stairs, it eases when I stand still",
    "on the second flight of stairs both calves ache, and it ceases when I stop",
    "my ankles are both swollen since the weekend",
    "my heart was beating all out of step",
    "rpe 8, bit wheezy at the end",
    "wheezing a lot after the run",
    "my asthma was playing up, had to stop twice for breath",
    "had to stop for breath on round 3",
    "asthma kicked in during the run",
    "hab grad so druck auf der brust",
    "Mir wurde schwarz vor Augen",
    "mein Herz rast, ist das normal?",
    "beide Waden tun auf der Treppe weh, und wenn ich stehen bleibe, wird es besser",
    "Llevo dos días con palpitaciones",
    "Casi me desmayo en la tercera serie",
    "me duelen los gemelos al subir la escalera y se me pasa cuando paro",
]
OF_OTHERS = [
    "my friend fainted",
    "ein Freund von mir hatte gestern Stiche im Herz, ist das normal?",
    "meine Freundin hat Herzrasen",
    "Mein Bruder hat seit gestern Druck auf der Brust",
    "un amigo mío tiene dolor en el pecho",
]
NONE = [
    "7+12",
    "no wheezing today",
    "I have asthma",
    "my asthma is fine",
    "asthma's playing up with the pollen, something gentle today?",
    "I wheeze when the pollen's up",
    "when do I breathe in the press?",
    "no chest pain at all",
    "no air squats today",
    "my calves are killing me on the stairs after those jumps",
    "chest to bar pull-ups went well",
    "heart rate was 170",
    "I have no air bike",
    "die Brust war heute dran",
]


@pytest.mark.parametrize("text", TOLD)
def test_a_sign_of_ones_own_is_told(text):
    assert alarm(text) == "told"


@pytest.mark.parametrize("text", OF_OTHERS)
def test_a_sign_of_somebody_else_is_theirs(text):
    assert alarm(text) == "other"


@pytest.mark.parametrize("text", ["ist Herzrasen normal?", "is it normal to feel dizzy after burpees?"])
def test_a_sign_that_is_asked_about_is_nobodys_yet(text):
    assert alarm(text) == "asked"


@pytest.mark.parametrize("text", NONE)
def test_ordinary_words_are_no_sign(text):
    assert alarm(text) is None


def test_who_is_named_has_the_sign():
    assert alarm("Bo fainted", {"Bo"}) == "other"
    assert alarm("Bo and I fainted", {"Bo"}) == "told"


@pytest.mark.parametrize(
    "words", ["not really, bit out of breath on the stairs", "i get breathless climbing stairs"]
)
def test_being_out_of_breath_from_an_effort_may_be_no_sign(words):
    assert tells_of_effort(words)


@pytest.mark.parametrize(
    "words",
    [
        "out of breath just sitting",
        "chest pain and out of breath on stairs",
        "short of breath at night",
        "no",
    ],
)
def test_at_rest_or_with_another_sign_it_is_one(words):
    assert not tells_of_effort(words)
