"""A clock as a voice message: OGG with Opus, one channel, 48 kHz, tones and no words.

Half an hour of silence takes an encoder many seconds. So each tone is encoded once, and the file is put together of
packets: those of the tones, and between them silent ones. A tone begins with whole silent packets, which leaves encoder
and decoder in the state that they have after silence; a packet is 20 ms, so that a mark is right to half of that.
"""

import io
from collections.abc import Mapping
from functools import cache
from typing import Final, NamedTuple

import numpy as np
import numpy.typing as npt
import soundfile

from bot.files.ogg import ogg_of, packets_of
from core.forecast.values import Clock, MarkKind

RATE_HZ: Final = 48_000
_PACKET: Final = RATE_HZ // 50
_SILENCE: Final = b"\xf8\xff\xfe"  # RFC 6716, 3.1: 20 ms of one channel with nothing in it
# To put the telephone down (common practice, no source), and what is left to sound behind the end.
LEAD_S: Final = 10.0
_AFTER_S: Final = 2.0
_SILENT_FIRST: Final = 5
# Without a ramp a tone begins and ends with a click.
_RAMP_S: Final = 0.004
_BETWEEN_S: Final = 0.09


class Tone(NamedTuple):
    """`times` after each other; `loud` from 0 to 1."""

    hz: float
    seconds: float
    times: int = 1
    loud: float = 0.7


# Between 400 and 2000 Hz a telephone on the floor is heard best (estimate). What is greater than a turn is told by its
# number as well: two for the half, three for the last minute.
TONES: Final[Mapping[MarkKind, Tone]] = {
    "ready": Tone(660, 0.12),
    "start": Tone(1320, 0.55),
    "work": Tone(1100, 0.35),
    "rest": Tone(440, 0.35),
    "split": Tone(1760, 0.05, loud=0.2),
    "halfway": Tone(880, 0.15, times=2),
    "last_minute": Tone(990, 0.15, times=3),
    "end": Tone(550, 1.2),
}


def as_voice(clock: Clock) -> bytes:
    """The file; the clock starts `LEAD_S` after its beginning."""
    head, tags, _ = _encoded("ready")
    last = clock.marks[-1].at_s if clock.ends_s is None else clock.ends_s
    packets = [_SILENCE] * round((LEAD_S + last + _AFTER_S) * RATE_HZ / _PACKET)
    for mark in clock.marks:
        _, _, tone = _encoded(mark.kind)
        at = round((LEAD_S + mark.at_s) * RATE_HZ / _PACKET) - _SILENT_FIRST
        packets[at : at + len(tone)] = tone
    return ogg_of(head, tags, packets, _PACKET)


@cache
def _encoded(kind: MarkKind) -> tuple[bytes, bytes, tuple[bytes, ...]]:
    """The headers, and a tone's packets with those before it."""
    written = io.BytesIO()
    wave = _wave(TONES[kind])
    soundfile.write(written, wave, RATE_HZ, format="OGG", subtype="OPUS")
    head, tags, *packets = packets_of(written.getvalue())
    return head, tags, tuple(packets[: len(wave) // _PACKET])


def _wave(tone: Tone) -> npt.NDArray[np.float32]:
    """Whole packets: silence, the tone, and silence in which it fades."""
    silence = np.zeros(_SILENT_FIRST * _PACKET)
    between = np.zeros(round(_BETWEEN_S * RATE_HZ))
    parts = [silence, *([_once(tone), between] * tone.times)]
    wave = np.concatenate(parts)
    return np.pad(wave, (0, -len(wave) % _PACKET)).astype(np.float32)


def _once(tone: Tone) -> npt.NDArray[np.float64]:
    times = np.arange(round(tone.seconds * RATE_HZ)) / RATE_HZ
    ramp = np.minimum(1.0, np.minimum(times, times[-1] - times) / _RAMP_S)
    return np.asarray(tone.loud * ramp * np.sin(2 * np.pi * tone.hz * times))
