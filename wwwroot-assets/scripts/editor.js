// The words of a pattern, in the editor of ./vendor/codemirror.js. What is shown in them comes from the server: findings, counts beside the
// rows, sections to fold, what can come next. The server is told each change as an edit, never the whole text.

import {
  Annotation, EditorSelection, EditorState, EditorView, Prec, StateEffect, StateField, Decoration, acceptCompletion, autocompletion, closeCompletion,
  codeFolding, completionKeymap, completionStatus, defaultKeymap, foldKeymap, highlightActiveLine, highlightActiveLineGutter, history,
  historyKeymap, isolateHistory, keymap, lineNumbers, openSearchPanel, placeholder, redo, search, searchKeymap,
  selectedCompletionIndex, setSelectedCompletion, undo,
} from "./vendor/codemirror.js";
import { counts, explain, findings, mend, nextFinding, sections, shown } from "./editor-findings.js";
import { DraftBox, UndoBox } from "./editor-keeping.js";

export { unsaved } from "./editor-keeping.js";

export function open(root, server, options) {
  return new Editor(root, server, options);
}

/** Marks a change that the program made, so that the reader's place stays where it is. */
const byProgram = Annotation.define();

const setLit = StateEffect.define();

/** The words of the symbol under the pointer in the chart. */
const lit = StateField.define({
  create: () => Decoration.none,
  update(marks, change) {
    marks = marks.map(change.changes);
    for (const effect of change.effects)
      if (effect.is(setLit)) marks = effect.value ? Decoration.set([Decoration.mark({ class: "words-lit" }).range(effect.value.from, effect.value.to)]) : Decoration.none;
    return marks;
  },
  provide: field => EditorView.decorations.from(field),
});

class Editor {
  constructor(root, server, options) {
    this.server = server;
    this.says = options.says;
    this.wait = options.wait;
    this.saved = options.text;
    this.sent = options.draft?.text ?? options.text;
    this.stop = new AbortController();
    this.drafts_ = new DraftBox(options.draftKey, options.writer, options.text, options.savedVersion);
    this.undoBox = new UndoBox(options.undoKey);
    this.extensions = this.parts();
    this.view = new EditorView({ parent: root, state: this.undoBox.restore(options.text, this.extensions) ?? this.begin(options.text) });
    const on = (target, name, act) => target.addEventListener(name, act, { signal: this.stop.signal });
    on(window, "studio:point", e => this.light(e.detail));
    on(window, "beforeunload", e => { if (this.text() !== this.saved) e.preventDefault(); });
    on(window, "pagehide", () => this.keep());
    on(document, "visibilitychange", () => { if (document.hidden) this.flush(); });
    on(this.view.contentDOM, "mousemove", e => this.point(e));
    if (options.draft) this.takeUp(options.draft);
  }

  begin(text) { return EditorState.create({ doc: text, extensions: this.extensions }); }

  parts() {
    const { label, describedBy, empty, editor } = this.says;
    return [
      EditorState.phrases.of(editor),
      EditorView.contentAttributes.of({
        "aria-label": label, "aria-describedby": describedBy, tabindex: "0", spellcheck: "false", autocapitalize: "off", autocorrect: "off", autocomplete: "off",
      }),
      EditorView.lineWrapping,
      placeholder(empty),
      lineNumbers(),
      sections(this.says),
      counts,
      history(),
      highlightActiveLine(),
      highlightActiveLineGutter(),
      lit,
      findings(this.says),
      search({ top: true }),
      codeFolding(),
      autocompletion({
        override: [context => this.complete(context)], selectOnOpen: false, interactionDelay: 0, activateOnTypingDelay: 60, icons: false,
        defaultKeymap: false, maxRenderedOptions: 30, tooltipClass: () => "words-choices",
      }),
      Prec.highest(keymap.of([
        { key: "Tab", run: view => takeFirst(view) },
        ...completionKeymap,
      ])),
      keymap.of([
        { key: "F8", run: view => this.reach(nextFinding(view, 1)), shift: view => this.reach(nextFinding(view, -1)), preventDefault: true },
        { key: "F1", run: explain, preventDefault: true },
        { key: "Alt-Enter", run: mend, preventDefault: true },
        ...searchKeymap, ...historyKeymap, ...foldKeymap, ...defaultKeymap,
      ]),
      EditorView.updateListener.of(update => this.updated(update)),
    ];
  }

