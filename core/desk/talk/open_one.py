"""The question that is open: its answer, what is told beside it or in place of it, and that it is asked once more."""

from collections.abc import Awaitable, Callable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from core.desk.joining.door import DOOR
from core.desk.joining.entry import CONSENT, ENTRY, ask_entry_again
from core.desk.outcome import Outcome
from core.desk.scores.bare_loads import SETTING_UP
from core.desk.scores.whose import own_score
from core.desk.talk.acts import as_other_matter, carry_out
from core.desk.talk.asked import ASKED_TWICE, KEPT_BY, SAID_AGAIN, WHILE_SCREENED, OfScore, asked_in
from core.desk.talk.beside_answer import other_told, rest_beside
from core.desk.talk.not_got import not_got
from core.desk.talk.only_asked import as_question
from core.desk.talk.says import GoOnLater
from core.desk.talk.scene import scene_of
from core.desk.talk.typed_meanwhile import (
    is_age_asked_for,
    is_said_of_score,
    is_stale,
    only_asks,
    reads_as_score,
    score_before_entry,
    tells_age_asked_for,
)
from core.desk.talk.understood import in_own_words, matter
from core.desk.versions.answers import ask_again, tell_answer
from core.desk.visit import Visit
from core.notation.body.limits import read_limits
from core.notation.talk.chat import asks, is_like_a_score
from core.store.records import OpenQuestion

# Whatever is typed is an answer to these, so words that are none would be passed on.
ASKED_BY_PEOPLE = frozenset({"coach", DOOR})
Reading = Callable[[Visit, str, int | None], Awaitable[Outcome | None]]
Answer = Callable[[Visit, str, int | None], Awaitable[Outcome]]
Answers = Mapping[str, Callable[[Visit, Mapping[str, Any], str], Awaitable[Outcome]]]


