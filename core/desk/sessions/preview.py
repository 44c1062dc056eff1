"""Try a coach's text on people, with nothing stored: what `bellwether preview` and `read session` show."""

from collections.abc import Iterable, Sequence
from datetime import date
from typing import NamedTuple

from core.athletes.circumstances import in_circumstances
from core.athletes.values import Profile
from core.forecast.forecast import outlook_of
from core.forecast.learning import Taught, after
from core.forecast.people import People
from core.forecast.today import fitted_today, version_today
from core.forecast.values import Outlook
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.values import ReadSession
from core.scaling.costs import entries
from core.scaling.group import view_of
from core.scaling.orders import NO_ORDERS
from core.scaling.values import Explained, GroupView, Version, Withheld
from core.scaling.version import version_for
from core.scaling.why import explained
from core.scores.values import Score
from core.sessions.values import Session

Made = Sequence[tuple[Profile, Version | Withheld]]


def read_text(text: str, units: MassUnit = MassUnit.KG) -> ReadSession:
    """The session in a coach's text; a bare pair of loads takes the `units`."""
    return read_session(text, catalogue(), units)


def try_on(session: Session, people: Iterable[Profile], year: int | None = None) -> tuple[Made, GroupView]:
    """Everybody's version, in their order, and the view of the group.

    `year`: tells ages where the session has no date.
    """
    made = [(one, version_today(session, in_circumstances(one), catalogue(), year=year)) for one in people]
    return made, view_of([outcome for _, outcome in made])


def reckon(session: Session, profile: Profile, year: int | None = None) -> tuple[tuple[Explained, ...], ...]:
    """What each line of somebody's version cost, block by block, and what would have been next."""
    who, known = in_circumstances(profile), catalogue()
    session, cut = fitted_today(session, who, known, NO_ORDERS, year)
    return explained(session, who, known, NO_ORDERS, year=year, cut=cut)


def costs_in_words() -> dict[str, str]:
    """What each entry of the table of costs is for, by its id."""
    return {one.id: one.what for one in entries()}


class Earlier(NamedTuple):
    """A session that somebody did before, and what they scored."""

    on: date
    session: Session
    score: Score


def having_done(profile: Profile, earlier: Iterable[Earlier]) -> Profile:
    """Somebody, with what their earlier scores taught; each counts for the first part that it fits."""
    for one in sorted(earlier, key=lambda one: one.on):
        version = version_for(one.session, in_circumstances(profile), catalogue(), year=one.on.year)
        if isinstance(version, Version):
            lessons = [Taught(version, block, one.score, one.on) for block in version.blocks]
            learned = (after(lesson, in_circumstances(profile), catalogue()) for lesson in lessons)
            found = next((one for one in learned if one not in {None, profile.learned}), profile.learned)
            profile = profile.model_copy(update={"learned": found})
    return profile


def expect(version: Version, profile: Profile, year: int | None = None) -> tuple[Outlook | None, ...]:
    """What is expected of somebody in each block of their version; None where nothing is."""
    return outlook_of(version, People(in_circumstances(profile), catalogue(), year))
