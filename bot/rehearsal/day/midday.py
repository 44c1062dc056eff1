"""Noon in Oslo, morning in New York: a second clock, somebody new, and tomorrow's plan."""

from bot.rehearsal.day.cast import CAL, EDDA, ILSE, MARIT, NOOR, TOVE, Company
from bot.rehearsal.day.hours import today
from bot.rehearsal.day.scene import Scene, Through

# Nobody but her crew knows what dock pulls are, and there and back is 200 m.
TOMORROW = """Thursday, slow and strong
5 x 5 deadlifts @ 32/24 kg, rest 2 min
4 rounds for time, cap 20 min
8 single-arm overhead presses a side @ 16/10 kg
8 dock pulls a side @ 16/10 kg
100 m run, there and back"""


async def a_picture_and_a_sore_wrist(company: Company) -> None:
    """The score stands under a picture; then something hurts."""
    edda = company[EDDA]
    await edda.person.sends_photo(caption="3+20")
    await edda.hears("Noted")
    await edda.feels(6, "Something hurts")
    await edda.says("left wrist", "sore wrist")


async def in_pounds(company: Company) -> None:
    cal = company[CAL]
    await cal.gets_version()
    await cal.says("my clock is New York", "New York")
    await cal.says("remind me 2 hours before", "")


async def joins_mid_week(company: Company) -> None:
    """Ilse comes into the group at noon, sends a voice message where words are asked, and has her version."""
    ilse = company[ILSE]
    await ilse.person.joins(company.group)
    await company.chats(ILSE, "Hi all, I'm Ilse!")
    await company.chats(MARIT, "Welcome, Ilse! Tap My version up there, and it asks you what you have")
    await ilse.person.presses("My version")
    asked = await ilse.answers(("train with",))
    assert asked.text
    await ilse.person.sends_voice()
    await ilse.hears("can't listen yet")
    await ilse.answers(("Your version",))


async def short_of_time(company: Company) -> None:
    noor = company[NOOR]
    asked = await noor.taps("Today is different", "What's different today?")
    how_long = await noor.taps("Short of time", "How long", asked)
    await noor.taps("10 minutes", "Your version", how_long)


async def comes_to_class(company: Company) -> None:
    posts = [one for one in await company.group.messages if "I'm in" in str(one.labels)]
    for role in (TOVE, CAL, NOOR):
        await company[role].person.presses("I'm in", on=posts[-1])
        await company[role].hears("You're in")


async def half_of_it(company: Company) -> None:
    tove = company[TOVE]
    words = "quiet hours 22 to 6, and can somebody bring me a spare mat?"
    heard = await tove.says(words, "I didn't get")
    await tove.taps("Tell my coach", "", heard)


async def a_misread_board(company: Company) -> None:
    """One line isn't read and one is misread: Marit says what she meant, and sees all of it again."""
    await company.coach.says(TOMORROW, "because I couldn't read them")
    await company.coach.says("swap the dock pulls for single-arm rows", "single-arm rows")


async def plans_tomorrow(company: Company) -> None:
    """This time Marit sees at once how it lands on her people, and who needs her."""
    coach = company.coach
    read = await coach.says("no, the run is 200 m", "200 m run")
    needing = await coach.taps("Go through who needs you", "These people need you", read)
    lene = await coach.taps("Lene", "Lene, as I'd do it", needing)
    rows = await coach.taps("3", "Lene:", lene)
    changed = await coach.taps("Easier", "(your choice)", rows)
    await coach.taps("OK", "These people need you", changed)
    await coach.says("post it tomorrow at 6", "Thursday, 5 March at 06:00")


MIDDAY = (
    Scene(
        today("11:30"),
        "Edda's wrist hurts",
        "A score under a picture; what hurts is spared from now on.",
        a_picture_and_a_sore_wrist,
        (
            "<photo message> 3+20",
            "Noted: 3 rounds + 20",
            "taps [Something hurts]",
            "I'll keep in mind: sore wrist (left).",
        ),
    ),
    Scene(
        today("12:30"),
        "Cal is in New York, in pounds",
        "The same session on another clock, in other units.",
        in_pounds,
        (
            "a 35 lb kettlebell, a bench",
            "12 goblet squats (35 lb kettlebell)",
            "my clock is New York",
            "Clock: New York (your clock)",
        ),
    ),
    Scene(
        today("13:15"),
        "Ilse joins at noon",
        "From coming into the group to a version of her own; it reads, it can't listen.",
        joins_mid_week,
        (
            "comes into the group",
            "<voice message>",
            "I can't listen yet.",
            "one 10 kg dumbbell and a table",
            "(10 kg dumbbell)",
        ),
    ),
    Scene(
        today("14:00"),
        "Noor has ten minutes",
        "The same session, shorter.",
        short_of_time,
        (
            "taps [Short of time]",
            "taps [10 minutes]",
            "8 minutes, as many rounds as you can",
        ),
    ),
    Scene(
        today("14:30"),
        "Who comes to class",
        "A tap says so; each is reminded on their own clock.",
        comes_to_class,
        (
            "taps [I'm in at 18:30]",
            "I'll remind you at 17:30.",
            "Wed 4 March 12:30, New York time.\nI'll remind you at 10:30.",
        ),
    ),
    Scene(
        today("14:45"),
        "Half of what Tove asks isn't got",
        "What it doesn't get it quotes; a tap passes it on.",
        half_of_it,
        (
            "quiet hours 22 to 6, and can somebody",
            "Quiet hours: 22:00 to 06:00",
            "I didn't get “can somebody bring me a spare mat?”",
            "taps [Tell my coach]",
        ),
    ),
    Scene(
        today("15:30"),
        "It can't read a line of the board",
        "The line is marked, and in nobody's version. Marit puts it in other words.",
        a_misread_board,
        (
            Through("Thursday, slow and strong", "there and back"),
            Through("These lines are in nobody's version yet", "8 dock pulls a side"),
            "8 dock pulls a side @ 16/10 kg (not read)",
            "swap the dock pulls for single-arm rows",
            "8/side single-arm rows @ 16/10 kg\n100 m run (there and back)",
        ),
        for_coaches=True,
    ),
    Scene(
        today("15:35"),
        "Another is misread, and Marit decides",
        "Nothing marked it: there and back she meant 200 m. She sees how it lands before anybody else sees it.",
        plans_tomorrow,
        (
            "no, the run is 200 m",
            "200 m run (there and back)",
            Through("How it lands on your people", "No version today: Ruth."),
            Through("Worth saying aloud", "5 x 5 deadlifts"),
            "taps [Go through who needs you]",
            Through("Lene, as I'd do it:", "4. "),
            "taps [Easier]",
            "(your choice)",
            "post it tomorrow at 6",
            " to Harbour crew on Thursday, 5 March at 06:00.",
        ),
        for_coaches=True,
    ),
)
