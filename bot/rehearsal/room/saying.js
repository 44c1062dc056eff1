// What is said beside the record: a slip of paper for a while, and the one live region.

const SHOWN_MS = 7000;
const region = document.getElementById("said");
const slips = document.getElementById("toasts");

export function announce(words) {
  region.textContent = words;
}

export function say(words) {
  const slip = document.createElement("p");
  slip.textContent = words;
  slips.append(slip);
  setTimeout(() => slip.remove(), SHOWN_MS);
  announce(words);
}
