// The shelf of designs by keys: arrows walk from design to design, the space bar picks one, Delete asks the bar below for it.

const watched = new WeakSet();

export function view() {
  try { return localStorage.getItem("shelf-view"); } catch { return null; }
}

export function remember(name) {
  try { localStorage.setItem("shelf-view", name); } catch { /* private window: the address alone keeps it */ }
}

export function toTop() { window.scrollTo({ top: 0 }); }

export function watch(shelf) {
  if (!shelf || watched.has(shelf)) return;
  watched.add(shelf);
  shelf.addEventListener("keydown", e => press(shelf, e));
  shelf.dataset.keys = "heard";
}

const links = shelf => [...shelf.querySelectorAll("h2 a, a.design-link")];
const itemOf = element => element.closest("article, tr");

function press(shelf, e) {
  if ((e.ctrlKey || e.metaKey) && e.key.toLowerCase() === "a") return act(e, "[data-pick-page]");
  if (e.ctrlKey || e.metaKey || e.altKey) return;
  if (e.key === "Delete") return act(e, "[data-delete]");
  if (e.key === "Escape") return act(e, "[data-put-back]");
  const item = itemOf(e.target);
  if (e.key === "/") { e.preventDefault(); document.querySelector(".search input")?.focus(); return; }
  if (!item) return;
  if (e.key === " " && e.target.tagName === "A") { e.preventDefault(); item.querySelector("input[type=checkbox]").click(); return; }
  const to = next(links(shelf), item, e.key);
  if (to) { e.preventDefault(); to.focus(); to.scrollIntoView({ block: "nearest" }); }
}

function act(e, what) {
  const button = document.querySelector(what);
  if (button) { e.preventDefault(); button.click(); }
}

// Cards stand in a grid whose columns come and go with the window: up and down go to the nearest one in the next row.
function next(all, item, key) {
  const at = all.findIndex(link => itemOf(link) === item);
  if (key === "Home") return all[0];
  if (key === "End") return all[all.length - 1];
  if (key === "ArrowRight") return all[at + 1];
  if (key === "ArrowLeft") return all[at - 1];
  if (key !== "ArrowDown" && key !== "ArrowUp") return null;
  const here = item.getBoundingClientRect();
  const way = key === "ArrowDown" ? all.slice(at + 1) : all.slice(0, Math.max(at, 0)).reverse();
  const rows = way.filter(link => Math.abs(itemOf(link).getBoundingClientRect().top - here.top) > 4);
  if (rows.length === 0) return null;
  const top = itemOf(rows[0]).getBoundingClientRect().top;
  return rows.filter(link => Math.abs(itemOf(link).getBoundingClientRect().top - top) < 4)
    .sort((a, b) => aside(a, here) - aside(b, here))[0];
}

const aside = (link, here) => Math.abs(itemOf(link).getBoundingClientRect().left - here.left);
