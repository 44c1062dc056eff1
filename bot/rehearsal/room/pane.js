// A chat on the page: its record, newest below, and where one writes. Long records show their end first; an answer that is
// longer than the page is shown from its beginning.
import { act } from "./acting.js";
import { make, redraw } from "./dom.js";
import { entry } from "./entry.js";
import { day } from "./when.js";
import { chat, groupsOf, isAdmin, labelOf, world } from "./world.js";
import { writer } from "./writing.js";

const SHOWN = 120;
const MOST_DRAWN = 3 * SHOWN;
const NEAR_END_PX = 80;
const KEY_SHOWS_PX = 24;
// What comes within that time of one's own words or tap is their answer, and read from its first entry.
const ANSWERED_WITHIN_MS = 15_000;

// `slot`: "own" or "group"; `head(where)`: what stands in the chat's head beside its name; `opens`: goes to one's own chat;
// `behind`: to time and trouble.
export function pane(section, { slot, head, back, opens, behind }) {
  const where = { slot, chat: null, person: null };
  const title = make("h2", {});
  const handle = make("small", {});
  const beside = make("button", { type: "button", className: "plain beside", click: behind }, "");
  const more = make("div", { className: "more" });
  const list = make("ol", { className: "record", tabIndex: -1 });
  const earlier = make("button", { type: "button", className: "plain earlier", hidden: true, click: showEarlier }, "Show what came before");
  const start = make("button", { type: "button", className: "key strong start", hidden: true, click: begin }, "Start");
  const below = make("button", { type: "button", className: "key below", hidden: true, click: down }, "");
  const scroll = make("div", { className: "scroll" }, earlier, start, list);
  const writing = writer({ where, asked });
  const backwards = make("button", { type: "button", className: "key back", title: "Your chats, and who you are", click: back }, "‹ Chats");
  section.append(make("div", { className: "head" }, backwards, make("div", { className: "named" }, title, handle, beside), more),
    scroll, below, writing.form);
  let from = 0;
  let current = null;
  let pinned = true; // whoever reads further up is left there; all others see the newest
  let newest = null; // the entry whose beginning stays in view
  let askedAt = -Infinity;
  let unseen = 0;
  let measured = "";
  let today = "";
  const size = () => `${scroll.clientHeight} of ${scroll.scrollHeight}`;
  // What moves because a size changed was moved by nobody.
  scroll.addEventListener("scroll", () => {
    if (size() === measured) pinned = atEnd() || atNewest();
    if (atEnd()) unseen = 0;
    hint();
  });
  const sizes = new ResizeObserver(() => {
    measured = size();
    if (pinned) toNewest();
    if (atEnd()) unseen = 0;
    hint();
  });
  sizes.observe(list);
  sizes.observe(scroll);

  const around = () => ({ chat: chat(where.chat), reader: where.person, opens, answer: writing.answer, change: writing.change });
  const atEnd = () => scroll.scrollHeight - scroll.scrollTop - scroll.clientHeight < NEAR_END_PX;
  const atNewest = () => Math.abs(scroll.scrollTop - restOfNewest()) < 2;
  const toNewest = () => { scroll.scrollTop = restOfNewest(); };

  // What came while somebody reads further up, and keys that an answer longer than the page has at its end, are one tap away.
  function hint() {
    const words = unseen && !atEnd() ? `${unseen} new below` : keysBelow();
    below.hidden = !words;
    if (below.textContent !== words) below.textContent = words;
  }

  function keysBelow() {
    const last = [...list.querySelectorAll(".entry .keys")].at(-1);
    if (!last?.querySelector(".key:not(.past)")) return "";
    const end = scroll.getBoundingClientRect().bottom - KEY_SHOWS_PX;
    if (last.getBoundingClientRect().top < end || last.closest(".entry").getBoundingClientRect().top > end) return "";
    const labels = [...last.querySelectorAll(".key")].map((one) => one.textContent);
    return `↓ ${labels.length === 1 ? "" : `${labels.length} keys: `}${labels.join(", ")}`;
  }

  function seenAll() {
    unseen = 0;
    hint();
  }

  function countUnseen() {
    if (!atEnd()) unseen += 1;
    hint();
  }

  function down() {
    newest = null;
    pinned = true;
    toNewest();
    seenAll();
    section.focus({ preventScroll: true });
  }

  // Keys of another day, those that stand again further down, and in one's own chat those of before one's last answer,
  // unless there are no newer ones, can be tapped still, and look past.
  function age() {
    const again = new Set();
    let answered = false;
    for (const one of [...list.children].toReversed()) {
      const labels = [...one.querySelectorAll(".keys .key")];
      for (const key of labels) {
        const past = one.dataset.day !== today || again.has(key.textContent) || (answered && again.size > 0);
        key.classList.toggle("past", past);
        key.title = past ? "Of an earlier message" : "";
      }
      for (const key of labels) again.add(key.textContent);
      answered ||= where.slot === "own" && one.matches(".mine, .tap");
    }
  }

  function turn(to) {
    if (to === today) return;
    today = to;
    age();
    hint();
  }

  // As far down as there is, and no further than the newest begins, below the date that stays above.
  function restOfNewest() {
    const end = scroll.scrollHeight - scroll.clientHeight;
    if (!newest?.isConnected) return end;
    const above = list.querySelector(".day")?.offsetHeight ?? 0;
    const begins = newest.getBoundingClientRect().top - scroll.getBoundingClientRect().top + scroll.scrollTop - above;
    return Math.max(0, Math.min(end, begins));
  }

  function asked() {
    askedAt = performance.now();
    newest = null;
    pinned = true;
  }

  function came(element, mine) {
    const answers = performance.now() - askedAt < ANSWERED_WITHIN_MS;
    if (!answers || (!mine && !newest?.isConnected)) newest = element;
  }

  function drawn(items) {
    const nodes = [];
    for (const item of items) {
      const moment = momentOf(item);
      const element = entry(item, around());
      if (!element) continue;
      element.dataset.day = day(moment);
      nodes.push(element);
    }
    return nodes;
  }

  const momentOf = (item) => item.at ?? chat(where.chat).messages.get(item.id)?.sent;

  // Puts a date above each entry whose day is another than that of the one before.
  function dated(nodes, before) {
    let last = before;
    return nodes.flatMap((node) => {
      const turned = node.dataset.day !== last;
      last = node.dataset.day;
      return turned ? [make("li", { className: "day" }, last), node] : [node];
    });
  }

  function redrawAll() {
    const { record } = chat(where.chat);
    from = Math.max(0, record.length - SHOWN);
    earlier.hidden = from === 0;
    list.replaceChildren(...dated(drawn(record.slice(from)), ""));
    age();
    emptyWord();
    reach(lastEntry());
    pinned = true;
    newest = null;
    toNewest();
    seenAll();
  }

  const lastEntry = () => [...list.querySelectorAll(".entry")].at(-1) ?? null;

  function emptyWord() {
    const empty = chat(where.chat).record.length === 0;
    list.dataset.empty = empty;
    start.hidden = !empty || where.chat < 0;
    start.textContent = withoutBot() ? "Add Bellwether to the group" : "Start";
  }

  // A group of theirs that they coach and the bot isn't in yet: it has nothing to say before.
  const withoutBot = () => groupsOf(where.person).find((one) => isAdmin(one, where.person) && !one.members[world.bot]);

  async function begin() {
    const missing = withoutBot();
    if (missing) await act("add_bot", { person: where.person, chat: missing.id });
    else await act("say", { person: where.person, chat: where.chat, text: "/start" });
    section.focus();
  }

  function showEarlier() {
    const { record } = chat(where.chat);
    const until = from;
    pinned = false;
    from = Math.max(0, from - SHOWN);
    earlier.hidden = from === 0;
    const height = scroll.scrollHeight;
    const first = list.querySelector("[data-day]");
    if (list.firstElementChild?.className === "day") list.firstElementChild.remove();
    const nodes = dated(drawn(record.slice(from, until)), "");
    if (nodes.at(-1)?.dataset.day !== first?.dataset.day) nodes.push(make("li", { className: "day" }, first?.dataset.day ?? ""));
    list.prepend(...nodes);
    age();
    scroll.scrollTop += scroll.scrollHeight - height;
    const next = [...list.querySelectorAll(".entry")][0];
    if (next) { reach(next); next.focus({ preventScroll: true }); }
  }

  function take({ what, item }) {
    if (what === "more") return add(item);
    const there = list.querySelector(`[data-message="${item.id}"]`);
    if (!there) return undefined;
    if (what === "gone") return remove(there);
    return replace(there, item);
  }

  function add(item) {
    if (pinned && list.childElementCount > MOST_DRAWN && !list.contains(document.activeElement)) return redrawAll();
    const last = list.lastElementChild?.dataset.day;
    const nodes = dated(drawn([item]), last ?? "");
    list.append(...nodes);
    age();
    emptyWord();
    const added = nodes.at(-1);
    if (added) came(added, chat(where.chat).messages.get(item.id)?.person === where.person);
    if (added && !pinned) countUnseen();
    if (added?.classList.contains("entry") && !list.contains(document.activeElement)) reach(added);
    return undefined;
  }

  function replace(there, item) {
    const [fresh] = drawn([item]);
    if (!fresh) return remove(there);
    const focused = there.contains(document.activeElement);
    fresh.dataset.day = there.dataset.day;
    there.replaceWith(fresh);
    age();
    if (current === there) reach(fresh);
    if (focused) fresh.focus({ preventScroll: true });
    if (newest === there) newest = fresh;
    return undefined;
  }

  function remove(there) {
    const next = there.previousElementSibling ?? there.nextElementSibling;
    const focused = there.contains(document.activeElement);
    there.remove();
    if (current === there) reach(lastEntry());
    if (focused) (next?.classList.contains("entry") ? next : list).focus({ preventScroll: true });
  }

  // One entry at a time can be reached with Tab, with all that is in it; arrows go from one to the next.
  function reach(element) {
    for (const one of tabbable(current)) one.tabIndex = -1;
    current = element;
    for (const one of tabbable(current)) one.tabIndex = 0;
  }

  const tabbable = (element) => (element ? [element, ...element.querySelectorAll("button, summary, a, audio")] : []);

  list.addEventListener("click", (event) => { if (event.target.closest(".keys")) asked(); });
  list.addEventListener("focusin", (event) => {
    const element = event.target.closest(".entry");
    if (element && element !== current) reach(element);
  });
  list.addEventListener("keydown", (event) => {
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    const here = event.target.closest(".entry");
    if (!step || !here || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const all = [...list.querySelectorAll(".entry")];
    const next = all[all.indexOf(here) + step];
    if (next) { reach(next); next.focus(); next.scrollIntoView({ block: "nearest" }); }
  });

  return {
    where,
    writing,
    section,
    take,
    beside,
    turn,
    redraw: redrawAll,
    drawHead() {
      redraw(more, head(where));
      emptyWord();
      title.textContent = labelOf(where.chat);
      handle.textContent = where.chat > 0 ? `@${world.handle}` : "";
    },
    move(id, person) {
      if (where.chat === id && where.person === person) return;
      Object.assign(where, { chat: id, person });
      this.drawHead();
      redrawAll();
      writing.move(labelOf(id), id > 0 ? "" : ", all of them");
    },
  };
}
