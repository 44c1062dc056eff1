"""What they weigh, told when nobody asked: kept for their eyes only, and no score."""

from decimal import Decimal

from core.athletes.values import Profile
from core.desk.outcome import Outcome
from core.desk.versions.answers import units_typed
from core.desk.versions.says import BodyMassNoted
from core.desk.visit import Visit


async def keep_mass(visit: Visit, profile: Profile, mass_kg: Decimal | None, text: str) -> Outcome | None:
    if mass_kg is None:
        return None
    await visit.must_consent()
    facts = {"body_mass_kg": mass_kg, "body_mass_skipped": False}
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update=facts), visit.now)
    return visit.told(BodyMassNoted(mass_kg=mass_kg, units=units_typed(text) or profile.units))
