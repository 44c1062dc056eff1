"""Whose score do a coach's words tell? It must be plain, or is asked: nothing of it is public before.

Another's is taken where it is plainly a score of somebody in the group; the coach's own only with their yes.
"""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any, Final

from core.desk.access import admitted
from core.desk.coached import Roster, coached_ids, roster_of
from core.desk.commands import LeaveScore
from core.desk.days import today_in
from core.desk.errors import StalePress
from core.desk.outcome import Outcome
from core.desk.scores.bare_loads import as_bare_load, is_a_thing, is_plain_score, is_set_up
from core.desk.scores.claims import Claim, claim_of, read_for
from core.desk.scores.says import AskWhose, NobodyCalled, ScoreLeft, SomebodyElses
from core.desk.scores.taking import ask_about, claim_score, tell_score, tell_score_again
from core.desk.scores.which import WhichSession, session_scored
from core.desk.sessions.meant import names_a_day, of_day, posted_lately, without_day
from core.desk.talk.not_got import short, word_for_coach
from core.desk.talk.says import DoneOtherwise
from core.desk.talk.understood import in_own_words, is_plainly_a_score, matter, understood
from core.desk.versions.version import post_meant
from core.desk.visit import Visit
from core.notation.people import NameInFront, cut_at_names, name_in_front
from core.notation.scores.company import in_company
from core.notation.scores.corrections import read_correction
from core.notation.scores.denials import denies, numbers_in
from core.notation.scores.parts import read_parts
from core.notation.talk.chat import NOT_FINISHED, is_like_a_score, minutes_of_days, tells_other_work
from core.notation.talk.yes_no import calls_it_off, says_it_is_so
from core.notation.told_of_each import name_behind, told_of_each
from core.scores.text import in_words
from core.scores.values import Doubt, ReadScore
from core.store.records import Membership, SessionRecord
from core.understanding.lexicon import joined, lexicon
from core.understanding.text import fold
from core.understanding.values import Understood

_NUMBER: Final = re.compile(r"[0-9]")
_AS_IT_IS: Final = re.compile(
    r"^\W*(?:(?:score|result|time)\b\W*)?(?:to|was|is|=|should(?: be| have been)?)\s+(?=[0-9])", re.IGNORECASE
)
_SOMEBODY: Final = re.compile(
    r"^\s*(?:(?:the\s+)?(?:score|result|time)\s+(?:for|of)\s+)?(?P<name>[^\W\d_][^\W\d_'\u2019-]+)"
    r"(?P<told>['\u2019]s|:|\s+(?:got|did|has|had|made|scored|finished)\b)?(?=[\s:,]|$)"
)


async def own_score(visit: Visit, text: str, session_id: int | None) -> Outcome | None:
    """The visitor's own score; a coach is asked first, and None comes back where their words are none, or deny one."""
    if denies(text) is not None or minutes_of_days(text):
        return None
    if visit.private and is_a_thing(text) and (await visit.profile()).equipment is None:
        return None
    if tells_other_work(text):
        return visit.told(DoneOtherwise(word=await word_for_coach(visit, text)))
    record = await session_scored(visit, text, session_id)
    if record is not None and await is_set_up(visit, record) and not is_plain_score(text):
        return await as_bare_load(visit, record, text)
    if record is None or record.group_id not in await coached_ids(visit):
        return await tell_score(visit, text, session_id)
    return await own_score_of_coach(visit, record, text)


async def as_score_in_company(visit: Visit, text: str, session_id: int | None) -> Outcome | None:
    """An athlete's own is taken, of what they tell beside somebody else's, which is theirs to tell."""
    if not _NUMBER.search(text) or await coached_ids(visit) or not await visit.memberships():
        return None
    told = in_company(text, tuple(await names_beside(visit)))
    if told is None:
        return None
    left = visit.told(SomebodyElses(words=short(told.others), own=bool(told.own)))
    own = await own_score(visit, told.own, session_id) if is_like_a_score(told.own) else None
    return left + (own or Outcome())


async def names_beside(visit: Visit) -> list[str]:
    """First names of all who train with the visitor."""
    members = [one for group in await visit.group_ids() for one in await visit.uow.groups.members(group)]
    return [one.person.name.split()[0] for one in members if one.person.id != visit.person.id]


