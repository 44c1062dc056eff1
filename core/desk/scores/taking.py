"""Take a score in people's own words, and keep its history."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any, Final

from core.athletes.values import Branch, Screening
from core.desk.access import admitted
from core.desk.commands import ConfirmScore, PickScore, RateEffort
from core.desk.errors import NotYours, StalePress
from core.desk.joining.entry import ENTRY, ask_entry_again, first_things
from core.desk.joining.says import NotCleared
from core.desk.outcome import Outcome, Say
from core.desk.profile.abilities import keep_loads, unlearn
from core.desk.scores.as_done import Done, as_done
from core.desk.scores.claims import (
    Claim,
    claim_of,
    impossible_of,
    is_beyond_belief,
    read_for,
    said_before,
    told_in,
)
from core.desk.scores.progress import is_best_yet
from core.desk.scores.says import (
    AskScore,
    AskToReplace,
    NoPartForIt,
    NotForScore,
    ScoreEntered,
    ScoreLeft,
    ScoreNeedsAge,
    ScoreNeedsConsent,
    ScoreNoted,
)
from core.desk.scores.scoreboard import Standings, renew_board, scored_blocks
from core.desk.scores.which import session_scored
from core.desk.talk.asked import ASKED_TWICE
from core.desk.today.reports import ask_how_it_felt, pain_beside, rate_effort
from core.desk.versions.version import nothing_posted
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.notation.body.felt import effort_beside
from core.notation.part_places import part_alone, place_of
from core.notation.scores import read_score
from core.notation.scores.bare_scores import bare_score
from core.notation.scores.parts import PartScore, read_parts, told_apart
from core.notation.talk.yes_no import calls_it_off, says_it_is_so
from core.notation.unknowing import is_new_to_it
from core.scores.text import in_words
from core.scores.values import SETTLED_BY_YES, Doubt, ReadScore, Score
from core.store.records import ScoreRecord, SessionRecord, Told


async def tell_score(visit: Visit, text: str, session_id: int | None, block: int | None = None) -> Outcome:
    """The visitor's own score of a session, else of the newest."""
    record = await session_scored(visit, text, session_id)
    if record is None:
        return await nothing_posted(visit)
    if (await visit.profile()).screening is Screening.STOP:
        return visit.told(NotCleared(group=record.group_id, branch=(await visit.profile()).branch))
    return await claim_score(visit, Claim(record, visit.person, block), text)


async def claim_score(visit: Visit, claim: Claim, text: str) -> Outcome:
    """Read a score; ask the one thing that isn't sure; store it otherwise."""
    if not scored_blocks(claim.record):
        return visit.told(NotForScore())
    barred = await may_not_be_kept(visit, claim)
    if barred is not None:
        return barred
    told = read_parts(text, claim.record.session) if claim.block is None else ()
    if told:
        apart = told_apart(text, [one.words for one in told])
        beside = visit.told(NoPartForIt(words=apart)) if apart else Outcome()
        return await keep_parts(visit, claim, told) + beside
    read = await read_for(visit, claim, text)
    if read.score is not None and read.sure and not claim.fixing:
        before = await said_before(visit, claim, read.block)
        if before is not None and before.score.value != read.score.value:
            return await ask_to_replace(visit, claim, before, read.score, text)
    if read.score is not None and read.sure:
        return await keep_score(visit, claim, read.score, text, read.block)
    return await ask_about(visit, claim, read, text)


async def ask_about(visit: Visit, claim: Claim, read: ReadScore, text: str) -> Outcome:
    await visit.uow.questions.ask(visit.chat, "score", claim.asked(visit, text), visit.now)
    is_meant = read.score is not None and read.doubt in SETTLED_BY_YES
    units = (await visit.group(claim.record.group_id)).units
    asked = AskScore(
        ask=read.ask or "",
        name=name_of_another(visit, claim),
        meant=claim.record.id if is_meant else None,
        session=claim.record.id,
        choices=tuple(in_words(one, units) for one in read.between),
        parts=tuple(place_of(one, claim.record.session) for one in read.among),
    )
    own = claim.athlete.id == visit.person.id and visit.private
    hurts = await pain_beside(visit, claim.record, text) if own else Outcome()
    return hurts + visit.told(asked, session=claim.record.id)


