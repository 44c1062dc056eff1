"""What is said when today is different, when equipment comes or goes, and about how a session felt."""

from datetime import date

from core.athletes.values import Different, Equipment, SetName
from core.desk.outcome import Said
from core.measures import MassUnit
from core.notation.body.during import Happened
from core.notation.body.medicines import Medicine
from core.notation.body.unwell import Cause
from core.scores.values import Hurt
from core.sessions.values import Session


class AskDifferent(Said):
    """Ask what is different today."""

    version_id: int
    session_id: int
    different: bool


class AskSick(Said):
    version_id: int


class NotAtTheirBest(Said):
    """From what they feel unwell; `minutes`: what a shorter version would take, where they have one."""

    cause: Cause
    version: int | None
    minutes: int | None


class MedicinesTold(Said):
    """What medicines mean for training. `takes`: they say so, or have said so before; else they only ask."""

    kinds: tuple[Medicine, ...]
    takes: bool


class MedicinesGivenUp(Said):
    """`gone`: what was kept of them, and isn't any more; `stays`: what they are taken for is kept."""

    gone: tuple[str, ...]
    stays: bool
    by_doctor: bool


class HappenedInTraining(Said):
    """Training made them feel sick, or a muscle cramped."""

    what: Happened


class AskSore(Said):
    version_id: int


class AskMinutes(Said):
    version_id: int


class AskPlace(Said):
    """Ask where. `known`: the places whose equipment was told."""

    version_id: int
    known: tuple[SetName, ...]
    here: SetName


class AskSet(Said):
    """Ask what is there in that place. `unread`: what was typed and not understood."""

    place: SetName
    session: int | None
    units: MassUnit
    unread: tuple[str, ...] = ()


class DayNoted(Said):
    """What is different, until when, and until when else it may last. `session_id`: None while there is none."""

    session_id: int | None
    different: Different
    today: date
    choices: tuple[date, ...] = ()


class AskBreak(Said):
    """Nothing was told for so many weeks: ask whether they trained. `weeks` None: again, as the answer wasn't clear."""

    session_id: int
    weeks: int | None


class MoreLater(Said):
    """They started gently, and have told of so many sessions; more is offered after `needed`, in two weeks or more."""

    sessions: int
    needed: int


class CoachsEasyWeek(Said):
    """It isn't for the athlete to end: their coach called it."""


class BackSoon(Said):
    """Welcome back: after so short a break nothing changes."""


class AskMore(Said):
    """They started gently, and have done so many sessions since: ask whether it may be more."""

    sessions: int


class MoreDecided(Said):
    """`until`: the last of the weeks with a little less; None where they stay gentle."""

    until: date | None


class AsUsualAgain(Said):
    """Everything is as usual again; `gently`: after a fever it starts with ten easy minutes."""

    gently: bool


class ClearedKept(Said):
    """Whoever looks after a pregnancy or a birth agreed to training."""


class EquipmentChanged(Said):
    """What was understood of a thing that came or went, and what is there now. `undo`: the change's id.

    `idle`: what was named besides and no version depends on.
    """

    undo: int
    place: SetName
    came: tuple[Equipment, ...]
    went: tuple[Equipment, ...]
    now: tuple[Equipment, ...]
    units: MassUnit
    idle: tuple[str, ...] = ()


class ChangeUndone(Said):
    place: SetName
    now: tuple[Equipment, ...] | None
    units: MassUnit


class MattersNot(Said):
    """What was named is always there, or of no use to a version: its `names`."""

    names: tuple[str, ...] = ()


class NothingWent(Said):
    """What is said to be gone wasn't among what is there: `now`, None where nothing was told."""

    went: tuple[Equipment, ...]
    now: tuple[Equipment, ...] | None
    units: MassUnit


class AskWhichThing(Said):
    """A weight came, and it isn't said of what."""

    place: SetName
    thing: Equipment
    implements: tuple[str, ...]
    units: MassUnit


class AskEffort(Said):
    session: int


class AskPart(Said):
    """One part is scored; what of the other? `block`: its number in the session, from 1; `part`: as people call it."""

    session: int
    written: Session
    block: int
    part: int


class EffortNoted(Said):
    """Told again, once all else about the session was told."""

    effort: int


class AskHurt(Said):
    session: int


class AskWhere(Said):
    """Where it hurts, so that it can be spared. `session`: the one that was done, if one was."""

    session: int | None


class SoreIsUsual(Said):
    """Sore muscles, with no session before them that could go easy on these."""


class HurtNoted(Said):
    hurt: Hurt


class FineNow(Said):
    """What they told of plays up at times and is fine now, so that nothing is spared."""

    limits: tuple[str, ...]


class AtHomeAlready(Said):
    """They are home again, and were never away as far as anybody knew."""


class NothingSpared(Said):
    """They said that nothing needs sparing, or that `limits` are fine, of which nothing was kept."""

    limits: tuple[str, ...] = ()
