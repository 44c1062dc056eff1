"""Take a score in the athlete's own words, keep its history, and keep the scoreboard current."""

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from core.desk.commands import ConfirmScore, FixScore, SeeBoard, TakeScoreBack
from core.desk.errors import NotAMember, StalePress, UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.says.scores import (
    AskScore,
    AskScoreAgain,
    NoScoresYet,
    NotForScore,
    Scoreboard,
    ScoreNoted,
    ScoreTakenBack,
)
from core.desk.says.versions import NothingPosted
from core.desk.versions import first_things, session_meant
from core.desk.visit import Visit
from core.notation.scores import read_score
from core.scores.ranking import rank
from core.scores.text import in_words
from core.scores.values import Board, Entry, Score
from core.store.records import Purpose, ScoreRecord, ScoreState, SessionRecord, VersionRecord

YES = frozenset({"yes", "y", "yes please", "yep", "yeah", "right", "correct", "ok"})


async def tell_score(visit: Visit, text: str, session_id: int | None, block: int | None = None) -> Outcome:
    """Read a score; ask the one thing that isn't sure; store it otherwise."""
    record = await session_meant(visit, session_id)
    if record is None:
        return visit.told(NothingPosted())
    stopped = await first_things(visit, await visit.profile(), record.group_id)
    if stopped is not None:
        return stopped
    if not scored_blocks(record):
        return visit.told(NotForScore())
    read = read_score(text, record.session, block)
    if read.score is None or not read.sure:
        refs = {"session": record.id, "block": block, "text": text}
        await visit.uow.questions.ask(visit.chat, "score", refs, visit.now)
        meant = record.id if read.score is not None and read.score.value is not None else None
        return visit.told(AskScore(ask=read.ask or "", meant=meant), session=record.id)
    return await keep_score(visit, record, read.score, text, read.block)


