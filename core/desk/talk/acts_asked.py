"""What an athlete asks: each act with its use case, the same that its button has."""

import re
from typing import Final, Literal

from core.athletes.easing import WEEK
from core.athletes.limits import limits
from core.athletes.values import Branch, Screening
from core.desk.coached import coached_groups
from core.desk.commands import AskHelp, MyVersion, SeeBoard
from core.desk.days import LOOKS_BACK, today_in
from core.desk.outcome import Outcome
from core.desk.scores.history import past_scores
from core.desk.scores.progress import progress
from core.desk.scores.scoreboard import see_board
from core.desk.scores.which import WhichSession, shown_since, told_day
from core.desk.sessions.says import NothingOfDay
from core.desk.talk.asked import KEPT_BY
from core.desk.talk.explaining import explain, explained, longest_name
from core.desk.talk.helping import show_help
from core.desk.talk.not_got import word_for_coach
from core.desk.talk.says import (
    AnyTimeWillDo,
    HowItFeelsDecides,
    HowLongItIs,
    LessWillDo,
    WhatIsAsked,
    WhatItGoesBy,
)
from core.desk.talk.scene import Scene
from core.desk.versions.expecting import minutes_of_theirs, outlooks_of
from core.desk.versions.says import LinesTold
from core.desk.versions.telling import tell_lines
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.notation.coaching.easing import monday_of
from core.sessions.length import minutes_of
from core.understanding import acts as a


async def version(visit: Visit, _: a.Act, scene: Scene) -> Outcome | None:
    """Of the day that is named, where there was a session; else of the one before them."""
    of_day = await told_day(visit, scene.text, await shown_since(visit, LOOKS_BACK))
    return await my_version(visit, MyVersion(session=of_day[0].id if of_day else None))


async def why(visit: Visit, act: a.Why | a.HowHeavy, scene: Scene) -> Outcome | None:
    """Of the lines that are meant; what it will go by, and what is still asked for it, where they have none yet."""
    about: Literal["why", "how_heavy"] = "why" if isinstance(act, a.Why) else "how_heavy"
    if scene.version is None:
        return visit.told(WhatItGoesBy()) + await my_version(visit, MyVersion())
    return await tell_lines(visit, scene.version, about, act.movement, act.text)


async def why_so(visit: Visit, words: str, version: int) -> Outcome | None:
    """Why the lines are so that are spoken of by how they are done: `whats with the chest height thing`."""
    told = await tell_lines(visit, version, "why", None, words)
    return told if any(isinstance(one.what, LinesTold) and one.what.spoken for one in told.says) else None


async def how_long(visit: Visit, act: a.HowLong | a.HowToPace, scene: Scene) -> Outcome | None:
    """What the session says of itself, and what is expected of whoever has their version of it."""
    if scene.record is None:
        return None
    minutes, capped = minutes_of(scene.record.session)
    aims = [block.aim for block in scene.record.session.blocks if block.aim and block.aim.of == "score"]
    aim = (aims[0].low, aims[0].high) if aims else None
    paced = isinstance(act, a.HowToPace)
    outlooks = await outlooks_of(visit, scene.record)
    theirs = await minutes_of_theirs(visit, scene.record) if minutes is None else None
    return visit.told(
        HowLongItIs(minutes=minutes, capped=capped, theirs=theirs, aim=aim, paced=paced, outlooks=outlooks)
    )


async def how_to(visit: Visit, act: a.HowTo, scene: Scene) -> Outcome | None:
    """Where nothing is named that could be explained, it is what we asked, or how a line of theirs is done."""
    if act.movement is None and act.term is None:
        asked = await what_is_asked(visit)
        return asked or (await why_so(visit, act.text, scene.version) if scene.version else None)
    if act.term:
        return explained(visit, act.term)
    return await explain(visit, longest_name(act.text) or act.movement) if act.movement else None


