// Formatted words: the few marks that the platform knows, made anew one by one; anything else is plain text.
import { make } from "./dom.js";

const LONG = 70;
const MARKS = { B: "strong", I: "em", U: "u", S: "s", CODE: "code", PRE: "pre" };

export function rich(html) {
  const read = new DOMParser().parseFromString(html, "text/html");
  return copies(read.body);
}

// A quote stands on lines of its own, so the line ends beside it are no empty lines.
function copies(parent) {
  return [...parent.childNodes].map((node) => {
    const words = copy(node);
    if (typeof words !== "string") return words;
    const after = isQuote(node.previousSibling) ? words.replace(/^\n/, "") : words;
    return isQuote(node.nextSibling) ? after.replace(/\n$/, "") : after;
  });
}

const isQuote = (node) => node?.nodeName === "BLOCKQUOTE";

function copy(node) {
  if (node.nodeType === Node.TEXT_NODE) return node.data;
  const inside = copies(node);
  if (MARKS[node.tagName]) return make(MARKS[node.tagName], {}, ...inside);
  if (node.tagName === "BLOCKQUOTE") return quote(node, inside);
  if (node.tagName === "TG-SPOILER") return spoiler(inside);
  if (node.tagName === "A") return make("span", { className: "link", title: node.getAttribute("href") }, ...inside);
  return make("span", {}, ...inside);
}

function quote(node, inside) {
  if (!node.hasAttribute("expandable")) return make("blockquote", {}, ...inside);
  const [first, ...rest] = node.textContent.split("\n");
  if (!rest.length) return make("blockquote", {}, ...inside);
  const folded = make("details", { className: "folded" }, make("summary", {}, make("span", { className: "first" }, shortened(first)), make("span", { className: "less" }, "Fold it again")), make("blockquote", {}, ...inside));
  folded.dataset.key = `quote ${first}`;
  return folded;
}

const shortened = (line) => (line.length <= LONG ? line : `${line.slice(0, LONG).replace(/\s+\S*$/, "")} …`);

function spoiler(inside) {
  const folded = make("details", { className: "folded" }, make("summary", {}, "hidden: open to read"), ...inside);
  folded.dataset.key = "spoiler";
  return folded;
}
