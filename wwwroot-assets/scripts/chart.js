// Looking at a chart: nearer, farther, along, all of it. By wheel, drag, pinch, buttons and keys.

export function open(frame, keyPlace) {
  return new Chart(frame, keyPlace);
}

// The key is drawn under the fabric, for print. On the screen it stands apart, as large as the words around it, however near one looks.
function moveKey(svg, place) {
  place.replaceChildren();
  const first = svg?.querySelector("g.key");
  if (!first) return;
  const parts = [];
  for (let part = first; part; part = part.nextElementSibling) parts.push(part);
  const key = svg.cloneNode(false);
  key.append(svg.querySelector("style").cloneNode(true), ...parts);
  for (const name of ["role", "aria-labelledby"]) key.removeAttribute(name);
  place.append(key);
  const { x, y, width, height } = key.getBBox();
  const pixels = 1.5; // for each unit of the drawing: its words are 9 units high
  key.setAttribute("viewBox", `${x - 2} ${y - 2} ${width + 4} ${height + 4}`);
  key.setAttribute("width", (width + 4) * pixels);
  key.setAttribute("height", (height + 4) * pixels);
}

class Chart {
  constructor(frame, keyPlace) {
    this.frame = frame;
    this.keyPlace = keyPlace;
    this.stop = new AbortController();
    this.pointers = new Map();
    const on = (name, act, more) => frame.addEventListener(name, act, { signal: this.stop.signal, ...more });
    on("keydown", e => this.key(e));
    on("wheel", e => this.wheel(e), { passive: false });
    on("pointerdown", e => this.down(e));
    on("pointermove", e => this.move(e));
    on("pointerup", e => this.up(e));
    on("pointerleave", e => this.hover({ target: frame }));
    on("pointercancel", e => this.pointers.delete(e.pointerId));
    window.addEventListener("studio:caret", e => this.light(e.detail.at), { signal: this.stop.signal });
    this.refresh();
  }

  // Another drawing has come: whoever looked at all of it sees all of the new one, whoever looked nearer stays where they were.
  refresh() {
    const near = this.seen && this.fabric && this.seen.width < this.fabric.width * .99;
    moveKey(this.svg, this.keyPlace);
    this.fabric = null;
    this.symbols = [...this.svg?.querySelectorAll("[data-from]") ?? []].map(symbol => ({ symbol, from: Number(symbol.dataset.from), to: Number(symbol.dataset.to) }));
    this.lit = null;
    this.lined = false;
    this.showFound();
    if (near) this.show();
    else this.fit();
  }

  dispose() { this.stop.abort(); }

  // The rows as drawn, for a list to jump from.
  rows() {
    return [...this.svg?.querySelectorAll("g[id][aria-label]:not(.key)") ?? []].map(row => ({ id: row.id, label: row.getAttribute("aria-label") }));
  }

  // Brings a row into view, as near as it fits.
  jump(id) {
    const row = this.svg?.getElementById(id);
    const whole = this.whole();
    if (!row || !whole?.width) return;
    const { x, y, width, height } = row.getBBox();
    const frame = this.frame.getBoundingClientRect();
    const shape = frame.width / Math.max(1, frame.height);
    const wide = Math.max(width * 1.1, height * shape * 1.6, whole.width / 200);
    this.seen = { x: x + (width - wide) / 2, y: y + (height - wide / shape) / 2, width: wide, height: wide / shape };
    this.show();
    for (const other of this.svg.querySelectorAll("g.jumped")) other.classList.remove("jumped");
    row.classList.add("jumped");
  }

  // What was found in the words shows at the stitches that those words make.
  found(findings) {
    this.findings = findings;
    this.showFound();
  }

  showFound() {
    for (const { symbol, from, to } of this.symbols ?? [])
      symbol.classList.toggle("found", (this.findings ?? []).some(finding => from < Math.max(finding.to, finding.from + 1) && finding.from < to));
  }

  get svg() { return this.frame.querySelector("svg"); }

  whole() {
    const svg = this.svg;
    if (!svg) return null;
    if (!this.fabric?.width) {
      const { x, y, width, height } = svg.getBBox();
      const edge = Math.max(width, height) * .02;
      this.fabric = { x: x - edge, y: y - edge, width: width + 2 * edge, height: height + 2 * edge };
    }
    return { ...this.fabric };
  }

  fit() {
    this.seen = this.whole();
    this.show();
  }

  show() {
    if (!this.seen) return;
    const { x, y, width, height } = this.seen;
    this.svg.setAttribute("viewBox", `${x} ${y} ${width} ${height}`);
    this.detail(width);
  }