async def history(visit: Visit, act: a.MyHistory, _: Scene) -> Outcome | None:
    return await past_scores(visit, act.movement)


# Beside others, getting on is a place on the board.
_BESIDE_OTHERS: Final = re.compile(
    r"\b(?:vs|versus|against|compared|others?|everyone|everybody|anyone|the (?:group|rest|team|board)|place|rank)\b",
    re.IGNORECASE,
)


async def getting_on(visit: Visit, act: a.MyProgress, scene: Scene) -> Outcome | None:
    if _BESIDE_OTHERS.search(act.text) and scene.record is not None:
        return await see_board(visit, SeeBoard(session=scene.record.id))
    return await progress(visit)


async def board(visit: Visit, act: a.Board, scene: Scene) -> Outcome | None:
    """Of the day that is named, where there was a session; of last week's, of several it is asked which."""
    if scene.replied_to is None and _LAST_WEEK.search(scene.text):
        return await board_of_last_week(visit)
    of_day = await told_day(visit, scene.text, await shown_since(visit, LOOKS_BACK)) if act.day else None
    if of_day:
        return await see_board(visit, SeeBoard(session=of_day[0].id))
    return await see_board(visit, SeeBoard(session=scene.record.id if scene.record else None))


_LAST_WEEK: Final = re.compile(r"\blast (?:week|wk)\b", re.IGNORECASE)


async def board_of_last_week(visit: Visit) -> Outcome | None:
    """Raises WhichSession where there were several."""
    for group in await visit.group_ids():
        monday = monday_of(today_in(await visit.group(group), visit.now)) - WEEK
        shown = await visit.uow.sessions.posted_since(group, visit.now - 2 * WEEK)
        found = [one.id for one in reversed(shown) if monday <= one.day < monday + WEEK]
        if len(found) > 1:
            raise WhichSession(tuple(found))
        if found:
            return await see_board(visit, SeeBoard(session=found[0]))
    return visit.told(NothingOfDay()) if await coached_groups(visit) else await see_board(visit, SeeBoard())


async def is_it_ok(visit: Visit, _: a.IsItOk, scene: Scene) -> Outcome | None:
    """Nobody here can see them: licensed care comes first where there is any, then the coach, then how it feels."""
    profile = await visit.profile()
    conditions = tuple(
        one.id for one in limits() if one.kind == "condition" and one.id in (profile.limits or ())
    )
    # Whoever is only out of training needs no doctor's word.
    branch = None if profile.branch is Branch.HEALTHY_INACTIVE else profile.branch
    careful = branch is not None and branch.screening is not Screening.CLEAR
    word = await word_for_coach(visit, scene.text)
    return visit.told(
        HowItFeelsDecides(conditions=conditions, careful=careful, version=scene.version, word=word)
    )


async def another_time(visit: Visit, _: a.AnotherTime, __: Scene) -> Outcome | None:
    return visit.told(AnyTimeWillDo()) if await visit.memberships() else None


async def does_less(visit: Visit, _: a.DoesLess, scene: Scene) -> Outcome | None:
    return visit.told(LessWillDo(version=scene.version)) if await visit.memberships() else None


# `What can you do`, `what can I write`: all there is, whatever is open.
_ALL_THERE_IS: Final = re.compile(
    r"\b(?:can|could) (?:you|u|i|we) (?:do|write|type|say|send|ask)\b|\bcommands?\b", re.IGNORECASE
)


async def help_(visit: Visit, act: a.Help, _: Scene) -> Outcome | None:
    """`What do I press`: of what is open, if anything is."""
    asked = None if _ALL_THERE_IS.search(act.text) else await what_is_asked(visit)
    return asked or await show_help(visit, AskHelp())


async def what_is_asked(visit: Visit) -> Outcome | None:
    """The open question in plain words; None where none is open, or people asked it."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind in KEPT_BY["any_time"]:
        return None
    return visit.told(WhatIsAsked(kind=question.kind))
