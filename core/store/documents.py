"""Values as JSON with a schema number, and the upcasters that keep old ones readable.

When a stored value changes its shape: raise its kind's `schema` by one and write one upcaster from the schema
before. Nothing stored is ever rewritten.
"""

import logging
from collections.abc import Callable, Mapping
from copy import deepcopy
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from pydantic import ValidationError

from core.athletes.values import Evidence, Furnished, Profile
from core.errors import Defect, TooMuch
from core.forecast.values import Foreseen
from core.scaling.orders import Fault, Pin
from core.scaling.values import Version
from core.scores.values import Score
from core.sessions.values import Session
from core.values import Value

Body = dict[str, Any]
Upcaster = Callable[[Body], Body]
T = TypeVar("T", bound=Value)


class UnknownSchemaError(Defect):
    """A stored document's schema is newer than this code, or an upcaster for it is missing."""


@dataclass(frozen=True)
class Kind(Generic[T]):
    """A kind of document, the value it holds, and the schema that is written today."""

    name: str
    value: type[T]
    schema: int = 1


SESSION = Kind("session", Session, schema=4)
VERSION = Kind("version", Version, schema=7)
PROFILE = Kind("profile", Profile, schema=8)
EVIDENCE = Kind("evidence", Evidence, schema=2)
SCORE = Kind("score", Score, schema=3)
PIN = Kind("pin", Pin)
FAULT = Kind("fault", Fault)
FORESEEN = Kind("foreseen", Foreseen)
FURNISHED = Kind("furnished", Furnished, schema=2)

KINDS: Mapping[str, Kind[Any]] = {
    kind.name: kind for kind in (SESSION, VERSION, PROFILE, EVIDENCE, SCORE, PIN, FAULT, FORESEEN, FURNISHED)
}

log = logging.getLogger(__name__)

_upcasters: dict[tuple[str, int], Upcaster] = {}


def upcasts(kind: str, from_schema: int) -> Callable[[Upcaster], Upcaster]:
    """Register a pure function that turns a body of `from_schema` into one of `from_schema + 1`."""

    def register(upcaster: Upcaster) -> Upcaster:
        if (kind, from_schema) in _upcasters:
            raise Defect(f"two upcasters for {kind} from schema {from_schema}")
        _upcasters[kind, from_schema] = upcaster
        return upcaster

    return register


def write(value: Value, *, without: frozenset[str] = frozenset()) -> Body:
    """Turn a value into JSON, decimals and dates as text, `without` these fields.

    Raises TooMuch for one beyond its bounds: a copy with changes isn't validated when it is made. Versions are our
    own reckoning from what was.
    """
    body = value.model_dump(mode="json")
    if not isinstance(value, Version):
        try:
            type(value).model_validate(body)
        except ValidationError as error:
            raise TooMuch(f"{type(value).__name__} beyond its bounds: {_places(error)}") from None
    return {name: told for name, told in body.items() if name not in without}


def _places(error: ValidationError) -> str:
    """Where it doesn't fit, and not what stands there: it may tell of health, and a log is read by others."""
    return ", ".join(".".join(map(str, one["loc"])) for one in error.errors())


def upcast(kind: Kind[Any], schema: int, body: Body) -> Body:
    """Bring a stored body to today's schema. Raises UnknownSchemaError."""
    if schema > kind.schema:
        raise UnknownSchemaError(
            f"{kind.name} of schema {schema}, but this version reads up to {kind.schema}"
        )
    for step in range(schema, kind.schema):
        upcaster = _upcasters.get((kind.name, step))
        if upcaster is None:
            raise UnknownSchemaError(f"no upcaster for {kind.name} from schema {step}")
        body = upcaster(body)
    return body


def read(kind: Kind[T], schema: int, body: Body, **beside: Any) -> T:
    """Read a stored value; `beside` are fields kept elsewhere. Raises UnknownSchemaError.

    What was stored before there were bounds, and lies beyond them, is left out: one number that nobody can reckon with
    must not take away all the rest. What can't be read even so raises ValidationError.
    """
    told = {**upcast(kind, schema, body), **beside}
    try:
        return kind.value.model_validate(told)
    except ValidationError as error:
        log.warning("of a stored %s something can't be taken as it is: %s", kind.name, _places(error))
        return kind.value.model_validate(within_bounds(kind.value, told))


