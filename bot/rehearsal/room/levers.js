// Behind the stage: the time from one moment to the next, and what can go wrong, with what was saved.
import { act } from "./acting.js";
import { key, make, redraw } from "./dom.js";
import { near, nextMorning, now, runs } from "./when.js";
import { world } from "./world.js";

const LIMITS_S = 30;
let busy = false;

export function drawLevers(container, drawAgain) {
  const { backstage } = world;
  if (!backstage) return redraw(container, make("p", {}, "Here the bot is no process of the room's own, so its time and troubles are in other hands."));
  const doing = (label, name, details, more = {}) => {
    const button = key(label, async () => {
      busy = true;
      drawAgain();
      await act(name, details());
      busy = false;
      drawAgain();
    }, more);
    button.dataset.key = `lever ${name} ${more.part ?? ""}`;
    button.setAttribute("aria-disabled", String(busy));
    return button;
  };
  return redraw(container, time(backstage, doing), troubles(backstage, doing), saved(backstage));
}

function part(title, words, ...children) {
  return make("section", { className: "lever" }, make("h2", {}, title), make("p", {}, words), make("div", { className: "row" }, ...children.filter(Boolean)));
}

function time(backstage, doing) {
  if (backstage.playing) {
    return part("Time", "The day plays and moves the time itself.", doing("Skip the rest", "skip_day", () => ({})));
  }
  const next = backstage.waits?.ahead.find((one) => Date.parse(one.at) > now());
  const words = busy ? "On its way, from one moment to the next." : runs() ? "It goes on by itself, as on your wall." : "It stands still, and so does every wait.";
  return part("Time", words,
    next ? doing(`On to ${near(next.at)}: ${next.what}`, "go_on", () => ({ to: next.at }), { part: "next" }) : null,
    doing(`On to ${near(nextMorning())}`, "go_on", () => ({ to: new Date(nextMorning()).toISOString() }), { part: "morning" }),
    doing("An hour on", "go_on", () => ({ to: new Date(now() + 3_600_000).toISOString() }), { part: "hour" }),
    doing(runs() ? "Stop the time" : "Let it run", "let_it_run", () => ({ runs: !runs() })));
}

// What can go wrong, a line each: its lever, and how it is.
function troubles(backstage, doing) {
  const { bot: state, network: whole, limits_until: until } = backstage;
  const bot = { up: "Bellwether runs.", starting: "Bellwether starts; that takes some seconds.", down: "Bellwether is down." }[state];
  return make("section", { className: "lever" }, make("h2", {}, "Trouble"), make("ul", {},
    line(bot, state === "down"
      ? doing("Start it again", "start_bot", () => ({}), { part: "bot" })
      : doing("Kill the bot", "kill_bot", () => ({}), { part: "bot" })),
    line(whole ? "The network holds." : "The network is cut.", whole
      ? doing("Cut the network", "cut_network", () => ({}), { part: "network" })
      : doing("Mend it", "mend_network", () => ({}), { part: "network" })),
    line(until ? `Nothing goes out until ${near(until)}.` : "Answers go out as fast as allowed.",
      doing(`Let nothing out for ${LIMITS_S} s`, "use_up_limits", () => ({ seconds: LIMITS_S })))));
}

const line = (words, lever) => make("li", {}, make("span", {}, words), lever);

// The same in a word or two, beside the time.
export function stateOf({ bot: state, network: whole, limits_until: until, playing }) {
  if (state === "down") return "the bot is down";
  if (!whole) return "the network is cut";
  if (until) return "nothing goes out";
  if (state === "starting") return "the bot starts";
  return playing ? "the day plays" : "";
}

// What stands in the way just now, for whoever doesn't see the levers.
export function trouble({ bot: state, network: whole, limits_until: until }) {
  if (state === "down") return "Bellwether is down: what you write waits for it.";
  if (state === "starting") return "Bellwether starts.";
  if (!whole) return "The network is cut: what you write waits.";
  return until ? `Nothing goes out until ${near(until)}, as if too much had been sent: answers wait.` : "";
}

function saved(backstage) {
  const { waits } = backstage;
  if (!waits) return part("On its disk", "Nothing yet.");
  const { kept, updates, letters, ahead } = waits;
  const lines = [
    `Kept: ${many(kept.people, "person", "people")}, ${many(kept.sessions, "session")}, ${many(kept.scores, "score")}.`,
    `Said and not yet fetched: ${backstage.unheard ?? 0}.`,
    `Heard and not yet handled: ${updates}.${updates ? because(backstage, "bot") : ""}`,
    `Written and not yet sent: ${letters}.${letters ? because(backstage, "limits_until") : ""}`,
  ];
  const section = make("section", { className: "lever" }, make("h2", {}, "On its disk, up or down"),
    make("ul", { className: "saved" }, ...lines.map((line) => make("li", {}, line))));
  if (!ahead.length) return section;
  const details = make("details", {}, make("summary", {}, `Ahead: ${near(ahead[0].at)}, ${ahead[0].what}`),
    make("ul", { className: "saved menu" }, ...ahead.map((one) => make("li", {}, `${near(one.at)}: ${one.what}`))));
  details.dataset.key = "ahead";
  section.append(details);
  return section;
}

const many = (number, one, more = `${one}s`) => `${number} ${number === 1 ? one : more}`;

function because(backstage, what) {
  if (backstage.bot !== "up") return " It waits for the bot.";
  if (!backstage.network) return " It waits for the network.";
  if (what === "limits_until" && backstage.limits_until) return ` It waits until ${near(backstage.limits_until)}, for room.`;
  return "";
}
