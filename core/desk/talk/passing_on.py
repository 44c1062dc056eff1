"""Words that an athlete has for their coach: kept as they were written, and seen only once they agreed."""

from collections.abc import Sequence
from typing import Literal

from core.desk.access import admitted
from core.desk.coached import called_in
from core.desk.days import today_in, zone_of
from core.desk.errors import AlreadyDone, StalePress
from core.desk.outcome import Outcome
from core.desk.profile.commands import ForgetWord, PassOn, PassOnTo
from core.desk.profile.conditions import keep_spared
from core.desk.talk.asked import keeps
from core.desk.talk.says import (
    AthleteSays,
    MyWords,
    OfferWord,
    WordForgotten,
    WordPassed,
    WordShown,
)
from core.desk.talk.understood import in_own_words
from core.desk.today.pain import as_complaint
from core.desk.versions.waiting import to_coaches
from core.desk.visit import Visit
from core.notation.talk.for_coach import asks_for_own_words, read_for_coach
from core.store.records import CoachWord, Membership, Role
from core.understanding.acts import Condition, Spares


async def offer(visit: Visit, unread: Sequence[str], *, agreed: bool = True) -> Outcome | None:
    """What nobody here could read of what to spare, for the coach: at once where they see that, else with a yes.

    `agreed`: what they agreed to show covers it. None where there is nothing to pass on, or nobody to read it.
    """
    here = await trains_in(visit)
    if not unread or not here or not await visit.uow.consents.given(visit.person.id):
        return None
    text = ", ".join(unread)
    word = await keep(visit, here[0], "spare", text)
    if not agreed or len(here) > 1 or not here[0].shares_limits:
        return visit.told(OfferWord(word=word.id, text=word.text, groups=await titles_of(visit, here)))
    await visit.uow.words.pass_on(word.id, visit.now)
    return await told_passed(visit, word, unread=True)


async def keep(
    visit: Visit, here: Membership, about: Literal["spare", "said", "unread"], text: str
) -> CoachWord:
    return await visit.uow.words.keep(
        group_id=here.group_id, person_id=visit.person.id, about=about, text=text, now=visit.now
    )


async def trains_in(visit: Visit) -> list[Membership]:
    """Where the visitor is an athlete, the oldest first."""
    return [one for one in await visit.memberships() if one.role is Role.ATHLETE]


async def titles_of(visit: Visit, groups: Sequence[Membership]) -> tuple[tuple[int, str], ...]:
    """To choose from, where there are several."""
    if len(groups) == 1:
        return ()
    return tuple([(one.group_id, (await visit.group(one.group_id)).title) for one in groups])


async def told_passed(visit: Visit, word: CoachWord, *, unread: bool = False) -> Outcome:
    group = await visit.group(word.group_id)
    return visit.told(WordPassed(word=word.id, text=word.text, group=group.title, unread=unread))


@admitted
async def pass_on(visit: Visit, command: PassOn) -> Outcome:
    """Yes, the coach shall read it."""
    word = await own_word(visit, command.word)
    if word.passed_at is not None:
        raise AlreadyDone
    if word.about == "unread":
        return await deliver(visit, word) + Outcome(settles=True)
    await visit.uow.words.pass_on(word.id, visit.now)
    return await told_passed(visit, word) + Outcome(settles=True)


@admitted
async def pass_on_to(visit: Visit, command: PassOnTo) -> Outcome:
    """Yes, and these coaches are meant: what was said for them they read at once."""
    word = await own_word(visit, command.word)
    if word.passed_at is not None:
        raise AlreadyDone
    meant = await visit.uow.words.mean(word.id, command.group)
    if meant.about != "spare":
        return await deliver(visit, meant) + Outcome(settles=True)
    await visit.uow.words.pass_on(meant.id, visit.now)
    return await told_passed(visit, meant) + Outcome(settles=True)


@admitted
async def forget_word(visit: Visit, command: ForgetWord) -> Outcome:
    word = await own_word(visit, command.word)
    await visit.uow.words.forget(word.id, visit.now)
    return visit.told(WordForgotten()) + Outcome(settles=True)


async def own_word(visit: Visit, word_id: int) -> CoachWord:
    await visit.must_consent()
    word = await visit.uow.words.find(word_id, visit.person.id)
    if word is None:
        raise StalePress
    return word


async def as_for_coach(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Tell my coach ...`: sent to the coaches at once, as it stands; pain in it is spared like any other.

    None where the coach has just asked: then all of it is the answer.
    """
    read = [(one, read_for_coach(text, await coaches_named(visit, one))) for one in await trains_in(visit)]
    meant = [(one, words) for one, words in read if words is not None]
    if not meant:
        return None
    if await keeps(visit, "for_coach"):
        return None
    await visit.must_consent()
    here, words = meant[0]
    word = await keep(visit, here, "said", words)
    if len(meant) > 1:
        groups = await titles_of(visit, [one for one, _ in meant])
        told = visit.told(OfferWord(word=word.id, text=word.text, unread=False, groups=groups))
    else:
        told = await deliver(visit, word)
    spared = await as_complaint(visit, words, None) or await spared_in(visit, words)
    return told + (spared or Outcome())


async def spared_in(visit: Visit, words: str) -> Outcome | None:
    """What is to be spared by what the coach was told."""
    told = [act for act in in_own_words(words).acts if isinstance(act, Spares | Condition)]
    limits = tuple(dict.fromkeys(limit for act in told for limit in act.limits))
    return await keep_spared(visit, limits, words) if limits and not await keeps(visit, "condition") else None


async def coaches_named(visit: Visit, here: Membership) -> list[str]:
    """What the coaches of a group are called, by first name too."""
    found = [one.person.name for one in await visit.uow.groups.members(here.group_id, role=Role.COACH)]
    return [*found, *(name.split()[0] for name in found if " " in name)]


async def deliver(visit: Visit, word: CoachWord) -> Outcome:
    """Read at once, or in the evening where no coach has a chat with us yet."""
    what = AthleteSays(athlete=await called_in(visit, word.group_id), text=word.text)
    says = await to_coaches(visit, word.group_id, what, f"word:{word.id}")
    today = today_in(await visit.group(word.group_id), visit.now)
    await visit.uow.words.pass_on(word.id, visit.now, told_on=today if says else None)
    return await told_passed(visit, word) + Outcome(says)


async def as_own_words(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """What they said for their coach, with a way to let go of each."""
    if not asks_for_own_words(text) or not await trains_in(visit):
        return None
    groups = await visit.group_ids()
    words = [one for one in await visit.uow.words.of_person(visit.person.id) if one.group_id in groups]
    return visit.told(MyWords(words=tuple([await shown(visit, one) for one in words])))


async def shown(visit: Visit, word: CoachWord) -> WordShown:
    zone = zone_of(await visit.group(word.group_id))
    day = word.said_at.astimezone(zone).date()
    return WordShown(id=word.id, on=day, text=word.text, passed=word.passed_at is not None)


async def seen_of(visit: Visit, athlete: Membership) -> tuple[WordShown, ...]:
    """What the coaches of the group see of what an athlete said for them."""
    words = await visit.uow.words.seen_of(athlete.group_id, athlete.person_id)
    return tuple([await shown(visit, one) for one in words])
