"""Words for what was understood in part, not at all, or can't be done so far."""

from collections.abc import Mapping
from typing import Final

from bot.words.en.versions.questions import ON_TREADMILL
from bot.words.text import fill, listed, plural
from bot.words.versions import limit_names
from bot.words.wording import Button, Row, Worded, wording
from core.desk.classes.commands import AboutReminders, SeeClasses
from core.desk.coaching.commands import SeeNeeds
from core.desk.commands import AboutMe, AskHelp, ChangeAnswer, Command, MyVersion, SeeBoard, SeeScores
from core.desk.profile.commands import ExportMine, ForgetMe, PassOn, TakeAsTold
from core.desk.talk.says import (
    AnyTimeWillDo,
    DoneOtherwise,
    GoOnLater,
    HeldBack,
    HowItFeelsDecides,
    HowTheyJoin,
    LeftOver,
    LessWillDo,
    Nearest,
    NobodyJudges,
    NoSwap,
    NotGot,
    NothingWaits,
    NotPostedYet,
    NotYet,
    OnceYouHaveIt,
    OneByOne,
    OneQuestion,
    OnlyAsked,
    RunsOnTreadmill,
    StillOpen,
    WhoTrains,
)
from core.desk.versions.commands import ChangeLines, TodayDiffers
from core.scaling.values import Ask

LABELS: Final[Mapping[Nearest, str]] = {
    "version": "My session of today",
    "lines": "Change a line",
    "today": "Today is different",
    "board": "The scoreboard",
    "classes": "Classes",
    "equipment": "What I have to train with",
    "limits": "What I want to spare",
    "weight": "What I weigh",
    "reminders": "Reminders",
    "me": "What you know about me",
    "export": "All of it as a file",
    "forget": "Erase everything",
    "needs": "Who needs me",
    "scores": "The scores",
}


# What is surely got, for what the words may have been.
LIKE: Final[Mapping[str, str]] = {
    "edit": "make the run 400 m",
    "post": "post it friday 6pm",
    "withdraw": "withdraw today's session",
    "class": "class Tuesdays 18:30, 45 min",
    "class_change": "move Tuesday's class to 19:00",
    "class_off": "no class next Tuesday",
    "order": "no burpees for Ilse this week",
    "easy_week": "easy week for Ilse",
    "note_fault": "note for Ilse: rounds her back in deadlifts",
    "how_is": "how is Ilse?",
    "who_reported": "who trained yesterday?",
    "whats_coming": "what's scheduled?",
    "roster": "who is in the group?",
    "announce": "announce: bring a towel",
    "has": "I have two 10 kg dumbbells and a chair",
    "got": "bought a 16 kg kettlebell",
    "lost": "sold the chair",
    "spares": "no jumping",
    "hurt": "my left wrist hurts",
    "well_again": "my knee is fine again",
    "weighs": "I weigh 70 kg",
    "has_minutes": "I have 15 minutes",
    "swap": "rows instead of the run",
    "too_hard": "push-ups too hard",
    "too_easy": "push-ups too easy",
    "scored": "7+12",
    "corrects": "sorry, 7+10",
    "elsewhere": "I'm travelling, only a band",
    "to_coach": "tell my coach I'm away on Friday",
    "remind": "remind me 2 hours before",
    "how_to": "how do I do a goblet squat?",
}


@wording("en", NotGot)
def not_got(said: NotGot) -> Worded:
    near: Row = (Button(LABELS[said.nearest], does(said.nearest, said)),) if said.nearest else ()
    if said.asks and not near and said.word is not None:
        ask = (Button("Ask my coach", PassOn(word=said.word)), Button("What can I write?", AskHelp()))
        return Worded(fill("I can't answer “{words}” myself. Your coach can.", words=said.words), (ask,))
    text = fill("I didn't get “{words}”.", words=said.words)
    like = LIKE.get(said.like or "")
    text += f" I do get sentences like <i>{like}</i>." if like else ""
    text += " Do you mean this?" if near else ""
    return Worded(text, tuple(row for row in (near, below(said.word)) if row))


def below(word: int | None) -> Row:
    coach = (Button("Tell my coach", PassOn(word=word)),) if word is not None else ()
    return (*coach, Button("What can I write?", AskHelp()))