  dispose() {
    this.keep();
    for (const timer of [this.timer, this.caretTimer, this.pointTimer, this.undoTimer]) clearTimeout(timer);
    this.stop.abort();
    this.view.destroy();
  }

  updated(update) {
    if (update.docChanged) this.changed();
    if (update.selectionSet || update.docChanged) this.caret();
  }

  changed() {
    // Kept at once, so that not even the last letter is lost; the longest texts wait for a pause.
    if (this.view.state.doc.length < 100_000) this.drafts_.keep(this.text());
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.flush(), this.wait);
    clearTimeout(this.undoTimer);
    this.undoTimer = setTimeout(() => this.undoBox.keep(this.view.state), 1000);
  }

  /** Tells the server what it does not know yet. Where it can't be told, the words wait for the next time. */
  async flush() {
    clearTimeout(this.timer);
    const now = this.text(), before = this.sent;
    this.drafts_.keep(now);
    const edit = difference(before, now);
    if (this.stop.signal.aborted) return;
    if (!edit) return this.showAgain();
    [this.sent, this.answer] = [now, null];
    try {
      await this.server.invokeMethodAsync("Edited", edit.start, edit.removed, edit.inserted, now.length);
    } catch {
      if (this.sent === now) this.sent = before;
      if (!this.stop.signal.aborted) this.timer = setTimeout(() => this.flush(), 2000);
    }
  }

  keep() {
    this.drafts_.keep(this.text());
    this.undoBox.keep(this.view.state);
  }

  text() { return this.view.state.doc.toString(); }

  /** What kind of thing the reader sits at. */
  place() {
    if (!matchMedia("(pointer: coarse)").matches) return "computer";
    return Math.min(screen.width, screen.height) < 600 ? "phone" : "tablet";
  }

  /** Goes on with a draft: as its writer left it, with its undo where this browser has it. */
  takeUp(draft) {
    this.drafts_.growOutOf(draft);
    const state = this.undoBox.restore(draft.text, this.extensions);
    if (state) { this.view.setState(state); this.changed(); } else this.replaceAll(draft.text);
    this.flush();
  }

  /** Drops the draft that the words grew out of, and this one. */
  giveUp() { this.drafts_.drop(); }

  /** The words were saved as they are in `text`; later typing stays unsaved. */
  markSaved(text, version) {
    this.saved = text;
    this.drafts_.saved(text, version, this.text());
  }

  /** Somebody else saved: takes their words where nothing here is unsaved. Says whether it did. */
  overtake(text, version) {
    if (this.text() !== this.saved) return false;
    this.saved = text;
    this.drafts_.saved(text, version, text);
    const edit = difference(this.text(), text);
    if (edit) this.view.dispatch({ changes: { from: edit.start, to: edit.start + edit.removed, insert: edit.inserted }, annotations: [byProgram.of(true), isolateHistory.of("full")] });
    this.flush();
    return true;
  }

  /** Replaces words so that undo takes it back. Only where they are still as expected. */
  replace(start, expected, words) {
    const end = start + expected.length;
    if (end > this.view.state.doc.length || this.view.state.sliceDoc(start, end) !== expected) return false;
    this.view.dispatch({
      changes: { from: start, to: end, insert: words }, selection: EditorSelection.cursor(start + words.length),
      userEvent: "input.complete", annotations: isolateHistory.of("full"), scrollIntoView: true,
    });
    this.view.focus();
    this.flush();
    return true;
  }

  replaceAll(text) {
    const edit = difference(this.text(), text);
    if (!edit) return;
    this.view.dispatch({ changes: { from: edit.start, to: edit.start + edit.removed, insert: edit.inserted }, annotations: isolateHistory.of("full") });
    this.flush();
  }

  select(start, length) {
    const most = this.view.state.doc.length, from = Math.min(start, most), to = Math.min(start + length, most);
    this.view.dispatch({ selection: EditorSelection.single(from, to), effects: EditorView.scrollIntoView(from, { y: "center" }) });
    this.view.contentDOM.focus({ preventScroll: true });
    this.bringIntoView(from);
  }

  /** Scrolls the page only where the editor itself can't be seen. */
  bringIntoView(at) {
    this.view.requestMeasure({
      read: view => view.coordsAtPos(at),
      write: place => { if (place && (place.top < 130 || place.bottom > innerHeight - 90)) this.view.dom.scrollIntoView({ block: "center", behavior: "instant" }); },
    });
  }

  /** Shows what the server found in the words as it last heard them. */
  show(marks, notes, folds) {
    this.answer = [marks, notes, folds];
    if (this.text() === this.sent) this.showAgain(); // else typed on since: the next answer fits
  }

  /** What was typed was taken back before the server heard of it: its answer still fits, though the typing swept marks away. */
  showAgain() {
    if (this.answer) this.view.dispatch({ effects: shown(this.view.state, ...this.answer) });
  }

  undo() { undo(this.view); this.view.focus(); }

  redo() { redo(this.view); this.view.focus(); }

  find() { openSearchPanel(this.view); }

  next() { this.reach(nextFinding(this.view, 1)); this.view.focus(); }

  reach(found) {
    if (found) this.server.invokeMethodAsync("Reached", found.from).catch(() => {});
    return true;
  }

  light(words) {
    const most = this.view.state.doc.length;
    const to = words && Math.min(words.to, most);
    this.view.dispatch({ effects: setLit.of(words && words.from < to ? { from: words.from, to } : null) });
  }

  /** The words under the pointer light their symbols in the chart. */
  point(e) {
    const { clientX: x, clientY: y } = e;
    clearTimeout(this.pointTimer);
    this.pointTimer = setTimeout(() => {
      const at = this.view.posAtCoords({ x, y });
      if (at !== null) tellCaret(at);
    }, 40);
  }

  caret() {
    clearTimeout(this.caretTimer);
    this.caretTimer = setTimeout(() => {
      const { state } = this.view, at = state.selection.main.head;
      tellCaret(at);
      const line = state.doc.lineAt(at).number;
      if (line === this.caretLine || this.stop.signal.aborted) return;
      this.caretLine = line;
      this.server.invokeMethodAsync("CaretMoved", line).catch(() => {});
    }, 120);
  }

  /** What can come next: asked of the server, with no more of the words than it does not have yet. */
  async complete(context) {
    const line = context.state.doc.lineAt(context.pos);
    const before = line.text.slice(0, context.pos - line.from);
    if (!context.explicit && !/\p{L}[\p{L}\d-]+$/u.test(before)) return null;
    if (this.sent.slice(0, line.from) !== context.state.sliceDoc(0, line.from)) await this.flush();
    const answer = await this.server.invokeMethodAsync("Complete", line.from, before, context.explicit).catch(() => null);
    if (context.aborted) return null;
    // No choices are an answer as well: after none at all the editor would not ask again for what was typed meanwhile.
    if (!answer || answer.length === 0) return { from: context.pos, options: [] };
    const from = line.from + Math.min(...answer.map(choice => choice.from));
    return {
      from, filter: false,
      options: answer.map(choice => ({
        label: choice.words, detail: choice.says,
        apply: (view, _, __, to) => view.dispatch({
          changes: { from: line.from + choice.from, to, insert: choice.words },
          selection: EditorSelection.cursor(line.from + choice.from + choice.words.length), userEvent: "input.complete", scrollIntoView: true,
        }),
      })),
    };
  }
}

/** Tab takes the choice moved to, or else the first. Without choices it leaves the editor, as everywhere. */
function takeFirst(view) {
  if (completionStatus(view.state) !== "active") return false;
  if (selectedCompletionIndex(view.state) === null) view.dispatch({ effects: setSelectedCompletion(0) });
  return acceptCompletion(view) || closeCompletion(view);
}

function tellCaret(at) {
  window.dispatchEvent(new CustomEvent("studio:caret", { detail: { at } }));
}

/** The smallest single edit that makes `now` out of `before`; null for none. Never splits a surrogate pair. */
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
