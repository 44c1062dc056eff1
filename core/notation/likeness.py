"""Is a free text a coach's session? Said precisely, so that ordinary chat never turns into one."""

from core.movements.lookup import Catalogue
from core.notation.session import read_session


def is_like_a_session(text: str, catalogue: Catalogue) -> bool:
    """At least two lines, most of which read as parts of a session."""
    lines = [line for line in text.splitlines() if line.strip()]
    if len(lines) < 2:  # noqa: PLR2004 - a session has a heading and a movement
        return False
    read = read_session(text, catalogue)
    if read.session is None:
        return False
    unread = {one.line for one in read.not_understood}
    return len(unread) * 2 <= len(lines)
