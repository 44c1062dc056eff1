"""Thursday morning: nobody is asked again, what hurt is spared, and who had to wait may begin."""

from bot.rehearsal.day.cast import BO, EDDA, LENE, RUTH, Company
from bot.rehearsal.day.hours import tomorrow


async def next_morning(company: Company) -> None:
    await company.at(tomorrow("06:00"))
    await company.group_hears("Thursday, slow and strong")
    await company.at(tomorrow("06:30"))
    await as_marit_chose(company)
    await company.at(tomorrow("06:40"))
    await company[EDDA].gets_version()
    await company.at(tomorrow("07:10"))
    await cleared(company)
    await company.at(tomorrow("07:30"))
    await company[BO].gets_version()
    await company.chats(BO, "No questions this time, just my session. See you on the board!")


async def as_marit_chose(company: Company) -> None:
    """Lene needn't wait this time: Marit has looked already, and chose her rows."""
    shown = await company[LENE].gets_version()
    assert "Your coach's choice" in shown.text


async def cleared(company: Company) -> None:
    """Ruth has seen her doctor; she is asked what was left open, and starts gently."""
    ruth = company[RUTH]
    await ruth.person.presses("My doctor has cleared me")
    await ruth.answers(("Your version",))
