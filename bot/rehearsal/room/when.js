// Times as somebody in the chosen place reads them, and the time of the room as it goes on.
import { kept, keep } from "./keeping.js";

const chosen = document.getElementById("zone");
let set = { moment: 0, runs: false, at: 0 };

export const hour = (moment) => told(moment, { hour: "2-digit", minute: "2-digit" });
export const day = (moment) => told(moment, { weekday: "long", day: "numeric", month: "long" });
export const dayAndHour = (moment) =>
  `${told(moment, { weekday: "short", day: "numeric", month: "short" })}, ${hour(moment)}`;

// The hour alone today, with its day else.
export const near = (moment) => (day(moment) === day(now()) ? hour(moment) : dayAndHour(moment));

export function take(clock) {
  set = { moment: Date.parse(clock.moment), runs: clock.runs, at: performance.now() };
}

export const runs = () => set.runs;
export const now = () => set.moment + (set.runs ? performance.now() - set.at : 0);

// The moment of the next 06:00 in the chosen place: an hour at a time, so that changes of the clocks are minded.
export function nextMorning() {
  const step = 15 * 60_000;
  let moment = Math.ceil((now() + 60_000) / step) * step;
  while (hour(moment) !== "06:00") moment += step;
  return moment;
}

export function whenChosen(redraw) {
  chosen.value = kept("zone", "Europe/Oslo");
  chosen.addEventListener("change", () => {
    keep("zone", chosen.value);
    redraw();
  });
}

function told(moment, parts) {
  return new Date(moment).toLocaleString("en-GB", { ...parts, timeZone: chosen.value || "Europe/Oslo" });
}
