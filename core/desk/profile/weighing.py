"""What they weigh, told when nobody asked, for their eyes only and no score; and in which units they read loads."""

from decimal import Decimal

from core.athletes.values import Profile
from core.desk.joining.entry import may_train
from core.desk.outcome import Outcome
from core.desk.versions.answers import units_typed
from core.desk.versions.says import BodyMassNoted, UnitsKept
from core.desk.visit import Visit
from core.measures import MassUnit


async def keep_mass(visit: Visit, profile: Profile, mass_kg: Decimal | None, text: str) -> Outcome | None:
    if mass_kg is None:
        return None
    await visit.must_consent()
    facts = {"body_mass_kg": mass_kg, "body_mass_skipped": False}
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update=facts), visit.now)
    return visit.told(
        BodyMassNoted(mass_kg=mass_kg, units=units_typed(text) or profile.units, waits=not may_train(profile))
    )


async def keep_units(visit: Visit, units: MassUnit) -> Outcome:
    """What is theirs alone; the group's own stay as they are."""
    await visit.must_consent()
    profile = await visit.profile()
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update={"units": units}), visit.now)
    return visit.told(UnitsKept(units=units, waits=not may_train(profile)))
