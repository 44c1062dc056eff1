"""Wednesday evening: class, scores, the coach's last look, and the next morning."""

from bot.rehearsal.day.cast import CAL, FINN, HARALD, ILSE, JONAS, LENE, NOOR, TOVE, Company
from bot.rehearsal.day.hours import today, tomorrow


async def evening(company: Company) -> None:
    await company.at(today("16:30"))
    await company[CAL].hears("starts in")
    await company.at(today("17:30"))
    await company[TOVE].hears("starts in")
    await company.at(today("19:15"))
    await tells_of_class(company)
    await company.at(today("19:30"))
    await scores(company)
    await company.at(today("19:50"))
    await last_look(company)
    await company.at(today("20:00"))
    await company.coach.hears("Your evening with Harbour crew")
    await company.at(today("22:30"))
    await company[ILSE].scores("4 rounds + 6", effort=8, hurt="Sore muscles")
    await company.at(tomorrow("06:00"))
    await company.group_hears("Thursday, slow and strong")
    await company.at(tomorrow("06:30"))
    await as_marit_chose(company)


async def as_marit_chose(company: Company) -> None:
    """Lene needn't wait this time: Marit has looked already, and chose her rows."""
    shown = await company[LENE].gets_version()
    assert "As was chosen for you" in shown.text


async def tells_of_class(company: Company) -> None:
    for role, there, told in ((TOVE, "Yes", "Good"), (CAL, "Yes", "Good"), (NOOR, "No", "Another time")):
        asked = await company[role].hears("Were you there?")
        await company[role].taps(there, told, asked)


async def scores(company: Company) -> None:
    await company[TOVE].scores("7+2", effort=6)
    await company[HARALD].scores("4 rounds", effort=3)
    await company[JONAS].scores("11+5", effort=5)
    await company[CAL].scores("7+30", effort=8)
    await slip(company)


async def slip(company: Company) -> None:
    """Finn mistypes, and puts it right where it stands."""
    finn = company[FINN]
    told = await finn.person.says("8+2")
    await finn.hears("Noted")
    await finn.feels(7)
    await finn.person.edits(told, "8+12")
    await finn.hears("Put right: 8 rounds + 12")


async def last_look(company: Company) -> None:
    """Marit enters a score that was told her, and looks at a high one."""
    coach = company.coach
    await coach.says("Noor 5+9", "Noted for Noor")
    await company[NOOR].hears("noted your score")
    await coach.says("/board", "Scoreboard")
    scores = await coach.taps("Look at the scores", "Tap a score")
    high = next(label for label in scores.labels if label.startswith("Jonas"))
    card = await coach.taps(high, "Typed", scores)
    await coach.taps("Checked", "checked by Marit", card)
