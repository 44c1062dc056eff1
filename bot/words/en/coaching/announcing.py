"""Words for what a coach tells everybody."""

from bot.words.text import fill, listed
from bot.words.wording import Button, Worded, wording
from core.desk.coaching.commands import Announce, AskInWords, DropAnnouncement, PingQuiet, SendWord
from core.desk.coaching.says import (
    Announced,
    Announcement,
    AnnouncementDropped,
    AskAnnounce,
    AskPing,
    AskWord,
    CoachSays,
    CoachWaits,
    CoachWonders,
    NoSuchPart,
    Pinged,
    WordSent,
    WordToWhom,
)

# A label longer than this is cut by the platform.
LABEL = 40


@wording("en", AskAnnounce)
def ask_announce(said: AskAnnounce) -> Worded:
    no = Button("No, leave it", DropAnnouncement(word=said.word))
    posts = [
        Button(f"Post to {title}"[:LABEL], Announce(word=said.word, group=group))
        for group, title in said.groups
    ]
    text = fill("Shall everybody read this?\n\n<blockquote>{text}</blockquote>", text=said.text)
    return Worded(text, (*((one,) for one in posts), (no,)))


@wording("en", AskWord)
def ask_word(said: AskWord) -> Worded:
    yes = (
        Button(f"Ask {said.athlete}"[:LABEL], AskInWords(word=said.word, person=said.person))
        if said.asks
        else Button(f"Send to {said.athlete}"[:LABEL], SendWord(word=said.word, person=said.person))
    )
    no = Button("No, leave it", DropAnnouncement(word=said.word))
    ask = (
        "What {name} has, can do or must spare I take from {name} alone, so by itself that changes nothing yet. Shall I pass this on, "
        "so that they can tell me? Until then <i>hold {name}</i> shows you their versions first."
        if said.theirs
        else "Shall I ask {name} this, and bring you the answer?"
        if said.asks
        else "Shall {name} read this, and nobody else?"
    )
    text = fill(ask + "\n\n<blockquote>{text}</blockquote>", name=said.athlete, text=said.text)
    return Worded(text, ((yes,), (no,)))


@wording("en", WordSent)
def word_sent(said: WordSent) -> Worded:
    return Worded(
        fill(
            "It goes to {name} now. What they answer you comes with <i>tell my coach ...</i>",
            name=said.athlete,
        )
    )


@wording("en", CoachSays)
def coach_says(said: CoachSays) -> Worded:
    return Worded(fill("<b>{coach}</b> has a word for you: “{text}”", coach=said.coach, text=said.text))


@wording("en", CoachWonders)
def coach_wonders(said: CoachWonders) -> Worded:
    you = " you" if said.text.startswith("to ") else ""
    return Worded(
        fill(
            "<b>{coach}</b> asks{you} {text}. What you write next goes to {coach}.",
            coach=said.coach,
            you=you,
            text=said.text,
        )
    )


@wording("en", WordToWhom)
def word_to_whom(said: WordToWhom) -> Worded:
    who = fill("I know {names}.", names=listed(said.known)) if said.known else "Nobody has joined me yet."
    return Worded(fill("I can't tell who “{name}” is, so nobody reads it. ", name=said.name) + who)


@wording("en", Announced)
def announced(said: Announced) -> Worded:
    return Worded(fill("It goes to {group} now.", group=said.group))


@wording("en", AnnouncementDropped)
def announcement_dropped(_: AnnouncementDropped) -> Worded:
    return Worded("All right, nobody reads it.")


@wording("en", Announcement)
def announcement(said: Announcement) -> Worded:
    return Worded(fill("<b>{coach}</b> has a word for everybody:\n{text}", coach=said.coach, text=said.text))


@wording("en", AskPing)
def ask_ping(said: AskPing) -> Worded:
    session = said.title or f"{said.day:%A}'s session"
    if not said.names:
        return Worded(
            fill("Everybody whom I can write to has told me a score of {session}.", session=session)
        )
    text = fill(
        "No score of {session} yet from {names}. Shall I ask them how it went, each in private?",
        session=session,
        names=listed(said.names),
    )
    return Worded(text, ((Button("Yes, ask them", PingQuiet(session=said.session)),),))


@wording("en", Pinged)
def pinged(said: Pinged) -> Worded:
    return Worded(fill("Asked: {names}.", names=listed(said.names)))


@wording("en", CoachWaits)
def coach_waits(said: CoachWaits) -> Worded:
    return Worded(
        fill(
            "{coach} would like to hear how {session} went. Write me your score if you did it; if you rested, that's fine too.",
            coach=said.coach,
            session=f"“{said.title}”" if said.title else f"{said.day:%A}'s session",
        )
    )


@wording("en", NoSuchPart)
def no_such_part(said: NoSuchPart) -> Worded:
    return Worded(
        fill(
            "I keep no groups within your group, so I don't know whom “{who}” takes in, and nothing has changed. Name them, "
            "and it's done for each: <i>no push-ups for Bo and Cal this week</i>.",
            who=said.who,
        )
    )
