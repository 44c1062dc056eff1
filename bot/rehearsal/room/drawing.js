// What the room looks like. Words of people are only ever set as text, never as markup.
import { hour } from "./clock.js";

function make(tag, kind, text = "") {
  const element = document.createElement(tag);
  element.className = kind;
  element.textContent = text;
  return element;
}

function bare(label, doing) {
  const button = make("button", "bare", label);
  button.type = "button";
  button.onclick = doing;
  return button;
}

export function drawList(list, chats, show) {
  list.replaceChildren(...chats.map((chat) => {
    const item = make("li", "");
    const label = make("label", "");
    const box = make("input", "");
    box.type = "checkbox";
    box.checked = chat.shown;
    box.onchange = () => show(chat, box.checked);
    label.append(box, ` ${chat.label} `, make("span", "count", chat.unseen ? `${chat.unseen} new` : ""));
    item.append(label);
    return item;
  }));
}

function chooser(chat) {
  const select = make("select", "");
  select.setAttribute("aria-label", "Who writes");
  select.fill = () => {
    const chosen = select.value;
    select.replaceChildren(...chat.people.map(({ id, name }) => new Option(name, id)));
    if (chosen) select.value = chosen;
  };
  return select;
}

function writer(chat, doing, who) {
  const form = make("form", "write");
  const words = make("textarea", "");
  words.rows = 1;
  words.placeholder = "write here";
  words.setAttribute("aria-label", `Words for ${chat.label}`);
  const replying = make("p", "replying quiet");
  const send = async (event) => {
    event.preventDefault();
    if (!words.value.trim()) return;
    const sent = await doing.say(chat.id, Number(who.value), words.value, form.replyTo);
    if (sent !== undefined) { words.value = ""; form.reply(null); }
  };
  form.reply = (message) => {
    form.replyTo = message?.message_id ?? null;
    replying.textContent = message ? `in reply to: ${message.text.slice(0, 60)}` : "";
    if (message) words.focus();
  };
  words.onkeydown = (event) => { if (event.key === "Enter" && !event.shiftKey) send(event); };
  form.onsubmit = send;
  form.append(replying, who, words, make("button", "", "send"));
  return form;
}

const CAME_AND_WENT = { new_chat_members: "came into the group", left_chat_member: "left the group" };

function said(chat, message, doing, who, form) {
  if (message.kind in CAME_AND_WENT) return make("li", "note", `${message.text} ${CAME_AND_WENT[message.kind]}`);
  const item = make("li", message.from_bot ? "said bot" : "said");
  const at = hour(message.sent);
  item.append(make("span", "who", message.who), " ", make("span", "at", message.edited ? `${at}, changed` : at), " ",
    bare("reply", () => form.reply(message)));
  if (message.file) item.append(" ", carried(message, doing));
  if (message.text) item.append(make("p", "text", message.text));
  for (const row of message.buttons) {
    const line = make("div", "row");
    line.append(...row.map((button) => {
      const key = make("button", "", button.label);
      key.type = "button";
      key.onclick = () => doing.press(chat.id, Number(who.value), message.message_id, button);
      return key;
    }));
    item.append(line);
  }
  if (message.reactions) item.append(make("p", "quiet", message.reactions));
  return item;
}

function carried(message, doing) {
  return bare(`${message.kind}: ${message.file.name} (${message.file.size} bytes)`, async () => {
    const content = await doing.fetch(message.file);
    if (content === undefined) return;
    const link = make("a", "");
    link.href = `data:application/octet-stream;base64,${content}`;
    link.download = message.file.name;
    link.click();
  });
}

export function column(columns, chat, doing) {
  const section = make("section", "");
  const list = make("ol", "");
  const who = chooser(chat);
  const form = writer(chat, doing, who);
  section.append(make("h2", "", chat.label), list, form);
  columns.append(section);
  return {
    toggle(shown) { section.hidden = !shown; section.style.display = shown ? "" : "none"; },
    draw() {
      who.fill();
      const atEnd = list.scrollHeight - list.scrollTop - list.clientHeight < 60;
      list.replaceChildren(...chat.order.flatMap((entry) => {
        if (entry.note) return [make("li", "note", entry.note)];
        const message = chat.messages.get(entry.message);
        return message ? [said(chat, message, doing, who, form)] : [];
      }));
      if (atEnd) list.scrollTop = list.scrollHeight; // whoever reads further up is left there
    },
  };
}
