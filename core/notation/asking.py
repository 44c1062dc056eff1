"""The one question that settles a doubt about a score, in plain words."""

from core.scores.text import clock, in_words
from core.scores.values import Doubt, ReadScore, Score
from core.sessions.counting import is_in_kcal
from core.sessions.values import Block, Format

_EXAMPLES = {
    Format.AMRAP: "How many rounds and repetitions did you do? For example: 7 rounds + 12",
    Format.FOR_TIME: "What was your time? For example: 8:43, or: capped, 40 reps left",
    Format.TIME_TRIAL: "What was your time? For example: 8:43",
    Format.HOLD: "How long did you hold it? For example: 1:35",
    Format.MAX_REPS: "How many repetitions did you do in all? For example: 42 reps",
    Format.MAX_LOAD: "What was your heaviest weight? For example: 60 kg",
    Format.SETS: "Which weight did you use? For example: 60 kg",
    Format.INTERVALS: "What did you get in each one? For example: 12, 11, 10",
    Format.QUALITY: "This part has no score. What would you like your coach to know?",
}


_ROUGHLY = {
    Format.AMRAP: "Roughly how many rounds do you think it was? For example: about 6 rounds",
    Format.FOR_TIME: "Roughly how long did it take you? For example: about 9 min",
    Format.TIME_TRIAL: "Roughly how long did it take you? For example: about 9 min",
    Format.HOLD: "Roughly how long was it? For example: about 1 min",
    Format.MAX_REPS: "Roughly how many repetitions do you think it was? For example: about 40 reps",
    Format.MAX_LOAD: "Roughly how heavy was it? For example: about 60 kg",
    Format.SETS: "Roughly how heavy was it? For example: about 60 kg",
    Format.INTERVALS: "Roughly how many in each one? For example: about 12 each",
}


_CALORIES = "How many calories did you get in all? For example: 42 cal"
_ROUGH_CALORIES = "Roughly how many calories do you think it was? For example: about 40 cal"


def unsure(doubt: Doubt, ask: str, score: Score | None = None) -> ReadScore:
    return ReadScore(score=score, sure=False, ask=ask, doubt=doubt)


def unreadable(block: Block) -> ReadScore:
    return unsure(Doubt.UNREADABLE, _example(block))


def uncounted(block: Block) -> ReadScore:
    """They trained and didn't count: that is no reason to be asked sternly."""
    return unsure(Doubt.UNCOUNTED, f"That happens, and the training counts. {_rough(block)}")


def how_many_when_stopped(block: Block) -> ReadScore:
    """They told that they stopped early, in a part without a cap."""
    return unsure(Doubt.HOW_FAR, f"Stopping is fine. {_example(block)}")


def _example(block: Block) -> str:
    return _CALORIES if _is_most_calories(block) else _EXAMPLES[block.format]


def _rough(block: Block) -> str:
    return _ROUGH_CALORIES if _is_most_calories(block) else _ROUGHLY[block.format]


def _is_most_calories(block: Block) -> bool:
    return block.format is Format.MAX_REPS and is_in_kcal(block)


def nothing_scored() -> ReadScore:
    return unsure(
        Doubt.UNREADABLE, "Nothing in this session is scored. What would you like your coach to know?"
    )


def meant(score: Score, doubt: Doubt = Doubt.MEANT) -> ReadScore:
    return unsure(doubt, f"Did you mean {in_words(score)}?", score)


def impossible(score: Score) -> ReadScore:
    """Asked once: whoever says yes is believed."""
    text = f"Really {in_words(score)}? If that's right, say yes and I keep it. If not, what was it?"
    return unsure(Doubt.IMPOSSIBLE, text, score)


def not_positive() -> ReadScore:
    return unsure(Doubt.NOT_POSITIVE, "A score can't be below zero. What was it?")


def no_weight() -> ReadScore:
    return unsure(Doubt.NOT_POSITIVE, "A weight is more than nothing. What was it?")


def which_number(scores: tuple[Score, ...]) -> ReadScore:
    choices = " or ".join(in_words(score) for score in scores)
    return unsure(Doubt.WHICH_NUMBER, f"Which one counts: {choices}?")


def part_of_line(score: Score, rounds: int, metres: int, line: str) -> ReadScore:
    text = f"Did you mean {_counted_rounds(rounds)} and then {metres} m of the {line}?"
    return unsure(Doubt.MEANT, text, score)


def _counted_rounds(rounds: int) -> str:
    return f"{rounds} round" if rounds == 1 else f"{rounds} rounds"


def beyond_round(score: Score, in_a_round: str) -> ReadScore:
    """`in_a_round`: how much a round holds, in words."""
    text = f"A round has {in_a_round}. Did you mean {in_words(score)}?"
    return unsure(Doubt.BEYOND_ROUND, text, score)


def beyond_cap(cap_s: float) -> ReadScore:
    text = f"The cap was {clock(cap_s)}. How many repetitions had you done by then?"
    return unsure(Doubt.BEYOND_CAP, text)


def how_far(score: Score) -> ReadScore:
    return unsure(Doubt.HOW_FAR, "How many repetitions had you done when you stopped?", score)


def stopped_after(score: Score, rounds: int, reps: int) -> ReadScore:
    more = f" + {reps}" if reps else ""
    return unsure(Doubt.MEANT, f"Did you stop after {_counted_rounds(rounds)}{more}?", score)


def finished_or_not(score: Score) -> ReadScore:
    text = f"Is {score.reps} a time, or the repetitions you did before you stopped?"
    return unsure(Doubt.FINISHED_OR_NOT, text, score)


def which_block(blocks: tuple[tuple[int, Block], ...]) -> ReadScore:
    """`blocks`: index and block of each that the words could be about."""
    choices = " or ".join(f"part {index + 1} ({_named(block)})" for index, block in blocks)
    one = blocks[0][0] + 1
    return unsure(
        Doubt.WHICH_BLOCK,
        f"Which part is that score for: {choices}? Write them one at a time, like: part {one}, and your score.",
    )


def _named(block: Block) -> str:
    names = {
        Format.AMRAP: f"{block.minutes:g} minutes, as many rounds as possible" if block.minutes else "rounds",
        Format.FOR_TIME: "for time",
        Format.TIME_TRIAL: "for time",
        Format.HOLD: "the hold",
        Format.MAX_REPS: "most calories" if _is_most_calories(block) else "most repetitions",
        Format.MAX_LOAD: "the heaviest weight",
        Format.SETS: "the sets",
        Format.INTERVALS: "the intervals",
        Format.QUALITY: "not scored",
    }
    return names[block.format]
