"""People who go on talking while the bot is killed and the platform stumbles; each word of theirs is numbered."""

import asyncio
import re
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from random import Random
from typing import Any

from bot.rehearsal.errors import AnswerLost, Declined, too_many_requests
from bot.rehearsal.faults import Fault
from bot.rehearsal.platform import Platform
from bot.rehearsal.seen import SeenMessage
from bot.rehearsal.voice import Person
from tests.acceptance.mortal import Moment
from tests.acceptance.people import Crew
from tests.soak.line import Line

SENDS = ("sendMessage", "editMessageText")
KINDS = ("none", "429", "500", "502", "502 after", "dropped", "dropped", "hanging")


def moment(random: Random) -> Moment:
    """When the next kill comes: at a poll or a send, before it, after it, or some while later."""
    method = random.choice(("getUpdates", "sendMessage"))
    how = random.choice(("before", "lost", "later", "later"))
    return Moment(
        method,
        before=how == "before",
        answer_lost=how == "lost",
        later=random.choice((0.0, 0.003, 0.02, 0.1, 0.3)) if how == "later" else 0.0,
        brings=method == "getUpdates" and how != "before",
    )


class Stumbling:
    """A platform with troubles at random. `doubtful`: how often a send took effect and its answer was lost."""

    def __init__(self, platform: Platform, line: Line, random: Random) -> None:
        self._platform = platform
        self._line = line
        self._random = random
        self.doubtful = 0
        self.kinds: Counter[str] = Counter()

    async def stumbles(self) -> None:
        kind = self._random.choice(KINDS)
        self.kinds[kind] += 1
        if kind == "dropped":
            self.doubtful += 4  # as many sends may be under way
            await self._line.becomes("drops")
            await asyncio.sleep(self._random.choice((0.0, 0.2)))
            await self._line.becomes("up")
        elif kind != "none":
            self._fault(kind)

    def _fault(self, kind: str) -> None:
        times = self._random.randrange(1, 3)
        troubles: dict[str, Declined | AnswerLost] = {
            "429": too_many_requests(1),
            "500": Declined(500, "Internal Server Error"),
            "502": AnswerLost("bad gateway"),
            "502 after": AnswerLost("bad gateway"),
            "hanging": AnswerLost("read timeout"),
        }
        takes_effect = kind in ("502 after", "hanging") and self._random.random() < 0.5
        times = 1 if kind == "hanging" else times
        self.doubtful += times if takes_effect else 0
        method = self._random.choice(SENDS)
        self._platform.faults.add(Fault(method, troubles[kind], times, takes_effect=takes_effect))

    def recovers(self) -> None:
        self._platform.faults._due.clear()


@dataclass
class Talker:
    """An athlete who tells numbered words, their weight in numbered hundredths, and changes their score."""

    person: Person
    tag: str
    words: list[int] = field(default_factory=list)
    score: tuple[int, int] = (0, 0)
    told: SeenMessage | None = None

    async def says(self, number: int) -> None:
        self.words.append(number)
        await self.person.says(f"tell my coach {self.tag} number {number:04}")
        await self.person.says(f"I weigh {60 + number / 10:.1f} kg")

    async def scores(self, rounds: int, reps: int) -> None:
        """Tell it, and from then on put it right where it stands."""
        self.score = (rounds, reps)
        if self.told is None:
            self.told = await self.person.says(f"{rounds}+{reps}")
        else:
            await self.person.edits(self.told, f"{rounds}+{reps}")

    @property
    def board_line(self) -> str:
        return f"{self.person.name}  {self.score[0]} rounds + {self.score[1]}"


@dataclass(frozen=True)
class Figures:
    """What became of the numbered words: never arrived, arrived again, overtaken."""

    words: int
    lost: tuple[str, ...]
    repeated: int
    overtaken: tuple[str, ...]


async def figures(crew: Crew, talkers: Iterable[Talker]) -> Figures:
    heard = [one.text for one in await crew.coach.messages if one.from_bot]
    found = [
        _of_one(talker.words, _numbers(heard, f"{talker.tag} number "), talker.tag) for talker in talkers
    ]
    found += [
        _of_one([600 + number for number in talker.words], await _weights(talker), f"weight of {talker.tag}")
        for talker in talkers
    ]
    return Figures(
        words=sum(one.words for one in found),
        lost=tuple(lost for one in found for lost in one.lost),
        repeated=sum(one.repeated for one in found),
        overtaken=tuple(word for one in found for word in one.overtaken),
    )


async def _weights(talker: Talker) -> list[int]:
    heard = [one.text for one in await talker.person.messages if one.from_bot]
    return [round(10 * number) for number in _numbers(heard, "Noted as your body weight: ")]


def _numbers(texts: Iterable[str], before: str) -> list[float]:
    found = [re.search(re.escape(before) + r"(\d+(?:\.\d+)?)", text) for text in texts]
    return [float(one[1]) for one in found if one]


def _of_one(told: list[int], heard: Sequence[float], whose: str) -> Figures:
    first = list(dict.fromkeys(heard))
    lost = tuple(f"{whose}: {number}" for number in told if number not in first)
    overtaken = tuple(f"{whose}: {late} after {early}" for early, late in pairwise(first) if late < early)
    return Figures(len(told), lost, len(heard) - len(first), overtaken)


def states_left(tables: Any) -> list[Any]:
    """Updates that aren't handled and letters that aren't settled."""
    updates = tables.rows("SELECT 'update', state FROM inbox WHERE state != 'done'")
    letters = tables.rows("SELECT key, state, tries, due_at FROM outbox WHERE state IN ('waiting', 'leased')")
    return [*updates, *letters]