async def own_score_of_coach(visit: Visit, record: SessionRecord, text: str) -> Outcome | None:
    if "\n" in text.strip() or is_another_matter(await understood(visit, text, record.session)):
        return None
    if not is_plainly_a_score(in_own_words(text, record.session), of_somebody=False):
        return None
    return await ask_whose(visit, Claim(record, visit.person), text)


def is_another_matter(told: Understood) -> bool:
    """A change of the session, an order: what only a coach says."""
    return any(act.act not in {"scored", "corrects"} for act in matter(told))


async def as_score_of_somebody(visit: Visit, text: str, session_id: int | None) -> Outcome | None:
    """`Ilse got 7+12` from a coach; None where nobody's name stands in front, or nothing of a score behind it."""
    groups = await groups_told_of(visit, text, session_id)
    if not groups:
        return None
    members = [one for group in groups for one in await visit.uow.groups.members(group)]
    roster = roster_of(members, visit.meant)
    behind = name_behind(text.strip(" .!"), tuple(roster))
    if behind is not None and is_told_of_one(behind.rest):
        text = f"{behind.name} {behind.rest}"
    found = name_in_front(text, tuple(roster))
    if found is None:
        return await as_score_of_a_stranger(visit, text, groups[0], tuple(roster))
    athlete = roster[found.name]
    replied = await post_meant(visit, session_id) if session_id else None
    record = replied or await session_told_of(visit, text, athlete)
    return await score_told(visit, text, record, roster, found) if record else None


async def score_told(
    visit: Visit, text: str, record: SessionRecord, roster: Roster, found: NameInFront
) -> Outcome | None:
    """Theirs, of that session; where it isn't plain it is asked whether it is one."""
    claim, rest = put_right(Claim(record, roster[found.name].person), without_day(found.rest))
    if claim.fixing or not _NUMBER.search(text):
        return await claim_score(visit, claim, rest)
    told = await understood(visit, without_day(text), record.session)
    if is_plainly_a_score(told, of_somebody=True):
        names = tuple(roster)
        pieces = (piece for act in matter(told) for piece in cut_at_names(act.text, names, _tells_a_score))
        return await scores_of(visit, record, roster, tuple(dict.fromkeys(pieces)))
    alone = is_plainly_a_score(in_own_words(rest, record.session), of_somebody=False)
    if matter(told) or not (alone or "scored" in told.between):
        return None
    return await ask_whose(visit, claim, rest)


def _tells_a_score(words: str) -> bool:
    return bool(_NUMBER.search(words) or NOT_FINISHED.search(words.casefold()))


async def groups_told_of(visit: Visit, text: str, session_id: int | None) -> list[int]:
    """The groups of whose people a coach's words may tell a score; none for words that tell of none."""
    coached = await coached_ids(visit) if _tells_a_score(text) else ()
    replied = await post_meant(visit, session_id) if session_id and coached else None
    return [one for one in coached if replied is None or one == replied.group_id]


async def session_told_of(visit: Visit, text: str, athlete: Membership) -> SessionRecord | None:
    """Of the day that is told, else what was posted last. Raises WhichSession where that day had none."""
    posted = [one for one in await posted_lately(visit) if one.group_id == athlete.group_id]
    named = await of_day(visit, text, posted)
    if named is None and posted and await names_a_day(visit, text):
        raise WhichSession(tuple(one.id for one in posted))
    return named or await visit.uow.sessions.latest_posted(athlete.group_id)


def put_right(claim: Claim, words: str) -> tuple[Claim, str]:
    """`4+3 not 4`, `score was 4+3`, `to 4+3` takes the place of what was noted before."""
    right = read_correction(_AS_IT_IS.sub("should be ", words))
    return (claim, words) if right is None else (replace(claim, fixing=True), right)


def is_told_whole(text: str, read: ReadScore) -> bool:
    """Whether the numbers of the words are those of the score: `4.2 km in 25 min` may be of something else."""
    told = numbers_in(text)
    of_score = numbers_in(in_words(read.score)) if read.score else frozenset[str]()
    return len(told) < 2 or read.score is None or told <= of_score  # noqa: PLR2004 - nothing is left over of one


