// Times as somebody in the chosen place reads them.

const chosen = document.getElementById("clock");

export function hour(moment) {
  return told(moment, { hour: "2-digit", minute: "2-digit" });
}

export function dayAndHour(moment) {
  return told(moment, { weekday: "short", day: "numeric", month: "short", hour: "2-digit", minute: "2-digit" });
}

export function whenChosen(redraw) {
  chosen.onchange = redraw;
}

function told(moment, parts) {
  return new Date(moment).toLocaleString("en-GB", { ...parts, timeZone: chosen.value });
}
