"""Thursday morning: nobody is asked again, what hurt is spared, and who had to wait may begin."""

from bot.rehearsal.day.cast import BO, EDDA, LENE, RUTH, Company
from bot.rehearsal.day.hours import tomorrow
from bot.rehearsal.day.scene import Scene, Through

FRIDAY = """Friday, along the quay
Warm-up: 10 min easy run
6 x 400 m, 90 s walk between
Cool-down: 5 min walk"""


async def posted_by_itself(company: Company) -> None:
    await company.group_hears("Thursday, slow and strong")


async def as_marit_chose(company: Company) -> None:
    """Lene needn't wait this time: Marit has looked already, and chose her rows."""
    shown = await company[LENE].gets_version()
    assert "Your coach's choice" in shown.text


async def cleared(company: Company) -> None:
    """Ruth has seen her doctor; she is asked what was left open, and starts gently."""
    ruth = company[RUTH]
    await ruth.person.presses("My doctor has cleared me")
    await ruth.answers(("Your version",))


async def wrist_spared(company: Company) -> None:
    await company[EDDA].gets_version()


async def no_questions(company: Company) -> None:
    await company[BO].gets_version()
    await company.chats(BO, "No questions this time, just my session. See you on the board!")


async def a_run_for_friday(company: Company) -> None:
    """Marit writes the next day's runs at breakfast, and has them go out by themselves."""
    read = await company.coach.says(FRIDAY, "Here's how I read it")
    await company.coach.taps("Post Fri 06:00", "Friday, 6 March at 06:00", read)


NEXT_MORNING = (
    Scene(
        tomorrow("06:00"),
        "Thursday is posted by itself",
        "At the minute that was asked for, while everybody sleeps.",
        posted_by_itself,
        (Through("Thursday, slow and strong", "200 m run"), "Tap for your own version."),
    ),
    Scene(
        tomorrow("06:30"),
        "Lene gets what her coach chose",
        "Her coach looked at it yesterday, so she needn't wait.",
        as_marit_chose,
        (
            "opens the private chat",
            Through("Your version", "brisk walk"),
            "Your coach's choice",
        ),
    ),
    Scene(
        tomorrow("06:40"),
        "Edda's wrist is spared",
        "She told it yesterday, and needn't say it again.",
        wrist_spared,
        ("on your fists", "Left wrist: "),
    ),
    Scene(
        tomorrow("07:10"),
        "Ruth's doctor has cleared her",
        "She is asked what was left open, and starts gently.",
        cleared,
        (
            "taps [My doctor has cleared me]",
            "We'll start again lighter than before",
            "taps [Nothing, just me]",
            Through("4 rounds at an easy pace", "brisk walk"),
        ),
    ),
    Scene(
        tomorrow("07:30"),
        "Bo, a day later",
        "One tap, no questions.",
        no_questions,
        (
            Through("4 rounds for time", "200 m run"),
            "No questions this time",
        ),
    ),
    Scene(
        tomorrow("08:00"),
        "Runs for Friday",
        "What Marit walks between the runs is their rest. Whoever doesn't run is found a walk.",
        a_run_for_friday,
        (
            Through("Friday, along the quay", "Cool-down"),
            Through("10 min run", "5 min walk"),
            Through("• 10 min easy run", "• 6 x 400 m"),
            "taps [Post Fri 06:00]",
            "Friday, 6 March at 06:00",
        ),
    ),
)
