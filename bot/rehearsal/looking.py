"""What can be told of a picture or a voice message from its bytes, and a small one of each.

PNG: ISO/IEC 15948, 11.2.2. JPEG: ITU-T T.81, B.1.1.4 and B.2.2. OGG: RFC 3533, 6. Opus in it: RFC 7845, 4 and 5.1.
"""

import struct
import zlib

from bot.files.ogg import ogg_of

_PNG = b"\x89PNG\r\n\x1a\n"
_JPEG = b"\xff\xd8"
_FRAMES = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}
_OPUS_RATE = 48_000


def picture_size(content: bytes) -> tuple[int, int] | None:
    """Width and height in pixels of a PNG or JPEG; None for anything else."""
    if content.startswith(_PNG) and content[12:16] == b"IHDR":
        width, height = struct.unpack(">II", content[16:24])
        return (width, height) if width and height else None
    return _jpeg_size(content) if content.startswith(_JPEG) else None


def _jpeg_size(content: bytes) -> tuple[int, int] | None:
    place = len(_JPEG)
    while place + 9 <= len(content) and content[place] == 0xFF:  # noqa: PLR2004 - every marker begins so
        marker, length = content[place + 1], int.from_bytes(content[place + 2 : place + 4], "big")
        if marker in _FRAMES:
            height, width = struct.unpack(">HH", content[place + 5 : place + 9])
            return (width, height) if width and height else None
        place += 2 + max(length, 2)
    return None


def voice_seconds(content: bytes) -> int | None:
    """Whole seconds of an OGG file with Opus in it; None for anything else."""
    last = content.rfind(b"OggS")
    if not content.startswith(b"OggS") or b"OpusHead" not in content[:128] or last + 14 > len(content):
        return None
    samples: int = struct.unpack("<q", content[last + 6 : last + 14])[0]
    return max(0, samples) // _OPUS_RATE


def small_picture() -> bytes:
    """A PNG of one grey dot."""
    dot = _chunk(b"IDAT", zlib.compress(b"\x00\x80"))
    return _PNG + _chunk(b"IHDR", struct.pack(">IIBBBBB", 1, 1, 8, 0, 0, 0, 0)) + dot + _chunk(b"IEND", b"")


def _chunk(kind: bytes, content: bytes) -> bytes:
    return struct.pack(">I", len(content)) + kind + content + struct.pack(">I", zlib.crc32(kind + content))


def small_voice(seconds: int = 3) -> bytes:
    """A voice message in which nothing is to be heard, as any player takes it."""
    silence = b"\xf8\xff\xfe"  # RFC 6716, 3.1: one frame of 20 ms with nothing in it
    head = b"OpusHead\x01\x01" + struct.pack("<HIhB", 0, _OPUS_RATE, 0, 0)
    tags = b"OpusTags" + struct.pack("<I", 0) + struct.pack("<I", 0)
    return ogg_of(head, tags, [silence] * 50 * seconds, _OPUS_RATE // 50)
