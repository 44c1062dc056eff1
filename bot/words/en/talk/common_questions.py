"""Answers to what people ask about the bot itself."""

from collections.abc import Mapping
from typing import Final

from bot.words.wording import Worded, wording
from core.desk.talk.says import CommonAnswer, Stage, WhatItGoesBy

_ANSWERS: Final[Mapping[str, str]] = {
    "fit": (
        "No. I make the session for what you can do today, and whoever has never trained starts gently. A few safety questions "
        "come first, so that nobody starts with what isn't good for them."
    ),
    "what": (
        "I'm a program, no person and no doctor. Your coach posts one session for the group; I make a version of it that fits "
        "you: your equipment, what you can do, what your body must spare. Then you tell me your score."
    ),
    "seen": (
        "Nobody sees you train: there's no camera and nothing to film, only what you write here. The group sees your name and a "
        "score on the board if you tell me one; your coach sees your version. What hurts, what you spare and what you weigh stays "
        "between us unless you share it."
    ),
    "cost": "I ask nobody for money. Whether the training costs something is for your coach to say.",
    "friend": (
        "Gladly: they have to be in your group's chat, so ask your coach to add them. There they tap <i>Start with me</i>, and I take "
        "it from there."
    ),
    "rest": (
        "Yes: sit down, breathe and drink whenever you like, and go on when you're ready. Nobody counts your rests against you. "
        "With pressure in the chest, dizziness or unusual breathlessness stop for good and get help."
    ),
    "long": (
        "The questions take some two minutes in all. A session is as long as your coach writes it, often twenty to forty minutes, "
        "and you may stop or sit down whenever you need to. Once you have your version, ask me again."
    ),
    "needs": (
        "Nothing has to be bought. Tell me what there is, a chair or a bag of books counts, and your version uses just that. With "
        "nothing at all it works too."
    ),
    "calories": (
        "I don't count calories: they differ too much from body to body, and how you train says more. How hard it was for you, "
        "from 1 to 10, is what I keep."
    ),
    # Common practice, no source; dark urine after hard training is a known sign of muscle breakdown.
    "sore": (
        "After something new, muscles are often sore for two or three days; easy movement helps, and a gentle day is fine: write "
        "<i>my legs are sore</i>. If it is sharp, in a joint, or gets worse, stop and have it looked at. With dark urine, swelling or "
        "weakness, see a doctor the same day."
    ),
    # The talk test, and that some medicines keep the pulse low: from memory of the ACSM's Guidelines (11th edition).
    "pulse": (
        "I go by how it feels, not by the pulse: it differs a lot from one to the next, and some medicines for heart or blood pressure keep it low "
        "however hard you work. Can you speak in sentences? Easy. Short ones? Right for most work. Only words? Hard. If you take such "
        "medicine, tell me, and ask your doctor what it means for training."
    ),
    # Common practice, no source, as all of the next five.
    "indoors": (
        "Outside, on a treadmill or on the spot: a run counts wherever you do it. Icy, dark or no room? Write <i>swap the run for "
        "something indoors</i>, and another line takes its place."
    ),
    "shoes": (
        "Flat, firm ones for lifting and jumping, running shoes that don't pinch for runs, and none that slip. Barefoot only where "
        "nothing can fall on your toes, and not with diabetes or numb feet. With pain in a foot or shin ask somebody who can look at it."
    ),
    "food": (
        "A proper meal two to three hours before, or something small an hour before; sip water, and eat within a few hours after. "
        "With diabetes, a pregnancy, kidney trouble or medicines your doctor or dietitian comes first."
    ),
    "stretch": (
        "Warm muscles only, so after the session: calves against a wall with the heel down and the knee straight, then bent; thighs, hips and "
        "chest as you like. Ease in till it pulls, 20 to 30 seconds, breathe, no bouncing, never into pain. A strain or a joint that "
        "hurts isn't for stretching: write me that it hurts."
    ),
    "often": (
        "Your coach's plan counts. As a rule two or three hard days a week with an easy day between do more than seven; running every "
        "day wants years of getting used to it. New pain, bad sleep or a pulse that stays high in the morning: take a day off."
    ),
    # The talk test, from memory of the ACSM's Guidelines (11th edition); the rest is common practice, no source.
    "paces": (
        "By feel: <b>easy</b>, you speak in sentences; <b>tempo or threshold</b>, a few words at a time, what you could hold for about "
        "an hour; <b>intervals</b>, hardly a word, what you could hold for ten minutes or so. For a pace in numbers tell me a run, like "
        "<i>5k pb 24:30</i>, and ask your coach which share of it they want."
    ),
    "leave": (
        "Leave the group's chat, and I send you nothing of it any more. <i>forget me</i> erases all I have stored about you."
    ),
    "groups": (
        "Yes: add me to each group as one of its admins. When you paste a session, what I read back says for which group it is, "
        "and a tap moves it to the other. What's posted, the board and the people stay apart."
    ),
    "week": (
        "One session at a time: paste it, then <i>post it friday at 6:30</i>, then paste the next. As many as you like may wait; "
        "<i>what's scheduled?</i> lists them, and a weekday at the head of a session is the day it is meant for."
    ),
    "undo": (
        "Write <i>undo</i> for the last thing, or tap <i>Take it back</i> under it. <i>delete Jonas' score from yesterday</i> takes "
        "one off the board, <i>withdraw friday's session</i> takes back a post, <i>Jonas 7+10</i> puts a score right."
    ),
    "one": (
        "A name alone, like <i>Jonas</i>, shows what I'd give them; tap a line to change it. Or say it: <i>no burpees for Jonas this "
        "week</i>, <i>rows instead of planks for Jonas</i>, <i>Jonas lighter today</i>, <i>bodyweight only for Jonas on friday</i>."
    ),
    "safe": (
        "I can't tell that, and neither can their session: in a pregnancy or after a birth their midwife or doctor says so first, with "
        "pain, an illness or a condition their doctor or therapist. What it comes to they tell me themselves, and I follow it in every "
        "version. Until then <i>hold Siri</i>, with their name, shows you their versions first."
    ),
    "coaches": (
        "Whoever is an admin of the group's chat coaches it with you: make them one, and have them write to me. You both see "
        "and decide the same."
    ),
    "next": "",
}
_NEXT: Final[Mapping[Stage, str]] = {
    "coach": (
        "Paste a session: I read it back and show how it lands, you post it, and everybody gets their own version. Then scores come "
        "in, and <i>who needs me?</i> tells whom to look at."
    ),
    "consent": "If you say yes, a few safety questions come, then what you have to train with, and then your version of the session.",
    "screening": "A few safety questions, then what you have to train with, and then your version of the session.",
    "stopped": "First see a doctor about what you told me. Once you're cleared, write it to me, and we go on gently.",
    "nothing_posted": "Now your coach posts a session. Tap <i>My version</i> under it, and I'll ask the few things I need for it.",
    "no_version": "Write /today: I ask the few things I still need, and then you have your version.",
    "has_version": (
        "Train when it suits you, as it stands in your version above. Is a line too hard, or does something hurt? Tell me. "
        "When you're done, write me how it went, and I ask how hard it was."
    ),
    "done": "You're done for today, well done. The next session comes when your coach posts it; until then, rest.",
}


@wording("en", WhatItGoesBy)
def what_it_goes_by(_: WhatItGoesBy) -> Worded:
    return Worded(
        "Your version goes by what you have, what you can do and what your body must spare; where I don't know you yet I begin "
        "light. Once it's there, ask me why of any line, or write <i>too easy</i>."
    )


@wording("en", CommonAnswer)
def common_answer(said: CommonAnswer) -> Worded:
    return Worded(_NEXT[said.stage] if said.topic == "next" else _ANSWERS[said.topic])
