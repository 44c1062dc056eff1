"""Words for whoever wants nothing unasked."""

from bot.words.wording import Button, Worded, wording
from core.desk.commands import OnlyAnswer
from core.desk.talk.says import AnswersOnly, NothingToUndo


@wording("en", NothingToUndo)
def nothing_to_undo(said: NothingToUndo) -> Worded:
    named = (
        "<i>take it back for Ilse</i>, <i>withdraw friday's</i>, <i>stop holding Ilse</i>, <i>delete Ilse's score</i>"
        if said.coach
        else "<i>delete my score</i>, <i>I sold the kettlebell</i>, <i>my knee is fine again</i>"
    )
    return Worded(f"There's nothing of just now that I could take back. Name it and I will: {named}.")


@wording("en", AnswersOnly)
def answers_only(said: AnswersOnly) -> Worded:
    if not said.yes:
        return Worded("Good. You get reminders and questions from me again.")
    return Worded(
        "All right: from now on I only answer when you write. No reminders, no questions. "
        "If you change your mind, tap below or write <i>remind me again</i>.",
        ((Button("Message me again", OnlyAnswer(yes=False)),),),
    )
