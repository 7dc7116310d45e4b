// What the design desk asks of the browser: whether there is room for two columns, and its keys.

export function watch(server) {
  const narrow = matchMedia("(max-width: 1023px)");
  const stop = new AbortController();
  const tell = () => server.invokeMethodAsync("RoomChanged", narrow.matches);
  narrow.addEventListener("change", tell, { signal: stop.signal });
  window.addEventListener("keydown", e => {
    if ((e.ctrlKey || e.metaKey) && !e.altKey && e.key.toLowerCase() === "s") {
      e.preventDefault();
      server.invokeMethodAsync("SaveKey");
    }
  }, { signal: stop.signal });
  tell();
  return { dispose: () => stop.abort() };
}
