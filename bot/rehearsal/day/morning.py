"""Wednesday morning: the session is posted, and the early ones get to know Bellwether."""

from bot.rehearsal.day.cast import BO, EDDA, FINN, HARALD, JONAS, LENE, NOOR, RUTH, TAM, TOVE, Company
from bot.rehearsal.day.hours import today


async def morning(company: Company) -> None:
    await company.at(today("06:00"))
    await company.group_hears("Tap for your own version")
    for clock, role in (("06:20", BO), ("06:45", TOVE), ("07:05", RUTH), ("07:20", HARALD), ("07:40", EDDA)):
        await company.at(today(clock))
        await company[role].gets_version()
    await company.at(today("07:55"))
    await the_coachs_ok_first(company)
    await company.at(today("08:10"))
    await one_dumbbell_for_two(company)
    await company.at(today("09:00"))
    await strong_and_bored(company)
    await company.at(today("09:40"))
    await company[BO].scores("6 rounds and 12", effort=7)
    await company.group_hears("Scoreboard")
    await company.at(today("10:15"))
    await never_taps(company)


async def the_coachs_ok_first(company: Company) -> None:
    """Lene is pregnant: Marit looks at her version before it goes out."""
    await company[LENE].gets_version()
    await company.coach.person.presses("OK, send it to them")
    await company[LENE].hears("Your version")
    await company.coach.hears("Sent to Lene")


async def one_dumbbell_for_two(company: Company) -> None:
    """The same dumbbell, one after the other: each gets a setting of their own."""
    await company[NOOR].gets_version()
    await company[FINN].gets_version()
    await company.chats(FINN, "Noor, it's under the sofa. I'll make breakfast")


async def strong_and_bored(company: Company) -> None:
    """Whatever is light can be made harder."""
    jonas = company[JONAS]
    await jonas.gets_version()
    choice = await jonas.taps("Change a line", "Which line")
    squats = next(label for label in choice.labels if "goblet" in label)
    menu = await jonas.taps(squats, "What would you like?", choice)
    asked = await jonas.taps("Harder", "Why?", menu)
    await jonas.taps("A bit boring", "Your version", asked)


async def never_taps(company: Company) -> None:
    """Tam does it as posted and answers in the group; before a yes to it nothing of anybody is kept."""
    posts = [one for one in await company.group.messages if "Tap for your own version" in one.text]
    await company[TAM].person.says("5 rounds, sun in my face", in_=company.group, reply_to=posts[-1])
    await company.group_hears("I keep nothing of you without your yes")
    await company[TAM].gets_version()
    await company[TAM].scores("5 rounds", effort=6)
    await company.group_hears("Tam")
