// Paints a scene on a canvas: near, every stitch by its symbol; far, every row as a line in its colour.

import { Kind, walk } from "./chart-scene.js";

const hundredth = .01;
const leastSymbol = 5; // pixels of a stitch width below which the symbols of a large chart can't be told apart
const small = 6000; // stitches of a chart that keeps its symbols however far one goes
const mostLit = 600; // symbols lit one by one; more are lit as lines
const leastLetter = 6;
const weights = { first: .13, second: .08, foundation: .1, gap: .1 };

export class Painter {
  constructor(scene) {
    this.scene = scene;
    this.far = new Map();
  }

  isNear(scale) { return scale >= leastSymbol || (this.scene.count <= small && scale >= 2); }

  paint(context, view, colours) {
    this.space(context, view);
    if (this.isNear(view.scale)) for (const square of this.scene.near(view.area)) this.symbols(context, view, square.painted ??= this.prepare(square.stitches), colours);
    else this.rows(context, view, colours);
    this.marks(context, view, colours);
  }

  space(context, view) {
    context.setTransform(view.ratio * view.scale, 0, 0, view.ratio * view.scale, -view.x * view.scale * view.ratio, -view.y * view.scale * view.ratio);
    context.lineCap = context.lineJoin = "round";
  }

  prepare(stitches) {
    const made = new Layer(this.scene.texts, this.scene.inks);
    for (const i of stitches) {
      const form = this.scene.form[i];
      made.add(this.scene.strokes, this.scene.starts[form], this.scene.starts[form + 1], this.scene.x[i], this.scene.y[i], this.scene.rows[this.scene.row[i]].tone);
    }
    return made;
  }

  symbols(context, view, layer, colours) {
    for (const [ink, path] of layer.patches) { context.fillStyle = this.scene.inks[ink]; context.fill(path); }
    for (const [tone, path] of layer.blocks) { context.fillStyle = colours[tone]; context.globalAlpha = .5; context.fill(path); context.globalAlpha = 1; }
    for (const [tone, path] of layer.strokes) {
      context.strokeStyle = colours[tone];
      context.lineWidth = Math.max(weights[tone], .7 / view.scale);
      context.setLineDash(tone === "gap" ? [.4, .3] : []);
      context.stroke(path);
    }
    context.setLineDash([]);
    for (const [tone, path] of layer.dots) { context.fillStyle = colours[tone]; context.fill(path); }
    if (layer.words.length) this.words(context, view, layer.words, colours);
  }

  // Letters are set in pixels: set in stitch widths they are smaller than browsers draw well.
  words(context, view, words, colours) {
    for (const { x, y, size, anchor, text, ink, tone } of words) {
      const pixels = size * view.scale;
      if (pixels < leastLetter) continue;
      this.letter(context, view, text, x, y, pixels, ["left", "center", "right"][anchor], ink ?? colours[tone], ink ? null : colours.paper, colours);
    }
    this.space(context, view);
  }

  letter(context, view, text, x, y, pixels, align, ink, rim, colours) {
    context.setTransform(view.ratio, 0, 0, view.ratio, 0, 0);
    context.font = `${pixels}px ${colours.font}`;
    context.textAlign = align;
    context.textBaseline = "middle";
    const [px, py] = [(x - view.x) * view.scale, (y - view.y) * view.scale];
    if (rim) {
      context.strokeStyle = rim;
      context.lineWidth = Math.max(2, pixels * .3);
      context.strokeText(text, px, py);
    }
    context.fillStyle = ink;
    context.fillText(text, px, py);
  }

  rows(context, view, colours) {
    const level = Math.floor(Math.log2(view.scale));
    if (!this.far.has(level)) this.far.set(level, this.scene.rows.map(row => this.scene.lines(row, .2 / 2 ** level).map(({ ink, points }) => ({ ink, path: along([points]) }))));
    const lines = this.far.get(level);
    context.lineWidth = Math.max(.5, .8 / view.scale);
    context.lineCap = "butt";
    context.lineJoin = "bevel";
    this.scene.rows.forEach((row, i) => {
      if (!row.box.meets(view.area)) return;
      for (const { ink, path } of lines[i]) {
        context.strokeStyle = ink < 0 ? colours[row.tone] : this.scene.inks[ink];
        context.stroke(path);
      }
    });
    context.lineCap = context.lineJoin = "round";
  }

  // Row numbers, brackets, gaps, blocks. From afar every second number, every fifth and so on: always the same, wherever one looks.
  marks(context, view, colours) {
    const edge = 24 / view.scale, { left, top, right, bottom } = view.area;
    const wide = { left: left - edge, top: top - edge, right: right + edge, bottom: bottom + edge };
    const every = this.numbered(view.scale);
    for (const row of this.scene.rows) {
      if (row.marksBox.empty || !row.marksBox.meets(wide)) continue;
      const { layer, number } = this.marksOf(row);
      this.symbols(context, view, layer, colours);
      if (!number || (every > 1 && Number(number.text) % every)) continue;
      // A number larger than its place grows away from the row that it stands beside.
      const half = number.size * number.text.length * .3;
      const [align, x] = number.x < row.fabric.left ? ["right", number.x + half] : number.x > row.fabric.right ? ["left", number.x - half] : [["left", "center", "right"][number.anchor], number.x];
      this.letter(context, view, number.text, x, number.y, Math.max(10, number.size * view.scale), align, colours[row.tone], colours.paper, colours);
      this.space(context, view);
    }
  }

