// The room: one person's chats, live. It hears the feed, keeps what was chosen, and draws what changed.
import { follow } from "./acting.js";
import { key, make, redraw } from "./dom.js";
import { enter, keep, kept } from "./keeping.js";
import { drawLevers, stateOf, trouble } from "./levers.js";
import { pane } from "./pane.js";
import { headOf } from "./people.js";
import { announce, say } from "./saying.js";
import { drawTries } from "./tries.js";
import { day, dayAndHour, hour, now, take as takeClock, whenChosen } from "./when.js";
import { chat, groupsOf, isAdmin, labelOf, look, looked, person, take, takeCast, unread, world } from "./world.js";

const $ = (id) => document.getElementById(id);
const both = matchMedia("(min-width: 64rem)");
const WITHIN_MS = 15_000;
const AT_ONCE = 40;
const TURNS_MS = 2000;
const SPOKEN = new Set(["text", "photo", "voice", "document"]);

let me = null;
let pressedAt = -Infinity;
let old = 0; // how much of what is told now was said before the visitor came in

const head = (where) => headOf(where, become);
const back = () => { view("chats"); history.replaceState(null, "", "#"); $("chats").querySelector("button")?.focus(); };
const opens = () => show("own");
const own = pane($("own"), { slot: "own", head, back, opens, behind });
const group = pane($("group"), { slot: "group", head, back, opens, behind });
const panes = { own, group };

// who one is, and what is in view

function be(id) {
  if (!id) return;
  me = id;
  keep("me", id);
  settle();
}

// Somebody else by a tap that said so: it is seen and heard who one is now.
function become(id, name = person(id)?.name) {
  if (!id || id === me) return;
  be(id);
  say(`You are ${name} now.`);
  const { classList } = $("me").parentElement;
  classList.add("turned");
  setTimeout(() => classList.remove("turned"), TURNS_MS);
}

// The chats of whoever one is; with nobody chosen yet, of the first there is. Somebody new may not be there yet.
function settle() {
  const chosen = person(kept("me", world.people[0]?.id));
  if (!chosen) return;
  me = chosen.id;
  const groups = groupsOf(me);
  const wanted = groups.find(({ id }) => id === kept("group")) ?? groups[0];
  own.move(me, me);
  $("group").hidden = !wanted;
  if (wanted) group.move(wanted.id, me);
  draw();
}

function view(name) {
  document.body.dataset.view = name;
  keep("view", name);
}

function show(slot, id) {
  if (slot === "group" && id) { keep("group", id); settle(); }
  view(slot);
  if (!both.matches) history.pushState(null, "", `#${slot}`);
  panes[slot].section.focus({ preventScroll: true });
  seen();
  draw();
}

// At a desk time and trouble open above the chats. On a small screen they are a view of their own, and one comes back to
// where one was.
function behind() {
  if (both.matches) return unfold(!kept("behind", false));
  view("behind");
  history.pushState({ comesBack: true }, "", "#behind");
  return $("from-behind").focus();
}

function unfold(open) {
  keep("behind", open);
  document.body.dataset.behind = open ? "open" : "folded";
  $("to-behind").setAttribute("aria-expanded", String(open));
}

function fromBehind() {
  if (history.state?.comesBack) history.back();
  else back();
}

const inView = (slot) => both.matches ? !panes[slot].section.hidden : document.body.dataset.view === slot;

function seen() {
  if (document.hidden) return;
  for (const slot of ["own", "group"]) if (inView(slot) && panes[slot].where.chat) look(me, panes[slot].where.chat);
}

// drawing

const stale = new Set(); // panes whose record grew by more than is added one by one
let isDue = false;

function draw() {
  if (isDue) return;
  isDue = true;
  requestAnimationFrame(drawNow);
}

function drawNow() {
  isDue = false;
  for (const slot of stale) panes[slot].redraw();
  stale.clear();
  seen();
  drawMe();
  drawChats();
  drawTime();
  drawLevers($("levers"), draw);
  drawTries($("tries"), { be: become, show });
  for (const one of Object.values(panes)) if (one.where.chat) one.drawHead();
}

function drawMe() {
  const coaches = (id) => world.groups.some((one) => isAdmin(one, id));
  const options = world.people.map(({ id, name }) => {
    const news = id !== me && kept("seen", {})[`${id}:${id}`] !== undefined ? unread(id, id) : 0;
    return [String(id), (coaches(id) ? `${name}, coach` : name) + (news ? ` (${news} new)` : "")];
  });
  const drawn = JSON.stringify([options, me]);
  if ($("me").dataset.drawn === drawn) return;
  $("about").textContent = coaches(me) ? "" : person(me)?.about ?? "";
  $("me").dataset.drawn = drawn;
  $("me").replaceChildren(...options.map(([id, words]) => new Option(words, id, false, Number(id) === me)));
}

function drawChats() {
  const rows = [me, ...groupsOf(me).map(({ id }) => id)].filter(Boolean);
  redraw($("chats"), rows.map((id) => {
    const slot = id > 0 ? "own" : "group";
    const news = unread(me, id);
    const button = key("", () => show(slot, id), { className: "key chat" });
    button.dataset.key = `chat ${id}`;
    if (inView(slot) && panes[slot].where.chat === id) button.setAttribute("aria-current", "true");
    button.append(make("span", { className: "name" }, labelOf(id), id > 0 ? make("small", {}, ` @${world.handle}`) : ""),
      news ? make("span", { className: "news" }, looked(me, id) ? `${news} new` : "new") : "",
      make("span", { className: "last" }, lastWords(id)));
    return make("li", {}, button);
  }));
}

