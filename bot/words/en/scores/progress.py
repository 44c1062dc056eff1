"""How somebody is getting on."""

from collections.abc import Iterator
from functools import partial

from bot.files.charts import Panel, Point, as_picture
from bot.words.en.versions.questions import things
from bot.words.text import bullets, escape, fill
from bot.words.versions import what_words
from bot.words.wording import Attachment, Button, Row, Worded, wording
from core.desk.coaching.commands import LookAtAthlete
from core.desk.scores.says import HowTheyDo, ToldProgress
from core.forecast.values import COMPARABLE, FOUR_IN_FIVE, Again, Believed, Progress, Trend
from core.measures import AmountUnit, MassUnit

_TREND = {
    Trend.UP: "Yes: on the whole your last six scores came out better than I expected. What you do works.",
    Trend.STEADY: "You're holding what you have: your last six scores came out much as I expected.",
    Trend.DOWN: "On the whole your last six scores came out a little below my guesses, which says as much of my guesses "
    "as of you: short nights, heat, a busy month do it to everybody. If something hurts, or you feel unwell, tell me.",
}
GENTLY = "I start {name} gently. After some gentle sessions I offer them more."
# Whoever has just done their best needs no word about guesses that were too high.
_BEST_ALL_THE_SAME = "Yes: you've just done your best yet at something you did before. My guesses had run ahead; I'm putting them right."

_TREND_OF_OTHERS = {
    Trend.UP: "On the whole the last six scores came out better than I expected.",
    Trend.STEADY: "The last six scores came out much as I expected.",
    Trend.DOWN: "On the whole the last six scores came out below my guesses. A word from you may help.",
    None: "There are too few scores yet to say whether it gets better.",
}


@wording("en", ToldProgress)
def told_progress(said: ToldProgress) -> Worded:
    if not said.scores:
        return Worded(
            "I know of no score of yours so far. Tell me what you reached after your next session, and I'll keep track."
        )
    parts = [trend_words(said.progress), *_again(said), *_believed(said)]
    return Worded("\n\n".join(parts), file=_picture(said))


@wording("en", HowTheyDo)
def how_they_do(said: HowTheyDo) -> Worded:
    rows: tuple[Row, ...] = ()
    if said.session_id is not None:
        look = LookAtAthlete(session=said.session_id, person=said.person)
        rows = ((Button("Their version", look),),)
    told = [f"{on:%-d %B}: {escape(score.in_words(said.units))}" for on, score in said.scores]
    head = fill("<b>{name}</b> did lately:", name=said.athlete)
    scores = f"{head}\n{bullets(told)}\n{_TREND_OF_OTHERS[said.trend]}"
    none = fill("I know of no score of {name} so far.", name=said.athlete)
    return Worded("\n\n".join([scores if told else none, *_known_of(said)]), rows)


def _known_of(said: HowTheyDo) -> Iterator[str]:
    """What their coach sees in their versions anyway."""
    if said.owns is not None:
        owns = things(said.owns, said.units) if said.owns else "nothing that I know of"
        yield fill("At home: {things}.", things=owns)
    if said.gently:
        yield fill(GENTLY, name=said.athlete)


def _picture(said: ToldProgress) -> Attachment | None:
    """What was done beside what was expected, and what came again last; None while neither is to be seen."""
    rows = [*_beside_rows(said.progress), *_again_rows(said)]
    if not rows:
        return None
    panels, told = zip(*rows, strict=True)
    return Attachment("progress.png", partial(as_picture, panels), "photo", escape(" ".join(told)))


def _beside_rows(progress: Progress) -> Iterator[tuple[Panel, str]]:
    """Each panel with what is to be seen on it; plain text."""
    if progress.trend is None:
        return
    points = tuple(Point(one.on, one.better) for one in progress.beside)
    usual = FOUR_IN_FIVE / 2
    inside = sum(abs(point.value) <= usual for point in points)
    above = sum(point.value > usual for point in points)
    panel = Panel(
        "Beside what I expected", points, (-usual, usual), ("better", "less; most days land in the band")
    )
    below = len(points) - inside - above
    seen = f"{inside} as expected, {above} better, {below} less"
    yield panel, f"Your {len(points)} scores from {_days(points)} beside what I expected of each: {seen}."


def _again_rows(said: ToldProgress) -> Iterator[tuple[Panel, str]]:
    """Of the session that came again last, where all of its scores are of one kind."""
    for one in said.progress.again[:1]:
        kinds = {(score.unit, score.capped) for _, score in one.scores}
        points = tuple(
            Point(on, score.value, score.in_words(said.units))
            for on, score in one.scores
            if score.value is not None
        )
        if len(kinds) > 1 or len(points) < len(one.scores):
            return
        what = ", ".join(what_words(line, said.units) for line in one.lines)
        sooner = kinds == {("s", False)}
        yield (
            Panel(what, points, upside_down=sooner),
            f"{what}, {len(points)} times from {_days(points)}: first {points[0].label}, last {points[-1].label}.",
        )


def _days(points: tuple[Point, ...]) -> str:
    return f"{points[0].on:%-d %B} to {points[-1].on:%-d %B}"


def trend_words(progress: Progress) -> str:
    if progress.trend is None:
        left = COMPARABLE - len(progress.beside)
        more = "one more score" if left == 1 else f"{left} more scores"
        return f"I need {more} of yours before I can say whether you're getting better."
    if progress.trend is Trend.DOWN and any(one.is_best for one in progress.again):
        return _BEST_ALL_THE_SAME
    return _TREND[progress.trend]


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
