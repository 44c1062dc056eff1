"""OGG files: the packets of one, and one made of packets. RFC 3533, 6; how Opus lies in it: RFC 7845, 3 to 5."""

import struct
from collections.abc import Iterator, Sequence

_FIRST, _LAST = 2, 4
_SUM_AT, _COUNT_AT, _HEAD = 22, 26, 27
_MOST_ON_A_PAGE, _FULL = 255, 255
_POLYNOMIAL, _WORD = 0x04C11DB7, 0xFFFFFFFF


def packets_of(content: bytes) -> Iterator[bytes]:
    """The packets of a file with one stream, its two headers first."""
    at, packet = 0, b""
    while at < len(content):
        body = at + _HEAD + content[at + _COUNT_AT]
        for size in content[at + _HEAD : body]:
            packet += content[body : body + size]
            body += size
            if size < _FULL:
                yield packet
                packet = b""
        at = body


def ogg_of(head: bytes, tags: bytes, packets: Sequence[bytes], samples: int) -> bytes:
    """A file with one stream: two headers on pages of their own, then `packets` of so many `samples` each."""
    pages = [_page(_FIRST, 0, 0, [head]), _page(0, 0, 1, [tags])]
    done = 0
    for group in _groups(packets):
        done += len(group)
        last = _LAST if done == len(packets) else 0
        pages.append(_page(last, done * samples, len(pages), group))
    return b"".join(pages)


def _groups(packets: Sequence[bytes]) -> Iterator[list[bytes]]:
    """As many whole packets as fit on a page."""
    group: list[bytes] = []
    places = 0
    for packet in packets:
        needed = len(packet) // _FULL + 1
        if places + needed > _MOST_ON_A_PAGE:
            yield group
            group, places = [], 0
        group.append(packet)
        places += needed
    yield group


def _page(kind: int, samples: int, number: int, packets: Sequence[bytes]) -> bytes:
    sizes = b"".join(bytes([_FULL]) * (len(one) // _FULL) + bytes([len(one) % _FULL]) for one in packets)
    head = struct.pack("<4sBBqIII", b"OggS", 0, kind, samples, 1, number, 0)
    page = head + bytes([len(sizes)]) + sizes + b"".join(packets)
    return page[:_SUM_AT] + struct.pack("<I", _sum(page)) + page[_SUM_AT + 4 :]


def _sum(page: bytes) -> int:
    """The CRC, with nothing reversed, begun at 0."""
    found = 0
    for byte in page:
        found = ((found << 8) & _WORD) ^ _SUMS[(found >> 24) ^ byte]
    return found


def _sum_of(byte: int) -> int:
    found = byte << 24
    for _ in range(8):
        found = ((found << 1) ^ (_POLYNOMIAL if found & 0x80000000 else 0)) & _WORD
    return found


_SUMS = tuple(map(_sum_of, range(256)))
