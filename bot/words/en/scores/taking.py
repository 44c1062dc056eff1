"""Words for scores that are told, asked and put right."""

import re
from datetime import date
from typing import Final

from bot.words.en.scores.scoreboard import short_day
from bot.words.text import escape, fill, listed
from bot.words.versions import sided
from bot.words.wording import Button, DoorButton, Row, Worded, in_rows, wording
from core.athletes.values import Complaint
from core.desk.commands import (
    ChangeAnswer,
    ClaimAsWritten,
    ConfirmScore,
    FixScore,
    GiveConsent,
    LeaveScore,
    MarkScore,
    MeanSession,
    PickScore,
    ScoreThis,
    TakeScoreBack,
    WeighThis,
)
from core.desk.scores.says import (
    AskScore,
    AskScoreAgain,
    AskToReplace,
    AskWhatWeighs,
    AskWhichGoes,
    AskWhichScore,
    AskWhose,
    NobodyCalled,
    NoPartForIt,
    NoSuchScore,
    NotForScore,
    OffTheBoard,
    ScoreEntered,
    ScoreLeft,
    ScoreNeedsAge,
    ScoreNeedsConsent,
    ScoreNoted,
    ScoreTakenBack,
    SessionChoice,
    SomebodyElses,
)
from core.desk.versions.commands import ReviewLimit
from core.measures import in_words as load_in_words
from core.scaling.values import Ask

WAY_IN = "Shall the next session fit you? Talk to me in private."


@wording("en", AskWhatWeighs)
def ask_what_weighs(said: AskWhatWeighs) -> Worded:
    own = "your own weight, " if said.may_be_own else ""
    text = fill(
        "Is <b>{mass}</b> {own}something you train with, or a score? I note nothing before I know.",
        mass=load_in_words(said.kg, said.units),
        own=own,
    )
    others: Row = (
        Button("Something I train with", ChangeAnswer(ask=Ask.EQUIPMENT)),
        Button("A score", ScoreThis(session=said.session, kg=said.kg)),
    )
    weight: Row = (Button("My weight", WeighThis(kg=said.kg)),)
    return Worded(text, (weight, others) if said.may_be_own else (others,))


@wording("en", ScoreNoted)
def score_noted(said: ScoreNoted) -> Worded:
    hurt = said.score.pain and not said.for_whom
    best = "That's your best yet at this one!" if said.is_best and not hurt else ""
    cheer = "" if hurt else standing(said)
    parts = [spare(said) if hurt else "", noted(said), best, cheer, unseen(said)]
    return Worded("\n".join(part for part in parts if part), rows_under(said))


def noted(said: ScoreNoted) -> str:
    kind = ("scaled" if said.score.scaled else "as written") + short_day(said.score)
    part = f", part {said.part}" if said.part else ""
    own = "Put right" if said.corrected else "Noted"
    verb = f"Noted for {said.for_whom}" if said.for_whom else own
    where = f" in {said.group}" if said.group else ""
    return fill(
        "{verb}{where}{part}: <b>{score}</b>, {kind}{session}.",
        verb=verb,
        where=where,
        part=part,
        score=said.text,
        kind=kind,
        session=of_session(said.title, said.day),
    )


def of_session(title: str | None, day: date | None) -> str:
    """Nobody should wonder where it went."""
    if day is None:
        return ""
    named = title if title and title.casefold() != f"{day:%A}".casefold() else None
    return f", for “{named}” on {day:%A}" if named else f", for {day:%A}'s session"


STOPPED = "stop"


def spare(said: ScoreNoted) -> str:
    """The joints that are named; before the group, what hurts is nobody's business but theirs."""
    named = listed([sided(joint, side) for joint, side in said.hurting.items()])
    where = f"your {named}" if named and not said.in_group else "that"
    stopped = STOPPED in (said.score.note or "") or said.score.capped
    return fill("I'm sorry about {where}{stopped}.", where=where, stopped=": well stopped" if stopped else "")


def unseen(said: ScoreNoted) -> str:
    """Why it stands with the scaled ones, said once of a session."""
    if not may_claim(said) or said.again:
        return ""
    if said.score.claimed and not said.unseen:
        return "Your version from me was lighter, so it's with the scaled ones. Did you do it all as written? Tap below."
    return "You haven't had a version from me, so I've put it with the scaled ones. Was it all as written? Tap below."


def may_claim(said: ScoreNoted) -> bool:
    """Whether only they know if it was done as written."""
    scaled = said.score.scaled and not said.for_whom and said.rank is not None
    return scaled and (said.unseen or said.score.claimed)


