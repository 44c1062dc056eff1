"""Wires everything together, in one place."""

import asyncio
import logging
import signal
import threading
from contextlib import AbstractAsyncContextManager, AsyncExitStack, nullcontext
from datetime import timedelta
from functools import partial

from telegram import Bot
from telegram.request import BaseRequest

from bot.conduct import MakeConduct
from bot.delivery.bells import Bells
from bot.delivery.budget import NO_LIMIT, PLATFORM, Budget
from bot.delivery.clock import Clock, RealClock
from bot.delivery.dues import Dues
from bot.delivery.keeper import Keeper
from bot.delivery.sender import Sender
from bot.delivery.vitals import Vitals
from bot.loops import Loops
from bot.pulse import Pulse
from bot.rehearsal.remote_clock import RemoteClock
from bot.settings import Pace, Settings
from bot.telegram.api import make_bot
from bot.telegram.conduct import make_conduct
from bot.telegram.connecting import connect, register
from bot.telegram.lanes import Lanes
from bot.telegram.patience import Patience
from bot.telegram.receiver import Receiver
from bot.web.app import Health, make_app
from bot.web.server import WebServer
from core.desk.talk.understood import get_ready
from core.errors import InputError
from core.store.copies import must_be_usable
from core.store.lock import alone_on
from core.store.migrate import migrate
from core.store.troubles import trouble_of
from core.store.unit import Store

log = logging.getLogger(__name__)

_RATES = {Pace.PLATFORM: PLATFORM, Pace.UNLIMITED: NO_LIMIT}
_RUNNING = "ok"
_DATABASE_TIMEOUT_S = 5.0
# What was begun is given so long: a database that is held by somebody else must not keep the process alive and deaf.
_STOPPING_S = 20.0
_LONGEST_LOAD_S = 10.0


class App:
    """The whole bot in one process. `port` is where health and metrics are answered, if they are."""

    def __init__(
        self,
        settings: Settings,
        bot: Bot,
        clock: AbstractAsyncContextManager[Clock],
        make_conduct: MakeConduct,
    ) -> None:
        self.store = Store(settings.database)
        self.bells = Bells()
        self._settings = settings
        self._bot = bot
        self._clock = clock
        self._make_conduct = make_conduct
        self._loops = Loops()
        self._open = AsyncExitStack()
        self._loading = threading.Thread(target=get_ready, name="understanding", daemon=True)
        self._status = "starting"
        self.pulse = Pulse()
        self.port: int | None = None

    async def start(self) -> None:
        """Return once everything runs. Raises InputError for settings that turn out wrong."""
        database = self._settings.database
        must_be_usable(database)
        self._open.enter_context(alone_on(database))
        self._open.push_async_callback(self.store.close)
        await migrate(database)
        await self.store.know_secrets()
        clock = await self._open.enter_async_context(self._clock)
        self._open.push_async_callback(self._bot.shutdown)
        budget = Budget(_RATES[self._settings.pace])
        sender = Sender(self._bot, self.store, clock, self.bells, budget)
        self._vitals = Vitals(self.store, clock, sender.verdicts, self.pulse)
        self._start_web(self._vitals)
        await connect(self._bot)
        conduct = self._make_conduct(self._bot, self.store, clock, self.bells)
        await register(self._bot, conduct.commands)
        # Seconds of loading that the first message would wait for.
        self._loading.start()
        self._loops.start(sender)
        lanes = Lanes(self.store, clock, self.bells, conduct.handle, conduct.on_parked, prepare=self._loaded)
        self._loops.start(lanes)
        self._loops.start(Dues(self.store, clock, self.bells, conduct.carry_out))
        self._loops.start(Receiver(self._bot, self.store, clock, self.bells, pulse=self.pulse))
        self._loops.start(Keeper(self.store, clock, timedelta(days=self._settings.keep_days)))
        self._status = _RUNNING

    async def stop(self) -> None:
        """Finish what was begun and close everything. What still waits is kept for the next start."""
        self._status = "stopping"
        try:
            async with asyncio.timeout(_STOPPING_S):
                await self._loops.stop()
                await self._open.aclose()
                await self._loaded()
        except TimeoutError:
            log.warning("not all that was begun could be finished; it is taken up at the next start")

    async def _loaded(self) -> None:
        """Return once all is loaded. A thread that the interpreter's end catches in native code would abort it."""
        if self._loading.is_alive():
            await asyncio.to_thread(self._loading.join, _LONGEST_LOAD_S)

    async def run(self) -> None:
        """Run until cancelled, then stop. Raises what ends a part of it before: a Trouble where that is known."""
        try:
            await self.start()
            await self._loops.watch()
        except Exception as error:
            trouble = trouble_of(error, self._settings.database)
            if trouble is None:
                raise
            raise trouble from error
        finally:
            await asyncio.shield(self.stop())

    async def health(self) -> Health:
        """Say whether every part runs and the database can be written to."""
        try:
            async with asyncio.timeout(_DATABASE_TIMEOUT_S), self.store.unit():
                pass
            signs = await self._vitals.signs()
        except Exception as error:  # noqa: BLE001 - whatever it is, it is told
            trouble = trouble_of(error, self._settings.database)
            log.warning("the database can't be written to: %s", trouble or repr(error))
            return Health(trouble.what if trouble else f"database: {type(error).__name__}")
        if ended := self._loops.ended():
            return Health(f"{ended[0]} ended", signs.told)
        if self._status != _RUNNING:
            return Health(self._status, signs.told)
        return Health(signs.problem or _RUNNING, signs.told)

    def _start_web(self, vitals: Vitals) -> None:
        if self._settings.address is None:
            return
        try:
            server = WebServer(make_app(self.health, vitals.figures), *self._settings.address)
        except OSError as error:
            raise InputError("BELLWETHER_LISTEN", f"{self._settings.listen} can't be used: {error}") from None
        self._loops.start(server)
        self.port = server.port


def build(
    settings: Settings,
    conduct: MakeConduct | None = None,
    *,
    clock: Clock | None = None,
    request: BaseRequest | None = None,
) -> App:
    """Make the bot. A `clock` that is given stays open; `request` carries calls in place of the network.

    `conduct`: what it does with what happens, if not what Bellwether does.
    """
    if conduct is None:
        patience = Patience(limited=settings.pace is Pace.PLATFORM)
        conduct = partial(make_conduct, patience=patience, owner=settings.owner)
    bot = make_bot(settings.token.get_secret_value(), settings.api_url, request)
    return App(settings, bot, nullcontext(clock) if clock else _own_clock(settings), conduct)


def _own_clock(settings: Settings) -> AbstractAsyncContextManager[Clock]:
    return RemoteClock(settings.clock_url) if settings.clock_url else RealClock()


async def run_until_signalled(app: App) -> None:
    """Run until SIGTERM or SIGINT, and return when all is closed."""
    running = asyncio.create_task(app.run())
    for number in (signal.SIGTERM, signal.SIGINT):
        asyncio.get_running_loop().add_signal_handler(number, running.cancel)
    try:
        await running
    except asyncio.CancelledError:
        log.info("stopped")
