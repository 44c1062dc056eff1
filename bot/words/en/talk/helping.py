"""Words for what can be done here: a few lines by role; all of it behind a tap, folded by topic."""

from bot.words.text import bullets, folded
from bot.words.wording import Button, Worded, wording
from core.desk.commands import AskHelp, GiveConsent
from core.desk.says import Help

NOBODY_WATCHES = "Nobody watches this chat. In an emergency, call your local emergency number."

WAY_IN = (
    "Hello! I'm a helper for small training groups. A coach posts one session, and I make it fit each of you: what you "
    "have at home, what you can do, what your body must spare. I keep only what you agree to.\n\n"
    "You train in a group: tap <i>Start with me</i> in its chat. There's no such button? Then I'm not in it yet; ask "
    "your coach.\n"
    "You coach one: am I in your group's chat, as one of its admins? Then tap <i>Start with me</i> there, and I ask you the "
    "two things I need. If not, add me first."
)
# By what one wants to do; the first topic is all that is said at first.
OF_ATHLETE = {
    "First of all": (
        "/today: your version. <i>too hard</i>, <i>my knee hurts</i>, <i>I have 15 minutes</i>, <i>bought a 24</i> change it",
        "<code>7+12</code> or <code>8:43</code>: your score, in your own words; <i>tell my coach I'm away on Friday</i>: a word for them",
        "/classes: the live classes; /me: what I know of you; /forget erases it",
    ),
    "Make today's session fit": (
        "<i>push-ups too hard</i>, <i>rows instead of the run</i>, <i>make it shorter</i> change it at once",
        "<i>I feel sick</i>, <i>I need an easy week</i>, <i>I'm travelling, only a band</i>",
        "<i>how long should this take me?</i> says what I'd expect of you, and how to pace it",
        "<i>how do I do a goblet squat?</i>",
    ),
    "Say what hurts, or is fine again": (
        "<i>my left wrist hurts</i>, <i>no jumping</i>: I leave it out from then on",
        "<i>my knee is fine again</i>, <i>I feel well again</i>, <i>back home</i> end what you told me before",
    ),
    "Say what you have and can": (
        "<i>bought a 24</i>, <i>sold the chair</i>, <i>I can do 10 deadlifts at 60 kg</i>",
        "<i>I use pounds</i>, <i>my clock is New York</i>",
    ),
    "Look at scores, or put one right": (
        "/board shows the scoreboard, <i>my last scores</i> what you did",
        "<i>sorry, 7+10</i> changes it, <i>delete my score</i> takes it away, <i>undo</i> takes back the last thing",
    ),
    "Classes and reminders": (
        "/classes shows the live classes",
        "<i>remind me 2 hours before</i>, <i>quiet hours 22 to 7</i>",
    ),
    "What I know of you": (
        "/me shows it and lets you change it, <i>my notes</i> what you said for your coach",
        "/export gives you all of it as a file; /forget erases it",
        "<i>stop messaging me</i>: from then on I only answer",
    ),
}
OF_COACH = {
    "First of all": (
        "<b>give them a session</b>: paste it as you'd write it on a board, I read it back and show how it lands",
        "<b>change it</b>: <i>make the run 400 m</i>; <b>post it</b>: <i>post it tomorrow at 7</i>",
        "<b>see how it goes</b>: <i>who needs me?</i>, <i>how is it going?</i>, <i>who hasn't trained this week?</i>",
        "<b>a class</b>: <code>class Tuesdays 18:30, 45 min</code>; <b>an easy week</b>: <i>easy week for Ilse</i>",
        "<b>somebody's line</b>: <i>no burpees for Ilse this week</i>; <b>a holiday</b>: <i>leave Ilse out till friday</i>",
        "<b>a score</b>: <i>Ilse got 7+12</i>; <b>a wrong one</b>: <i>delete Ilse's score from yesterday</i>",
        "<b>new people</b> join with a tap in the group: <i>Start with me</i>, or <i>My version</i> under a post",
    ),
    "Write a session": (
        "in any way: <code>AMRAP 12</code>, <code>5 rounds for time</code>, <code>5x5 back squat @ 60 kg</code>, one movement a line",
        "a run: <code>Warm-up: 10 min easy run</code>, <code>6 x 800 m, rest 90 s</code>, <code>Cool-down: 10 min easy run</code>, each in a line",
        "two days in one message, each under its own <code>Mon 9th</code>: I make a draft of each",
    ),
    "Change, move or drop a session": (
        "<i>take out the burpees</i>, <i>10 burpees not 15</i>, <i>make it 4 rounds</i>, <i>the plank comes after the amrap</i>",
        "<i>start with 5 min easy run</i>, <i>finish with 5 min easy walk</i>",
        "<i>post it at 8 instead</i>, <i>move it to friday 7pm</i>; <i>what's scheduled?</i> shows what goes out and when",
        "with several about, name the day: <i>make friday's push-ups 6</i>, <i>withdraw friday's</i>; <i>discard it</i> drops a draft",
        "<i>how long will it take them?</i> and <i>what if 12 kg?</i> try it on everybody, and change nothing",
    ),
    "Decide for one athlete": (
        "a name shows what I'd give them; <i>hold</i> and the name keeps it for your OK",
        (
            "<i>no burpees for Ilse this week</i>, <i>rows instead of planks for Ilse</i>, <i>Ilse lighter today</i>, "
            "<i>fewer deadlifts for Ilse</i>, <i>bodyweight only for Ilse on friday</i>"
        ),
        "<i>note for Ilse: rounds her back in deadlifts</i>, <i>Ilse: deadlifts at most 30 kg</i>; <i>notes</i> shows what stands",
    ),
    "Give them less, or leave somebody out": (
        "<i>easy week</i> asks less of everybody until Sunday, <i>easy week for Ilse</i> of one, <i>no easy week</i> ends it",
        "<i>Ilse is on holiday till the 16th, leave her out</i>: I wait for nobody who is away",
    ),
    "Ask, or tell them something": (
        "<i>who's in today?</i>: who signed up, looked and told a score; <i>who trained last week?</i>",
        "<i>who is in the group?</i> names everybody, <i>how is Ilse?</i> says what they did lately",
        "<i>ask Ilse how her knee is</i>: I ask, and bring you the answer; <i>tell Ilse well done</i>",
        "<code>announce: bring a towel</code>, posted once you've looked at it",
    ),
    "Run classes": (
        "<code>class Tuesdays 18:30, 45 min</code> and its link; /classes shows them",
        "<i>no class next Tuesday</i>, <i>move Tuesday's class to 19:00</i>",
    ),
    "Put something right": (
        "<i>undo</i> takes back the last thing; <i>Ilse got 14:10 yesterday, not 15:10</i>; <i>withdraw today's session</i>",
    ),
    "Train with them": ("/today, /board, /classes, /me, /export, /forget",),
}


