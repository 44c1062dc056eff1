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
    "You coach one: add me to your group's chat, as one of its admins, and I'll say what comes next."
)
# By topic; the first topic is what is done every day, and all that is said at first.
OF_ATHLETE = {
    "Every day": (
        "/today: your version. <i>too hard</i>, <i>I have 15 minutes</i> or <i>I feel sick</i> change it",
        "<code>7+12</code> or <code>8:43</code>: your score, in your own words",
        "<i>tell my coach I'm away on Friday</i>: a word for your coach",
    ),
    "Your session": (
        "<i>how long should this take me?</i> says what I'd expect of you, and how to pace it",
        "<i>push-ups too hard</i>, <i>rows instead of the run</i>, <i>make it shorter</i> change it at once",
        "<i>how do I do a goblet squat?</i>",
        "/board shows the scoreboard, <i>my last scores</i> what you did",
    ),
    "What you have, and how you are": (
        "<i>bought a 24</i>, <i>sold the chair</i>, <i>I'm travelling, only a band</i>",
        "<i>I use pounds</i>, <i>my clock is New York</i>",
        "<i>my left wrist hurts</i>, <i>I need an easy week</i>",
        "<i>I can do 10 deadlifts at 60 kg</i>",
    ),
    "Classes and reminders": (
        "/classes shows the live classes",
        "<i>remind me 2 hours before</i>, <i>quiet hours 22 to 7</i>",
    ),
    "To put something right": (
        "<i>undo</i> takes back the last thing, <i>delete my score</i> one from before, <i>sorry, 7+10</i> changes it",
        "<i>my knee is fine again</i>, <i>I feel well again</i>, <i>back home</i> end what you told me before",
    ),
    "What I know of you": (
        "/me shows it and lets you change it, <i>my notes</i> what you said for your coach",
        "/export gives you all of it as a file; /forget erases it",
        "<i>stop messaging me</i>: from then on I only answer",
    ),
}
OF_COACH = {
    "Every day": (
        "paste a session, as you'd write it on a board: I read it back and show how it lands",
        (
            "<i>make the run 400 m</i> changes it, <i>post it tomorrow at 7</i> posts it, <i>withdraw today's session</i> "
            "takes it back"
        ),
        "<i>who needs me?</i>: the versions that want your eyes; <i>how is it going?</i>: the day so far",
        "<i>Ilse got 7+12</i>: a score of somebody",
        "your athletes join with a tap in the group: <i>Start with me</i>, or <i>My version</i> under a post",
    ),
    "A session": (
        "write it in any way: <code>AMRAP 12</code>, <code>5 rounds for time</code>, <code>5x5 back squat @ 60 kg</code>, one movement a line",
        "<i>take out the burpees</i> and <i>make it 4 rounds</i> change a draft, <i>discard it</i> drops it",
        "with several about, name the day: <i>make friday's push-ups 6</i>, <i>withdraw friday's</i>",
        "<i>what's scheduled?</i> shows what goes out and when, <i>post it at 8 instead</i> changes the hour",
        "<i>how long will it take them?</i> and <i>what if 12 kg?</i> try it on everybody, and change nothing",
    ),
    "One athlete": (
        "a name shows what I'd give them; <i>hold</i> and the name keeps it for your OK",
        (
            "<i>no burpees for Ilse this week</i>, <i>rows instead of planks for Ilse</i>, <i>Ilse lighter today</i>, "
            "<i>bodyweight only for Ilse on friday</i>"
        ),
        "<i>note for Ilse: rounds her back in deadlifts</i>, <i>Ilse: deadlifts at most 30 kg</i>; <i>notes</i> shows what stands",
    ),
    "The group": (
        "<i>who's in today?</i>: who signed up, looked and told a score",
        "<i>who is in the group?</i> names everybody, <i>how is Ilse?</i> says what they did lately",
        "<code>announce: bring a towel</code>, posted once you've looked at it",
        "<i>easy week</i> asks less of everybody until Sunday, <i>easy week for Ilse</i> of one, <i>no easy week</i> ends it",
        "<code>class Tuesdays 18:30, 45 min</code> and its link: a class",
    ),
    "To put something right": (
        "<i>undo</i> takes back the last thing; <i>delete Ilse's score from yesterday</i>, <i>withdraw today's session</i>",
    ),
    "As anybody who trains": ("/today, /board, /classes, /me, /export, /forget",),
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
