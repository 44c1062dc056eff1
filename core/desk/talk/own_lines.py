"""An athlete says which line they can't do, or want otherwise: done at once, for the cause they name."""

import re
from collections.abc import Mapping, Sequence
from typing import Any, Final

from core.athletes.equipment import at
from core.athletes.values import Equipment
from core.desk.coached import coached_groups
from core.desk.joining.entry import held_answer
from core.desk.outcome import Outcome
from core.desk.profile.furnishing import keep as keep_things
from core.desk.talk.acts_told import hurt, lines
from core.desk.talk.says import NoSwap, OnceYouHaveIt
from core.desk.talk.scene import Scene, scene_of
from core.desk.today.different import be_short
from core.desk.today.pain import version_again
from core.desk.today.unwell import shorter_by
from core.desk.versions.adjusting import change, change_lines, ease_line, harden_line, keep
from core.desk.versions.commands import BeShort, ChangeLines, EaseLine, HardenLine
from core.desk.versions.looking import Looked, current, look
from core.desk.versions.showing import profile_today, written_at
from core.desk.versions.version import worked_out
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.talk.chat import is_like_a_score
from core.scaling.orders import Pin
from core.scaling.values import Because, Version
from core.store.records import SessionRecord
from core.understanding import acts as a
from core.understanding.equipment_changes import EquipmentChange
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
    return await keep_machines(visit, text) + await done(visit, scene.version, places[0], wanted)


async def swap(visit: Visit, act: a.Swap, scene: Scene) -> Outcome | None:
    """What is named is swapped at once; a machine that is named is there from now on; else the line is tapped."""
    # What was told before it may have made another version.
    scene = await scene_of(visit, scene.text, scene.replied_to)
    if scene.version is None or scene.record is None:
        return await lines(visit, act, scene)
    noted = await keep_machines(visit, act.text)
    wanted = Wanted("other", act.movement, act.to)
    record, shown = await current(visit, scene.version)
    named = act.movement is not None and act.movement != act.to
    places = places_of(record, shown.version, wanted) if named else ()
    if len(places) != 1:
        return noted + (await lines(visit, act, scene) or Outcome())
    return noted + await done(visit, scene.version, places[0], wanted)


async def keep_machines(visit: Visit, text: str) -> Outcome:
    """`The bike`, in a question about it, is theirs: nobody asks to use what isn't there."""
    if not await visit.uow.consents.given(visit.person.id):
        return Outcome()
    profile = await visit.profile()
    there = at(profile, "home") or ()
    owned = {one.implement for one in there}
    named = [implement for implement, words in MACHINES.items() if words.search(text)]
    came = tuple(Equipment(implement=one) for one in named if one not in owned)
    if not came:
        return Outcome()
    return await keep_things(
        visit, profile, "home", (*there, *came), EquipmentChange(place="home", came=came)
    )


# What is asked about as theirs: not `an erg`, nor `can I bike instead`.
_THEIRS: Final = r"\b(?:the|my|our)\s+(?:\w+\s+)?"
MACHINES: Final = {
    "bike": re.compile(rf"{_THEIRS}(?:bike|bicycle)\b", re.IGNORECASE),
    "rower": re.compile(rf"{_THEIRS}(?:rower|rowing machine|erg)\b", re.IGNORECASE),
}


async def wanted_of(visit: Visit, text: str) -> Wanted | None:
    if "\n" in text.strip() or (_DIGIT.search(text) and is_like_a_score(text)):
        return None
    question = await visit.uow.questions.open_in(visit.chat)
    may_be_answer = question is not None and question.kind not in _LEAVES
    return None if may_be_answer or await coached_groups(visit) else wanted_in(text)


def places_of(record: SessionRecord, version: Version, wanted: Wanted) -> Sequence[int]:
    """The lines that are meant: of what is named, else of what is called like it, else like what shall come."""
    lines = list(enumerate(version.spots, 1))
    if wanted.movement is None:
        pattern = catalogue().movement(wanted.to).pattern if wanted.to else None
        return [place for place, (_, one) in lines if catalogue().movement(one.movement).pattern is pattern]
    shown = [place for place, (_, one) in lines if one.movement == wanted.movement]
    written = [place for place, (spot, _) in lines if written_at(record.session, spot) == wanted.movement]
    called = wanted.movement.split()[-1]
    return shown or written or [place for place, (_, one) in lines if one.movement.split()[-1] == called]


async def done(visit: Visit, version: int, place: int, wanted: Wanted) -> Outcome:
    if wanted.step == "easier":
        return await ease_line(visit, EaseLine(version=version, place=place, cause="too-hard"))
    if wanted.step == "harder":
        return await harden_line(visit, HardenLine(version=version, place=place, cause="too-easy"))
    looked = await look(visit, version, place)
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
