"""Words for the scores of several people that a coach told in one message, and for several of one."""

from collections.abc import Iterable
from typing import Final

from bot.words.en.scores.taking import of_session
from bot.words.text import bullets, fill
from bot.words.wording import Button, Row, Worded, in_rows, wording
from core.desk.coaching.commands import NoteScores, TakeScoresOff
from core.desk.commands import MarkScore
from core.desk.scores.says import AskWhichIsOff, CountingScore, ScoreOfOne, ScoresTogether

# More names than these to tap are a wall; a word takes any of them back.
_MOST_BUTTONS: Final = 6
_LEFT: Final = {
    "same": "{name}: {text}, as I had it.",
    "part": "{name}: “{words}”",
    "how_far": "{name} didn't finish: how far did they get? Write it like <i>{name} DNF 2+10</i>.",
    "unclear": "{name}: “{words}”: I can't tell what score that is. Write it like <i>{name} {like}</i>.",
    "no_consent": "{name}: I keep nothing of {name} yet. Once they have said yes to me in private, write it again.",
    "no_age": "{name}: nobody stands on the board before I know that they are of age. {name} tells me in private.",
    "unknown": "{name}: I know nobody of that name in {group}. Once they've tapped <i>Start with me</i>, write it again.",
}


@wording("en", ScoresTogether)
def scores_together(said: ScoresTogether) -> Worded:
    """What is noted first, then what waits for a tap, then what can't be; every name is in one of these."""
    noted, changes = said.of("noted"), said.of("change")
    asked, left = said.of("part"), said.of("same", "how_far", "unclear", "no_consent", "no_age", "unknown")
    session = of_session(said.title, said.day).removeprefix(",")
    parts = [
        part_of(f"<b>Noted</b>{fill('{s}', s=session)}:", map(noted_one, noted)) if noted else "",
        part_of("Shall I put this in the place of what I have?", map(change_of, changes)) if changes else "",
        part_of("Which part is that of?", [left_out(one, said) for one in asked]) if asked else "",
        part_of(
            "<b>Not noted</b>:" if noted else "<b>I've noted nothing of these</b>:",
            [left_out(one, said) for one in left],
        )
        if left
        else "",
    ]
    return Worded("\n\n".join(one for one in parts if one), tuple(rows_under(said, noted, changes)))


def part_of(heading: str, rows: Iterable[str]) -> str:
    return f"{heading}\n{bullets(list(rows))}"


def noted_one(one: ScoreOfOne) -> str:
    kind = "scaled" if one.scaled else "as written"
    return fill(
        "{name}{part}: <b>{text}</b>, {kind}", name=one.name, part=in_part(one.part), text=one.text, kind=kind
    )


def change_of(one: ScoreOfOne) -> str:
    instead = " instead of {before}" if one.before else "?"
    return fill(
        "{name}{part}: <b>{text}</b>" + instead,
        name=one.name,
        part=in_part(one.part),
        text=one.text,
        before=one.before or "",
    )


def in_part(part: int | None) -> str:
    return f", part {part}" if part else ""


def left_out(one: ScoreOfOne, said: ScoresTogether) -> str:
    return fill(
        _LEFT[one.state], name=one.name, words=one.words, text=one.text, like=said.like, group=said.group
    )


def rows_under(
    said: ScoresTogether, noted: tuple[ScoreOfOne, ...], changes: tuple[ScoreOfOne, ...]
) -> Iterable[Row]:
    if changes:
        label = "Yes, change it" if len(changes) == 1 else f"Yes, change {all_of(len(changes))}"
        yield (Button(label, NoteScores(word=said.word, session=said.session, block=said.block, sure=True)),)
    of_part = [
        Button(f"Part {number}", NoteScores(word=said.word, session=said.session, block=block, sure=False))
        for block, number in said.parts
    ]
    yield from in_rows(of_part, 2)
    if len(noted) <= _MOST_BUTTONS:
        back = [
            Button(f"Take {one.name} back"[:40], MarkScore(score=one.score_id, mark="not_counted"))
            for one in noted
            if one.score_id is not None
        ]
        yield from in_rows(back, 2)


@wording("en", AskWhichIsOff)
def ask_which_is_off(said: AskWhichIsOff) -> Worded:
    each = [Button(of_part(one), MarkScore(score=one.score_id, mark="not_counted")) for one in said.scores]
    every = Button(all_of(len(each)).capitalize(), TakeScoresOff(session=said.session, person=said.person))
    text = fill(
        "<b>{name}</b> has {n} scores there. Which goes off the board?", name=said.athlete, n=len(each)
    )
    return Worded(text, tuple(in_rows([*each, every], 2)))


def of_part(one: CountingScore) -> str:
    return f"Part {one.part}: {one.text}"[:40] if one.part else one.text[:40]


def all_of(number: int) -> str:
    return "both" if number == 2 else f"all {number}"  # noqa: PLR2004 - a pair
