// Points at what a stop of the tour speaks of. The page may still be on its way: it is waited for a little.

let pointed = null;
let waiting = 0;

export function point(selector) {
  clearTimeout(waiting);
  pointed?.classList.remove("pointed");
  pointed = null;
  if (selector) look(selector, 30);
}

function look(selector, times) {
  const part = document.querySelector(selector);
  if (part && !part.hidden) {
    pointed = part;
    part.classList.add("pointed");
    part.scrollIntoView({ block: "nearest", behavior: matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth" });
  } else if (times > 0) {
    waiting = setTimeout(() => look(selector, times - 1), 100);
  }
}
