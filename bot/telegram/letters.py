"""What is to be said becomes letters in the outbox: worded, split, keyed, in the transaction of its cause."""

from asyncio import to_thread
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Any

from telegram.constants import MessageLimit

from bot.telegram.buttons import pack
from bot.telegram.heard import Press
from bot.telegram.seals import Seal
from bot.telegram.split import shorten, split
from bot.words import en  # noqa: F401 - registers the wordings
from bot.words.text import escape
from bot.words.wording import FALLBACK, Attachment, Button, DoorButton, Row, Worded, word
from core.desk.outcome import Outcome, Said, Say
from core.desk.post_office import ChatKind, LetterFile, NewLetter, Purpose, Unit

# The platform forgets a press within seconds; an answer that late helps nobody.
TAP_LASTS = timedelta(seconds=30)

Keyboard = list[list[dict[str, str]]]


@dataclass(frozen=True, slots=True)
class Cause:
    """Why letters are written: `key` makes those unique that have no key of their own.

    `language`: of whoever caused them, for the answer to a press and where a reader's own isn't known any more.
    `chat`: their private chat, if they have one: what goes there answers them.
    """

    key: str
    language: str = FALLBACK
    press: Press | None = None
    chat: int | None = None

    def has_pressed(self, message_id: int | None) -> bool:
        return self.press is not None and message_id is not None and self.press.message_id == message_id


@dataclass(frozen=True, slots=True)
class Writer:
    """Writes for one bot; `username` makes the links into its private chat, `seal` marks its buttons."""

    username: str
    seal: Seal

    async def write(self, uow: Unit, now: datetime, cause: Cause, outcome: Outcome) -> bool:
        """Put everything of `outcome` into the outbox and the due rows. Whether any letter is new."""
        letters: list[NewLetter] = []
        for number, say in enumerate(outcome.says):
            if await is_unwanted(uow, cause, say):
                continue
            letters += await self._letters(uow, now, cause, say, f"{cause.key}:{number}")
        new = await uow.outbox.add(letters, now)
        for wish in outcome.due:
            await uow.dues.add(wish.key, wish.kind, wish.at, wish.refs)
        return bool(new)

    async def _letters(
        self, uow: Unit, now: datetime, cause: Cause, say: Say, key: str
    ) -> Sequence[NewLetter]:
        worded = word(say.what, await tongue(uow, say.to, cause))
        original = await uow.outbox.by_key(say.edits) if say.edits else None
        draft = _Draft(say, now + say.expires_after if say.expires_after else None)
        if original is not None and cause.has_pressed(original.message_id):
            return []  # its answer stands in it already
        if original is not None:
            text = await rewritten(uow, original.key, worded.html)
            return [draft.edit(key, message(text, self._keyboard(worded, say.to)), original.id)]
        last_key = say.edits or say.key or key
        if worded.file is None:
            return self._words(draft, worded, last_key)
        if worded.file.caption is None:
            words = caption(worded.html, self._keyboard(worded, say.to))
            return [await draft.carrying(last_key, words, worded.file)]
        shown = await draft.carrying(f"{last_key}.file", caption(worded.file.caption, None), worded.file)
        return [shown, *self._words(draft, worded, last_key)]

    def _words(self, draft: "_Draft", worded: Worded, last_key: str) -> list[NewLetter]:
        """As many messages as the text takes; the last has the key and the buttons."""
        say = draft.say
        parts = [shorten(worded.html)] if say.edits else split(worded.html)
        payloads = [message(text, None) for text in parts[:-1]]
        payloads.append(message(parts[-1], self._keyboard(worded, say.to)))
        if say.replies_to is not None:
            payloads[0] |= {
                "reply_parameters": {"message_id": say.replies_to, "allow_sending_without_reply": True}
            }
        keys = [f"{last_key}.{number}" for number in range(len(parts) - 1)] + [last_key]
        return [draft.send(key, payload) for key, payload in zip(keys, payloads, strict=True)]

    def payload(self, said: Said, language: str, chat: int) -> dict[str, Any]:
        """One message with its buttons, shortened to what the platform takes."""
        worded = word(said, language)
        return message(shorten(worded.html), self._keyboard(worded, chat))

    def _keyboard(self, worded: Worded, chat: int) -> Keyboard | None:
        return [self._row(row, chat) for row in worded.rows] or None

    def _row(self, row: Row, chat: int) -> list[dict[str, str]]:
        return [self._button(button, chat) for button in row]

    def _button(self, button: Button | DoorButton, chat: int) -> dict[str, str]:
        if isinstance(button, Button):
            return {"text": button.label, "callback_data": self.seal.put(pack(button.does), chat)}
        return {"text": button.label, "url": f"https://t.me/{self.username}?start={button.payload}"}


async def is_unwanted(uow: Unit, cause: Cause, say: Say) -> bool:
    """Whoever wants only answers gets nothing else; a version is the answer to who once asked for it."""
    if say.to == cause.chat or say.edits or say.purpose is Purpose.VERSION:
        return False
    chat = await uow.chats.get(say.to)
    return chat is not None and chat.kind is ChatKind.PRIVATE and chat.only_answers


