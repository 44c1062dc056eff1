"""A coach wants those asked who haven't told a score: `ping them`, `nudge whoever hasn't reported`."""

import re
from typing import Final

from core.notation.in_full import in_full

# These say it by themselves; the others may begin any word to everybody.
_BY_ITSELF: Final = frozenset({"ping", "nudge", "chase", "poke"})
_VERBS: Final = _BY_ITSELF | {"remind", "ask", "message"}
_POLITE: Final = frozenset(re.split(" ", "and so then please can could you just"))
_QUIET: Final = frozenset(
    re.split(" ", "hasnt havent hasn't haven't not didnt didn't isnt isn't yet missing quiet")
)
# `Remind everybody about their scores`.
_SCORES: Final = frozenset({"score", "scores", "results"})
_AROUND: Final = frozenset(
    re.split(
        " ",
        "them all those these the rest others who whoever that everyone everybody anyone anybody people ones is are has"
        " have did been still yet of my reported report scored score scores logged log told tell me sent send"
        " wrote posted answered their please again up now today for to about results",
    )
)


def asks_to_ping(text: str) -> bool:
    words = re.findall(r"[\w']+", re.sub(r"'s\b", " is", in_full(text.casefold().replace("\u2019", "'"))))
    said = words[next((at for at, one in enumerate(words) if one not in _POLITE), 0) :]
    if not said or said[0] not in _VERBS:
        return False
    about = set(said[1:])
    of_scores = said[0] == "remind" and not about.isdisjoint(_SCORES)
    return about <= _AROUND | _QUIET and (said[0] in _BY_ITSELF or of_scores or not about.isdisjoint(_QUIET))
