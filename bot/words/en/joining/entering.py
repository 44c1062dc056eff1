"""Words for the way in: consent, screening, welcome."""

from bot.words.text import fill, listed
from bot.words.wording import Button, DoorButton, Row, Worded, wording
from core.athletes.values import Branch, ScreeningQuestion
from core.desk.commands import (
    AnswerScreening,
    DeclineConsent,
    GiveConsent,
    SayCleared,
    SayMisunderstood,
    TellSigns,
)
from core.desk.joining.says import (
    Arriving,
    AskConsent,
    AskScreening,
    AskSigns,
    AtTheDoor,
    ConsentDeclined,
    HelpThem,
    NotCleared,
    ScreeningDone,
    StopHere,
    StopNow,
)

STOP_SIGNS = (
    "Stop at once with chest pain or pressure, unusual breathlessness, feeling faint or confused, or cold, "
    "clammy skin. Sit down and call your local emergency number. Nobody watches this chat."
)


@wording("en", AskConsent)
def ask_consent(said: AskConsent) -> Worded:
    text = fill(
        "Hello {name}! I make each session of <b>{title}</b> fit you.\n\n"
        "For that I keep what you tell me about your equipment, your ability and what your body needs to avoid. "
        "The last is health data, so I ask first. Nobody in the group sees it, and your coach only sees the "
        "version that comes out of it. Your name and your scores do show on the group's scoreboard.\n\n"
        "I'm a helper, no doctor. May I keep these notes?",
        name=said.name,
        title=said.title,
    )
    if said.unkept:
        text = fill(
            "I haven't kept “{words}”: I keep nothing before your yes. Tell me once more after it, and your sessions go by it. "
            "May I keep these notes?",
            words=said.unkept,
        )
    elif said.again:
        text = "And the question above, with a yes or a no: May I keep these notes?"
    yes = Button("Yes, keep them", GiveConsent(group=said.group))
    no = Button("No", DeclineConsent(group=said.group))
    return Worded(text, ((yes, no),))


@wording("en", AtTheDoor)
def at_the_door(said: AtTheDoor) -> Worded:
    kept = fill("I haven't kept “{words}”. ", words=said.told) if said.told else ""
    return Worded(
        f"{kept}Nothing you write here counts before you've tapped <b>Start with me</b> in your group's chat. Then tell me "
        "again, and your sessions go by it."
    )


@wording("en", ConsentDeclined)
def consent_declined(said: ConsentDeclined) -> Worded:
    return Worded(
        "That's fine: I keep nothing, and you can train from the session in the group as it is. "
        "If you change your mind, tap below.",
        ((Button("Yes, keep my notes", GiveConsent(group=said.group)),),),
    )


QUESTIONS = {
    ScreeningQuestion.ADULT: "A few safety questions first, they take a moment.\n\nAre you 18 or older?",
    ScreeningQuestion.SYMPTOMS: (
        "Have you lately had any of these: pain or pressure in the chest, unusual breathlessness, dizziness or "
        "fainting, a racing or uneven heartbeat, swollen ankles, or pain in the calves when walking?"
    ),
    ScreeningQuestion.KNOWN_DISEASE: (
        "Has a doctor ever told you that you have a disease of the heart or blood vessels, diabetes, or a "
        "disease of the kidneys?"
    ),
    ScreeningQuestion.ACTIVE: (
        "Over the last three months, have you been moving for half an hour or so, at least at a brisk walk, on "
        "three days a week or more?"
    ),
}


