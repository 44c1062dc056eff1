"""What is said of the whole block and is no one number: `rest as needed`, `split the reps`. Kept as notes."""

import re
from collections.abc import Iterator

from core.notation.text import Row, Strip

_REST = r"\b(?:rest|break|recover)"
_MANNERS = re.compile(
    "|".join(
        (
            (
                rf"{_REST}s?(?: in between| between (?:rounds|sets))? (?:as|when|if|whenever) (?:needed|required"
                r"|necessary|you (?:need|like|want)(?: it| to)?)\b"
            ),
            (
                rf"{_REST}\s?:?\s(?:for )?[0-9]{{1,3}}\s?(?:min|s|sec)?\s?(?:-|to)\s?[0-9]{{1,3}}\s?"
                r"(?:min(?:ute)?s?|s|secs?|seconds)\b(?: (?:in )?between (?:the |all )?(?:rounds|sets|efforts))?"
            ),
            rf"{_REST} (?:the same(?: time)?|as long as (?:it takes|you work(?:ed)?|your partner works))\b",
            rf"{_REST} equal to (?:the )?work(?: time)?\b",
            rf"{_REST} 1:[1-4](?![0-9])",
            r"\bno rest(?: between (?:rounds|sets|movements))?\b",
            (
                r"\b(?:share|split|divide) (?:the |all )?(?:work|reps?|repetitions|rounds?)"
                r"(?: (?:as you (?:like|want|wish)|however you (?:like|want)|evenly|between you|as needed))?\b"
            ),
            r"\bone (?:works?|partner works),? (?:the other|one)(?: partner)? rests?\b",
            r"\b(?:until|to) failure\b",
        )
    )
)
_OPEN_END = re.compile(r"(?<![0-9.\-])(?:[0-9]{1,2}-){1,6}[0-9]{1,2}\+(?!\s?[0-9])")


def take_manners(strip: Strip, row: Row) -> Iterator[str]:
    """Each in the coach's own words, taken away; the plus of `5-5-5+` only gets its meaning told."""
    if last := _OPEN_END.search(strip.text):
        yield f"{last[0]}: the last set is as many as you can"
    while manner := strip.take(_MANNERS):
        yield row.text[manner.start() : manner.end()]
