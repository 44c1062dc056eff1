"""Take an athlete's answers about equipment, limits, body mass, load pair and ability."""

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

from core.athletes.complaints import with_limits
from core.athletes.equipment import at
from core.athletes.household import ESTIMATED, with_household
from core.athletes.values import Equipment, Evidence, Profile, Screening
from core.desk.access import admitted
from core.desk.commands import (
    ChangeAnswer,
    ChoosePair,
    GoGentle,
    LeaveOut,
    MyVersion,
    NoLimits,
    OwnNothing,
    SkipBodyMass,
)
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import Outcome
from core.desk.talk.passing_on import offer
from core.desk.today.pain import joints, spared, stage_told
from core.desk.today.says import FineNow
from core.desk.versions.in_a_row import keep_ability, tell_ability_in_words
from core.desk.versions.kept import answer_kept, must_still_ask
from core.desk.versions.says import AskWeight, ThingLeftOut, Understood
from core.desk.versions.version import ask, my_version
from core.desk.visit import Visit
from core.measures import MassUnit
from core.notation.body.complaints import is_fine_now
from core.notation.body.limits import read_limits
from core.notation.body.medicines import limits_of, medicines_in
from core.notation.body.sides import read_sides
from core.notation.numbers import read_body_mass
from core.notation.unknowing import does_not_know, is_new_to_it
from core.notation.values import ReadLimits
from core.scaling.values import Ask, Question
from core.understanding import acts as a
from core.understanding.lexicon import lexicon
from core.understanding.text import fold, stem
from core.understanding.things import read_things, read_weight
from core.understanding.understand import understand
from core.understanding.values import Context, Message


@admitted
async def own_nothing(visit: Visit, command: OwnNothing) -> Outcome:
    await must_still_ask(visit, Ask.EQUIPMENT, answered=at(await visit.profile(), "home") is not None)
    understood = Understood(equipment=())
    return await keep(visit, command.session, understood, equipment=()) + Outcome(settles=True)


@admitted
async def no_limits(visit: Visit, command: NoLimits) -> Outcome:
    profile = await visit.profile()
    asked = profile.limits is not None and not profile.spares_unasked
    await must_still_ask(visit, Ask.LIMITS, answered=asked)
    return await nothing_more(visit, command.session) + Outcome(settles=True)


async def nothing_more(visit: Visit, session_id: int | None) -> Outcome:
    """Nothing to spare, but for what was told before it was asked for."""
    limits = told_unasked(await visit.profile())
    return await keep(visit, session_id, Understood(limits=limits), limits=limits, spares_unasked=False)


def told_unasked(profile: Profile) -> tuple[str, ...]:
    """What stays, whatever is answered now."""
    return (profile.limits or ()) if profile.spares_unasked else ()


@admitted
async def go_gentle(visit: Visit, command: GoGentle) -> Outcome:
    """Nobody here knows what they told of: light duty until licensed care has said more (an estimate)."""
    profile = await visit.profile()
    stricter = Screening.STOP if profile.screening is Screening.STOP else Screening.MODERATE
    facts = {"limits": profile.limits or (), "spares_unasked": False, "screening": stricter}
    return await keep(visit, command.session, Understood(limits=()), **facts) + Outcome(settles=True)


@admitted
async def skip_body_mass(visit: Visit, command: SkipBodyMass) -> Outcome:
    await must_still_ask(visit, Ask.BODY_MASS, answered=(await visit.profile()).body_mass_kg is not None)
    kept = await keep(visit, command.session, None, body_mass_skipped=True)
    return kept + Outcome(settles=True)


@admitted
async def choose_pair(visit: Visit, command: ChoosePair) -> Outcome:
    await must_still_ask(visit, Ask.PAIR, answered=(await visit.profile()).pair is not None)
    kept = await keep(visit, command.session, None, pair=command.pair)
    return kept + Outcome(settles=True)


@admitted
async def change_answer(visit: Visit, command: ChangeAnswer) -> Outcome:
    """Ask again what was answered before."""
    if command.ask not in {Ask.EQUIPMENT, Ask.LIMITS, Ask.BODY_MASS}:
        raise UnknownThing
    profile = await visit.profile()
    return await ask(visit, Question(ask=Ask(command.ask)), profile, None)


