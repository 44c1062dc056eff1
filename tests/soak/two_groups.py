"""Two groups that know nothing of each other, one athlete in both, and a marked word in everything that is told.

`World.secrets` says for each word in whose chats it may stand. What anybody sees beyond that is a leak.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import timedelta

from bot.rehearsal.chats import Chat, Content
from bot.rehearsal.diary import Entry
from bot.rehearsal.platform import Platform
from bot.rehearsal.voice import Group, Person, Room
from tests.acceptance.people import Crew, answers_what_is_asked, founded, passes_screening, start_link

POST_A = "Plimbotic Tuesday\nAMRAP 12\n5 push-ups\n10 goblet squats @ 16/12 kg"
CALLED = {
    "Ann": "Annquilla",
    "Ben": "Bennwyck",
    "Both": "Jointhilde",
    "Gone": "Gonzella",
    "stranger": "Strangwyn",
    "ex-coach": "Exeter",
}
# What it was told of somebody's standing may be believed for a while where the platform doesn't tell of changes.
_LONG_ENOUGH = timedelta(minutes=15)
POST_B = "Quandressa Tuesday\nAMRAP 14\n5 push-ups\n10 goblet squats @ 16/12 kg"


@dataclass(frozen=True)
class Leak:
    word: str
    where: str
    text: str


@dataclass
class World:
    room: Room
    platform: Platform
    a: Crew
    b: Crew
    people: dict[str, Person]
    secrets: dict[str, frozenset[int]] = field(default_factory=dict)
    stood: set[str] = field(default_factory=set)
    said: set[tuple[int, str]] = field(default_factory=set)
    _places: dict[int, int] = field(default_factory=dict)

    def __getitem__(self, name: str) -> Person:
        return self.people[name]

    def secret(self, word: str, *places: Person | Group) -> None:
        """From now on this word may stand in the chats of these, and nowhere else."""
        self.secrets[word] = frozenset(place.id for place in places)

    def chats_of(self, person: Person) -> list[int]:
        """Where they can write: their private chat, and the groups that they are in."""
        user = self.platform.users[person.id]
        groups = [one for one in (self.a.group, self.b.group) if _group(self, one).member(user).is_present]
        return [person.id, *(one.id for one in groups)]

    def seen_since(self) -> Iterator[tuple[int, str, Entry]]:
        """Yield what the bot showed since the last call: for whom (a chat's id), the words, the entry."""
        groups = [(_group(self, crew.group), crew.group.id) for crew in (self.a, self.b)]
        private = [
            (self.platform.private_chat(self.platform.bot, self.platform.users[one.id]), one.id)
            for one in self.people.values()
        ]
        for chat, chat_id in groups + private:
            for entry in self._new(chat.diary.entries, chat_id):
                if entry.from_bot and entry.kind != "toast":
                    yield chat_id, _words(self.platform, entry.content), entry
        for one in self.people.values():
            for entry in self._new(self.platform.users[one.id].diary.entries, -one.id):
                yield one.id, f"{entry.detail} {entry.url or ''}", entry

    def _new(self, entries: list[Entry], key: int) -> list[Entry]:
        place = self._places.get(key, 0)
        self._places[key] = len(entries)
        return entries[place:]

    def knows(self, chat_id: int, text: str) -> bool:
        """Whether whoever writes there may know all the marked words of a text."""
        return all(
            chat_id in may for word, may in self.secrets.items() if re.search(word, text, re.IGNORECASE)
        )

    def says(self, chats: Iterable[int], text: str) -> None:
        """What somebody said themselves may be said back to them, and kept as theirs."""
        found = [word for word in self.secrets if re.search(word, text, re.IGNORECASE)]
        self.said |= {(chat_id, word) for chat_id in chats for word in found}

    def leaks(self) -> Iterator[Leak]:
        """Yield what came since the last call to whom it may not.

        `stood` gathers the words that were seen where they may be: one that never was guards nothing.
        """
        for chat_id, words, entry in self.seen_since():
            for word, may in self.secrets.items():
                if not re.search(word, words, re.IGNORECASE):
                    continue
                if chat_id in may:
                    self.stood.add(word)
                elif (chat_id, word) not in self.said:
                    yield Leak(word, f"{entry.kind} to {self.name_of(chat_id)}", words[:400])

    def name_of(self, chat_id: int) -> str:
        for name, person in self.people.items():
            if person.id == chat_id:
                return name
        return "group A" if chat_id == self.a.group.id else "group B"


def _group(world: World, group: Group) -> Chat:
    return world.platform.groups[group.id]


def _words(platform: Platform, content: Content) -> str:
    """Everything a person could read in a message: text, buttons, links, and the file with its name."""
    keyboard = (content.keyboard or {}).get("inline_keyboard", [])
    shown = [button["text"] + " " + button.get("url", "") for row in keyboard for button in row]
    file = content.media.file if content.media else None
    carried = f"{file.name} {file.content.decode(errors='replace')}" if file else ""
    return " ".join([content.text or "", *shown, carried])


async def built(room: Room, platform: Platform) -> World:
    """Everybody is there and has told something; the ex-coach is demoted and the ex-member removed since."""
    a = await founded(room, "Amberfield crew", coach="Marit")
    b = await founded(room, "Birchwater crew", coach="Rurik")
    world = World(room, platform, a, b, {"coach A": a.coach, "coach B": b.coach})
    for name, called in CALLED.items():
        world.people[name] = await room.person(called)
    await _come(world)
    await a.gets(POST_A)
    await b.gets(POST_B)
    await _before_the_change(world)
    await a.coach.demotes(world["ex-coach"], in_=a.group)
    await a.coach.removes(world["Gone"], from_=a.group)
    await room.travels(_LONG_ENOUGH)
    list(world.seen_since())
    _mark(world)
    await _tell(world)
    return world


async def _come(world: World) -> None:
    a, b = world.a, world.b
    for crew, names in ((a, ("Ann", "Both", "Gone", "ex-coach")), (b, ("Ben", "Both"))):
        for name in names:
            await world[name].joins(crew.group)
            if name == "Both" and crew is b:
                await world[name].opens(await start_link(crew.group))
            else:
                await passes_screening(world[name], await start_link(crew.group))
    await b.coach.promotes_bot(b.group)  # one group where it is told of members, one where it must ask
    await a.coach.promotes(world["ex-coach"], in_=a.group)
    await world["ex-coach"].opens(await start_link(a.group))
    await world["ex-coach"].hears("")


async def _before_the_change(world: World) -> None:
    """Who is coach or member for a last time looks at everything, and keeps the buttons."""
    ex, gone = world["ex-coach"], world["Gone"]
    await ex.says("Exeterish Monday\nAMRAP 9\n5 push-ups\n10 air squats")
    await ex.hears("Here's how I read it")
    for text in ("who reported", "who needs me", "roster", "notes", "how is Annquilla", "/board", "/me"):
        await ex.says(text)
        await ex.hears("")
    for one in (gone, world["Ann"], world["Ben"]):
        await answers_what_is_asked(one)
    await gone.says("4+2")
    await gone.hears("Noted")


def _mark(world: World) -> None:
    a, b = world.a, world.b
    ann, ben, both, ex = (world[name] for name in ("Ann", "Ben", "Both", "ex-coach"))
    in_a = (a.group, a.coach, ann, both, ex)
    in_b = (b.group, b.coach, ben, both)
    for word in ("Plimbotic", "Amberfield"):  # the removed one read these while they were in
        world.secret(word, *in_a, world["Gone"])
    for word in ("Annquilla", r"11 rounds \+ 7", "kwijibarn"):
        world.secret(word, *in_a)
    for word in ("Quandressa", "Birchwater", "Bennwyck", r"10 rounds \+ 6", "zorblatt"):
        world.secret(word, *in_b)
    world.secret(r"9 rounds \+ 4", *in_a)
    world.secret(r"8 rounds \+ 3", *in_b)
    for word in ("Vextorious", "snorvelby"):
        world.secret(word, a.coach, *([ann] if word == "snorvelby" else []))
    world.secret("frimblesnatch", a.coach, ann)
    world.secret("mumbledrift", b.coach)
    world.secret("dwindleflop", b.coach, ben)
    world.secret("glaucoma", ann)
    world.secret("grobblewumm", ann)
    world.secret("epilep", both)
    world.secret("osteopor", ben, b.coach)  # he lets his coach read it
    world.secret("63[.]7", ann)


async def _tell(world: World) -> None:
    """Everything marked is told by whom it belongs to."""
    ann, ben, both = world["Ann"], world["Ben"], world["Both"]
    await _says(ann, "11+7, felt grobblewumm", "Noted")
    await _says(ben, "10+6", "Noted")
    posts = [await _post(world.a.group), await _post(world.b.group)]
    await both.says("9+4", in_=world.a.group, reply_to=posts[0])
    await world.a.group.hears("9 rounds + 4")
    await both.says("8+3", in_=world.b.group, reply_to=posts[1])
    await world.b.group.hears("8 rounds + 3")
    await _says(ann, "I weigh 63.7 kg", "63.7")
    await _says(ann, "I have glaucoma", "glaucoma")
    await _says(both, "I have epilepsy", "epilep")
    await _says(ben, "I have osteoporosis", "osteopor")
    await _says(ben, "/me", "what I know")
    await ben.presses("Let my coach see")
    await _says(ann, "tell my coach I'm away on Friday snorvelby", "reads it")
    await _says(ann, "/export", "Everything")
    for crew, name, word, link in (
        (world.a, "Annquilla", "frimblesnatch", "kwijibarn"),
        (world.b, "Bennwyck", "dwindleflop", "zorblatt"),
    ):
        coach = crew.coach
        await _says(coach, f"{name} rounds her back in deadlifts, like a {word}", "Shall I note")
        await coach.presses("Yes, note it")
        await coach.hears("Noted, and")
        await _says(
            coach, f"class Tuesdays 18:30, 45 min, https://example.org/{link}", "how I read your class"
        )
        await coach.presses("Yes, set it up")
        await coach.hears("Done")
        for text in ("who reported", "notes", "roster", f"how is {name}", "/board"):
            await _says(coach, text, "")
        await coach.presses("Look at the scores")
        await coach.hears("Tap a score")
        await coach.presses(name)
        await coach.hears("Typed")
    await _says(world.a.coach, "Vextorious Friday\nAMRAP 10\n5 push-ups\n10 air squats", "how I read it")
    await _says(world.b.coach, "Mumbledrift Friday\nAMRAP 10\n5 push-ups\n10 air squats", "how I read it")


async def _says(person: Person, text: str, then: str) -> None:
    await person.says(text)
    await person.hears(then)


async def _post(group: Group):
    return [one for one in await group.messages if "Tap for your own version" in one.text][-1]
