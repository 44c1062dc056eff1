"""The catalogue's form as a JSON Schema, for editors. Write it anew: `python -m core.movements.schema`."""

import json
from pathlib import Path
from typing import Any

from pydantic.json_schema import models_json_schema

from core.movements.values import Implement, MovementRow, Pattern
from core.values import Value

FILE = Path(__file__).parent / "catalogue" / "schema.json"


class PatternFile(Value):
    """`<pattern>.toml`: the movements of one pattern."""

    pattern: Pattern
    movements: tuple[MovementRow, ...]


class ImplementsFile(Value):
    """`implements.toml`: the things to lift or use."""

    implements: tuple[Implement, ...]


def schema() -> dict[str, Any]:
    """The schema of a file of the catalogue: either kind."""
    places, definitions = models_json_schema(
        [(PatternFile, "validation"), (ImplementsFile, "validation")], title="A file of the catalogue"
    )
    return {"oneOf": list(places.values()), **definitions}


def as_text() -> str:
    """The schema as it is committed."""
    return json.dumps(schema(), indent=2, ensure_ascii=False) + "\n"


if __name__ == "__main__":
    FILE.write_text(as_text(), encoding="utf-8")
