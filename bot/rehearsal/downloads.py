"""How a bot fetches a file: by the path that getFile told it, after its token."""

import json

from bot.rehearsal.platform import Platform

FILE_PREFIX = "/file/bot"


def download(platform: Platform, token_and_path: str) -> tuple[int, bytes]:
    """Return HTTP status and body for `TOKEN/path`."""
    token, _, path = token_and_path.partition("/")
    if token not in platform.bots:
        return 401, _not_ok(401, "Unauthorized")
    file = platform.files.at(path)
    return (404, _not_ok(404, "Not Found")) if file is None else (200, file.content)


def _not_ok(code: int, description: str) -> bytes:
    return json.dumps({"ok": False, "error_code": code, "description": description}).encode()
