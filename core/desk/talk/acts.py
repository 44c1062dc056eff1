"""The acts of a message, carried out one after the other.

All acts of a message go through the unit of work of its visit, and come back as one answer.
"""

import re
from collections.abc import Mapping, Sequence
from typing import Final, get_args

from core.athletes.limits import limit
from core.desk.coached import coached_groups
from core.desk.coaching.announcing import ask_announce
from core.desk.commands import AskHelp, MyVersion
from core.desk.joining.entry import ENTRY, SCREENING, held_answer
from core.desk.outcome import Outcome
from core.desk.scores.taking import may_be_confirmed
from core.desk.scores.whose import own_score
from core.desk.talk import acts_coached as coached
from core.desk.talk.acts_told import nothing_waits_for
from core.desk.talk.asked import (
    ANSWERED_BY,
    ASKED_FOR_VERSIONS,
    AT_ANY_TIME,
    BEFORE_ENTRY,
    HELD_ALL_THE_SAME,
    KEPT_BY,
    WHILE_HELD,
    WHILE_SCREENED,
    Topic,
    keeps,
)
from core.desk.talk.helping import show_help
from core.desk.talk.not_got import left_over, not_got, not_yet
from core.desk.talk.ordered import about_athlete
from core.desk.talk.says import HowItIsDone
from core.desk.talk.scene import Scene, scene_of
from core.desk.talk.together import as_one
from core.desk.talk.understood import as_opened, in_own_words, matter, understood
from core.desk.talk.use_cases import USE_CASES
from core.desk.versions.answers import ask_again, tell_answer
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.notation.body.healing import injured
from core.notation.body.limits import read_limits
from core.notation.edits.wordings import sounds_like_a_change
from core.notation.people import addressed
from core.notation.scores import read_parts, read_score
from core.notation.talk.chat import tells_of_kit, tells_other_work
from core.notation.talk.yes_no import calls_it_off, says_it_is_so
from core.scaling.values import Ask
from core.store.records import OpenQuestion
from core.understanding import acts as a
from core.understanding.understand import BESIDE
from core.understanding.values import Understood


async def do_as_told(visit: Visit, text: str, replied_to: int | None) -> Outcome:
    """Whatever of the words can be understood is done or answered, the rest is quoted: always an answer."""
    if not any(one.isalnum() for one in text):
        return await show_help(visit, AskHelp())
    if (calls_it_off(text) or says_it_is_so(text)) and await visit.memberships():
        return await nothing_waits_for(visit, agrees=says_it_is_so(text))
    scene = await scene_of(visit, text, replied_to)
    told = await understood(visit, text, scene.record.session if scene.record else None)
    if tells_every_part(told, scene):
        return as_one(visit, await own_score(visit, text, scene.replied_to) or Outcome())
    outcome, unread = await carry_out(visit, told.acts, scene)
    if outcome is None and await coached_groups(visit):
        own = in_own_words(text, scene.record.session if scene.record else None)
        of_oneself = [act for act in matter(own) if act.act in SAID_OF_ONESELF]
        outcome, _ = await carry_out(visit, of_oneself, scene)
        told = own if outcome else told
    if outcome is None and not told.acts and set(near(told)) <= ONLY_ANSWERED.keys():
        names = ("skips",) if "skips" in near(told) else near(told)
        outcome, _ = await carry_out(visit, [ONLY_ANSWERED[name](text=text) for name in names], scene)
        told = told if outcome is None else Understood()
    if outcome is None:
        like_one = not told.acts and _LIKE_A_SCORE.intersection(told.between)
        as_score = await own_score_amid_words(visit, text, scene, sure=bool(like_one))
        about = await about_athlete(visit, text) if "order" in near(told) or is_short_of(told) else None
        about = about or await for_everybody(visit, text)
        held = await held_answer(visit)
        return as_score or about or held or await not_got(visit, told.unread, near(told), scene)
    left = (*unread, *told.unread)
    return as_one(visit, outcome + (await left_over(visit, left) if left else Outcome()))


_OF_SCORES: Final = re.compile(r"\b(?:scores?|results?|times?)\b", re.IGNORECASE)


