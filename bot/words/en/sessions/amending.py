"""Words for a change of a session that a coach asked for in words."""

from bot.words.text import fill, listed, plural
from bot.words.wording import Button, Worded, wording
from core.desk.commands import DiscardSession, MeanDraft, MeanLine, RestoreDraft
from core.desk.sessions.says import (
    AmendedAfterPost,
    AmountCarried,
    AskChangeOrNew,
    AskLine,
    DraftWrong,
    LineLike,
    MoreOften,
    NotAmended,
    SoAlready,
)
from core.measures import AmountUnit


@wording("en", AmendedAfterPost)
def amended_after_post(said: AmendedAfterPost) -> Worded:
    return Worded(
        fill(
            "The session in {group} stays as everybody saw it until you post this one: then the earlier post says "
            "that it was changed, and /today shows the new one.",
            group=said.group,
        )
    )


@wording("en", AmountCarried)
def amount_carried(said: AmountCarried) -> Worded:
    return Worded(
        fill(
            "You named no number, so “{was}” became <b>{now}</b>, which takes about as long. Rather another? "
            "Write it like <i>make the {name} 15</i>.",
            was=said.was,
            now=said.now,
            name=said.name,
        )
    )


HOW_TO_SAY = (
    "Write it like <i>make the row 200 m</i>, <i>change 10 push-ups to 8</i> or <i>swap the run for 20 burpees</i>, or "
    "send the whole session again."
)


@wording("en", NotAmended)
def not_amended(said: NotAmended) -> Worded:
    words = listed([f"“{one}”" for one in said.left])
    done = "I've changed the rest, but not this" if said.done else "I've changed nothing"
    text = fill("{done}: I can't tell what it should become by {words}. ", done=done, words=words)
    return Worded(text + (said_like(said.like) if said.like else HOW_TO_SAY))


def said_like(one: LineLike) -> str:
    """A change of a line that stands there: `make the run 200 m`."""
    name = plural(one.movement) if one.unit is AmountUnit.REPS else one.movement
    unit = {AmountUnit.METRES: " m", AmountUnit.SECONDS: " s", AmountUnit.KCAL: " kcal"}.get(one.unit, "")
    like = "Write it like <i>make the {name} {n}</i>, or send the whole session again."
    return fill(like, name=name, n=f"{one.amount}{unit}")


@wording("en", SoAlready)
def so_already(said: SoAlready) -> Worded:
    text = "That's how I have it: “{words}”. If the draft above looks otherwise to you, write the line as it should be."
    return Worded(fill(text, words=said.words))


@wording("en", MoreOften)
def more_often(said: MoreOften) -> Worded:
    return Worded(
        fill(
            "Mind the turns: <b>{line}</b> now comes up {now} times, where it was {was}. For a rest in the place of what "
            "you took out, write that turn as <i>rest</i>, or put something else in.",
            line=said.line,
            now=said.now,
            was=said.was,
        )
    )


@wording("en", AskLine)
def ask_line(said: AskLine) -> Worded:
    at = {"session": said.session_id, "revision": said.revision}
    rows = tuple((Button(words[:50], MeanLine(line=line, **at)),) for line, words in said.lines)
    return Worded(fill("“{wish}”: which line do you mean?", wish=said.wish), rows)


@wording("en", AskChangeOrNew)
def ask_change_or_new(said: AskChangeOrNew) -> Worded:
    where = f"the one in {said.group}" if said.group else "the one in hand"
    text = fill("“{text}”: a change of {where}, or a session of its own?", text=said.text, where=where)
    change = Button("A change", MeanDraft(session=said.session_id, new=False))
    new = Button("A new session", MeanDraft(session=said.session_id, new=True))
    return Worded(text, ((change, new),))


@wording("en", DraftWrong)
def draft_wrong(said: DraftWrong) -> Worded:
    at = {"session": said.session_id, "revision": said.revision}
    away = Button("Discard the draft", DiscardSession(**at))
    if said.earlier is None:
        return Worded(f"I haven't posted it. What should it be? {HOW_TO_SAY}", ((away,),))
    back = Button("Back to how it was", RestoreDraft(earlier=said.earlier, **at))
    return Worded(
        f"I haven't posted it. Shall I go back to how it was before? Or: {HOW_TO_SAY}", ((back,), (away,))
    )
