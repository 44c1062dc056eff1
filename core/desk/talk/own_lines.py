"""An athlete says which line they can't do, or want otherwise: done at once, for the cause they name."""

import re
from collections.abc import Mapping, Sequence
from typing import Any, Final

from core.athletes.today import said
from core.athletes.values import Different, Equipment
from core.desk.coached import coached_groups
from core.desk.joining.entry import held_answer
from core.desk.outcome import Outcome
from core.desk.talk.acts_told import hurt, lines
from core.desk.talk.says import NoSwap, OnceYouHaveIt
from core.desk.talk.scene import Scene, scene_of
from core.desk.today.different import be_short
from core.desk.today.pain import version_again
from core.desk.today.unwell import shorter_by
from core.desk.versions.adjusting import change, change_lines, ease_line, harden_line, keep
from core.desk.versions.commands import BeShort, ChangeLines, EaseLine, HardenLine
from core.desk.versions.looking import Looked, current, look
from core.desk.versions.showing import profile_today, today_of, written_at
from core.desk.versions.version import worked_out
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.talk.chat import is_like_a_score
from core.scaling.orders import Pin
from core.scaling.values import Because, Version
from core.store.records import SessionRecord
from core.understanding import acts as a
from core.understanding.ordering import Wanted, wanted_in

# A question that isn't one of these may be answered by words about a movement.
_LEAVES: Final = frozenset({"score", "break", "body_mass", "set"})
_DIGIT: Final = re.compile("[0-9]")
_PINS: Final[Mapping[str, Mapping[str, Any]]] = {"fewer": {"share": 0.75}, "half": {"share": 0.5}}


async def as_own_line(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """None where no line is named, where it is told what was done, and for a coach."""
    wanted = await wanted_of(visit, text)
    scene = await scene_of(visit, text, replied_to) if wanted else None
    if wanted is None or scene is None or scene.record is None:
        return None
    if scene.version is None:
        return await held_answer(visit) or visit.told(OnceYouHaveIt(where="lines"))
    return await as_wanted(visit, text, wanted, scene)


async def as_wanted(visit: Visit, text: str, wanted: Wanted, scene: Scene) -> Outcome | None:
    """What is wanted of their version; None where no line of it is meant."""
    assert scene.version is not None, "there is one"
    if wanted.step == "shorter":
        return await shorter(visit, scene, scene.version)
    if wanted.movement is None and wanted.to is None:
        return await change_lines(visit, ChangeLines(version=scene.version))
    if wanted.joints:
        told = await hurt(visit, a.Hurt(text=text, limits=wanted.joints), scene)
        return told and told + await version_again(visit)
    record, shown = await current(visit, scene.version)
    places = places_of(record, shown.version, wanted)
    if len(places) != 1:
        return None
    return await done(visit, scene.version, places[0], wanted)


async def swap(visit: Visit, act: a.Swap, scene: Scene) -> Outcome | None:
    """What is named is swapped at once; else the line is tapped."""
    # What was told before it may have made another version.
    scene = await scene_of(visit, scene.text, scene.replied_to)
    if scene.version is None or scene.record is None:
        return await lines(visit, act, scene)
    wanted = Wanted("other", act.movement, act.to)
    record, shown = await current(visit, scene.version)
    named = act.to is not None or act.movement is not None
    places = places_of(record, shown.version, wanted) if named and act.movement != act.to else ()
    if len(places) != 1:
        return await lines(visit, act, scene)
    return await done(visit, scene.version, places[0], wanted)


# Nobody asks to use what isn't there.
MACHINES: Final = frozenset({"bike", "rower", "ski machine"})


async def machine_is_there(visit: Visit, record: SessionRecord, to: str | None) -> None:
    """`Can I row instead?`: today a rower is; whether it is theirs they didn't say."""
    usual = catalogue().movement(to).variants[0].things if to else ()
    owned = {one.implement for one in (await profile_today(visit, record)).equipment or ()}
    extra = [Equipment(implement=one) for one in usual if one in MACHINES and one not in owned]
    if not extra or not await visit.uow.consents.given(visit.person.id):
        return
    today = await today_of(visit, record)
    profile = said(await visit.profile(), Different(until=today, extra=extra[0]), today)
    await visit.uow.profiles.save(visit.person.id, profile, visit.now)


async def wanted_of(visit: Visit, text: str) -> Wanted | None:
    if "\n" in text.strip() or (_DIGIT.search(text) and is_like_a_score(text)):
        return None
    question = await visit.uow.questions.open_in(visit.chat)
    may_be_answer = question is not None and question.kind not in _LEAVES
    return None if may_be_answer or await coached_groups(visit) else wanted_in(text)


def places_of(record: SessionRecord, version: Version, wanted: Wanted) -> Sequence[int]:
    """The lines that are meant: of what is named, else of what is called like it, else like what shall come."""
    lines = list(enumerate(version.spots, 1))
    pattern = catalogue().movement(wanted.to).pattern if wanted.to else None
    alike = [place for place, (_, one) in lines if catalogue().movement(one.movement).pattern is pattern]
    if wanted.movement is None:
        return alike
    shown = [place for place, (_, one) in lines if one.movement == wanted.movement]
    written = [place for place, (spot, _) in lines if written_at(record.session, spot) == wanted.movement]
    called = wanted.movement.split()[-1]
    like = [place for place, (_, one) in lines if one.movement.split()[-1] == called]
    # `No rower here, bike ok?` where nothing is rowed.
    return shown or written or like or alike


async def done(visit: Visit, version: int, place: int, wanted: Wanted) -> Outcome:
    if wanted.step == "easier":
        return await ease_line(visit, EaseLine(version=version, place=place, cause="too-hard"))
    if wanted.step == "harder":
        return await harden_line(visit, HardenLine(version=version, place=place, cause="too-easy"))
    looked = await look(visit, version, place)
    await machine_is_there(visit, looked.record, wanted.to)
    cause = "weather" if wanted.weather else "so" if wanted.step in _PINS else "swap"
    asked = _PINS.get(wanted.step) or (
        {"movement": wanted.to} if wanted.to else {"without": looked.line.movement}
    )
    pin = Pin(**looked.spot._asdict(), **asked, by="athlete", cause=cause)
    await keep(visit, looked, "other", cause, pin)
    if await is_followed(visit, looked):
        return await change(visit, looked, "other", cause, pin)
    await visit.uow.adjustments.undo(looked.record.id, visit.person.id, looked.spot, visit.now)
    return visit.told(NoSwap(version=version, to=wanted.to))


async def is_followed(visit: Visit, looked: Looked) -> bool:
    """Whether it is safe and there, so that the line has become it."""
    made = await worked_out(visit, looked.record, await profile_today(visit, looked.record))
    if not isinstance(made, Version):
        return False
    return dict(made.spots)[looked.spot].reason.because is Because.ASKED


async def shorter(visit: Visit, scene: Scene, version: int) -> Outcome:
    """About two thirds of what it takes them; how long that is they can put right."""
    assert scene.record is not None, "there is a version of it"
    return await be_short(visit, BeShort(version=version, minutes=await shorter_by(visit, scene.record)))
