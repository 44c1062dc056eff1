"""Tuesday evening: Marit adds Bellwether to her group and prepares the Wednesday."""

from bot.rehearsal.day.cast import BO, MARIT, Company
from bot.rehearsal.day.hours import eve
from bot.rehearsal.day.scene import Scene

SESSION = """Wednesday on the quay
Warm-up
2 rounds
10 air squats
10 arm circles
Skill
3 x 20 s plank
AMRAP 12
10 push-ups
12 goblet squats @ 16/12 kg
8 burpees
200 m run"""


async def sets_up(company: Company) -> None:
    coach = company.coach
    await coach.person.adds_bot(company.group)
    await company.group_hears("Hello Harbour crew")
    await company.chats(BO, "Oh nice, who is this?")
    await company.chats(MARIT, "My helper! It makes tomorrow's session fit what each of you has at home")
    await coach.taps("Start with me", "Which clock")
    await coach.says("Oslo", "kg or lb")
    await coach.taps("Kilograms", "All set")


async def plans_a_class(company: Company) -> None:
    coach = company.coach
    await coach.says("class Wednesdays 18:30, 45 min, https://example.org/quay", "how I read your class")
    await coach.taps("Yes, set it up", "Done")
    await company.group_hears("There's a live class now")


async def writes_the_session(company: Company) -> None:
    """With a slip, put right by editing the message, and posted for the morning."""
    coach = company.coach
    written = await coach.person.says(SESSION.replace("AMRAP 12", "AMRAP 21"))
    await coach.hears("Here's how I read it")
    await coach.person.edits(written, SESSION)
    draft = await coach.hears("in 12 min")
    later = next(label for label in draft.labels if label.endswith("06:00"))
    await coach.taps(later, "I'll post ", draft)


NIGHT_BEFORE = (
    Scene(
        eve("19:30"),
        "Marit adds Bellwether to her group",
        "Two answers, a clock and kilograms, and it is set up.",
        sets_up,
        (
            "adds Bellwether to the group",
            "I help your coach give each of you your own version of every session",
            "Which clock does the group go by?",
            "Oslo",
            "taps [Kilograms]",
            "All set: Harbour crew",
        ),
    ),
    Scene(
        eve("19:40"),
        "A class, in her own words",
        "She sees how it was read before anybody else does.",
        plans_a_class,
        (
            "class Wednesdays 18:30, 45 min",
            "Here's how I read your class",
            "Wednesdays at 18:30, Oslo time, 45 minutes",
            "taps [Yes, set it up]",
            "There's a live class now",
        ),
    ),
    Scene(
        eve("20:10"),
        "The session, as she'd write it on a board",
        "A slip is put right by editing the message; it goes out in the morning.",
        writes_the_session,
        (
            "AMRAP 21",
            "As many rounds as possible in 21 min",
            "changes that to: Wednesday on the quay",
            "AMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n8 burpees\n200 m run",
            "As many rounds as possible in 12 min",
            "taps [Post Wed 06:00]",
        ),
        for_coaches=True,
    ),
)