function lastWords(id) {
  const place = chat(id);
  const last = place.record.findLast((item) => SPOKEN.has(place.messages.get(item.id)?.kind));
  if (!last) return "nothing said yet";
  const message = place.messages.get(last.id);
  if (!message.text) return `${hour(message.sent)} ${message.who}: a ${message.kind}`;
  return `${hour(message.sent)} ${message.person === me ? "You" : message.who}: ${message.text.split("\n")[0]}`;
}

function drawTime() {
  if (!world.people.length) return;
  $("clock").textContent = dayAndHour(now());
  const state = world.backstage ? stateOf(world.backstage) : "";
  $("state").textContent = state || "time and trouble";
  const wrong = Boolean(state) && !world.backstage.playing;
  for (const one of [$("to-behind"), own.beside, group.beside]) one.classList.toggle("wrong", wrong);
  for (const one of [own, group]) one.beside.textContent = `${hour(now())} · ${state || "time, trouble"}`;
  for (const one of [own, group]) one.turn(day(now()));
  const scene = world.scenes.at(-1);
  const plays = world.backstage?.playing && scene;
  const words = [
    plays ? `The day plays, ${world.scenes.length}: “${scene.title}” ${scene.point}` : "",
    world.backstage ? trouble(world.backstage) : "",
  ].filter(Boolean).join(" ");
  $("playing").hidden = !words;
  if ($("playing").textContent !== words) { $("playing").textContent = words; $("playing").title = words; }
}

// hearing

function happened(happenings) {
  const more = happenings.map((one) => [one, take(one)]);
  for (const slot of ["own", "group"]) {
    const mine = more.filter(([, change]) => change?.chat.id === panes[slot].where.chat);
    if (mine.length > AT_ONCE) stale.add(slot);
    if (!stale.has(slot)) for (const [, change] of mine) panes[slot].take(change);
  }
  for (const one of happenings) if (one.kind === "toast" && one.person === me) toast(one);
  tell(more);
  old -= happenings.length;
  if (old <= 0 && old + happenings.length > 0) seenByAll();
  draw();
}

// What was said before the visitor came in is news to nobody.
function seenByAll() {
  for (const { id } of world.people) for (const place of [id, ...groupsOf(id).map((one) => one.id)]) look(id, place);
}

function toast({ detail, url, at }) {
  if (now() - Date.parse(at) > WITHIN_MS && performance.now() - pressedAt > WITHIN_MS) return;
  if (detail) say(detail);
  // Only who pressed here opens what the answer leads to; the day's players open it themselves.
  if (url && performance.now() - pressedAt < WITHIN_MS) { follow(me, url); show("own"); }
}

// One polite word of what came, for those who don't see it come.
function tell(more) {
  const heard = more.map(([one, change]) => ({ one, change }))
    .filter(({ one, change }) => change && one.kind !== "press" && one.kind !== "delete" && one.person !== me)
    .filter(({ change }) => ["own", "group"].some((slot) => inView(slot) && panes[slot].where.chat === change.chat.id));
  if (!heard.length) return;
  const { one } = heard.at(-1);
  announce(heard.length > 3 ? `${heard.length} new messages` : `${one.who}: ${one.message.text.slice(0, 300)}`);
}

function listen() {
  const feed = new EventSource("/room/feed?place=0");
  const on = (name, doing) => feed.addEventListener(name, (event) => doing(JSON.parse(event.data)));
  on("room", ({ id, entries }) => {
    if (listen.room && listen.room !== id) location.reload();
    listen.room = id;
    old = enter(id) ? entries : 0;
  });
  on("cast", (cast) => { takeCast(cast); settle(); draw(); });
  on("clock", (clock) => { takeClock(clock); draw(); });
  on("scenes", (scenes) => { world.scenes = scenes; drawTime(); });
  on("backstage", (backstage) => { world.backstage = backstage; draw(); });
  on("happened", happened);
  let lost = false;
  feed.onerror = () => { if (!lost) say("The room is closed, or starts anew. This page waits for it."); lost = true; };
  feed.onopen = () => { lost = false; };
}

document.addEventListener("click", (event) => {
  if (event.target.closest(".keys, .try")) pressedAt = performance.now();
  for (const open of document.querySelectorAll("details.tools[open], details.who-is-in[open], .lever details[open]")) {
    if (!open.contains(event.target)) open.open = false;
  }
});
document.addEventListener("keydown", (event) => {
  const open = event.key === "Escape" && event.target.closest("details[open]");
  if (open) { open.open = false; open.querySelector("summary").focus(); }
});
$("me").addEventListener("change", () => be(Number($("me").value)));
$("to-behind").addEventListener("click", behind);
$("from-behind").addEventListener("click", fromBehind);
$("fold-behind").addEventListener("click", () => { unfold(false); $("to-behind").focus(); });
window.addEventListener("popstate", () => {
  const was = document.body.dataset.view;
  view(location.hash.slice(1) || "chats");
  if (was === "behind") (panes[document.body.dataset.view]?.beside ?? $("to-behind")).focus();
  draw();
});
document.addEventListener("visibilitychange", () => draw());
both.addEventListener("change", () => draw());
whenChosen(() => { own.redraw(); group.redraw(); draw(); });
setInterval(drawTime, 1000);
view(location.hash.slice(1) || kept("view", "chats"));
unfold(kept("behind", false));
listen();
