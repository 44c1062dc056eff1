"""Old documents stay readable: through every upcaster between their schema and today's."""

import pytest

from core.athletes.values import Profile
from core.errors import Defect
from core.scores.values import EXACTLY
from core.sessions.values import Aim, Effort
from core.store import documents
from core.store.documents import Kind, UnknownSchemaError, upcasts
from core.values import Value


class Tally(Value):
    """A made-up value at schema 3; schema 1 had `points`, schema 2 `reps`, schema 3 counts sides apart."""

    left: int
    right: int


TALLY = Kind("tally-of-tests", Tally, schema=3)


@upcasts(TALLY.name, from_schema=1)
def points_became_reps(body):
    return {"reps": body["points"]}


@upcasts(TALLY.name, from_schema=2)
def reps_became_sides(body):
    return {"left": body["reps"] // 2, "right": body["reps"] - body["reps"] // 2}


@pytest.mark.parametrize(
    ("schema", "body"), [(1, {"points": 9}), (2, {"reps": 9}), (3, {"left": 4, "right": 5})]
)
def test_every_schema_is_read_as_today_s(schema, body):
    assert documents.read(TALLY, schema, body) == Tally(left=4, right=5)


def test_reading_leaves_the_stored_body_as_it_is():
    body = {"points": 9}
    documents.read(TALLY, 1, body)
    assert body == {"points": 9}


def test_a_newer_schema_is_a_clear_defect():
    with pytest.raises(
        UnknownSchemaError, match="tally-of-tests of schema 4, but this version reads up to 3"
    ):
        documents.read(TALLY, 4, {"left": 4, "right": 5})


def test_a_missing_upcaster_is_a_clear_defect():
    with pytest.raises(UnknownSchemaError, match="no upcaster for tally-of-tests from schema 0"):
        documents.read(TALLY, 0, {})


def test_two_upcasters_from_one_schema_are_a_defect():
    with pytest.raises(Defect, match="two upcasters"):
        upcasts(TALLY.name, from_schema=1)(points_became_reps)


@pytest.mark.parametrize("kind", documents.KINDS.values(), ids=documents.KINDS)
def test_every_kind_has_an_upcaster_from_each_older_schema(kind):
    registered = {schema for name, schema in documents._upcasters if name == kind.name}
    assert registered == set(range(1, kind.schema))


def test_fields_kept_elsewhere_are_left_out_and_put_back():
    profile = Profile(name="Ilse", limits=())
    body = documents.write(profile, without=frozenset({"name"}))
    assert "name" not in body
    assert documents.read(documents.PROFILE, 1, body, name="Ilse") == profile


def test_a_profile_of_schema_1_had_one_place_and_no_pain():
    body = {"units": "kg", "limits": ["wrist"]}
    ilse = documents.read(documents.PROFILE, 1, body, name="Ilse", evidence=())
    assert ilse == Profile(name="Ilse", limits=("wrist",))


def test_a_version_of_schema_1_counted_only_exactly():
    body = {"athlete": "Ilse", "as_written": False, "blocks": []}
    assert documents.read(documents.VERSION, 1, body).tolerance == EXACTLY


def test_evidence_of_schema_1_had_no_cause():
    assert documents.read(documents.EVIDENCE, 1, {"movement": "push-up", "reps": 7}).cause is None


def test_a_score_of_schema_1_knew_of_no_shorter_day():
    body = {"value": 5, "unit": "rounds", "rounds": 5}
    assert documents.read(documents.SCORE, 1, body).minutes is None


def test_an_effort_that_was_an_aim_is_a_part_s_own():
    lines = [{"written": "10 push-ups", "movement": "push-up", "amount": 10}]
    aims = [{"of": "effort", "low": 7, "high": 8}, {"of": "score", "low": 6, "high": 7}]
    body = {"blocks": [{"format": "amrap", "minutes": 12, "aim": aim, "lines": lines} for aim in aims]}
    hard, long = documents.read(documents.SESSION, 2, body).blocks
    assert (hard.aim, hard.effort) == (None, Effort(low=7, high=8))
    assert (long.aim, long.effort) == (Aim(of="score", low=6, high=7), None)
