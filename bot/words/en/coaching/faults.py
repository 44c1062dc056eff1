"""Words about what a coach noted of how an athlete moves: kind, and for nobody else."""

from bot.words.text import bullets, escape, fill, plural
from bot.words.versions import coachs_words
from bot.words.wording import Button, Row, Worded, wording
from core.desk.coaching.commands import DropFault, KeepFault, LiftFault, RewordFault
from core.desk.coaching.says import (
    AskFaultWords,
    FaultDropped,
    FaultLifted,
    FaultMade,
    FaultOver,
    FaultRead,
    FaultShown,
    FaultsStanding,
    FaultTold,
    FaultUnclear,
    NoFaults,
)
from core.measures import MassUnit, in_words

# A label longer than this is cut by the platform.
LABEL = 40


def as_read(fault: FaultShown, units: MassUnit) -> str:
    """The line as it stands under the athlete's; plain text."""
    return coachs_words((fault.words,) if fault.words else (), fault.cap_kg, units)


@wording("en", FaultRead)
def fault_read(said: FaultRead) -> Worded:
    fault = said.fault
    does = (
        "I keep each set of these to half of what they can do, at most"
        if fault.cap_kg is None
        else f"I give them at most {in_words(fault.cap_kg, said.units)} in the hands altogether with these"
    )
    text = fill(
        "Shall I note this for {name}? With {movement}, and all that trains the same, they read:\n"
        "<i>{line}</i>\n\n{does}, until you lift it. I tell {name} once; the group never sees it.",
        name=said.athlete,
        movement=plural(fault.movement),
        line=as_read(fault, said.theirs),
        does=does,
    )
    yes, no = Button("Yes, note it", KeepFault(fault=fault.id)), Button("No", DropFault(fault=fault.id))
    return Worded(text, ((yes, no), (Button("Other words", RewordFault(fault=fault.id)),)))


@wording("en", FaultUnclear)
def fault_unclear(said: FaultUnclear) -> Worded:
    if said.movement is None:
        words = "Which movement is it about? Write it with it, like <i>note for {name}: rounds the back in deadlifts</i>."
        return Worded(fill(words, name=said.athlete))
    words = "What about {movement}? Write it with it, like <i>note for {name}: keep the back flat in {movement}</i>."
    return Worded(fill(words, name=said.athlete, movement=plural(said.movement)))


@wording("en", AskFaultWords)
def ask_fault_words(said: AskFaultWords) -> Worded:
    short = "A little shorter, please: one sentence that helps in the middle of a set. " if said.again else ""
    return Worded(
        short + fill("How should {name} read it? Like <i>keep your back flat</i>.", name=said.athlete)
    )


@wording("en", FaultMade)
def fault_made(said: FaultMade) -> Worded:
    text = fill("Noted, and {name} knows. Write <i>notes</i> to see all that stand.", name=said.athlete)
    return Worded(text, ((lift(said.fault, said.athlete),),))


def lift(fault: FaultShown, athlete: str) -> Button:
    return Button(f"Lift {athlete}: {plural(fault.movement)}"[:LABEL], LiftFault(fault=fault.id))


@wording("en", FaultDropped)
def fault_dropped(_: FaultDropped) -> Worded:
    return Worded("Good, nothing is noted.")


@wording("en", FaultTold)
def fault_told(said: FaultTold) -> Worded:
    does = (
        "until then each set stays well within what you can do"
        if said.fault.cap_kg is None
        else "until then there's no more than that in your hands"
    )
    text = fill(
        "Your coach looked closely at your {movement}, and wants you to get the best out of them. With them, and all "
        "that trains the same, you now read:\n<i>{line}</i>\n\nYour coach lifts it when it's time for more; {does}. Only you "
        "and your coach see it, never the group. /today shows your version with it.",
        movement=plural(said.fault.movement),
        line=as_read(said.fault, said.units),
        does=does,
    )
    return Worded(text)


@wording("en", FaultLifted)
def fault_lifted(said: FaultLifted) -> Worded:
    words = "Lifted: {name}'s {movement} are as for anybody again, and {name} knows."
    return Worded(fill(words, name=said.athlete, movement=plural(said.movement)))


@wording("en", FaultOver)
def fault_over(said: FaultOver) -> Worded:
    words = "Good news: your coach is happy with your {movement}, and has lifted the note about them."
    return Worded(fill(words, movement=plural(said.movement)))


@wording("en", FaultsStanding)
def faults_standing(said: FaultsStanding) -> Worded:
    lines = [fill("{name}, {what}", name=name, what=about(fault, said.units)) for name, fault in said.shown]
    rows: tuple[Row, ...] = tuple((lift(fault, name),) for name, fault in said.shown)
    return Worded("Your notes that stand:\n" + bullets(lines), rows)


def about(fault: FaultShown, units: MassUnit) -> str:
    """`deadlifts: “your back rounds”, at most 30 kg`; plain text."""
    words = [f"\u201c{fault.words}\u201d"] if fault.words else []
    most = [] if fault.cap_kg is None else [f"at most {in_words(fault.cap_kg, units)}"]
    return f"{plural(fault.movement)}: {', '.join([*words, *most])}"


@wording("en", NoFaults)
def no_faults(said: NoFaults) -> Worded:
    whose = escape(said.athlete) if said.athlete else "anybody"
    return Worded(
        f"No note stands for {whose}. Write one like <i>note for {whose if said.athlete else 'Ilse'}: rounds the back in "
        "deadlifts</i>, or <i>deadlifts at most 30 kg</i>."
    )
