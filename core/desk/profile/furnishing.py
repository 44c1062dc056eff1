"""Equipment in words, any time: what came, what went, what is there at home, in the gym or on a trip."""

from collections.abc import Mapping
from typing import Any

from core.athletes.barbells import with_plates
from core.athletes.equipment import Things, at, furnished, with_more, without
from core.athletes.today import said
from core.athletes.values import Different, Equipment, Furnished, Profile, SetName
from core.desk.access import admitted
from core.desk.commands import MyVersion
from core.desk.days import today_in
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import Outcome
from core.desk.today.says import AskSet, AskWhichThing, ChangeUndone, DayNoted, EquipmentChanged
from core.desk.versions.commands import AddThing, FurnishSet, UndoEquipment
from core.desk.versions.version import my_version, session_meant
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.sessions.values import Session
from core.store.documents import FURNISHED
from core.understanding.equipment_changes import UNNAMED, EquipmentChange, read_equipment_change
from core.understanding.things import read_things

# A weight that isn't named is one of these, if it isn't like the others that are there (common practice).
USUAL_WEIGHTS = ("kettlebell", "dumbbell")
# The kind of open question that asks what is there in a place.
SET = "set"


async def as_equipment_change(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`bought a 24`, `sold the chair`, `trip: a band`; None where it is anything else."""
    if not await visit.uow.consents.given(visit.person.id):
        return None
    profile = await visit.profile()
    change = read_equipment_change(text, profile.units)
    if change is None or (change.forgotten and at(profile, change.place) is None):
        return None
    if change.bare is not None:
        record = await session_meant(visit, None)
        return await take_bare(visit, profile, change.place, change.bare, record.session if record else None)
    after = changed_things(at(profile, change.place) or (), change)
    return None if after is None else await keep(visit, profile, change.place, after, change)


def changed_things(before: Things, change: EquipmentChange) -> Things | None:
    """What is there afterwards; None where what went was never there."""
    if change.whole is not None:
        return change.whole
    after = with_more(before, change.came) if change.came else before
    for thing in change.went:
        gone = named(before, thing)
        after = without(after, gone)
    return None if change.went and after == with_more(before, ()) else after


def named(owned: Things, thing: Equipment) -> Equipment:
    """`my 24` is the thing of that weight that is there."""
    if thing.implement != UNNAMED:
        return thing
    like = (one.implement for one in owned if set(thing.loads_kg) <= set(one.loads_kg))
    return thing.model_copy(update={"implement": next(like, UNNAMED)})


async def take_bare(
    visit: Visit, profile: Profile, place: SetName, thing: Equipment, session: Session | None
) -> Outcome:
    """A weight without a name is like those that are there, or else like those of the session; or it is asked."""
    owned = at(profile, place) or ()
    kinds = tuple(dict.fromkeys(one.implement for one in owned if one.loads_kg)) or written_weights(session)
    if len(kinds) != 1:
        implements = kinds or USUAL_WEIGHTS
        asked = AskWhichThing(place=place, thing=thing, implements=implements, units=profile.units)
        return visit.told(asked)
    came = thing.model_copy(update={"implement": kinds[0]})
    change = EquipmentChange(place=place, came=(came,))
    return await keep(visit, profile, place, with_more(owned, (came,)), change)


def written_weights(session: Session | None) -> tuple[str, ...]:
    """What the lines that have a load are usually done with, of what may have a weight of its own."""
    lines = [line for block in session.blocks for line in block.lines] if session else []
    usual = (catalogue().movement(line.movement).variants[0] for line in lines if line.loads_kg)
    held = (hold.implement for variant in usual for hold in variant.holds)
    return tuple(dict.fromkeys(one for one in held if one in USUAL_WEIGHTS))


@admitted
async def add_thing(visit: Visit, command: AddThing) -> Outcome:
    await visit.must_consent()
    if command.implement not in {thing.id for thing in catalogue().implements}:
        raise UnknownThing
    profile = await visit.profile()
    came = Equipment(implement=command.implement, loads_kg=(command.kg,), each=command.each)
    after = with_more(at(profile, command.place) or (), (came,))
    change = EquipmentChange(place=command.place, came=(came,))
    return await keep(visit, profile, command.place, after, change) + Outcome(settles=True)


async def keep(
    visit: Visit, profile: Profile, place: SetName, after: Things, change: EquipmentChange
) -> Outcome:
    """Store it, read it back, and offer to undo it; plates told by their weight together go on the bar."""
    before, after = at(profile, place), tuple(with_plates(after))
    after_told = furnished(profile, place, after)
    await visit.uow.profiles.save(visit.person.id, after_told, visit.now)
    kept = Furnished(person_id=visit.person.id, place=place, before=before, after=after)
    undo = await visit.uow.documents.add(FURNISHED, kept, visit.now)
    went = tuple(named(before or (), thing) for thing in change.went)
    told = EquipmentChanged(
        undo=undo, place=place, came=change.came, went=went, now=after, units=profile.units, idle=change.idle
    )
    return visit.told(told)


@admitted
async def undo_equipment(visit: Visit, command: UndoEquipment) -> Outcome:
    """Back to before, unless something else has changed there since."""
    await visit.must_consent()
    kept = await visit.uow.documents.get(FURNISHED, command.change)
    if kept is None:
        raise UnknownThing
    profile = await visit.profile()
    if at(profile, kept.place) != kept.after:
        raise StalePress
    before = furnished(profile, kept.place, kept.before)
    await visit.uow.profiles.save(visit.person.id, before, visit.now)
    told = ChangeUndone(place=kept.place, now=kept.before, units=profile.units)
    return visit.told(told) + Outcome(settles=True)


@admitted
async def furnish_set(visit: Visit, command: FurnishSet) -> Outcome:
    await visit.must_consent()
    return await ask_set(visit, command.place, None)


async def ask_set(
    visit: Visit,
    place: SetName,
    session_id: int | None,
    unread: tuple[str, ...] = (),
    days: Different | None = None,
) -> Outcome:
    """What is there? The next free text may be the answer; then `session_id` takes place there today.

    `days`: those that were named; what they come to takes place there, too.
    """
    kept = days.model_dump(mode="json") if days else None
    refs = {"place": place, "session": session_id, "days": kept}
    await visit.uow.questions.ask(visit.chat, SET, refs, visit.now)
    units = (await visit.profile()).units
    return visit.told(AskSet(place=place, session=session_id, units=units, unread=unread))


async def tell_set(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """What is there in a place, in the athlete's own words; `everything` will do for a gym."""
    place: SetName = refs["place"]
    profile = await visit.profile()
    whole = whole_of(place, text, profile)
    days = Different.model_validate(refs["days"]) if refs.get("days") else None
    if whole is None:
        return await ask_set(visit, place, refs["session"], (text[:60],) if text else (), days)
    await visit.uow.questions.close(visit.chat)
    change = EquipmentChange(place=place, whole=whole)
    told = await keep(visit, profile, place, whole, change)
    if refs["session"] is None:
        return told
    return told + await go_there(visit, refs["session"], place, days)


def whole_of(place: SetName, text: str, profile: Profile) -> Things | None:
    """`everything`, `a band`, or the whole sentence `on trips I have a band`."""
    for words in (f"{place}: {text}", text):
        change = read_equipment_change(words, profile.units)
        if change is not None and change.whole is not None:
            return change.whole
    return read_things(text, profile.units).equipment


async def go_there(visit: Visit, session_id: int, place: SetName, days: Different | None) -> Outcome:
    """Today's session takes place there, or what comes on the days that were named."""
    record = await session_meant(visit, session_id)
    assert record is not None, "a session that is named is found or refused"
    today = today_in(await visit.group(record.group_id), visit.now)
    news = days or Different(until=today, place=place)
    await visit.uow.profiles.save(visit.person.id, said(await visit.profile(), news, today), visit.now)
    noted = visit.told(DayNoted(session_id=session_id, different=news, today=today)) if days else Outcome()
    if news.since is not None:
        return noted
    return noted + await my_version(visit, MyVersion(session=session_id))
