"""What athletes show of their ability in words: kept with the tests, said back, and taken back at a tap."""

from collections.abc import Iterator

from core.ability.meant import BARBELL, HAND_HELD_TO
from core.athletes.values import Evidence
from core.desk.access import admitted
from core.desk.commands import ForgetShown
from core.desk.days import today_in
from core.desk.errors import StalePress
from core.desk.joining.entry import may_train
from core.desk.outcome import Outcome
from core.desk.versions.answers import units_typed
from core.desk.versions.says import AbilityNoted, AbilityTakenBack
from core.desk.visit import Visit
from core.measures import AmountUnit, MassUnit
from core.movements.lookup import catalogue
from core.notation.ability_answers import Answer
from core.notation.scores.loads_beside import ToldLoad, read_loads
from core.scaling.values import Spot, Version, VersionLine
from core.scores.values import Score
from core.sessions.values import Block, Format, Line
from core.store.records import ScoreRecord, SessionRecord, VersionRecord

# More than this may have been done in parts (estimate).
SURELY_IN_A_ROW = 8
# In these the load is what is beside the score; in sets it is the score, and the heaviest one is learned from as such.
WITH_LOADS = {Format.AMRAP, Format.FOR_TIME, Format.INTERVALS}


async def keep_other_ability(visit: Visit, told: Answer) -> Outcome:
    """What they can do of a movement that wasn't asked for."""
    assert told.movement is not None, "it was named"
    evidence = Evidence(movement=told.movement, variant=told.variant, on=visit.now.date(), reps=told.reps)
    return await keep_shown(visit, evidence, (await visit.profile()).units)


async def keep_shown(visit: Visit, evidence: Evidence, units: MassUnit) -> Outcome:
    """Told once more on a day, it takes the place of what was misread of it."""
    await visit.must_consent()
    for told, before in await visit.uow.profiles.told(visit.person.id):
        if is_put_right_by(before, evidence):
            await visit.uow.profiles.take_back(visit.person.id, told)
    kept = await visit.uow.profiles.add_evidence(visit.person.id, evidence, visit.now)
    waits = not may_train(await visit.profile())
    return visit.told(AbilityNoted(evidence_id=kept, evidence=evidence, units=units, waits=waits))


def is_put_right_by(before: Evidence, now: Evidence) -> bool:
    """`Back squat 150 kilo`, after 150 of them were read: the same on the same day, with that load or without any."""
    same = (before.kind, before.movement, before.on) == (now.kind, now.movement, now.on)
    return same and (before.load_kg == now.load_kg or None in {before.load_kg, now.load_kg})


@admitted
async def forget_shown(visit: Visit, command: ForgetShown) -> Outcome:
    if not await visit.uow.profiles.take_back(visit.person.id, command.evidence):
        raise StalePress
    return visit.told(AbilityTakenBack()) + Outcome(settles=True)


async def keep_loads(
    visit: Visit, record: SessionRecord, version: VersionRecord | None, index: int, text: str, score: Score
) -> Outcome:
    """The loads told with a score of the visitor's own; none where something hurt, or of who had no version."""
    block = record.session.blocks[index]
    units = (await visit.profile()).units
    loads = () if score.pain or version is None else told_loads(score, text, block, units)
    if not loads or not await may_keep(visit):
        return Outcome()
    on = today_in(await visit.group(record.group_id), visit.now)
    noted = Outcome()
    for told in loads:
        if is_given(told, version.version if version else None, block, index):
            continue
        shown = shown_by(told, block, version.version if version else None, index)
        if shown is not None:
            noted += await keep_shown(visit, shown.model_copy(update={"on": on}), units_typed(text) or units)
    return noted


async def unlearn(visit: Visit, score: ScoreRecord) -> None:
    """What a score that doesn't stand had shown of loads."""
    await visit.uow.profiles.take_back_told_with(score.person_id, "score", score.recorded_at)


def told_loads(score: Score, text: str, block: Block, units: MassUnit) -> tuple[ToldLoad, ...]:
    """What was lifted on which line, by the words or by the score."""
    if block.format in WITH_LOADS:
        return read_loads(text, block, units, catalogue())
    if block.format is Format.SETS and len(block.lines) == 1 and score.load_kg is not None:
        return (ToldLoad(0, score.load_kg),)
    return ()


def is_given(told: ToldLoad, version: Version | None, block: Block, index: int) -> bool:
    """Whether sets were done with what stands in the version, or less: that shows nothing new."""
    given = next(done_of(version, index, told.line), None)
    if block.format is not Format.SETS or given is None or given.load_kg is None:
        return False
    return told.load_kg <= given.load_kg


async def may_keep(visit: Visit) -> bool:
    """After consent only, and said back in private only: a score may have come from the group's chat."""
    private = await visit.uow.chats.private_of(visit.person.id)
    return (
        private is not None and private.id == visit.chat and await visit.uow.consents.given(visit.person.id)
    )


def shown_by(told: ToldLoad, block: Block, version: Version | None, index: int) -> Evidence | None:
    """So many repetitions of a set went at this load; None where the line counts none.

    Whoever tells a load for a line whose version has none, or another movement, did it as written.
    """
    written = block.lines[told.line]
    seen = next(done_of(version, index, told.line), None)
    done = seen if seen and seen.movement == written.movement and seen.load_kg is not None else None
    amount = reps_of_a_set(done or written, block)
    if not amount:
        return None
    return Evidence(
        kind="score",
        movement=written.movement,
        variant=variant_of(done, written, told),
        reps=min(float(amount), SURELY_IN_A_ROW),
        load_kg=told.load_kg,
    )


def reps_of_a_set(line: Line | VersionLine, block: Block) -> float | None:
    """The most that were done at once; None where no repetitions are counted."""
    if line.unit is not AmountUnit.REPS:
        return None
    scheme = line.scheme if isinstance(line, VersionLine) else block.scheme
    return max(scheme, default=0) or line.amount


def variant_of(done: VersionLine | None, written: Line, told: ToldLoad) -> str | None:
    """As in the version, if the load can have been lifted so; else the load tells it alone."""
    if done is None:
        return written.variant
    return done.variant if done.implement == BARBELL or told.load_kg <= HAND_HELD_TO else None


def done_of(version: Version | None, index: int, line: int) -> Iterator[VersionLine]:
    spots = version.spots if version else ()
    return (one for spot, one in spots if spot == Spot(index + 1, "lines", line + 1))