@wording("en", Help)
def help_(said: Help) -> Worded:
    if not said.joined:
        return Worded(f"{WAY_IN}\n\n{NOBODY_WATCHES}")
    if said.door is not None:
        return at_the_door(said.door, said_no=said.said_no)
    daily, *topics = (OF_COACH if said.coach else OF_ATHLETE).items()
    text = f"Here's what you can send me:\n\n{bullets(list(daily[1]))}"
    if not said.more:
        return Worded(f"{text}\n\n{NOBODY_WATCHES}", ((Button("Show me all", AskHelp(more=True)),),))
    folds = [folded(f"<b>{topic}</b>\n{bullets(list(lines))}") for topic, lines in topics]
    return Worded("\n".join([text, *folds, NOBODY_WATCHES]))


def at_the_door(group: int, *, said_no: bool) -> Worded:
    """What there is for whoever lets nothing be kept, and the way in."""
    first = (
        "You said no to notes, so I keep nothing of you and make you no version."
        if said_no
        else (
            "Your coach posts one session, and I make it fit you: what you have, what you can do, what your body must spare. "
            "First I ask whether I may keep notes; then come some eight short questions, about two minutes in all."
        )
    )
    text = (
        f"{first} Without them you train from the session in the group as it is.\n\n"
        "Ask me anything about it, like <i>who sees what I tell you?</i> or <i>when is class?</i>"
    )
    yes = ((Button("Yes, keep my notes", GiveConsent(group=group)),),) if said_no else ()
    return Worded(f"{text}\n\n{NOBODY_WATCHES}", yes)
