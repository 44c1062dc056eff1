"""The room as somebody at a desk and somebody on a phone have it."""

import asyncio
import json
from datetime import timedelta

import pytest
import pytest_asyncio
from axe_playwright_python.base import AXE_FILE_PATH
from telegram import InlineKeyboardButton, InlineKeyboardMarkup

from bot.rehearsal.backstage import Backstage
from bot.rehearsal.chats import Content
from tests.transports import in_process_bot

TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
FOLDED = "<b>Yours</b>\n<blockquote expandable>Why it's so\nbecause</blockquote>\nGo <code>7+12</code>"
TOP_OF_CHAT = "document.querySelector('#own .scroll').getBoundingClientRect().top"
AT_END = """(() => {
    const one = document.querySelector("#group .scroll");
    return one.scrollHeight - one.scrollTop - one.clientHeight < 3;
})()"""


@pytest_asyncio.fixture
async def bot(platform):
    async with in_process_bot(platform) as found:
        yield found


def keys(*labels):
    return InlineKeyboardMarkup([[InlineKeyboardButton(label, callback_data=label)] for label in labels])


@pytest_asyncio.fixture
async def harbour(bot, room):
    """A group with one of everything in its chats."""
    marit, bo = await room.person("Marit"), await room.person("Bo")
    group = await room.group("Harbour crew", admins=[marit], members=[bo])
    await marit.adds_bot(group)
    await bot.send_message(group.id, "Hello Harbour crew!", reply_markup=keys("My version"))
    for one in (bo, marit):
        await one.says("hello")
        await bot.send_message(one.id, FOLDED, parse_mode="HTML", reply_markup=keys("Yes", "No"))
        await one.sends_photo(caption="here")
        await one.sends_voice()
        await one.sends_file("notes.txt", b"notes")
    return marit, bo, group


class Process:
    is_alive = True

    def __init__(self, database):
        self.database = database

    async def kill(self):
        self.is_alive = False

    async def start(self):
        self.is_alive = True


class Whole:
    is_whole = True

    def cut(self):
        self.is_whole = False

    async def mend(self):
        self.is_whole = True


@pytest.fixture
def backstage(platform, tmp_path):
    platform.backstage = Backstage(platform, Process(tmp_path / "none.db"), Whole())
    return platform.backstage


async def test_nothing_stands_in_anybodys_way(visits, harbour, backstage):
    """WCAG 2.2 AA, as far as a program sees it: at a desk and on a phone, with everything open that opens."""
    desk = await visits.open()
    await desk.click("#to-behind")
    await desk.click("#group .who-is-in > summary")
    await finds_nothing(desk)
    await desk.keyboard.press("Escape")
    await desk.click("#own .entry:last-child .tools > summary")
    await finds_nothing(desk)
    phone = await visits.open(390, 844)
    await finds_nothing(phone)
    await phone.click("#to-behind")
    await finds_nothing(phone)
    await phone.click("#from-behind")
    await phone.click("#chats button >> nth=1")
    await phone.click("#group .who-is-in > summary")
    await finds_nothing(phone)
    await phone.click("#group .back")
    await phone.click("#chats button")
    await phone.click("#own .others > summary")
    await finds_nothing(phone)
    assert await phone.evaluate("document.documentElement.scrollWidth") == 390
    small = await phone.evaluate(
        "[...document.querySelectorAll('#own button, #own select')].filter((one) => one.offsetParent"
        " && one.getBoundingClientRect().height < 40).map((one) => one.textContent)"
    )
    assert small == []


async def finds_nothing(page):
    """In the dark only the colours are others."""
    if not await page.evaluate("Boolean(window.axe)"):
        await page.evaluate(AXE_FILE_PATH.read_text())
    for light, rules in (("light", TAGS), ("dark", ["color-contrast"])):
        await page.emulate_media(color_scheme=light, reduced_motion="reduce")
        asked = {"runOnly": rules, "resultTypes": ["violations"]}
        found = await page.evaluate(f"axe.run({json.dumps(asked)})")
        told = [(one["id"], [node["html"] for node in one["nodes"]][:3]) for one in found["violations"]]
        assert told == [], light


async def test_time_and_trouble_are_a_view_of_their_own_on_a_phone_and_lead_back(visits, harbour, backstage):
    page = await visits.open(390, 844)
    await page.click("#chats button")
    top = await page.evaluate(TOP_OF_CHAT)
    await page.click("#own .beside")
    assert not await page.is_visible("#own")
    await page.click("button:has-text('Cut the network')")
    await page.wait_for_selector("#state:text-is('the network is cut')")
    await page.click("#from-behind")
    assert await page.is_visible("#own")
    assert await page.evaluate(TOP_OF_CHAT) == top
    await page.go_back()
    assert await page.is_visible("#chats")