async def keep(
    visit: Visit,
    session_id: int | None,
    understood: Understood | None,
    **facts: object,
) -> Outcome:
    """Store facts in the profile, then go on with the session they were asked for."""
    await visit.must_consent()
    profile = await visit.profile()
    await visit.uow.profiles.save(visit.person.id, Profile.model_validate(dict(profile) | facts), visit.now)
    await visit.uow.questions.close(visit.chat)
    if session_id is None:
        return await answer_kept(visit, understood or Understood())
    return await my_version(visit, MyVersion(session=session_id), understood)


@dataclass(frozen=True, slots=True)
class Taken:
    """Facts for the profile out of free text, and what to show of how it was understood."""

    facts: Mapping[str, object]
    understood: Understood | None = None


async def tell_answer(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome | None:
    """Take free text as the answer to the open question; None where it can't be read as one."""
    question = Question.model_validate(refs["question"])
    if question.ask is Ask.ABILITY:
        return await tell_ability_in_words(visit, question, refs["session"], text)
    if question.ask is Ask.LIMITS:
        return await tell_limits(visit, refs["session"], text)
    units = (await visit.profile()).units
    if question.ask is Ask.STAGE:
        return await tell_stage_in_words(visit, question, refs["session"], text)
    if question.ask is Ask.EQUIPMENT and (named := read_things(text, units)).without_weight:
        known = with_household(named.equipment or (), question.ticked)
        return await ask_weight(visit, refs["session"], named.without_weight, known, text)
    taken = READERS[question.ask](text, units)
    if taken is None:
        return None
    if question.ticked:
        taken = _beside_ticked(taken, question.ticked)
    return await keep(visit, refs["session"], taken.understood, **taken.facts)


def _beside_ticked(taken: "Taken", ticked: Sequence[str]) -> "Taken":
    """What was ticked before something was typed stays."""
    assert taken.understood is not None, "equipment is said back"
    things = with_household(taken.understood.equipment or (), ticked)
    estimated = (
        *taken.understood.estimated,
        *(one for one in ESTIMATED if one in {t.implement for t in things}),
    )
    understood = taken.understood.model_copy(
        update={"equipment": things, "estimated": tuple(dict.fromkeys(estimated))}
    )
    return Taken({**taken.facts, "equipment": things}, understood)


async def tell_stage_in_words(
    visit: Visit, question: Question, session_id: int | None, text: str
) -> Outcome | None:
    """`week 24, cleared`, `20 weeks`; None where it tells neither. Of a seat, only taps tell."""
    fact = stage_told(question.about, text, visit.now.date(), bare=True)
    if fact is None:
        return None
    return await keep(visit, session_id, None, **fact)


async def tell_limits(visit: Visit, session_id: int | None, text: str) -> Outcome | None:
    """All there is to spare, in place of what was told before; a joint keeps its side, and is asked about again."""
    read = limits_told(text)
    if not read.limits and is_nothing_to_spare(text):
        return await nothing_more(visit, session_id)
    # `All good apart from ...` is no plain nothing, whatever could be read of it.
    if read.limits is None or (not read.limits and _EXCEPT.search(text)):
        return None
    if is_fine_now(text) and set(read.limits) <= set(joints()):
        fine = visit.told(FineNow(limits=read.limits))
        limits = (await visit.profile()).limits or ()
        return fine + await keep(visit, session_id, None, limits=limits, spares_unasked=False)
    before = await visit.profile()
    profile = with_limits(before, tuple(dict.fromkeys((*told_unasked(before), *read.limits))))
    memberships = await visit.memberships()
    if not memberships:
        return await keep(visit, session_id, Understood(limits=read.limits), limits=read.limits)
    group = await visit.group(memberships[0].group_id)
    facts, wishes = spared(profile, visit.person.id, read.limits, text, group, visit.now)
    offered = await offer(visit, read.not_understood)
    understood = Understood(
        limits=read.limits,
        sides=tuple(read_sides(text).items()),
        unread=read.not_understood if offered is None else (),
        units=profile.units,
    )
    kept = await keep(visit, session_id, understood, **facts, spares_unasked=False)
    return (offered or Outcome()) + kept + Outcome(due=wishes)


def limits_told(text: str) -> ReadLimits:
    """By their names; what has none there is understood as a sentence: `new hip 2 yrs ago left side`."""
    read = read_limits(text)
    found = {part: limits_understood(part) for part in read.not_understood or (text,)}
    more = tuple(one for limits in found.values() for one in limits)
    if not more:
        return read
    return ReadLimits(
        limits=tuple(dict.fromkeys((*(read.limits or ()), *more))),
        not_understood=tuple(part for part in read.not_understood if not found[part]),
    )


def limits_understood(words: str) -> tuple[str, ...]:
    medicines = medicines_in(words)
    if medicines is not None and limits_of(medicines.taken):
        return limits_of(medicines.taken)
    told = understand(Message(text=words), Context(question="limits"))
    spares = [act for act in told.acts if isinstance(act, a.Spares | a.Condition | a.Hurt)]
    return tuple(one for act in spares for one in act.limits) if not told.unread else ()


_NOTHING_TO_SPARE: Final = frozenset({"nothing_hurt", "has_nothing", "well"})
# What goes on to an exception, whatever it is, is no plain nothing.
_EXCEPT: Final = re.compile(
    r"\b(?:but|except|apart|besides?|other than|aside|though|although|unless)\b", re.IGNORECASE
)


def is_nothing_to_spare(text: str) -> bool:
    """`Nah, it's fine`, whatever the words: nothing of it may be anything else, or be left unread."""
    told = understand(Message(text=text), Context(question="limits"))
    names = {act.act for act in told.acts}
    return bool(names) and names <= _NOTHING_TO_SPARE and not told.unread and not _EXCEPT.search(text)


# Nobody is asked twice what they can't tell: then it is begun with what is light.
CAN_BE_GUESSED: Final = frozenset({Ask.PAIR, Ask.ABILITY})


async def go_gently(visit: Visit, question: Question, session_id: int) -> Outcome:
    if question.ask is Ask.PAIR:
        return await keep(visit, session_id, Understood(gently=True), pair=2)
    assert question.movement is not None, "an ability is of a movement"
    unknown = Evidence(movement=question.movement, variant=question.variant, on=visit.now.date())
    return await keep_ability(visit, unknown, session_id, gently=True)


# What was typed is quoted back no longer than this.
QUOTED = 60


async def ask_again(visit: Visit, refs: Mapping[str, Any], unread: str) -> Outcome:
    """The same question, saying kindly that the last answer (if any) could not be read.

    What may be something to spare is offered to the coach, unless it asks something itself.
    """
    question = Question.model_validate(refs["question"])
    if unread and question.ask in CAN_BE_GUESSED and (refs.get("again") or is_new_to_it(unread)):
        return await go_gently(visit, question, refs["session"])
    profile = await visit.profile()
    words = (unread[:QUOTED],) if unread else ()
    spares = question.ask is Ask.LIMITS and names_the_unknown(unread)
    offered = await offer(visit, (unread,), agreed=False) if spares else None
    understood = Understood(unread=words if offered is None else (), units=profile.units)
    asked = await ask(visit, question, profile, refs["session"], understood, again=bool(unread))
    return (offered or Outcome()) + asked


def names_the_unknown(words: str) -> bool:
    """Whether somebody may have told what nobody here knows: a word that no sentence of ours has, and no question."""
    known = lexicon().words
    typed = re.findall(r"[^\W\d_]{4,}", fold(words))
    return not words.rstrip().endswith("?") and any(w not in known and stem(w) not in known for w in typed)


async def ask_weight(
    visit: Visit,
    session_id: int | None,
    things: Sequence[Equipment],
    have: Sequence[Equipment],
    said: str = "",
    *,
    again: bool = False,
) -> Outcome:
    """How heavy is the first of `things`? What is known already waits in the open question."""
    units = units_typed(said) or (await visit.profile()).units
    refs = {
        "session": session_id,
        "things": [one.model_dump(mode="json") for one in things],
        "have": [one.model_dump(mode="json") for one in have],
        "units": units,
    }
    await visit.uow.questions.ask(visit.chat, "weight", refs, visit.now)
    return visit.told(AskWeight(session=session_id, thing=things[0], units=units, again=again))


async def tell_weight(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """The weight of the thing asked about; then of the next, until all is known."""
    things = [Equipment.model_validate(one) for one in refs["things"]]
    have = [Equipment.model_validate(one) for one in refs["have"]]
    read = read_weight(text, things[0], MassUnit(refs["units"]))
    if read is None and does_not_know(text):
        left_out = visit.told(ThingLeftOut(thing=things[0]))
        return left_out + await next_weight(visit, refs, things[1:], have, "")
    if read is None:
        return await ask_weight(visit, refs["session"], things, have, again=True)
    return await next_weight(visit, refs, things[1:], [*have, *read], text)


async def next_weight(
    visit: Visit, refs: Mapping[str, Any], things: Sequence[Equipment], have: Sequence[Equipment], said: str
) -> Outcome:
    if things:
        return await ask_weight(visit, refs["session"], things, have, said)
    units = units_typed(said) or MassUnit(refs["units"])
    understood = Understood(equipment=tuple(have), units=units)
    return await keep(visit, refs["session"], understood, equipment=tuple(have), units=units)


@admitted
async def leave_out(visit: Visit, _: LeaveOut) -> Outcome:
    """What nobody can weigh is not prescribed."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != "weight":
        raise StalePress
    things = [Equipment.model_validate(one) for one in question.refs["things"]]
    have = [Equipment.model_validate(one) for one in question.refs["have"]]
    return await next_weight(visit, question.refs, things[1:], have, "") + Outcome(settles=True)


def take_equipment(text: str, units: MassUnit) -> Taken | None:
    """Whoever answers in pounds is answered in pounds from then on."""
    read = read_things(text, units)
    # `Got 25 min, on a treadmill` tells of no more than that.
    if read.equipment is None or (not read.equipment and read.idle and re.search("[0-9]", text)):
        return None
    typed = units_typed(text) or units
    understood = Understood(
        equipment=read.equipment,
        unread=(*read.not_understood, *numbers_left(text, read.not_understood)),
        estimated=read.estimated,
        units=typed,
        idle=read.idle,
    )
    return Taken({"equipment": read.equipment, "units": typed}, understood)


def numbers_left(text: str, quoted: Sequence[str]) -> Iterator[str]:
    """What holds a number and tells of nothing that is there: `no kit i just run. 10k in 48min`."""
    for words in understand(Message(text=text), Context(question="equipment")).unread:
        known = any(one in words or words in one for one in quoted)
        if re.search("[0-9]", words) and not known and not read_things(words).equipment:
            yield words


def units_typed(text: str) -> MassUnit | None:
    """The unit that the words name, if they name one only."""
    named = set(re.findall(r"(?<![a-z])(kg|kilo|lb|pound|#)", text.lower()))
    if not named:
        return None
    kilos = named <= {"kg", "kilo"}
    pounds = named.isdisjoint({"kg", "kilo"})
    return MassUnit.KG if kilos else MassUnit.LB if pounds else None


def take_body_mass(text: str, units: MassUnit) -> Taken | None:
    if text.strip(" .!").lower().startswith(SKIP) or does_not_know(text):
        return Taken({"body_mass_skipped": True})
    mass = read_body_mass(text, units)
    return None if mass is None else Taken({"body_mass_kg": mass, "body_mass_skipped": False})


# A question about our words, or a no to one of them, chooses nothing.
_NO_CHOICE: Final = re.compile(r"\?|n['\u2019]t\b|\b(?:not|dont|no|what|which|why|how|means?|understand)\b")


_FIRST: Final = re.compile(r"\b(?:first|heav\w+|1|1st|left|strong\w*|higher)\b(?![.:+])")
_SECOND: Final = re.compile(r"\b(?:second|light\w*|2|2nd|right|lower)\b(?![.:+])")


def take_pair(text: str, units: MassUnit) -> Taken | None:  # noqa: ARG001 - the readers share one shape
    words = text.lower()
    if _NO_CHOICE.search(words):
        return None
    first, second = _FIRST.search(words), _SECOND.search(words)
    return None if bool(first) is bool(second) else Taken({"pair": 1 if first else 2})


SKIP = ("skip", "no", "pass", "rather not", "don't", "dont", "prefer not", "i'd rather", "none of")

READERS: Mapping[Ask, Callable[[str, MassUnit], Taken | None]] = {
    Ask.EQUIPMENT: take_equipment,
    Ask.BODY_MASS: take_body_mass,
    Ask.PAIR: take_pair,
}