  marksOf(row) {
    if (row.painted) return row.painted;
    const layer = new Layer(this.scene.texts, this.scene.inks);
    layer.add(this.scene.marks, row.marksFrom, row.marksTo, 0, 0, row.tone);
    const number = layer.words.find(word => /^\d+$/.test(word.text));
    layer.words = layer.words.filter(word => word !== number);
    return row.painted = { layer, number };
  }

  // Every how many rows a number finds room.
  numbered(scale) {
    if (this.apart === undefined) {
      const numbers = this.scene.rows.map(row => this.marksOf(row).number).filter(Boolean);
      const steps = numbers.slice(2).map((n, i) => Math.hypot(n.x - numbers[i].x, n.y - numbers[i].y) / 2 / Math.max(1, (n.text - numbers[i].text) / 2)).sort((a, b) => a - b);
      this.apart = steps[steps.length >> 1] || 1;
    }
    return [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].find(every => every * this.apart * scale >= 13) ?? 10000;
  }

  // Some stitches once more, in another colour: few by their symbols, many as lines.
  light(context, view, stitches, colour, weight) {
    this.space(context, view);
    context.strokeStyle = context.fillStyle = colour;
    const seen = stitches.length > 20 * mostLit ? stitches : stitches.filter(i => this.inView(i, view));
    if (this.isNear(view.scale) && seen.length <= mostLit) {
      const layer = this.prepare(seen);
      context.lineWidth = Math.max(weight, 1.6 / view.scale);
      for (const path of layer.strokes.values()) context.stroke(path);
      for (const path of layer.dots.values()) context.fill(path);
      for (const path of layer.patches.values()) context.stroke(path);
      return;
    }
    context.lineWidth = Math.max(.55, 2.5 / view.scale);
    context.globalAlpha = .6;
    context.stroke(this.litPath(stitches, Math.floor(Math.log2(view.scale))));
    context.globalAlpha = 1;
  }

  litPath(stitches, level) {
    if (this.litOf?.stitches !== stitches || this.litOf.level !== level)
      this.litOf = { stitches, level, path: along(this.scene.runs(stitches).flatMap(run => this.scene.lines(run, .35 / 2 ** level)).map(line => line.points)) };
    return this.litOf.path;
  }

  inView(i, { area }) {
    const { x, y } = this.scene;
    return x[i] > area.left - 3 && x[i] < area.right + 3 && y[i] > area.top - 3 && y[i] < area.bottom + 3;
  }

  // Rows as broad bands.
  bands(context, view, rows, colour) {
    if (!rows.length) return;
    this.space(context, view);
    context.strokeStyle = context.fillStyle = colour;
    context.lineWidth = Math.max(1.3, 5 / view.scale);
    const level = Math.floor(Math.log2(view.scale));
    if (this.bandOf?.rows !== rows || this.bandOf.level !== level)
      this.bandOf = { rows, level, path: along(rows.flatMap(row => this.scene.lines(row, .35 / 2 ** level).map(line => line.points))) };
    context.stroke(this.bandOf.path);
    for (const { count, marksBox: box } of rows) if (!count && !box.empty) context.fillRect(box.left, box.top, box.right - box.left, box.bottom - box.top);
  }
}

function along(lines) {
  const path = new Path2D();
  for (const points of lines) {
    path.moveTo(points[0], points[1]);
    for (let i = 2; i < points.length; i += 2) path.lineTo(points[i], points[i + 1]);
  }
  return path;
}

// Shapes of one part of the picture, gathered so that each colour is drawn with one stroke.
class Layer {
  constructor(texts, inks) {
    Object.assign(this, { texts, inks, strokes: new Map(), dots: new Map(), blocks: new Map(), patches: new Map(), words: [] });
  }

  add(strokes, from, to, x, y, tone) {
    walk(strokes, from, to, (kind, at) => {
      const n = i => strokes[at + i] * hundredth;
      const path = (all, key) => all.get(key) ?? all.set(key, new Path2D()).get(key);
      if (kind === Kind.line) { const p = path(this.strokes, tone); p.moveTo(x + n(0), y + n(1)); p.lineTo(x + n(2), y + n(3)); }
      else if (kind === Kind.curve) { const p = path(this.strokes, tone); p.moveTo(x + n(0), y + n(1)); p.quadraticCurveTo(x + n(2), y + n(3), x + n(4), y + n(5)); }
      else if (kind === Kind.oval) {
        const p = path(this.strokes, tone), turn = strokes[at + 4] * Math.PI / 180;
        p.moveTo(x + n(0) + n(2) * Math.cos(turn), y + n(1) + n(2) * Math.sin(turn));
        p.ellipse(x + n(0), y + n(1), n(2), n(3), turn, 0, 2 * Math.PI);
      } else if (kind === Kind.dot) { const p = path(this.dots, tone); p.moveTo(x + n(0) + n(2), y + n(1)); p.arc(x + n(0), y + n(1), n(2), 0, 2 * Math.PI); }
      else if (kind === Kind.block) path(this.blocks, tone).rect(x + n(0), y + n(1), n(2) - n(0), n(3) - n(1));
      else if (kind === Kind.patch) {
        const p = path(this.patches, strokes[at]);
        for (let i = 0; i < strokes[at + 1]; i++) p[i ? "lineTo" : "moveTo"](x + n(2 + 2 * i), y + n(3 + 2 * i));
        p.closePath();
      } else this.words.push({ x: x + n(0), y: y + n(1), size: n(2), anchor: strokes[at + 3], text: this.texts[strokes[at + 4]], ink: strokes[at + 5] < 0 ? null : this.inks[strokes[at + 5]], tone });
    });
  }
}
