"""Try a coach's text on people, with nothing stored: what `bellwether preview` and `read session` show."""

from collections.abc import Iterable, Sequence

from core.athletes.circumstances import in_circumstances
from core.athletes.values import Profile
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.session import read_session
from core.notation.values import ReadSession
from core.scaling.group import view_of
from core.scaling.values import GroupView, Version, Withheld
from core.scaling.version import version_for
from core.sessions.values import Session

Made = Sequence[tuple[Profile, Version | Withheld]]


def read_text(text: str, units: MassUnit = MassUnit.KG) -> ReadSession:
    """The session in a coach's text; a bare pair of loads takes the `units`."""
    return read_session(text, catalogue(), units)


def try_on(session: Session, people: Iterable[Profile]) -> tuple[Made, GroupView]:
    """Everybody's version, in their order, and the view of the group."""
    made = [(one, version_for(session, in_circumstances(one), catalogue())) for one in people]
    return made, view_of([outcome for _, outcome in made])
