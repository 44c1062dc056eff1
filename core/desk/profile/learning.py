"""What scores taught of somebody, kept with their profile and brought up to date when it is next needed.

By then a session's effort is told too, and a slip put right: nothing has to be unlearned.
"""

from collections.abc import Sequence
from datetime import datetime

from core.athletes.learned import Learned, strength_of
from core.athletes.values import Profile
from core.forecast.learning import Taught, learned_from
from core.movements.lookup import catalogue
from core.store.records import Done
from core.store.unit import Unit

# So many scores back is learned from: what is older has faded.
LEARNS_FROM = 60


async def with_learned(uow: Unit, person_id: int, profile: Profile, now: datetime) -> Profile:
    """The profile with what all scores so far taught; kept, where there was something new."""
    learned = profile.learned
    until = learned.until if learned else 0
    seen, newest = await uow.scores.seen_until(person_id, until)
    if newest <= until and seen == (learned.seen if learned else 0):
        return profile
    if learned and seen != learned.seen:  # one that was learned from is gone, or counts again
        learned, until = None, 0
    taught = await uow.scores.done_by(person_id, LEARNS_FROM, after=until)
    if not taught:
        return profile if learned == profile.learned else await _kept(uow, person_id, profile, None, now)
    learned = taught_by(taught, profile.model_copy(update={"learned": learned}))
    if learned is None:
        learned = Learned(on=taught[0].day)
    seen, _ = await uow.scores.seen_until(person_id, newest)
    learned = learned.model_copy(update={"seen": seen, "until": newest})
    return await _kept(uow, person_id, profile, learned, now)


async def learn_anew(uow: Unit, now: datetime) -> int:
    """All of it once more, from the scores that are kept; of how many people."""
    people = await uow.scores.scored()
    for person_id, name in people:
        profile = await uow.profiles.get(person_id, name)
        await with_learned(uow, person_id, profile.model_copy(update={"learned": None}), now)
    return len(people)


def taught_by(done: Sequence[Done], profile: Profile) -> Learned | None:
    """What these leave, whatever order they come in. A newer test of a movement says more than older scores did."""
    learned = profile.learned
    if learned is not None:
        tested = [
            one.movement
            for one in profile.evidence
            if one.kind == "test" and one.on is not None and one.on >= learned.on
        ]
        learned = learned.without({name for movement in tested for name in tuple(strength_of(movement))[1:]})
    lessons = [
        Taught(one.version, block, one.score, one.day, one.effort)
        for one in sorted(done, key=lambda one: (one.day, one.score_id))
        for block in one.version.blocks
        if block.block == one.block + 1
    ]
    return learned_from(lessons, profile, catalogue(), learned)


async def _kept(
    uow: Unit, person_id: int, profile: Profile, learned: Learned | None, now: datetime
) -> Profile:
    after = profile.model_copy(update={"learned": learned})
    await uow.profiles.save(person_id, after, now)
    return after
