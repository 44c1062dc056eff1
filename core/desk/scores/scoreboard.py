"""The ranking of a session's scores, and the one message in the group that shows it."""

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from core.desk.access import admitted
from core.desk.coached import coached_ids, names_in
from core.desk.commands import SeeBoard
from core.desk.days import LOOKS_BACK
from core.desk.outcome import Outcome, Say
from core.desk.scores.says import Eased, NoScoresYet, Scoreboard
from core.desk.versions.says import AskWhichGroup, NothingPosted
from core.desk.versions.version import of_several_groups, session_meant
from core.desk.visit import Visit
from core.notation.part_places import place_of
from core.scaling.counting import is_other_work
from core.scaling.values import Change, VersionBlock
from core.scores.ranking import rank
from core.scores.values import Board, Entry
from core.store.records import Group, Purpose, ScoreRecord, ScoreState, SessionRecord, SessionState

# So far back the last board is looked for.


@dataclass(frozen=True, slots=True)
class Standings:
    """The ranking of one block, which of its names is whose score, and what was otherwise in whose version."""

    board: Board
    names: Mapping[int, str]
    ways: Mapping[str, VersionBlock]

    @classmethod
    async def of(cls, visit: Visit, record: SessionRecord, block: int) -> "Standings":
        counting = await visit.uow.scores.counting(record.id, block)
        called = await names_in(visit.uow, record.group_id)
        ranked = [(called.get(one.person_id, name), one) for name, one in counting if one.score.ranked]
        names = apart([name for name, _ in ranked])
        named = [(name, one) for name, (_, one) in zip(names, ranked, strict=True)]
        ways = {name: made for name, one in named if (made := await way_of(visit, one))}
        entries = tuple(
            Entry(name=name, score=one.score, apart=name in ways and is_other_work(ways[name]))
            for name, one in named
        )
        written = record.session.blocks[block]
        board = rank(written.format, entries, written.cap_s)
        return cls(board, {one.id: name for name, one in named}, ways)

    def stands_apart(self, record: ScoreRecord) -> bool:
        """Whether it is on the board without a place."""
        return record.id in self.names and self.rank_of(record) is None

    def placed(self) -> int:
        """How many have a place."""
        return sum(place.rank is not None for place in self.board.places)

    def rank_of(self, record: ScoreRecord) -> int | None:
        name = self.names.get(record.id)
        return next((place.rank for place in self.board.places if place.name == name), None)


async def way_of(visit: Visit, one: ScoreRecord) -> VersionBlock | None:
    """The block as it was done, where it was scaled in a version."""
    eased = one.version_id if one.score.scaled else None
    version = await visit.uow.versions.find(eased, one.person_id) if eased else None
    return version.version.blocks[one.block] if version else None


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
    group = await group_of(visit, record)
    key = f"board:{record.id}"
    board = await scoreboard(visit, record)
    is_empty = not any(ranking.places for _, ranking in board.boards)
    if is_empty and await visit.uow.outbox.by_key(key) is None:
        return Outcome()
    say = Say(group.chat_id, board, Purpose.BOARD, edits=key, subject=key, refs={"session": record.id})
    return Outcome((say,))


async def group_of(visit: Visit, record: SessionRecord) -> Group:
    """The session's group, also for whoever has just been erased from it: the board is written anew without them."""
    group = await visit.uow.groups.get(record.group_id)
    assert group is not None, "a session has its group"
    return group


async def scoreboard(visit: Visit, record: SessionRecord) -> Scoreboard:
    standings = [(index, await Standings.of(visit, record, index)) for index in scored_blocks(record)]
    eased = tuple(
        Eased(
            part=place_of(index, record.session),
            name=name,
            lines=tuple(line for line in made.every_line if line.change is not Change.NONE),
        )
        for index, one in standings
        for name, made in one.ways.items()
    )
    return Scoreboard(
        session_id=record.id,
        title=record.session.title,
        day=record.day,
        boards=tuple((place_of(index, record.session), one.board) for index, one in standings),
        eased=eased,
        units=(await group_of(visit, record)).units,
    )


def scored_blocks(record: SessionRecord) -> tuple[int, ...]:
    """Indices of the blocks that are scored."""
    return tuple(index for index, block in enumerate(record.session.blocks) if block.scored)


async def parts_left(visit: Visit, record: SessionRecord, person: int) -> tuple[int, ...]:
    """The scored blocks of which somebody has no score that counts."""
    scores = await visit.uow.scores.of_person(record.id, person)
    told = {one.block for one in scores if one.state is ScoreState.COUNTS}
    return tuple(block for block in scored_blocks(record) if block not in told)


@admitted
async def see_board(visit: Visit, command: SeeBoard) -> Outcome:
    several = await of_several_groups(visit) if command.session is None else []
    if several:
        return visit.told(AskWhichGroup(sessions=tuple(several), then="board"))
    record = await session_meant(visit, command.session)
    if record is None:
        return visit.told(NothingPosted(coach=bool(await coached_ids(visit))))
    is_judge = visit.private and record.group_id in await coached_ids(visit)
    named = {"judge": is_judge, "group": await visit.title_of(record.group_id)}
    board = (await scoreboard(visit, record)).model_copy(update=named)
    if has_places(board):
        return visit.told(board, session=record.id)
    none = visit.told(await none_ranked(visit, record, is_judge=is_judge))
    return none + (await board_before(visit, record, named) if is_judge else Outcome())


def has_places(board: Scoreboard) -> bool:
    return any(ranking.places for _, ranking in board.boards)


async def board_before(visit: Visit, record: SessionRecord, named: Mapping[str, Any]) -> Outcome:
    """To a coach who asks before anybody told a score: the last board that there is."""
    lately = await visit.uow.sessions.posted_since(record.group_id, visit.now - LOOKS_BACK)
    for one in lately:
        if one.id != record.id and one.state is SessionState.POSTED and one.id < record.id:
            board = (await scoreboard(visit, one)).model_copy(update=named)
            if has_places(board):
                return visit.told(board, session=one.id)
    return Outcome()


async def none_ranked(visit: Visit, record: SessionRecord, *, is_judge: bool) -> NoScoresYet:
    """Scores without a rank are for the eyes of who told them and of their coach, in private."""
    if is_judge:
        told = [await visit.uow.scores.counting(record.id, block) for block in scored_blocks(record)]
        unranked = sum(len(one) for one in told)
        return NoScoresYet(unranked=unranked, judge=True, title=record.session.title)
    own = await visit.uow.scores.of_person(record.id, visit.person.id) if visit.private else []
    return NoScoresYet(own=any(one.state is ScoreState.COUNTS for one in own))
