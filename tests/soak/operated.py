"""`bellwether` as its operator runs it: processes of its own, their ends and their complaints.

They are forked but for one, so that a start costs a tenth.
"""

import asyncio
import os
import signal
import subprocess
import sys
from contextlib import asynccontextmanager

from bot.rehearsal.platform import TOKEN
from tests.support import forked
from tests.support.durable import Tables

PATIENCE_S = 60  # a process starts, on a machine that may be busy


class Bot:
    """`bellwether` as processes of its own, on one database."""

    def __init__(self, address, folder):
        self.folder = folder
        self.database = folder / "bellwether.db"
        self.tables = Tables(self.database)
        self.environment = os.environ | {
            "BELLWETHER_TOKEN": TOKEN,
            "BELLWETHER_API_URL": address,
            "BELLWETHER_DATABASE": str(self.database),
        }

    def process(self, *command, **settings):
        """Start it."""
        return forked.start(*command, env=self.environment | settings, folder=self.folder)

    async def loaded_anew(self, *command, before=None):
        """Start it as an operator does, in an interpreter of its own; `before` is called in it first of all."""
        return await asyncio.create_subprocess_exec(
            *(sys.executable, "-m", "bot", *command),
            env=self.environment,
            preexec_fn=before,
            cwd=self.folder,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
        )

    async def run(self, *command, **settings):
        """Let it end by itself. How it ended, and what it printed and complained of."""
        process = self.process(*command, **settings)
        try:
            out, complaint = await asyncio.wait_for(process.communicate(), PATIENCE_S * 3)
        finally:
            if process.returncode is None:
                process.kill()
        return process.returncode, out.decode(), complaint.decode()

    @asynccontextmanager
    async def serving(self, **settings):
        """Run it as long as this lasts; it is stopped as an operator stops it."""
        process = self.process("serve", **settings)
        yield process
        if process.returncode is None:
            process.send_signal(signal.SIGTERM)
        _, complaint = await asyncio.wait_for(process.communicate(), PATIENCE_S)
        assert "Traceback" not in complaint.decode()


def assert_one_sentence(ending, *words):
    code, _, complaint = ending
    assert code in {1, 2}, complaint
    assert "Traceback" not in complaint
    last = complaint.strip().splitlines()[-1]
    for word in words:
        assert word in last
