"""One line each for what a coach asks how to do, or whether it can be done."""

from collections.abc import Mapping
from typing import Final

from bot.words.text import bullets
from bot.words.wording import Button, Worded, wording
from core.desk.commands import AskHelp
from core.desk.talk.says import HowItIsDone

HOW: Final[Mapping[str, str]] = {
    "change": (
        "Say the change, before or after it is posted: <i>make the run 300 m</i>, <i>swap burpees for squats</i>, <i>8 push-ups not "
        "10</i>. I read it back; of what stands in the group, everybody gets the new one once you post it."
    ),
    "halves": (
        "One group gets one session: I can't give half of it another. What comes nearest: for one person, <i>rows instead of the run "
        "for Bo</i>; for two lots that always differ, a second group chat with me in it."
    ),
    "old": (
        "I ask each of them about their health first, and whoever is older starts gently, without furniture to hang from and with a "
        "hand on something where a fall would be bad. For less: <i>easy week for Gunn</i>; to see theirs before they do: <i>hold "
        "Gunn</i>. What a body must spare only they tell me."
    ),
    "pregnant": (
        "Only she tells me, when I ask or with a word like <i>I'm 24 weeks pregnant</i>; I ask whether her doctor or midwife agrees, "
        "and then leave out what isn't for now. <i>hold Siri</i> shows you hers first, <i>easy week for Siri</i> makes it less."
    ),
    "young": (
        "I only work with adults: whoever is under 18 gets no version of mine. Your post in the group they read like "
        "everybody; what they do of it is between you and their parents."
    ),
    "join": (
        "They tap <i>Start with me</i> in the group, or <i>My version</i> under a post; I ask some eight short questions, about two "
        "minutes. Nobody but they can do that. <i>who is in the group?</i> names who has."
    ),
    "score": (
        "They write it to me, or you do: <i>Ilse got 7+12</i>. <i>scoreboard</i> shows it, <i>Ilse got 14:10 yesterday, not 15:10</i> "
        "puts one right, <i>delete Ilse's score from yesterday</i> takes one away."
    ),
    "post": (
        "<i>post it now</i>, <i>post it tomorrow at 7</i>, <i>post fri 5.30pm</i>; <i>move it to saturday 9</i> changes that, and "
        "<i>what's scheduled?</i> shows what goes out and when."
    ),
    "habit": (
        "I don't post by habit: paste each session and say when, <i>post it monday at 6</i>. A whole week may wait; each day on top of "
        "its own session, also in one message."
    ),
    "class": (
        "<code>class Tuesdays 18:30, 45 min</code> and its link sets one up; <i>no class next Tuesday</i>, <i>move Tuesday's class to "
        "19:00</i> change one date, and /classes shows them."
    ),
    "announce": "<code>announce: bring a towel</code>: I show it to you first, then it stands in the group.",
    "word": "<i>tell Ilse well done</i> goes to her alone once you tap; <i>ask Ilse how her knee is</i> brings you the answer.",
    "outside": (
        "I write in this chat and in the group's, nowhere else: no mail, no other app, no print. A post can be forwarded like any "
        "message, and /export gives each their own data as a file."
    ),
    "line": (
        "<i>no burpees for Ilse this week</i>, <i>rows instead of planks for Ilse</i>, <i>no jumping for Ilse ever</i>, <i>half the "
        "runs for Ilse</i>; a name alone shows hers, and a tap on a line changes it."
    ),
    "easy": "<i>easy week</i> asks less of everybody until Sunday, <i>easy week for Ilse</i> of one, <i>no easy week</i> ends it.",
    "hurt": (
        "They tell me, not you: <i>my left knee hurts</i>, and their lines change; a warning sign stops their training and I tell you. "
        "For reasons of your own: <i>no jumping for Ilse this week</i>."
    ),
    "away": "<i>leave Ilse out till friday</i>: I wait for nobody who is away. <i>Ilse is back</i> ends it.",
    "look": "A name alone, like <i>Ilse</i>, shows what I'd give them; <i>hold Ilse</i> keeps it back until you say OK.",
    "trained": "<i>who trained yesterday?</i>, <i>who hasn't trained this week?</i>, <i>how is it going?</i>, <i>how is Ilse?</i>",
    "withdraw": "<i>withdraw today's session</i>, or <i>withdraw friday's</i>: I ask first. Scores that were told stay.",
    "remove": "Take them out of the group's chat, and they are out here too. What I keep of them only they can erase, with /forget.",
    "hold": "<i>hold Ilse</i>: I show you hers first, and send it when you tap OK. <i>stop holding Ilse</i> ends it.",
    "units": "<i>I use pounds</i>, <i>my clock is New York</i>: each for themselves. The group's I asked when you set it up.",
    "write": (
        "As on a board: how it's done first (<code>AMRAP 12</code>, <code>3 rounds for time</code>, <code>5x5 back squat</code>), then "
        "one movement a line with its number. I read it back before anybody sees it."
    ),
}


@wording("en", HowItIsDone)
def how_it_is_done(said: HowItIsDone) -> Worded:
    lines = [HOW[one] for one in said.intentions]
    text = lines[0] if len(lines) == 1 else bullets(lines)
    return Worded(text, ((Button("What else can I write?", AskHelp()),),))
