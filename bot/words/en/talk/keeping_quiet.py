"""Words for whoever wants nothing unasked."""

from bot.words.wording import Button, Worded, wording
from core.desk.commands import OnlyAnswer
from core.desk.talk.says import AnswersOnly


@wording("en", AnswersOnly)
def answers_only(said: AnswersOnly) -> Worded:
    if not said.yes:
        return Worded("Good. You get reminders and questions from me again.")
    return Worded(
        "All right: from now on I only answer when you write. No reminders, no questions. "
        "If you change your mind, tap below or write <i>remind me again</i>.",
        ((Button("Message me again", OnlyAnswer(yes=False)),),),
    )
