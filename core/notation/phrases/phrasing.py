"""A shape of words in the tables of phrases, and what it says."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property

from core.notation.phrases.aims import Facts, Match
from core.notation.phrases.parts import PARTS


@dataclass(frozen=True, eq=False)
class Phrase:
    """A shape of words and what it says; compiled when it is first tried, as most never are."""

    source: str
    facts: Callable[[Match], Facts]

    @cached_property
    def pattern(self) -> re.Pattern[str]:
        return re.compile(self.source)


def phrase(shape: str, facts: Callable[[Match], Facts]) -> Phrase:
    """A row of the table; ready-made parts come in only after spaces have got their meaning."""
    spaced = shape.replace(" ", r"[\s\-]{1,3}").replace("_", r"[\s\-]{0,3}")
    return Phrase(re.sub(r"(?<!\?P)<([a-z]+)>", lambda part: PARTS[part[1]], spaced), facts)
