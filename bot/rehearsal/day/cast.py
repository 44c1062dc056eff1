"""Who they are: thirteen invented people, what they have at home, and how they answer."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Self

from bot.rehearsal.listening import PATIENCE_S
from bot.rehearsal.seen import SeenMessage
from bot.rehearsal.voice import Group, Person, Room

# A whole process starts and answers; a machine that is busy may take its time.
PATIENT_S = max(PATIENCE_S, 60.0)
_MOST_QUESTIONS = 30

# What everybody answers who says nothing else: by a piece of the question, the button's label.
USUAL = {
    "May I keep these notes": "Yes",
    "18 or older": "Yes",
    "lately had any of these": "No",
    "Has a doctor ever": "No",
    "last three months": "Yes",
    "your body needs to spare": "No, all fine",
    "two loads": "The second",
    "What do you weigh": "Skip",
    "What do you have to train with": "Nothing, just me",
}

ABILITY = "in a row"


@dataclass(frozen=True)
class Role:
    """`types` and `taps`: by a piece of a question, what they write, or which button they take instead of USUAL.

    `able`: which of the six answers they tap when asked how many go in a row, 0 the fewest.
    """

    name: str
    types: Mapping[str, str] = field(default_factory=dict)
    taps: Mapping[str, str] = field(default_factory=dict)
    able: int = 4

    @property
    def about(self) -> str:
        """What tells them apart, in their own words: what they need spared, or what they train with."""
        if any(label == "Yes" for label in self.taps.values()):
            return "says yes to a safety question"
        return self.types.get(SPARE) or self.types.get(THINGS, "nothing to train with")


THINGS, SPARE, WEIGHT = "What do you have to train with", "your body needs to spare", "What do you weigh"

MARIT = Role("Marit")
BO = Role("Bo", {WEIGHT: "81"}, {"two loads": "The first"}, able=5)
TOVE = Role("Tove", {THINGS: "a 12 kg kettlebell and a chair", SPARE: "please no jumping"})
RUTH = Role("Ruth", taps={"lately had any of these": "Yes"})
HARALD = Role("Harald", {THINGS: "two 6s and a chair", WEIGHT: "93"}, {"Has a doctor ever": "Yes"})
EDDA = Role("Edda", {THINGS: "only a 2 kg and a 20 kg dumbbell", WEIGHT: "60 kg", "push-ups": "8"})
LENE = Role("Lene", {THINGS: "a 16 kg kettlebell, a table and a chair", SPARE: "24 weeks pregnant"})
NOOR = Role("Noor", {THINGS: "adjustable dumbbell 2.5-24 kg, I share it with Finn"})
FINN = Role(
    "Finn",
    {THINGS: "adjustable dumbbell 2.5-24, the one Noor has", WEIGHT: "77"},
    {"two loads": "The first"},
)
CAL = Role(
    "Cal",
    {THINGS: "a 35 lb kettlebell, a bench", WEIGHT: "172 lb", ABILITY: "18"},
    {"two loads": "The first"},
)
JONAS = Role(
    "Jonas",
    {THINGS: "just one 8 kg dumbbell, sadly", WEIGHT: "88"},
    {"two loads": "The first"},
    able=5,
)
TAM = Role("Tam", {THINGS: "a 16 kg kettlebell", WEIGHT: "79"}, {"two loads": "The first"}, able=5)
ILSE = Role("Ilse", {THINGS: "one 10 kg dumbbell and a table", WEIGHT: "68", "push-ups": "4"})

ATHLETES = (BO, TOVE, RUTH, HARALD, EDDA, LENE, NOOR, FINN, CAL, JONAS, TAM)


class Player:
    """A role with its person, waiting as long as whole processes need."""

    def __init__(self, role: Role, person: Person) -> None:
        self.role = role
        self.person = person

    async def hears(self, fragment: str) -> SeenMessage:
        return await self.person.hears(fragment, PATIENT_S)

    async def says(self, text: str, then: str) -> SeenMessage:
        """Write, and wait for an answer with `then` in it."""
        await self.person.says(text)
        return await self.hears(then)

    async def taps(self, label: str, then: str, on: SeenMessage | None = None) -> SeenMessage:
        await self.person.presses(label, on=on)
        return await self.hears(then)

    async def gets_version(self) -> SeenMessage:
        """Tap `My version` under the post, and answer whatever is asked until it stands there, or none may."""
        await self.person.presses("My version")
        return await self.answers(("Your version", "no session for you", "see a doctor", "coach looks at"))

    async def answers(self, ends: tuple[str, ...]) -> SeenMessage:
        answered = set[str]()
        for _ in range(_MOST_QUESTIONS):
            message = await self.hears("")
            if any(end in message.text for end in ends):
                return message
            if message.text not in answered:  # what a kill repeated is not answered twice
                await self._answer(message)
                answered.add(message.text)
        raise AssertionError(f"{self.role.name} was asked more than {_MOST_QUESTIONS} questions")

    async def _answer(self, message: SeenMessage) -> None:
        words = _for(message.text, self.role.types)
        label = _for(message.text, self.role.taps) or _for(message.text, USUAL)
        if words is not None:
            await self.person.says(words)
        elif ABILITY in message.text and message.buttons:
            await self.person.presses(message.all_buttons[self.role.able].label, on=message)
        elif label is not None and message.buttons:
            await self.person.presses(label, on=message)

    async def scores(self, text: str, effort: int | None = None, hurt: str = "No") -> None:
        """Tell a score, and how it felt if that is asked."""
        await self.says(text, "Noted")
        if effort is not None:
            await self.feels(effort, hurt)

    async def feels(self, effort: int, hurt: str = "No") -> None:
        asked = await self.hears("How hard was")
        asked = await self.taps(str(effort), "Did anything hurt?", asked)
        await self.taps(hurt, "Where does it hurt?" if hurt == "Something hurts" else "Rest well", asked)


def _for(question: str, answers: Mapping[str, str]) -> str | None:
    return next((answer for piece, answer in answers.items() if piece in question), None)


@dataclass
class Company:
    """Everybody, and their group."""

    room: Room
    coach: Player
    group: Group
    players: dict[str, Player]

    @classmethod
    async def gather(cls, room: Room) -> Self:
        people = {
            role.name: await room.person(role.name, about=role.about) for role in (MARIT, *ATHLETES, ILSE)
        }
        members = [people[role.name] for role in ATHLETES]
        group = await room.group("Harbour crew", admins=[people[MARIT.name]], members=members)
        players = {role.name: Player(role, people[role.name]) for role in (*ATHLETES, ILSE)}
        return cls(room, Player(MARIT, people[MARIT.name]), group, players)

    def __getitem__(self, role: Role) -> Player:
        return self.players[role.name]

    async def at(self, moment: datetime) -> None:
        """Go on at that time."""
        await self.room.travels_to(moment)

    async def opens(self, title: str, point: str) -> None:
        """Begin another scene."""
        await self.room.stage.do("open_scene", title=title, point=point)

    async def group_hears(self, fragment: str) -> SeenMessage:
        return await self.group.hears(fragment, PATIENT_S)

    async def chats(self, role: Role, text: str) -> None:
        """Say something in the group that is none of the bot's business."""
        player = self.coach if role is MARIT else self[role]
        await player.person.says(text, in_=self.group)