async def scores_of(
    visit: Visit, record: SessionRecord, roster: Roster, tellings: Sequence[str]
) -> Outcome | None:
    """Of one or of several, each behind its name."""
    found = [name_in_front(words, tuple(roster)) for words in tellings]
    athletes = [(roster[one.name], one.rest) for one in found if one is not None]
    if len(athletes) < len(found) or any(one.group_id != record.group_id for one, _ in athletes):
        return None
    outcome = Outcome()
    for one, told in athletes:
        claim, words = put_right(Claim(record, one.person), told)
        parts = read_parts(words, record.session)
        if not parts and not is_told_whole(words, await read_for(visit, claim, words)):
            asked = await ask_whose(visit, claim, words)
            if asked is None and len(athletes) > 1:
                return None
            outcome += asked or Outcome()
            continue
        outcome += await claim_score(visit, claim, words)
    return outcome


async def ask_whose(visit: Visit, claim: Claim, text: str) -> Outcome | None:
    """One question before anybody sees it; None where it reads as no score of the session."""
    parts = read_parts(text, claim.record.session)
    read = await read_for(visit, claim, text)
    if not parts and read.doubt is Doubt.IMPOSSIBLE:
        return await ask_about(visit, claim, read, text)
    scores = [one.score for _, one in parts] or [read.score]
    units = (await visit.group(claim.record.group_id)).units
    words = [in_words(one, units) for one in scores if one is not None]
    if not words:
        return None
    await visit.uow.questions.ask(visit.chat, "score", {**claim.asked(visit, text), "whose": True}, visit.now)
    name = None if claim.athlete.id == visit.person.id else claim.athlete.name
    record = claim.record
    today = today_in(await visit.group(record.group_id), visit.now)
    asked = AskWhose(
        session=record.id,
        text=", ".join(words),
        name=name,
        title=record.session.title,
        day=None if record.day == today else record.day,
    )
    return visit.told(asked, session=claim.record.id)


async def as_score_of_a_stranger(
    visit: Visit, text: str, group_id: int, names: tuple[str, ...]
) -> Outcome | None:
    """A name that nobody in the group has is said, never guessed; of several each."""
    several = told_of_each(text, names, lambda words: stranger_in(words, names))
    alone = stranger_in(text, names) if "\n" not in text.strip() else None
    found = several or ((alone,) if alone else ())
    if not found or not all(is_told_of_one(one.rest) for one in found):
        return None
    called = tuple(one.name for one in found)
    return visit.told(NobodyCalled(names=called, group=(await visit.group(group_id)).title))


def stranger_in(text: str, names: tuple[str, ...]) -> NameInFront | None:
    """Whom the words begin with that nobody of these is called; None where that is no name."""
    named = _SOMEBODY.match(text)
    return name_in_front(text, (named["name"],)) if named and is_a_name(named, names) else None


def is_a_name(found: re.Match[str], names: tuple[str, ...]) -> bool:
    """As far as one can tell: it begins as names do, means nothing here, and is told of or no word at all.

    `ole got 4` begins so, too, where the word is none that is known.
    """
    word = found["name"]
    if word in names or joined(word) in lexicon().senses:
        return False
    if not word[0].isupper():
        return found["told"] is not None and fold(word) not in lexicon().words
    return found["told"] is not None or fold(word) not in lexicon().words


def is_told_of_one(words: str) -> bool:
    return is_like_a_score(words) or is_plainly_a_score(in_own_words(words), of_somebody=False)


async def tell_about_score(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """The answer to what was asked about a score; where no yes was given yet, another score is asked about anew."""
    if not refs.get("whose") or says_it_is_so(text) or calls_it_off(text):
        return await tell_score_again(visit, refs, text)
    claim = await claim_of(visit, refs)
    return await ask_whose(visit, claim, text) or await tell_score_again(visit, refs, "no")


@admitted
async def leave_score(visit: Visit, command: LeaveScore) -> Outcome:
    """No: what was asked about a score is dropped, and nothing of it is kept."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != "score" or question.refs["session"] != command.session:
        raise StalePress
    if question.refs.get("athlete", visit.person.id) != visit.person.id and not question.refs.get("whose"):
        raise StalePress
    await visit.uow.questions.close(visit.chat)
    return visit.told(ScoreLeft()) + Outcome(settles=True)
