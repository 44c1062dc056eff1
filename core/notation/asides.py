"""What people say beside the matter: thanks, and a coach's question how it goes."""

import re

from core.notation.moments import DAY_WORD
from core.notation.text import plain

_NICE = r"(?:ok(?:ay)?|great|perfect|cool|super|nice|awesome|lovely|got it|all good|wow|yay)"
_THANKS = re.compile(
    rf"^\W*(?:{_NICE}\W+)*(?:many |big )?(?:thanks?|thank you|thx|ty|cheers)(?: you)?"
    rf"(?: (?:so|very) much| a lot| again| bot| bellwether| coach|,? {_NICE})*\W*$|^\W*{_NICE}(?:\W+{_NICE})*\W*$"
)
_PEOPLE = (
    r"(?:everyone|everybody|(?:they|we) all|the (?:group|others|crew|team)"
    r"|my (?:people|group|crew|team|athletes))"
)
_TOLD = r"(?:reported|trained|scored|done it|finished|sent|told|posted|logged|checked in|written)"
_HOW_IT_GOES = re.compile(
    r"^\W*(?:(?:hi|hey|so|and|ok)\W+)*"
    rf"(?:who(?:'s|s| has| have| is| are)?(?: not|n'?t| still)?(?: yet)? (?:{_TOLD}|missing|quiet)\b"
    r"|who (?:hasn'?t|has not|haven'?t|didn'?t|did|did not)\b"
    rf"|how(?:'s|s| is| are| did| do) {_PEOPLE}\b"
    r"|how (?:did|is) (?:it|today|the session|the day) (?:go|going)\b"
    r"|(?:the |my |show |show me |today'?s )*digest\W*$)"
)


_IS_IN = (
    r"(?:in|coming|joining|attending|training|signed (?:up|in)|registered|on board|there|with us"
    r"|(?:going|planning) to (?:come|join|be there|train))"
)
_WHO_IS_IN = re.compile(
    r"^\W*(?:(?:hi|hey|so|and|ok|tell me|show me)\W+)*"
    rf"(?:who(?:'s|s| is| are| has| have| all| else| all is)?(?: all)?(?: already)? {_IS_IN}"
    r"|who (?:signed up|comes|joins|attends|will (?:come|join|be (?:there|in)|train))"
    r"|(?:the )?(?:sign-?ups|attendance))"
    r"(?: so far| already)?(?:\s(?:for|to|at|in|on|this|next|the|our|today(?:'s)?|tonight(?:'s)?|tomorrow(?:'s)?"
    rf"|class(?:es)?|session|training|morning|evening|please|{DAY_WORD}(?:'s)?))*[\s?!.]*$",
    re.IGNORECASE,
)


def is_thanks(text: str) -> bool:
    """`thanks!`, `great, thank you so much`, `ok`; nothing that says more."""
    return bool(_THANKS.match(plain(text).lower()))


def asks_how_it_goes(text: str) -> bool:
    """`who hasn't reported?`, `how is everyone doing?`, `digest`."""
    return bool(_HOW_IT_GOES.match(plain(text).lower()))


def asks_who_is_in(text: str) -> bool:
    """`who's in today?`, `who signed up for tomorrow's class?`."""
    return bool(_WHO_IS_IN.match(plain(text)))
