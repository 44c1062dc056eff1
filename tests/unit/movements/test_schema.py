import json

from core.movements.schema import FILE, ImplementsFile, PatternFile, as_text


def test_the_committed_schema_is_current():
    assert FILE.read_text(encoding="utf-8") == as_text(), "write it anew: python -m core.movements.schema"


def test_the_schema_forbids_unknown_keys_everywhere():
    objects = [one for one in json.loads(as_text())["$defs"].values() if one.get("type") == "object"]
    assert len(objects) > 5
    assert all(one["additionalProperties"] is False for one in objects)
    assert {PatternFile.__name__, ImplementsFile.__name__} <= set(json.loads(as_text())["$defs"])
