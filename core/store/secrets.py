"""What nobody outside may know: made once, and kept."""

import secrets

from core.store import tables
from core.store.repository import Repository, rows_by

_BYTES = 32


class Secrets(Repository):
    async def get(self, name: str) -> bytes:
        """The secret of that name; the first who asks makes it."""
        row = await self._one(rows_by(tables.secret, "name"), {"it": name})
        if row is None:
            row = await self._add(tables.secret, name=name, value=secrets.token_bytes(_BYTES))
        return bytes(row["value"])