async def rewritten(uow: Unit, original: str, html: str) -> str:
    """What the message of the letter `original` says now: of a text that took several, the end with the buttons."""
    parts = split(html)
    in_parts = len(parts) > 1 and await uow.outbox.by_key(f"{original}.0") is not None
    return parts[-1] if in_parts else shorten(html)


async def tongue(uow: Unit, chat_id: int, cause: Cause) -> str:
    """The reader's language; in a group the one that all share."""
    if chat_id == cause.chat:
        return cause.language
    chat = await uow.chats.get(chat_id)
    if chat is None or chat.kind is not ChatKind.PRIVATE:
        return FALLBACK
    return chat.language or cause.language


@dataclass(frozen=True, slots=True)
class _Draft:
    """What all letters of one say share."""

    say: Say
    expires_at: datetime | None

    def send(self, key: str, payload: dict[str, Any]) -> NewLetter:
        return self._letter(key, "send_message", payload)

    async def carrying(self, key: str, payload: dict[str, Any], file: Attachment) -> NewLetter:
        """The file is made in a thread: a picture takes longer than anybody else should wait."""
        carried = LetterFile(name=file.name, content=await to_thread(file.make))
        return replace(self._letter(key, f"send_{file.sent_as}", payload), file=carried)

    def edit(self, key: str, payload: dict[str, Any], original: int) -> NewLetter:
        return self._letter(key, "edit_message_text", payload, original)

    def _letter(
        self, key: str, method: str, payload: dict[str, Any], original: int | None = None
    ) -> NewLetter:
        return NewLetter(
            chat_id=self.say.to,
            purpose=self.say.purpose,
            method=method,
            payload=payload,
            key=key,
            subject=self.say.subject,
            edits_id=original,
            expires_at=self.expires_at,
            refs=self.say.refs,
            buttons=labelled(payload),
        )


async def press_answered(
    uow: Unit, cause: Cause, now: datetime, chat: int, outcome: Outcome, writer: Writer
) -> list[NewLetter]:
    """Stop the pressed button's spinner; what the pressed message says from now on, or its choice under it."""
    press = cause.press
    if press is None:
        return []
    letters = [_tap(cause, press, now, chat, outcome)]
    if outcome.becomes is not None:
        payload = writer.payload(outcome.becomes, await tongue(uow, chat, cause), chat)
        letters.append(_become(cause, press, chat, payload))
    elif outcome.settles and press.message_id is not None and press.html is not None:
        letters.append(_settled(cause, press, chat))
    return letters


def message(text: str, keyboard: Keyboard | None) -> dict[str, Any]:
    """Parameters of a text message; no link in it grows a picture."""
    payload: dict[str, Any] = {
        "text": text,
        "parse_mode": "HTML",
        "link_preview_options": {"is_disabled": True},
    }
    return payload if keyboard is None else payload | {"reply_markup": {"inline_keyboard": keyboard}}


def labelled(payload: Mapping[str, Any]) -> dict[str, str]:
    """Label -> data of the buttons under a message, in their order; of two with one label the first."""
    rows = payload.get("reply_markup", {}).get("inline_keyboard", ())
    buttons = [one for row in reversed(rows) for one in reversed(row) if "callback_data" in one]
    return {one["text"]: one["callback_data"] for one in buttons}


def caption(text: str, keyboard: Keyboard | None) -> dict[str, Any]:
    """Parameters of a message that carries a file."""
    payload: dict[str, Any] = {"caption": shorten(text, MessageLimit.CAPTION_LENGTH), "parse_mode": "HTML"}
    return payload if keyboard is None else payload | {"reply_markup": {"inline_keyboard": keyboard}}


def _tap(cause: Cause, press: Press, now: datetime, chat: int, outcome: Outcome) -> NewLetter:
    payload = {"callback_query_id": press.query_id}
    if outcome.toast is not None:
        payload["text"] = word(outcome.toast, cause.language).html
    return NewLetter(
        chat_id=chat,
        purpose=Purpose.TAP,
        method="answer_callback_query",
        payload=payload,
        key=f"{cause.key}:tap",
        expires_at=now + TAP_LASTS,
    )


def _become(cause: Cause, press: Press, chat: int, payload: dict[str, Any]) -> NewLetter:
    """The pressed message in new words; a new message where the platform doesn't tell which was pressed."""
    known = press.message_id is not None
    return NewLetter(
        chat_id=chat,
        purpose=Purpose.ANSWER,
        method="edit_message_text" if known else "send_message",
        payload=payload | ({"message_id": press.message_id} if known else {}),
        key=f"{cause.key}:becomes",
        buttons=labelled(payload),
    )


def _settled(cause: Cause, press: Press, chat: int) -> NewLetter:
    chosen = f"\n\n→ {escape(press.label)}" if press.label else ""
    # Where the message is gone, so is what there was to settle: it is no answer that somebody waits for.
    return NewLetter(
        chat_id=chat,
        purpose=Purpose.TAP,
        method="edit_message_text",
        payload=message(shorten(f"{press.html}{chosen}"), None) | {"message_id": press.message_id},
        key=f"{cause.key}:settled",
    )
