"""The record of a rehearsal as a story: what is in it, and each scene under its heading, in its main lines or whole."""

from collections.abc import Iterable, Sequence
from datetime import tzinfo
from typing import Protocol

from bot.rehearsal.day.scene import Scene
from bot.rehearsal.excerpt import Shown, excerpt
from bot.rehearsal.seen import Happening
from bot.rehearsal.transcript import WIDTH, Transcript, beside


class Opened(Protocol):
    """A scene that has begun, at a place in the record."""

    @property
    def place(self) -> int: ...


def contents(scenes: Sequence[Scene], zone: tzinfo, *, brief: bool = False) -> list[str]:
    """The scenes to come, numbered, in two columns under their days; `brief`: those for a coach in a hurry, in one."""
    if brief:
        return [
            f" {number:>2}  {one.at.astimezone(zone):%A %H:%M}  {one.title}"
            for number, one in enumerate(scenes, 1)
            if one.for_coaches
        ]
    rows = list[str]()
    day = ""
    for number, scene in enumerate(scenes, 1):
        at = scene.at.astimezone(zone)
        if f"{at:%A}" != day:
            day = f"{at:%A}"
            rows.append(day)
        rows.append(f" {number:>2}  {at:%H:%M}  {_titled(scene)}")
    half = (len(rows) + 1) // 2
    width = max(map(len, rows[:half])) + 3
    pairs = zip(rows[:half], [*rows[half:], ""], strict=False)
    return [
        *(f"{left:<{width}}{right}".rstrip() for left, right in pairs),
        *(
            ["", "* If you coach and have a minute, read these; make demo BRIEF=1 prints only them."]
            if any(one.for_coaches for one in scenes)
            else []
        ),
    ]


def _titled(scene: Scene) -> str:
    return f"{scene.title} *" if scene.for_coaches else scene.title


class Story:
    """Writes scene after scene, each when it is over: what there is to see in it, and the lines that show it.

    `whole`: all that was said and done in it. `brief`: only the scenes for a coach in a hurry.
    """

    def __init__(
        self, scenes: Sequence[Scene], zone: tzinfo, *, whole: bool = False, brief: bool = False
    ) -> None:
        self._scenes = scenes
        self._zone = zone
        self._brief = brief
        self._transcript = Transcript(zone) if whole else None
        self._happened = list[Happening]()
        self._told = 0

    def lines_of(self, happened: Iterable[Happening], opened: Sequence[Opened]) -> list[str]:
        """`happened` goes on from where the last call ended; `opened` are all scenes so far."""
        self._happened += happened
        return self._until(len(opened) - 1, opened)

    def rest(self, opened: Sequence[Opened]) -> list[str]:
        """The scene that was going on when the record ended."""
        return self._until(len(opened), opened)

    def _until(self, number: int, opened: Sequence[Opened]) -> list[str]:
        lines = list[str]()
        while self._told < number:
            end = opened[self._told + 1].place if self._told + 1 < len(opened) else None
            if end is not None and end > len(self._happened):
                break
            lines += self._scene(self._happened[opened[self._told].place : end])
            self._told += 1
        return lines

    def _scene(self, happened: Sequence[Happening]) -> list[str]:
        scene = self._scenes[self._told]
        if self._brief and not scene.for_coaches:
            return []
        heading = f"{self._told + 1}. {_titled(scene)} "
        when = f" {scene.at.astimezone(self._zone):%A %H:%M}"
        head = ["", heading.ljust(WIDTH - len(when), "═") + when, *beside("", [scene.point])]
        if self._transcript is None:
            return head + told(excerpt(scene.shows, happened))
        return head + [line for one in happened for line in self._transcript.lines_of(one)]


def told(shown: Iterable[Shown]) -> list[str]:
    """The lines beside who said them, and where, whenever that is another place."""
    lines, before = list[str](), ""
    for happening, words in shown:
        where = happening.chat.removesuffix(" (private)")
        is_own = happening.chat.endswith(" (private)")
        to = "" if where in {before, happening.who} else f"(to {where})" if is_own else "(in the group)"
        before = where
        lines += beside(happening.who, [f"{to} {words[0]}".strip(), *words[1:]])
    return lines
