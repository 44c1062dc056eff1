"""Words about what counts as written."""

from bot.words.text import fill
from bot.words.wording import Button, Row, Worded, wording
from core.desk.coaching.commands import SetTolerance
from core.desk.scores.says import AskTolerance, ToleranceSet
from core.scores.values import Tolerance

CHOICES = (0, 5, 10, 20)


@wording("en", AskTolerance)
def ask_tolerance(said: AskTolerance) -> Worded:
    text = fill(
        "<b>What counts as written in {title}</b>\n{now} All else stands under “scaled”. Change it here, or write it, "
        "like <i>15% lighter counts as written</i>.",
        title=said.title,
        now=what_counts(said.tolerance),
    )
    return Worded(text, (tuple(lighter(said, percent) for percent in CHOICES), other(said)))


def lighter(said: AskTolerance, percent: int) -> Button:
    label = f"{percent}% lighter" if percent else "No lighter"
    mark = " ✓" if percent == said.tolerance.lighter_percent else ""
    does = SetTolerance(group=said.group, lighter=percent, other_implement=said.tolerance.other_implement)
    return Button(label + mark, does)


def other(said: AskTolerance) -> Row:
    now = said.tolerance.other_implement
    label = "Another implement is scaled" if now else "Another implement counts too"
    does = SetTolerance(group=said.group, lighter=said.tolerance.lighter_percent, other_implement=not now)
    return (Button(label, does),)


@wording("en", ToleranceSet)
def tolerance_set(said: ToleranceSet) -> Worded:
    moved = {0: "", 1: " One score of today moved."}.get(said.moved, f" {said.moved} scores of today moved.")
    text = fill("In {title} from now on: {now}", title=said.title, now=what_counts(said.tolerance))
    return Worded(text + moved)


def what_counts(tolerance: Tolerance) -> str:
    """What counts as written, as a sentence."""
    percent = tolerance.lighter_percent
    if not percent and not tolerance.other_implement:
        return "Only exactly what you wrote counts as written, and heavier where you chose it for somebody."
    load = f"up to {percent}% lighter" if percent else "no lighter"
    thing = "with whatever implement" if tolerance.other_implement else "with the implement you wrote"
    return f"The same movement and number, {load}, {thing}, counts as written."
