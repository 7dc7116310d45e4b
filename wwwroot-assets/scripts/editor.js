// The words of a pattern: a plain textarea (so that spelling, undo, dictation and screen readers work as everywhere)
// over a layer that shows line numbers, underlined findings and each row's count at its own line.
// The server is told each change as an edit, never the whole text.

export function open(root, server, options) {
  return new Editor(root, server, options);
}

class Editor {
  constructor(root, server, { text, draftKey, savedVersion, wait }) {
    this.root = root;
    this.server = server;
    this.area = root.querySelector("textarea");
    this.layer = root.querySelector(".words-layer");
    this.draftKey = draftKey;
    this.savedVersion = savedVersion;
    this.wait = wait;
    this.lines = [];
    this.marks = [];
    this.notes = new Map();
    this.area.value = this.sent = this.saved = text;
    this.stop = new AbortController();
    const on = (target, name, act) => target.addEventListener(name, act, { signal: this.stop.signal });
    on(this.area, "input", () => this.changed());
    on(this.area, "keydown", e => this.key(e));
    on(this.area, "mousemove", e => { this.hint(e); this.point(e); });
    on(document, "selectionchange", () => this.caret());
    on(window, "studio:words", e => { if (this.area.offsetParent) this.select(e.detail.from, e.detail.to - e.detail.from); });
    on(window, "studio:point", e => this.light(e.detail));
    on(window, "beforeunload", e => { if (this.area.value !== this.saved) e.preventDefault(); });
    on(window, "pagehide", () => this.keepDraft());
    this.draw();
  }

  dispose() {
    this.keepDraft();
    clearTimeout(this.timer);
    clearTimeout(this.caretTimer);
    this.stop.abort();
  }

  // A draft of unsaved words found in this browser, or null.
  draft() {
    try {
      const draft = JSON.parse(localStorage.getItem(this.draftKey));
      return draft && draft.text !== this.saved ? draft : null;
    } catch { return null; }
  }

  keepDraft() {
    try {
      if (this.area.value === this.saved) localStorage.removeItem(this.draftKey);
      else localStorage.setItem(this.draftKey, JSON.stringify({ text: this.area.value, version: this.savedVersion, at: new Date().toISOString() }));
    } catch { /* no room or no storage: the page still warns before it closes */ }
  }

  // The words were saved as they are in `text`; later typing stays unsaved.
  markSaved(text, version) {
    this.saved = text;
    this.savedVersion = version;
    this.keepDraft();
  }

