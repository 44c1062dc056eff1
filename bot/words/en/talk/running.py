"""Words for whoever asks for a pace, or whether one rests between."""

from decimal import Decimal

from bot.words.en.versions.version import part_words
from bot.words.text import bullets, escape, fill
from bot.words.wording import Worded, wording
from core.desk.talk.says import PaceTold, RestsTold, RunReckoned, ShareTold
from core.measures import MassUnit, in_words
from core.sessions.values import Block, BlockKind, Format

_KM, _MILE = 1000.0, 1609.344
_SHORT_M = 1500


def clock(seconds: float) -> str:
    """`4:02`, `1:02:05`."""
    whole = round(seconds)
    hours, rest = divmod(whole, 3600)
    return f"{hours}:{rest // 60:02}:{rest % 60:02}" if hours else f"{rest // 60}:{rest % 60:02}"


@wording("en", PaceTold)
def pace_told(said: PaceTold) -> Worded:
    each = said.seconds / said.metres
    lap = f", {clock(each * 400)} for each 400 m" if said.metres >= _SHORT_M else ""
    text = "{far} in {time} is <b>{pace} a kilometre</b> ({mile} a mile){lap}."
    return Worded(
        fill(
            text,
            far=far(said.metres),
            time=clock(said.seconds),
            pace=clock(each * _KM),
            mile=clock(each * _MILE),
            lap=lap,
        )
    )


@wording("en", RunReckoned)
def run_reckoned(said: RunReckoned) -> Worded:
    """By the power law of Riegel (1981), as in the forecasts."""
    text = (
        "By the {of_far} in {of_time} that you told me, {far} comes to about <b>{time}</b>, {pace} a kilometre, if you have trained "
        "for that distance. Your coach knows better."
    )
    return Worded(
        fill(
            text,
            of_far=far(said.of_metres),
            of_time=clock(said.of_seconds),
            far=far(said.metres),
            time=clock(said.seconds),
            pace=clock(said.seconds / said.metres * _KM),
        )
    )


@wording("en", ShareTold)
def share_told(said: ShareTold) -> Worded:
    share = f"{said.percent} %"
    if said.movement is None:
        text = (
            "{share} of what? On a board it is of the most you lift once. Tell me which lift and your best, like <i>my best back "
            "squat is 100 kg</i>, and I work it out."
        )
        return Worded(fill(text, share=share))
    if said.best_kg is None:
        text = (
            "{share} is of the most you lift once, and your best {lift} I don't know yet. Tell me, like <i>my best {lift} is "
            "{example}</i>, and I work it out. Till then: a weight that leaves you two or three good ones at the end."
        )
        example = "150 lb" if said.units is MassUnit.LB else "60 kg"
        return Worded(fill(text, share=share, lift=said.movement, example=example))
    kilos = said.best_kg * said.percent / 100
    worked = "" if said.reps == 1 else f", reckoned from your {said.reps} in a row"
    text = "{share} of your best {lift}, {best}{worked}, is <b>{load}</b>. Take the nearest that you can load; if your version says less, go by that."
    best, load = in_words(said.best_kg, said.units), in_words(nearest(kilos), said.units)
    return Worded(fill(text, share=share, lift=said.movement, best=best, worked=worked, load=load))


def nearest(kilos: Decimal) -> Decimal:
    """To half a kilo: nobody loads finer."""
    return (kilos * 2).to_integral_value() / 2


def far(metres: float) -> str:
    return f"{metres / _KM:g} km" if metres >= _KM else f"{metres:g} m"


@wording("en", RestsTold)
def rests_told(said: RestsTold) -> Worded:
    session = said.session
    work = [
        (number, one)
        for number, one in enumerate(session.blocks, 1)
        if one.kind not in {BlockKind.WARM_UP, BlockKind.COOL_DOWN}
    ]
    told = [
        fill("{part}: {rest}", part=part_words(session, number), rest=rest_of(one)) for number, one in work
    ]
    return Worded(f"{bullets(told)}\n{escape('Out of breath or wobbly? Rest longer, it still counts.')}")


def rest_of(block: Block) -> str:
    """What is written; where nothing is, what is common practice (no source)."""
    if block.rest_s:
        return f"{clock(block.rest_s)} min of rest, as your coach wrote"
    match block.format:
        case Format.AMRAP | Format.FOR_TIME:
            return "no fixed rest; take short ones whenever you need to, the clock runs on"
        case Format.INTERVALS:
            return "what is left of each turn is your rest"
        case Format.SETS | Format.MAX_LOAD:
            return "your coach wrote none, so rest between sets till the next feels doable, a minute or two"
        case _:
            return "none is written; rest whenever you need to"
