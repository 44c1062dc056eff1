"""What a word means, and how a movement is done, for whoever asks in words."""

import re
from collections.abc import Mapping
from typing import Final, get_args

from core.desk.outcome import Outcome
from core.desk.says import Explained, Term
from core.desk.versions.says import HowTo
from core.desk.versions.version import session_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.movements.lookup import Named, catalogue

_KNOWN: Final[Mapping[str, Term]] = {term: term for term in get_args(Term)} | {
    "rpe": "effort", "tng": "touch and go", "nft": "not for time", "afap": "for time", "e2mom": "emom", "eomom": "emom",
}  # fmt: skip


def explained(visit: Visit, term: str) -> Outcome | None:
    """What a word of the trade means; None for one that nobody wrote down yet."""
    known = _KNOWN.get(term.casefold())
    return visit.told(Explained(term=known)) if known else None


async def explain(visit: Visit, movement: str) -> Outcome | None:
    """What was asked for, then the way that they have it, where that is another; None for what nobody knows here."""
    named = catalogue().by_name(movement)
    if named is None:
        return None
    asked, own = first_way(named), await own_way(visit, named)
    return visit.told(HowTo(variants=(asked,), own=own if own != asked else None))


_LONGEST_NAME: Final = 5
_ARTICLES: Final = frozenset({"a", "an", "the", "my", "those", "these"})


def longest_name(text: str) -> str | None:
    """The longest name of a movement of two words or more: `a single arm row` is no row on the machine."""
    # `A kb swing` is no American one.
    words = [one for one in re.findall(r"[\w'-]+", text.lower()) if one not in _ARTICLES]
    spans = ((at, at + size) for size in range(_LONGEST_NAME, 1, -1) for at in range(len(words) - size + 1))
    names = (" ".join(words[start:end]) for start, end in spans)
    return next((name for name in names if catalogue().by_name(name)), None)


async def own_way(visit: Visit, named: Named) -> tuple[str, str] | None:
    """The way that they have it today, also where it stands in for what they ask about."""
    record = await session_meant(visit, None)
    version = await seen_by(visit, record, visit.person) if record else None
    if record is None or version is None:
        return None
    lines = [line for block in version.version.blocks for line in block.lines]
    written = [line for block in record.session.blocks for line in block.lines]
    own = next((one for one in lines if one.movement == named.movement.id), None)
    pairs = zip(written, lines, strict=False) if len(written) == len(lines) else ()
    instead = next((mine for theirs, mine in pairs if theirs.movement == named.movement.id), None)
    way = own or instead
    return (way.movement, way.variant) if way and way.movement else None


def first_way(named: Named) -> tuple[str, str]:
    return named.movement.id, (named.variant or named.movement.variants[0]).id
