// What the server found, in the words: underlined and explained, mended by a key; the counts beside the rows; sections that fold.

import {
  Decoration, EditorSelection, EditorView, GutterMarker, RangeSet, StateEffect, StateField, foldGutter, foldService, gutter, hoverTooltip, isolateHistory,
  showTooltip,
} from "./vendor/codemirror.js";

const setFindings = StateEffect.define();
const setCounts = StateEffect.define();
const setSections = StateEffect.define();
const pin = StateEffect.define();
const rested = StateEffect.define();

/** What a step that is half written brings with it, and what a row does whose end is not written yet: not underlined while it is being typed. */
const halfTyped = new Set(["not-read", "stitch-undefined"]), notClosed = new Set(["bracket-open", "star-without-repeat"]);

/** How long the writer rests, in milliseconds, until a half written step is taken for a whole one. */
const rest = 1500;

/** The effects that show an answer of the server. Places are offsets and 1-based lines of the words as they are. */
export function shown(state, marks, notes, folds) {
  const { doc } = state;
  const list = marks.filter(m => m.start + m.length <= doc.length).map(m => ({ ...m, from: m.start, to: m.start + m.length }));
  const rows = notes.filter(n => n.line <= doc.lines).sort((a, b) => a.line - b.line);
  return [
    setFindings.of(list),
    setCounts.of(RangeSet.of(rows.map(n => new Count(n.says, n.tone).range(doc.line(n.line).from)))),
    setSections.of(folds.filter(f => f.last <= doc.lines).map(f => ({ from: doc.line(f.first).from, to: doc.line(f.last).to }))),
  ];
}

/* Findings */

/** A finding as shown, moved along with an edit; null where the edit touches its words. */
function moved(found, changes) {
  if (changes.touchesRange(found.from, found.to)) return null;
  const fix = found.fix && !changes.touchesRange(found.fix.start, found.fix.start + found.fix.expected.length)
    ? { ...found.fix, start: changes.mapPos(found.fix.start, 1) } : null;
  return { ...found, from: changes.mapPos(found.from, 1), to: changes.mapPos(found.to, -1), fix };
}

function underlined(list, doc) {
  const marks = [];
  for (const found of list) {
    const mark = Decoration.mark({ class: `words-found words-${found.tone}` });
    const line = doc.lineAt(found.from);
    if (found.to > found.from) marks.push(mark.range(found.from, found.to));
    else if (line.length === 0) marks.push(Decoration.line({ class: `words-found-line words-${found.tone}` }).range(line.from));
    else if (found.from < line.to) marks.push(mark.range(found.from, found.from + 1));
    else marks.push(mark.range(found.from - 1, found.from));
  }
  return Decoration.set(marks, true);
}

/** True for what only says that the row which ends at the cursor is not written out yet. */
function isHalfTyped(found, state) {
  const { head } = state.selection.main, line = state.doc.lineAt(head);
  if (found.from < line.from || found.from > head || state.sliceDoc(head, line.to).trim() !== "") return false;
  return notClosed.has(found.code) || halfTyped.has(found.code) && !/[,;.:*()[\]]/.test(state.sliceDoc(Math.min(found.to, head), head));
}

const list = StateField.define({
  create: () => ({ all: [], typing: false, marks: Decoration.none }),
  update(value, change) {
    let { all, typing } = value;
    if (change.docChanged) all = all.map(found => moved(found, change.changes)).filter(found => found);
    if (change.isUserEvent("input") || change.isUserEvent("delete")) typing = true;
    else if (change.selection && !change.docChanged) typing = false;
    for (const effect of change.effects) {
      if (effect.is(setFindings)) all = effect.value;
      if (effect.is(rested)) typing = false;
    }
    if (all === value.all && typing === value.typing) return value;
    return { all, typing, marks: underlined(typing ? all.filter(found => !isHalfTyped(found, change.state)) : all, change.state.doc) };
  },
  provide: field => EditorView.decorations.from(field, value => value.marks),
});

/** Tells that the writer rests. */
function resting() {
  let timer;
  return EditorView.updateListener.of(({ view, docChanged, state }) => {
    if (!docChanged || !state.field(list).typing) return;
    clearTimeout(timer);
    timer = setTimeout(() => { if (view.dom.isConnected) view.dispatch({ effects: rested.of(null) }); }, rest);
  });
}

function at(state, place) {
  return state.field(list).all.filter(found => found.from <= place && place <= Math.max(found.to, found.from + 1));
}

/** The explanation that was asked for by key or by touch: it stays while the cursor stays in those words. */
const pinned = says => StateField.define({
  create: () => null,
  update(value, change) {
    for (const effect of change.effects) if (effect.is(pin)) return effect.value === null ? null : tip(effect.value, says);
    if (!value) return null;
    if (change.docChanged) return null;
    const head = change.state.selection.main.head;
    return change.selection && (head < value.pos || head > value.end) ? null : value;
  },
  provide: field => showTooltip.from(field),
});

function tip(found, says) {
  return { pos: found[0].from, end: Math.max(...found.map(one => one.to)), above: false, create: view => ({ dom: explanation(view, found, says) }) };
}

