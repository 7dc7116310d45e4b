// What the words' editor uses of CodeMirror, as one module. See 'The editor's parts' in DEVELOPERS.md for how to bundle it anew.

export { Annotation, EditorSelection, EditorState, Prec, RangeSet, StateEffect, StateField } from "@codemirror/state";
export {
  Decoration, EditorView, GutterMarker, WidgetType, drawSelection, gutter, highlightActiveLine, highlightActiveLineGutter, hoverTooltip,
  keymap, lineNumbers, placeholder, showTooltip,
} from "@codemirror/view";
export { defaultKeymap, history, historyField, historyKeymap, isolateHistory, redo, undo } from "@codemirror/commands";
export { codeFolding, foldGutter, foldKeymap, foldService } from "@codemirror/language";
export { openSearchPanel, search, searchKeymap } from "@codemirror/search";
export {
  acceptCompletion, autocompletion, closeCompletion, completionKeymap, completionStatus, moveCompletionSelection, selectedCompletionIndex,
  setSelectedCompletion, startCompletion,
} from "@codemirror/autocomplete";
