"""Files that were sent: what is known of each, and the checks of the real server when one is uploaded.

Sizes are the Bot API's documented limits. The words of errors are from memory of the public server's source.
"""

import mimetypes
from dataclasses import dataclass
from itertools import count
from typing import Any

from telegram.constants import FileSizeLimit

from bot.rehearsal.errors import Declined, bad_request
from bot.rehearsal.looking import picture_size, voice_seconds

MOST_UPLOADED = int(FileSizeLimit.FILESIZE_UPLOAD)
MOST_DOWNLOADED = int(FileSizeLimit.FILESIZE_DOWNLOAD)
BIGGEST_PHOTO = int(FileSizeLimit.PHOTOSIZE_UPLOAD)
MOST_SIDES = 10_000  # Bot API, sendPhoto: width and height together
MOST_RATIO = 20


@dataclass(frozen=True, slots=True)
class Upload:
    """A file as it came in with a call."""

    name: str
    content: bytes


@dataclass(frozen=True, slots=True)
class StoredFile:
    id: str
    name: str
    content: bytes

    @property
    def mime(self) -> str:
        return mimetypes.guess_type(self.name)[0] or "application/octet-stream"

    @property
    def json(self) -> dict[str, Any]:
        """What the Bot API tells of every file."""
        return {
            "file_id": self.id,
            "file_unique_id": f"unique-{self.id}",
            "file_size": len(self.content),
        }

    @property
    def path(self) -> str:
        """Where it is downloaded from, after the token."""
        return f"files/{self.id}/{self.name}"


@dataclass(frozen=True, slots=True)
class Media:
    """What a message carries beside its words. `kind` is the field of the message: photo, voice, document."""

    kind: str
    file: StoredFile
    told: Any


class Files:
    """All files that the platform keeps."""

    def __init__(self) -> None:
        self._kept: dict[str, StoredFile] = {}
        self._numbers = count(1)

    def keep(self, upload: Upload) -> StoredFile:
        """Keep an upload. Raises Declined."""
        if not upload.content:
            raise bad_request("file must be non-empty")
        if len(upload.content) > MOST_UPLOADED:
            raise Declined(413, "Request Entity Too Large")
        file = StoredFile(f"file-{next(self._numbers)}", _plain_name(upload.name), upload.content)
        self._kept[file.id] = file
        return file

    def find(self, file_id: str) -> StoredFile | None:
        return self._kept.get(file_id)

    def at(self, path: str) -> StoredFile | None:
        return next((file for file in self._kept.values() if file.path == path), None)


def _plain_name(name: str) -> str:
    return name.replace("\\", "/").rpartition("/")[2] or "file"


def as_photo(file: StoredFile) -> Media:
    """Raises Declined for what is no picture, or too big a one."""
    if len(file.content) > BIGGEST_PHOTO:
        raise bad_request("too big for a photo")
    size = picture_size(file.content)
    if size is None:
        raise bad_request("IMAGE_PROCESS_FAILED")
    if sum(size) > MOST_SIDES or max(size) > MOST_RATIO * min(size):
        raise bad_request("PHOTO_INVALID_DIMENSIONS")
    width, height = size
    return Media("photo", file, [file.json | {"width": width, "height": height}])


def as_voice(file: StoredFile) -> Media:
    """As a voice message; what isn't OGG with Opus goes as a document, as on the platform."""
    seconds = voice_seconds(file.content)
    if seconds is None:
        return as_document(file)
    return Media("voice", file, file.json | {"duration": seconds, "mime_type": "audio/ogg"})


def as_document(file: StoredFile) -> Media:
    return Media("document", file, file.json | {"file_name": file.name, "mime_type": file.mime})


KINDS = {"photo": as_photo, "voice": as_voice, "document": as_document}
