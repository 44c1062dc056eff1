"""One day of an invented group, played by people of the stand-in against the real bot."""

from bot.rehearsal.seen import Button
from bot.rehearsal.voice import Group, Person, Room

SESSION = """Tuesday on the quay
AMRAP 12
10 push-ups
12 goblet squats @ 16/12 kg
200 m run"""

# A whole process starts and answers; a machine that is busy may take its time.
PATIENCE_S = 30.0


async def play(room: Room) -> None:
    """Harbour crew's day: set up, two athletes on their way in, a session, two versions, two scores."""
    marit = await room.person("Marit")
    ilse = await room.person("Ilse")
    bo = await room.person("Bo")
    crew = await room.group("Harbour crew", admins=[marit], members=[ilse, bo])
    await set_up(marit, crew)
    await post(marit, crew)
    await one_dumbbell_and_few_push_ups(ilse)
    await nothing_at_all(bo)
    await scores(ilse, bo, crew)


async def set_up(coach: Person, group: Group) -> None:
    await coach.adds_bot(group)
    await group.hears("Hello Harbour crew", PATIENCE_S)
    await coach.presses("Start with me")
    await coach.hears("Which clock", PATIENCE_S)
    await coach.says("Oslo")
    await coach.hears("kg or lb", PATIENCE_S)
    await coach.presses("Kilograms")
    await coach.hears("All set", PATIENCE_S)


async def post(coach: Person, group: Group) -> None:
    await coach.says(SESSION)
    await coach.hears("Here's how I read it", PATIENCE_S)
    await coach.presses("Post now")
    await group.hears("Tap for your own version", PATIENCE_S)


async def one_dumbbell_and_few_push_ups(ilse: Person) -> None:
    answers = {
        "What do you have to train with?": "one 10 kg dumbbell, a chair and a table",
        "What do you weigh": "68",
        "push-ups can you do": "4",
    }
    await to_my_version(ilse, answers)


async def nothing_at_all(bo: Person) -> None:
    await to_my_version(bo, {"What do you weigh": "81", "push-ups can you do": "25"})


async def to_my_version(athlete: Person, typed: dict[str, str]) -> None:
    """Tap `My version` and answer whatever is asked: what is in `typed` in words, all else by its button."""
    await athlete.presses("My version")
    while True:
        message = await athlete.hears("", PATIENCE_S)
        if "Your version" in message.text:
            return
        words = next((answer for question, answer in typed.items() if question in message.text), None)
        if words is not None:
            await athlete.says(words)
        elif message.all_buttons:
            await athlete.presses(choice(message.text, message.all_buttons).label, on=message)


def choice(text: str, buttons: list[Button]) -> Button:
    """Healthy and active, and otherwise the first button: yes, none, the first of a pair."""
    is_worry = "lately had any of these" in text or "Has a doctor ever" in text
    return buttons[-1] if is_worry else buttons[0]


async def scores(ilse: Person, bo: Person, group: Group) -> None:
    await ilse.says("6 rounds and 12")
    await ilse.hears("6 rounds + 12", PATIENCE_S)
    await group.hears("Scoreboard", PATIENCE_S)
    await bo.says("7+3")
    await bo.hears("7 rounds + 3", PATIENCE_S)
    await group.hears("Bo", PATIENCE_S)