@dataclass(frozen=True, slots=True)
class OpenOne:
    """`read` reads what is no answer; `answers`: who takes what is typed, by the kind of question."""

    read: Answer
    answers: Answers

    async def as_asked(self, visit: Visit, text: str, session: int | None) -> Outcome | None:
        """Nothing of it is an answer to what is open, which is asked once more behind it."""
        question = await visit.uow.questions.open_in(visit.chat)
        if question is not None and (question.kind in ENTRY or question.kind in KEPT_BY["any_time"]):
            return None
        asked = await as_question(visit, text, session)
        if asked is None:
            return None
        return await self.then_still_open(visit, question, asked, asks=True) if question else asked

    def beside(self, reading: Reading) -> Reading:
        """The reading; and what is open, and wasn't about that, is asked once more behind it."""

        async def read(visit: Visit, text: str, session: int | None) -> Outcome | None:
            question = await visit.uow.questions.open_in(visit.chat)
            outcome = await reading(visit, text, session)
            is_asked = "?" in text or asks(text)
            return (
                await self.then_still_open(visit, question, outcome, asks=is_asked, of_it=False)
                if outcome and question
                else outcome
            )

        return read

    async def as_answer(self, visit: Visit, text: str, session: int | None) -> Outcome | None:
        question = await visit.uow.questions.open_in(visit.chat)
        if question is None or question.kind == DOOR:
            return None
        if question.kind == CONSENT:
            return await self.consented(visit, question, text, session)
        asked = asked_in(question)
        if isinstance(asked, OfScore) and not is_said_of_score(asked, text, visit.person.id):
            return None
        return await self.answered(visit, question, text, session)

    async def consented(
        self, visit: Visit, question: OpenQuestion, text: str, session: int | None
    ) -> Outcome:
        """What is told of oneself beside a yes counts from that on: `yes, and I have asthma`."""
        done = await self.answered(visit, question, text, session)
        told = [act for act in matter(in_own_words(text)) if act.act in WHILE_SCREENED]
        if not told or not await visit.uow.consents.given(visit.person.id):
            return done
        kept, _ = await carry_out(visit, told, await scene_of(visit, text, session))
        return (kept or Outcome()) + done

    async def answered(self, visit: Visit, question: OpenQuestion, text: str, session: int | None) -> Outcome:
        """As an answer, with what else it tells; the question once more where it is none."""
        beside = await self.more_than_answer(visit, question, text, session)
        if beside is not None:
            return beside
        other = await as_other_matter(visit, question, text, session)
        if other is None:
            return await self.answer(visit, question, text, session)
        # `No pain` is no number of push-ups, whatever it looks like.
        if not other.says:
            return await ask_again(visit, question.refs, "" if question.refs.get("again") else text)
        if tells_age_asked_for(question, text):
            return other + await self.answer(visit, question, text, session)
        return await self.then_still_open(visit, question, other, asks=only_asks(text, question))

    async def more_than_answer(
        self, visit: Visit, question: OpenQuestion, text: str, session: int | None
    ) -> Outcome | None:
        """An answer with more beside it, or what is told of another movement or part than was asked for."""
        beside = await other_told(visit, question, text)
        if beside is not None:
            return await self.then_still_open(visit, question, beside, asks=True)
        rest = rest_beside(question, text)
        if rest is None:
            return None
        await visit.uow.questions.close(visit.chat)
        done = await self.read(visit, rest, session)
        answered = await tell_answer(visit, question.refs, text)
        return done + answered if answered else None

    async def then_still_open(
        self, visit: Visit, question: OpenQuestion, done: Outcome, *, asks: bool = False, of_it: bool = True
    ) -> Outcome:
        """What was done, and the question once more behind it, where that didn't ask it anew.

        Whoever asks something is about to answer: it doesn't let go. Behind what isn't asked of it (`of_it`) it is said
        once more, and then waits in silence.
        """
        if question.kind == "score" and question.refs.get("athlete", visit.person.id) != visit.person.id:
            return done  # it can still be tapped, but nobody is asked twice about somebody else
        now_open = await visit.uow.questions.open_in(visit.chat)
        goes_on = asks and now_open == question and question.kind not in ASKED_BY_PEOPLE | ENTRY
        again = await (
            self.waiting(visit, question, of_it=of_it) if goes_on else self.still_open(visit, question)
        )
        said = {type(one.what) for one in done.says}
        return done + replace(again, says=tuple(one for one in again.says if type(one.what) not in said))

    async def waiting(self, visit: Visit, question: OpenQuestion, *, of_it: bool) -> Outcome:
        if of_it:
            return await self.open_again(visit) or Outcome()
        return Outcome() if question.refs.get(SAID_AGAIN) else await self.say_again(visit, SAID_AGAIN)

    async def still_open(self, visit: Visit, question: OpenQuestion) -> Outcome:
        """The question once more, unless what was done closed it or asked it anew; then it lets go.

        Consent and safety alone are asked until they are answered.
        """
        now_open = await visit.uow.questions.open_in(visit.chat)
        if now_open != question:
            return Outcome()
        entry = await ask_entry_again(visit)
        if entry is not None:
            return entry
        if question.refs.get(ASKED_TWICE):
            await visit.uow.questions.close(visit.chat)
            return visit.told(GoOnLater()) if question.kind in SETTING_UP else Outcome()
        return await self.say_again(visit, ASKED_TWICE)

    async def say_again(self, visit: Visit, beside: str) -> Outcome:
        """The question once more, which is kept with it."""
        again = await self.open_again(visit)
        now_open = await visit.uow.questions.open_in(visit.chat)
        if again is not None and now_open is not None:
            refs = {**now_open.refs, beside: True}
            await visit.uow.questions.ask(visit.chat, now_open.kind, refs, visit.now)
        return again or Outcome()

    async def open_again(self, visit: Visit) -> Outcome | None:
        """The open question once more; None where none is open that is the visitor's alone."""
        question = await visit.uow.questions.open_in(visit.chat)
        if question is None or question.kind in ASKED_BY_PEOPLE:
            return None
        if await is_stale(visit, question):
            await visit.uow.questions.close(visit.chat)
            return None
        return await self.answer(visit, question, "")

    async def what_is_open(self, visit: Visit) -> Outcome | None:
        """The same, of the questions of the start in one line."""
        return await ask_entry_again(visit) or await self.open_again(visit)

    async def answer(
        self, visit: Visit, question: OpenQuestion, text: str, session: int | None = None
    ) -> Outcome:
        """What was typed as the answer; where it reads only as a score, as that; else the question once more."""
        if question.kind == "pain" and is_like_a_score(text) and read_limits(text).limits is None:
            told = await own_score(visit, text, session)
            if told is not None:
                return told
        bare = text.strip(" .,!").isdigit()
        if (
            question.kind in ENTRY
            and is_like_a_score(text)
            and not bare
            and not is_age_asked_for(question, text)
        ):
            return await score_before_entry(visit, text)
        if question.kind in self.answers:
            return await self.answers[question.kind](visit, question.refs, text)
        taken = await tell_answer(visit, question.refs, text)
        if taken is not None:
            return taken
        # A bare number was meant as the answer, even where it is none.
        is_one = not bare and (is_like_a_score(text) or await reads_as_score(visit, text, session))
        scored = await own_score(visit, text, session) if is_one else None
        return scored or await self.as_no_answer(visit, question, text, session)

    async def as_no_answer(
        self, visit: Visit, question: OpenQuestion, text: str, session: int | None
    ) -> Outcome:
        """The question once more; a question of theirs that nobody here can answer goes to the coach, if they like."""
        if not asks(text):
            return await ask_again(visit, question.refs, text)
        asked = await not_got(visit, (text,), (), await scene_of(visit, text, session))
        return asked + await ask_again(visit, question.refs, "")
