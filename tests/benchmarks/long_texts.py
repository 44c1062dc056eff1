"""How a long message costs: ten times the characters should cost about ten times as much."""

from time import process_time

from core.understanding.understand import understand
from core.understanding.values import Message

_SHORT, _TIMES = 1_000, 10
_TEXTS = {
    "a score, a knee": "I did 7+12 and my knee hurts, ",
    "things, numbers": "knee 7+12 dumbbells of and 10 kg squats. ",
    "no words": "\u00e4\U0001f602x9 ",
}


def table() -> list[tuple[str, str]]:
    """For each text, how much longer ten thousand characters take than one thousand."""
    return [
        (f"10,000 letters against 1,000: {name}", f"{_ratio(text):.1f} x") for name, text in _TEXTS.items()
    ]


def _ratio(text: str) -> float:
    long = (text * (_SHORT * _TIMES // len(text) + 1))[: _SHORT * _TIMES]
    return _seconds(long) / _seconds(long[:_SHORT])


def _seconds(text: str) -> float:
    """The quickest of three."""
    return min(_once(text) for _ in range(3))


def _once(text: str) -> float:
    began = process_time()
    understand(Message(text=text))
    return process_time() - began
