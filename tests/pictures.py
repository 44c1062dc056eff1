"""Makes the pictures of the README, in docs/: `make pictures`. It plays the day and looks at the room.

Needs Chromium; the play takes a minute.
"""

import asyncio
import base64
import contextlib
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
            await browser.close()
    finally:
        played.terminate()
        with contextlib.suppress(ProcessLookupError):
            await played.wait()


async def as_somebody(browser: Browser, address: str, size: ViewportSize, name: str) -> Page:
    touch = size is PHONE
    page = await browser.new_page(viewport=size, has_touch=touch, is_mobile=touch, device_scale_factor=1)
    await page.goto(address)
    await page.wait_for_selector(f"#me option:text-is('{name}')", state="attached")
    await page.select_option("#me", label=name)
    await asyncio.sleep(1)
    return page


async def room(browser: Browser, address: str) -> None:
    page = await as_somebody(browser, address, DESK, "Bo")
    await page.screenshot(path=DOCS / "room.png")


async def day(browser: Browser, address: str) -> None:
    """Three phones beside each other: the post, somebody's version, the board."""
    shots = []
    for name, slot, words, above in (
        ("Tove", 1, "Wednesday on the quay", 40),
        ("Tove", 0, "Your version", -310),
        ("Tove", 1, "Scoreboard", 40),
    ):
        page = await as_somebody(browser, address, PHONE, name)
        await page.locator("#chats button").nth(slot).click()
        pane = ("own", "group")[slot]
        if slot == 0:
            await (
                page.locator("#own .entry", has_text=words)
                .locator("summary", has_text="Why it's so")
                .first.click()
            )
        await page.evaluate(
            "([pane, words, above]) => { const all = [...document.querySelectorAll(`#${pane} .entry`)];"
            " const one = all.find((entry) => entry.textContent.includes(words));"
            " const scroll = document.querySelector(`#${pane} .scroll`);"
            " scroll.scrollTop += one.getBoundingClientRect().top - scroll.getBoundingClientRect().top - above; }",
            [pane, words, above],
        )
        await asyncio.sleep(0.4)
        shots.append(base64.b64encode(await page.screenshot()).decode())
        await page.close()
    page = await browser.new_page(viewport={"width": 3 * 390 + 4 * 20, "height": 880})
    pictures = "".join(f'<img src="data:image/png;base64,{shot}">' for shot in shots)
    style = "margin:0;padding:20px;display:flex;gap:20px;background:#d9d5c8"
    await page.set_content(f'<body style="{style}">{pictures}</body>')
    await page.screenshot(path=DOCS / "day.png")


if __name__ == "__main__":
    asyncio.run(main())
