// Where somebody writes: a box of two lines that grows to ten, a draft that is kept, something to attach.
import { act, send } from "./acting.js";
import { key, make } from "./dom.js";
import { keep, kept } from "./keeping.js";

const LEAST_LINES = 2;
const MOST_LINES = 10;
const byTouch = matchMedia("(pointer: coarse)");
const hasRoom = matchMedia("(min-width: 64rem)"); // a placeholder of three lines is cut off

// `asked()`: told when something is sent, whose answer will be looked for.
export function writer({ where, asked }) {
  let about = null; // { message, how: "reply" | "change" }
  const box = make("textarea", { rows: LEAST_LINES, id: `write-${where.slot}`, autocomplete: "off", enterKeyHint: byTouch.matches ? "enter" : "send" });
  const label = make("label", { className: "hidden", htmlFor: box.id });
  const note = make("p", { className: "about", hidden: true });
  const picker = make("input", { type: "file", className: "hidden", tabIndex: -1, "aria-label": "A file to send", change: attach });
  const others = make("details", { className: "tools others" },
    make("summary", { title: "A picture, a file, a voice message" }, make("span", { "aria-hidden": "true" }, "+"), make("span", { className: "hidden" }, "Send something else")),
    make("div", { className: "menu" },
      key("A picture or a file", () => { others.open = false; picker.click(); }, { className: "plain" }),
      key("A voice message, three silent seconds", () => { others.open = false; act("send_voice", at()); }, { className: "plain" })));
  const form = make("form", { className: "write", submit }, note, label, others, box, make("button", { className: "key strong" }, "Send"), picker);

  box.addEventListener("input", () => { fit(); draft(box.value); });
  box.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && about) { event.preventDefault(); settle(null); }
    if (event.key !== "Enter" || event.shiftKey || byTouch.matches || event.isComposing) return;
    event.preventDefault();
    submit(event);
  });

  const at = () => ({ person: where.person, chat: where.chat });
  const name = () => `${where.person}:${where.chat}`;
  const draft = (words) => keep("drafts", { ...kept("drafts", {}), [name()]: words || undefined });

  function fit() {
    box.rows = LEAST_LINES;
    while (box.value && box.rows < MOST_LINES && box.scrollHeight > box.clientHeight + 2) box.rows += 1;
  }

  async function submit(event) {
    event.preventDefault();
    const text = box.value;
    if (!text.trim()) return box.focus();
    asked();
    const done = about?.how === "change"
      ? await act("change_text", { ...at(), message: about.message.message_id, text })
      : await act("say", { ...at(), text, reply_to: about?.message.message_id ?? null });
    if (done === undefined) return undefined;
    box.value = "";
    draft("");
    settle(null);
    return box.focus();
  }

  async function attach() {
    const [file] = picker.files;
    if (file && await send(where.person, where.chat, file, box.value, about?.message.message_id ?? null) !== undefined) {
      box.value = "";
      draft("");
      settle(null);
    }
    picker.value = "";
  }

  function settle(next) {
    about = next;
    note.hidden = about === null;
    note.replaceChildren(...(about ? [
      `${about.how === "change" ? "Changing" : "In reply to"}: ${about.message.text.split("\n")[0].slice(0, 60) || about.message.kind} `,
      key("Never mind", () => { if (about?.how === "change") box.value = ""; settle(null); }, { className: "plain" })] : []));
    if (about?.how === "change") box.value = about.message.text;
    fit();
    if (about) box.focus();
  }

  return {
    form,
    answer: (message) => settle({ message, how: "reply" }),
    change: (message) => settle({ message, how: "change" }),
    fill(words) { box.value = words; fit(); draft(words); box.focus(); },
    move(to, whom) {
      label.textContent = `Write to ${to}`;
      box.placeholder = `Write to ${to}${whom}${hasRoom.matches && !byTouch.matches ? "\nShift+Enter makes a line" : ""}`;
      settle(null);
      box.value = kept("drafts", {})[name()] ?? "";
      fit();
    },
  };
}
