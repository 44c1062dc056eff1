"""A short keyed check behind each button's data, so that a made-up press is known at once.

It is bound to the chat in which the button stands: what was copied out of another chat doesn't fit either.
"""

import hmac
from base64 import urlsafe_b64encode
from dataclasses import dataclass
from typing import Final

from bot.telegram.heard import Press
from core.desk.errors import StalePress

# Three bytes of a check are sixteen million guesses, and each is an update that waits for its turn.
_BYTES: Final = 3
_MARK: Final = "~"
# What a seal takes of the platform's 64 bytes.
LENGTH: Final = len(_MARK) + 4 * _BYTES // 3


@dataclass(frozen=True, slots=True)
class Seal:
    """`key`: made once and kept in the database."""

    key: bytes

    def put(self, data: str, chat: int) -> str:
        """The data of a button in the chat (row id), with its check behind it."""
        return f"{data}{_MARK}{self._check(data, chat)}"

    def opened(self, press: Press, chat: int) -> str:
        """The data of a press in the chat. Raises StalePress for one that was made up.

        Buttons from before there were seals count as long as the platform shows them under their message.
        """
        data, mark, check = press.data.rpartition(_MARK)
        if not mark and press.label is not None:
            return press.data
        if not mark or not hmac.compare_digest(check.encode(), self._check(data, chat).encode()):
            raise StalePress
        return data

    def _check(self, data: str, chat: int) -> str:
        digest = hmac.digest(self.key, f"{chat}:{data}".encode(), "sha256")
        return urlsafe_b64encode(digest[:_BYTES]).decode()
