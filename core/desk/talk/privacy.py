"""What is kept and who sees it, told to whoever asks; taking it along and erasing it, in words."""

from core.desk.outcome import Outcome
from core.desk.profile.commands import ExportMine, ForgetMe
from core.desk.profile.own import export_mine, forget_me, sharing_of
from core.desk.profile.says import Privacy
from core.desk.visit import Visit
from core.notation.privacy import read_privacy_question, read_privacy_wish


async def as_privacy(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A question that is open stays so: this is often asked because of it."""
    wish = read_privacy_wish(text)
    if wish is not None:
        return await (export_mine(visit, ExportMine()) if wish == "export" else forget_me(visit, ForgetMe()))
    topic = read_privacy_question(text)
    if topic is None:
        return None
    return visit.told(Privacy(topic=topic, shares=await sharing_of(visit)))
