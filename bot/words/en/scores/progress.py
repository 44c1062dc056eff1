"""How somebody is getting on."""

from bot.words.text import bullets, fill
from bot.words.versions import what_words
from bot.words.wording import Worded, wording
from core.desk.scores.says import ToldProgress
from core.forecast.progress import COMPARABLE, Again, Believed, Progress, Trend
from core.measures import AmountUnit, MassUnit

_TREND = {
    Trend.UP: "Yes: your last {six} came out better than I expected each time. What you do works.",
    Trend.STEADY: "You're holding what you have: your last {six} came out much as I expected.",
    Trend.DOWN: "Your last {six} came out below what I expected. Short nights, heat, a busy month: that happens to "
    "everybody. If something hurts, or you feel unwell, tell me.",
}


@wording("en", ToldProgress)
def told_progress(said: ToldProgress) -> Worded:
    if not said.scores:
        return Worded(
            "I know of no score of yours so far. Tell me what you reached after your next session, and I'll keep track."
        )
    parts = [trend_words(said.progress), *_again(said), *_believed(said)]
    return Worded("\n\n".join(parts))


def trend_words(progress: Progress) -> str:
    if progress.trend is None:
        left = COMPARABLE - len(progress.beside)
        more = "one more score" if left == 1 else f"{left} more scores"
        return f"I need {more} of yours before I can say whether you're getting better."
    return _TREND[progress.trend].format(six="six scores")


def _again(said: ToldProgress) -> list[str]:
    rows = [_one_again(one, said.units) for one in said.progress.again]
    return [f"<b>What came again</b>\n{bullets(rows)}"] if rows else []


def _one_again(one: Again, units: MassUnit) -> str:
    """`10 push-ups, 20 air squats: 5 rounds + 3 on 2 March, 6 rounds on 4 May. Your best yet`; HTML."""
    times = [f"{score.in_words(units)} on {on:%-d %B}" for on, score in one.scores[-2:]]
    return fill(
        "{lines}: {times}{best}",
        lines=", ".join(what_words(line, units) for line in one.lines),
        times=", ".join(times),
        best=". Your best yet" if one.is_best else "",
    )


def _believed(said: ToldProgress) -> list[str]:
    rows = [believed_words(one, said.units) for one in said.progress.believed]
    if not rows:
        return []
    ask = 'If I\'m wrong, tell me, like "I can do 20 push-ups".'
    return [f"<b>What I think you can do in one go</b>\n{bullets(rows)}\n{ask}"]


def believed_words(one: Believed, units: MassUnit) -> str:
    """`push-ups: about 18, between 15 and 22`; HTML."""
    unit = " s" if one.line.unit is AmountUnit.SECONDS else ""
    bare = one.line.model_copy(update={"amount": None})
    low, middle, high = (f"{max(1, round(number))}" for number in (one.low, one.expected, one.high))
    between = "" if low == high else f", between {low} and {high}{unit}"
    return fill(
        "{what}: about {middle}{unit}{between}",
        what=what_words(bare, units),
        middle=middle,
        unit=unit,
        between=between,
    )