def is_short_of(told: Understood) -> bool:
    """Words that are like nothing, and ask nothing: of an athlete who is named they are rather an order."""
    left = "".join(told.unread)
    return not near(told) and not told.asks and "?" not in left and not _OF_SCORES.search(left)


async def for_everybody(visit: Visit, text: str) -> Outcome | None:
    """`Great job today everyone!` from a coach, which is nothing else: offered to be said to them."""
    words = set(re.findall(r"\w+", text.casefold()))
    if sounds_like_a_change(text):
        easier = words & {"easier", "lighter", "less", "gentler", "easy"}
        return visit.told(HowItIsDone(intentions=("easy", "change"))) if easier else None
    is_word = "?" not in text and not words.isdisjoint(EVERYBODY) and len(words) > 2  # noqa: PLR2004
    return await ask_announce(visit, text) if is_word else None


# What is most likely asked, if anything, and harms nobody where it wasn't.
ONLY_ANSWERED: Final = {"whats_coming": a.WhatsComing, "does_less": a.DoesLess, "skips": a.Skips}
EVERYBODY: Final = frozenset({"everyone", "everybody", "team", "folks", "guys", "yall"})


def tells_every_part(told: Understood, scene: Scene) -> bool:
    """Whether the parts of the session account for all the words: `60 kg, 6+3, 40 38 36` is one telling of three."""
    only_scores = all(isinstance(act, a.Scored) and act.person is None for act in matter(told))
    return only_scores and bool(scene.record and read_parts(scene.text, scene.record.session))


_LIKE_A_SCORE: Final = frozenset({"scored", "corrects", "did_scaled", "did_as_written"})


async def own_score_amid_words(visit: Visit, text: str, scene: Scene, *, sure: bool) -> Outcome | None:
    """What means nothing else, and reads as a score of the session before them, is asked about or taken as one.

    Not `sure`: the words are hardly like one, so that it is only asked: `I could do 12 push-ups once`.
    """
    if scene.record is None or tells_of_kit(text):
        return None
    read = read_score(text, scene.record.session)
    asked = read.score is not None and may_be_confirmed(read) and not (read.sure and not sure)
    is_one = asked or (sure and bool(read_parts(text, scene.record.session)))
    return await own_score(visit, text, scene.replied_to) if is_one else None


OF_COACH: Final = get_args(a.Coached)
# They tell of one score together: its readers take them as a whole.
OF_ONE_SCORE: Final = frozenset(
    {
        "scored",
        "corrects",
        "hurt",
        "sore",
        "nothing_hurt",
        "effort",
        "did_as_written",
        "did_scaled",
        "agrees",
        "declines",
    }
    | {"too_hard", "too_easy"}
)


