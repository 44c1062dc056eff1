"""Words for what is known of an athlete, shown to nobody else."""

from collections.abc import Mapping, Sequence
from decimal import Decimal

from bot.words.en.profile.telling import ability, not_right
from bot.words.en.today.different import different_words
from bot.words.en.versions.adjusting import on
from bot.words.en.versions.questions import things
from bot.words.text import escape, fill, listed
from bot.words.wording import Button, Row, Worded, wording
from core.athletes.values import Complaint, Experience
from core.desk.classes.commands import AboutReminders
from core.desk.commands import ChangeAnswer, ScreenAgain
from core.desk.profile.commands import ShareLimits
from core.desk.reference import limit
from core.desk.versions.commands import FurnishSet
from core.desk.versions.says import Me, Sharing
from core.measures import MassUnit, in_words
from core.scaling.values import Ask


@wording("en", Me)
def me(said: Me) -> Worded:
    lines = [fill("<b>{name}</b>, here's what I know. Only you see this.", name=said.name)]
    if said.groups:
        lines.append(fill("Groups: {groups}", groups=listed(said.groups)))
    lines.append(f"Equipment: {escape(known_things(said))}")
    lines += [
        fill("{place}: {things}", place=SETS[one.name], things=things(one.equipment, said.units))
        for one in said.sets
    ]
    lines.append(f"To spare: {escape(known_spared(said))}")
    lines.append(f"Weight: {escape(known_mass(said.body_mass_kg, said.units))}")
    if said.experience:
        lines.append(f"Training: {USED_TO_IT[said.experience]}")
    if said.abilities:
        told = listed([ability(one, said.units) for _, one in said.abilities])
        lines.append(fill("You can do: {told}", told=told))
    if said.different:
        lines.append(f"Just now: {escape(known_days(said))}")
    change = (
        Button("Equipment", ChangeAnswer(ask=Ask.EQUIPMENT)),
        Button("To spare", ChangeAnswer(ask=Ask.LIMITS)),
        Button("Weight", ChangeAnswer(ask=Ask.BODY_MASS)),
    )
    places = (Button("In a gym", FurnishSet(place="gym")), Button("Away from home", FurnishSet(place="trip")))
    reminders: Row = (Button("Reminders and clock", AboutReminders()),)
    if said.screened_in is not None:
        reminders += (Button("The safety questions", ScreenAgain(group=said.screened_in)),)
    abilities = [(not_right(told, one, said.units),) for told, one in said.abilities[-MOST_KEYS:]]
    rows = (change, places, reminders, *sharing(said.shares), *abilities)
    return Worded("\n".join(lines) + "\n\nTap what you want to change.", rows)


def sharing(shares: Sequence[Sharing]) -> tuple[Row, ...]:
    """Group by group, always the other way than it is now."""
    return tuple((sharing_button(one, named=len(shares) > 1),) for one in shares)


def sharing_button(one: Sharing, *, named: bool) -> Button:
    whom = f"my coach in {one.title[:30]}" if named else "my coach"
    label = f"Keep what I spare from {whom}" if one.yes else f"Let {whom} see what I spare"
    return Button(label, ShareLimits(group=one.group, yes=not one.yes))


def known_things(said: Me) -> str:
    return "not asked yet" if said.equipment is None else things(said.equipment, said.units)


def known_spared(said: Me) -> str:
    if said.limits is None:
        return "not asked yet"
    told = {one.limit: one for one in said.complaints}
    return listed([spared(one, told.get(one)) for one in said.limits]) or "nothing"


def spared(limit_id: str, told: Complaint | None) -> str:
    """`sore wrist (left, asked again on 10 March)`."""
    name = limit(limit_id).label
    if told is None:
        return name
    side = f"{told.side}, " if told.side else ""
    return f"{name} ({side}I ask again on {told.review_on:%-d %B})"


def known_days(said: Me) -> str:
    """`an easy week (until Sunday, 8 March)`."""
    return listed([f"{different_words(one)} (until {on(one.until)})" for one in said.different])


# So many of what they can do have a key; the newest.
MOST_KEYS = 8
USED_TO_IT: Mapping[Experience, str] = {
    "new": "new to it",
    "some": "some, so far",
    "trained": "used to it",
}
SETS = {"home": "At home", "gym": "In the gym", "trip": "Away from home"}


def known_mass(mass_kg: Decimal | None, units: MassUnit) -> str:
    return "not told" if mass_kg is None else in_words(mass_kg, units)