@upcasts(PROFILE.name, from_schema=1)
def _days_were_all_alike(body: Body) -> Body:
    return {**body, "sets": [], "complaints": [], "different": []}


@upcasts(PROFILE.name, from_schema=3)
def _no_alarm_was_taken_back(body: Body) -> Body:
    return {**body, "before_alarm": None}


@upcasts(PROFILE.name, from_schema=2)
@upcasts(FURNISHED.name, from_schema=1)
def _things_were_shared_with_nobody(body: Body) -> Body:
    return body


@upcasts(EVIDENCE.name, from_schema=1)
def _easier_had_no_cause(body: Body) -> Body:
    return {**body, "cause": None}


@upcasts(VERSION.name, from_schema=1)
def _only_exactly_counted(body: Body) -> Body:
    return {**body, "tolerance": {}}


@upcasts(SCORE.name, from_schema=1)
def _nobody_knew_of_shorter_days(body: Body) -> Body:
    return {**body, "minutes": None}


@upcasts(SCORE.name, from_schema=2)
def _sets_were_only_added_up(body: Body) -> Body:
    return {**body, "sets": [], "claimed": False}


@upcasts(SESSION.name, from_schema=1)
def _all_sets_counted(body: Body) -> Body:
    return body


@upcasts(SESSION.name, from_schema=2)
def _an_effort_was_an_aim(body: Body) -> Body:
    return {**body, "blocks": [_with_its_effort(block) for block in body["blocks"]]}


@upcasts(SESSION.name, from_schema=3)
def _nothing_was_left_to_each(body: Body) -> Body:
    return body


def _with_its_effort(block: Body) -> Body:
    aim = block.get("aim")
    if not aim or aim["of"] != "effort":
        return block
    return {**block, "aim": None, "effort": {"low": aim["low"], "high": aim["high"]}}


@upcasts(VERSION.name, from_schema=2)
def _nobody_asked_for_two(body: Body) -> Body:
    return body


@upcasts(VERSION.name, from_schema=3)
@upcasts(PROFILE.name, from_schema=4)
def _nothing_was_eased(body: Body) -> Body:
    return body


@upcasts(VERSION.name, from_schema=4)
def _nothing_was_noted(body: Body) -> Body:
    return body


@upcasts(VERSION.name, from_schema=5)
def _nothing_stood_beside_a_line(body: Body) -> Body:
    return body


@upcasts(VERSION.name, from_schema=6)
def _which_set_counts_was_not_told(body: Body) -> Body:
    return body


@upcasts(PROFILE.name, from_schema=7)
def _nothing_was_told_unasked(body: Body) -> Body:
    return body


@upcasts(PROFILE.name, from_schema=6)
def _nothing_was_learned(body: Body) -> Body:
    return body


@upcasts(PROFILE.name, from_schema=5)
def _no_circumstances_were_told(body: Body) -> Body:
    return body


def within_bounds(kind: type[Value], body: Body) -> Body:
    """The body without what lies beyond the bounds of its kind: of too many the first, of a number nothing.

    What else doesn't fit is left, to be raised where it is read.
    """
    body = deepcopy(body)
    for _ in range(_MOST_LAYERS):
        try:
            kind.model_validate(body)
        except ValidationError as error:
            for one in reversed(error.errors()):  # from behind, so that places stay true
                _without(body, one)
        else:
            break
    return body


# An element that lost a field it can't be without goes in the next round, then what holds it.
_MOST_LAYERS = 5


def _without(body: Any, error: Mapping[str, Any]) -> None:
    way = error["loc"][:-1] if error["type"] == "missing" else error["loc"]
    if not way:
        return
    *to, last = way
    try:
        for step in to:
            body = body[step]
        most = error.get("ctx", {}).get("max_length")
        if most is not None and isinstance(body[last], list):
            body[last] = body[last][:most]
        else:
            del body[last]
    except (KeyError, IndexError, TypeError):
        return