async def test_a_question_is_answered_without_a_mouse_and_the_focus_stays(visits, harbour, platform, bot):
    page = await visits.open()
    await page.focus("#own .entry:last-child")
    for key in ("ArrowUp", "ArrowUp", "ArrowUp", "Tab", "Tab"):
        await page.keyboard.press(key)
    assert await focused(page) == "Yes"
    await page.keyboard.press("Enter")
    await page.wait_for_selector("#own .aside:has-text('taps “Yes”')")
    [question] = platform.queries.values()
    await bot.answer_callback_query(question.id, "Noted")
    await page.wait_for_selector(".toasts p")
    assert await page.inner_text("#said") == "Noted"
    await bot.edit_message_text("All right", question.message.chat.id, question.message.id)
    await page.wait_for_selector("#own :text('All right')")
    assert "All right" in await focused(page)
    await bot.send_message(question.message.chat.id, "And now?")
    await becomes(page, "document.getElementById('said').textContent.includes('And now?')")
    assert "All right" in await focused(page)


async def becomes(page, true):
    """The page's own policy lets nothing evaluate words in it, so it is asked from here."""
    async with asyncio.timeout(15):
        while not await page.evaluate(true):  # noqa: ASYNC110 - what changes is in the browser
            await asyncio.sleep(0.05)


async def focused(page):
    return await page.evaluate("document.activeElement.textContent")


async def test_what_was_chosen_and_begun_is_there_after_a_reload(visits, harbour):
    _, bo, _ = harbour
    page = await visits.open(390, 844)
    await page.select_option("#me", label="Bo")
    await page.click("#chats button >> nth=0")
    await page.fill("#write-own", "two lines\nof a")
    await page.reload()
    await becomes(page, "document.getElementById('write-own').value.startsWith('two lines')")
    await page.press("#write-own", "End")
    await page.press("#write-own", "Enter")
    await page.type("#write-own", "session")
    assert len(await bo.messages) == 5, "on a phone Enter begins a line"
    await page.click("#own button:has-text('Send')")
    await page.wait_for_selector("#own .mine:last-child :text('of a')")
    assert (await bo.messages)[-1].text == "two lines\nof a\nsession"
    await page.click("#own .mine:last-child .tools > summary")
    await page.click("#own .mine:last-child button:has-text('Change')")
    await page.fill("#write-own", "one line")
    await page.click("#own button:has-text('Send')")
    await page.wait_for_selector("#own .mine:last-child :text('one line')")
    await page.click("#own .back")
    assert await page.is_visible("#chats")


async def test_five_thousand_messages_are_no_heavier_than_a_hundred(visits, harbour, platform):
    _, _, group = harbour
    for number in range(5000):
        platform.post(platform.groups[group.id], platform.bot.user, Content(f"message {number}"))
    page = await visits.open()
    await page.wait_for_selector("#group :text('message 4999')")
    assert await page.locator("#group .entry").count() <= 120
    await becomes(page, AT_END)
    for number in range(300):
        platform.post(platform.groups[group.id], platform.bot.user, Content(f"more {number}"))
        await asyncio.sleep(0)
    await page.wait_for_selector("#group :text('more 299')")
    assert await page.locator("#group .entry").count() <= 400
    await becomes(page, AT_END)
    await page.click("#group .earlier")
    assert not await page.evaluate(AT_END), "whoever reads further up is left there"
    platform.post(platform.groups[group.id], platform.bot.user, Content("one more"))
    await page.click("#group .below:has-text('1 new below')")
    await becomes(page, AT_END)
    assert not await page.is_visible("#group .below")


async def test_an_answer_longer_than_the_page_is_read_from_its_beginning(visits, harbour, bot):
    marit, _, _ = harbour
    page = await visits.open(390, 844)
    await page.select_option("#me", label="Marit, coach")
    await page.click("#chats button >> nth=0")
    await page.fill("#write-own", "who needs me?")
    await page.click("#own button:has-text('Send')")
    await page.wait_for_selector("#own .mine:last-child :text('who needs me?')")
    await bot.send_message(marit.id, "First of all\n" + "\n".join(f"line {number}" for number in range(80)))
    await bot.send_message(marit.id, "And a word behind it")
    await page.wait_for_selector("#own :text('And a word behind it')")
    assert await is_in_view(page, "First of all")
    assert not await is_in_view(page, "And a word behind it")
    await page.fill("#write-own", "thanks")
    await page.click("#own button:has-text('Send')")
    await becomes(page, AT_END.replace("#group", "#own"))


