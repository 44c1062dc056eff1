"""A coach has a word for everybody: shown first, and it stands in the group once they tap."""

from core.desk.access import admitted
from core.desk.coached import Roster, athlete_in, coached_athletes, coached_groups
from core.desk.coaching.commands import Announce, AskInWords, DropAnnouncement, SendWord
from core.desk.coaching.says import (
    Announced,
    Announcement,
    AnnouncementDropped,
    AskAnnounce,
    AskWord,
    AthleteAsked,
    CoachSays,
    CoachWonders,
    WordSent,
    WordToWhom,
)
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.visit import Visit
from core.notation.people import (
    addressed,
    as_said_to_them,
    is_for_somebody,
    question_to,
    word_to,
    word_to_all,
    words_to_several,
)
from core.store.records import CoachWord, Membership, Purpose


async def ask_announce(visit: Visit, text: str) -> Outcome | None:
    """None for whoever coaches no group."""
    groups = await coached_groups(visit)
    if not groups:
        return None
    text = as_said_to_them(text)
    word = await visit.uow.words.keep(
        group_id=groups[0].id, person_id=visit.person.id, about="announce", text=text, now=visit.now
    )
    among = tuple((one.id, one.title) for one in groups)
    return visit.told(AskAnnounce(word=word.id, text=text, groups=among))


async def as_word_to_all(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Tell the group I'm sorry for the late post`."""
    words = word_to_all(text)
    return await ask_announce(visit, words) if words else None


async def as_word_to_one(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Message Ruth: well done`, `ask Ruth how it went`: to Ruth, or to nobody; None where nobody is addressed."""
    athletes = await coached_athletes(visit)
    asked = question_to(text, tuple(athletes)) if athletes else None
    if asked is not None:
        return await ask_word(visit, athletes[asked.name], asked.rest, asks=True)
    if not is_for_somebody(text):
        return None
    several = words_to_several(text, tuple(athletes))
    if several:
        return sum([await ask_word(visit, athletes[one.name], one.rest) for one in several], Outcome())
    found = word_to(text, tuple(athletes))
    whom = addressed(text)
    if found is None and whom and whom.isalpha() and await coached_groups(visit):
        return visit.told(to_nobody(whom, athletes))
    if found is None or not found.rest:
        return None
    return await ask_word(visit, athletes[found.name], found.rest)


async def ask_word(visit: Visit, athlete: Membership, text: str, *, asks: bool = False) -> Outcome:
    """Shown first: it goes out to them with a tap. `asks`: their answer comes back to the coach."""
    word = await visit.uow.words.keep(
        group_id=athlete.group_id, person_id=visit.person.id, about="announce", text=text, now=visit.now
    )
    asked = AskWord(
        word=word.id, person=athlete.person_id, athlete=athlete.person.name, text=word.text, asks=asks
    )
    return visit.told(asked)


def to_nobody(name: str, athletes: Roster) -> WordToWhom:
    return WordToWhom(name=name, known=tuple(one.person.name for one in athletes.everybody))


@admitted
async def send_word(visit: Visit, command: SendWord) -> Outcome:
    word = await waiting(visit, command.word)
    athlete = await athlete_in(visit.uow, word.group_id, command.person)
    chat = await visit.uow.chats.private_of(athlete.person_id)
    if chat is None:
        raise UnknownThing
    await visit.uow.words.forget(word.id, visit.now)
    said = Say(chat.id, CoachSays(coach=visit.person.name, text=word.text), key=f"word-to:{word.id}")
    return visit.told(WordSent(athlete=athlete.person.name)) + Outcome((said,), settles=True)


@admitted
async def ask_in_words(visit: Visit, command: AskInWords) -> Outcome:
    """The athlete is asked in private; what they write next goes back to this coach."""
    word = await waiting(visit, command.word)
    athlete = await athlete_in(visit.uow, word.group_id, command.person)
    chat = await visit.uow.chats.private_of(athlete.person_id)
    if chat is None:
        raise UnknownThing
    await visit.uow.words.forget(word.id, visit.now)
    refs = {"chat": visit.chat, "coach": visit.person.id, "group": word.group_id}
    await visit.uow.questions.ask(chat.id, "coach", refs, visit.now)
    said = Say(chat.id, CoachWonders(coach=visit.person.name, text=word.text), key=f"word-to:{word.id}")
    return visit.told(AthleteAsked(athlete=athlete.person.name)) + Outcome((said,), settles=True)


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