def rows_under(said: ScoreNoted) -> tuple[Row, ...]:
    if said.for_whom:
        return ((Button("Take it back", MarkScore(score=said.score_id, mark="not_counted")),),)
    of_part = f"Part {said.part}: " if said.part else ""
    row = (
        Button(f"{of_part}Not right", FixScore(score=said.score_id)),
        Button(f"{of_part}Take it back", TakeScoreBack(score=said.score_id)),
    )
    claim: Row = (
        (Button("It was as written", ClaimAsWritten(score=said.score_id)),) if may_claim(said) else ()
    )
    return (claim, row) if claim else (row,)


def standing(said: ScoreNoted) -> str:
    if said.for_whom:
        return "" if said.rank is None else fill("Place {rank} of {of}.", rank=said.rank, of=said.of)
    return unplaced(said) if said.rank is None else placed(said, said.rank)


def unplaced(said: ScoreNoted) -> str:
    if said.apart:
        return "It was other work than the others did, so it stands on the board without a place. Well done!"
    if said.in_group:
        return "Well done!"  # why there is no rank is nobody's business but theirs
    if STOPPED in (said.score.note or ""):
        return (
            "What made you stop? If something hurts, or you feel dizzy or odd, sit down and tell me. If it was simply enough, "
            "that was the right thing to do."
        )
    return "No rank today, as you train gently: feeling good afterwards is the point. Well done."


def placed(said: ScoreNoted, rank: int) -> str:
    if said.of == 1:
        return "Well done!" if said.again else "You're the first on the board. Well done!"
    if rank > said.of / 2:
        return "You're on the board. Well done!"  # nobody needs to be told that they are last
    return fill("That's place {rank} of {of} so far. Well done!", rank=rank, of=said.of)


@wording("en", AskWhose)
def ask_whose(said: AskWhose) -> Worded:
    session = of_session(said.title, said.day).removeprefix(",")
    if said.name is None:
        text = fill(
            "Is <b>{text}</b> your own score{session}? It goes on the board only if you say so.",
            text=said.text,
            session=session,
        )
        yes = Button("Yes, it's mine", ConfirmScore(session=said.session))
    else:
        text = fill(
            "Shall I note <b>{text}</b> as {name}'s score{session}?",
            text=said.text,
            name=said.name,
            session=session,
        )
        yes = Button(f"Yes, for {said.name}"[:60], ConfirmScore(session=said.session))
    return Worded(text, ((yes, Button("No", LeaveScore(session=said.session))),))


@wording("en", NobodyCalled)
def nobody_called(said: NobodyCalled) -> Worded:
    return Worded(
        fill(
            "I know nobody called {names} in {group}, so I've noted nothing. Once they've tapped <i>Start with me</i> "
            "in the group, write it again.",
            names=" or ".join(said.names),
            group=said.group,
        )
    )


@wording("en", ScoreLeft)
def score_left(said: ScoreLeft) -> Worded:
    if said.unknown:
        return Worded(
            "That's fine: it needs no number. If one comes back to you, write it whenever you like."
        )
    if said.words is None:
        return Worded("All right, I've noted nothing.")
    text = "I don't know which part “{words}” belongs to, so I've noted nothing. Write it again with its part whenever you like."
    return Worded(fill(text, words=said.words))


@wording("en", ScoreNeedsConsent)
def score_needs_consent(said: ScoreNeedsConsent) -> Worded:
    if said.of is not None:
        text = "I keep nothing of {name} yet, so I can't put that on the board. Once they have said yes to me in private, I can."
        return Worded(fill(text, name=said.of))
    text = "Well done! I keep nothing of you without your yes, so it isn't on the board."
    if said.in_group:
        return Worded(f"{text} {WAY_IN}", ((DoorButton("Talk to me", f"g{said.group}"),),))
    yes = Button("Yes, keep my notes", GiveConsent(group=said.group))
    return Worded(f"{text} If you'd like to be, tap below and write me your score again.", ((yes,),))


@wording("en", ScoreNeedsAge)
def score_needs_age(said: ScoreNeedsAge) -> Worded:
    if said.of is not None:
        text = "{name} hasn't told me yet that they're 18 or older, and I only work with adults. So I can't put that on the board."
        return Worded(fill(text, name=said.of))
    return Worded(
        "Well done! The board is for all to see and I only work with adults, so I need one answer first. Then write me your score again."
    )


