"""The record of a rehearsal as a story: what is in it, and each scene under its heading."""

from collections.abc import Iterable, Sequence
from datetime import tzinfo
from typing import Protocol

from bot.rehearsal.day.scene import Scene
from bot.rehearsal.seen import Happening
from bot.rehearsal.transcript import WIDTH, Transcript


class Opened(Protocol):
    """A scene that has begun, at a place in the record."""

    @property
    def place(self) -> int: ...
    @property
    def title(self) -> str: ...
    @property
    def point(self) -> str: ...


def contents(scenes: Iterable[Scene], zone: tzinfo) -> list[str]:
    """The scenes to come, numbered, under their days."""
    lines: list[str] = []
    day = ""
    for number, scene in enumerate(scenes, 1):
        at = scene.at.astimezone(zone)
        if f"{at:%A}" != day:
            day = f"{at:%A}"
            lines += ["", day]
        lines.append(f" {number:>2}  {at:%H:%M}  {scene.title}")
    return lines


class Story:
    """Writes happenings in order, and the heading of each scene before the first that belongs to it."""

    def __init__(self, transcript: Transcript) -> None:
        self._transcript = transcript
        self._place = 0
        self._headed = 0

    def lines_of(self, happened: Sequence[Happening], opened: Sequence[Opened]) -> list[str]:
        """`happened` goes on from where the last call ended; `opened` are all scenes so far."""
        lines: list[str] = []
        for happening in happened:
            while self._headed < len(opened) and opened[self._headed].place <= self._place:
                lines += self._heading(opened[self._headed])
            lines += self._transcript.lines_of(happening)
            self._place += 1
        return lines

    def _heading(self, scene: Opened) -> list[str]:
        self._headed += 1
        return ["", "", f"{self._headed}. {scene.title} ".ljust(WIDTH, "═"), f"   {scene.point}"]
