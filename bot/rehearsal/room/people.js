// Who is in a group, and what one may do about it.
import { act } from "./acting.js";
import { key, make } from "./dom.js";
import { chat, isAdmin, person, world, group } from "./world.js";

const STANDING = { creator: "coach, made the group", administrator: "coach", member: "" };

export function headOf(where, be) {
  return where.chat > 0 ? [ownTools(where.person, be)] : [members(where, be)];
}

function ownTools(id, be) {
  const blocked = person(id)?.blocked;
  const details = make("details", { className: "tools" },
    make("summary", { title: "Block" }, make("span", { "aria-hidden": "true" }, "⋯"), make("span", { className: "hidden" }, "What to do with this chat")),
    make("div", { className: "menu" },
      make("label", { htmlFor: "me-here" }, "Be somebody else: "), whoElse(id, be),
      keyed(key(blocked ? "Unblock Bellwether" : "Block Bellwether", () => act(blocked ? "unblock" : "block", { person: id }), { className: "plain" }), "block")));
  details.dataset.key = "own tools";
  return details;
}

function whoElse(id, be) {
  const options = world.people.map((one) => new Option(one.name, one.id, one.id === id, one.id === id));
  return keyed(make("select", { id: "me-here", change: (event) => be(Number(event.target.value)) }, ...options), "me here");
}

function members(where, be) {
  const one = group(where.chat);
  if (!one) return null;
  const inside = world.people.filter(({ id }) => one.members[id]);
  const outside = world.people.filter(({ id }) => !one.members[id]);
  const details = make("details", { className: "who-is-in" },
    make("summary", {}, `${inside.length} people`, make("span", { className: "where-wide" }, ", let in more")),
    make("div", { className: "menu wide" },
      newcomers(one, be),
      outside.length ? adding(one, outside) : null,
      make("ul", {}, bot(one, where.person), ...inside.map((other) => member(one, other, where.person, be)))));
  details.dataset.key = `members ${one.id}`;
  return details;
}

function member(one, other, me, be) {
  const standing = STANDING[one.members[other.id]] || other.about || "";
  const met = chat(other.id).record.length > 0 ? "" : "not talked with it yet";
  const mine = other.id === me;
  const may = isAdmin(one, me) && !mine;
  const admin = isAdmin(one, other.id);
  const does = (label, name, details) => keyed(key(label, () => act(name, { person: me, chat: one.id, ...details }), { className: "plain" }), `${label} ${other.id}`);
  return make("li", {},
    make("span", {}, mine ? `${other.name} (you)` : other.name, make("small", {}, ` ${[standing, met].filter(Boolean).join("; ")}`)),
    mine ? null : keyed(key("Be", () => be(other.id), { className: "plain", title: `Be ${other.name}` }), `be ${other.id}`),
    may ? does(admin ? "No coach any more" : "Make coach", "promote", { other: other.id, as_admin: !admin }) : null,
    may ? does("Remove", "remove", { other: other.id }) : null,
    mine ? does("Leave", "leave", {}) : null);
}

function bot(one, me) {
  const inside = one.members[world.bot];
  const name = inside ? "remove_bot" : "add_bot";
  return make("li", {}, make("span", {}, "Bellwether", make("small", {}, ` @${world.handle}`)),
    !isAdmin(one, me) ? null : keyed(key(inside ? "Remove" : "Add to the group", () => act(name, { person: me, chat: one.id }), { className: inside ? "plain" : "key" }), `bot ${one.id}`));
}

function keyed(element, name) {
  element.dataset.key = name;
  return element;
}

function adding(one, outside) {
  const select = make("select", { id: "add-who" }, ...outside.map(({ id, name }) => new Option(name, id)));
  return make("p", {}, make("label", { htmlFor: select.id }, "Let somebody in: "), select, " ",
    key("Let in", () => act("join", { person: Number(select.value), chat: one.id })));
}

// One name a line: a single one becomes who you are, a roster comes in together.
function newcomers(one, be) {
  const box = make("textarea", { rows: 2, id: "new-names", placeholder: "Alva\nMats" });
  box.dataset.key = "new-names";
  const come = async (event) => {
    event.preventDefault();
    const names = box.value.split("\n").map((name) => name.trim().slice(0, 60)).filter(Boolean);
    const ids = [];
    for (const name of names) ids.push(await letIn(name, one.id));
    box.value = "";
    box.closest("details").open = false;
    if (ids.length === 1 && ids[0]) be(ids[0], names[0]);
  };
  return make("form", { submit: come },
    make("label", { htmlFor: box.id }, "New people, one name a line. One alone is who you become."), box,
    make("button", { className: "key" }, "Let them in"));
}

export async function letIn(name, chat) {
  const id = await act("add_person", { name, username: null, language: "en" });
  if (id && chat) await act("join", { person: id, chat });
  return id;
}
