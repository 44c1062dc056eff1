"""Words for how a session felt."""

from bot.words.en.versions.version import part_words
from bot.words.text import fill
from bot.words.versions import limit_names
from bot.words.wording import Button, Worded, wording
from core.desk.commands import AllTold, RateEffort, TellHurt
from core.desk.today.says import (
    AskEffort,
    AskHurt,
    AskPart,
    AskWhere,
    AtHomeAlready,
    EffortNoted,
    FineNow,
    HurtNoted,
    NothingSpared,
    SoreIsUsual,
)
from core.scores.values import Hurt


@wording("en", AskEffort)
def ask_effort(said: AskEffort) -> Worded:
    """The scale's anchors follow Foster's form of the 0-10 scale (Foster et al. 2001)."""
    buttons = [Button(str(n), RateEffort(session=said.session, effort=n)) for n in range(1, 11)]
    return Worded(
        "How hard was the whole session for you? 2 easy, 3 moderate, 5 hard, 7 very hard, 10 all you had.",
        (tuple(buttons[:5]), tuple(buttons[5:])),
    )


@wording("en", AskPart)
def ask_part(said: AskPart) -> Worded:
    text = fill(
        "And part {part} ({name})? Write me that score too.",
        part=said.part,
        name=part_words(said.written, said.block),
    )
    return Worded(text, ((Button("That was all", AllTold(session=said.session)),),))


@wording("en", EffortNoted)
def effort_noted(said: EffortNoted) -> Worded:
    return Worded(f"Noted: {said.effort} of 10 for the whole session.")


@wording("en", AskHurt)
def ask_hurt(said: AskHurt) -> Worded:
    row = (
        Button("No", TellHurt(session=said.session, hurt="no")),
        Button("Sore muscles", TellHurt(session=said.session, hurt="sore")),
        Button("Something hurts", TellHurt(session=said.session, hurt="pain")),
    )
    return Worded("Thanks. Did anything hurt?", (row,))


@wording("en", AskWhere)
def ask_where(_: AskWhere) -> Worded:
    return Worded(
        "I'm sorry to hear that. Where does it hurt? Write it like <i>left wrist</i> and I'll spare it from now on; "
        "write <i>nothing</i> if it's gone. If the pain is strong, or stays for more than a few days, have it looked at. "
        "With pain in the chest, or if you feel faint, call your local emergency number: nobody watches this chat."
    )


@wording("en", SoreIsUsual)
def sore_is_usual(_: SoreIsUsual) -> Worded:
    return Worded(
        "Sore muscles after work are usual: move them a little, and it goes in a day or three. Once a session is posted "
        "tell me again, and I go easy on them. Is it sharp, or in a joint? Then write me that it hurts."
    )


NOTED = {
    Hurt.NO: "Good to hear. Rest well!",
    Hurt.SORE: "Sore muscles are a normal answer to new work; moving gently helps. Rest well!",
    Hurt.PAIN: "I'm sorry to hear that. Leave out what hurts, and have it looked at if it stays.",
}


@wording("en", HurtNoted)
def hurt_noted(said: HurtNoted) -> Worded:
    return Worded(NOTED[said.hurt])


@wording("en", FineNow)
def fine_now(said: FineNow) -> Worded:
    if not said.limits:
        return Worded(
            "Good: then I leave everything in. Warm up a little longer, and if a movement hurts, stop it and write me."
        )
    what = limit_names(said.limits, {}).removeprefix("sore ")
    text = (
        "Good that it's fine now: I leave everything in. If your {what} speaks up, stop that movement and write me "
        "that it hurts, and I go round it."
    )
    return Worded(fill(text, what=what))


@wording("en", NothingSpared)
def nothing_spared(said: NothingSpared) -> Worded:
    if not said.limits:
        return Worded("Good. Then nothing changes.")
    what = limit_names(said.limits, {}).replace("sore ", "")
    return Worded(fill("Good to hear about your {what}: I leave nothing out for it.", what=what))


@wording("en", AtHomeAlready)
def at_home_already(_: AtHomeAlready) -> Worded:
    return Worded("Welcome home! I go by what you have there.")
