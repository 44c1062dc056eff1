"""The weights belong to the examples; a language is data alone."""

from core.choosers import read_weights
from core.understanding.acts import OF_ATHLETE, OF_COACH
from core.understanding.choosing import as_ear, digest_of_weights
from core.understanding.examples import examples, read_examples
from core.understanding.features import features
from core.understanding.lexicon import WORDS, read_lexicon
from core.understanding.marks import mark
from tests.corpus.learning import learned, learned_each
from tests.corpus.training import digest, rows, wholes
from tests.corpus.words import words_of

TOY_WORDS = """
[numbers]
zif = 2

[thing]
dumbbell = ["blorp"]
band = ["strimp"]

[part]
knee = ["gnoob"]

[meaning]
own = ["vagu"]
hurt = ["ouzar"]
"""
TOY_SENTENCES = {
    "has": 'said = ["vagu zif blorp", "vagu strimp", "blorp vagu", "vagu blorp ka strimp", "mi vagu strimp"]',
    "hurt": 'said = ["gnoob ouzar", "mi gnoob ouzar", "ouzar gnoob", "gnoob mi ouzar ta", "ta gnoob ouzar"]',
}


def test_the_weights_are_of_these_examples():
    assert digest_of_weights() == digest(), "run `make train`"


def test_the_words_are_of_these_examples():
    assert words_of(examples()) == read_weights(WORDS), "run `make train`"


def test_examples_name_acts_of_their_speaker():
    for example in examples():
        allowed = OF_COACH if example.speaker == "coach" else OF_ATHLETE
        assert example.act in allowed, example


def test_a_sentence_alone_is_an_example_of_one_act():
    acts: dict[tuple[object, ...], set[str]] = {}
    for one in examples():
        if (one.start, one.end) in {(0, None), (0, len(one.text))}:
            said = " ".join(one.text.lower().split()).strip(" .!")
            acts.setdefault((one.language, one.speaker, one.question, said), set()).add(one.act)
    assert {said: told for said, told in acts.items() if len(told) > 1} == {}


def test_a_language_touches_no_python(tmp_path):
    (tmp_path / "words").mkdir()
    (tmp_path / "sentences" / "toy").mkdir(parents=True)
    (tmp_path / "words" / "toy.toml").write_text(TOY_WORDS)
    for act, told in TOY_SENTENCES.items():
        (tmp_path / "sentences" / "toy" / f"{act}.toml").write_text(told)
    words = read_lexicon(tmp_path / "words")
    said = read_examples(tmp_path / "sentences")
    own, own_wholes = list(rows(said, "athlete", words)), list(wholes(said, "athlete", words))
    taught = as_ear({"one": learned(own), "each": learned_each(own_wholes)})

    def meant(text):
        marked = mark(text, known=words)
        chances = taught.hear(features(marked, 0, len(marked.words))).chances
        return max(chances, key=chances.__getitem__), [one.senses for one in marked.marks]

    act, named = meant("ka vagu zif strimp")
    assert act == "has"
    assert ("thing", "band") in [tuple(sense) for senses in named for sense in senses]
    assert meant("gnoob ka ouzar")[0] == "hurt"


def test_a_message_of_several_acts_teaches_each_of_its_parts(tmp_path):
    (tmp_path / "toy").mkdir()
    (tmp_path / "toy" / "several.toml").write_text('said = ["[scored] 9:24, [] what a day [thanks] ta"]')
    told = read_examples(tmp_path)
    assert {one.text for one in told} == {"9:24, what a day ta"}
    assert [(one.act, one.text[one.start : one.end].strip(" ,")) for one in told] == [
        ("scored", "9:24"),
        ("small_talk", "what a day"),
        ("thanks", "ta"),
    ]
    (whole,) = wholes(told, "athlete")
    assert whole.acts == {"scored", "thanks"}
