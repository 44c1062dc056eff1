"""What is kept and who sees it, told to whoever asks."""

from core.desk.outcome import Outcome
from core.desk.profile.own import sharing_of
from core.desk.profile.says import Privacy
from core.desk.visit import Visit
from core.notation.privacy import read_privacy_question


async def as_privacy(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A question that is open stays so: this is often asked because of it."""
    topic = read_privacy_question(text)
    if topic is None:
        return None
    return visit.told(Privacy(topic=topic, shares=await sharing_of(visit)))
