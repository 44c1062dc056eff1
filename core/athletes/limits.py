"""What an athlete must avoid: what each limit rules out or lightens, and its caution. Never a diagnosis."""

import tomllib
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import Field

from core.errors import Refusal
from core.movements.values import Demand, Id, Words
from core.values import Value

FILE = Path(__file__).with_suffix(".toml")

SessionRule = Literal["as-usual", "coach-first", "cleared-first", "rest"]
STRICTEST: tuple[SessionRule, ...] = ("rest", "cleared-first", "coach-first", "as-usual")


class UnknownLimit(Refusal):
    """No limit has this id."""


class Limit(Value):
    """One thing to avoid or to take care of.

    `names` are the spellings people type; a stage has none. Those of `names_at_end` may begin something else, and count
    where nothing or a number follows.

    `rules_out`: demands that are not prescribed; `lightens`: demands of which no set costs over half; `shuns`: demands
    that nobody is sent to where there is another way.
    `session`: whether there is one today at all; `share` of its work, where all of it is too much;
    `effort_at_most`: 0-10; `minutes_at_most`: of a block;
    `caution_at`: it is only told where something asks for one of these;
    `scored`: no expected score, no rank. `frail`: a fall is what must not be.
    `stop_signs` stand beside the usual ones. `has`: things that whoever has
    the limit has too.
    """

    id: Id
    kind: Literal["joint", "muscle", "wish", "condition", "state"]
    label: Words
    names: tuple[Words, ...] = ()
    names_at_end: tuple[Words, ...] = ()
    rules_out: tuple[Demand, ...] = ()
    lightens: tuple[Demand, ...] = ()
    shuns: tuple[Demand, ...] = ()
    session: SessionRule = "as-usual"
    share: Annotated[float, Field(gt=0, le=1)] | None = None
    effort_at_most: Annotated[int, Field(ge=0, le=10)] | None = None
    minutes_at_most: Annotated[float, Field(gt=0)] | None = None
    scored: bool = True
    frail: bool = False
    caution: Words
    caution_at: tuple[Demand, ...] = ()
    stop_signs: tuple[Words, ...] = ()
    has: tuple[Id, ...] = ()

    @property
    def may_hurt(self) -> bool:
        """Whether it is a part of the body: it has a side, a severity, and a day on which it is over."""
        return self.kind in {"joint", "muscle"}

    @property
    def of_lines(self) -> bool:
        """Whether it is of single lines alone; a condition or a state is of the whole day, and of who has it."""
        return self.may_hurt or self.kind == "wish"


class DayRule(Value):
    """What several limits together ask of a whole session: the strictest of each."""

    session: SessionRule = "as-usual"
    share: float | None = None
    effort_at_most: int | None = None
    minutes_at_most: float | None = None
    scored: bool = True


class _File(Value):
    limits: tuple[Limit, ...]


@cache
def limits() -> tuple[Limit, ...]:
    """Every limit there is, read once."""
    return read_table(tomllib.loads(FILE.read_text(encoding="utf-8")))


def read_table(table: dict[str, Any]) -> tuple[Limit, ...]:
    """Limits out of a parsed file. Raises pydantic.ValidationError."""
    return _File.model_validate(table).limits


def limit(limit_id: str) -> Limit:
    """The limit of this id; raises UnknownLimit."""
    if limit_id not in _by_id():
        raise UnknownLimit(f"There is no limit called {limit_id}.")
    return _by_id()[limit_id]


def ruled_out(limit_ids: Iterable[str]) -> frozenset[Demand]:
    """Demands that these limits rule out; raises UnknownLimit."""
    return frozenset(demand for one in limit_ids for demand in limit(one).rules_out)


def lightened(limit_ids: Iterable[str]) -> frozenset[Demand]:
    """Demands that these limits lighten and don't rule out; raises UnknownLimit."""
    ids = tuple(limit_ids)
    return frozenset(demand for one in ids for demand in limit(one).lightens) - ruled_out(ids)


def shunned(limit_ids: Iterable[str]) -> frozenset[Demand]:
    """Demands that these limits would rather leave; raises UnknownLimit."""
    return frozenset(demand for one in limit_ids for demand in limit(one).shuns)


def ruled_out_by(limit_ids: Iterable[str], demands: Iterable[Demand]) -> str | None:
    """The first of these limits that rules out any of the demands, for the reason of a change: what hurts first."""
    asked = frozenset(demands)
    barring = [limit(one) for one in limit_ids if asked & frozenset(limit(one).rules_out)]
    return next((one.id for one in sorted(barring, key=lambda one: not one.may_hurt)), None)


def shunned_by(limit_ids: Iterable[str], demands: Iterable[Demand]) -> str | None:
    """The first of these limits that would rather leave any of the demands, for the reason of a change."""
    asked = frozenset(demands)
    return next((one for one in limit_ids if asked & frozenset(limit(one).shuns)), None)


def to_mention(limit_ids: Iterable[str]) -> tuple[str, ...]:
    """These limits without the wishes that another of them includes: off the floor, nobody kneels."""
    known = tuple(map(limit, limit_ids))
    return tuple(one.id for one in known if not any(_includes(other, one) for other in known))


def _includes(limit_: Limit, other: Limit) -> bool:
    """Whether one wish asks for all that the other does, and more."""
    if limit_ is other or {limit_.kind, other.kind} != {"wish"}:
        return False
    spares = set(limit_.rules_out) | set(limit_.lightens)
    return set(other.rules_out) < set(limit_.rules_out) and spares.issuperset(other.lightens)


def cautions(limit_ids: Iterable[str]) -> tuple[str, ...]:
    """The plain-word cautions of these limits, each once; raises UnknownLimit."""
    return tuple(dict.fromkeys(limit(one).caution for one in to_mention(limit_ids)))


def stop_signs(limit_ids: Iterable[str]) -> tuple[str, ...]:
    """Stop signs that these limits add to the usual ones, each once; raises UnknownLimit."""
    return tuple(dict.fromkeys(sign for one in limit_ids for sign in limit(one).stop_signs))


def brought(limit_ids: Iterable[str]) -> tuple[str, ...]:
    """Things that whoever has these limits has too, each once; raises UnknownLimit."""
    return tuple(dict.fromkeys(thing for one in limit_ids for thing in limit(one).has))


def day_rule(limit_ids: Iterable[str]) -> DayRule:
    """What these limits ask of the whole session; raises UnknownLimit."""
    known = [limit(one) for one in limit_ids]
    return DayRule(
        session=min((one.session for one in known), key=STRICTEST.index, default="as-usual"),
        share=min((one.share for one in known if one.share is not None), default=None),
        effort_at_most=min(
            (one.effort_at_most for one in known if one.effort_at_most is not None), default=None
        ),
        minutes_at_most=min(
            (one.minutes_at_most for one in known if one.minutes_at_most is not None), default=None
        ),
        scored=all(one.scored for one in known),
    )


@cache
def _by_id() -> dict[str, Limit]:
    return {one.id: one for one in limits()}