  changed() {
    this.moveMarks();
    this.draw();
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.flush(), this.wait);
  }

  async flush() {
    clearTimeout(this.timer);
    this.keepDraft();
    const edit = difference(this.sent, this.area.value);
    if (!edit) return;
    this.sent = this.area.value;
    await this.server.invokeMethodAsync("Edited", edit.start, edit.removed, edit.inserted, this.sent.length);
  }

  // Replaces words so that the browser's own undo takes it back. Only where they are still as expected.
  replace(start, expected, words) {
    if (this.area.value.substr(start, expected.length) !== expected) return false;
    this.area.focus();
    this.area.setSelectionRange(start, start + expected.length);
    // Browsers take a second for every thousand lines put in this way, squared: long passages go without undo.
    const few = words.split("\n").length < 300;
    const done = few && (words === "" ? document.execCommand("delete") : document.execCommand("insertText", false, words));
    if (!done) {
      this.area.setRangeText(words, start, start + expected.length, "end");
      this.changed();
    }
    this.flush();
    return true;
  }

  replaceAll(text) {
    const edit = difference(this.area.value, text);
    if (edit) this.replace(edit.start, this.area.value.substr(edit.start, edit.removed), edit.inserted);
  }

  text() { return this.area.value; }

  select(start, length) {
    this.area.focus({ preventScroll: true });
    this.area.setSelectionRange(start, start + length);
    const line = this.layer.children[this.area.value.slice(0, start).split("\n").length - 1];
    this.bringIntoView(line);
  }

  // Scrolls the sheet, and the page only where the sheet itself can't be seen.
  bringIntoView(line) {
    if (!line) return;
    const sheet = this.root.parentElement;
    sheet.scrollTop = line.offsetTop - (sheet.clientHeight - line.offsetHeight) / 2;
    const { top, bottom } = line.getBoundingClientRect();
    if (top < 130 || bottom > innerHeight - 90) line.scrollIntoView({ block: "center", behavior: "instant" });
  }

  show(marks, notes) {
    this.marks = marks;
    this.notes = new Map(notes.map(n => [n.line, n]));
    this.lines = [];
    this.draw();
  }

  // Until the next check, marks after the caret move with the words.
  moveMarks() {
    const edit = difference(this.drawn ?? "", this.area.value);
    if (!edit) return;
    const by = edit.inserted.length - edit.removed;
    this.marks = this.marks
      .filter(m => m.start + m.length <= edit.start || m.start >= edit.start + edit.removed)
      .map(m => m.start >= edit.start + edit.removed ? { ...m, start: m.start + by } : m);
    const lines = text => text.split("\n").length - 1;
    const lineBy = lines(edit.inserted) - lines((this.drawn ?? "").substr(edit.start, edit.removed));
    if (lineBy === 0) return;
    const from = lines(this.area.value.slice(0, edit.start)) + 1;
    this.notes = new Map([...this.notes.values()].map(n => n.line > from ? { ...n, line: n.line + lineBy } : n).map(n => [n.line, n]));
  }

  draw() {
    const text = this.area.value;
    this.drawn = text;
    const wanted = this.describe(text);
    const old = this.lines;
    let same = 0;
    while (same < wanted.length && same < old.length && wanted[same] === old[same]) same++;
    let tail = 0;
    while (tail < wanted.length - same && tail < old.length - same && wanted.at(-1 - tail) === old.at(-1 - tail)) tail++;
    const box = document.createElement("template");
    box.innerHTML = wanted.slice(same, wanted.length - tail).join("");
    const nodes = this.layer.children;
    if (old.length === 0) this.layer.replaceChildren();
    const before = nodes[old.length - tail] ?? null;
    for (let i = same; i < old.length - tail; i++) nodes[same].remove();
    this.layer.insertBefore(box.content, old.length === 0 ? null : before);
    this.lines = wanted;
  }

  describe(text) {
    const marks = [...this.marks].sort((a, b) => a.start - b.start || b.length - a.length);
    let start = 0, next = 0;
    return text.split("\n").map((line, index) => {
      const end = start + line.length;
      let html = "", at = start;
      while (next < marks.length && marks[next].start <= end) {
        const mark = marks[next];
        const from = Math.max(at, mark.start), to = Math.min(end, mark.start + mark.length);
        html += escape(text.slice(at, from));
        if (to > from || mark.length === 0)
          html += `<mark class="${mark.tone}" data-says="${escape(mark.says)}">${escape(text.slice(from, Math.max(from, to))) || "\u200b"}</mark>`;
        at = Math.max(at, to);
        if (mark.start + mark.length > end + 1) break;
        next++;
      }
      html += escape(text.slice(at, end));
      start = end + 1;
      const note = this.notes.get(index + 1);
      return `<div class="line">${html || "\u200b"}${note ? `<span class="line-note ${note.tone}">${escape(note.says)}</span>` : ""}</div>`;
    });
  }

  hint(e) {
    const mark = document.elementsFromPoint(e.clientX, e.clientY).find(x => x.tagName === "MARK" && this.layer.contains(x));
    this.area.title = mark ? mark.dataset.says : "";
  }

  // The words under the pointer light their symbols in the chart.
  point(e) {
    const place = document.caretPositionFromPoint?.(e.clientX, e.clientY);
    if (place?.offsetNode === this.area) window.dispatchEvent(new CustomEvent("studio:caret", { detail: { at: place.offset } }));
  }

  // The words of the symbol under the pointer.
  light(words) {
    globalThis.CSS?.highlights?.delete("chart-words");
    if (!words || !globalThis.Highlight || !this.area.offsetParent) return;
    const before = this.area.value.slice(0, words.from).split("\n");
    const line = this.layer.children[before.length - 1];
    if (!line) return;
    const range = document.createRange();
    let at = words.from - before.at(-1).length, begun = false;
    const walk = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node && !node.parentElement.classList.contains("line-note"); node = walk.nextNode()) {
      const end = at + node.length;
      if (!begun && words.from < end) { range.setStart(node, words.from - at); begun = true; }
      if (begun) range.setEnd(node, Math.min(node.length, Math.max(0, words.to - at)));
      if (words.to <= end) break;
      at = end;
    }
    if (begun) CSS.highlights.set("chart-words", new Highlight(range));
  }

  key(e) {
    if (e.key === "F8") { e.preventDefault(); this.nextMark(e.shiftKey ? -1 : 1); }
  }

  caret() {
    if (document.activeElement !== this.area) return;
    clearTimeout(this.caretTimer);
    this.caretTimer = setTimeout(() => {
      window.dispatchEvent(new CustomEvent("studio:caret", { detail: { at: this.area.selectionStart } }));
      const line = this.area.value.slice(0, this.area.selectionStart).split("\n").length;
      if (line === this.caretLine || this.stop.signal.aborted) return;
      this.caretLine = line;
      this.server.invokeMethodAsync("CaretMoved", line);
    }, 150);
  }

  nextMark(step) {
    const marks = [...this.marks].sort((a, b) => a.start - b.start);
    if (marks.length === 0) return;
    const caret = this.area.selectionStart;
    const found = step > 0 ? marks.find(m => m.start > caret) ?? marks[0] : marks.findLast(m => m.start < caret) ?? marks.at(-1);
    this.select(found.start, found.length);
    this.server.invokeMethodAsync("Reached", found.start);
  }
}

// The smallest single edit that makes `now` out of `before`; null for none. Never splits a surrogate pair.
export function difference(before, now) {
  if (before === now) return null;
  const most = Math.min(before.length, now.length);
  let start = 0;
  while (start < most && before[start] === now[start]) start++;
  let tail = 0;
  while (tail < most - start && before[before.length - 1 - tail] === now[now.length - 1 - tail]) tail++;
  if (start > 0 && /[\uD800-\uDBFF]/.test(now[start - 1] ?? "")) start--;
  if (tail > 0 && /[\uDC00-\uDFFF]/.test(now[now.length - tail] ?? "")) tail--;
  return { start, removed: before.length - start - tail, inserted: now.slice(start, now.length - tail) };
}

function escape(text) {
  return text.replace(/[&<>"]/g, c => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[c]);
}
