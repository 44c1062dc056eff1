"""A coach tells the scores of several people in one message: what is plain is noted, all else is on the same screen."""

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Literal

from core.desk.access import admitted
from core.desk.coached import Roster, coached_ids, roster_of
from core.desk.coaching.commands import NoteScores
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import Outcome
from core.desk.scores.claims import Claim, is_beyond_belief, read_for, said_before
from core.desk.scores.says import ScoreOfOne, ScoresTogether
from core.desk.scores.scoreboard import renew_board, scored_blocks
from core.desk.scores.taking import follow_up, is_known_to_be_of_age, store_score
from core.desk.scores.whose import (
    groups_told_of,
    is_told_of_one,
    is_told_whole,
    put_right,
    session_told_of,
    stranger_in,
)
from core.desk.versions.version import post_meant
from core.desk.visit import Visit
from core.notation.part_places import place_of
from core.notation.people import NameInFront
from core.notation.scores.parts import PartScore, read_parts
from core.notation.scores.which_day import without_day
from core.notation.talk.chat import NOT_FINISHED
from core.notation.told_of_each import told_of_each
from core.scores.text import in_words
from core.scores.values import SETTLED_BY_YES, ReadScore
from core.scores.ways import likes
from core.store.records import SessionRecord


async def as_scores_of_several(visit: Visit, text: str, session_id: int | None) -> Outcome | None:
    """`Bo 3+2, Cal 6+20 and Tam DNF`; None where it tells anything that is no score, or of one person alone."""
    groups = await groups_told_of(visit, text, session_id)
    roster = await roster_in(visit, groups)
    told = tellings(text, roster) if groups else ()
    known = [roster[one.name] for one in told if one.name in roster]
    if not known:
        return None
    replied = await post_meant(visit, session_id) if session_id else None
    record = replied or await session_told_of(visit, text, known[0])
    return await on_one_screen(visit, record, roster, told, text) if record else None


async def roster_in(visit: Visit, groups: Sequence[int]) -> Roster:
    members = [one for group in groups for one in await visit.uow.groups.members(group)]
    return roster_of(members, visit.meant)


def tellings(text: str, roster: Roster) -> tuple[NameInFront, ...]:
    """Of each the words of a score; () where any are none."""
    names = tuple(roster)
    told = told_of_each(text, names, lambda words: stranger_in(words, names))
    each = tuple(one._replace(rest=without_day(one.rest)) for one in told)
    return each if all(is_told_of_one(one.rest) for one in each) else ()


@admitted
async def note_scores(visit: Visit, command: NoteScores) -> Outcome:
    """What was asked of all of them: which part it is of, or whether it takes the place of what was told before."""
    word = await visit.uow.words.find(command.word, visit.person.id)
    record = await visit.uow.sessions.find(command.session, await coached_ids(visit))
    if word is None or record is None:
        raise UnknownThing
    roster = await roster_in(visit, [record.group_id])
    told = tellings(word.text, roster)
    if not told:
        raise StalePress
    shown = await on_one_screen(visit, record, roster, told, word.text, command)
    return shown + Outcome(settles=True)