async def confirm_score(visit: Visit, command: ConfirmScore) -> Outcome:
    """Yes, it was meant as it was read."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != "score" or question.refs["session"] != command.session:
        raise StalePress
    record = await session_meant(visit, command.session)
    assert record is not None, "a session that was asked about was posted"
    text, block = question.refs["text"], question.refs["block"]
    read = read_score(text, record.session, block)
    if read.score is None or read.score.value is None:
        raise StalePress
    kept = await keep_score(visit, record, read.score, text, read.block)
    return kept + Outcome(settles=True)


async def tell_score_again(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """The answer to what was asked about a score: a yes, or the score in other words."""
    if text.strip(" .!").lower() in YES and refs.get("text"):
        return await confirm_score(visit, ConfirmScore(session=refs["session"]))
    await visit.uow.questions.close(visit.chat)
    return await tell_score(visit, text, refs["session"], refs.get("block"))


async def keep_score(visit: Visit, record: SessionRecord, score: Score, text: str, block: int) -> Outcome:
    """Store it, an earlier one of the same block becoming history; tell its place; renew the scoreboard."""
    version = await visit.uow.versions.current(record.id, visit.person.id)
    earlier = await visit.uow.scores.of_person(record.id, visit.person.id)
    kept = await visit.uow.scores.record(
        session_id=record.id,
        block=block,
        person_id=visit.person.id,
        version_id=version.id if version else None,
        text=text,
        score=as_done(score, version, block),
        entered_by=visit.person.id,
        now=visit.now,
    )
    await visit.uow.questions.close(visit.chat)
    standing = await Standings.of(visit, record, block)
    noted = ScoreNoted(
        score_id=kept.id,
        score=kept.score,
        text=in_words(kept.score, (await visit.group(record.group_id)).units),
        rank=standing.rank_of(kept),
        of=len(standing.board.places),
        corrected=any(one.block == block for one in earlier),
    )
    return visit.told(noted, session=record.id) + await renew_board(visit, record)


def as_done(score: Score, version: VersionRecord | None, block: int) -> Score:
    """The score with what the version says of it: scaled or as written, ranked or not (light duty)."""
    if version is None:
        return score
    scaled = score.scaled or not version.version.as_written
    return score.model_copy(update={"scaled": scaled, "ranked": version.version.blocks[block].scored})


@dataclass(frozen=True, slots=True)
class Standings:
    """The ranking of one block, and which of its names is whose score."""

    board: Board
    names: Mapping[int, str]

    @classmethod
    async def of(cls, visit: Visit, record: SessionRecord, block: int) -> "Standings":
        counting = await visit.uow.scores.counting(record.id, block)
        ranked = [(name, one) for name, one in counting if one.score.ranked]
        names = apart([name for name, _ in ranked])
        entries = tuple(
            Entry(name=name, score=one.score) for name, (_, one) in zip(names, ranked, strict=True)
        )
        written = record.session.blocks[block]
        board = rank(written.format, entries, written.cap_s)
        return cls(board, {one.id: name for name, (_, one) in zip(names, ranked, strict=True)})

    def rank_of(self, record: ScoreRecord) -> int | None:
        name = self.names.get(record.id)
        return next((place.rank for place in self.board.places if place.name == name), None)


def apart(names: Sequence[str]) -> list[str]:
    """The same names, told apart where two are equal: `Ilse`, `Ilse (2)`."""
    seen: Counter[str] = Counter()
    told: list[str] = []
    for name in names:
        seen[name] += 1
        told.append(name if seen[name] == 1 else f"{name} ({seen[name]})")
    return told


async def renew_board(visit: Visit, record: SessionRecord) -> Outcome:
    """The one scoreboard message of the session, posted once and rewritten from then on."""
    group = await visit.group(record.group_id)
    key = f"board:{record.id}"
    board = await scoreboard(visit, record)
    say = Say(group.chat_id, board, Purpose.BOARD, edits=key, subject=key, refs={"session": record.id})
    return Outcome((say,))


async def scoreboard(visit: Visit, record: SessionRecord) -> Scoreboard:
    boards = [(index, (await Standings.of(visit, record, index)).board) for index in scored_blocks(record)]
    return Scoreboard(session_id=record.id, title=record.session.title, day=record.day, boards=tuple(boards))


def scored_blocks(record: SessionRecord) -> tuple[int, ...]:
    """Indices of the blocks that are scored."""
    return tuple(index for index, block in enumerate(record.session.blocks) if block.scored)


async def see_board(visit: Visit, command: SeeBoard) -> Outcome:
    record = await session_meant(visit, command.session)
    if record is None:
        return visit.told(NothingPosted())
    if await visit.uow.groups.membership(visit.person.id, record.group_id) is None:
        raise NotAMember
    board = await scoreboard(visit, record)
    if not any(ranking.places for _, ranking in board.boards):
        return visit.told(NoScoresYet())
    return visit.told(board, session=record.id)


async def fix_score(visit: Visit, command: FixScore) -> Outcome:
    """Ask for the right score; what comes replaces the old one, which stays as history."""
    record = await own_score(visit, command.score)
    refs = {"session": record.session_id, "block": record.block}
    await visit.uow.questions.ask(visit.chat, "score", refs, visit.now)
    return visit.told(AskScoreAgain(), session=record.session_id)


async def take_score_back(visit: Visit, command: TakeScoreBack) -> Outcome:
    record = await own_score(visit, command.score)
    await visit.uow.scores.withdraw(record.id)
    session = await visit.uow.sessions.get(record.session_id)
    assert session is not None
    return visit.told(ScoreTakenBack()) + await renew_board(visit, session) + Outcome(settles=True)


async def own_score(visit: Visit, score_id: int) -> ScoreRecord:
    """A counting score of the visitor's own."""
    record = await visit.uow.scores.get(score_id)
    if record is None or record.person_id != visit.person.id:
        raise UnknownThing
    if record.state is not ScoreState.COUNTS:
        raise StalePress
    return record
