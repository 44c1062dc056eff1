// Doing what people do: every act is a call of the stand-in; what it refuses is said, not thrown.
import { say } from "./saying.js";

async function call(name, details) {
  const answer = await fetch(`/rehearsal/${name}`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(details),
  });
  const told = await answer.json().catch(() => ({}));
  if (!answer.ok) throw new Error(told.refusal ?? `That didn't work (${name}, ${answer.status}).`);
  return told.result;
}

// Returns the act's result, or undefined where it was refused.
export async function act(name, details = {}) {
  try {
    return await call(name, details);
  } catch (error) {
    say(error instanceof TypeError ? "The room doesn't answer. Is it still running?" : error.message);
    return undefined;
  }
}

// Follows a link that starts the bot, or presses a button.
export function press(person, message, button) {
  if (button.url) return follow(person, button.url);
  return act("press", { person, chat: message.chat, message: message.message_id, data: button.data, label: button.label });
}

export function follow(person, link) {
  if (link.startsWith("https://t.me/")) return act("open_link", { person, link });
  say(`This would open ${link}`);
  return undefined;
}

export async function send(person, chat, file, caption, reply_to) {
  const kind = /^image\/(png|jpeg)$/.test(file.type) ? "photo" : file.name.endsWith(".ogg") ? "voice" : "document";
  const content = await encoded(file);
  return act("send_file", { person, chat, kind, name: file.name, content, caption, reply_to });
}

function encoded(file) {
  return new Promise((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result.slice(reader.result.indexOf(",") + 1));
    reader.readAsDataURL(file);
  });
}
