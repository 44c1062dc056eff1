"""Words for help, refusals, and what can't be read."""

from bot.words.text import bullets
from bot.words.wording import Worded, wording
from core.desk.errors import (
    AlreadyDone,
    NeedsConsent,
    NotAMember,
    NotHere,
    NotTheCoach,
    NotYours,
    StalePress,
    UnknownThing,
)
from core.desk.says.common import Help, Lost, NotText, Refused, Welcome

REFUSALS = {
    AlreadyDone: "That's done already, nothing to worry about.",
    NeedsConsent: "I keep nothing about you before you agree. Send /start and we'll begin there.",
    NotAMember: "That's for members of its group. If you've just joined, open the link in your group again.",
    NotHere: "Let's do that in our private chat.",
    NotTheCoach: "Only the coach can do that. If you coach this group, be one of its admins.",
    StalePress: "That button is from before something changed. The newest message is the one that counts.",
    NotYours: "That one is for whoever told me that score.",
    UnknownThing: "I can't find that any more. Send /help and we'll find our way.",
}

NOBODY_WATCHES = "Nobody watches this chat. In an emergency, call your local emergency number."


@wording("en", Refused)
def refused(said: Refused) -> Worded:
    kinds = {kind.__name__: words for kind, words in REFUSALS.items()}
    return Worded(kinds[said.why])


@wording("en", Help)
def help_(said: Help) -> Worded:
    if not said.joined:
        return Worded(
            "Hello! I work in training groups. Open the button in your group's chat and we'll start.\n"
            "Coach: add me to your group and make yourself one of its admins.\n\n" + NOBODY_WATCHES
        )
    lines = [
        "/today shows your version of the newest session",
        "your score, in your own words: <code>7+12</code>, <code>8:43</code>, <code>7 rounds and 12</code>",
        "/board shows the scoreboard",
        "/classes shows the live classes; write <i>remind me 2 hours before</i> or <i>quiet hours 22 to 7</i>",
        "what comes or goes of your equipment: <i>bought a 24</i>, <i>sold the chair</i>, <i>trip: a band</i>",
        "how it is with you: <i>my left wrist hurts</i>, <i>I have 15 minutes</i>, <i>I'm travelling, only a band</i>",
        "what you can do: <i>I can do 10 deadlifts at 60 kg</i>",
        "/me shows what I know about you, and lets you change it; /export gives you all of it as a file",
        "/forget erases everything I've stored about you",
    ]
    if said.coach:
        lines.insert(0, "paste a session, as you'd write it on a board, and I'll read it back to you")
        lines.insert(
            1, "an athlete's name shows what I'd give them; <i>hold</i> and the name keeps it for your OK"
        )
        lines.insert(2, "set up a class by writing <code>class Tuesdays 18:30, 45 min</code> and its link")
    return Worded("Here's what you can send me:\n\n" + bullets(lines) + "\n\n" + NOBODY_WATCHES)


@wording("en", Welcome)
def welcome(_: Welcome) -> Worded:
    return Worded("You're welcome!")


NO_WORDS = {
    "photo": "Nice, but I can't look at pictures yet. Please write it to me in words, or add them to the picture.",
    "voice": "I can't listen yet. Please write it to me.",
    "file": "I can't open files yet. Please write it to me in words.",
    None: "I can only read text so far. Could you write it to me in words?",
}


@wording("en", NotText)
def not_text(said: NotText) -> Worded:
    return Worded(NO_WORDS[said.media])


@wording("en", Lost)
def lost(_: Lost) -> Worded:
    return Worded(
        "Something went wrong on my side with your last message. I've kept it; please try again in a while."
    )
