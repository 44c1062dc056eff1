"""Why lines are as they are, and how heavy: for whoever asks in words those lines, and not the whole version again."""

import re
from typing import Literal

from core.desk.outcome import Outcome
from core.desk.versions.looking import current
from core.desk.versions.says import LinesTold, LineTold, NoSuchLine
from core.desk.versions.showing import done_before, last_times, profile_today, today_of, written_at
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.scaling.values import Change, Spot, VersionLine
from core.sessions.values import Session


async def tell_lines(
    visit: Visit, version_id: int, about: Literal["why", "how_heavy"], movement: str | None, words: str = ""
) -> Outcome:
    """The lines of their version that are asked about; none of a movement that it hasn't got.

    Where no movement is named, `words` may be those in which a line says how it is done: `the chest height thing`.
    """
    record, shown = await current(visit, version_id)
    profile = await profile_today(visit, record)
    numbered = list(enumerate(shown.version.spots, 1))
    named = [
        (place, line) for place, (spot, line) in numbered if _is_of(movement, spot, line, record.session)
    ]
    if movement is not None and not named:
        return visit.told(NoSuchLine(version_id=shown.id, session_id=record.id, movement=movement))
    spoken = [(place, line) for place, (_, line) in numbered if _is_spoken_of(line, words)]
    told = (
        named or spoken or [(place, line) for place, (_, line) in numbered if _is_worth_telling(line, about)]
    )
    last = last_times(
        shown.version, await done_before(visit, record), profile.evidence, await today_of(visit, record)
    )
    before = {one.place: one for one in last}
    lines = tuple(LineTold(line=line, last=before.get(place)) for place, line in told)
    return visit.told(
        LinesTold(
            version_id=shown.id,
            session_id=record.id,
            about=about,
            lines=lines,
            units=profile.units,
            spoken=bool(spoken),
        )
    )


def _is_of(movement: str | None, spot: Spot, line: VersionLine, session: Session) -> bool:
    """Whether a line is of a movement, as it is done or as it was written."""
    return movement is not None and movement in {line.movement, written_at(session, spot)}


def _is_spoken_of(line: VersionLine, words: str) -> bool:
    """Whether a word is used in which the way of a line is called, beside its movement."""
    if line.movement is None or line.variant is None:
        return False
    movement, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    own = set(_long_words(variant.label)) - set(_long_words(movement.id))
    return not own.isdisjoint(_long_words(words))


def _long_words(words: str) -> list[str]:
    return re.findall(r"[a-z]{4,}", words.lower())


def _is_worth_telling(line: VersionLine, about: Literal["why", "how_heavy"]) -> bool:
    """Where no movement is named: what was changed, or what has something in the hands."""
    if about == "why":
        return line.change is not Change.NONE
    return line.load_kg is not None
