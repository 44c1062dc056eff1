"""Wednesday morning: the session is posted, and the early ones get to know Bellwether."""

from bot.rehearsal.day.cast import BO, EDDA, FINN, HARALD, JONAS, LENE, NOOR, RUTH, TAM, TOVE, Company
from bot.rehearsal.day.hours import today
from bot.rehearsal.day.scene import Scene, Through


async def without_things(company: Company) -> None:
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
    await company[BO].scores("4 rounds and 12", effort=7)
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


async def tells_it_in_the_group(company: Company) -> None:
    """Tam answers the post in the group; before a yes to it nothing of anybody is kept."""
    posts = [one for one in await company.group.messages if "Tap for your own version" in one.text]
    await company[TAM].person.says("4 rounds, sun in my face", in_=company.group, reply_to=posts[-1])
    await company.group_hears("I keep nothing of you without your yes")
    await company[TAM].gets_version()
    await company[TAM].scores("4 rounds", effort=6)
    await company.group_hears("Tam")


MORNING = (
    Scene(
        today("06:00"),
        "Bo has nothing at home",
        "First his yes and the safety questions, once; then what this session needs. His version says why it differs.",
        without_things,
        (
            "Tap for your own version.",
            "opens the private chat",
            Through("For that I keep", "May I keep these notes?"),
            "taps [Yes, keep them]",
            "Are you 18 or older?",
            "Have you lately had any of these",
            "Stop at once with chest pain",
            "What do you have to train with?",
            "taps [Nothing, just me]",
            Through("12 minutes", "200 m run"),
            Through("Why it's so", "You don't have 12 kg for this"),
        ),
    ),
    Scene(
        today("06:45"),
        "Tove doesn't jump",
        "A 12 kg kettlebell, a chair, and no jumping: what changes says why.",
        no_jumping,
        (
            "a 12 kg kettlebell and a chair",
            "please no jumping",
            "I'll keep in mind: no jumping.",
            "(12 kg kettlebell)",
            "As you said: no jumping",
        ),
    ),
    Scene(
        today("07:05"),
        "Ruth and Harald say yes to a safety question",
        "Ruth is sent to her doctor and gets no session; Harald gets an easy one.",
        screened,
        (
            "Have you lately had any of these",
            "I won't give you a",
            "You can go on at a moderate effort",
            "round after round at an easy pace",
        ),
    ),
    Scene(
        today("07:40"),
        "Edda has a 2 and a 20 kg dumbbell",
        "Neither is what the coach wrote, so it says which one she takes, and why.",
        two_odd_dumbbells,
        (
            "only a 2 kg and a 20 kg dumbbell",
            Through("12 minutes", "200 m run"),
            Through("Why it's so", "You don't have 12 kg for this"),
        ),
    ),
    Scene(
        today("07:55"),
        "Lene is pregnant: the coach looks first",
        "Nothing goes out to her before Marit has said OK. Marit isn't told the reason.",
        the_coachs_ok_first,
        (
            "Is there anything your body needs to spare?",
            "24 weeks pregnant",
            Through("Lene told me something", "brisk walk"),
            "your coach looks at your version first",
            "taps [OK, send it to them]",
            Through("20 s plank with your hands on a table: Kinder", "75 s brisk walk"),
            "Ask your doctor or midwife first",
            "Sent to Lene.",
        ),
        for_coaches=True,
    ),
    Scene(
        today("08:10"),
        "One dumbbell for two",
        "Noor and Finn share it: they take turns, each with a weight of their own.",
        one_dumbbell_for_two,
        (
            "I share it with Finn",
            "You share the dumbbell with Finn",
            "You share the dumbbell with Noor",
            "it's under the sofa",
        ),
    ),
    Scene(
        today("09:00"),
        "Jonas finds it a bit boring",
        "A line made harder, in three taps.",
        strong_and_bored,
        (
            "just one 8 kg dumbbell, sadly",
            "taps [Change a line]",
            "taps [Harder]",
            "taps [A bit boring]",
            "Changed: ",
        ),
    ),
    Scene(
        today("09:40"),
        "The first score",
        "Said as one would say it; the scoreboard stands in the group.",
        first_score,
        (
            "4 rounds and 12",
            "Scoreboard · Wednesday on the quay",
            "Bo  4 rounds + 12",
            "Noted: 4 rounds + 12",
        ),
    ),
    Scene(
        today("10:15"),
        "Tam tells his score in the group",
        "Nothing of him is kept before his yes; then he tells it again.",
        tells_it_in_the_group,
        (
            "4 rounds, sun in my face",
            "I keep nothing of you without your yes",
            "taps [Yes, keep them]",
            "Noted: 4 rounds",
        ),
    ),
)
