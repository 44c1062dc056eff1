"""What stands before a colon says what the rest is: `announce: no class on Friday`."""

from collections.abc import Mapping
from typing import Final

from core.understanding.acts import Announce, AnyAct
from core.understanding.lexicon import lexicon
from core.understanding.marks import Marked
from core.understanding.text import stem
from core.understanding.values import Message

_LONGEST: Final = 6
# By the lexicon's kind `opener`; a coach's.
_ACTS: Final[Mapping[str, type[Announce]]] = {"announce": Announce}


def opened(message: Message, marked: Marked) -> AnyAct | None:
    """The act whose name stands in front, with the rest as its words; None where none does."""
    tokens = marked.text.tokens
    colon = next((at for at, one in enumerate(tokens[: _LONGEST + 1]) if one.word == ":"), None)
    if message.role != "coach" or not colon:
        return None
    spelled = "".join(stem(one.word) for one in tokens[:colon])
    kind = next((one.value for one in lexicon().senses.get(spelled, ()) if one.kind == "opener"), None)
    rest = message.text[tokens[colon].end :].strip()
    return _ACTS[kind](text=rest) if kind and rest else None
