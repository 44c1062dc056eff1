"""Numbers that no person reaches: they are slips of the finger, and are asked about."""

from core.notation.scores import asking
from core.scores.values import ReadScore, Score
from core.sessions.counting import reps_in_all, reps_in_round, reps_of
from core.sessions.values import Block, Format

# Generous on purpose (estimates): only slips are caught, never somebody fast. The quickest mixed light work
# goes at about 60 repetitions a minute, short bursts of one movement at about twice that.
_REPS_PER_MINUTE = 60
_BURST_PER_MINUTE = 120
_ROUNDS_PER_MINUTE = 6
_LONGEST_S = 6 * 3600.0
_LONGEST_HOLD_S = 3600.0
# Few lift more; whoever does is believed at a word.
_HEAVIEST_KG = 250
_MOST_REPS = 3000
_FASTEST_M_PER_S = 12.5


def implausible(score: Score, block: Block) -> ReadScore | None:
    """The question to ask about a score that can't be, or None."""
    if score.value is not None and score.value < 0:
        return asking.not_positive()
    if score.load_kg == 0:
        return asking.no_weight()
    if _is_beyond_cap(score, block):
        assert block.cap_s is not None
        return asking.beyond_cap(block.cap_s)
    return asking.impossible(score) if _is_impossible(score, block) else None


def _is_beyond_cap(score: Score, block: Block) -> bool:
    timed = block.format in {Format.FOR_TIME, Format.TIME_TRIAL} and not score.capped
    return timed and block.cap_s is not None and (score.seconds or 0) > block.cap_s


def _is_impossible(score: Score, block: Block) -> bool:
    if score.load_kg is not None and not 0 < score.load_kg <= _HEAVIEST_KG:
        return True
    if block.format is Format.AMRAP:
        return _too_many_rounds(score, block)
    if score.seconds is not None and not score.capped:
        return _too_quick_or_long(score.seconds, block)
    return score.reps is not None and score.reps > _most_reps(block)


def _too_many_rounds(score: Score, block: Block) -> bool:
    minutes, rounds, reps = block.minutes or 60, score.rounds or 0, score.reps or 0
    if rounds > _ROUNDS_PER_MINUTE * minutes or reps > _REPS_PER_MINUTE * minutes:
        return True
    more = reps / _REPS_PER_MINUTE if reps_in_round(block) else 0
    return rounds * _least_minutes(block) + more > minutes


def _least_minutes(block: Block) -> float:
    """No round is quicker than this; what is neither repetitions nor metres counts for nothing."""
    if block.scheme or block.partial:
        return 0
    reps = sum(reps_of(line) or 0 for line in block.lines)
    return reps / _REPS_PER_MINUTE + _metres(block) / _FASTEST_M_PER_S / 60


def _metres(block: Block) -> float:
    return sum(float(line.amount or 0) for line in block.lines if line.unit == "m")


def _too_quick_or_long(seconds: float, block: Block) -> bool:
    if block.format is Format.HOLD:
        return not 0 < seconds <= _LONGEST_HOLD_S
    rounds = block.rounds or 1
    metres = _metres(block) * rounds
    least = (reps_in_all(block) or 0) / _BURST_PER_MINUTE * 60 + metres / _FASTEST_M_PER_S
    least /= rounds if block.counts else 1  # only one of them is the score
    return not max(least, 1) <= seconds <= _LONGEST_S


def _most_reps(block: Block) -> float:
    return min(_MOST_REPS, _BURST_PER_MINUTE * block.minutes if block.minutes else _MOST_REPS)
