// Keeps what was painted. A picture is parted into tiles; a frame paints as many as it has time for and shows the rest as it was, larger or smaller,
// so that moving stays smooth whatever is to be seen.

const size = 320; // pixels
const budget = 10; // milliseconds of a frame for painting
const most = 120;

export class Tiles {
  constructor(painter, colours, ratio) {
    Object.assign(this, { painter, colours, ratio, scale: 0, painted: new Map(), before: null });
  }

  // Draws what is in view; true where all of it is as it should be. While somebody zooms, nothing new is begun.
  draw(context, view, whole, zooming) {
    if (view.scale !== this.scale && !(zooming && this.scale)) {
      if (this.painted.size) this.before = { scale: this.scale, painted: this.painted };
      [this.scale, this.painted] = [view.scale, new Map()];
    }
    const missing = this.scale === view.scale ? this.missing(view) : [];
    const { canvas } = context;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.fillStyle = this.colours.paper;
    context.fillRect(0, 0, canvas.width, canvas.height);
    const until = performance.now() + budget;
    while (missing.length) {
      this.paint(missing.shift());
      if (performance.now() > until) break;
    }
    if (missing.length || this.scale !== view.scale) {
      this.base(context, view, whole);
      if (this.before && this.scale === view.scale) this.blit(context, view, this.before.scale, this.before.painted);
    } else this.before = null;
    this.blit(context, view, this.scale, this.painted);
    return !missing.length && this.scale === view.scale;
  }

  // What is not there yet, the middle of the picture first.
  missing(view) {
    const step = size / view.scale, { left, top, right, bottom } = view.area, found = [];
    for (let ty = Math.floor(top / step); ty * step < bottom; ty++)
      for (let tx = Math.floor(left / step); tx * step < right; tx++)
        if (!this.painted.has(`${tx} ${ty}`)) found.push({ tx, ty, far: Math.hypot((tx + .5) * step - (left + right) / 2, (ty + .5) * step - (top + bottom) / 2) });
    return found.sort((a, b) => a.far - b.far);
  }

  paint({ tx, ty }) {
    const step = size / this.scale;
    const canvas = this.picture(size, size, { x: tx * step, y: ty * step, scale: this.scale, area: { left: tx * step, top: ty * step, right: (tx + 1) * step, bottom: (ty + 1) * step } });
    this.painted.set(`${tx} ${ty}`, { canvas, tx, ty });
    if (this.painted.size > most) this.painted.delete(this.painted.keys().next().value);
  }

  picture(wide, high, part) {
    const canvas = document.createElement("canvas");
    canvas.width = Math.ceil(wide * this.ratio);
    canvas.height = Math.ceil(high * this.ratio);
    const context = canvas.getContext("2d", { alpha: false });
    context.fillStyle = this.colours.paper;
    context.fillRect(0, 0, canvas.width, canvas.height);
    this.painter.paint(context, { ...part, ratio: this.ratio }, this.colours);
    return canvas;
  }

  // All of the chart, small: what is seen of places that nobody was at yet.
  base(context, view, whole) {
    const high = (whole.bottom - whole.top), wide = (whole.right - whole.left), scale = Math.min(4, 700 / Math.max(wide, high, 1));
    this.small ??= { scale, canvas: this.picture(Math.max(1, wide * scale), Math.max(1, high * scale), { x: whole.left, y: whole.top, scale, area: whole }) };
    const by = view.scale * this.ratio;
    context.drawImage(this.small.canvas, (whole.left - view.x) * by, (whole.top - view.y) * by, this.small.canvas.width / this.small.scale / this.ratio * by, this.small.canvas.height / this.small.scale / this.ratio * by);
  }

  blit(context, view, scale, painted) {
    const step = size / scale, by = view.scale * this.ratio, same = scale === view.scale;
    const { left, top, right, bottom } = view.area;
    // At its own scale a tile is laid on whole pixels, so that it stays sharp.
    const [ox, oy] = same ? [Math.round(view.x * by), Math.round(view.y * by)] : [view.x * by, view.y * by];
    for (const { canvas, tx, ty } of painted.values()) {
      if (tx * step > right || ty * step > bottom || (tx + 1) * step < left || (ty + 1) * step < top) continue;
      const long = same ? canvas.width : step * by;
      context.drawImage(canvas, tx * (same ? size * this.ratio : long) - ox, ty * (same ? size * this.ratio : long) - oy, long, long);
    }
  }
}
