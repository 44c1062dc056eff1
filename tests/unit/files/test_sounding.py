"""The timer as it is heard: what was written is decoded and listened to."""

import io

import numpy as np
import pytest
import soundfile

from bot.files.ogg import ogg_of, packets_of
from bot.files.sounding import LEAD_S, RATE_HZ, TONES, as_voice
from bot.rehearsal.looking import small_voice, voice_seconds
from core.forecast.clock import clock_of
from core.forecast.values import Forecast, Outlook, Pacing
from core.sessions.values import Block, Format, Line

# What is right to so much is heard as right (the project's own aim).
RIGHT_S = 0.02
# Two sounds nearer than this belong to one mark: the tones of a half or a last minute.
ONE_MARK_S = 0.3
# Nothing that is meant to be heard is softer.
HEARD = 0.05


def half_an_hour():
    """Every kind of tone, over thirty minutes: work and rest, with a pace within the work."""
    line = Line(written="10 push-ups", movement="push-up", amount=10)
    block = Block(format=Format.INTERVALS, rounds=12, every_s=151.3, work_s=91.37, lines=(line,))
    pace = Outlook(forecast=Forecast(unit="s", low=40, expected=45, high=50), pacing=Pacing(round_s=45.0))
    return clock_of(block, pace)


def heard(content):
    wave, rate = soundfile.read(io.BytesIO(content))
    assert (rate, wave.ndim) == (RATE_HZ, 1)
    return wave


def onsets(wave):
    """The seconds at which something begins to sound after nothing did."""
    loud = np.flatnonzero(np.abs(wave) > HEARD) / RATE_HZ
    return loud[np.diff(loud, prepend=-1.0) > ONE_MARK_S]


def pitch(wave, at_s):
    """The strongest frequency of the 40 ms after a moment, in Hz."""
    begin = round((at_s + 0.005) * RATE_HZ)
    part = wave[begin : begin + RATE_HZ // 25]
    spectrum = np.abs(np.fft.rfft(part * np.hanning(len(part)), 8 * len(part)))
    return np.argmax(spectrum) * RATE_HZ / (8 * len(part))


@pytest.fixture(scope="module")
def clock():
    return half_an_hour()


@pytest.fixture(scope="module")
def content(clock):
    return as_voice(clock)


@pytest.fixture(scope="module")
def wave(content):
    return heard(content)


def test_over_half_an_hour_every_mark_sounds_within_twenty_milliseconds_and_nothing_else_does(clock, wave):
    assert clock.ends_s > 29 * 60
    assert {mark.kind for mark in clock.marks} == set(TONES)
    found = onsets(wave)
    meant = np.array([LEAD_S + mark.at_s for mark in clock.marks])
    assert len(found) == len(meant)
    assert np.abs(found - meant).max() < RIGHT_S


def test_each_kind_is_known_by_its_pitch(clock, wave):
    for mark in clock.marks:
        assert pitch(wave, LEAD_S + mark.at_s) == pytest.approx(TONES[mark.kind].hz, abs=30)
    assert len({tone.hz for tone in TONES.values()}) == len(TONES)


def test_a_planned_split_is_softer_than_everything_else(clock, wave):
    loudest = {
        mark.kind: np.abs(wave[round((LEAD_S + mark.at_s) * RATE_HZ) :][: RATE_HZ // 25]).max()
        for mark in clock.marks
    }
    assert loudest.pop("split") < 0.5 * min(loudest.values())


def test_a_minute_is_some_twenty_kilobytes_and_a_voice_message_to_the_platform(content):
    assert len(content) < 30 * 20_000
    assert voice_seconds(content) > 29 * 60


def test_packets_are_read_as_they_were_written_whatever_their_size():
    packets = [bytes([size % 251]) * size for size in (0, 1, 254, 255, 256, 700, 3)] * 60
    head, tags, *read = packets_of(ogg_of(b"OpusHead", b"OpusTags", packets, 960))
    assert (head, tags, read) == (b"OpusHead", b"OpusTags", packets)


def test_a_page_that_was_changed_on_the_way_is_not_played():
    """The library counts the sum of each page anew: it agrees with ours, and with no other."""
    whole = small_voice(2)
    assert len(heard(whole)) == pytest.approx(2 * RATE_HZ, abs=RATE_HZ // 50)
    spoilt = bytearray(whole)
    spoilt[-1] ^= 1
    try:
        left = len(soundfile.read(io.BytesIO(bytes(spoilt)))[0])
    except soundfile.LibsndfileError:
        left = 0
    assert left < RATE_HZ