async def as_announced(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """`Announce: ...` from a coach is a word for everybody, whatever stands behind the colon; `tell Rut: ...` isn't."""
    is_one = ":" in text and addressed(text) is None and await coached_groups(visit)
    order = as_opened(text) if is_one else None
    return await coached.announce(visit, order, await scene_of(visit, text, replied_to)) if order else None


async def as_clear_acts(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """Several things told in one message are heard before the open question.

    None for a coach's words, for one act that may be an answer, where not all can be taken, and where a thing is told
    with whose else it is, as the answer keeps both together.
    """
    if "\n" in text.strip() or await coached_groups(visit) or await keeps(visit, "any_time"):
        return None
    scene = await scene_of(visit, text, replied_to)
    question = await visit.uow.questions.open_in(visit.chat)
    told = in_own_words(text, scene.record.session if scene.record else None, question)
    acts = matter(told)
    names = {act.act for act in acts}
    told_apart = "shares" not in names and all(type(act) in USE_CASES for act in acts)
    # Of a list of what they can do one may be left over.
    several = len(names) > 1 or (names == {"can"} and bool(told.unread) and not answering(question, acts))
    if not several or names <= OF_ONE_SCORE or not told_apart:
        return None
    return None if await keeps(visit, "several") else await all_of_them(visit, told, scene, question)


# One of these is taken at once, wherever no open question keeps its topic.
AT_ONCE: Final[Mapping[str, Topic]] = {
    "weighs": "weight",
    "can": "ability",
    "has_minutes": "minutes",
    "condition": "condition",
    "trains": "ability",
    "shares": "any_time",
    "thanks": "thanks",
    "leaves_class": "any_time",
    "withdraw": "any_time",
    "post": "any_time",
    "who_reported": "any_time",
    "who_needs_me": "any_time",
    "what_if": "any_time",
    "roster": "any_time",
}


async def as_one_act(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """What is sure and stands alone, with no word left unread; None where it may be the answer to what is open."""
    if "\n" in text.strip():
        return None
    scene = await scene_of(visit, text, replied_to)
    question = await visit.uow.questions.open_in(visit.chat)
    told = await heard_alone(visit, scene, question)
    acts = matter(told) or told.acts
    if told.unread or not acts or any(act.act not in AT_ONCE for act in acts):
        return None
    # A coach who won't be there is asked whether the class is off.
    if any(isinstance(act, a.LeavesClass) for act in acts) and await coached_groups(visit):
        return None
    if any([await keeps(visit, AT_ONCE[act.act]) for act in acts]):
        return None
    outcome, unread = await carry_out(visit, acts, scene)
    if outcome is None or unread:
        return None
    return as_one(visit, outcome) + await gone_on(visit, question, acts)


async def as_other_matter(
    visit: Visit, question: OpenQuestion, text: str, replied_to: int | None
) -> Outcome | None:
    """What is surely told and answers nothing that is open is done all the same.

    None for all that may be the answer; nothing said where it is no answer, and nothing comes of it.
    """
    if question.kind in KEPT_BY["any_time"]:
        return None
    scene = await scene_of(visit, text, replied_to)
    # Any number may be a score where one is asked for: what else it is, it is without that, too.
    told = await heard_alone(visit, scene, None if question.kind == "score" else question)
    acts = matter(told)
    names = {act.act for act in acts}
    answers = ANSWERED_BY.get(question.kind)
    beside = names <= AT_ANY_TIME if answers is None else not any(is_answer(question, act) for act in acts)
    # What asks is no answer: it is quoted behind what is done.
    may_answer = any("?" not in words for words in told.unread)
    if not names or may_answer or not beside:
        return None
    if question.kind in ENTRY and not all(may_be_heard(question, act) for act in acts):
        return None
    outcome, undone = await carry_out(visit, acts, scene)
    left = (*undone, *told.unread)
    if outcome is not None:
        return as_one(visit, outcome + (await left_over(visit, left) if left else Outcome()))
    return Outcome() if question.kind in ASKED_FOR_VERSIONS else None


def is_answer(question: OpenQuestion, act: a.AnyAct) -> bool:
    """Legs that are sore today are nothing to spare from now on."""
    only_today = question.kind == Ask.LIMITS and isinstance(act, a.Sore) and is_of_training(act.text)
    return act.act in ANSWERED_BY[question.kind] and not only_today


def is_of_training(text: str) -> bool:
    """Whether what is sore is a muscle that was trained, or none that anybody spares."""
    found = read_limits(text).limits
    return found is None or (
        bool(found) and not injured(text) and all(limit(one).kind == "muscle" for one in found)
    )


def may_be_heard(question: OpenQuestion, act: a.AnyAct) -> bool:
    """Before consent and safety are settled nothing is told of oneself, but what they have once they agreed."""
    beside = BEFORE_ENTRY | WHILE_SCREENED if question.kind == SCREENING else BEFORE_ENTRY
    return act.act in beside or isinstance(act, OF_COACH)


async def heard_alone(visit: Visit, scene: Scene, question: OpenQuestion | None) -> Understood:
    """A coach's words as a coach's, if they say anything so; else as anybody's who trains."""
    session = scene.record.session if scene.record else None
    if await coached_groups(visit):
        told = await understood(visit, scene.text, session)
        if told.acts:
            return told
    return in_own_words(scene.text, session, question)


async def gone_on(visit: Visit, question: OpenQuestion | None, acts: Sequence[a.AnyAct]) -> Outcome:
    """A question about the profile is asked once more behind what was told beside it, or needs no answer any more."""
    names = {act.act for act in acts}
    if question is None or question.kind not in ASKED_FOR_VERSIONS or not names & BESIDE_THE_PROFILE:
        return Outcome()
    if question.kind == Ask.ABILITY and "can" in names:
        return await my_version(visit, MyVersion(session=question.refs["session"]))
    return await ask_again(visit, question.refs, "")


BESIDE_THE_PROFILE: Final = frozenset({"weighs", "can", "has_minutes", "trains"})


async def all_of_them(
    visit: Visit, told: Understood, scene: Scene, question: OpenQuestion | None
) -> Outcome | None:
    """First what is beside the open question, then its answer, as that goes on to the version."""
    acts = matter(told)
    answers = answering(question, acts)
    if question and not answers and question.kind not in ASKED_FOR_VERSIONS:
        return None
    outcome, unread = await carry_out(visit, [act for act in acts if act not in answers], scene)
    answered = await tell_answer(visit, question.refs, in_words(answers)) if question and answers else None
    done = (outcome or Outcome()) + (answered or Outcome())
    left = (*unread, *told.unread, *(() if answered else (act.text for act in answers)))
    if outcome is None and answered is None:
        return None
    done = as_one(visit, done + (await left_over(visit, left) if left else Outcome()))
    return done + (await asked_again(visit, question) if question and not answers else Outcome())


async def asked_again(visit: Visit, question: OpenQuestion) -> Outcome:
    """Nothing of it was an answer: the question, where it is still open."""
    is_open = await visit.uow.questions.open_in(visit.chat) == question
    return await ask_again(visit, question.refs, "") if is_open else Outcome()


def answering(question: OpenQuestion | None, acts: Sequence[a.AnyAct]) -> tuple[a.AnyAct, ...]:
    """The acts that answer what is open; none where nothing is."""
    return tuple(act for act in acts if question and act.act in ANSWERED_BY[question.kind])


def in_words(acts: Sequence[a.AnyAct]) -> str:
    return ", ".join(act.text for act in acts)


# Of these a coach speaks as anybody does who trains.
SAID_OF_ONESELF: Final = frozenset(
    {
        "my_version",
        "board",
        "when_is_class",
        "class_link",
        "home_again",
        "remind",
        "no_reminders",
        "quiet",
        "zone",
        "units",
    }
    | {"forget_me", "export_me", "my_data", "help", "how_to", "wants_timer", "worries"}
)


def near(told: Understood) -> tuple[str, ...]:
    """The names of the acts that the words may have been."""
    return tuple(dict.fromkeys((*told.between, *(act.act for act in told.acts))))


async def carry_out(
    visit: Visit, acts: Sequence[a.AnyAct], scene: Scene
) -> tuple[Outcome | None, tuple[str, ...]]:
    """What came of the acts, in their order, and the words of those of which nothing came."""
    outcome: Outcome | None = None
    unread = []
    held = await held_answer(visit)
    for act in of_one_work(without_echoes(acts), scene.text):
        barred = held if act.act not in WHILE_HELD and not isinstance(act, OF_COACH) else None
        done = barred or await one_done(visit, act, scene)
        if done is not None:
            outcome = (outcome or Outcome()) + done
        elif act.act not in BESIDE:
            unread.append(act.text)
    if outcome is not None and held and any(act.act in HELD_ALL_THE_SAME for act in acts):
        outcome += held
    return outcome, tuple(unread)


def of_one_work(acts: Sequence[a.AnyAct], text: str) -> list[a.AnyAct]:
    """What is told of how a score came about belongs to it; of work other than the session nothing is a score."""
    if tells_other_work(text):
        of_it = [act for act in acts if isinstance(act, a.Scored | a.DidScaled | a.DidAsWritten)]
        return [act for act in acts if act not in of_it[1:]]
    scored = any(isinstance(act, a.Scored | a.Corrects) for act in acts)
    return [act for act in acts if not (scored and isinstance(act, a.DidAsWritten))]


def without_echoes(acts: Sequence[a.AnyAct]) -> list[a.AnyAct]:
    """Told in the same words, the scores of several parts are one to whoever reads these, and so is a day off."""
    first = {(type(act), act.text): act for act in reversed(acts)}
    once = (a.Scored, a.ClassOff, a.TellsSession, a.Announce)
    return [act for act in acts if not isinstance(act, once) or first[type(act), act.text] is act]


async def one_done(visit: Visit, act: a.AnyAct, scene: Scene) -> Outcome | None:
    use_case = USE_CASES.get(type(act))
    done = await use_case(visit, act, scene) if use_case else None
    return done or await not_yet(visit, act)