def name_of_another(visit: Visit, claim: Claim) -> str | None:
    """Whose score it is, said by somebody else."""
    return None if claim.athlete.id == visit.person.id else claim.athlete.name


def without_consent(visit: Visit, claim: Claim) -> Outcome:
    """Nothing is kept of somebody, and nothing shown, before they said yes to it."""
    name = name_of_another(visit, claim)
    what = ScoreNeedsConsent(group=claim.record.group_id, in_group=not visit.private, of=name)
    return visit.told(what, session=claim.record.id)


async def may_not_be_kept(visit: Visit, claim: Claim) -> Outcome | None:
    """Nothing of anybody without their yes, and of nobody who may be a child."""
    if not await visit.uow.consents.given(claim.athlete.id):
        return without_consent(visit, claim)
    return None if await is_known_to_be_of_age(visit, claim) else await without_age(visit, claim)


async def is_known_to_be_of_age(visit: Visit, claim: Claim) -> bool:
    """Whether they said so: no child stands on a board for anybody to see."""
    profile = await visit.uow.profiles.get(claim.athlete.id, claim.athlete.name)
    return profile.branch is not Branch.NOT_ADULT and (profile.of_age or profile.branch is not None)


async def without_age(visit: Visit, claim: Claim) -> Outcome:
    """Asked for once more, of whoever tells it in private."""
    name = name_of_another(visit, claim)
    told = visit.told(ScoreNeedsAge(of=name), session=claim.record.id)
    if name or not visit.private:
        return told
    return told + (await first_things(visit, await visit.profile(), claim.record.group_id) or Outcome())


async def ask_to_replace(visit: Visit, claim: Claim, before: ScoreRecord, score: Score, text: str) -> Outcome:
    """A second score may be a slip or chat: it replaces the first only with a yes."""
    await visit.uow.questions.ask(visit.chat, "score", claim.asked(visit, text), visit.now)
    units = (await visit.group(claim.record.group_id)).units
    was, now = in_words(before.score, units), in_words(score, units)
    asked = AskToReplace(session=claim.record.id, name=name_of_another(visit, claim), before=was, now=now)
    own = claim.athlete.id == visit.person.id and visit.private
    hurts = await pain_beside(visit, claim.record, text) if own else Outcome()
    return hurts + visit.told(asked, session=claim.record.id)


@admitted
async def confirm_score(visit: Visit, command: ConfirmScore) -> Outcome:
    """Yes, it was meant as it was read."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != "score" or question.refs["session"] != command.session:
        raise StalePress
    claim, text = await claim_of(visit, question.refs), question.refs.get("text", "")
    if claim.athlete.id != visit.person.id and not visit.private:
        raise NotYours
    told = read_parts(text, claim.record.session) if claim.block is None else ()
    if told:
        return await keep_parts(visit, claim, told) + Outcome(settles=True)
    read = await read_for(visit, claim, text)
    if read.score is None or not may_be_confirmed(read):
        raise StalePress
    return await keep_score(visit, claim, read.score, text, read.block) + Outcome(settles=True)


@admitted
async def pick_score(visit: Visit, command: PickScore) -> Outcome:
    """Which of two readings, or which part, they meant."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != "score" or question.refs["session"] != command.session:
        raise StalePress
    claim, text = await claim_of(visit, question.refs), question.refs.get("text", "")
    if claim.athlete.id != visit.person.id and not visit.private:
        raise NotYours
    read = await read_for(visit, claim, text)
    if not 1 <= command.nth <= max(len(read.between), len(read.among)):
        raise StalePress
    await visit.uow.questions.close(visit.chat)
    if read.among:
        of_part = replace(claim, block=read.among[command.nth - 1])
        return await claim_score(visit, of_part, text) + Outcome(settles=True)
    kept = await keep_score(visit, claim, read.between[command.nth - 1], text, read.block)
    return kept + Outcome(settles=True)


