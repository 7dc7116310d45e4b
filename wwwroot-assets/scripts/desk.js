// What the design desk asks of the browser: whether there is room for two columns, its keys, files, and the printer.

export function watch(server) {
  const narrow = matchMedia("(max-width: 1023px)");
  const stop = new AbortController();
  const tell = () => server.invokeMethodAsync("RoomChanged", narrow.matches);
  narrow.addEventListener("change", tell, { signal: stop.signal });
  window.addEventListener("keydown", e => {
    const told = (e.ctrlKey || e.metaKey) && !e.altKey && !e.shiftKey && { s: "SaveKey", p: "PrintKey" }[e.key.toLowerCase()];
    if (!told) return;
    e.preventDefault();
    server.invokeMethodAsync(told);
  }, { signal: stop.signal });
  tell();
  // Later, since the page waits for whoever reads the dialog of the printer, and the server must not.
  return { dispose: () => stop.abort(), download, print: () => { setTimeout(() => window.print(), 100); } };
}

// A file of words made here and now. The mark at its beginning tells spreadsheets that it is UTF-8.
function download(name, words) {
  const address = URL.createObjectURL(new Blob(["\ufeff", words], { type: "text/csv;charset=utf-8" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name.replace(/[\\/:*?"<>|]+/g, "-");
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
