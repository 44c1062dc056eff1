// The room in a browser: it follows the record of the stand-in, and does in it what people do.
import { dayAndHour, whenChosen } from "./clock.js";
import { column, drawList } from "./drawing.js";

const chats = new Map(); // id -> { id, label, people, messages, order, shown, unseen }
const trouble = document.getElementById("trouble");
let place = 0;

export async function act(name, details = {}) {
  const answer = await fetch(`/rehearsal/${name}`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(details),
  });
  const told = await answer.json().catch(() => ({ refusal: `${name}: ${answer.status}` }));
  if (!answer.ok) throw new Error(told.refusal ?? `${name}: ${answer.status}`);
  return told.result;
}

async function tried(doing) {
  try {
    trouble.textContent = "";
    return await doing();
  } catch (error) {
    trouble.textContent = error.message;
    return undefined;
  }
}

const doing = {
  say: (chat, person, text, replyTo) =>
    tried(() => act("say", { person, chat, text, reply_to: replyTo })),
  press: (chat, person, message, button) =>
    tried(() => button.url
      ? act("open_link", { person, link: button.url })
      : act("press", { person, chat, message, data: button.data, label: button.label })),
  fetch: (file) => tried(() => act("download", { file_id: file.id })),
};

function take(happening) {
  const { message } = happening;
  const chat = chats.get(message.chat);
  if (chat === undefined) return;
  if (happening.kind === "delete") chat.messages.delete(message.message_id);
  else chat.messages.set(message.message_id, message);
  if (happening.kind === "message") chat.order.push({ message: message.message_id });
  if (happening.kind === "press") chat.order.push({ note: `${happening.who} taps ${happening.detail}` });
  if (happening.kind === "toast" && happening.detail) chat.order.push({ note: happening.detail });
  chat.unseen += chat.shown ? 0 : 1;
  chat.changed = true;
}

async function meet() {
  for (const told of await act("cast")) {
    const known = chats.get(told.id);
    if (known) known.people = told.people;
    else chats.set(told.id, { ...told, messages: new Map(), order: [], shown: true, unseen: 0, changed: true });
  }
}

function draw() {
  drawList(document.getElementById("chats"), [...chats.values()], show);
  const columns = document.getElementById("columns");
  for (const chat of chats.values()) {
    chat.column ??= column(columns, chat, doing);
    chat.column.toggle(chat.shown);
    if (chat.shown && chat.changed) chat.column.draw();
    chat.changed = chat.changed && !chat.shown;
  }
}

function show(chat, shown) {
  Object.assign(chat, { shown, unseen: 0, changed: true });
  draw();
}

async function follow() {
  const happened = await act("transcript", { place, within: 20 });
  await meet();
  place += happened.length;
  happened.forEach(take);
  draw();
  const clock = await act("read_clock");
  document.getElementById("now").textContent = dayAndHour(clock.moment);
}

async function letIn(name) {
  const person = await act("add_person", { name, username: null, language: "en" });
  for (const chat of chats.values()) if (chat.id < 0) await act("join", { person, chat: chat.id });
}

for (const button of document.querySelectorAll(".steps button")) {
  button.onclick = () => tried(() => act("travel", { seconds: Number(button.dataset.seconds) }));
}
document.getElementById("newcomer").onsubmit = (event) => {
  event.preventDefault();
  const form = event.target;
  tried(() => letIn(form.name.value)).then(() => form.reset());
};
document.getElementById("all").onclick = () => { for (const chat of chats.values()) show(chat, true); };
document.getElementById("none").onclick = () => { for (const chat of chats.values()) show(chat, false); };

whenChosen(() => {
  for (const chat of chats.values()) chat.changed = true;
  draw();
});

for (;;) {
  const went = await tried(async () => { await follow(); return true; });
  if (!went) await new Promise((resolve) => setTimeout(resolve, 2000));
}
