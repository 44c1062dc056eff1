// Elements, made and put in place. Words of people are only ever set as text, never as markup.

export function make(tag, details = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(details)) {
    if (value === undefined || value === null || value === false) continue;
    if (typeof value === "function") element.addEventListener(name, value);
    else if (name in element && name !== "list") element[name] = value;
    else element.setAttribute(name, value);
  }
  element.append(...children.filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}

export function key(label, click, details = {}) {
  return make("button", { type: "button", className: "key", click, ...details }, label);
}

// Puts other children in place; who had the focus by its data-key, or was within, has it afterwards.
export function redraw(container, ...children) {
  const fresh = children.flat().filter(Boolean);
  const drawn = fresh.map((child) => child.outerHTML).join("");
  if (container.drawn === drawn) return; // a button that is replaced under a finger loses the tap
  container.drawn = drawn;
  const focused = container.contains(document.activeElement) ? document.activeElement : null;
  const open = new Set([...container.querySelectorAll("details[open]")].map((one) => one.dataset.key));
  container.replaceChildren(...fresh);
  for (const one of container.querySelectorAll("details")) if (open.has(one.dataset.key)) one.open = true;
  if (focused === null || focused === container) return;
  const again = focused.dataset.key
    && [...container.querySelectorAll("[data-key]")].find((one) => one.dataset.key === focused.dataset.key);
  const next = again || container.querySelector("button, select, [tabindex]") || container;
  next.focus({ preventScroll: true });
}