async def is_in_view(page, words):
    """Whether an entry's first line stands in what is seen of the chat."""
    entry = await page.locator("#own .entry", has_text=words).bounding_box()
    chat = await page.locator("#own .scroll").bounding_box()
    return chat["y"] <= entry["y"] < chat["y"] + chat["height"]


async def test_the_levers_do_what_they_say(visits, harbour, backstage, platform):
    page = await visits.open()
    platform.backstage.skip = lambda: setattr(backstage, "skip", None)
    assert not await page.is_visible("#levers"), "folded until somebody wants it"
    await page.click("#to-behind")
    await page.wait_for_selector("text=The day plays and moves the time itself")
    tops = {await page.evaluate(TOP_OF_CHAT)}
    await page.click("text=Skip the rest")
    await page.click("button:has-text('Kill the bot')")
    await page.wait_for_selector("text=Bellwether is down.")
    tops.add(await page.evaluate(TOP_OF_CHAT))
    assert not backstage.bot.is_alive
    assert "what you write waits for it" in await page.inner_text("#playing")
    await page.click("button:has-text('Start it again')")
    await page.wait_for_selector("text=Bellwether starts")
    await page.click("button:has-text('Cut the network')")
    await page.wait_for_selector("text=The network is cut.")
    await page.click("button:has-text('Let nothing out')")
    await page.wait_for_selector("text=Nothing goes out until")
    tops.add(await page.evaluate(TOP_OF_CHAT))
    assert len(tops) == 1, "what is told of time and trouble moves no chat"
    before = platform.clock.now()
    await page.click("button:has-text('On to') >> nth=0")
    await page.wait_for_selector("#clock:has-text('06:00')")
    assert platform.clock.now() > before


async def test_keys_that_are_past_look_past_and_can_be_tapped_still(visits, harbour, bot, platform):
    marit, _, _ = harbour
    page = await visits.open()
    await page.wait_for_selector("#own .keys .key")
    assert await page.locator("#own .key.past").count() == 0
    await bot.send_message(marit.id, "And this?", reply_markup=keys("Yes", "Maybe"))
    await page.wait_for_selector("#own .key:text-is('Maybe')")
    assert await page.locator("#own .key.past").all_inner_texts() == ["Yes", "No"], (
        "another question stands open"
    )
    await page.click("#own .key.past >> nth=0")
    await page.wait_for_selector("#own .aside:has-text('taps “Yes”')")
    assert await page.locator("#own .key.past").all_inner_texts() == ["Yes", "No"], "nothing newer was asked"
    await bot.send_message(marit.id, "And that?", reply_markup=keys("Later"))
    await page.wait_for_selector("#own .key.past:text-is('Maybe')")
    platform.clock.travel_to(platform.clock.now() + timedelta(days=1))
    await page.wait_for_selector("#group .key.past:text-is('My version')")


async def test_keys_below_what_is_seen_are_told_and_one_tap_away(visits, harbour, bot):
    marit, _, _ = harbour
    page = await visits.open(390, 844)
    await page.select_option("#me", label="Marit, coach")
    await page.click("#chats button >> nth=0")
    text = "How I read it\n" + "\n".join(f"line {number}" for number in range(60))
    await bot.send_message(marit.id, text, reply_markup=keys("Post now", "Discard"))
    await page.wait_for_selector("#own :text('How I read it')")
    await page.evaluate("document.querySelector('#own .scroll').scrollTop -= 600")
    await page.click("#own .below:has-text('Post now, Discard')")
    await becomes(page, AT_END.replace("#group", "#own"))
    await page.wait_for_selector("#own .below", state="hidden")
    talk = await page.locator("#own .scroll").bounding_box()
    assert talk["height"] > 700, "most of a phone is for the talk"


async def test_one_writes_at_the_foot_of_the_page_even_where_nothing_was_said(visits, room):
    coach = await room.person("Marit")
    await room.group("Harbour crew", admins=[coach])
    page = await visits.open(1440, 900)
    await page.wait_for_selector("#group .write")
    writing = await page.locator("#group .write").bounding_box()
    assert round(writing["y"] + writing["height"]) == 900


async def test_who_somebody_is_stands_beside_their_name(visits, room):
    coach = await room.person("Marit", about="nothing to train with")
    lene = await room.person("Lene", about="24 weeks pregnant")
    await room.group("Harbour crew", admins=[coach], members=[lene])
    page = await visits.open()
    assert await page.locator("#me option").all_inner_texts() == ["Marit, coach", "Lene"]
    assert not await page.inner_text("#about")
    await page.select_option("#me", label="Lene")
    await page.wait_for_selector("#about:text-is('24 weeks pregnant')")