async def tell_score_again(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """The answer to what was asked about a score: a yes, or the score in other words."""
    claim = await claim_of(visit, refs)
    if calls_it_off(text) or is_new_to_it(text):
        await visit.uow.questions.close(visit.chat)
        return visit.told(ScoreLeft(unknown=not calls_it_off(text)))
    asked = await read_for(visit, claim, refs.get("text", ""))
    if not text.strip() and refs.get("text"):
        return await ask_the_same(visit, claim, asked, refs["text"])
    if may_be_confirmed(asked) and is_yes(text, asked, claim):
        return await confirm_score(visit, ConfirmScore(session=refs["session"]))
    part = part_alone(text, claim.record.session)
    if part in asked.among:
        await visit.uow.questions.close(visit.chat)
        return await claim_score(visit, replace(claim, block=part), refs["text"])
    text, again = await with_words_before(
        visit, claim, refs.get("text", "") if asked.score is None else "", text
    )
    if refs.get("text") and not again.sure and again.doubt in NO_SCORE and asked.doubt in NO_SCORE:
        return await ask_once_more(visit, claim, asked, refs)
    await visit.uow.questions.close(visit.chat)
    return await claim_score(visit, replace(claim, told_in=None), text)


async def with_words_before(visit: Visit, claim: Claim, before: str, text: str) -> tuple[str, ReadScore]:
    """`DNF`, and then `only 3 of 5`; `skipped the runs`, and then a time: what told no score alone stays with it."""
    alone = await read_for(visit, claim, text)
    both = f"{before}, {text}"
    read = await read_for(visit, claim, both) if before else alone
    less = read.score is not None and read.score.scaled
    return (both, read) if read.sure and (less or not alone.sure) else (text, alone)


async def ask_the_same(visit: Visit, claim: Claim, asked: ReadScore, text: str) -> Outcome:
    """What is open of a score, once more: whether it takes another's place, or what wasn't sure of it."""
    before = await said_before(visit, claim, asked.block) if asked.sure else None
    if before is None or asked.score is None:
        return await ask_about(visit, claim, asked, text)
    return await ask_to_replace(visit, claim, before, asked.score, text)


# What comes of words that tell no score of any part.
NO_SCORE: Final = frozenset({Doubt.WHICH_BLOCK, Doubt.UNREADABLE})


async def ask_once_more(visit: Visit, claim: Claim, asked: ReadScore, refs: Mapping[str, Any]) -> Outcome:
    """The score that was told first still waits; it is let go where what came was no answer for the second time."""
    if refs.get(ASKED_TWICE):
        await visit.uow.questions.close(visit.chat)
        return visit.told(ScoreLeft(words=refs["text"]))
    outcome = await ask_about(visit, claim, asked, refs["text"])
    question = await visit.uow.questions.open_in(visit.chat)
    assert question is not None, "it was just asked"
    await visit.uow.questions.ask(visit.chat, "score", {**question.refs, ASKED_TWICE: True}, visit.now)
    return outcome


def may_be_confirmed(read: ReadScore) -> bool:
    return read.score is not None and (read.sure or read.doubt in SETTLED_BY_YES)


def is_yes(text: str, asked: ReadScore, claim: Claim) -> bool:
    """In so many words, or by saying the same score once more."""
    if says_it_is_so(text):
        return True
    again = read_score(text, claim.record.session, claim.block).score
    return again is not None and asked.score is not None and again.value == asked.score.value is not None


async def keep_score(visit: Visit, claim: Claim, score: Score, text: str, block: int) -> Outcome:
    """Store it, tell its place, renew the scoreboard, ask how it felt."""
    kept, noted = await store_score(visit, claim, score, text, block)
    return noted + await renew_board(visit, claim.record) + await follow_up(visit, claim, kept, text)


async def keep_parts(visit: Visit, claim: Claim, told: Sequence[PartScore]) -> Outcome:
    """Each as one alone would be; whoever names every part means it so, and isn't asked about an earlier one."""
    said = Outcome()
    scores: list[ScoreRecord] = []
    for words, read in told:
        assert read.score is not None, "only what is sure was read"
        if await is_beyond_belief(visit, claim, read, words):
            return said + await ask_about(visit, replace(claim, block=read.block), impossible_of(read), words)
        kept, noted = await store_score(visit, claim, read.score, words, read.block)
        said += noted
        scores.append(kept)
    painful = next((one for one in scores if one.score.pain), scores[-1])
    words = ", ".join(one.words for one in told)
    return said + await renew_board(visit, claim.record) + await follow_up(visit, claim, painful, words)


async def store_score(
    visit: Visit, claim: Claim, score: Score, text: str, block: int
) -> tuple[ScoreRecord, Outcome]:
    """An earlier one of the same block becomes history."""
    record, athlete = claim.record, claim.athlete
    version = await seen_by(visit, record, athlete)
    done = await as_done(visit, Done(record, athlete, version, block), score)
    earlier = [one for one in await visit.uow.scores.of_person(record.id, athlete.id) if one.block == block]
    for one in earlier:
        await unlearn(visit, one)
    bare = bare_score(text)
    more = None if bare == text and done.pain is None else text
    kept = await visit.uow.scores.record(
        session_id=record.id,
        block=block,
        person_id=athlete.id,
        version_id=version.id if version else None,
        told=Told(bare, more, claim.told_in or told_in(visit)),
        score=done,
        entered_by=visit.person.id,
        now=visit.now,
    )
    await close_question(visit)
    noted = await noted_as(visit, claim, replace(kept, score=done), corrected=bool(earlier))
    if athlete.id == visit.person.id:
        noted += await keep_loads(visit, record, version, block, text, score)
    return replace(kept, score=done), noted


async def close_question(visit: Visit) -> None:
    """Consent and screening stay open: a score is no answer to them."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is not None and question.kind not in ENTRY:
        await visit.uow.questions.close(visit.chat)


async def noted_as(visit: Visit, claim: Claim, kept: ScoreRecord, *, corrected: bool) -> Outcome:
    standing = await Standings.of(visit, claim.record, kept.block)
    group = await visit.group(claim.record.group_id)
    in_group = not visit.private
    is_own = claim.athlete.id == visit.person.id
    noted = ScoreNoted(
        score_id=kept.id,
        score=kept.score,
        text=in_words(kept.score, group.units),
        rank=standing.rank_of(kept),
        of=standing.placed(),
        apart=standing.stands_apart(kept),
        corrected=corrected,
        unseen=kept.version_id is None,
        in_group=in_group,
        group=await visit.title_of(group.id),
        part=part_named(kept.block, claim.record),
        again=await has_others(visit, kept),
        for_whom=None if is_own else claim.athlete.name,
        is_best=is_own and await is_best_yet(visit, kept.id),
        title=claim.record.session.title,
        day=claim.record.day,
    )
    return visit.told(noted, session=claim.record.id)


async def follow_up(visit: Visit, claim: Claim, kept: ScoreRecord, text: str) -> Outcome:
    """Ask the athlete how it felt, if the `text` doesn't tell it, or first of all to be asked.

    Tell them if somebody else entered their score.
    """
    if claim.athlete.id == visit.person.id:
        return await follow_up_own(visit, claim.record, kept.score.pain, text)
    chat = await visit.uow.chats.private_of(claim.athlete.id)
    if chat is None:
        return Outcome()
    units = (await visit.group(claim.record.group_id)).units
    entered = ScoreEntered(score_id=kept.id, by=visit.person.name, text=in_words(kept.score, units))
    return Outcome((Say(chat.id, entered, refs={"session": claim.record.id}),))


async def follow_up_own(visit: Visit, record: SessionRecord, pain: str | None, text: str) -> Outcome:
    """In private only, and one thing at a time: what is open of the screening comes first."""
    if not visit.private:
        return Outcome()
    asked = await ask_entry_again(visit)
    if asked is None:
        effort = None if pain else effort_beside(text)
        rated = (
            await rate_effort(visit, RateEffort(session=record.id, effort=effort)) if effort else Outcome()
        )
        return rated + await ask_how_it_felt(visit, record, pain)
    return (await ask_how_it_felt(visit, record, pain) if pain else Outcome()) + asked


def part_named(block: int, record: SessionRecord) -> int | None:
    """Which part people call it, where several are scored."""
    return place_of(block, record.session) if len(scored_blocks(record)) > 1 else None


async def has_others(visit: Visit, kept: ScoreRecord) -> bool:
    """Whether they told a score of this session before: what is said once of it was said."""
    own = await visit.uow.scores.of_person(kept.session_id, kept.person_id)
    return any(one.id != kept.id for one in own)
