"""Makes the pictures of the README, in docs/: `make pictures`. It plays the day and looks at the room.

Needs Chromium; the play takes a minute.
"""

import asyncio
import base64
import contextlib
import re
import shutil
import socket
import sys
from pathlib import Path

from playwright.async_api import Browser, Page, ViewportSize, async_playwright

DOCS = Path(__file__).parents[1] / "docs"
DESK: ViewportSize = {"width": 1440, "height": 860}
PHONE: ViewportSize = {"width": 390, "height": 840}
FLAGS = ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking"]
ENDED = "The room stays open"


async def main() -> None:
    chromium = shutil.which("chromium")
    if chromium is None:
        sys.exit("There is no Chromium here: apt-get install chromium")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    bellwether = [sys.executable, "-m", "bot", "rehearse", "--port", str(port)]
    played = await asyncio.create_subprocess_exec(*bellwether, stdout=asyncio.subprocess.PIPE)
    try:
        async with asyncio.timeout(300):
            while ENDED not in (await played.stdout.readline()).decode():
                pass
        async with async_playwright() as playwright:
            browser = await playwright.chromium.launch(executable_path=chromium, args=FLAGS)
            DOCS.mkdir(exist_ok=True)
            await room(browser, f"http://127.0.0.1:{port}")
            await day(browser, f"http://127.0.0.1:{port}")
            await coach(browser, f"http://127.0.0.1:{port}")
            await browser.close()
    finally:
        played.terminate()
        with contextlib.suppress(ProcessLookupError):
            await played.wait()


async def as_somebody(browser: Browser, address: str, size: ViewportSize, name: str) -> Page:
    touch = size is PHONE
    page = await browser.new_page(viewport=size, has_touch=touch, is_mobile=touch, device_scale_factor=1)
    await page.goto(address)
    one = page.locator("#me option", has_text=re.compile(rf"^{name}\b")).first
    await page.select_option("#me", value=await one.get_attribute("value"))
    await asyncio.sleep(1)
    return page


async def room(browser: Browser, address: str) -> None:
    page = await as_somebody(browser, address, DESK, "Bo")
    await page.screenshot(path=DOCS / "room.png")


async def coach(browser: Browser, address: str) -> None:
    """Three phones: how a board was read and lands, one athlete whom it needs the coach for, the evening."""
    page = await as_somebody(browser, address, PHONE, "Marit")
    await page.click("text=Send a session")
    await page.wait_for_selector("#own :text('How it lands on your people')")
    await asyncio.sleep(1)
    shots = [await page.screenshot()]
    await page.click("#own button:text-is('Go through who needs you')")
    await page.wait_for_selector("#own .entry:last-child :text('These people need you')")
    await page.click("#own .entry:last-child .key")
    await page.wait_for_selector('#own .entry:last-child :text("as I\'d do it")')
    shots.append(await shot(page, "own", "as I'd do it", 100))
    shots.append(await shot(page, "own", "Your evening with", 40))
    await page.close()
    await beside(browser, shots, "coach.png")


async def day(browser: Browser, address: str) -> None:
    """Three phones: the post, somebody's version, the board."""
    shots = []
    for slot, pane, words, above in (
        (1, "group", "8 burpees", 40),
        (0, "own", "Your version", -310),
        (1, "group", "Scoreboard", 40),
    ):
        page = await as_somebody(browser, address, PHONE, "Tove")
        await page.locator("#chats button").nth(slot).click()
        if pane == "own":
            version = page.locator("#own .entry", has_text=words)
            await version.locator("summary", has_text="Why it's so").first.click()
            await asyncio.sleep(0.4)
        shots.append(await shot(page, pane, words, above))
        await page.close()
    await beside(browser, shots, "day.png")


async def shot(page: Page, pane: str, words: str, above: int) -> bytes:
    """The chat from so many pixels above the newest entry that has these words."""
    await page.evaluate(
        "([pane, words, above]) => { const all = [...document.querySelectorAll(`#${pane} .entry`)];"
        " const one = all.findLast((entry) => entry.textContent.includes(words));"
        " const scroll = document.querySelector(`#${pane} .scroll`);"
        " scroll.scrollTop += one.getBoundingClientRect().top - scroll.getBoundingClientRect().top - above; }",
        [pane, words, above],
    )
    await asyncio.sleep(0.4)
    return await page.screenshot()


async def beside(browser: Browser, shots: list[bytes], name: str) -> None:
    """The pictures beside each other, in docs/."""
    page = await browser.new_page(viewport={"width": 3 * 390 + 4 * 20, "height": 880})
    sources = [base64.b64encode(one).decode() for one in shots]
    pictures = "".join(f'<img src="data:image/png;base64,{source}">' for source in sources)
    style = "margin:0;padding:20px;display:flex;gap:20px;background:#d9d5c8"
    await page.set_content(f'<body style="{style}">{pictures}</body>')
    await page.screenshot(path=DOCS / name)
    await page.close()


if __name__ == "__main__":
    asyncio.run(main())
