"""What medicines mean for training, the doctor first; and what to do where training did something to the body.

Facts from memory of the ACSM's Guidelines for Exercise Testing and Prescription (11th edition): with beta blockers the pulse
says little, so that effort goes by feeling (the talk test) and cooling down is slow; with blood thinners no knocks and falls;
with insulin or tablets that lower sugar, sugar is checked before and after; medicines for the blood pressure and water tablets
make dizzy on getting up and in the heat; statins may make muscles ache.
"""

from collections.abc import Mapping
from typing import Final

from bot.words.text import fill
from bot.words.versions import limit_names
from bot.words.wording import Worded, wording
from core.desk.today.says import HappenedInTraining, MedicinesGivenUp, MedicinesTold

_MEANS: Final[Mapping[str, str]] = {
    "pulse": (
        "Beta blockers and the like keep your pulse low however hard you work, so never go by a watch or a heart rate zone. Go by "
        "how it feels: as long as you can speak in short sentences, it's right. Warm up and cool down slowly."
    ),
    "thinner": (
        "With a blood thinner you bruise and bleed more easily, so no jumps and nothing that might make you fall. After a blow to "
        "the head get medical help at once, even if you feel fine."
    ),
    "sugar": (
        "With what lowers your sugar: check it before and after, keep something sweet within reach, and stop if you get shaky, "
        "sweaty or confused."
    ),
    "pressure": (
        "With something for your blood pressure: get up from the floor slowly, breathe out on the effort, and cool down for some "
        "minutes before you stand still. Dizzy? Sit down and stop."
    ),
    "water": "With water tablets: drink as your doctor says, take care in the heat, and get up slowly.",
    "statin": (
        "With a statin, muscles that ache or go weak without a reason, or dark urine, are for your doctor, and training waits."
    ),
    "heart": (
        "With medicine for your heart, train only as your doctor says, and never by the pulse: you can speak in short sentences all "
        "the way, and you warm up and cool down slowly. Chest pain, short breath or feeling faint: stop and call your local "
        "emergency number."
    ),
    "unknown": (
        "I don't know which ones. What to ask: do they change my pulse, my sugar, how easily I bleed, or how steady I stand? Tell "
        "me the name on the box, and I'll say what I know of it. Till then go by how it feels: you can still speak in sentences."
    ),
}


@wording("en", MedicinesTold)
def medicines_told(said: MedicinesTold) -> Worded:
    ask = "Your doctor or pharmacist has the first say: ask them what it means for training, if you haven't yet."
    parts = [ask, *(_MEANS[kind] for kind in said.kinds)]
    if not said.takes and said.kinds != ("unknown",):
        parts.append(
            "Do you take it yourself? Tell me, like <b>I take beta blockers</b>, and your versions go by it."
        )
    return Worded("\n\n".join(parts))


@wording("en", MedicinesGivenUp)
def medicines_given_up(said: MedicinesGivenUp) -> Worded:
    # Beta blockers stopped at a stroke can bring on chest pain: the warning on their leaflets, from memory.
    ask = (
        "Did your doctor take you off them? If you stopped by yourself, call your doctor or pharmacist before you train: some must "
        "never be stopped at a stroke."
    )
    parts = ["Good that your doctor decided it." if said.by_doctor else ask]
    if said.gone:
        parts.append(
            fill(
                "I've taken {gone} off what I go by, from your next version on. Start with an easy week.",
                gone=limit_names(said.gone, {}),
            )
        )
    if said.stays:
        parts.append(
            "What you take them for stays noted. Your doctor says it's over? Tell me so, or change it under /me."
        )
    if not said.gone and not said.stays:
        parts.append("I had noted nothing of them, so nothing changes in your versions.")
    return Worded(" ".join(parts))


# Common practice, no source.
_HAPPENED: Final[Mapping[str, str]] = {
    "queasy": (
        "Stopping was right. Walk it off slowly, sit down, sip some water. Mostly it was too hard, too warm or too soon after a meal: "
        "next time start slower. If it doesn't pass within half an hour, or comes again, ask a doctor before you train. With "
        "chest pain, short breath or feeling faint: call your local emergency number."
    ),
    "cramp": (
        "A cramp: stop, pull the muscle long gently till it lets go, walk a little and drink something. It may stay sore for a day. "
        "Next time warm up longer and start slower. If it comes again and again, or a calf hurts when you walk, swells or feels "
        "warm, see a doctor before you train."
    ),
}


@wording("en", HappenedInTraining)
def happened_in_training(said: HappenedInTraining) -> Worded:
    return Worded(_HAPPENED[said.what])
