// What to try first: each is one tap, in the words that would be typed.
import { act, press } from "./acting.js";
import { key, make, redraw } from "./dom.js";
import { letIn } from "./people.js";
import { chat, isAdmin, newestWith, world } from "./world.js";

const SESSION = "Push, squat, run\nAMRAP 10\n8 push-ups\n12 goblet squats @ 16/12 kg\n200 m run";
// Typed in haste: a choice, a total and a finisher that no clock is for.
const HASTY = "4 rds f.t. cap 20\n12 cal row or 200m run\n10 db push press 15/10\nfinisher not timed: 2 min plank total, death by burpees if u like";
const tried = new Set(); // by their labels, as long as the page is open
const NEW_NAMES = ["Alva", "Mats", "Ida", "Pelle", "Runa", "Sten"];

// `be(id, name)`: become somebody; `show(slot)`: go to a chat.
export function drawTries(container, { be, show }) {
  const open = container.querySelector("details")?.open ?? true;
  const [one] = world.groups;
  const coach = one && world.people.find(({ id }) => isAdmin(one, id));
  const athlete = one && (world.people.find(({ name, id }) => name === "Bo" && one.members[id])
    ?? world.people.find(({ id }) => one.members[id] && id !== coach?.id));
  if (!coach) return redraw(container);
  const writes = (who, words, label) => trial(label, `as ${who.name}`, async () => {
    be(who.id);
    show("own");
    await act("say", { person: who.id, chat: who.id, text: words });
  });
  const noted = world.people.find(({ name, id }) => name === "Ilse" && one.members[id]);
  const inside = Boolean(one.members[world.bot]);
  // Whoever coaches is known as such once they have begun to talk with the bot.
  const begun = chat(coach.id).record.length > 0;
  const sets = inside && !begun ? [trial("Tap Start with me", `as ${coach.name}`, () => {
    be(coach.id);
    return tapIn(one, "Start with me", coach.id, show);
  })] : inside ? [
    writes(coach, SESSION, "Send a session"),
    writes(coach, HASTY, "Send one typed in haste"),
    noted ? writes(coach, `${noted.name} rounds her back in deadlifts`, `“${noted.name} rounds her back in deadlifts”`) : null,
    writes(coach, "who needs me?", "“who needs me?”"),
  ] : [trial("Add Bellwether to the group", `as ${coach.name}`, async () => {
    be(coach.id);
    show("group");
    await act("add_bot", { person: coach.id, chat: one.id });
  })];
  const all = [...sets, ...(inside && begun && athlete ? [
    writes(athlete, "/today", "My version of today: /today"),
    writes(athlete, "6 rounds and 4", "A score: “6 rounds and 4”"),
    writes(athlete, "my left knee hurts", "“my left knee hurts”"),
  ] : [])].filter(Boolean);
  const [first, ...more] = all.toSorted((one, other) => tried.has(one.dataset.key) - tried.has(other.dataset.key));
  const rest = more.length ? make("details", { open }, make("summary", {}, "More to try"), ...more) : null;
  if (rest) rest.dataset.key = "tries";
  return redraw(container, make("h2", {}, "Try this"),
    make("p", { className: "quiet" }, world.backstage?.playing
      ? "The day plays. Be anybody and watch; skip the rest when you want to begin yourself."
      : "Each is one tap, and makes you the one who does it."),
    first,
    inside && begun ? trial("Come in and tap My version", "as somebody new", () => comeIn(one, { be, show })) : null,
    rest);
}

// What was tried goes to the end, and can be tried again.
function trial(label, whose, click) {
  const name = `try ${label}`;
  const button = key(label, () => { tried.add(name); return click(); }, { className: tried.has(name) ? "key try past" : "key try" });
  button.append(make("small", {}, tried.has(name) ? ` ${whose}, tried` : ` ${whose}`));
  button.dataset.key = name;
  return button;
}

async function comeIn(one, { be, show }) {
  const taken = new Set(world.people.map(({ name }) => name));
  const name = NEW_NAMES.find((free) => !taken.has(free)) ?? `Guest ${world.people.length}`;
  const id = await letIn(name, one.id);
  if (!id) return;
  be(id, name);
  await tapIn(one, "My version", id, show);
}

async function tapIn(one, label, id, show) {
  const found = newestWith(label, one.id);
  show(found ? "own" : "group");
  if (found) await press(id, found.message, found.button);
}
