"""Photos, voice messages and files, from people and from the bot, through both transports."""

from datetime import timedelta

import httpx
import pytest
from telegram import InlineKeyboardButton, InlineKeyboardMarkup
from telegram.error import BadRequest, NetworkError

from bot.rehearsal.looking import picture_size, small_picture, small_voice, voice_seconds
from bot.rehearsal.platform import TOKEN

# Whatever bytes are in a file, line ends and marks of a form too, they arrive as they were.
AWKWARD = bytes(range(256)) + b"\r\n--\r\n\r\n\n\r--x\r\nContent-Disposition: form-data\r\n\r\n"
BUTTON = InlineKeyboardMarkup([[InlineKeyboardButton("Go", callback_data="g")]])


async def ilse_in(room):
    person = await room.person("Ilse")
    await person.says("hello")
    return person


@pytest.fixture
async def ilse(room):
    return await ilse_in(room)


async def newest_update(bot):
    return (await bot.get_updates())[-1]


# from people


async def test_a_bot_hears_of_a_photo_with_its_caption_and_can_fetch_it(both):
    bot, room = both
    ilse = await ilse_in(room)
    sent = await ilse.sends_photo(caption="7+12, look!")
    message = (await newest_update(bot)).message
    assert message.caption == "7+12, look!"
    assert message.text is None
    assert (message.photo[-1].width, message.photo[-1].height) == (1, 1)
    file = await message.photo[-1].get_file()
    assert bytes(await file.download_as_bytearray()) == small_picture()
    assert (sent.kind, sent.text) == ("photo", "7+12, look!")


async def test_a_bot_hears_of_a_voice_message(both):
    bot, room = both
    ilse = await ilse_in(room)
    sent = await ilse.sends_voice()
    voice = (await newest_update(bot)).message.voice
    assert (voice.duration, voice.mime_type) == (timedelta(seconds=3), "audio/ogg")
    assert bytes(await (await voice.get_file()).download_as_bytearray()) == small_voice()
    assert sent.kind == "voice"


async def test_a_bot_hears_of_a_file_whatever_is_in_it(both):
    bot, room = both
    ilse = await ilse_in(room)
    await ilse.sends_file("plan für May.txt", AWKWARD, caption="my week")
    document = (await newest_update(bot)).message.document
    assert (document.file_name, document.mime_type, document.file_size) == (
        "plan für May.txt",
        "text/plain",
        len(AWKWARD),
    )
    assert bytes(await (await document.get_file()).download_as_bytearray()) == AWKWARD


async def test_a_changed_caption_comes_as_an_edited_message(bot, ilse):
    sent = await ilse.sends_photo(caption="7+12")
    await ilse.edits(sent, "7+13")
    assert (await newest_update(bot)).edited_message.caption == "7+13"


async def test_apps_refuse_what_the_platform_refuses(ilse):
    with pytest.raises(AssertionError, match="1024"):
        await ilse.sends_photo(caption="x" * 1025)
    with pytest.raises(AssertionError, match="IMAGE_PROCESS_FAILED"):
        await ilse.sends_photo(b"no picture")
    with pytest.raises(AssertionError, match="non-empty"):
        await ilse.sends_file("empty.txt", b"")


# from the bot


async def test_a_document_arrives_byte_by_byte_with_name_caption_and_buttons(both):
    bot, room = both
    ilse = await ilse_in(room)
    said = await bot.send_document(
        ilse.id,
        AWKWARD,
        "<b>Your</b> scores",
        parse_mode="HTML",
        filename="scores.csv",
        reply_markup=BUTTON,
    )
    seen = await ilse.hears("Your scores")
    assert (seen.kind, seen.file.name, seen.html, seen.labels) == (
        "document",
        "scores.csv",
        "<b>Your</b> scores",
        ["Go"],
    )
    assert await ilse.downloads(seen) == AWKWARD
    assert (said.document.file_name, said.caption) == ("scores.csv", "Your scores")


async def test_a_photo_and_a_voice_message_arrive_as_such(both):
    bot, room = both
    ilse = await ilse_in(room)
    await bot.send_photo(ilse.id, small_picture(), caption="look")
    await bot.send_voice(ilse.id, small_voice(9), caption="listen")
    photo, voice = (await ilse.messages)[-2:]
    assert (photo.kind, voice.kind) == ("photo", "voice")
    assert voice_seconds(await ilse.downloads(voice)) == 9


async def test_what_was_sent_once_can_be_sent_again_by_its_id(bot, ilse):
    said = await bot.send_document(ilse.id, b"once", filename="a.txt")
    again = await bot.send_document(ilse.id, said.document.file_id)
    assert again.document.file_name == "a.txt"
    with pytest.raises(BadRequest, match=r"(?i)wrong file identifier"):
        await bot.send_document(ilse.id, "file-unknown")


async def test_what_is_no_voice_goes_as_a_document(bot, ilse):
    said = await bot.send_voice(ilse.id, b"ID3 something else")
    assert (said.voice, said.document is not None) == (None, True)


async def test_a_caption_holds_1024_characters(bot, ilse):
    await bot.send_document(ilse.id, b"x", caption="<b>" + "x" * 1024 + "</b>", parse_mode="HTML")
    with pytest.raises(BadRequest, match="caption is too long"):
        await bot.send_document(ilse.id, b"x", caption="x" * 1025)


async def test_a_photo_holds_ten_megabytes(bot, ilse):
    with pytest.raises(BadRequest, match=r"(?i)too big for a photo"):
        await bot.send_photo(ilse.id, small_picture() + bytes(10_000_000))


async def test_an_upload_holds_fifty_megabytes_and_a_download_twenty(bot, ilse):
    said = await bot.send_document(ilse.id, bytes(20_000_001))
    with pytest.raises(BadRequest, match=r"(?i)file is too big"):
        await bot.get_file(said.document.file_id)
    with pytest.raises(NetworkError, match="Request Entity Too Large"):
        await bot.send_document(ilse.id, bytes(50_000_001))


async def test_a_file_has_no_text_to_edit(bot, ilse):
    said = await bot.send_document(ilse.id, b"x", caption="before")
    with pytest.raises(BadRequest, match=r"(?i)no text in the message to edit"):
        await said.edit_text("after")


async def test_a_file_may_be_attached_under_another_name(address, ilse):
    form = {"chat_id": str(ilse.id), "document": "attach://part"}
    async with httpx.AsyncClient(trust_env=False) as client:
        url = f"{address}/bot{TOKEN}/sendDocument"
        answer = await client.post(url, data=form, files={"part": ("a.bin", AWKWARD)})
    assert answer.json()["result"]["document"]["file_size"] == len(AWKWARD)


@pytest.mark.parametrize(("path", "status"), [("7000000001:wrong/files/1", 401), (f"{TOKEN}/files/9/x", 404)])
async def test_files_are_only_for_their_bot(address, path, status):
    async with httpx.AsyncClient(trust_env=False) as client:
        assert (await client.get(f"{address}/file/bot{path}")).status_code == status


def test_a_picture_tells_its_size():
    # From memory of the format: a frame header of JPEG names height before width.
    jpeg = b"\xff\xd8\xff\xe0\x00\x04ab\xff\xc0\x00\x11\x08\x00\x20\x00\x40" + bytes(12)
    assert picture_size(jpeg) == (64, 32)
    assert picture_size(small_picture()) == (1, 1)
    assert picture_size(b"GIF89a") is None
