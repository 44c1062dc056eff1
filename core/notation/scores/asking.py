"""The one question that settles a doubt about a score, in plain words."""

from core.scores.text import clock, in_words
from core.scores.values import Doubt, ReadScore, Score
from core.scores.ways import TELLINGS, Way, about, likes, way_of
from core.sessions.values import Block, Format


def unsure(doubt: Doubt, ask: str, score: Score | None = None) -> ReadScore:
    return ReadScore(score=score, sure=False, ask=ask, doubt=doubt)


def unreadable(block: Block) -> ReadScore:
    return unsure(Doubt.UNREADABLE, _example(block))


def uncounted(block: Block) -> ReadScore:
    """They trained and didn't count: that is no reason to be asked sternly."""
    told = TELLINGS[way_of(block)]
    return unsure(
        Doubt.UNCOUNTED, f"That happens, and the training counts. {told.roughly} For example: {about(block)}"
    )


def how_many_when_stopped(block: Block) -> ReadScore:
    """They told that they stopped early, in a part without a cap."""
    return unsure(Doubt.HOW_FAR, f"Stopping is fine. {_example(block)}")


def _example(block: Block) -> str:
    told = TELLINGS[way_of(block)]
    if way_of(block) is Way.DONE:
        return told.ask
    ask = _HEAVIEST if block.format is Format.MAX_LOAD else told.ask
    return f"{ask} For example: {', or: '.join(likes(block))}"


_HEAVIEST = "What was your heaviest weight?"


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
    asked = unsure(Doubt.WHICH_NUMBER, f"Which one counts: {choices}?")
    return asked.model_copy(update={"between": scores})


def part_of_line(score: Score, rounds: int, metres: int, line: str) -> ReadScore:
    text = f"Did you mean {_counted_rounds(rounds)} and then {metres} m of the {line}?"
    return unsure(Doubt.MEANT, text, score)


def how_far_in_round(rounds: int, in_a_round: str) -> ReadScore:
    """`in_a_round`: how much a round holds, in words."""
    text = f"A round has {in_a_round}. How far did you get in the one after {_counted_rounds(rounds)}?"
    return unsure(Doubt.HOW_FAR, text)


def _counted_rounds(rounds: int) -> str:
    return f"{rounds} round" if rounds == 1 else f"{rounds} rounds"


def asks_of_a_round(score: Score, in_a_round: str) -> ReadScore:
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
    """`blocks`: place among the parts, from 0, and block of each that the words could be about."""
    choices = " or ".join(f"part {index + 1} ({_named(block)})" for index, block in blocks)
    one = blocks[0][0] + 1
    return unsure(
        Doubt.WHICH_BLOCK,
        f"Which part is that score for: {choices}? Write them one at a time, like: part {one}, and your score.",
    )


def _named(block: Block) -> str:
    if block.format is Format.AMRAP and block.minutes:
        return f"{block.minutes:g} minutes, as many rounds as possible"
    if block.format is Format.MAX_LOAD:
        return "the heaviest weight"
    return _NAMES[way_of(block)]


_NAMES = {
    Way.ROUNDS: "rounds",
    Way.TIME: "for time",
    Way.HOLD: "the hold",
    Way.HOLDS: "the holds",
    Way.REPS: "most repetitions",
    Way.SETS_OF_REPS: "most repetitions",
    Way.CALORIES: "most calories",
    Way.DISTANCE: "the distance",
    Way.LOAD: "the sets",
    Way.SPLITS: "the intervals",
    Way.COUNTS: "the intervals",
    Way.MINUTES: "every minute",
    Way.DONE: "not scored",
}
