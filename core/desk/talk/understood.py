"""What the visitor's words mean, with what is known of them and their group."""

from collections.abc import Mapping
from functools import cache
from threading import Lock
from typing import Final

from core.desk.coached import coached_groups
from core.desk.visit import Visit
from core.sessions.values import Session
from core.store.records import OpenQuestion
from core.understanding.acts import Announce, AnyAct, Scored
from core.understanding.understand import BESIDE, understand
from core.understanding.values import Context, Message, Understood
from core.understanding.values import OpenQuestion as Question

_AT_ONCE = Lock()
# What an open question of the desk asks for, in the words of understanding.
ASKED: Final[Mapping[str, Question]] = {
    "equipment": "equipment",
    "weight": "equipment",
    "set": "equipment",
    "limits": "limits",
    "body_mass": "weight",
    "ability": "ability",
    "pain": "pain",
    "consent": "consent",
    "screening": "screening",
    "signs": "screening",
    "score": "score",
    "zone": "zone",
    "own_zone": "zone",
}


@cache
def get_ready() -> None:
    """Load what understanding needs, which takes seconds; by the thread that comes first, all others wait."""
    with _AT_ONCE:
        understand(Message(text="hello"))
        understand(Message(text="hello", role="coach"))


async def understood(visit: Visit, text: str, session: Session | None = None) -> Understood:
    """As a coach's words from whoever coaches a group, else as an athlete's."""
    groups = await coached_groups(visit)
    if not groups:
        return in_own_words(text, session)
    get_ready()
    people = [one.person.name for group in groups for one in await visit.uow.groups.members(group.id)]
    names = tuple(dict.fromkeys(people))
    return understand(Message(text=text, role="coach"), Context(people=names, session=session))


def in_own_words(
    text: str, session: Session | None = None, open_: OpenQuestion | None = None, *, as_told: bool = False
) -> Understood:
    """What they mean if somebody says them of themselves, who was asked the open question.

    `as_told`: what they only ask or suppose is so.
    """
    get_ready()
    asked = ASKED.get(open_.kind, "") if open_ else ""
    return understand(Message(text=text), Context(session=session, question=asked, as_told=as_told))


def as_opened(text: str) -> Announce | None:
    """A coach's word for everybody, where that is what stands in front."""
    told = understand(Message(text=text, role="coach")).acts if ":" in text else ()
    return told[0] if told and isinstance(told[0], Announce) and told[0].text != text.strip() else None


def matter(told: Understood) -> tuple[AnyAct, ...]:
    """All that isn't said beside the matter."""
    return tuple(act for act in told.acts if act.act not in BESIDE)


def is_plainly_a_score(told: Understood, *, of_somebody: bool) -> bool:
    """A score, nothing else, and no word left unread; of somebody who is named, or of the speaker."""
    acts = matter(told)
    scored = [act for act in acts if isinstance(act, Scored)]
    whose = all((act.person is not None) is of_somebody for act in scored)
    return bool(scored) and len(scored) == len(acts) and whose and not told.unread
