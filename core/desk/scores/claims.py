"""Whose score for which session is told, and what is known of it already."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from core.desk.errors import UnknownThing
from core.desk.scores.scoreboard import parts_left, scored_blocks
from core.desk.visit import Visit
from core.forecast.doubt import is_beyond_anybody, is_incredible, is_rather_an_effort
from core.forecast.people import People
from core.movements.lookup import catalogue
from core.notation.scores import read_score
from core.notation.scores.asking import impossible
from core.scaling.easing import eased
from core.scores.values import Doubt, ReadScore
from core.sessions.values import Session
from core.store.records import Person, ScoreRecord, ScoreState, SessionRecord


@dataclass(frozen=True, slots=True)
class Claim:
    """Whose score for which session: the visitor's own, or one that a coach enters.

    `fixing`: they said that the one before isn't right, so this one takes its place unasked. `told_in`: the chat and
    the platform's id of the message that told it, where that isn't the one that is being answered.
    """

    record: SessionRecord
    athlete: Person
    block: int | None = None
    fixing: bool = False
    told_in: tuple[int, int] | None = None

    def asked(self, visit: Visit, text: str) -> dict[str, Any]:
        """What an open question about it keeps."""
        refs = {
            "session": self.record.id,
            "athlete": self.athlete.id,
            "block": self.block,
            "text": text,
            "fixing": self.fixing,
        }
        return {**refs, "told_in": self.told_in or told_in(visit)}


def told_in(visit: Visit) -> tuple[int, int] | None:
    """By which message a score can be found again, if that is changed."""
    return (visit.said_in, visit.message_id) if visit.said_in and visit.message_id else None


async def claim_of(visit: Visit, refs: Mapping[str, Any]) -> Claim:
    record = await visit.uow.sessions.find(refs["session"], await visit.group_ids())
    athlete = await visit.uow.people.get(refs.get("athlete", visit.person.id))
    if record is None or athlete is None:
        raise UnknownThing
    told = refs.get("told_in")
    return Claim(
        record,
        athlete,
        refs.get("block"),
        fixing=refs.get("fixing", False),
        told_in=(told[0], told[1]) if told else None,
    )


async def read_for(visit: Visit, claim: Claim, text: str) -> ReadScore:
    """Where it may be of several parts and one is told already, it is of the next, which was asked for."""
    read = await _read_for(visit, claim, text)
    return impossible_of(read) if await is_beyond_belief(visit, claim, read, text) else read


async def is_beyond_belief(visit: Visit, claim: Claim, read: ReadScore, text: str) -> bool:
    """Whether nobody would believe it of anybody, or of the athlete as far as they and their version are known."""
    if not read.sure or read.score is None:
        return False
    block = claim.record.session.blocks[read.block]
    if is_rather_an_effort(text, read.score, block):
        return True
    if is_beyond_anybody(read.score, block):
        return True
    shown = await visit.uow.versions.current(claim.record.id, claim.athlete.id)
    if shown is None:
        return False
    profile = await visit.uow.profiles.get(claim.athlete.id, claim.athlete.name)
    people = People(profile, catalogue(), visit.now.year)
    blocks = [one for one in shown.version.blocks if one.block == read.block + 1]
    return any(is_incredible(read.score, one, people) for one in blocks)


def impossible_of(read: ReadScore) -> ReadScore:
    assert read.score is not None, "only what was read can be beyond belief"
    return impossible(read.score).model_copy(update={"block": read.block})


async def _read_for(visit: Visit, claim: Claim, text: str) -> ReadScore:
    session = await asked_of(visit, claim)
    read = read_score(text, session, claim.block)
    if read.doubt is not Doubt.WHICH_BLOCK:
        return read
    left = await parts_left(visit, claim.record, claim.athlete.id)
    is_asked_for = 0 < len(left) < len(scored_blocks(claim.record))
    of_next = read_score(text, session, left[0]) if is_asked_for else read
    return of_next if of_next.sure else read


async def asked_of(visit: Visit, claim: Claim) -> Session:
    """What was asked of the athlete: in an eased week three rounds are all there is, and nobody stopped early."""
    shown = await visit.uow.versions.current(claim.record.id, claim.athlete.id)
    easing = shown.version.easing if shown else None
    return claim.record.session if easing is None else eased(claim.record.session, easing)


async def said_before(visit: Visit, claim: Claim, block: int) -> ScoreRecord | None:
    """The athlete's score of that block that counts now."""
    scores = await visit.uow.scores.of_person(claim.record.id, claim.athlete.id)
    counting = [one for one in scores if one.block == block and one.state is ScoreState.COUNTS]
    return counting[-1] if counting else None