def does(one: Nearest, said: NotGot) -> Command:
    found: dict[Nearest, Command] = {
        "version": MyVersion(session=said.session),
        "board": SeeBoard(session=said.session),
        "classes": SeeClasses(),
        "equipment": ChangeAnswer(ask=Ask.EQUIPMENT),
        "limits": ChangeAnswer(ask=Ask.LIMITS),
        "weight": ChangeAnswer(ask=Ask.BODY_MASS),
        "reminders": AboutReminders(),
        "me": AboutMe(),
        "export": ExportMine(),
        "forget": ForgetMe(),
        "scores": SeeScores(session=said.session),
    }
    if said.version is not None:
        found |= {"lines": ChangeLines(version=said.version), "today": TodayDiffers(version=said.version)}
    if said.session is not None:
        found["needs"] = SeeNeeds(session=said.session, revision=said.revision)
    return found[one]


@wording("en", LeftOver)
def left_over(said: LeftOver) -> Worded:
    quoted = listed([f"“{one}”" for one in said.words])
    rows = ((Button("Tell my coach", PassOn(word=said.word)),),) if said.word is not None else ()
    return Worded(fill("I didn't get {quoted}.", quoted=quoted), rows)


@wording("en", OneByOne)
def one_by_one(_: OneByOne) -> Worded:
    return Worded(
        "I've posted nothing yet: I take them one by one, so that nothing goes out unseen. Tap the key under each, or name "
        "it: <i>post friday's at 6</i>."
    )


@wording("en", HeldBack)
def held_back(said: HeldBack) -> Worded:
    text = "“{words}”: I haven't yet, as the change before it isn't all done. Look at the draft, then tell me once more."
    return Worded(fill(text, words=said.words))


@wording("en", OneQuestion)
def one_question(said: OneQuestion) -> Worded:
    text = "“{words}”: I'd have to ask about that too, so it waits. Write it once more when this is settled."
    return Worded(fill(text, words=said.words))


# Honest, and with what there is instead.
NOT_YET: Final[Mapping[str, str]] = {
    "how_long": "I can't tell yet how long it takes you: I see no session of today.",
    "how_to_pace": "I see no session of today to pace.",
    "how_to": "I don't know that movement or word yet. Write me the word, like <i>what's an AMRAP</i> or <i>show me swings</i>.",
    "how_heavy": "Your version says how heavy, where I know enough: /today shows it. More about loads I can't say yet.",
    "did_as_written": "I have no score of yours to change. Write me the score, and tap <i>It was as written</i> under it.",
    "did_scaled": "Scores count as scaled unless you had everything as written, so there is nothing to do.",
    "teach": "I don't know that movement by that name. <i>How do I do swings?</i> shows how one is done.",
    "event": "I can't plan events yet, only classes: <code>class Tuesdays 18:30, 45 min</code>.",
    "post": "I see no draft of yours to post. Paste the session and I'll read it back.",
    "withdraw": "I see no session that was posted lately, so there is nothing to take back.",
}


@wording("en", NotYet)
def not_yet(said: NotYet) -> Worded:
    rows = ((Button("Ask my coach", PassOn(word=said.word)),),) if said.word is not None else ()
    return Worded(NOT_YET[said.act], rows)


@wording("en", OnlyAsked)
def only_asked(said: OnlyAsked) -> Worded:
    text = fill("So far I've noted nothing of “{words}”. Is it so?", words=said.words)
    if said.word is None:
        return Worded(f"{text} Then tell me plainly.")
    yes = Button("Yes, note it", TakeAsTold(word=said.word))
    return Worded(text, ((yes, Button("Ask my coach", PassOn(word=said.word))),))


# Of these a midwife knows more than most.
EXPECTING = frozenset({"pregnancy", "after-birth"})


@wording("en", HowItFeelsDecides)
def how_it_feels_decides(said: HowItFeelsDecides) -> Worded:
    """Licensed care first: neither the bot nor the coach can judge a condition."""
    rule = "Pain, dizziness or trouble breathing: stop. Less or lighter is never wrong."
    if said.conditions:
        first = fill(
            "With {what}, that's a question for your {carer} first, and then for your coach.",
            carer="midwife or doctor" if EXPECTING.intersection(said.conditions) else "doctor or therapist",
            what=limit_names(said.conditions, {}),
        )
    elif said.careful:
        first = "After what you told me at the start, ask your doctor first, and then your coach. Keep it easy until then."
    else:
        first = (
            "I can't see you, so how it feels decides. Your version is made of what you told me; if it looks too "
            "much, make it easier, and your coach knows you best."
        )
    return Worded(f"{first} {rule}", beside_a_coach(said.version, said.word))


@wording("en", AnyTimeWillDo)
def any_time_will_do(_: AnyTimeWillDo) -> Worded:
    return Worded(
        "Yes: train when it suits you. Your version stays here, and /today brings it back until the next session comes. On "
        "another day, put the day before your score, like <i>yesterday: 7+12</i>. A live class keeps its own time: /classes."
    )


