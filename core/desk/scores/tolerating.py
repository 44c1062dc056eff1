"""The coach says what counts as written; the scoreboard of the day follows."""

from core.desk.access import admitted
from core.desk.coached import coached_groups
from core.desk.coaching.commands import AskWhatCounts, SetTolerance
from core.desk.days import RECENT
from core.desk.outcome import Outcome
from core.desk.scores.says import AskTolerance, ToleranceSet
from core.desk.scores.scoreboard import renew_board, scored_blocks
from core.desk.versions.version import session_meant
from core.desk.visit import Visit
from core.notation.coaching.tolerances import read_tolerance
from core.notation.scores import read_score
from core.scaling.counting import block_counts
from core.scaling.values import Version
from core.scores.values import Tolerance
from core.store.records import Group, ScoreRecord, SessionRecord


async def as_tolerance(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """What a coach writes about what counts; None where it is about something else."""
    group = await group_meant(visit)
    wish = read_tolerance(text, group.tolerance) if group else None
    if group is None or wish is None:
        return None
    if wish.wanted is None:
        return await ask_what_counts(visit, AskWhatCounts(group=group.id))
    wanted = wish.wanted
    return await set_tolerance(
        visit,
        SetTolerance(group=group.id, lighter=wanted.lighter_percent, other_implement=wanted.other_implement),
    )


async def group_meant(visit: Visit) -> Group | None:
    """The coached group of the newest session, else the oldest one."""
    groups = {group.id: group for group in await coached_groups(visit)}
    newest = await session_meant(visit, None) if groups else None
    if newest is not None and newest.group_id in groups:
        return groups[newest.group_id]
    return next(iter(groups.values()), None)


@admitted
async def ask_what_counts(visit: Visit, command: AskWhatCounts) -> Outcome:
    group = await visit.group(command.group)
    return visit.told(AskTolerance(group=group.id, title=group.title, tolerance=group.tolerance))


@admitted
async def set_tolerance(visit: Visit, command: SetTolerance) -> Outcome:
    group = await visit.group(command.group)
    tolerance = Tolerance(lighter_percent=command.lighter, other_implement=command.other_implement)
    await visit.uow.groups.tolerate(group.id, tolerance)
    moved, boards = 0, Outcome()
    for record in await visit.uow.sessions.posted_since(group.id, visit.now - RECENT):
        moved += await rank_anew(visit, record, tolerance)
        boards += await renew_board(visit, record)
    said = ToleranceSet(title=group.title, tolerance=tolerance, moved=moved)
    return visit.told(said) + boards + Outcome(settles=True)


async def rank_anew(visit: Visit, record: SessionRecord, tolerance: Tolerance) -> int:
    """Let the scores of a session count under this tolerance; how many of them changed."""
    moved = 0
    for block in scored_blocks(record):
        for _, one in await visit.uow.scores.counting(record.id, block):
            version = await visit.uow.versions.get(one.version_id) if one.version_id else None
            if version is None:
                continue
            scaled = is_scaled(record, one, version.version, tolerance)
            if scaled != one.score.scaled:
                await visit.uow.scores.rank_as(one.id, scaled=scaled)
                moved += 1
    return moved


def is_scaled(record: SessionRecord, score: ScoreRecord, version: Version, tolerance: Tolerance) -> bool:
    """By the athlete's own word, or because their version is beyond the tolerance."""
    told = read_score(score.text, record.session, score.block).score
    own_word = told is not None and told.scaled
    written, made = record.session.blocks[score.block], version.blocks[score.block]
    return own_word or version.easing is not None or not block_counts(written, made, tolerance)
