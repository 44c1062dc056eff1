"""Words for what a coach tells everybody."""

from bot.words.text import fill
from bot.words.wording import Button, Worded, wording
from core.desk.coaching.commands import Announce, DropAnnouncement
from core.desk.coaching.says import Announced, Announcement, AnnouncementDropped, AskAnnounce

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


@wording("en", Announced)
def announced(said: Announced) -> Worded:
    return Worded(fill("It goes to {group} now.", group=said.group))


@wording("en", AnnouncementDropped)
def announcement_dropped(_: AnnouncementDropped) -> Worded:
    return Worded("All right, nobody reads it.")


@wording("en", Announcement)
def announcement(said: Announcement) -> Worded:
    return Worded(fill("<b>{coach}</b> has a word for everybody:\n{text}", coach=said.coach, text=said.text))