# What to tap in doubt is the answer that trains them more gently.
SAFE_NO = "If you're in doubt, tap No: we can always do more later.\n\n"
SAFE_YES = "If you're in doubt, tap Yes: better once too often.\n\n"
# The same in other words, for who asks what is meant.
MEANT = {
    ScreeningQuestion.SYMPTOMS: (
        "These can come from the heart or the vessels, so I ask everybody. Out of breath from hard work, or from stairs "
        "taken fast, doesn't count. Out of breath at rest, lying down, from one slow flight of stairs, or much sooner than "
        "a few months ago does. "
    ),
    ScreeningQuestion.KNOWN_DISEASE: "It counts also where it is treated, or long ago: a heart attack, a stroke, raised sugar. ",
    ScreeningQuestion.ACTIVE: "Cycling, swimming or heavy work in the garden count too. ",
}
# Of an age nobody is in doubt.
DOUBTS = {
    ScreeningQuestion.ADULT: "I train adults only, so I need this one plainly: yes, no or your age.\n\n",
    ScreeningQuestion.SYMPTOMS: SAFE_YES,
    ScreeningQuestion.KNOWN_DISEASE: SAFE_YES,
    ScreeningQuestion.ACTIVE: SAFE_NO,
}


# Where the hint was no help either.
STILL = {
    ScreeningQuestion.ADULT: "Your age in years is enough.\n\n",
    ScreeningQuestion.SYMPTOMS: "I heard you. For this one I go by a yes or a no alone, about your own body.\n\n",
    ScreeningQuestion.KNOWN_DISEASE: (
        "I heard you. This one is about your own heart, vessels, sugar and kidneys alone: a yes or a no.\n\n"
    ),
    ScreeningQuestion.ACTIVE: "I heard you. Both are fine, I only need to know how gently to begin: yes or no.\n\n",
}


@wording("en", AskScreening)
def ask_screening(said: AskScreening) -> Worded:
    question = QUESTIONS[said.question]
    if not said.doubts:
        return Worded(question, (yes_or_no(said),))
    hints = (MEANT.get(said.question, "") + DOUBTS[said.question], STILL[said.question])
    hint = hints[said.doubts - 1] if said.doubts <= len(hints) else ""
    return Worded(hint + question.rpartition("\n\n")[2], (yes_or_no(said),))


def yes_or_no(said: AskScreening) -> Row:
    yes = AnswerScreening(group=said.group, answers=said.answers + "y")
    no = AnswerScreening(group=said.group, answers=said.answers + "n")
    return (Button("Yes", yes), Button("No", no))


RESULTS = {
    Branch.NOT_ADULT: "I can only work with adults. Please talk with your coach about training in person.",
    Branch.SYMPTOMS: (
        "Thank you for telling me. Please see a doctor about that before you train. I won't give you a session "
        "until you've been cleared. If it is happening right now, call your local emergency number."
    ),
    Branch.DISEASE_INACTIVE: (
        "Thank you. Please ask your doctor before you start training. As soon as you've been cleared, tell me "
        "here and we'll begin gently."
    ),
    Branch.DISEASE_ACTIVE: (
        "Thank you. You can go on at a moderate effort, about what lets you still talk in short sentences. "
        "I'll keep your versions there, and they carry no rank. Ask your doctor before you do more."
    ),
    Branch.HEALTHY_INACTIVE: (
        "Thank you. We'll start light to moderate and build from there: finishing fresh is the aim, so your first "
        "versions carry no rank."
    ),
    Branch.HEALTHY_ACTIVE: "Thank you, you're good to go.",
    Branch.CLEARED: (
        "Good to hear. We'll start again lighter than before, and without a rank for now. Do what your doctor "
        "told you, that comes before anything I say."
    ),
}


@wording("en", ScreeningDone)
def screening_done(said: ScreeningDone) -> Worded:
    text = RESULTS[said.branch]
    if said.branch is Branch.NOT_ADULT:
        return Worded(text)
    if said.branch in {Branch.SYMPTOMS, Branch.DISEASE_INACTIVE}:
        return Worded(text, cleared(said.group))
    return Worded(f"{text}\n\n{STOP_SIGNS}")


@wording("en", NotCleared)
def not_cleared(said: NotCleared) -> Worded:
    if said.branch is Branch.NOT_ADULT:
        return Worded(RESULTS[Branch.NOT_ADULT])
    text = (
        "You told me something that a doctor should look at first, so there's no session for you yet. "
        "Have you been cleared since?"
    )
    if said.branch is not Branch.SYMPTOMS:
        return Worded(text, cleared(said.group))
    return Worded(
        f"{text} And if I got you wrong, tell me.", (*cleared(said.group), misunderstood(said.group))
    )


