"""`Stop messaging me`: nothing but answers from now on, at once, until they want more again."""

from core.desk.access import admitted
from core.desk.commands import OnlyAnswer
from core.desk.outcome import Outcome
from core.desk.talk.says import AnswersOnly
from core.desk.visit import Visit


@admitted
async def only_answer(visit: Visit, command: OnlyAnswer) -> Outcome:
    await visit.uow.chats.answer_only(visit.chat, command.yes)
    return visit.told(AnswersOnly(yes=command.yes)) + Outcome(settles=True)


async def wants_only_answers(visit: Visit) -> bool:
    chat = await visit.uow.chats.get(visit.chat)
    return chat is not None and chat.only_answers
