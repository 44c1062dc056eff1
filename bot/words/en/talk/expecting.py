"""How long today's session takes somebody, and how to pace it."""

from collections.abc import Sequence

from bot.words.forecasts import NOT_KNOWN, forecast_words, pacing_words
from bot.words.wording import Worded, wording
from core.desk.talk.says import HowLongItIs
from core.forecast.values import Outlook


@wording("en", HowLongItIs)
def how_long_it_is(said: HowLongItIs) -> Worded:
    text = _length(said) + (aim(said.aim) if said.aim else "")
    unknown = [NOT_KNOWN] if any(one and not one.is_foregone for one in said.outlooks) else []
    return Worded("\n".join([text, *(_what_to_expect(said.outlooks) or [*unknown, _unknown(said)])]))


def _length(said: HowLongItIs) -> str:
    if said.minutes is not None:
        most = "at most " if said.capped else ""
        return f"The session has {most}{said.minutes:g} minutes, warm-up not counted."
    if said.theirs is not None:
        return f"Reckon with some {max(1, round(said.theirs))} minutes, rests included and warm-up not."
    return "Your coach set no time: take what it needs."


def _what_to_expect(outlooks: Sequence[Outlook | None]) -> list[str]:
    """For each block that has a forecast what it comes to, and how to get there."""
    known = [(number, one) for number, one in enumerate(outlooks, 1) if one is not None and one.is_telling]
    return [
        " ".join(
            [
                f"{_which(number, outlooks)}I'd expect {forecast_words(one.forecast)} of you.",
                *pacing_words(one),
            ]
        )
        for number, one in known
    ]


def _which(number: int, outlooks: Sequence[Outlook | None]) -> str:
    return f"Part {number}: " if len(outlooks) > 1 else ""


def _unknown(said: HowLongItIs) -> str:
    """What helps whoever can't be told what to expect."""
    advice = "egin so that you could go on talking, and keep some for the end."
    return f"How to pace it I can't tell closely yet: b{advice}" if said.paced else f"B{advice}"


def aim(between: tuple[float | None, float | None]) -> str:
    low, high = ((f"{one:g}" if one is not None else "") for one in between)
    return f" Your coach's aim: {' to '.join(one for one in (low, high) if one)}."