@wording("en", StopNow)
def stop_now(said: StopNow) -> Worded:
    text = EXPECTING if said.expecting else ASKED if said.asked else STOP
    if said.coach_told:
        text += COACH_TOLD
    if said.group is None:
        return Worded(text)
    return Worded(f"{text}\n\n{WAY_OUT}", (*cleared(said.group), misunderstood(said.group, asked=said.asked)))


@wording("en", StopHere)
def stop_here(said: StopHere) -> Worded:
    text = (
        "<b>If you don't feel well: stop now, sit down and tell somebody near you. If it is strong, or doesn't pass at "
        "once, call your local emergency number.</b> I'm only a helper, and I can't see you.\n\n"
        "Talk to me in private before you train again."
    )
    return Worded(text, ((DoorButton("Talk to me", f"g{said.group}"),),))


STOP = (
    "<b>Stop now and sit down. If it is strong, or doesn't pass at once, call your local emergency number.</b> "
    "Nobody watches this chat, so please don't wait for an answer here; if somebody is near, tell them.\n\n"
    "Have a doctor look at it before you train again. Until then I won't give you a session."
)
COACH_TOLD = " Your coach hears that you stopped; why, only if you share such notes."
EXPECTING = (
    "<b>Stop now and rest. Call your midwife or your doctor now. With bleeding, fluid leaking or strong pain, or if you feel "
    "faint, call your local emergency number.</b> Nobody watches this chat, so please don't wait for an answer here.\n\n"
    "Until they have cleared you I won't give you a session."
)
ASKED = (
    "<b>If you feel that yourself, now: stop and sit down. If it is strong, or doesn't pass at once, call your local "
    "emergency number.</b> Nobody watches this chat.\n\n"
    "It's nothing to train through, and what it comes from only a doctor can say. I can't tell whether you asked about "
    "yourself, so to be safe I hold your sessions for now."
)
WAY_OUT = "When a doctor has cleared you, or if I got you wrong, tap below or just write it."


@wording("en", AskSigns)
def ask_signs(said: AskSigns) -> Worded:
    lead = "Your sessions wait for this answer first." if said.again else "Good that you say so."
    text = f"{lead} One question, to be sure, about yourself. {QUESTIONS[ScreeningQuestion.SYMPTOMS]}"
    yes, no = TellSigns(group=said.group, had=True), TellSigns(group=said.group, had=False)
    return Worded(text, ((Button("Yes", yes), Button("No, none of it", no)),))


@wording("en", HelpThem)
def help_them(_: HelpThem) -> Worded:
    return Worded(
        "<b>Let them stop, and sit or lie down. With chest pain, trouble breathing or confusion, or if they pass out or "
        "it doesn't pass at once, call your local emergency number.</b> Stay with them; nobody watches this chat.\n\n"
        "They should have a doctor look at it before they train again. If you meant yourself, write me what you feel."
    )


def cleared(group: int) -> tuple[Row, ...]:
    return ((Button("My doctor has cleared me", SayCleared(group=group)),),)


def misunderstood(group: int, *, asked: bool = False) -> Row:
    label = "I was only asking" if asked else "You got me wrong"
    return (Button(label, SayMisunderstood(group=group)),)


def arriving(said: Arriving) -> list[str]:
    """To a coach, as HTML: who has no version of their own yet, and why; nothing where everybody has."""
    parts = []
    if said.at_questions:
        parts.append(fill("Still at my first questions: {names}.", names=listed(said.at_questions)))
    if said.without_notes:
        parts.append(
            fill(
                "Said no to my notes, and train from the post as it is: {names}.",
                names=listed(said.without_notes),
            )
        )
    if said.in_group_only:
        parts.append(
            fill(
                "In the group only: {names}. For a version of their own they would open a private chat with me.",
                names=listed(said.in_group_only),
            )
        )
    return parts
