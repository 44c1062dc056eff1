"""Words for help, refusals, and what can't be read."""

from bot.words.en.talk.helping import NOBODY_WATCHES
from bot.words.wording import Worded, wording
from core.desk.errors import (
    AlreadyDone,
    Answered,
    NeedsConsent,
    NotAMember,
    NotHere,
    NotTheCoach,
    NotYours,
    StalePress,
    UnknownThing,
    Withdrawn,
)
from core.desk.says import (
    Explained,
    Kindness,
    LeftAsItIs,
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
    Answered: "You've answered that already, and it stands. To change it, just write me what is right.",
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


@wording("en", LeftAsItIs)
def left_as_it_is(_: LeftAsItIs) -> Worded:
    return Worded("All right, it stays as it is.")


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
    "well": "Good to hear!",
    "moved": "That counts: you moved. No score needed, and the board stays as it is.",
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
    "tempo": "<b>Tempo</b>: how slowly you move. In 3-1-1 you take three seconds down, one at the bottom, one up.",
    "tabata": "<b>Tabata</b>: twenty seconds of work and ten of rest, eight times: four minutes.",
    "1rm": "<b>1RM</b>: the most weight that you can lift once.",
    "pb": "<b>PB</b>, or PR: your best so far.",
    "chipper": "<b>Chipper</b>: a long list that you do once from top to bottom; finish one line before the next.",
    "complex": "<b>Complex</b>: several movements in a row with one weight, without putting it down.",
    "deload": "<b>Deload</b>: an easier week on purpose, so that you recover.",
    "interval": "<b>Intervals</b>: hard pieces of work with rests between them.",
    "max effort": "<b>Max effort</b>: as much as you can on that day, with good form.",
    "touch and go": "<b>Touch and go</b>: the weight only touches the floor between two reps; you don't stop there.",
    "not for time": "<b>Not for time</b>: nobody is looking at the clock. Rest as you need and do it well.",
    "zone 2": "<b>Zone 2</b>: an easy, steady pace at which you can still talk in whole sentences.",
    "doms": "<b>DOMS</b>: muscles that are stiff and sore a day or two after training. It passes by itself.",
    "sets": "<b>Sets</b>: 4 sets of 10 with 90 s rest is ten reps, a rest of 90 seconds, then again, until you've done it four times.",
    "rest": "<b>Rest</b>: the pause before the next set or round. Where none is written, you rest when you need to.",
    "two loads": "<b>16/12</b>: two loads to pick from, in kg or lb; the first is the heavier one. Your own version (/today) says which is yours.",
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
