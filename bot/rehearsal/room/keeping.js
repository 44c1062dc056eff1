// What the visitor chose, kept over a reload; another room begins anew.

const NAME = "rehearsal-room";
let all = read();

function read() {
  try {
    return JSON.parse(localStorage.getItem(NAME)) ?? {};
  } catch {
    return {};
  }
}

// Whether it is entered for the first time.
export function enter(room) {
  if (all.room === room) return false;
  all = { room };
  write();
  return true;
}

export const kept = (name, otherwise) => all[name] ?? otherwise;

export function keep(name, value) {
  all[name] = value;
  write();
}

function write() {
  try {
    localStorage.setItem(NAME, JSON.stringify(all));
  } catch { /* a browser that keeps nothing: the choice lasts as long as the page */ }
}
