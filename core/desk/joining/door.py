"""Whoever writes and belongs to no group: the way in, whole once, then in one line."""

from typing import Final

from core.desk.joining.says import AtTheDoor
from core.desk.outcome import Outcome
from core.desk.says import Help
from core.desk.visit import Visit

# The kind of open question of a chat in which the way in was told; nothing that is typed answers it.
DOOR: Final = "door"


async def show_way_in(visit: Visit, told: str = "") -> Outcome:
    """`told`: what was typed, and wasn't kept."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is not None and question.kind == DOOR:
        return visit.told(AtTheDoor(told=told))
    if question is None and visit.private:
        await visit.uow.questions.ask(visit.chat, DOOR, {}, visit.now)
    return visit.told(Help(coach=False, joined=False))
