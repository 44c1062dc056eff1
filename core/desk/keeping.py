"""What people wrote is kept raw only for a while: what tells of their health a day, all else some days."""

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any, Final

from core.notation.body.alarm import read_birth_sign
from core.notation.body.complaints import says_it_will_not_move
from core.notation.body.limits import read_limits
from core.store.unit import Store
from core.understanding.marks import mark
from core.understanding.signs import alarm

# Long enough to put right what was written, and to look into what went wrong.
HEALTH_FOR: Final = timedelta(days=1)
_AT_ONCE: Final = 200
# What is named by words about somebody's health.
_OF_HEALTH: Final = frozenset({"part", "maybe_part", "muscle", "condition", "illness", "sign"})


async def let_go_of_health(store: Store, now: datetime, after_id: int = 0) -> int:
    """Empty the handled updates of a day ago and older that tell of health. The last id that was looked at."""
    while True:
        async with store.reading() as unit:
            found = await unit.keeping.handled(now - HEALTH_FOR, after_id, _AT_ONCE)
        if not found:
            return after_id
        after_id = found[-1][0]
        telling = [number for number, body in found if tells_of_health(words_of(body))]
        if telling:
            async with store.unit() as unit:
                await unit.keeping.empty(telling)


async def let_go_of_old(store: Store, now: datetime, keep: timedelta) -> int:
    """Let go of updates, letters and dues that had their end so long ago. How many."""
    async with store.unit() as unit:
        return await unit.keeping.let_go(now - keep)


def words_of(body: Mapping[str, Any]) -> str:
    """What somebody wrote in a raw update; empty where they wrote nothing."""
    message = body.get("message") or body.get("edited_message")
    if not isinstance(message, Mapping):
        return ""
    return str(message.get("text") or message.get("caption") or "")


def tells_of_health(words: str) -> bool:
    """Whether words tell of limits, pain, sickness or a stop sign; rather once too often."""
    if not words:
        return False
    marked = mark(words)
    named = any(_OF_HEALTH & set(one.kinds) for one in marked.marks)
    hurts = any(marked.means(at, "hurt") for at in range(len(marked.words)))
    told = (
        named
        or hurts
        or says_it_will_not_move(words)
        or any(read(words) for read in (alarm, read_birth_sign))
    )
    return told or bool(read_limits(words).limits)
