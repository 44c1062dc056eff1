"""The scores of a session for a coach to take along."""

from collections.abc import Iterator

from core.desk.access import admitted
from core.desk.days import zone_of
from core.desk.errors import UnknownThing
from core.desk.outcome import Outcome
from core.desk.profile.commands import SaveScores
from core.desk.profile.says import ScoreSheet, SheetRow
from core.desk.scores.says import NoScoresYet
from core.desk.scores.scoreboard import Standings, scored_blocks
from core.desk.visit import Visit
from core.notation.part_places import place_of
from core.scores.text import in_words
from core.sessions.values import Session
from core.store.records import Group, ScoreRecord, SessionRecord


@admitted
async def save_scores(visit: Visit, command: SaveScores) -> Outcome:
    record = await visit.uow.sessions.find(command.session, await visit.group_ids())
    if record is None:
        raise UnknownThing
    rows = await rows_of(visit, record)
    if not rows:
        return visit.told(NoScoresYet())
    zone = zone_of(await visit.group(record.group_id)).key
    return visit.told(ScoreSheet(title=record.session.title, day=record.day, zone=zone, rows=rows))


async def rows_of(visit: Visit, record: SessionRecord) -> tuple[SheetRow, ...]:
    """As on the scoreboard: block by block, the best first; then what isn't ranked."""
    group = await visit.group(record.group_id)
    found: list[SheetRow] = []
    for block in scored_blocks(record):
        counting = await visit.uow.scores.counting(record.id, block)
        standings = await Standings.of(visit, record, block)
        place = {name: number for number, name in enumerate(one.name for one in standings.board.places)}
        named = [(standings.names.get(one.id, name), one) for name, one in counting]
        named.sort(key=lambda pair: place.get(pair[0], len(place)))
        found += sheet_rows(group, record.session, named)
    return tuple(found)


def sheet_rows(group: Group, session: Session, named: list[tuple[str, ScoreRecord]]) -> Iterator[SheetRow]:
    for name, one in named:
        yield SheetRow(
            name=name,
            part=place_of(one.block, session),
            score=in_words(one.score, group.units),
            scaled=one.score.scaled,
            minutes=one.score.minutes,
            at=one.recorded_at.astimezone(zone_of(group)),
        )
