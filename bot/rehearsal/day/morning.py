"""Wednesday morning: the session is posted, and the early ones get to know Bellwether."""

from bot.rehearsal.day.cast import BO, EDDA, FINN, HARALD, JONAS, LENE, NOOR, RUTH, TAM, TOVE, Company
from bot.rehearsal.day.hours import today
from bot.rehearsal.day.scene import Scene


async def as_written(company: Company) -> None:
    await company.group_hears("Tap for your own version")
    await company.at(today("06:20"))
    await company[BO].gets_version()


async def no_jumping(company: Company) -> None:
    await company[TOVE].gets_version()


async def screened(company: Company) -> None:
    """One is sent to a doctor first, one gets a gentle day."""
    await company[RUTH].gets_version()
    await company.at(today("07:20"))
    await company[HARALD].gets_version()


async def two_odd_dumbbells(company: Company) -> None:
    await company[EDDA].gets_version()


async def first_score(company: Company) -> None:
    await company[BO].scores("6 rounds and 12", effort=7)
    await company.group_hears("Scoreboard")


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


MORNING = (
    Scene(
        today("06:00"),
        "Bo does it as written",
        "The first time it asks only what this session needs.",
        as_written,
    ),
    Scene(
        today("06:45"),
        "Tove doesn't jump",
        "A 12 kg kettlebell, a chair, and no jumping: every change has its reason.",
        no_jumping,
    ),
    Scene(
        today("07:05"),
        "Ruth and Harald answer a safety question with yes",
        "Bellwether stops or goes easy, and sends Ruth to her doctor.",
        screened,
    ),
    Scene(
        today("07:40"),
        "Edda has a 2 and a 20 kg dumbbell",
        "Too light or too heavy: it finds another way.",
        two_odd_dumbbells,
    ),
    Scene(
        today("07:55"),
        "Lene is pregnant: the coach looks first",
        "Nothing goes out to her before Marit said OK.",
        the_coachs_ok_first,
    ),
    Scene(
        today("08:10"),
        "One dumbbell for two",
        "Noor and Finn share it: their versions take turns.",
        one_dumbbell_for_two,
    ),
    Scene(today("09:00"), "Jonas finds it a bit boring", "A line made harder, at a tap.", strong_and_bored),
    Scene(
        today("09:40"),
        "The first score",
        "Said as one would say it; the scoreboard stands in the group.",
        first_score,
    ),
    Scene(
        today("10:15"),
        "Tam never taps",
        "He replies to the post; nothing of him is kept before his yes.",
        never_taps,
    ),
)
