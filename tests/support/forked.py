"""Processes of the bot without the wait for their loading: `python -m tests.support.forked`.

It has loaded what a start loads. For each line on its standard input, a JSON object with `env`, `folder` and `log`, it
forks a process of the bot, prints its number, and once that has ended how it ended. A start takes a tenth of what it
takes a new interpreter, which is nearly all that a kill costs. Whole starts are tried elsewhere
(`tests/acceptance/page`, `tests/soak/test_operator.py`).
"""

import asyncio
import gc
import json
import os
import signal
import sys
import traceback
from contextlib import suppress
from pathlib import Path
from typing import Any

_OK = 0
_FAILED = 1


class Forked:
    """Starts processes of the bot, one after another, and ends with them."""

    def __init__(self, environment: dict[str, str], log: Path) -> None:
        self._order = json.dumps({"env": environment, "folder": str(log.parent), "log": str(log)})
        self._server: asyncio.subprocess.Process | None = None
        self._process: int | None = None

    async def load(self) -> None:
        """Return once everything is loaded: on a busy machine that takes longer than anybody waits for an answer."""
        pipe = asyncio.subprocess.PIPE
        command = [sys.executable, "-m", "tests.support.forked"]
        self._server = await asyncio.create_subprocess_exec(*command, stdin=pipe, stdout=pipe)
        assert self._server.stdout is not None
        await self._server.stdout.readline()

    async def run(self) -> None:
        """Start one, and return once it has ended."""
        assert self._server is not None
        assert self._server.stdin is not None
        assert self._server.stdout is not None
        self._server.stdin.write(f"{self._order}\n".encode())
        self._process = int(await self._server.stdout.readline())
        await self._server.stdout.readline()
        self._process = None

    def kill(self) -> None:
        if self._process is not None:
            with suppress(ProcessLookupError):
                os.kill(self._process, signal.SIGKILL)

    def close(self) -> None:
        self.kill()
        if self._server is not None and self._server.returncode is None:
            self._server.kill()


def _load() -> None:
    """All modules, and the tables that the first words would wait for."""
    from bot import bootstrap  # noqa: F401, PLC0415 - loaded here and nowhere else
    from bot.commands import serve  # noqa: F401, PLC0415
    from core.athletes.values import Profile, Screening  # noqa: PLC0415
    from core.movements.lookup import catalogue  # noqa: PLC0415
    from core.notation.boards.session import read_session  # noqa: PLC0415
    from core.notation.scores import read_score  # noqa: PLC0415
    from core.scaling.version import version_for  # noqa: PLC0415
    from core.understanding.understand import understand  # noqa: PLC0415
    from core.understanding.values import Context, Message  # noqa: PLC0415

    session = read_session("AMRAP 12\n5 push-ups", catalogue()).session
    assert session is not None
    version_for(session, Profile(name="Ilse", screening=Screening.CLEAR), catalogue())
    read_score("7+2", session)
    understand(Message(text="7+2, my wrist hurts", role="athlete"), Context())


def _be_the_bot(order: dict[str, Any]) -> None:
    """Never returns."""
    code = _FAILED
    try:
        os.dup2(os.open(order["log"], os.O_WRONLY | os.O_APPEND), sys.stderr.fileno())
        os.dup2(os.open(os.devnull, os.O_RDONLY), sys.stdin.fileno())
        os.chdir(order["folder"])
        os.environ.clear()
        os.environ.update(order["env"])
        from bot.commands.serve import serve  # noqa: PLC0415

        serve()
        code = _OK
    except BaseException:  # noqa: BLE001 - nothing of it may run on as the one that forks
        traceback.print_exc()
    finally:
        os._exit(code)


def main() -> None:
    _load()
    # Whoever is forked shares what is loaded, and looks for no garbage in it.
    gc.collect()
    gc.freeze()
    sys.stdout.write("loaded\n")
    sys.stdout.flush()
    while line := sys.stdin.readline():
        process = os.fork()
        if process == 0:
            _be_the_bot(json.loads(line))
        sys.stdout.write(f"{process}\n")
        sys.stdout.flush()
        _, status = os.waitpid(process, 0)
        sys.stdout.write(f"{status}\n")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
