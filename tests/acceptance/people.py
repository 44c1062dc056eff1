"""The people of the acceptance tests, and what they often do."""

from dataclasses import dataclass

from bot.rehearsal.voice import Group, Person, Room

SESSION = """Tuesday
AMRAP 12
10 push-ups
12 goblet squats @ 16/12 kg
200 m run"""


@dataclass
class Crew:
    """A group that is set up, with its coach."""

    room: Room
    coach: Person
    group: Group

    async def has(self, name: str) -> Person:
        """A new member who consented and passed the screening as healthy and active."""
        person = await self.room.person(name)
        await person.joins(self.group)
        await passes_screening(person, await start_link(self.group))
        return person

    async def gets(self, session: str = SESSION) -> None:
        """The coach posts a session."""
        await self.coach.says(session)
        await self.coach.hears("Here's how I read it")
        await self.coach.presses("Post now")
        await self.coach.hears("Posted to")
        await self.group.hears("Tap for your own version")


async def founded(room: Room, title: str, *, coach: str) -> Crew:
    """A group that its coach has set up."""
    person = await room.person(coach)
    group = await room.group(title, admins=[person])
    await person.adds_bot(group)
    await group.hears(f"Hello {title}")
    await person.presses("Start with me")
    await person.hears("Which clock")
    await person.presses("Berlin")
    await person.hears("kg or lb")
    await person.presses("Kilograms")
    await person.hears("All set")
    return Crew(room, person, group)


async def start_link(group: Group) -> str:
    """Where the greeting's button leads."""
    for message in await group.messages:
        for button in message.all_buttons:
            if button.url and "start=g" in button.url:
                return button.url
    raise AssertionError("the group was never greeted")


SCREENING = ("18 or older", "lately had any of these", "Has a doctor ever", "last three months")
HEALTHY_AND_ACTIVE = ("Yes", "No", "No", "Yes")


async def answers_screening(person: Person, answers: tuple[str, ...]) -> None:
    for question, answer in zip(SCREENING, answers, strict=False):
        await person.hears(question)
        await person.presses(answer)


async def consents(person: Person) -> None:
    await person.hears("May I keep these notes?")
    await person.presses("Yes, keep them")


async def passes_screening(person: Person, link: str) -> None:
    await person.opens(link)
    await consents(person)
    await answers_screening(person, HEALTHY_AND_ACTIVE)
    await person.hears("good to go")


async def answers_what_is_asked(person: Person) -> tuple[int, int]:
    """Taps and typed answers from the post to the version, the tap on the post included."""
    taps, typed = 1, 0
    await person.presses("My version")
    for _ in range(20):
        message = await person.hears("")
        if "Your version" in message.text:
            return taps, typed
        if "What do you have" in message.text:
            await person.says("a 10 kg dumbbell and a chair")
            typed += 1
        elif "What do you weigh" in message.text:
            await person.says("62")
            typed += 1
        elif message.all_buttons:
            await person.presses(message.all_buttons[0].label, on=message)
            taps += 1
    raise AssertionError("no version after twenty messages")
