"""What is asked, once more in plain words, for whoever doesn't know what is meant."""

from collections.abc import Mapping
from typing import Final

from bot.words.wording import Worded, wording
from core.desk.talk.says import WhatIsAsked

PLAINLY: Final[Mapping[str, str]] = {
    "consent": "I ask whether I may write down what you tell me, so that I can fit sessions to you. Tap Yes or No; without a yes I keep nothing.",
    "door": "I ask nothing yet. Tap Start with me in your group's chat, and we begin.",
    "screening": (
        "I ask a few things about your health, so that nothing I give you does you harm. Tap Yes or No. Not sure? Tap what is "
        "safer: that you have it."
    ),
    "signs": "I ask whether any of these happened to you lately, as then a doctor should see you before you train. Tap Yes or No.",
    "zone": "I ask which clock counts, so that times are right. The name of a big town near you is enough.",
    "own_zone": "I ask which clock counts for you, so that I write at the right time. The name of a big town near you is enough.",
    "units": "I ask whether weights should be in kilograms or in pounds. Tap one.",
    "equipment": (
        "I want to know what there is at home that you could lift or hold on to, so that nothing I give you needs more. Tap all that you have, "
        "or the last key if there is nothing: that's fine, too."
    ),
    "weight": "I want to know what is written on it, or what a scale says. If you don't know, tap the key below, and I leave it out.",
    "set": "I want to know what there is to train with in that place. A few words will do, like a list.",
    "limits": (
        "I want to know whether anything hurts, is injured, or must not be done, so that I leave it out. Nothing of that kind? Tap the key below. "
        "Else tell me in a word or two."
    ),
    "body_mass": "I ask how heavy you are, as in push-ups and the like you lift yourself. You need not tell: tap Skip.",
    "pair": (
        "Your coach writes two weights: the heavier for whoever is used to lifting, the lighter, which is less weight, for whoever "
        "is newer to it. In doubt, take the lighter: tap the second key."
    ),
    "stage": "I ask so that I know what is right for you now. Tap the line that fits best; if you can't tell, the one with the least.",
    "ability": (
        "I ask how many of these you could do one after the other, without a rest, before you'd have to stop. Nobody checks it. Never done any, or no idea? "
        "Tap None yet, and we start with something easier."
    ),
    "score": (
        "I ask how far you got: how many rounds and repetitions, or how long it took, as the session says. A number will do, like 7+12 or 8:43."
    ),
    "pain": "I want to know what hurts, so that I leave out what makes it worse. A word will do, like left knee. If nothing does, write no.",
    "class": "I ask when your class is. A day and a time will do, like Tuesday 18:30.",
    "lead": "I ask how long before a class I shall remind you. Tap one, or write a number of minutes.",
    "quiet": "I ask when I should leave you in peace. Two times will do, like 22:00 to 7:00.",
    "digest": "I ask when you would like my summary. A time will do, like 20:30.",
    "break": "I ask how long you haven't trained, so that I begin easily enough. Tap what comes nearest.",
    "line": "I ask which line of the session you mean. Tap it.",
    "which_draft": "I'd like to know which of your sessions that is for: tap it, or write its day.",
    "draft": "I ask whether that is a session of its own, or a change of the one before it. Tap one.",
}


@wording("en", WhatIsAsked)
def what_is_asked(said: WhatIsAsked) -> Worded:
    return Worded(f"{PLAINLY[said.kind]} (/help shows what else you can write.)")
