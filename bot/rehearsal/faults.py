"""Troubles on demand: the next calls of a method are declined, or their answers lost."""

from dataclasses import dataclass

from bot.rehearsal.errors import AnswerLost, Declined, Seeming

EVERY_METHOD = "*"


@dataclass(slots=True)
class Fault:
    """What befalls the next `times` calls of `method`, optionally only those to one chat.

    `trouble` is raised before the call takes effect, or, if `takes_effect`, after it.
    """

    method: str
    trouble: Declined | AnswerLost
    times: int = 1
    chat_id: int | None = None
    takes_effect: bool = False

    def befalls(self, method: str, chat_id: int | None) -> bool:
        return (
            self.times > 0
            and self.method in (EVERY_METHOD, method)
            and self.chat_id in (None, chat_id)
            and not (self.method == EVERY_METHOD and method == "getUpdates")
        )


class Faults:
    """Faults that are still to come, in the order they were asked for."""

    def __init__(self) -> None:
        self._due: list[Fault] = []

    def add(self, fault: Fault) -> None:
        self._due.append(fault)

    def decline(self, method: str, answer: Declined, *, times: int = 1, chat_id: int | None = None) -> None:
        """Answer the next calls with an error."""
        self.add(Fault(method, answer, times, chat_id))

    def lose_request(
        self, method: str, *, times: int = 1, chat_id: int | None = None, seeming: Seeming = "connect timeout"
    ) -> None:
        """Lose the next calls before they are accepted: nothing happened."""
        self.add(Fault(method, AnswerLost(seeming), times, chat_id))

    def lose_answer(
        self, method: str, *, times: int = 1, chat_id: int | None = None, seeming: Seeming = "read timeout"
    ) -> None:
        """Let the next calls take effect, and lose their answers."""
        self.add(Fault(method, AnswerLost(seeming), times, chat_id, takes_effect=True))

    def take(self, method: str, chat_id: int | None) -> Fault | None:
        if not self._due:
            return None
        for fault in self._due:
            if fault.befalls(method, chat_id):
                fault.times -= 1
                self._due = [other for other in self._due if other.times > 0]
                return fault
        return None

    @property
    def pending(self) -> int:
        return sum(fault.times for fault in self._due)