@wording("en", ScoreEntered)
def score_entered(said: ScoreEntered) -> Worded:
    text = fill("{by} noted your score for you: <b>{text}</b>.", by=said.by, text=said.text)
    return Worded(text, ((Button("Not right", FixScore(score=said.score_id)),),))


_YOUR: Final = re.compile(r"\byour\b")


@wording("en", AskScore)
def ask_score(said: AskScore) -> Worded:
    yes = ((Button("Yes, keep it so", ConfirmScore(session=said.meant)),),) if said.meant else ()
    labels = said.choices or tuple(f"Part {part}" for part in said.parts)
    picks = [Button(one, PickScore(session=said.session, nth=nth)) for nth, one in enumerate(labels, 1)]
    ask = f"{said.name}: {_YOUR.sub('their', said.ask)}" if said.name else said.ask
    return Worded(escape(ask), (*yes, *in_rows(picks, wide=2)))


@wording("en", AskScoreAgain)
def ask_score_again(said: AskScoreAgain) -> Worded:
    text = fill(
        "What should it be{session}? Write it as you'd say it, like {like}.",
        session=of_session(said.title, said.day),
        like=said.like,
    )
    return Worded(text)


@wording("en", AskToReplace)
def ask_to_replace(said: AskToReplace) -> Worded:
    told = "{name}'s score is <b>{before}</b> so far." if said.name else "You told me <b>{before}</b>."
    text = fill(
        f"{told} Shall it be <b>{{now}}</b> instead?", name=said.name or "", before=said.before, now=said.now
    )
    yes, no = ConfirmScore(session=said.session), LeaveScore(session=said.session)
    return Worded(text, ((Button("Yes, change it", yes), Button("No, leave it", no)),))


@wording("en", NoPartForIt)
def no_part_for_it(said: NoPartForIt) -> Worded:
    words = listed([f"“{one}”" for one in said.words])
    return Worded(fill("{words}: no part of this session is scored by that, so I left it.", words=words))


@wording("en", ScoreTakenBack)
def score_taken_back(said: ScoreTakenBack) -> Worded:
    return Worded(
        fill(
            "Taken off the board: {score}{part}. Write me a new one whenever you like.",
            score=said.text,
            part=of_part(said.part),
        )
    )


def of_part(part: int | None) -> str:
    return "" if part is None else f" (part {part})"


@wording("en", AskWhichGoes)
def ask_which_goes(said: AskWhichGoes) -> Worded:
    rows = [
        (Button(f"{one.text}{of_part(one.part)}"[:60], FixScore(score=one.score_id)),) for one in said.scores
    ]
    rows += [
        (Button(f"{sided(one.limit, one.side).capitalize()}: it's fine"[:60], fine(one, said.group)),)
        for one in said.pains
    ]
    return Worded("These of yours count. Which one isn't right?", tuple(rows))


def fine(told: Complaint, group: int) -> ReviewLimit:
    return ReviewLimit(group=group, limit=told.limit, asked=told.review_on.toordinal(), how="gone")


@wording("en", SomebodyElses)
def somebody_elses(said: SomebodyElses) -> Worded:
    more = "" if said.own else " How far did you get yourself?"
    return Worded(fill("“{words}” is theirs to tell me, so I've left it.{more}", words=said.words, more=more))


@wording("en", NoSuchScore)
def no_such_score(said: NoSuchScore) -> Worded:
    if said.athlete is None:
        return Worded("There's no score of yours that I could take away.")
    return Worded(fill("There's no score of {name}'s that I could take away.", name=said.athlete))


@wording("en", OffTheBoard)
def off_the_board(_: OffTheBoard) -> Worded:
    return Worded(
        "It's off the board: only you and your coach know it now. Tell me the same "
        "next time, as every score goes on the board unless you say so."
    )


@wording("en", NotForScore)
def not_for_score(_: NotForScore) -> Worded:
    return Worded("This session isn't scored. I'm glad you did it!")


@wording("en", AskWhichScore)
def ask_which_score(said: AskWhichScore) -> Worded:
    rows = tuple((Button(choice_words(one)[:50], MeanSession(session=one.session)),) for one in said.sessions)
    several = any(one.group for one in said.sessions)
    return Worded(
        "You train in several groups. Which one is that for?" if several else "Which session is that for?",
        rows,
    )


def choice_words(one: SessionChoice) -> str:
    if one.group:
        return one.group
    what = one.title or (f"like {one.like}" if one.like else "without a title")
    return f"{one.day:%A}: {what}"


# Places count on from one list to the next; without a word about it that looks like a mistake.
