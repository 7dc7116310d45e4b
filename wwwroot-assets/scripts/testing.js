// What a tester's own device keeps for her: which rows are done, and a report half written. Nothing of it is sent. Pages work without it.
(function () {
  const page = document.body.dataset.round;
  if (!page) return;

  function read(key) {
    try { return JSON.parse(localStorage.getItem(key)) || {}; } catch { return {}; }
  }

  function write(key, value) {
    try { localStorage.setItem(key, JSON.stringify(value)); } catch { /* a private window keeps nothing */ }
  }

  function forget(key) {
    try { localStorage.removeItem(key); } catch { /* nothing was kept */ }
  }

  // Rows to tick off. A sentence that stands for many rows has a counter.
  const rows = [...document.querySelectorAll(".sheet-row")];
  if (rows.length > 0) {
    const key = "tester-rows-" + page;
    const done = read(key);
    const all = rows.reduce((sum, row) => sum + Number(row.dataset.times), 0);
    const bar = document.createElement("p");
    bar.className = "progress no-print";
    bar.setAttribute("role", "status");
    document.querySelector(".sheet").before(bar);

    const tell = () => {
      const sum = rows.reduce((so, row) => so + Math.min(done[row.dataset.row] || 0, Number(row.dataset.times)), 0);
      bar.textContent = sum + " of " + all + " rows done. Your ticks stay on this device.";
    };
    const set = (row, count) => {
      done[row.dataset.row] = count;
      write(key, done);
      show(row);
      tell();
    };
    const show = row => {
      const times = Number(row.dataset.times), count = Math.min(done[row.dataset.row] || 0, times);
      row.classList.toggle("done", count === times);
      const tick = row.querySelector("input");
      if (tick) tick.checked = count === times;
      const number = row.querySelector("output");
      if (number) number.textContent = count + " / " + times;
    };
    const button = (row, sign, name, step) => {
      const made = document.createElement("button");
      made.type = "button";
      made.className = "count-step";
      made.textContent = sign;
      made.setAttribute("aria-label", name + ": " + row.dataset.row);
      made.addEventListener("click", () => set(row, Math.max(0, Math.min(Number(row.dataset.times), (done[row.dataset.row] || 0) + step))));
      return made;
    };

    for (const row of rows) {
      const tools = document.createElement("span");
      tools.className = "row-tools no-print";
      if (Number(row.dataset.times) === 1) {
        const tick = document.createElement("input");
        tick.type = "checkbox";
        tick.setAttribute("aria-label", row.dataset.row + " done");
        tick.addEventListener("change", () => set(row, tick.checked ? 1 : 0));
        tools.append(tick);
      } else {
        tools.append(button(row, "−", "one row less", -1), document.createElement("output"), button(row, "+", "one row done", 1));
      }
      row.prepend(tools);
      row.classList.add("with-tools");
      show(row);
    }
    tell();
  }

  // A report half written.
  const form = document.querySelector("form.report");
  if (form) {
    const key = "tester-draft-" + page;
    const fields = [...form.querySelectorAll("input.input, textarea.input, select.input")];
    if (form.dataset.draft === "new") {
      const draft = read(key);
      for (const field of fields)
        if (draft[field.name]) {
          field.value = draft[field.name];
          field.closest("details")?.setAttribute("open", "");
        }
    }
    form.addEventListener("input", () => write(key, Object.fromEntries(fields.map(field => [field.name, field.value]))));
    form.addEventListener("submit", () => write("tester-sent", { key }));
    document.getElementById("trouble")?.focus();
  }

  if (document.querySelector("[data-sent]")) {
    const sent = read("tester-sent");
    if (sent.key) forget(sent.key);
    forget("tester-sent");
  }
})();
