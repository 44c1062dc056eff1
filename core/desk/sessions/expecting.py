"""What a session comes to for a coach's group, and what a change would do, before anything is changed."""

import re
from dataclasses import replace
from itertools import zip_longest

from core.desk.coached import coached_groups
from core.desk.outcome import Outcome
from core.desk.sessions.amending import in_stead, newest, session_written
from core.desk.sessions.landing import expected_of, try_on_group
from core.desk.sessions.says import ExpectedOfGroup, NotAmended, WhatItWouldDo
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.edits.changes import changed
from core.sessions.values import Session
from core.store.records import SessionRecord

# `I made it 12 kg`, `used 12 kg`: who would do it, and with which verb, says nothing of the change.
_SUPPOSED = re.compile(
    r"^(?:(?:i|we|they|you|it)\s+)?(?:would\s+|were\s+to\s+)?"
    r"(?:(?:made|make|used?|wrote|write|had|have|did|do|put|set|changed?|turned?|was|were)\s+)?",
    re.IGNORECASE,
)


# `The DBs are 10`: what is held has so many kilos.
_OF_THINGS = re.compile(
    r"^(?:the|their|our|all(?: the)?)?\s*"
    r"(?:dumb-?bells?|dbs?|db's|kettle-?bells?|kbs?|kb's|bells?|weights?|loads?|bars?|barbells?)\s+"
    r"(?:is|are|was|were|would be|go(?:es)? to|went to)\s+",
    re.IGNORECASE,
)
_BARE = re.compile(r"^[0-9]+(?:[.,][0-9]+)?$")


async def how_long_for(visit: Visit, record: SessionRecord, name: str | None = None) -> Outcome:
    """To a coach who asked how long it takes them, or one of them."""
    tried, _ = await try_on_group(visit, record)
    of = [one for one in tried if name in {None, one.person.name}]
    return visit.told(ExpectedOfGroup(expected=expected_of(record.session, of, visit.now.year)))


async def what_if(visit: Visit, change: str) -> Outcome | None:
    """The change tried on the newest session that they wrote, and nothing of it kept."""
    groups = await coached_groups(visit)
    record = await newest(visit, groups)
    if record is None:
        return None
    group = await visit.group(record.group_id)
    wishes = _as_wishes(change, record.session)
    found = (changed(record.text, one, catalogue(), group.units, in_stead) for one in wishes)
    words = next((one.text for one in found if one and one.text != record.text and not one.left), None)
    if words is None:
        return visit.told(NotAmended(left=(change,)))
    session = session_written(words, group)
    before, _ = await try_on_group(visit, record)
    after, _ = await try_on_group(visit, replace(record, session=session, text=words))
    year = visit.now.year
    return visit.told(
        WhatItWouldDo(
            lines=lines_changed(record.text, words),
            before=expected_of(record.session, before, year),
            after=expected_of(session, after, year),
        )
    )


def lines_changed(before: str, after: str) -> tuple[tuple[str, str], ...]:
    """Each line of the text that would be another; what is left out or added stands beside nothing."""
    old, new = ([one.strip() for one in text.splitlines() if one.strip()] for text in (before, after))
    gone, come = [one for one in old if one not in new], [one for one in new if one not in old]
    return tuple(zip_longest(gone, come, fillvalue=""))


def _as_wishes(change: str, session: Session) -> tuple[str, ...]:
    """How the change would be ordered, the likelier first; a bare load is that of what has one."""
    wish = _BARE.sub(r"\g<0> kg", _SUPPOSED.sub("", _OF_THINGS.sub("", change)))
    loaded = [line.movement for block in session.blocks for line in block.lines if line.loads_kg]
    return (change, wish, f"make {wish}", f"make it {wish}", *(f"make the {one} {wish}" for one in loaded))
