"""What a message says of the body is heard before any open question is filled: medicines, and what training did to it.

The rest of the message goes on to whoever reads it; what is open stays open until something answers it.
"""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from typing import Final

from core.athletes.complaints import healed
from core.desk.coached import coached_groups
from core.desk.joining.door import show_way_in
from core.desk.joining.entering import tell_consent, tell_screening
from core.desk.joining.entry import CONSENT, SCREENING, ask_consent, held_answer
from core.desk.outcome import Outcome
from core.desk.profile.conditions import keep_spared
from core.desk.talk.asked import keeps
from core.desk.talk.not_got import short
from core.desk.talk.says import NotGot
from core.desk.talk.understood import in_own_words
from core.desk.today.says import HappenedInTraining, MedicinesGivenUp, MedicinesTold
from core.desk.versions.answers import tell_answer
from core.desk.visit import Visit
from core.notation.body.during import told_of_training
from core.notation.body.medicines import (
    GivenUp,
    ToldMedicines,
    ends_with_it,
    given_up,
    kinds_of,
    limits_of,
    medicines_in,
)
from core.notation.talk.chat import is_like_a_score
from core.notation.talk.yes_no import read_yes_no
from core.scaling.values import Ask
from core.understanding.acts import Condition
from core.understanding.marks import mark
from core.understanding.slots.body import tells_of_another

Answer = Callable[[Visit, str, int | None], Awaitable[Outcome]]
AskAgain = Callable[[Visit], Awaitable[Outcome | None]]
# Fewer words than this beside what was heard tell nothing of their own.
_WORDS_OF_A_MATTER: Final = 3


@dataclass(frozen=True, slots=True)
class BodyFirst:
    """The reading of what holds one of these; its rest is read by `read`, `ask_again` asks what is open once more."""

    read: Answer
    ask_again: AskAgain

    async def __call__(self, visit: Visit, text: str, session: int | None) -> Outcome | None:
        if not visit.private or await keeps(visit, "any_time") or await coached_groups(visit):
            return None
        ended = given_up(text)
        if ended is not None and not tells_of_another(mark(text)):
            return await self.without_medicines(visit, ended, session)
        told = medicines_in(text)
        if told is not None and not tells_of_another(mark(text)):
            return await self.with_medicines(visit, told, text, session)
        during = told_of_training(text)
        if during is None:
            return None
        rest = text.replace(during.clause, during.beside) if is_like_a_score(during.beside) else during.rest
        asks_that = {act.act for act in in_own_words(rest).acts} == {"is_it_ok"}
        said = visit.told(HappenedInTraining(what=during.what))
        return said + await self.of_rest(visit, "" if asks_that else rest, session)

    async def with_medicines(
        self, visit: Visit, told: ToldMedicines, text: str, session: int | None
    ) -> Outcome:
        means = visit.told(await meaning(visit, told))
        if not await visit.memberships():
            return means + await show_way_in(visit, short(text))
        question = await visit.uow.questions.open_in(visit.chat)
        if question is not None and question.kind == CONSENT:
            return means + await beside_consent(visit, question.refs["group"], told, text)
        if question is not None and question.kind == SCREENING and read_yes_no(text) is not None:
            kept = await keep_medicines(visit, told, text)
            return means + kept + await tell_screening(visit, question.refs, text)
        if question is not None and question.kind == Ask.LIMITS and told.taken:
            answered = await tell_answer(visit, question.refs, text)
            return means + (answered or await keep_medicines(visit, told))
        return means + await keep_medicines(visit, told) + await self.of_rest(visit, told.rest, session)

    async def without_medicines(self, visit: Visit, ended: GivenUp, session: int | None) -> Outcome | None:
        """Only a doctor takes somebody off them, which is said; what was kept of them goes with them."""
        if not await visit.memberships() or not await visit.uow.consents.given(visit.person.id):
            return None
        profile = await visit.profile()
        before = profile.limits or ()
        kinds = kinds_of(before) if ended.kinds == ("unknown",) else ended.kinds
        gone = tuple(one for kind in kinds if (one := ends_with_it(kind)) in before)
        await visit.uow.profiles.save(visit.person.id, healed(profile, *gone), visit.now)
        stays = any(one in before for one in limits_of(kinds) if one not in gone)
        said = visit.told(MedicinesGivenUp(gone=gone, stays=stays, by_doctor=ended.by_doctor))
        return said + await self.of_rest(visit, ended.rest, session)

    async def of_rest(self, visit: Visit, rest: str, session: int | None) -> Outcome:
        if any(one.isalnum() for one in rest):
            done = await self.read(visit, rest, session)
            lost = any(isinstance(say.what, NotGot) for say in done.says)
            if not lost or len(rest.split()) >= _WORDS_OF_A_MATTER:
                return done
        return await self.ask_again(visit) or Outcome()


async def beside_consent(visit: Visit, group: int, told: ToldMedicines, text: str) -> Outcome:
    """With a yes beside it, it is kept; else it is said that it wasn't."""
    if read_yes_no(text) is None:
        return await ask_consent(visit, group, again=True, unkept=short(text))
    after = await tell_consent(visit, {"group": group}, text)
    return await keep_medicines(visit, told, text) + after


async def meaning(visit: Visit, told: ToldMedicines) -> MedicinesTold:
    """What is named without a name is what they told before."""
    if told.kinds != ("unknown",):
        return MedicinesTold(kinds=told.kinds, takes=bool(told.taken))
    before = kinds_of((await visit.profile()).limits or ())
    return MedicinesTold(kinds=before or told.kinds, takes=bool(before or told.taken))


async def keep_medicines(visit: Visit, told: ToldMedicines, words: str = "") -> Outcome:
    """As conditions, with what else the same `words` tell: `pills since the stent`."""
    if not told.taken or not await visit.uow.consents.given(visit.person.id):
        return Outcome()
    beside = [
        one
        for act in in_own_words(words or told.words).acts
        if isinstance(act, Condition)
        for one in act.limits
    ]
    profile = await visit.profile()
    before = profile.limits or ()
    new = [one for one in (*limits_of(told.taken), *beside) if one not in before]
    if not new:
        return await held_answer(visit) or Outcome()
    if profile.limits is None:
        unasked = profile.model_copy(update={"spares_unasked": True})
        await visit.uow.profiles.save(visit.person.id, unasked, visit.now)
    return await keep_spared(visit, tuple(dict.fromkeys(new)), words or told.words)
