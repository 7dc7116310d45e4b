// Looking at a chart: nearer, farther, along, all of it. By wheel, drag, pinch, buttons and keys; and from stitches to words and back.

import { unpack } from "./chart-scene.js";
import { Painter } from "./chart-paint.js";
import { toSvg } from "./chart-print.js";
import { Tiles } from "./chart-tiles.js";

export function open(frame, list, server) { return new Chart(frame, list, server); }

// A file that the server made of the drawing.
export async function save(name, stream, type) {
  const address = URL.createObjectURL(new Blob([await stream.arrayBuffer()], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name.replace(/[\\/:*?"<>|]+/g, "-");
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

const nearest = 60; // pixels of a stitch width beyond which nothing more is to be seen
const rest = 110; // milliseconds after which somebody has stopped zooming

class Chart {
  constructor(frame, list, server) {
    Object.assign(this, { frame, list, server, pointers: new Map(), findings: [], lit: [], rowsLit: [], caret: -1, stitch: -1, zoomedAt: -1000 });
    this.canvas = frame.querySelector(".chart-canvas");
    this.over = frame.querySelector(".chart-light");
    this.says = frame.querySelector(".chart-says");
    this.reads = frame.parentElement.querySelector("[role=status]");
    this.paper = frame.closest(".desk-page").querySelector(".chart-print");
    this.stop = new AbortController();
    const { signal } = this.stop;
    const on = (name, act, more) => frame.addEventListener(name, act, { signal, ...more });
    on("keydown", e => this.key(e));
    on("wheel", e => this.wheel(e), { passive: false });
    on("pointerdown", e => this.down(e));
    on("pointermove", e => this.move(e));
    on("pointerup", e => this.up(e));
    on("pointerleave", e => { if (e.pointerType === "mouse") this.point(-1); });
    on("pointercancel", e => this.pointers.delete(e.pointerId));
    list.addEventListener("change", () => this.jump(Number(list.value)), { signal });
    window.addEventListener("studio:caret", e => this.follow(e.detail.at), { signal });
    window.addEventListener("beforeprint", () => { this.paper.innerHTML = this.scene ? toSvg(this.scene) : ""; }, { signal });
    window.addEventListener("afterprint", () => this.paper.replaceChildren(), { signal });
    this.sizes = new ResizeObserver(() => this.resize());
    this.sizes.observe(frame);
    this.scheme = new MutationObserver(() => this.recolour());
    this.scheme.observe(document.documentElement, { attributes: true, attributeFilter: ["data-scheme"] });
    document.fonts?.ready.then(() => this.begin());
    this.recolour();
  }

  dispose() {
    this.stop.abort();
    this.sizes.disconnect();
    this.scheme.disconnect();
    cancelAnimationFrame(this.frameAsked);
    this.tell(-1);
  }

  // Another drawing has come: whoever looked at all of it sees all of the new one, whoever looked nearer stays where they were.
  async take(stream) {
    const scene = await unpack(await stream.arrayBuffer());
    const stays = this.scene && this.view && !this.whole;
    this.scene = scene;
    this.painter = new Painter(scene);
    this.begin();
    this.point(-1);
    this.frame.dataset.stitches = scene.count;
    this.listRows();
    this.placeFindings();
    this.follow(this.caret, true);
    if (stays) this.show();
    else this.fit();
  }

  // What was found in the words shows at the stitches that those words make, else at the end of the row that they call for.
  found(findings) {
    this.findings = findings;
    this.placeFindings();
    this.ask();
  }

  placeFindings() {
    const scene = this.scene;
    if (!scene) return;
    for (const finding of this.findings) {
      finding.stitches = scene.between(finding.from, Math.max(finding.to, finding.from + 1)).slice(0, 2000);
      const row = finding.stitches.length ? null : scene.rowsAt(finding.from)[0];
      if (row?.count) finding.stitches = [row.first + row.count - 1];
      const first = finding.stitches[0];
      finding.place = first >= 0 ? { x: scene.x[first], y: scene.y[first] }
        : row && !row.marksBox.empty ? { x: row.marksBox.right, y: (row.marksBox.top + row.marksBox.bottom) / 2 } : null;
    }
    this.frame.dataset.found = this.findings.filter(finding => finding.place).length;
  }

  listRows() {
    this.list.replaceChildren(new Option(this.list.dataset.none, -1), ...this.scene.rows.map((row, i) => new Option(row.says, i)));
    this.list.closest("label").hidden = this.scene.rows.length < 2;
  }

  // Brings a row into view, as near as it fits.
  jump(index) {
    const row = this.scene?.rows[index];
    if (!row) return;
    const { clientWidth: wide, clientHeight: high } = this.frame;
    const { left, top, right, bottom } = row.box;
    const scale = this.within(Math.min(wide / ((right - left) * 1.1 + 2), high / ((bottom - top) * 1.6 + 4), 32));
    // A row too long to be seen whole with its stitches is shown from where it begins.
    const near = Math.max(scale, Math.min(8, this.within(8)));
    const at = near > scale && row.count ? { x: this.scene.x[row.first], y: this.scene.y[row.first] } : { x: (left + right) / 2, y: (top + bottom) / 2 };
    this.whole = false;
    this.view = { scale: near, x: at.x - wide / near / 2, y: at.y - high / near / 2 };
    this.rowsLit = [row];
    this.show();
  }

  fit() {
    const { clientWidth: wide, clientHeight: high } = this.frame;
    if (!this.scene || !wide) return;
    const { left, top, right, bottom } = this.scene.box;
    this.whole = true;
    const scale = Math.min(nearest, wide / ((right - left) * 1.04 + 1), high / ((bottom - top) * 1.04 + 1));
    this.least = scale * .7;
    this.view = { scale, x: (left + right) / 2 - wide / scale / 2, y: (top + bottom) / 2 - high / scale / 2 };
    this.show();
  }

  within(scale) { return Math.min(nearest, Math.max(this.least ?? 0, scale)); }

  nearer(factor, point) {
    if (!this.view) return;
    const { clientWidth: wide, clientHeight: high } = this.frame, { scale, x, y } = this.view;
    const at = point ?? { x: x + wide / scale / 2, y: y + high / scale / 2 };
    const next = this.within(scale * factor);
    this.whole = false;
    if (point) this.zoomedAt = performance.now();
    this.view = { scale: next, x: at.x - (at.x - x) * scale / next, y: at.y - (at.y - y) * scale / next };
    this.along(0, 0);
  }

  // Along by pixels. Something of the chart always stays in view.
  along(dx, dy) {
    if (!this.view) return;
    const { clientWidth: wide, clientHeight: high } = this.frame, { scale } = this.view, { left, top, right, bottom } = this.scene.box;
    const clamp = (value, least, most) => Math.min(most, Math.max(least, value));
    if (dx || dy) this.whole = false;
    this.view.x = clamp(this.view.x + dx / scale, left - wide / scale * .8, right - wide / scale * .2);
    this.view.y = clamp(this.view.y + dy / scale, top - high / scale * .8, bottom - high / scale * .2);
    this.show();
  }

  show() { this.ask(true); }

  // One picture a frame, whatever happens meanwhile.
  ask(anew = false) {
    this.anew ||= anew;
    if (this.frameAsked) return;
    this.frameAsked = requestAnimationFrame(() => {
      this.frameAsked = 0;
      this.paint();
    });
  }

  paint() {
    const { clientWidth: wide, clientHeight: high } = this.frame;
    if (!this.scene || !wide) return;
    if (!this.view) return this.fit();
    const { x, y, scale } = this.view, box = this.scene.box;
    const view = { x, y, scale, ratio: this.ratio, area: { left: x, top: y, right: x + wide / scale, bottom: y + high / scale } };
    if (this.anew) {
      const edge = Math.max(box.right - box.left, box.bottom - box.top) * .03 + 1;
      const whole = { left: box.left - edge, top: box.top - edge, right: box.right + edge, bottom: box.bottom + edge };
      this.anew = false;
      if (!this.tiles.draw(this.canvas.getContext("2d"), view, whole, performance.now() < this.zoomedAt + rest)) this.ask(true);
      this.frame.dataset.level = this.painter.isNear(scale) ? "near" : "far";
    }
    this.light(this.clear(this.over), view);
  }

  // Nothing painted before is of use: another chart, other colours, another screen.
  begin() {
    if (this.scene) this.tiles = new Tiles(this.painter, this.colours, this.ratio);
    this.ask(true);
  }

  clear(canvas) {
    const context = canvas.getContext("2d");
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, canvas.width, canvas.height);
    return context;
  }

  // What is lit lies on a canvas of its own: the chart below need not be painted again for it.
  light(context, view) {
    const { here, error, warning, note, hereWash } = this.colours;
    this.painter.bands(context, view, this.rowsLit, hereWash);
    for (const finding of this.findings) if (finding.stitches?.length) this.painter.light(context, view, finding.stitches, { error, warning, note }[finding.tone], .22);
    if (this.lit.length) this.painter.light(context, view, this.lit, here, .2);
    if (this.stitch >= 0) this.ring(context, view, this.stitch, here);
    for (const finding of this.findings) if (finding.place) this.flag(context, view, finding);
    this.frame.dataset.lit = this.lit.length;
    this.frame.dataset.rows = this.rowsLit.length;
  }

  ring(context, view, stitch, colour) {
    const { x, y, form, formBoxes } = this.scene, b = formBoxes[form[stitch]];
    context.setTransform(view.ratio, 0, 0, view.ratio, 0, 0);
    context.strokeStyle = colour;
    context.lineWidth = 2;
    const [left, top] = [(x[stitch] + b.left - view.x) * view.scale, (y[stitch] + b.top - view.y) * view.scale];
    const [wide, high] = [(b.right - b.left) * view.scale, (b.bottom - b.top) * view.scale];
    context.beginPath();
    context.roundRect(left - 4, top - 4, wide + 8, high + 8, 5);
    context.stroke();
  }

  flag(context, view, finding) {
    const [x, y] = [(finding.place.x - view.x) * view.scale, (finding.place.y - view.y) * view.scale];
    context.setTransform(view.ratio, 0, 0, view.ratio, 0, 0);
    context.fillStyle = this.colours[finding.tone];
    context.beginPath();
    context.arc(x, y - 16, 9, Math.PI * .8, Math.PI * .2);
    context.lineTo(x, y - 2);
    context.closePath();
    context.fill();
    context.fillStyle = this.colours.paper;
    context.font = `700 13px ${this.colours.font}`;
    context.textAlign = "center";
    context.textBaseline = "middle";
    context.fillText("!", x, y - 15.5);
  }

  resize() {
    if (this.ratio !== window.devicePixelRatio) {
      this.ratio = window.devicePixelRatio || 1;
      this.begin();
    }
    for (const canvas of [this.canvas, this.over]) {
      canvas.width = Math.round(this.frame.clientWidth * this.ratio);
      canvas.height = Math.round(this.frame.clientHeight * this.ratio);
    }
    if (this.whole || !this.view) this.fit();
    else this.show();
    if (this.frame.clientWidth) this.paint(); // before the browser shows the emptied canvas
  }

  recolour() {
    const style = getComputedStyle(this.frame), own = name => style.getPropertyValue(`--${name}`).trim();
    this.colours = {
      first: own("tone-first"), second: own("tone-second"), foundation: own("tone-foundation"), gap: own("tone-gap"), paper: own("paper"),
      here: own("here"), hereWash: own("here-wash"), error: own("madder"), warning: own("weld"), note: own("woad"), font: style.fontFamily,
    };
    this.begin();
  }

  place(e) {
    const frame = this.frame.getBoundingClientRect();
    return { x: this.view.x + (e.clientX - frame.left) / this.view.scale, y: this.view.y + (e.clientY - frame.top) / this.view.scale };
  }

  stitchAt(e) {
    if (!this.view) return -1;
    const { x, y } = this.place(e);
    return this.scene.at(x, y, (e.pointerType === "mouse" ? 3 : 12) / this.view.scale);
  }

  wheel(e) {
    if (!this.view || !(e.ctrlKey || e.metaKey || document.activeElement === this.frame)) return;
    e.preventDefault();
    const lines = e.deltaMode === 1 ? 30 : 1;
    this.nearer(Math.exp(-Math.max(-120, Math.min(120, e.deltaY * lines)) * .0016), this.place(e));
  }

  down(e) {
    if (!this.view) return;
    this.pointers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    this.pressed = this.pointers.size === 1 ? { x: e.clientX, y: e.clientY } : null;
    this.frame.setPointerCapture(e.pointerId);
  }

  // A press that did not move asks for the words of a symbol: by mouse at once, by finger at the second press, since the first lights them.
  up(e) {
    this.pointers.delete(e.pointerId);
    if (!this.pressed || !this.view || Math.hypot(e.clientX - this.pressed.x, e.clientY - this.pressed.y) > 6) return;
    const stitch = this.stitchAt(e), again = stitch === this.stitch;
    this.point(stitch);
    if (stitch >= 0 && (again || e.pointerType === "mouse")) this.goToWords();
  }

  move(e) {
    const last = this.pointers.get(e.pointerId);
    if (!last) {
      if (e.pointerType === "mouse") this.point(this.stitchAt(e));
      return;
    }
    const spread = () => {
      const [a, b] = [...this.pointers.values()];
      return { apart: Math.hypot(a.x - b.x, a.y - b.y), clientX: (a.x + b.x) / 2, clientY: (a.y + b.y) / 2 };
    };
    const before = this.pointers.size === 2 ? spread() : null;
    this.pointers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    if (!before) return this.along(last.x - e.clientX, last.y - e.clientY);
    const after = spread();
    this.along(before.clientX - after.clientX, before.clientY - after.clientY);
    if (before.apart > 0) this.nearer(after.apart / before.apart, this.place(after));
  }

  // The symbol under the pointer and its words light up together.
  point(stitch) {
    if (stitch === this.stitch) return;
    this.stitch = stitch;
    this.tell(stitch);
    this.lit = stitch >= 0 ? this.scene.between(this.scene.from[stitch], this.scene.to[stitch]) : this.caretStitches ?? [];
    const words = stitch >= 0 ? this.wordsOf(stitch) : "";
    this.says.textContent = words;
    this.says.hidden = !words;
    this.ask();
  }

  tell(stitch) {
    const detail = stitch >= 0 ? { from: this.scene.from[stitch], to: this.scene.to[stitch] } : null;
    window.dispatchEvent(new CustomEvent("studio:point", { detail }));
  }

  wordsOf(stitch) {
    const { scene } = this;
    const found = this.findings.filter(finding => finding.stitches?.includes(stitch)).map(finding => finding.says);
    return [`${scene.names[scene.name[stitch]]} · ${scene.rows[scene.row[stitch]].says}`, ...found].join(" · ");
  }

  // The symbols that the words at the cursor make, and the rows that they call for.
  follow(at, again = false) {
    if (at === this.caret && !again) return;
    this.caret = at;
    if (!this.scene) return;
    this.caretStitches = at >= 0 ? this.scene.madeAt(at) : [];
    this.rowsLit = at >= 0 ? this.scene.rowsAt(at) : [];
    if (this.stitch < 0) this.lit = this.caretStitches;
    this.ask();
  }

  goToWords() {
    if (this.stitch >= 0) this.server.invokeMethodAsync("WordsOf", this.scene.from[this.stitch], this.scene.to[this.stitch]);
  }

  // By keys from stitch to stitch; what comes out of view is followed.
  step(along, rows) {
    const next = this.scene.step(this.stitch, along, rows);
    this.point(next);
    if (next < 0) return;
    this.reads.textContent = this.wordsOf(next);
    const { clientWidth: wide, clientHeight: high } = this.frame, { scale } = this.view;
    const [x, y] = [(this.scene.x[next] - this.view.x) * scale, (this.scene.y[next] - this.view.y) * scale];
    if (x < 20 || x > wide - 20 || y < 20 || y > high - 20) this.along(x - wide / 2, y - high / 2);
    else if (!this.painter.isNear(scale)) this.nearer(8 / scale, { x: this.scene.x[next], y: this.scene.y[next] });
  }

  key(e) {
    if (!this.view || e.ctrlKey || e.metaKey || e.altKey) return;
    const { clientWidth: wide, clientHeight: high } = this.frame;
    const acts = e.shiftKey ? {
      ArrowLeft: () => this.step(-1, 0), ArrowRight: () => this.step(1, 0), ArrowUp: () => this.step(0, 1), ArrowDown: () => this.step(0, -1),
      "+": () => this.nearer(1.4), "*": () => this.nearer(1.4),
    } : {
      "+": () => this.nearer(1.4), "=": () => this.nearer(1.4), "-": () => this.nearer(.7), "0": () => this.fit(),
      ArrowLeft: () => this.along(-wide / 8, 0), ArrowRight: () => this.along(wide / 8, 0),
      ArrowUp: () => this.along(0, -high / 8), ArrowDown: () => this.along(0, high / 8),
      Enter: () => this.goToWords(), Escape: () => this.point(-1),
    };
    if (!acts[e.key]) return;
    e.preventDefault();
    acts[e.key]();
  }
}
