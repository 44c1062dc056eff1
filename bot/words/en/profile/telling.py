"""Words for what athletes tell unasked: what they weigh, and what they can do."""

from collections.abc import Mapping

from bot.words.forecasts import clock
from bot.words.text import fill, plural
from bot.words.wording import Button, Worded, wording
from core.athletes.values import WALKS, Evidence, Experience
from core.desk.commands import ChangeAnswer, ForgetShown
from core.desk.versions.says import AbilityNoted, AbilityTakenBack, BodyMassNoted, ExperienceNoted, UnitsKept
from core.measures import MassUnit, in_words
from core.scaling.values import Ask


@wording("en", UnitsKept)
def units_kept(said: UnitsKept) -> Worded:
    name = "pounds" if said.units is MassUnit.LB else "kilos"
    shown = "" if said.waits else " /today shows today's so."
    return Worded(f"From now on I write your loads in {name}.{shown}")


@wording("en", BodyMassNoted)
def body_mass_noted(said: BodyMassNoted) -> Worded:
    text = fill(
        "Thanks! Noted as your body weight: <b>{mass}</b>. Nobody else sees it. Your next version goes by it{shown}.",
        shown="" if said.waits else "; /today shows today's with it",
        mass=in_words(said.mass_kg, said.units),
    )
    return Worded(text, ((Button("Not right", ChangeAnswer(ask=Ask.BODY_MASS)),),))


@wording("en", AbilityNoted)
def ability_noted(said: AbilityNoted) -> Worded:
    row = (not_right(said.evidence_id, said.evidence, said.units),)
    if said.evidence.kind == "score":
        return Worded(load_kept(said), (row,))
    text = fill(
        "Thanks! Kept as what you can do in a row: <b>{what}</b>. Your next version goes by it{shown}.",
        shown="" if said.waits else "; /today shows today's",
        what=ability(said.evidence, said.units),
    )
    return Worded(text, (row,))


def not_right(evidence_id: int, evidence: Evidence, units: MassUnit) -> Button:
    """It says what it takes back, as several may stand below each other."""
    return Button(f"Not right: {ability(evidence, units)}", ForgetShown(evidence=evidence_id))


def load_kept(said: AbilityNoted) -> str:
    """How many went in a row is only our guess, so it isn't said."""
    assert said.evidence.load_kg is not None, "a session tells nothing but loads"
    return fill(
        "I've also kept that you used <b>{load}</b> for the <b>{what}</b>. It helps me find your loads.",
        load=in_words(said.evidence.load_kg, said.units),
        what=plural(said.evidence.movement),
    )


def ability(evidence: Evidence, units: MassUnit) -> str:
    """`10 deadlifts with 315 lb`, `2400 m of run in 11:00`, `1:30 of plank`."""
    if evidence.distance_m and evidence.seconds:
        what = "walking" if evidence.variant in WALKS else evidence.movement
        return f"{evidence.distance_m:g} m of {what} in {clock(evidence.seconds)}"
    if evidence.reps is None and evidence.seconds:
        return f"{clock(evidence.seconds)} of {evidence.movement}"
    count = round(evidence.reps or 0)
    name = evidence.movement if count == 1 else plural(evidence.movement)
    load = "" if evidence.load_kg is None else f" with {in_words(evidence.load_kg, units)}"
    return f"{count} {name}{load}"


@wording("en", ExperienceNoted)
def experience_noted(said: ExperienceNoted) -> Worded:
    return Worded(EXPERIENCE[said.level])


EXPERIENCE: Mapping[Experience, str] = {
    "new": "Good that you're here. I start you gently, and we find out together what suits you.",
    "some": "Good, I've noted that you've trained before. I start you a bit below that, and go by how it feels.",
    "trained": "Good, I've noted that you're used to training. Tell me what you can lift or do, and I go by it.",
}


@wording("en", AbilityTakenBack)
def ability_taken_back(_: AbilityTakenBack) -> Worded:
    return Worded("Forgotten. I go by what you told me before.")
