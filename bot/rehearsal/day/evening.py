"""Wednesday evening: class, scores and the coach's last look."""

from bot.rehearsal.day.cast import CAL, FINN, HARALD, ILSE, JONAS, NOOR, TOVE, Company
from bot.rehearsal.day.hours import today
from bot.rehearsal.day.scene import Scene, Through


async def reminded(company: Company) -> None:
    await company[CAL].hears("starts in")
    await company.at(today("17:30"))
    for role in (TOVE, NOOR):
        await company[role].hears("starts in")


async def tells_of_class(company: Company) -> None:
    for role, there, told in ((TOVE, "Yes", "Good"), (CAL, "Yes", "Good"), (NOOR, "No", "Another time")):
        asked = await company[role].hears("Were you there?")
        await company[role].taps(there, told, asked)


async def scores(company: Company) -> None:
    for clock, role, score, effort in (
        ("19:24", TOVE, "4+2", 6),
        ("19:27", HARALD, "3 rounds", 3),
        ("19:31", JONAS, "4+5", 5),
        ("19:36", CAL, "4+10", 8),
    ):
        await company.at(today(clock))
        await company[role].scores(score, effort)
    await company.at(today("19:40"))
    await slip(company)


async def slip(company: Company) -> None:
    """Finn mistypes, and puts it right where it stands."""
    finn = company[FINN]
    told = await finn.person.says("4+24")
    await finn.hears("Noted")
    await finn.feels(7)
    await finn.person.edits(told, "3+24")
    await finn.hears("Put right: 3 rounds + 24")


async def last_look(company: Company) -> None:
    """Marit enters a score that was told her, and looks at one that was changed."""
    coach = company.coach
    await coach.says("Noor got 2+9", "Noted for Noor")
    await company[NOOR].hears("noted your score")
    await coach.says("/board", "Scoreboard")
    scores = await coach.taps("Look at the scores", "Tap a score")
    changed = next(label for label in scores.labels if label.startswith("Finn"))
    card = await coach.taps(changed, "Typed", scores)
    await coach.taps("Checked", "checked by Marit", card)


async def the_digest(company: Company) -> None:
    await company.coach.hears("Your evening with Harbour crew")


async def a_late_score(company: Company) -> None:
    await company[ILSE].scores("3 rounds + 6", effort=8, hurt="Sore muscles")
    await company.group_hears("Ilse")


EVENING = (
    Scene(
        today("16:30"),
        "Reminded before class",
        "Two hours ahead for Cal, as he asked; one hour for the others.",
        reminded,
        (
            "Live class starts in 2 hours: Wed 4 March 12:30, New York time.",
            "Live class starts in 1 hour: Wed 4 March 18:30, Oslo time.",
        ),
    ),
    Scene(
        today("19:15"),
        "Were you there?",
        "One tap each after the class.",
        tells_of_class,
        ("Were you there?", "taps [Yes]", "taps [No]", "Another time, then!"),
    ),
    Scene(
        today("19:22"),
        "The scores come in",
        "Each in their own words; Finn mistypes, and edits his message.",
        scores,
        (
            "3 rounds",
            "No rank today, as you train gently",
            "4+24",
            "changes that to: 3+24",
            "Put right: 3 rounds + 24",
        ),
    ),
    Scene(
        today("19:50"),
        "Marit's last look",
        "She enters a score for somebody, and checks one that was changed.",
        last_look,
        (
            "Noor got 2+9",
            "Marit noted your score for you: 2 rounds + 9.",
            "taps [Finn: 3 rounds + 24]",
            "Before that: “4+24”.",
            "checked by Marit",
        ),
    ),
    Scene(
        today("20:00"),
        "Marit's evening digest",
        "Who trained, who hasn't reported, and that somebody had pain, without a name.",
        the_digest,
        (
            "Your evening with Harbour crew",
            "Trained: 9",
            "not reported yet: ",
            "One person mentioned pain to me",
            "There: Tove and Cal",
        ),
        for_coaches=True,
    ),
    Scene(
        today("22:30"),
        "Ilse's first score",
        "However late, it counts. This is the scoreboard as the evening leaves it.",
        a_late_score,
        (
            "3 rounds + 6",
            Through("Scoreboard", "Noor  2 rounds + 9"),
            "Noted: 3 rounds + 6",
            "taps [Sore muscles]",
            "moving gently helps",
        ),
    ),
)
