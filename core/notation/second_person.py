"""What is said of somebody, as it is said to them: `rounds her back` is `you round your back`."""

import re
from typing import Final

BODY: Final = (
    r"(?:(?:lower|upper|mid|left|right) )?(?:back|spine|knees?|elbows?|hips?|chest|heels?|shoulders?|shoulder blades?"
    r"|head|chin|neck|feet|foot|toes?|wrists?|arms?|legs?|hands?|core|belly|butt|bum|glutes?|lats?|ribs?|eyes|torso|trunk|grip)"
)
_ADVERB: Final = r"(?:always|often|sometimes|still|usually|never|really|also|just|mostly|then)"
_NO_VERBS: Final = frozenset(
    {"always", "sometimes", "reps", "sets", "this", "less", "its", "perhaps", "yes", "lots", "his", "as"}
)
_IRREGULAR: Final = {
    "has": "have", "is": "are", "does": "do", "was": "were", "doesn't": "don't", "isn't": "aren't", "hasn't": "haven't",
    "hasnt": "haven't", "doesnt": "don't", "isnt": "aren't", "didnt": "didn't", "wasnt": "weren't",
}  # fmt: skip
_BEGINS: Final = re.compile(
    r"^(?:(?:but|because|as|since|so|and|that|for|that's because|should|must|needs? to|has to|have to)\b[\s:,]*)+",
    re.IGNORECASE,
)
_WHOSE: Final = (
    rf"(?:{BODY}|form|technique|depth|tempo|balance|posture|range|lockout|set-?up|stance|breathing)"
)
_BESIDE: Final = re.compile(
    r"^(?:(?:please|now|again|too)\b[\s,]*)+|(?:[\s,]*\b(?:please|now|from now on))+$", re.IGNORECASE
)
_SUBJECT: Final = re.compile(
    r"(?:\b(?:she|he|they(?!'?re| are| look| go))|@)('?s)?(?!\w)(?: (\w+'?\w*))?", re.IGNORECASE
)
_EDGES: Final = " ,;:.\u2013-\"'\u201c\u201d"


def to_them(words: str) -> str:
    """A coach's words about an athlete, turned to that athlete; others than in the third person stay as they are.

    `@` stands for the athlete's name.
    """
    said = re.sub(r"\s*,(?:\s*,)*\s*", ", ", " ".join(words.split())).strip(_EDGES)
    said = _BESIDE.sub("", _BEGINS.sub("", said)).strip(_EDGES)
    said = _SUBJECT.sub(_you, said)
    said = re.sub(r"\b(?:herself|himself|themselves)\b", "yourself", said, flags=re.IGNORECASE)
    said = re.sub(r"\b(?:her|his|their)\b", "your", said, flags=re.IGNORECASE)
    return re.sub(r"\b(and|or) (\w+s)(?= your\b)", lambda one: f"{one[1]} {base(one[2])}", _begun(said))


# Whoever told it needn't be told that they did: `Ilse told me her wrist is sore`.
_TOLD_ME: Final = re.compile(
    r"^(?:\S+ )?(?:(?:told|tells|texted)(?: to)? me|wrote(?: to)? me|says|said) (?:that )?", re.IGNORECASE
)


def spoken_to(words: str) -> str:
    """A question about somebody, turned to them: `how his knee is` is `how your knee is`."""
    said = _SUBJECT.sub(_you, _TOLD_ME.sub("", " ".join(words.split()).strip(_EDGES)))
    said = re.sub(r"\b(?:herself|himself|themselves)\b", "yourself", said, flags=re.IGNORECASE)
    said = re.sub(r"\b(?:her|his|their)\b(?= \w)", "your", said, flags=re.IGNORECASE)
    return re.sub(r"\b(?:her|him|them)\b", "you", said, flags=re.IGNORECASE)


def _you(said: re.Match[str]) -> str:
    if said[1] and said[2] in {"got", "had", "been"}:
        return f"you've {said[2]}"
    verb = "are " + said[2] if said[1] and said[2] else base(said[2] or "")
    return f"you {verb}".strip()


def _begun(said: str) -> str:
    """With a subject in front, where the words have none."""
    if re.match(rf"{_WHOSE}\b", said, re.IGNORECASE):
        return f"your {said}"
    if re.match(r"can(?:'t|not)\b", said, re.IGNORECASE):
        return f"you {said}"
    match = re.match(rf"((?:{_ADVERB} )*)([a-z]+(?:'t)?)\b", said, re.IGNORECASE)
    if match is None or not _is_third_person(match[2].lower()):
        return said
    return f"you {match[1]}{base(match[2].lower())}{said[match.end() :]}"


def _is_third_person(word: str) -> bool:
    return word in _IRREGULAR or (
        word.endswith("s") and not word.endswith(("ss", "us")) and word not in _NO_VERBS
    )


def base(verb: str) -> str:
    """`rounds` is `round`, `pushes` is `push`, `has` is `have`."""
    if verb in _IRREGULAR:
        return _IRREGULAR[verb]
    if verb.endswith(("sses", "shes", "ches", "xes", "zzes", "oes")):
        return verb[:-2]
    return verb[:-1] if _is_third_person(verb) else verb