@wording("en", LessWillDo)
def less_will_do(said: LessWillDo) -> Worded:
    text = (
        "No, you don't have to. Rest whenever you need to, and stop earlier if that's enough for today: tell me how far you "
        "got, and it counts as that. You needn't train every day either; a day of rest between two sessions is good for you."
    )
    return Worded(text, beside_a_coach(said.version, None))


@wording("en", RunsOnTreadmill)
def runs_on_treadmill(_: RunsOnTreadmill) -> Worded:
    return Worded(ON_TREADMILL)


@wording("en", StillOpen)
def still_open(said: StillOpen) -> Worded:
    return Worded("This one is still open:", tuple((Button(label, does),) for label, does in said.keys))


@wording("en", GoOnLater)
def go_on_later(_: GoOnLater) -> Worded:
    return Worded("Whenever you like, /today goes on with your version.")


@wording("en", NobodyJudges)
def nobody_judges(said: NobodyJudges) -> Worded:
    text = (
        "Many feel so at first, and nobody is behind here: your version is yours alone, and only your score shows on "
        "the board, if you tell me one. Start easy, and stop whenever you like."
    )
    return Worded(text, beside_a_coach(said.version, said.word))


@wording("en", DoneOtherwise)
def done_otherwise(said: DoneOtherwise) -> Worded:
    text = "Good that you trained! It was something else than the session, so it stands on no board. Shall your coach know of it?"
    coach = (Button("Tell my coach", PassOn(word=said.word)),) if said.word is not None else ()
    return Worded(text if coach else text.rpartition(" Shall")[0], (coach,) if coach else ())


def beside_a_coach(version: int | None, word: int | None) -> tuple[Row, ...]:
    easier = (Button(LABELS["lines"], ChangeLines(version=version)),) if version is not None else ()
    coach = (Button("Ask my coach", PassOn(word=word)),) if word is not None else ()
    return ((*easier, *coach),) if easier or coach else ()


@wording("en", NothingWaits)
def nothing_waits(_: NothingWaits) -> Worded:
    return Worded("All right. Nothing was waiting for an answer, so nothing changes.")


@wording("en", WhoTrains)
def who_trains(said: WhoTrains) -> Worded:
    groups = [
        fill("<b>{group}</b>: {names}", group=group, names=listed(names) if names else "nobody yet")
        for group, names in said.groups
    ]
    new = fill("New in the last two weeks: {names}.", names=listed(said.new)) if said.new else ""
    more = (
        "A name shows what I'd give them. New athletes join with a tap on <i>Start with me</i> in the group; who is taken "
        "out of the group's chat is out here as well."
    )
    return Worded("\n".join([*groups, *([new] if new else []), more]))


@wording("en", HowTheyJoin)
def how_they_join(said: HowTheyJoin) -> Worded:
    return Worded(
        fill(
            "A newcomer needs nothing from you: add them to {groups}, and they tap <i>Start with me</i> there. I ask about their "
            "health and what must be spared before they get anything, and take that from them alone. Whoever needs a doctor's word "
            "first gets no session before, and you hear of it. To see their versions before they do, write <i>hold</i> and their "
            "name once they're in.",
            groups=listed(said.groups),
        )
    )


@wording("en", NotPostedYet)
def not_posted_yet(said: NotPostedYet) -> Worded:
    text = (
        "I only know a session once your coach posts it; then <i>My version</i> stands under it in the group."
    )
    now = (Button(LABELS["version"], MyVersion(session=said.session)),) if said.session is not None else ()
    return Worded(text, ((*now, Button(LABELS["classes"], SeeClasses())),))


# That what sits below the neck is rested is common practice, no source.
ILL: Final = (
    "Get well soon! With a fever, or anything below the neck, rest: no session is worth it. With no more than a cold, "
    f"/today shows your version; “{LABELS['today']}” under it makes it gentle. If it gets worse, ask a doctor."
)


@wording("en", OnceYouHaveIt)
def once_you_have_it(said: OnceYouHaveIt) -> Worded:
    if said.where == "sick":
        return Worded(ILL)
    return Worded(f"Once you have your version, tap “{LABELS[said.where]}” under it for that.")


@wording("en", NoSwap)
def no_swap(said: NoSwap) -> Worded:
    what = plural(said.to) if said.to else "anything else"
    text = fill(
        "I can't give you {what} for it: it isn't safe with what you told me, or you don't have what it takes. If you do, "
        "tell me, like <i>I have a bench today</i>.",
        what=what,
    )
    return Worded(text, ((Button("Change a line", ChangeLines(version=said.version)),),))
