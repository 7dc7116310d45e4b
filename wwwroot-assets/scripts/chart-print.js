// A scene as SVG, for paper: made when somebody prints, since only then it is needed.

import { Kind, walk } from "./chart-scene.js";

const weights = { first: 1.3, second: .8, foundation: 1, gap: 1 };
const inks = { first: "#1b3a57", second: "#a8442a", foundation: "#4a4a4a", gap: "#6b5900" };
const tenth = n => +(n / 10).toFixed(1); // ten units of the drawing are one stitch width

export function toSvg(scene) {
  const { left, top, right, bottom } = scene.box;
  const rows = scene.rows.map(row => {
    const writer = new Writer(scene);
    for (let i = row.first; i < row.first + row.count; i++)
      writer.add(scene.strokes, scene.starts[scene.form[i]], scene.starts[scene.form[i] + 1], Math.round(scene.x[i] * 100), Math.round(scene.y[i] * 100));
    writer.add(scene.marks, row.marksFrom, row.marksTo, 0, 0);
    return `<g stroke="${inks[row.tone]}" color="${inks[row.tone]}" stroke-width="${weights[row.tone]}">${writer.write()}</g>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${[left - 1, top - 1, right - left + 2, bottom - top + 2].map(n => (n * 10).toFixed(1)).join(" ")}" fill="none" stroke-linecap="round" stroke-linejoin="round">${rows.join("")}</svg>`;
}

class Writer {
  constructor(scene) { Object.assign(this, { scene, path: [], others: [] }); }

  add(strokes, from, to, x, y) {
    walk(strokes, from, to, (kind, at) => {
      const px = i => tenth(strokes[at + i] + x), py = i => tenth(strokes[at + i] + y), n = i => tenth(strokes[at + i]);
      if (kind === Kind.line) this.path.push(`M${px(0)} ${py(1)}L${px(2)} ${py(3)}`);
      else if (kind === Kind.curve) this.path.push(`M${px(0)} ${py(1)}Q${px(2)} ${py(3)} ${px(4)} ${py(5)}`);
      else if (kind === Kind.oval) this.others.push(`<ellipse cx="${px(0)}" cy="${py(1)}" rx="${n(2)}" ry="${n(3)}" transform="rotate(${strokes[at + 4]} ${px(0)} ${py(1)})"/>`);
      else if (kind === Kind.dot) this.others.push(`<circle cx="${px(0)}" cy="${py(1)}" r="${n(2)}" fill="currentColor" stroke="none"/>`);
      else if (kind === Kind.block) this.others.push(`<rect x="${px(0)}" y="${py(1)}" width="${tenth(strokes[at + 2] - strokes[at])}" height="${tenth(strokes[at + 3] - strokes[at + 1])}" fill="currentColor" fill-opacity=".4" stroke="none"/>`);
      else if (kind === Kind.patch) {
        const corners = Array.from({ length: strokes[at + 1] }, (_, i) => `${px(2 + 2 * i)} ${py(3 + 2 * i)}`);
        this.others.push(`<path stroke="none" fill="${this.scene.inks[strokes[at]]}" d="M${corners.join("L")}Z"/>`);
      } else {
        const ink = strokes[at + 5] < 0 ? "currentColor" : this.scene.inks[strokes[at + 5]];
        this.others.push(`<text x="${px(0)}" y="${tenth(strokes[at + 1] + y + strokes[at + 2] * .35)}" font-size="${n(2)}" text-anchor="${["start", "middle", "end"][strokes[at + 3]]}" fill="${ink}" stroke="none">${escape(this.scene.texts[strokes[at + 4]])}</text>`);
      }
    });
  }

  write() { return (this.path.length ? `<path d="${this.path.join("")}"/>` : "") + this.others.join(""); }
}

const escape = text => text.replace(/[&<>"]/g, sign => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[sign]);