async def on_one_screen(
    visit: Visit,
    record: SessionRecord,
    roster: Roster,
    told: Sequence[NameInFront],
    text: str,
    asked: NoteScores | None = None,
) -> Outcome:
    """What became of each; `asked`: what the coach has answered since, so that only what comes of it is told."""
    rows, outcome, among = list[ScoreOfOne](), Outcome(), set[int]()
    for one in told:
        member = roster.get(one.name)
        if member is None or member.group_id != record.group_id:
            rows.append(ScoreOfOne(name=one.name, state="unknown", words=one.rest))
            continue
        claim = Claim(record, member.person, asked.block if asked else None)
        mine, says = await settle(visit, claim, one.rest, sure=asked is not None and asked.sure)
        rows += mine
        outcome += says
        if any(row.state == "part" for row in mine):
            among |= await parts_it_may_be_of(visit, claim, one.rest)
    if asked is not None:
        rows = [one for one in rows if one.state in {"noted", "change", "part"}] or rows
    word = await visit.uow.words.keep(
        group_id=record.group_id, person_id=visit.person.id, about="announce", text=text, now=visit.now
    )
    said = ScoresTogether(
        rows=tuple(rows),
        session=record.id,
        word=word.id,
        block=asked.block if asked else None,
        parts=tuple((block, place_of(block, record.session)) for block in sorted(among)),
        like=likes(record.session.blocks[scored_blocks(record)[-1]])[0] if scored_blocks(record) else "",
        title=record.session.title,
        day=record.day,
        group=(await visit.group(record.group_id)).title,
    )
    renewed = await renew_board(visit, record) if any(one.state == "noted" for one in rows) else Outcome()
    return visit.told(said, session=record.id) + outcome + renewed


async def settle(visit: Visit, claim: Claim, words: str, *, sure: bool) -> tuple[list[ScoreOfOne], Outcome]:
    """What is told of one person, part by part; `sure`: it takes the place of what was told before."""
    name = claim.athlete.name
    if not await visit.uow.consents.given(claim.athlete.id):
        return [ScoreOfOne(name=name, state="no_consent", words=words)], Outcome()
    if not await is_known_to_be_of_age(visit, claim):
        return [ScoreOfOne(name=name, state="no_age", words=words)], Outcome()
    claim, words = put_right(claim, words)
    parts = read_parts(words, claim.record.session) if claim.block is None else ()
    told = parts or (PartScore(words, await read_for(visit, claim, words)),)
    rows, outcome = list[ScoreOfOne](), Outcome()
    for said, read in told:
        is_whole = bool(parts) or is_told_whole(words, read)
        row, says = await settle_part(visit, claim, said, read if is_whole else None, sure=sure)
        rows.append(row)
        outcome += says
    return rows, outcome


async def parts_it_may_be_of(visit: Visit, claim: Claim, words: str) -> frozenset[int]:
    """Those of which it would be a score, where it isn't told of which it is."""
    among = (await read_for(visit, claim, words)).among
    read = [(block, await read_for(visit, replace(claim, block=block), words)) for block in among]
    return frozenset(block for block, one in read if one.score is not None)


async def settle_part(
    visit: Visit, claim: Claim, words: str, read: ReadScore | None, *, sure: bool
) -> tuple[ScoreOfOne, Outcome]:
    stopped = NOT_FINISHED.search(words.casefold()) and not re.search(r"[0-9]", words)
    state: Literal["how_far", "unclear"] = "how_far" if stopped else "unclear"
    row = ScoreOfOne(name=claim.athlete.name, state=state, words=words)
    if await parts_it_may_be_of(visit, claim, words):
        return row.model_copy(update={"state": "part"}), Outcome()
    if read is None or read.score is None or await is_beyond_belief(visit, claim, read, words):
        return row, Outcome()
    if not read.sure and read.doubt not in SETTLED_BY_YES:
        return row, Outcome()
    units = (await visit.group(claim.record.group_id)).units
    part = read.block + 1 if len(scored_blocks(claim.record)) > 1 else None
    row = row.model_copy(update={"text": in_words(read.score, units), "part": part})
    before = await said_before(visit, claim, read.block)
    if before is not None and before.score.value == read.score.value:
        return row.model_copy(update={"state": "same"}), Outcome()
    is_change = before is not None and not claim.fixing
    if (is_change or not read.sure) and not sure:
        was = in_words(before.score, units) if before else None
        return row.model_copy(update={"state": "change", "before": was}), Outcome()
    kept, _ = await store_score(visit, replace(claim, fixing=True), read.score, words, read.block)
    noted = {"state": "noted", "score_id": kept.id, "scaled": kept.score.scaled}
    return row.model_copy(update=noted), await follow_up(visit, claim, kept, words)
