"""What is kept and who sees it, told to whoever asks."""

from core.desk.commands import AboutMe
from core.desk.outcome import Outcome
from core.desk.profile.own import sharing_of
from core.desk.profile.says import Privacy
from core.desk.talk.helping import about_me
from core.desk.visit import Visit
from core.notation.talk.privacy import asks_what_is_known, read_privacy_question


async def as_privacy(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A question that is open stays so: this is often asked because of it."""
    if asks_what_is_known(text) and await visit.uow.consents.given(visit.person.id):
        return await about_me(visit, AboutMe())
    topic = read_privacy_question(text)
    if topic is None:
        return None
    return visit.told(Privacy(topic=topic, shares=await sharing_of(visit)))
