"""Processes of the bot without the wait for their loading: `python -m tests.support.forked SOCKET`.

It has loaded what a start loads. For each order that comes over the socket, a JSON object with `argv`, `env` and
`folder`, and with it the files for output, complaints and its end, it forks a process of the bot. A start takes a tenth
of what it takes a new interpreter, which is nearly all that a start costs. Whole starts are tried elsewhere
(`tests/acceptance/page`, `tests/integration/rehearsal/test_http.py`).
"""

import asyncio
import atexit
import gc
import json
import os
import signal
import socket
import subprocess
import sys
import traceback
from contextlib import suppress
from functools import cache
from pathlib import Path
from typing import Any, BinaryIO

_ORDER_BYTES = 262_144  # the environment is in it
_FAILED = 1


class Process:
    """One that was forked, much as one of `asyncio.subprocess` but for how it came about."""

    def __init__(self, pid: int, out: BinaryIO, complaints: BinaryIO, end: BinaryIO) -> None:
        self.pid = pid
        self.returncode: int | None = None  # less than nothing for the signal that ended it
        self._files = (out, complaints, end)

    async def communicate(self) -> tuple[bytes, bytes]:
        """What it printed and complained of, once it has ended."""
        out, complaints, end = await asyncio.gather(*map(_all_of, self._files))
        self.returncode = os.waitstatus_to_exitcode(int(end))
        return out, complaints

    def send_signal(self, number: int) -> None:
        if self.returncode is None:
            with suppress(ProcessLookupError):
                os.kill(self.pid, number)

    def terminate(self) -> None:
        self.send_signal(signal.SIGTERM)

    def kill(self) -> None:
        self.send_signal(signal.SIGKILL)


def start(*argv: str, env: dict[str, str], folder: Path, log: Path | None = None) -> Process:
    """Fork `bellwether` with these words behind it; it complains into the file `log`, if there is one."""
    out, complaints, end = os.pipe(), os.pipe(), os.pipe()
    complaints_to = os.open(log, os.O_WRONLY | os.O_APPEND) if log else os.dup(complaints[1])
    order = json.dumps({"argv": argv, "env": env, "folder": str(folder)}).encode()
    server = _server()
    socket.send_fds(server, [order], [out[1], complaints_to, end[1]])
    pid = int(server.recv(64))
    for file in (out[1], complaints[1], complaints_to, end[1]):
        os.close(file)
    return Process(pid, *(os.fdopen(file, "rb") for file in (out[0], complaints[0], end[0])))


@cache
def _server() -> socket.socket:
    """Where orders go: it is loaded once, and ends with this process."""
    here, there = socket.socketpair(socket.AF_UNIX, socket.SOCK_SEQPACKET)
    command = [sys.executable, "-m", "tests.support.forked", str(there.fileno())]
    process = subprocess.Popen(command, pass_fds=[there.fileno()])  # noqa: S603 - our own words
    there.close()
    assert here.recv(64) == b"loaded"
    atexit.register(process.kill)
    return here


async def _all_of(file: BinaryIO) -> bytes:
    reader = asyncio.StreamReader()
    loop = asyncio.get_running_loop()
    transport, _ = await loop.connect_read_pipe(lambda: asyncio.StreamReaderProtocol(reader), file)
    try:
        return await reader.read()
    finally:
        transport.close()


def _load() -> None:
    """All modules, and the tables that the first words would wait for."""
    from bot import bootstrap, cli  # noqa: F401, PLC0415 - loaded here and nowhere else
    from bot.commands import backup, check, restore, serve  # noqa: F401, PLC0415
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


def _be_the_bot(order: dict[str, Any], out: int, complaints: int) -> None:
    """Never returns."""
    code: Any = _FAILED
    try:
        os.dup2(os.open(os.devnull, os.O_RDONLY), 0)
        os.dup2(out, 1)
        os.dup2(complaints, 2)
        os.closerange(3, 64)
        os.chdir(order["folder"])
        os.environ.clear()
        os.environ.update(order["env"])
        from bot.cli import main  # noqa: PLC0415

        sys.argv = ["bellwether", *order["argv"]]
        main()
        code = 0
    except SystemExit as ended:
        code = ended.code or 0
    except BaseException:  # noqa: BLE001 - nothing of it may run on as the one that forks
        traceback.print_exc()
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(code if isinstance(code, int) else _FAILED)


def _look_after(orders: socket.socket, order: bytes, files: list[int]) -> None:
    """Fork it, say its number, and into the third of `files` how it ended. Never returns."""
    signal.signal(signal.SIGCHLD, signal.SIG_DFL)
    out, complaints, end = files
    pid = os.fork()
    if pid == 0:
        _be_the_bot(json.loads(order), out, complaints)
    os.close(out)
    os.close(complaints)
    orders.send(str(pid).encode())
    _, status = os.waitpid(pid, 0)
    os.write(end, str(status).encode())
    os._exit(0)


def main() -> None:
    orders = socket.socket(fileno=int(sys.argv[1]))
    _load()
    # Whoever is forked shares what is loaded, and looks for no garbage in it.
    gc.collect()
    gc.freeze()
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)
    orders.send(b"loaded")
    while (received := socket.recv_fds(orders, _ORDER_BYTES, 3))[0]:
        order, files, *_ = received
        if os.fork() == 0:
            _look_after(orders, order, files)
        for file in files:
            os.close(file)


if __name__ == "__main__":
    main()