  // From afar thousands of symbols are a grey surface and slow to move: each row is one line then.
  detail(width) {
    const far = this.symbols.length > 1500 && this.frame.clientWidth * 10 / width < 5;
    if (far && !this.lined) this.line();
    this.svg.classList.toggle("far", far);
  }

  line() {
    this.lined = true;
    for (const row of this.svg.querySelectorAll("g[id][aria-label]:not(.key)")) {
      const places = [...row.querySelectorAll("path[data-from]")].map(symbol => /^M(-?[\d.]+) (-?[\d.]+)/.exec(symbol.getAttribute("d"))).filter(Boolean);
      if (places.length < 2) continue;
      const line = document.createElementNS("http://www.w3.org/2000/svg", "polyline");
      line.setAttribute("class", "row-line");
      line.setAttribute("points", places.map(([, x, y]) => `${x},${y}`).join(" "));
      row.append(line);
    }
  }

  ensure() { if (!this.seen?.width) this.fit(); return this.seen; }

  nearer(factor, point) {
    if (!this.ensure()) return;
    const whole = this.whole(), s = this.seen;
    const width = Math.min(whole.width * 1.5, Math.max(whole.width / 200, s.width / factor));
    const by = width / s.width;
    const at = point ?? { x: s.x + s.width / 2, y: s.y + s.height / 2 };
    this.seen = { x: at.x - (at.x - s.x) * by, y: at.y - (at.y - s.y) * by, width, height: s.height * by };
    this.show();
  }

  along(dx, dy) {
    if (!this.ensure()) return;
    const whole = this.whole(), s = this.seen;
    const within = (value, least, most) => Math.min(most, Math.max(least, value));
    s.x = within(s.x + dx, whole.x - s.width * .8, whole.x + whole.width - s.width * .2);
    s.y = within(s.y + dy, whole.y - s.height * .8, whole.y + whole.height - s.height * .2);
    this.show();
  }

  point(e) {
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(this.svg.getScreenCTM().inverse());
    return { x: p.x, y: p.y };
  }

  wheel(e) {
    if (!this.svg || !(e.ctrlKey || e.metaKey || document.activeElement === this.frame)) return;
    e.preventDefault();
    this.nearer(e.deltaY < 0 ? 1.15 : 1 / 1.15, this.point(e));
  }

  down(e) {
    if (!this.ensure()) return;
    this.pointers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    this.pressed = { x: e.clientX, y: e.clientY, on: e.target.closest?.("[data-from]") };
    this.frame.setPointerCapture(e.pointerId);
  }

  // A press that did not move asks for the words of a symbol.
  up(e) {
    this.pointers.delete(e.pointerId);
    const { x, y, on } = this.pressed ?? {};
    if (!on || Math.hypot(e.clientX - x, e.clientY - y) > 4) return;
    window.dispatchEvent(new CustomEvent("studio:words", { detail: { from: Number(on.dataset.from), to: Number(on.dataset.to) } }));
  }

  // The symbols that the words at the cursor make.
  light(at) {
    if (at === this.lit) return;
    this.lit = at;
    for (const { symbol, from, to } of this.symbols ?? []) symbol.classList.toggle("here", from <= at && at < to);
  }

  // The symbol under the pointer and its words light up together.
  hover(e) {
    const on = e.target.closest?.("[data-from]");
    const from = on ? Number(on.dataset.from) : -1;
    if (from === this.hovered) return;
    this.hovered = from;
    this.light(from);
    window.dispatchEvent(new CustomEvent("studio:hover", { detail: on ? { from, to: Number(on.dataset.to) } : null }));
  }

  move(e) {
    const last = this.pointers.get(e.pointerId);
    if (!last) this.hover(e);
    if (!last || !this.svg) return;
    const unit = 1 / this.svg.getScreenCTM().a;
    const apart = () => { const [a, b] = [...this.pointers.values()]; return Math.hypot(a.x - b.x, a.y - b.y); };
    const before = this.pointers.size === 2 ? apart() : 0;
    this.pointers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    if (before > 0) this.nearer(apart() / before);
    else this.along((last.x - e.clientX) * unit, (last.y - e.clientY) * unit);
  }

  key(e) {
    if (!this.ensure() || e.ctrlKey || e.metaKey || e.altKey) return;
    const step = this.seen.width / 8;
    const acts = {
      "+": () => this.nearer(1.25), "=": () => this.nearer(1.25), "-": () => this.nearer(.8), "0": () => this.fit(),
      ArrowLeft: () => this.along(-step, 0), ArrowRight: () => this.along(step, 0),
      ArrowUp: () => this.along(0, -step), ArrowDown: () => this.along(0, step),
    };
    if (!acts[e.key]) return;
    e.preventDefault();
    acts[e.key]();
  }
}
