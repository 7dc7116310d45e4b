// A chart as the server sends it: the forms of stitches, each once, and where which form stands. See ScenePainter for how it is written.

const hundredth = .01;
const cellSize = 16; // stitch widths; the grid that finds what is near

export const Kind = { line: 0, curve: 1, oval: 2, dot: 3, block: 4, patch: 5, words: 6 };

export async function unpack(bytes) {
  const plain = await new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
  const length = new Int32Array(plain, 0, 1)[0];
  const head = JSON.parse(new TextDecoder().decode(new Uint8Array(plain, 4, length)));
  let at = 4 + length;
  const next = count => {
    const numbers = new Int32Array(plain, at, count);
    at += count * 4;
    return numbers;
  };
  return new Scene(head, next);
}

// Goes through strokes: act(kind, at) with the place of the numbers after the kind.
export function walk(strokes, from, to, act) {
  for (let at = from; at < to;) {
    const kind = strokes[at++];
    act(kind, at);
    at += kind === Kind.patch ? 2 + 2 * strokes[at + 1] : [4, 6, 5, 3, 4, 0, 6][kind];
  }
}

class Box {
  constructor(left = Infinity, top = Infinity, right = -Infinity, bottom = -Infinity) {
    Object.assign(this, { left, top, right, bottom });
  }
  add(left, top, right = left, bottom = top) {
    this.left = Math.min(this.left, left); this.top = Math.min(this.top, top);
    this.right = Math.max(this.right, right); this.bottom = Math.max(this.bottom, bottom);
  }
  meets(other) { return this.right >= other.left && this.left <= other.right && this.bottom >= other.top && this.top <= other.bottom; }
  get empty() { return this.right < this.left; }
}

function boxOf(strokes, from, to, texts) {
  const box = new Box();
  walk(strokes, from, to, (kind, at) => {
    const n = i => strokes[at + i] * hundredth;
    if (kind === Kind.line || kind === Kind.block) { box.add(n(0), n(1)); box.add(n(2), n(3)); }
    else if (kind === Kind.curve) { box.add(n(0), n(1)); box.add((n(0) + n(4)) / 4 + n(2) / 2, (n(1) + n(5)) / 4 + n(3) / 2); box.add(n(4), n(5)); }
    else if (kind === Kind.oval || kind === Kind.dot) {
      const reach = kind === Kind.dot ? n(2) : Math.max(n(2), n(3));
      box.add(n(0) - reach, n(1) - reach, n(0) + reach, n(1) + reach);
    } else if (kind === Kind.patch) for (let i = 0; i < strokes[at + 1]; i++) box.add(n(2 + 2 * i), n(3 + 2 * i));
    else {
      const wide = texts[strokes[at + 4]].length * n(2) * .6, left = [0, wide / 2, wide][strokes[at + 3]];
      box.add(n(0) - left, n(1) - n(2) / 2, n(0) - left + wide, n(1) + n(2) / 2);
    }
  });
  return box;
}

export class Scene {
  constructor(head, next) {
    Object.assign(this, head);
    const count = head.stitches;
    this.form = next(count);
    const [x, y] = [next(count), next(count)];
    this.x = Float32Array.from(x, n => n * hundredth);
    this.y = Float32Array.from(y, n => n * hundredth);
    [this.from, this.to, this.name, this.cell] = [next(count), next(count), next(count), next(count)];
    this.starts = next(head.forms + 1);
    this.strokes = next(head.formStrokes);
    this.marks = next(head.markStrokes);
    this.row = new Uint32Array(count);
    this.rows.forEach((row, i) => {
      this.row.fill(i, row.first, row.first + row.count);
      row.marksBox = boxOf(this.marks, row.marksFrom, row.marksTo, this.texts);
    });
    this.measureForms();
    this.lay();
  }

  get count() { return this.form.length; }

  measureForms() {
    this.formBoxes = [];
    this.formInks = new Int32Array(this.starts.length - 1).fill(-1);
    for (let form = 0; form + 1 < this.starts.length; form++) {
      this.formBoxes.push(boxOf(this.strokes, this.starts[form], this.starts[form + 1], this.texts));
      walk(this.strokes, this.starts[form], this.starts[form + 1], (kind, at) => { if (kind === Kind.patch) this.formInks[form] = this.strokes[at]; });
    }
  }

  // Which stitches lie in which square of the grid, and what the rows, and all of it, take up.
  lay() {
    this.box = new Box();
    const squares = new Map();
    for (const row of this.rows) {
      row.box = new Box(row.marksBox.left, row.marksBox.top, row.marksBox.right, row.marksBox.bottom);
      row.fabric = new Box();
    }
    for (let i = 0; i < this.count; i++) {
      const key = Math.floor(this.x[i] / cellSize) * 65536 + Math.floor(this.y[i] / cellSize);
      let square = squares.get(key);
      if (!square) squares.set(key, square = { stitches: [], box: new Box() });
      square.stitches.push(i);
      const b = this.formBoxes[this.form[i]];
      const [left, top, right, bottom] = [b.left + this.x[i], b.top + this.y[i], b.right + this.x[i], b.bottom + this.y[i]];
      square.box.add(left, top, right, bottom);
      const row = this.rows[this.row[i]];
      row.box.add(left, top, right, bottom);
      row.fabric.add(left, top, right, bottom);
    }
    for (const row of this.rows) if (!row.box.empty) this.box.add(row.box.left, row.box.top, row.box.right, row.box.bottom);
    this.squares = [...squares.values()];
  }

