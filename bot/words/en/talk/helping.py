"""Words for what can be done here: a few lines by role, all of it behind a tap."""

from bot.words.text import bullets
from bot.words.wording import Button, Worded, wording
from core.desk.commands import AskHelp
from core.desk.says import Help

NOBODY_WATCHES = "Nobody watches this chat. In an emergency, call your local emergency number."

WAY_IN = (
    "Hello! I work in training groups. Open the button in your group's chat and we'll start.\n"
    "Coach: add me to your group and make yourself one of its admins."
)
DAILY = (
    (
        "/today shows your version of the newest session; <i>too hard</i>, <i>I have 15 minutes</i> or <i>I feel sick</i> "
        "change it"
    ),
    "your score, in your own words: <code>7+12</code>, <code>8:43</code>, <code>7 rounds and 12</code>",
    "anything for your coach: <i>tell my coach I'm away on Friday</i>",
)
ALSO = (
    "<i>how long should this take me?</i> says what I'd expect of you today, and how to pace it",
    "/board shows the scoreboard",
    "/classes shows the live classes; write <i>remind me 2 hours before</i> or <i>quiet hours 22 to 7</i>",
    "what comes or goes of your equipment: <i>bought a 24</i>, <i>sold the chair</i>, <i>trip: a band</i>",
    "how it is with you: <i>my left wrist hurts</i>, <i>I'm travelling, only a band</i>, <i>I need an easy week</i>",
    "what you can do: <i>I can do 10 deadlifts at 60 kg</i>",
    "<i>my last scores</i> shows what you did, <i>my notes</i> what you said for your coach",
    "/me shows what I know about you, and lets you change it; /export gives you all of it as a file",
    "<i>stop messaging me</i>: I only answer from then on; /forget erases everything I've stored about you",
)
DAILY_OF_COACH = (
    "paste a session, as you'd write it on a board, and I'll read it back to you",
    "an athlete's name shows what I'd give them; <i>hold</i> and the name keeps it for your OK",
    "<i>who's in today?</i> and <i>how is it going?</i> show the day so far",
)
ALSO_OF_COACH = (
    "<i>how long will it take them?</i> and <i>what if 12 kg?</i> try a session on everybody, and change nothing",
    "your athletes join with a tap in the group: <i>Start with me</i>, or <i>My version</i> under a post",
    "a word for everybody: <code>announce: bring a towel</code>, posted once you've looked at it",
    "a score of somebody: <i>Ilse got 7+12</i>; <i>who is in the group?</i> names everybody",
    (
        "how somebody moves: <i>note for Ilse: rounds her back in deadlifts</i>, or <i>Ilse: deadlifts at most 30 kg</i>; "
        "<i>notes</i> shows what stands"
    ),
    "<i>easy week</i> asks less of everybody until Sunday, <i>easy week for Ilse</i> of one",
    "set up a class by writing <code>class Tuesdays 18:30, 45 min</code> and its link",
    (
        "and as anybody who trains: <code>/today</code>, <code>/board</code>, <code>/classes</code>, <code>/me</code>, "
        "<code>/export</code>, <code>/forget</code>"
    ),
)


@wording("en", Help)
def help_(said: Help) -> Worded:
    if not said.joined:
        return Worded(f"{WAY_IN}\n\n{NOBODY_WATCHES}")
    daily, also = (DAILY_OF_COACH, ALSO_OF_COACH) if said.coach else (DAILY, ALSO)
    lines = (*daily, *also) if said.more else daily
    text = f"Here's what you can send me:\n\n{bullets(list(lines))}\n\n{NOBODY_WATCHES}"
    return Worded(text, () if said.more else ((Button("Show me all", AskHelp(more=True)),),))
