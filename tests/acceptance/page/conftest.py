"""The room in a real browser. Where there is none these tests are skipped, and say so."""

import shutil
import subprocess
import time
from collections.abc import AsyncIterator, Iterator
from dataclasses import dataclass, field

import pytest
import pytest_asyncio
from playwright.async_api import Browser, Page, async_playwright

CHROMIUM = shutil.which("chromium")
STARTS_S = 60
QUIET = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]


@pytest.fixture(scope="session")
def endpoint(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """One browser for all tests of a worker; each connects to it with pages of its own."""
    if CHROMIUM is None:
        pytest.skip(
            "NO CHROMIUM HERE: the room's page was NOT tried in a browser. `apt-get install chromium`"
        )
    folder = tmp_path_factory.mktemp("chromium")
    told = folder / "DevToolsActivePort"
    arguments = [*QUIET, "--remote-debugging-port=0", f"--user-data-dir={folder}"]
    with subprocess.Popen([CHROMIUM, *arguments], stderr=subprocess.DEVNULL) as process:  # noqa: S603 - our own words
        try:
            until = time.monotonic() + STARTS_S
            while not (told.exists() and told.read_text()) and time.monotonic() < until:
                time.sleep(0.05)
            yield f"http://127.0.0.1:{told.read_text().split()[0]}"
        finally:
            process.terminate()


@pytest_asyncio.fixture
async def chromium(endpoint: str) -> AsyncIterator[Browser]:
    async with async_playwright() as playwright:
        browser = await playwright.chromium.connect_over_cdp(endpoint)
        yield browser
        for context in browser.contexts:
            await context.close()
        await browser.close()


@dataclass
class Visits:
    """Opens the room. What its pages complained of, or asked of other addresses, is kept."""

    browser: Browser
    address: str
    complaints: list[str] = field(default_factory=list)

    async def open(self, width: int = 1440, height: int = 900, *, dark: bool = False) -> Page:
        touch = width < 1000
        context = await self.browser.new_context(
            viewport={"width": width, "height": height},
            color_scheme="dark" if dark else "light",
            has_touch=touch,
            is_mobile=touch,
            reduced_motion="reduce",
        )
        page = await context.new_page()
        page.set_default_timeout(15_000)
        page.on("console", lambda told: self._keep(told.text, wrong=told.type in ("error", "warning")))
        page.on("pageerror", lambda error: self._keep(str(error), wrong=True))
        page.on("request", lambda made: self._keep(made.url, wrong=not made.url.startswith(self.address)))
        await page.goto(self.address)
        await page.wait_for_selector("#me option", state="attached")
        return page

    def _keep(self, words: str, *, wrong: bool) -> None:
        if wrong:
            self.complaints.append(words)


@pytest_asyncio.fixture
async def visits(chromium: Browser, address: str) -> AsyncIterator[Visits]:
    found = Visits(chromium, address)
    yield found
    assert found.complaints == []
