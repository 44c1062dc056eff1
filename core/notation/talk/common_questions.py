"""What people ask about the bot itself: `do I have to be fit?`, `can I schedule a whole week at once?`."""

import re
import tomllib
from functools import cache
from pathlib import Path
from typing import Final, Literal, cast

from core.notation.text import plain

Topic = Literal[
    "fit",
    "what",
    "seen",
    "next",
    "cost",
    "friend",
    "rest",
    "long",
    "needs",
    "calories",
    "sore",
    "pulse",
    "leave",
    "indoors",
    "shoes",
    "food",
    "stretch",
    "often",
    "paces",
    "groups",
    "week",
    "undo",
    "one",
    "coaches",
    "safe",
]
_LONGEST: Final = 90
# Whoever asks begins so, or ends with a question mark; what comes next is asked by the words alone.
_ASKS: Final = re.compile(
    r"\?\s*$|^(?:(?:hi|hey|hello|so|ok|okay|um|and|but|wait|sorry)\W+)*(?:what|whats|how|who|can|could|do|does|is|are|am|will|would"
    r"|which|where|must|should|i need to)\b"
)
_BY_ITSELF: Final = frozenset({"next"})


def common_question(text: str, *, coach: bool) -> Topic | None:
    """The topic that is asked about; None for what is no question of that kind."""
    words = plain(text).replace("\u2019", "'").casefold().replace("'", "").strip()
    if len(words) > _LONGEST or "\n" in text.strip():
        return None
    asks = bool(_ASKS.search(words))
    topics = _read()["anybody"] | (_read()["coach"] if coach else _read()["entering"])
    found = (topic for topic, phrases in topics.items() if phrases.search(words))
    return next((cast("Topic", one) for one in found if asks or one in _BY_ITSELF), None)


@cache
def _read() -> dict[str, dict[str, re.Pattern[str]]]:
    table = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    return {
        whose: {
            topic: re.compile(
                rf"^\W*(?:{'|'.join(map(re.escape, said))})(?: then)?\W*$"
                if topic in _BY_ITSELF
                else rf"\b(?:{'|'.join(map(re.escape, said))})\b"
            )
            for topic, said in topics.items()
        }
        for whose, topics in table.items()
    }
