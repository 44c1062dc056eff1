"""What a message only asks or supposes: it is answered, nothing of it is noted, and a yes takes it as told."""

from core.desk.access import admitted
from core.desk.classes.coming import see_classes
from core.desk.classes.commands import SeeClasses
from core.desk.coached import coached_groups
from core.desk.joining.entry import held_answer
from core.desk.outcome import Outcome
from core.desk.profile.commands import TakeAsTold
from core.desk.talk.acts import carry_out, near
from core.desk.talk.not_got import not_got, short, word_for_coach
from core.desk.talk.passing_on import own_word
from core.desk.talk.says import OnlyAsked
from core.desk.talk.scene import Scene, scene_of
from core.desk.talk.together import as_one
from core.desk.talk.understood import in_own_words, matter
from core.desk.visit import Visit
from core.understanding.values import Understood

# What nobody notes by a tap: a number in a question is mostly an example.
_BY_WORDS_ONLY = frozenset({"can", "weighs", "scored", "corrects", "effort", "has_minutes"})
_OF_CLASSES = frozenset({"joins_class", "leaves_class"})


async def as_question(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """None for what tells anything at all, and for a coach, whose questions are tried on the group."""
    if await coached_groups(visit) or not await visit.memberships():
        return None
    scene = await scene_of(visit, text, replied_to)
    question = await visit.uow.questions.open_in(visit.chat)
    told = in_own_words(text, scene.record.session if scene.record else None, question)
    if not told.asks:
        return None
    outcome, _ = await carry_out(visit, matter(told), scene)
    answered = as_one(visit, outcome) if outcome else await unanswered(visit, told, scene)
    return answered + await offered(visit, told, text) if outcome else answered


async def unanswered(visit: Visit, told: Understood, scene: Scene) -> Outcome:
    """Whether to come to a class is answered with the classes, where one can sign up."""
    if told.supposed and all(act.act in _OF_CLASSES for act in told.supposed):
        return await see_classes(visit, SeeClasses())
    offer = await offered(visit, told, scene.text)
    held = await held_answer(visit)
    return offer if offer.says else held or await not_got(visit, told.unread, near(told), scene)


async def offered(visit: Visit, told: Understood, text: str) -> Outcome:
    """Whether it is so after all, where noting it would change anything."""
    if all(act.act in _BY_WORDS_ONLY for act in told.supposed):
        return Outcome()
    return visit.told(OnlyAsked(words=short(text), word=await word_for_coach(visit, text)))


@admitted
async def take_as_told(visit: Visit, command: TakeAsTold) -> Outcome:
    """Yes, it is so."""
    word = await own_word(visit, command.word)
    scene = await scene_of(visit, word.text, None)
    told = in_own_words(word.text, scene.record.session if scene.record else None, as_told=True)
    outcome, _ = await carry_out(visit, matter(told), scene)
    await visit.uow.words.forget(word.id, visit.now)
    return (as_one(visit, outcome) if outcome else await not_got(visit, (), (), scene)) + Outcome(
        settles=True
    )
