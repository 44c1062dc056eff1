"""A coach takes back what stands in the group: `withdraw today's session`, `I posted that by mistake`."""

import re
from typing import Final

from core.notation.moments import DAY_WORD
from core.notation.text import plain

_WHICH: Final = rf"(?:the|that|this|my|our|last|latest|today's|tonight's|yesterday's|{DAY_WORD}'s|posted)"
_WHAT: Final = r"(?:session|workout|post|training)"
_WITHDRAW: Final = re.compile(
    r"^\W*(?:(?:please|ok|oops|sorry|hi|hey|no|wait|can you|could you|i want to|i need to)\W+)*"
    rf"(?:(?:withdraw|retract|unpost|delete|remove|cancel|pull|undo|take back|take down|scrap) (?:{_WHICH} )+{_WHAT}"
    rf"|(?:withdraw|retract|unpost|take back|take down) (?:it|that|this|{DAY_WORD})"
    rf"|take (?:{_WHICH} )+{_WHAT} (?:back|down|off|out)"
    rf"|(?:i )?posted (?:it|that|this|(?:{_WHICH} )+{_WHAT}) (?:by (?:mistake|accident)|too early|in the wrong group)"
    rf"|(?:{_WHICH} )+{_WHAT} was (?:posted )?(?:by (?:mistake|accident)|a mistake))"
    r"(?: (?:from|in|to|out of) the group| again| please|,? sorry)*\W*$"
)


def says_withdraw(text: str) -> bool:
    """Whether a posted session is to be taken back; nothing that only speaks of changing it."""
    return bool(_WITHDRAW.match(plain(text[:200]).replace("\u2019", "'").casefold()))
