"""How hard something is meant to be, in a coach's words (`efforts.toml`): `easy, you can talk`."""

import re
import tomllib
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Final

from core.measures import AmountUnit
from core.notation.lines.pieces import Piece
from core.notation.phrases.aims import Facts
from core.notation.phrases.paces import OF_A_PART, is_paced
from core.sessions.values import Block, BlockKind, Effort

_TABLE: Final = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))["degree"]
EASY_ANYWAY: Final = (BlockKind.WARM_UP, BlockKind.COOL_DOWN)
_HARDEST: Final = 10
_EASIEST_RACE: Final = 5
_NUMBER: Final = re.compile(
    r"\b(?:rpe|effort)\s?:?\s?(?P<lo>[0-9]{1,2})(?:\s?(?:-|to)\s?(?P<hi>[0-9]{1,2}))?(?:\s?/\s?10)?(?![0-9%])"
    r"|(?<![0-9.])(?P<of>[0-9]{1,2})\s?/\s?10(?:\seffort)?(?![0-9])"
)


def _pattern(said: list[str]) -> re.Pattern[str]:
    return re.compile(r"\b(?:" + "|".join(said).replace(" ", r"[\s-]") + r")\b")


_DEGREES: Final = [(_pattern(row["said"]), row.get("low"), row.get("high")) for row in _TABLE]


def effort_told(words: str) -> Effort | None:
    """How hard words in lower case say it is, whatever else they say; None where they don't."""
    if found := _in_numbers(words):
        return found
    for pattern, low, high in _DEGREES:
        if match := pattern.search(words):
            return Effort(low=low, high=high, words=match[0])
    return None


def _in_numbers(words: str) -> Effort | None:
    match = _NUMBER.search(words)
    if match is None:
        return None
    low = float(match["lo"] or match["of"])
    high = float(match["hi"] or low)
    return Effort(low=low, high=high, words=words.strip()) if low <= high <= _HARDEST else None


def effort_of(piece: Piece) -> Facts:
    """What a piece says of how hard it is: `40 min at an easy pace`, `rpe 6`."""
    if piece.load_rule and (rated := piece.load_rule.effort):
        return {"effort": Effort(low=rated, high=rated)}
    return _in_words(piece)


def _in_words(piece: Piece) -> Facts:
    whole = [note for note in piece.notes if not OF_A_PART.match(note.lower())]
    telling = [at for at, note in enumerate(whole, 1) if effort_told(note.lower())]
    upto = whole[: max(telling, default=len(whole))]
    said = " ".join(note for note in upto if effort_told(note.lower()) or not is_paced(note.lower()))
    told = effort_told(said.lower())
    return {"effort": told.model_copy(update={"words": said})} if told else {}


def effort_of_all(pieces: Sequence[Piece]) -> Facts:
    """How hard a part is of which every line goes far, and says the same: `run 5 km easy`."""
    told = [_in_words(piece).get("effort") if _goes_far(piece) else None for piece in pieces]
    first = told[0] if told else None
    same = first and all(one and (one.low, one.high) == (first.low, first.high) for one in told)
    return {"effort": first} if same else {}


def _goes_far(piece: Piece) -> bool:
    return piece.meaning is not None and piece.meaning.unit is not AmountUnit.REPS and not piece.meaning.held


def with_effort(blocks: Iterable[Block], of_day: Effort | None) -> tuple[Block, ...]:
    """The parts, in which the day's effort is that of the work that says none of its own."""
    return tuple(
        block if block.effort or of_day is None or block.kind in EASY_ANYWAY
        else block.model_copy(update={"effort": of_day})
        for block in blocks
    )  # fmt: skip


def take_effort(facts: Facts, told: Facts) -> Facts:
    """What is told but for how hard it is, which joins what `facts` say of that."""
    effort, before = told.get("effort"), facts.get("effort")
    if effort:
        facts["effort"] = both(before, effort) if before else effort
    return {name: value for name, value in told.items() if name != "effort"}


def both(one: Effort, other: Effort) -> Effort:
    """What two sayings have in common; where they have nothing, the first counts. All words are kept, once."""
    low = max((end for end in (one.low, other.low) if end is not None), default=None)
    high = min((end for end in (one.high, other.high) if end is not None), default=None)
    words = ", ".join(_said_once(one.words, other.words)) or None
    if low is not None and high is not None and low > high:
        low, high = one.low, one.high
    return Effort(low=low, high=high, words=words)


def _said_once(one: str | None, other: str | None) -> Iterable[str]:
    """`sunday easy` and `easy` are `easy`, as the day stands before it; `easy` goes into `easy, you can talk`."""
    said = sorted(dict.fromkeys(filter(None, (one, other))), key=len)
    if len(said) > 1 and said[1].endswith(said[0]):
        return said[:1]
    if len(said) > 1 and said[0] in said[1]:
        return said[1:]
    return dict.fromkeys(filter(None, (one, other)))


def is_easy(effort: Effort | None) -> bool:
    """Whether nobody is to race."""
    return effort is not None and effort.high is not None and effort.high <= _EASIEST_RACE
