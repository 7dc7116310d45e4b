// What this browser keeps of a design between two visits: words that are not saved, and how to undo them.

import { EditorState, historyField } from "./vendor/codemirror.js";

/** Words of a design that were not saved, by desks that were open before or are open in another window. What says just what is saved is let go. */
export function unsaved(key, saved) {
  const prefix = prefixOf(key), found = [];
  try {
    for (const name of Object.keys(localStorage)) {
      if (!name.startsWith(prefix)) continue;
      const draft = read(name);
      if (!draft || draft.text === saved) localStorage.removeItem(name);
      else found.push({ ...draft, writer: name.slice(prefix.length), place: "" });
    }
  } catch { /* no storage: the server has its own */ }
  return found;
}

const prefixOf = key => `${key}:`;

/** Unsaved words. Each open desk keeps its own, so that two windows never write over each other. */
export class DraftBox {
  constructor(key, writer, saved, version) {
    this.prefix = prefixOf(key);
    this.key = this.prefix + writer;
    this.savedWords = saved;
    this.version = version;
  }

  keep(text) {
    try {
      if (text === this.kept) return;
      this.kept = text;
      if (text === this.savedWords) { localStorage.removeItem(this.key); return; }
      localStorage.setItem(this.key, JSON.stringify({ text, basedOn: this.version, at: new Date().toISOString() }));
      this.dropOrigin();
    } catch {
      // No room or no storage: the server keeps a draft too, and the page warns before it closes. What lies here is older than that by now.
      try { localStorage.removeItem(this.key); } catch { /* no storage */ }
    }
  }

  /** The words go on from this draft: it goes when they are kept, unless its own writer has gone on. */
  growOutOf(draft) { this.origin = { key: this.prefix + draft.writer, text: draft.text }; }

  dropOrigin() {
    if (!this.origin) return;
    if (read(this.origin.key)?.text === this.origin.text) localStorage.removeItem(this.origin.key);
    this.origin = null;
  }

  drop() {
    this.kept = undefined;
    try {
      localStorage.removeItem(this.key);
      this.dropOrigin();
    } catch { /* nothing was kept */ }
  }

  saved(words, version, now) {
    this.savedWords = words;
    this.version = version;
    this.drop();
    this.keep(now);
  }
}

function read(key) {
  try { return JSON.parse(localStorage.getItem(key)); } catch { return null; }
}

/** The undo history of a design: good for the very words that it ends with. */
export class UndoBox {
  static most = 400_000; // characters; a browser gives a site about five million

  constructor(key) { this.key = key; }

  keep(state) {
    try {
      const { doc, history } = state.toJSON({ history: historyField });
      let kept = JSON.stringify({ of: mark(doc), history });
      while (kept.length > UndoBox.most && history.done.length > 0) {
        history.done.splice(0, Math.ceil(history.done.length / 2));
        history.undone = [];
        kept = JSON.stringify({ of: mark(doc), history });
      }
      if (kept.length <= UndoBox.most) localStorage.setItem(this.key, kept);
    } catch { /* undo lasts as long as the page, then */ }
  }

  /** The words with their history; null where none is kept of just these words. */
  restore(text, extensions) {
    try {
      const kept = read(this.key);
      if (!kept || kept.of !== mark(text)) return null;
      const json = { doc: text, selection: { ranges: [{ anchor: 0, head: 0 }], main: 0 }, history: kept.history };
      return EditorState.fromJSON(json, { extensions }, { history: historyField });
    } catch { return null; }
  }
}

/** Length and FNV-1a sum: enough to know the same words again. */
function mark(text) {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  return `${text.length}:${sum >>> 0}`;
}