function explanation(view, found, says) {
  const box = element("div", "words-tip");
  for (const one of found) {
    const part = element("div", "words-tip-part");
    part.append(element("strong", `words-tip-tone ${one.tone}`, one.grade), element("p", "", one.says));
    const acts = element("p", "words-tip-acts");
    if (one.fix) {
      const button = element("button", "button button-line button-small", says.mend);
      button.type = "button";
      button.onclick = () => { make(view, one); view.focus(); };
      button.append(element("kbd", "", "Alt+Enter"));
      acts.append(button);
    }
    const link = element("a", "", says.about);
    link.href = `help/findings/${one.code}`;
    link.target = "_blank";
    acts.append(link);
    part.append(acts);
    box.append(part);
  }
  return box;
}

function make(view, found) {
  const { start, expected, words } = found.fix;
  if (view.state.sliceDoc(start, start + expected.length) !== expected) return false;
  view.dispatch({
    changes: { from: start, to: start + expected.length, insert: words }, selection: EditorSelection.cursor(start + words.length),
    userEvent: "input.mend", annotations: isolateHistory.of("full"), scrollIntoView: true, effects: EditorView.announce.of(view.state.phrase("mended")),
  });
  return true;
}

/** Mends what is found at the cursor, or else in its line. */
export function mend(view) {
  const { head } = view.state.selection.main, line = view.state.doc.lineAt(head);
  const all = view.state.field(list).all;
  const found = [...at(view.state, head), ...all.filter(one => one.from <= line.to && one.to >= line.from)].find(one => one.fix);
  if (found) make(view, found);
  else view.dispatch({ effects: EditorView.announce.of(view.state.phrase("nothing to mend here")) });
  return true;
}

/** Explains what is found at the cursor, or else in its line. */
export function explain(view) {
  const { head } = view.state.selection.main, line = view.state.doc.lineAt(head);
  let found = at(view.state, head);
  if (found.length === 0) found = view.state.field(list).all.filter(one => one.from <= line.to && one.to >= line.from);
  view.dispatch({
    effects: found.length > 0
      ? [pin.of(found), EditorView.announce.of(found.map(one => `${one.grade}: ${one.says}`).join(" "))]
      : EditorView.announce.of(view.state.phrase("nothing found here")),
  });
  return true;
}

/** Goes to the next finding (or the one before) and explains it. Gives the finding; null where there is none. */
export function nextFinding(view, step) {
  const all = [...view.state.field(list).all].sort((a, b) => a.from - b.from);
  if (all.length === 0) return null;
  const { from } = view.state.selection.main;
  const found = step > 0 ? all.find(one => one.from > from) ?? all[0] : all.findLast(one => one.from < from) ?? all.at(-1);
  const same = all.filter(one => one.from === found.from);
  view.dispatch({
    selection: EditorSelection.single(found.from, found.to),
    effects: [EditorView.scrollIntoView(found.from, { y: "center" }), pin.of(same), EditorView.announce.of(same.map(one => `${one.grade}: ${one.says}`).join(" "))],
  });
  return found;
}

function closeTip(view) {
  view.dispatch({ effects: pin.of(null) });
}

export function findings(says) {
  const pins = pinned(says);
  return [
    list,
    resting(),
    pins,
    hoverTooltip((view, place) => {
      if (view.state.field(pins)) return null;
      const found = at(view.state, place);
      return found.length > 0 ? tip(found, says) : null;
    }, { hideOnChange: true, hoverTime: 250 }),
    EditorView.domEventHandlers({
      keydown(e, view) {
        if (e.key !== "Escape" || !view.state.field(pins)) return false;
        closeTip(view);
        return true;
      },
      // A finger does not hover: it taps.
      pointerup(e, view) {
        if (e.pointerType !== "touch") return false;
        const place = view.posAtCoords({ x: e.clientX, y: e.clientY });
        const found = place === null ? [] : at(view.state, place);
        if (found.length > 0) setTimeout(() => view.dispatch({ effects: pin.of(found) }), 60);
        return false;
      },
    }),
  ];
}

/* Counts beside the rows */

class Count extends GutterMarker {
  constructor(says, tone) {
    super();
    this.says = says;
    this.tone = tone;
  }

  eq(other) { return this.says === other.says && this.tone === other.tone; }

  toDOM() { return element("span", `line-note ${this.tone}`, this.says); }
}

const countsOfRows = StateField.define({
  create: () => RangeSet.empty,
  update(marks, change) {
    marks = marks.map(change.changes);
    for (const effect of change.effects) if (effect.is(setCounts)) marks = effect.value;
    return marks;
  },
});

export const counts = [countsOfRows, gutter({ class: "words-counts", side: "after", markers: view => view.state.field(countsOfRows) })];

/* Sections */

const sectionsOfWords = StateField.define({
  create: () => [],
  update(value, change) {
    if (change.docChanged) value = value.map(one => ({ from: change.changes.mapPos(one.from, 1), to: change.changes.mapPos(one.to, -1) }));
    for (const effect of change.effects) if (effect.is(setSections)) value = effect.value;
    return value;
  },
});

export function sections(says) {
  return [
    sectionsOfWords,
    foldService.of((state, start, end) => {
      const section = state.field(sectionsOfWords).find(one => one.from >= start && one.from <= end && one.to > end);
      return section ? { from: end, to: section.to } : null;
    }),
    foldGutter({
      markerDOM(open) {
        const sign = element("span", `words-fold ${open ? "open" : ""}`, open ? "▾" : "▸");
        sign.title = open ? says.fold : says.unfold;
        return sign;
      },
    }),
  ];
}

function element(tag, className, text) {
  const made = document.createElement(tag);
  if (className) made.className = className;
  if (text) made.textContent = text;
  return made;
}
