// What there is and what was said, as the feed told it. Nothing here draws.
import { kept, keep } from "./keeping.js";

export const world = { people: [], groups: [], bot: 0, handle: "", scenes: [], backstage: null, chats: new Map() };

// A chat's record in order: messages by their id, and what was tapped.
export function chat(id) {
  if (!world.chats.has(id)) world.chats.set(id, { id, record: [], messages: new Map() });
  return world.chats.get(id);
}

export function takeCast(cast) {
  Object.assign(world, cast);
}

// Returns what became of the record: { chat, what: "more" | "changed" | "gone", item }, or null.
export function take(happening) {
  const { message, kind } = happening;
  const place = chat(message.chat);
  if (kind === "toast") return null;
  if (kind === "press") return add(place, { tapped: happening.detail, who: happening.who, at: happening.at });
  if (kind === "delete") return gone(place, message.message_id);
  const known = place.messages.get(message.message_id);
  const told = { ...message, person: kind === "message" ? happening.person : known?.person ?? happening.person };
  place.messages.set(message.message_id, told);
  return known ? { chat: place, what: "changed", item: { id: message.message_id } } : add(place, { id: message.message_id });
}

function add(place, item) {
  place.record.push(item);
  return { chat: place, what: "more", item };
}

function gone(place, id) {
  place.messages.delete(id);
  return { chat: place, what: "gone", item: { id } };
}

export const person = (id) => world.people.find((one) => one.id === id);
export const group = (id) => world.groups.find((one) => one.id === id);
export const groupsOf = (id) => world.groups.filter((one) => one.members[id]);
export const isAdmin = (one, id) => ["creator", "administrator"].includes(one.members[id]);
export const labelOf = (id) => (id > 0 ? "Bellwether" : group(id)?.label ?? "A group");

// What can be tapped last in any of a person's chats, by the beginning of its label.
export function newestWith(label, ...ids) {
  for (const id of ids) {
    for (const item of chat(id).record.toReversed()) {
      const message = chat(id).messages.get(item.id);
      const button = message?.buttons.flat().find((one) => one.label.startsWith(label));
      if (button) return { message, button };
    }
  }
  return null;
}

// Unread: what others said since this person looked.

export function unread(me, id) {
  const place = chat(id);
  return place.record.slice(seen(me, id)).filter((item) => {
    const message = place.messages.get(item.id);
    return message && message.person !== me;
  }).length;
}

const seen = (me, id) => kept("seen", {})[`${me}:${id}`] ?? 0;
export const looked = (me, id) => seen(me, id) > 0;

export function look(me, id) {
  const looked = kept("seen", {});
  if (looked[`${me}:${id}`] === chat(id).record.length) return;
  looked[`${me}:${id}`] = chat(id).record.length;
  keep("seen", looked);
}