  near(area) { return this.squares.filter(square => square.box.meets(area)); }

  // The stitch at a place, or -1: of several that reach there, the one whose middle is nearest.
  at(x, y, reach) {
    let best = -1, least = Infinity;
    const area = new Box(x - reach, y - reach, x + reach, y + reach);
    for (const square of this.near(area))
      for (const i of square.stitches) {
        const b = this.formBoxes[this.form[i]], dx = x - this.x[i], dy = y - this.y[i];
        if (dx < b.left - reach || dx > b.right + reach || dy < b.top - reach || dy > b.bottom + reach) continue;
        const far = dx * dx + dy * dy;
        if (far < least) [best, least] = [i, far];
      }
    return best;
  }

  // From a stitch along its row, or to the nearest of another row.
  step(stitch, along, rows) {
    if (stitch < 0) return this.count ? 0 : -1;
    if (along) return Math.min(this.count - 1, Math.max(0, stitch + along));
    let row = this.row[stitch];
    do row += rows; while (this.rows[row] && !this.rows[row].count);
    const { first, count } = this.rows[row] ?? { count: 0 };
    let best = stitch, least = Infinity;
    for (let i = first; i < first + count; i++) {
      const far = (this.x[i] - this.x[stitch]) ** 2 + (this.y[i] - this.y[stitch]) ** 2;
      if (far < least) [best, least] = [i, far];
    }
    return best;
  }

  // The stitches that the words at a place make.
  madeAt(at) { return this.between(at, at + 1); }

  between(from, to) {
    if (this.asked?.from === from && this.asked.to === to) return this.asked.made;
    const made = [];
    for (let i = 0; i < this.count; i++) if (this.from[i] < to && from < this.to[i]) made.push(i);
    this.asked = { from, to, made };
    return made;
  }

  // Stitches that follow each other in one row, as if they were rows.
  runs(stitches) {
    const runs = [];
    let last = null;
    for (const i of stitches) {
      if (last && i === last.first + last.count && this.row[i] === last.row) last.count++;
      else runs.push(last = { first: i, count: 1, row: this.row[i] });
    }
    return runs;
  }

  // The rows that the words at a place call for, or tell how to work.
  rowsAt(at) {
    const called = this.rows.filter(row => row.calledFrom <= at && at < row.calledTo);
    return called.length ? called : this.rows.filter(row => row.from <= at && at < row.to);
  }

  // A row as a line through the middles of its stitches, left out what bends less than the tolerance. Parted where the colour changes or nothing is near.
  lines(row, tolerance) {
    const found = [];
    let points = [], ink = -1;
    const end = () => { if (points.length > 2) found.push({ ink, points: simpler(points, tolerance) }); points = []; };
    for (let i = row.first; i < row.first + row.count; i++) {
      const own = this.formInks[this.form[i]], x = this.x[i], y = this.y[i], n = points.length;
      if (n && own !== ink) {
        const [mx, my] = [(points[n - 2] + x) / 2, (points[n - 1] + y) / 2];
        if (own >= 0) points.push(mx, my);
        end();
        if (own >= 0) points.push(mx, my);
      } else if (n && Math.abs(points[n - 2] - x) + Math.abs(points[n - 1] - y) > 12) end();
      ink = own;
      points.push(x, y);
    }
    if (points.length === 2) points.push(points[0] + .3, points[1]);
    end();
    return found;
  }
}

// Douglas and Peucker's rule: keep the point farthest from the line between the ends, and go on with both parts, until all are near enough.
function simpler(points, tolerance) {
  const count = points.length / 2, keep = new Uint8Array(count);
  keep[0] = keep[count - 1] = 1;
  const open = [[0, count - 1]];
  while (open.length) {
    const [first, last] = open.pop();
    const [x, y, dx, dy] = [points[2 * first], points[2 * first + 1], points[2 * last] - points[2 * first], points[2 * last + 1] - points[2 * first + 1]];
    const long = dx * dx + dy * dy || 1e-9;
    let farthest = -1, most = tolerance * tolerance;
    for (let i = first + 1; i < last; i++) {
      const [px, py] = [points[2 * i] - x, points[2 * i + 1] - y];
      const share = Math.min(1, Math.max(0, (px * dx + py * dy) / long));
      const far = (px - share * dx) ** 2 + (py - share * dy) ** 2;
      if (far > most) [farthest, most] = [i, far];
    }
    if (farthest < 0) continue;
    keep[farthest] = 1;
    open.push([first, farthest], [farthest, last]);
  }
  const kept = [];
  for (let i = 0; i < count; i++) if (keep[i]) kept.push(points[2 * i], points[2 * i + 1]);
  return kept;
}
