"""What they weigh, told when nobody asked: kept for their eyes only, and no score."""

from decimal import Decimal

from core.athletes.values import Profile
from core.desk.outcome import Outcome
from core.desk.scores.which import is_of_a_recent_one
from core.desk.talk.asked import keeps
from core.desk.versions.answers import ask_again, units_typed
from core.desk.versions.says import BodyMassNoted
from core.desk.visit import Visit
from core.notation.weighing import may_be_weighing, read_bare_mass, read_weighing


async def as_weighing(visit: Visit, text: str, session: int | None) -> Outcome | None:
    """None where the words say no body mass, and where they answer what is asked."""
    if not may_be_weighing(text):
        return None
    profile = await visit.profile()
    told, bare = read_weighing(text, profile.units), read_bare_mass(text, profile.units)
    if told is None and (bare is None or session is not None):
        return None
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None:
        return await keep_mass(visit, profile, told or await own_mass(visit, text, bare), text)
    if told is None or await keeps(visit, "weight"):
        return None
    kept = await keep_mass(visit, profile, told, text)
    return None if kept is None else kept + await ask_again(visit, question.refs, "")


async def own_mass(visit: Visit, text: str, bare: Decimal | None) -> Decimal | None:
    """A mass alone may be what was lifted, where such a score is wanted."""
    return None if await is_of_a_recent_one(visit, text) else bare


async def keep_mass(visit: Visit, profile: Profile, mass_kg: Decimal | None, text: str) -> Outcome | None:
    if mass_kg is None:
        return None
    await visit.must_consent()
    facts = {"body_mass_kg": mass_kg, "body_mass_skipped": False}
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update=facts), visit.now)
    return visit.told(BodyMassNoted(mass_kg=mass_kg, units=units_typed(text) or profile.units))
