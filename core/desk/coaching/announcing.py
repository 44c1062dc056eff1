"""A coach has a word for everybody: shown first, and it stands in the group once they tap."""

from core.desk.access import admitted
from core.desk.coached import coached_groups
from core.desk.coaching.commands import Announce, DropAnnouncement
from core.desk.coaching.says import Announced, Announcement, AnnouncementDropped, AskAnnounce
from core.desk.errors import StalePress
from core.desk.outcome import Outcome, Say
from core.desk.visit import Visit
from core.store.records import CoachWord, Purpose


async def ask_announce(visit: Visit, text: str) -> Outcome | None:
    """None for whoever coaches no group."""
    groups = await coached_groups(visit)
    if not groups:
        return None
    word = await visit.uow.words.keep(
        group_id=groups[0].id, person_id=visit.person.id, about="announce", text=text, now=visit.now
    )
    among = tuple((one.id, one.title) for one in groups)
    return visit.told(AskAnnounce(word=word.id, text=text, groups=among))


@admitted
async def announce(visit: Visit, command: Announce) -> Outcome:
    word = await waiting(visit, command.word)
    group = await visit.group(command.group)
    await visit.uow.words.forget(word.id, visit.now)
    says = Announcement(coach=visit.person.name, text=word.text)
    post = Say(group.chat_id, says, Purpose.POST, key=f"announce:{word.id}")
    return visit.told(Announced(group=group.title)) + Outcome((post,), settles=True)


@admitted
async def drop_announcement(visit: Visit, command: DropAnnouncement) -> Outcome:
    word = await waiting(visit, command.word)
    await visit.uow.words.forget(word.id, visit.now)
    return visit.told(AnnouncementDropped()) + Outcome(settles=True)


async def waiting(visit: Visit, word_id: int) -> CoachWord:
    """Once it stood in a group, or was dropped, it is gone."""
    word = await visit.uow.words.find(word_id, visit.person.id)
    if word is None or word.about != "announce":
        raise StalePress
    return word
