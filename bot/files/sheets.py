"""Tables as CSV (RFC 4180) and documents as JSON (RFC 8259), ready to be sent."""

import csv
import io
import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

# A spreadsheet takes a cell that begins so for a formula, and runs it (common practice, no source).
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def as_csv(head: Sequence[str], rows: Iterable[Sequence[str]]) -> bytes:
    """UTF-8 with a mark in front, by which spreadsheets know it; nothing in it is taken for a formula."""
    written = io.StringIO(newline="")
    sheet = csv.writer(written)
    sheet.writerow(head)
    sheet.writerows([_as_text(cell) for cell in row] for row in rows)
    return written.getvalue().encode("utf-8-sig")


def _as_text(cell: str) -> str:
    return f"'{cell}" if cell.startswith(_FORMULA) else cell


def as_json(document: Mapping[str, Any]) -> bytes:
    """Readable: indented, every letter as it is."""
    return json.dumps(document, ensure_ascii=False, indent=2).encode()
