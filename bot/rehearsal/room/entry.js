// One entry of a record, as it stands on the page.
import { act, press } from "./acting.js";
import { key, make } from "./dom.js";
import { rich } from "./rich.js";
import { day, dayAndHour, hour } from "./when.js";
import { world } from "./world.js";

const CAME_AND_WENT = {
  new_chat_members: (message) => (message.who === message.text ? `${message.who} comes into the group` : `${message.who} adds ${message.text}`),
  left_chat_member: (message) => (message.who === message.text ? `${message.who} leaves the group` : `${message.who} removes ${message.text}`),
  pinned_message: (message) => `${message.who} pins a message`,
};
const OTHERS = { sticker: "a sticker", location: "a place on the map", contact: "a contact" };

// `reader`: who looks at it; `answer`, `change`: what to do with a message that is to be replied to or edited; `opens`: what
// to do where a button led into one's own chat.
export function entry(item, around) {
  const { chat } = around;
  if (item.tapped) return aside(chat.id > 0 ? `${item.who} taps “${item.tapped}”` : "", "aside tap");
  const message = chat.messages.get(item.id);
  if (!message) return null;
  const told = CAME_AND_WENT[message.kind];
  if (told) return aside(told(message));
  if (chat.id > 0 && message.text.startsWith("/start")) return aside(`${message.who} opens the chat`);
  return said(message, around);
}

function aside(words, className = "aside") {
  return words ? make("li", { className }, words) : null;
}

function said(message, around) {
  const mine = message.person === around.reader;
  const who = mine ? "You" : message.who;
  const element = make("li", { className: mine ? "entry mine" : message.from_bot ? "entry bot" : "entry", tabIndex: -1 });
  element.dataset.message = message.message_id;
  element.append(
    make("p", { className: "by" }, make("span", { className: "who" }, who), " ",
      make("time", { className: "at", dateTime: message.sent }, hour(message.sent)),
      message.reworded ? make("span", { className: "at" }, ` changed ${since(message)}`) : null),
    make("div", { className: "matter" },
      reply(message, around.chat),
      carried(message),
      message.text ? make("div", { className: "words" }, ...rich(message.html || "")) : null,
      OTHERS[message.kind] ? make("p", { className: "aside" }, OTHERS[message.kind]) : null,
      keys(message, around),
      message.reactions ? make("p", { className: "reactions" }, make("span", { className: "hidden" }, "Reaction: "), message.reactions) : null),
    tools(message, mine, around));
  for (const one of element.querySelectorAll("button, summary, a, audio")) one.tabIndex = -1;
  return element;
}

const since = ({ sent, reworded }) => (day(sent) === day(reworded) ? hour(reworded) : dayAndHour(reworded));

function reply(message, chat) {
  const original = message.reply_to && chat.messages.get(message.reply_to);
  if (!original) return null;
  const first = (original.text || original.kind).split("\n")[0].slice(0, 80);
  return make("p", { className: "reply" }, `to ${original.who}: ${first}`);
}

function carried(message) {
  const { file, kind } = message;
  if (!file) return null;
  const src = `/room/file/${file.id}`;
  if (kind === "photo") return make("img", { src, alt: `A picture from ${message.who}`, className: "photo" });
  if (kind === "voice") {
    return make("p", { className: "voice" }, make("audio", { src, controls: true, preload: "none", "aria-label": `A voice message from ${message.who}` }));
  }
  return make("p", { className: "file" }, make("a", { href: src, download: file.name }, file.name), ` ${size(file.size)}`);
}

const size = (bytes) => (bytes < 2000 ? `${bytes} bytes` : `${Math.round(bytes / 1000)} kB`);

function keys(message, { reader, opens }) {
  if (!message.buttons.length) return null;
  return make("div", { className: "keys" }, ...message.buttons.map((row) =>
    make("div", { className: "row" }, ...row.map((button) =>
      key(button.url ? `${button.label} ↗` : button.label, async () => {
        if (await press(reader, message, button) !== undefined && button.url) opens();
      })))));
}

function tools(message, mine, { chat, reader, answer, change }) {
  const { message_id } = message;
  const here = { person: reader, chat: chat.id, message: message_id };
  const admin = world.groups.find((one) => one.id === chat.id)?.members[reader];
  const may = mine || chat.id > 0 || ["creator", "administrator"].includes(admin);
  const details = make("details", { className: "tools" },
    make("summary", { title: "Reply, change, delete" }, make("span", { "aria-hidden": "true" }, "⋯"), make("span", { className: "hidden" }, "What to do with this message")));
  const does = (label, doing) => key(label, () => { details.open = false; doing(); }, { className: "plain" });
  details.append(make("div", { className: "menu" },
    does("Reply", () => answer(message)),
    mine && message.kind === "text" ? does("Change", () => change(message)) : null,
    may ? does("Delete", () => act("delete", here)) : null,
    chat.id < 0 && ["creator", "administrator"].includes(admin) ? does("Pin", () => act("pin", here)) : null));
  details.dataset.key = `tools ${message_id}`;
  return details;
}
