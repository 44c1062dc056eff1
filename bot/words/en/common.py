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
    Withdrawn,
)
from core.desk.says.common import (
    Explained,
    Help,
    Kindness,
    Lost,
    NotText,
    PutAside,
    Refused,
    Taken,
    TooQuick,
    Welcome,
)
from core.errors import TooMuch

REFUSALS = {
    AlreadyDone: "That's done already, nothing to worry about.",
    NeedsConsent: "I keep nothing about you before you agree. Send /start and we'll begin there.",
    NotAMember: "That's for members of its group. If you've just joined, open the link in your group again.",
    NotHere: "Let's do that in our private chat.",
    NotTheCoach: "Only the coach can do that. If you coach this group, be one of its admins.",
    StalePress: "That button is from before something changed. The newest message is the one that counts.",
    NotYours: "That one is for whoever told me that score.",
    Withdrawn: "Your coach has withdrawn that session. /today shows the one that counts.",
    TooMuch: "That's more than I can take in: fewer things or smaller numbers, please. What I knew before stays.",
    UnknownThing: "I can't find that any more. Send /help and we'll find our way.",
}

NOBODY_WATCHES = "Nobody watches this chat. In an emergency, call your local emergency number."


@wording("en", Refused)
def refused(said: Refused) -> Worded:
    kinds = {kind.__name__: words for kind, words in REFUSALS.items()}
    return Worded(kinds.get(said.why, REFUSALS[UnknownThing]))


@wording("en", PutAside)
def put_aside(said: PutAside) -> Worded:
    every = f" With it there are {said.count}." if said.count > 1 else ""
    return Worded(
        f"To you, as you run me: I couldn't handle update {said.update}, so I put it aside.{every} Whoever sent it was "
        "told. <code>bellwether parked</code> shows it."
    )


@wording("en", Taken)
def taken(_: Taken) -> Worded:
    return Worded("Got it. Nothing more to tell for now; /help shows what you can send me.")


@wording("en", TooQuick)
def too_quick(_: TooQuick) -> Worded:
    return Worded(
        "That was a lot at once! I took in the first of it and left out the rest. Give me a minute, then send again "
        "what matters. " + NOBODY_WATCHES
    )


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
        "how it is with you: <i>my left wrist hurts</i>, <i>I have 15 minutes</i>, <i>I'm travelling, only a band</i>, <i>I need an easy week</i>",
        "what you can do: <i>I can do 10 deadlifts at 60 kg</i>",
        "anything for your coach, in your words: <i>tell my coach I'm away on Friday</i>; <i>my notes</i> shows what you said",
        "/me shows what I know about you, and lets you change it; /export gives you all of it as a file",
        "/forget erases everything I've stored about you",
    ]
    if said.coach:
        lines.insert(0, "paste a session, as you'd write it on a board, and I'll read it back to you")
        lines.insert(
            1, "an athlete's name shows what I'd give them; <i>hold</i> and the name keeps it for your OK"
        )
        lines.insert(
            1,
            "your athletes join with a tap in the group: <i>Start with me</i>, or <i>My version</i> under a post",
        )
        lines.insert(
            2,
            "how somebody moves: <i>note for Ilse: rounds her back in deadlifts</i>, or <i>Ilse: deadlifts at most 30 kg</i>; "
            "<i>notes</i> shows what stands",
        )
        lines.insert(
            3, "<i>easy week</i> asks less of everybody until Sunday, <i>easy week for Ilse</i> of one"
        )
        lines.insert(5, "set up a class by writing <code>class Tuesdays 18:30, 45 min</code> and its link")
    unread = "I couldn't read that, so I've noted nothing of it. " if said.unread else ""
    return Worded(unread + "Here's what you can send me:\n\n" + bullets(lines) + "\n\n" + NOBODY_WATCHES)


@wording("en", Welcome)
def welcome(_: Welcome) -> Worded:
    return Worded("You're welcome!")


KIND_WORDS = {
    "proud": "Congratulations, that's wonderful!",
    "enjoyed": "I'm glad you liked it. Well done!",
    "hard": "That was honest work. Well done!",
    "bad day": "Some days are like that. Good that you told me.",
    "late": "No worries, all good!",
    "away": "No worries, the next one is for you. If you signed up for a class, /classes takes you out.",
    "hello": "Hello! Good to hear from you. /help shows what you can send me.",
    "bye": "Take care, and see you soon!",
    "cheerful": "Nice to see you in good spirits!",
    "thanks": "You're welcome!",
}
# To these belongs a score.
AFTER_TRAINING = frozenset({"proud", "enjoyed", "hard"})


@wording("en", Kindness)
def kindness(said: Kindness) -> Worded:
    ask = " And your score?" if said.unscored and said.talk in AFTER_TRAINING else ""
    return Worded(KIND_WORDS[said.talk] + ask)


TERMS = {
    "amrap": "<b>AMRAP</b>: as many rounds as possible. You go through the list from top to bottom, again and again, until "
    "the time is up. Your score is the rounds you finished and what you did of the next one, like 7+12.",
    "emom": "<b>EMOM</b>: every minute on the minute. At the start of each minute you do the work; what is left of the "
    "minute is your rest.",
    "for time": "<b>For time</b>: you do all of it once through, at your own pace, and your score is how long it took, "
    "like 8:43.",
    "cap": "<b>Cap</b>: the most time there is. When it is over you stop, wherever you are, and tell me how far you got.",
    "rounds": "<b>Round</b>: once through the whole list, from the first line to the last.",
    "reps": "<b>Reps</b>, or repetitions: how many times you do a movement. 10 push-ups are ten reps.",
    "scaled": "<b>Scaled</b>: changed so that it fits you: lighter, fewer, or another movement. It trains the same parts of "
    "you, and it counts.",
    "as written": "<b>As written</b>: just as your coach wrote it, with nothing changed.",
    "unbroken": "<b>Unbroken</b>: all of a set in one go, without putting the weight down or stopping.",
    "buy-in": "<b>Buy-in</b>: work you do once, before the rounds begin.",
    "cash-out": "<b>Cash-out</b>: work you do once, after the last round.",
    "superset": "<b>Superset</b>: two movements in turn, with no rest between the two.",
    "dumbbell": "<b>Dumbbell</b>, DB for short: a short bar with a weight at each end, for one hand.",
    "kettlebell": "<b>Kettlebell</b>, KB for short: a round weight with a handle on top.",
    "effort": "<b>Effort</b>: how hard it was for you, from 0 to 10. 2 is easy, 5 is hard, 10 is all you had.",
    "ladder": "<b>Ladder</b>: the number goes up or down from round to round, like 2, then 4, then 6.",
}


@wording("en", Explained)
def explained(said: Explained) -> Worded:
    return Worded(TERMS[said.term])


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
