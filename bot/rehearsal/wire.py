"""Bodies of HTTP requests to the Bot API, read as the server reads them: JSON, form, or multipart."""

import json
from email.message import Message as MimePart
from email.parser import Parser
from typing import Any
from urllib.parse import parse_qsl

from bot.rehearsal.errors import bad_request
from bot.rehearsal.files import Upload

# Fields whose text is JSON when it comes in a form. Others that look like it (a text "[1]") stay text.
_STRUCTURES = frozenset({
    "allowed_updates", "caption_entities", "commands", "entities", "link_preview_options", "media",
    "reaction", "reply_markup", "reply_parameters", "scope",
})  # fmt: skip


_ATTACHED = "attach://"


def read_params(content_type: str, query: bytes, body: bytes) -> dict[str, Any]:
    """Return the parameters of a call; uploaded files are `Upload`s. Raises Declined (400) for a broken body."""
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
    boundary = MimePart()
    boundary["Content-Type"] = content_type
    marker = boundary.get_param("boundary")
    if not marker:
        raise bad_request("can't parse multipart body")
    # Cut by hand: a file is taken byte by byte as it came, whatever line ends are in it.
    _, *parts = (b"\r\n" + body).split(f"\r\n--{marker}".encode())
    return _with_files_in_place(dict(_part(part) for part in parts if part.startswith(b"\r\n")))


def _with_files_in_place(params: dict[str, Any]) -> dict[str, Any]:
    """Put a file that was attached under another name where the call refers to it."""
    for name, value in list(params.items()):
        if isinstance(value, str) and value.startswith(_ATTACHED):
            params[name] = params.pop(value.removeprefix(_ATTACHED), value)
    return params


def _part(part: bytes) -> tuple[str, Any]:
    head, _, content = part.removeprefix(b"\r\n").partition(b"\r\n\r\n")
    told = Parser().parsestr(head.decode(), headersonly=True)
    name = str(told.get_param("name", header="content-disposition"))
    filename = told.get_filename()
    return name, _decoded(name, content.decode()) if filename is None else Upload(filename, content)
