"""Bodies of HTTP requests to the Bot API, read as the server reads them: JSON, form, or multipart."""

import json
from email.message import Message as MimePart
from email.parser import BytesParser
from typing import Any
from urllib.parse import parse_qsl

from bot.rehearsal.errors import bad_request

# Fields whose text is JSON when it comes in a form. Others that look like it (a text "[1]") stay text.
_STRUCTURES = frozenset({
    "allowed_updates", "caption_entities", "commands", "entities", "link_preview_options", "media",
    "reaction", "reply_markup", "reply_parameters", "scope",
})  # fmt: skip


def read_params(content_type: str, query: bytes, body: bytes) -> dict[str, Any]:
    """Return the parameters of a call; uploaded files are bytes. Raises Declined (400) for a broken body."""
    params = _form(query)
    if not body:
        return params
    kind = content_type.partition(";")[0].strip().lower()
    if kind == "application/json":
        return params | _object(body)
    if kind == "multipart/form-data":
        return params | _multipart(content_type, body)
    return params | _form(body)


def _form(body: bytes) -> dict[str, Any]:
    if not body:
        return {}
    return {name: _decoded(name, value) for name, value in parse_qsl(body.decode(), keep_blank_values=True)}


def _decoded(name: str, value: str) -> Any:
    if name not in _STRUCTURES:
        return value
    try:
        return json.loads(value)
    except ValueError:
        raise bad_request(f"can't parse {name} JSON object") from None


def _object(body: bytes) -> dict[str, Any]:
    try:
        found = json.loads(body)
    except ValueError:
        found = None
    if not isinstance(found, dict):
        raise bad_request("can't parse request body as a JSON object")
    return found


def _multipart(content_type: str, body: bytes) -> dict[str, Any]:
    head = f"Content-Type: {content_type}\r\n\r\n".encode()
    parts = BytesParser().parsebytes(head + body).get_payload()
    if isinstance(parts, str):
        raise bad_request("can't parse multipart body")
    return dict(_part(part) for part in parts if isinstance(part, MimePart))


def _part(part: MimePart) -> tuple[str, Any]:
    name = str(part.get_param("name", header="content-disposition"))
    content = part.get_payload(decode=True)
    assert isinstance(content, bytes), "a part of a form holds no parts"
    return name, content if part.get_filename() else _decoded(name, content.decode())
