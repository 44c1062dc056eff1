"""What somebody hears after telling a score."""

from datetime import date

import pytest

from bot.words.en.scores.progress import trend_words
from bot.words.en.scores.taking import standing
from bot.words.wording import word
from core.desk.scores.says import Eased, Scoreboard, ScoreNoted
from core.forecast.values import Again, Progress, Trend
from core.measures import AmountUnit
from core.scaling.values import Because, Change, Reason, VersionLine
from core.scores.ranking import rank
from core.scores.values import Entry, Score
from core.sessions.values import Format


def noted(rank: int, of: int) -> str:
    score = Score(value=5, unit="rounds", rounds=5)
    return word(ScoreNoted(score_id=1, score=score, text="5 rounds", rank=rank, of=of), "en").html


@pytest.mark.parametrize(("rank", "of"), [(1, 2), (1, 3), (2, 4), (5, 10)])
def test_a_place_in_the_first_half_is_told(rank, of):
    assert f"That's place {rank} of {of} so far" in noted(rank, of)


@pytest.mark.parametrize(("rank", "of"), [(2, 2), (2, 3), (9, 9), (6, 10)])
def test_nobody_is_told_that_they_came_last(rank, of):
    assert "You're on the board. Well done!" in noted(rank, of)
    assert "place" not in noted(rank, of)


def test_a_best_is_said_unless_it_hurt():
    score = Score(value=5, unit="rounds", rounds=5)
    said = ScoreNoted(score_id=1, score=score, text="5 rounds", rank=1, of=1, is_best=True)
    assert "your best yet" in word(said, "en").html
    hurt = said.model_copy(update={"score": score.model_copy(update={"pain": "my wrist hurts"})})
    assert "your best yet" not in word(hurt, "en").html


def test_whoever_has_just_done_their_best_is_not_told_that_it_was_less_than_expected():
    again = Again(
        lines=(), scores=((date(2026, 3, 2), score_of(5)), (date(2026, 3, 9), score_of(6))), is_best=True
    )
    told = trend_words(Progress(beside=(), trend=Trend.DOWN, again=(again,)))
    assert "best yet" in told
    assert "below" not in told
    assert "below" in trend_words(Progress(beside=(), trend=Trend.DOWN))


def score_of(number: int) -> Score:
    return Score(value=number, unit="rounds", rounds=number)


def test_the_group_does_not_read_why_there_is_no_rank():
    score = Score(value=5, unit="rounds", rounds=5, ranked=False)
    said = ScoreNoted(score_id=1, score=score, text="5 rounds", rank=None, of=0, in_group=True)
    assert "gently" not in standing(said)
    assert "gently" in standing(said.model_copy(update={"in_group": False}))


def board(*scores: tuple[str, Score]) -> str:
    ranked = rank(Format.AMRAP, [Entry(name=name, score=score) for name, score in scores])
    said = Scoreboard(session_id=1, title=None, day=date(2026, 3, 3), boards=((1, ranked),))
    return word(said, "en").html


def rounds(number: int, **facts) -> Score:
    return Score(value=number, unit="rounds", rounds=number, **facts)


def test_places_that_count_on_say_why():
    text = board(("Ilse", rounds(5)), ("Bo", rounds(9, scaled=True)))
    assert "Scaled <i>(placed after everybody who did it as written)</i>\n2. Bo  9 rounds" in text


def test_where_nobody_did_it_as_written_there_is_nothing_to_explain():
    assert "Scaled\n1. Bo  9 rounds" in board(("Bo", rounds(9, scaled=True)))


def test_a_shorter_day_is_marked_and_no_other():
    text = board(("Ilse", rounds(5)), ("Bo", rounds(4, scaled=True, minutes=7.5)))
    assert "1. Ilse  5 rounds\n" in text
    assert text.endswith("2. Bo  4 rounds (had 7.5 min)")


def test_a_board_says_of_everybody_scaled_what_was_lighter():
    ranked = rank(
        Format.AMRAP,
        [
            Entry(name="Ada", score=rounds(5)),
            Entry(name="Bo", score=rounds(9, scaled=True)),
            Entry(name="Cy", score=rounds(12, scaled=True), apart=True),
        ],
    )
    told = (
        Eased(part=1, name="Bo", lines=(version_line("push-up", "hands-on-bench", Change.VARIANT),)),
        Eased(part=1, name="Cy", lines=(version_line("march", "on-the-spot", Change.MOVEMENT),)),
    )
    said = Scoreboard(session_id=1, title=None, day=date(2026, 3, 3), boards=((1, ranked),), eased=told)
    text = word(said, "en").html
    assert "2. Bo  9 rounds · hands on a bench" in text
    assert "Other work, no place\n• Cy  12 rounds · march" in text


def test_who_claims_what_the_version_was_not_is_asked():
    score = Score(value=5, unit="rounds", rounds=5, scaled=True, claimed=True)
    told = word(ScoreNoted(score_id=1, score=score, text="5 rounds", rank=1, of=2), "en")
    assert "Did you do it all as written?" in told.html
    assert "It was as written" in [button.label for row in told.rows for button in row]


def version_line(movement, variant, change):
    return VersionLine(
        line=1, written=movement, movement=movement, variant=variant, amount=10, unit=AmountUnit.REPS,
        change=change, reason=Reason(because=Because.AS_WRITTEN),
    )  # fmt: skip


@pytest.mark.parametrize(
    "pain",
    [
        "my wrist hurts",
        "my wrist hurts a bit",
        "wrist is sore again",
        "the wrist was hurting a little",
        "tweaked my wrist a bit on the last ones tho",
    ],
)
def test_what_hurts_is_named_and_not_its_sentence(pain):
    score = Score(value=5, unit="rounds", rounds=5, pain=pain)
    said = ScoreNoted(score_id=1, score=score, text="5 rounds", rank=1, of=1)
    assert "I'm sorry about your wrist." in word(said, "en").html
