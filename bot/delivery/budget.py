"""How fast the bot may talk: in all, to one chat, to one group. Pure values on monotonic seconds."""

import math
from collections.abc import Iterable
from dataclasses import dataclass, field, replace


@dataclass(frozen=True, slots=True)
class Rule:
    """At most `limit` messages in any span of `seconds`."""

    limit: int
    seconds: float


Rules = tuple[Rule, ...]


@dataclass(frozen=True, slots=True)
class Rates:
    """The rules of each scope. The platform's are guide values: its true ones are unpublished."""

    bot: Rules = ()
    chat: Rules = ()
    group: Rules = ()


NO_LIMIT = Rates()

# The bot's second rule spreads its messages: an answer never waits for a whole second of bulk to pass.
PLATFORM = Rates(
    bot=(Rule(30, 1.005), Rule(5, 0.15)),
    chat=(Rule(3, 3.01),),
    group=(Rule(3, 3.01), Rule(20, 60.05)),
)


@dataclass(frozen=True, slots=True)
class Ledger:
    """When one scope has spent, the latest last, and until when the platform wants it silent."""

    rules: Rules
    spent_at: tuple[float, ...] = ()
    stopped_until: float = -math.inf

    def ready_at(self) -> float:
        """Return the earliest moment for the next message; it may have passed."""
        return max((self.stopped_until, *(self._ready_by(rule) for rule in self.rules)))

    def room(self, now: float) -> float:
        """Return how many messages may go at this moment."""
        if self.stopped_until > now:
            return 0
        return min((self._room_by(rule, now) for rule in self.rules), default=math.inf)

    def spend(self, now: float) -> "Ledger":
        keep = max((rule.limit for rule in self.rules), default=0)
        return replace(self, spent_at=(*self.spent_at, now)[-keep:] if keep else ())

    def stop(self, until: float) -> "Ledger":
        return replace(self, stopped_until=max(self.stopped_until, until))

    def is_idle(self, now: float) -> bool:
        """Say whether forgetting this ledger would change nothing."""
        longest = max((rule.seconds for rule in self.rules), default=0.0)
        fresh = self.spent_at and self.spent_at[-1] + longest > now
        return not fresh and self.stopped_until <= now

    def _room_by(self, rule: Rule, now: float) -> int:
        return rule.limit - sum(1 for moment in self.spent_at if moment + rule.seconds > now)

    def _ready_by(self, rule: Rule) -> float:
        if len(self.spent_at) < rule.limit:
            return -math.inf
        return self.spent_at[-rule.limit] + rule.seconds


@dataclass(slots=True)
class Budget:
    """The ledgers of the bot and of every chat it has lately written to. Chats are named by their row ids."""

    rates: Rates = PLATFORM
    _bot: Ledger = field(init=False)
    _chats: dict[int, Ledger] = field(init=False, default_factory=dict)

    def __post_init__(self) -> None:
        self._bot = Ledger(self.rates.bot)

    def bot_room(self, now: float) -> float:
        """Return how many messages may go at this moment, to whomever."""
        return self._bot.room(now)

    def next_opening(self, now: float) -> float | None:
        """Return when more may be sent than now; None if nothing is held up."""
        if self._bot.ready_at() > now:
            return self._bot.ready_at()
        return min(self.closed_chats(now).values(), default=None)

    def closed_chats(self, now: float) -> dict[int, float]:
        """Return the chats that may not be written to now, each with the moment from which it may."""
        self._forget_idle(now)
        ready = {chat: ledger.ready_at() for chat, ledger in self._chats.items()}
        return {chat: moment for chat, moment in ready.items() if moment > now}

    def spend(self, chat: int, now: float, *, is_group: bool = False) -> None:
        """Count one message to a chat."""
        self._bot = self._bot.spend(now)
        self._chats[chat] = self._ledger(chat, is_group=is_group).spend(now)

    def stop_chat(self, chat: int, until: float) -> None:
        """Keep silent towards one chat, as the platform asked; everyone else is still written to."""
        self._chats[chat] = self._ledger(chat).stop(until)

    def _ledger(self, chat: int, *, is_group: bool = False) -> Ledger:
        rules = self.rates.group if is_group else self.rates.chat
        return self._chats.get(chat) or Ledger(rules)

    def _forget_idle(self, now: float) -> None:
        for chat in _idle(self._chats.items(), now):
            del self._chats[chat]


def _idle(ledgers: Iterable[tuple[int, Ledger]], now: float) -> list[int]:
    return [chat for chat, ledger in ledgers if ledger.is_idle(now)]
