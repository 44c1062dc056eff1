"""The timer: what sounds when, in a few lines under the sound itself."""

from collections.abc import Iterator, Mapping, Sequence
from functools import partial
from itertools import pairwise

from bot.files.sounding import LEAD_S, as_voice
from bot.words.en.versions.version import part_words
from bot.words.forecasts import clock
from bot.words.text import bullets, escape
from bot.words.wording import Attachment, Button, Worded, wording
from core.desk.versions.commands import GiveTimer
from core.desk.versions.says import NoTimer, Timer
from core.forecast.values import Clock, MarkKind

# In the order in which they are told; what counts down is told with the start.
SOUNDS: Mapping[MarkKind, str] = {
    "start": "you start (one long high tone)",
    "work": "go again (one high tone)",
    "rest": "rest (one low tone)",
    "split": "where you'd be by plan (a soft tick)",
    "halfway": "half of it (two tones)",
    "last_minute": "last minute (three tones)",
    "end": "done (one long low tone)",
}
# So many moments are told one by one.
MOST_MOMENTS = 4


@wording("en", Timer)
def timer(said: Timer) -> Worded:
    part = part_words(said.session, said.block)
    ends = "until you're done" if said.clock.ends_s is None else clock(said.clock.ends_s)
    told = [f"{when}: {what}" for kind, what in SOUNDS.items() if (when := _when(said.clock, kind))]
    text = "\n".join(
        [
            f"<b>Timer</b> · {escape(part)}, {ends}",
            f"Press play: you have {LEAD_S:.0f} seconds, and three short tones count you in.",
            bullets([escape(one) for one in told]),
            "Your body goes before the clock: stop if something hurts.",
        ]
    )
    file = Attachment("timer.ogg", partial(as_voice, said.clock), "voice")
    return Worded(text, tuple((one,) for one in _others(said)), file)


def _others(said: Timer) -> Iterator[Button]:
    for number in said.others:
        yield Button(
            f"Timer: {part_words(said.session, number)}", GiveTimer(session=said.session_id, block=number)
        )


def _when(one: Clock, kind: MarkKind) -> str:
    """Of turns how often they come, as the half and the last minute sound in place of one; empty where it never does."""
    at = one.of(kind)
    if kind == "work" and at and one.every_s is not None:
        return f"every {clock(one.every_s)}, {one.turns} times in all"
    return _moments(at) if at else ""


def _moments(at: Sequence[float]) -> str:
    """`6:00`; `2:00 and 4:00`; `every 1:53 from 1:53 to 18:50`; plain text."""
    steps = [after - before for before, after in pairwise(at)]
    if len(at) > 2 and max(steps) - min(steps) <= 1:  # noqa: PLR2004 - a step that comes again
        mean = (at[-1] - at[0]) / len(steps)
        return f"every {clock(mean)} from {clock(at[0])} to {clock(at[-1])}"
    told = [clock(one) for one in at[:MOST_MOMENTS]]
    if len(at) > MOST_MOMENTS:
        return f"{', '.join(told)} and so on"
    return " and ".join(filter(None, (", ".join(told[:-1]), told[-1])))


@wording("en", NoTimer)
def no_timer(_: NoTimer) -> Worded:
    return Worded(
        "There's no clock in it that I could count for you. Take each set when you're ready for it, and rest as "
        "long as you need."
    )
