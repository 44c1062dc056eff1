"""Words for scores that a coach looks at and decides about."""

from bot.words.text import fill, listed
from bot.words.wording import Button, Worded, wording
from core.desk.coaching.commands import AskWhatCounts
from core.desk.commands import LookAtScore, MarkScore
from core.desk.scores.says import JudgeScores, ScoreCard, ScoreJudged
from core.scores.values import Mark


@wording("en", ScoreJudged)
def score_judged(said: ScoreJudged) -> Worded:
    if said.counts:
        return Worded(fill("Your score {text} counts again, says {by}.", text=said.text, by=said.by))
    return Worded(
        fill(
            "{by} took your score {text} off the board for now. Ask them if that surprises you.",
            by=said.by,
            text=said.text,
        )
    )


@wording("en", JudgeScores)
def judge_scores(said: JudgeScores) -> Worded:
    rows = tuple((Button(text[:60], LookAtScore(score=score)),) for score, text in said.scores)
    counts = (Button("What counts as written", AskWhatCounts(group=said.group)),)
    return Worded("Tap a score to see its history and decide about it.", (*rows, counts))


@wording("en", ScoreCard)
def score_card(said: ScoreCard) -> Worded:
    lines = [fill("<b>{name}: {text}</b>", name=said.name, text=said.text)]
    typed = f"Typed: “{said.typed}”, by" if said.typed else "Told by"
    lines.append(fill("{typed} {by}.", typed=typed, by=said.by))
    earlier = [f"“{text}”" for text in said.earlier if text]
    if earlier:
        lines.append(fill("Before that: {earlier}.", earlier=listed(earlier)))
    lines += [
        fill("{when}: {mark} by {by}", when=f"{at:%-d %B %H:%M}", mark=MARKS[mark], by=by)
        for mark, by, at in said.markings
    ]
    turn = ("Don't count it", "not_counted") if said.counts else ("Count it again", "counts_again")
    row = (
        Button("Checked", MarkScore(score=said.score_id, mark="checked")),
        Button(turn[0], MarkScore(score=said.score_id, mark=turn[1])),
    )
    return Worded("\n".join(lines), (row,))


MARKS = {Mark.CHECKED: "checked", Mark.NOT_COUNTED: "not counted", Mark.COUNTS_AGAIN: "counts again"}
