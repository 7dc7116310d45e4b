using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>Walks a page by the Tab key alone and notes what is not reached, what does not show that it is reached, and what lies hidden when it is.</summary>
internal sealed class KeyWalk(IPage page)
{
    private const int Most = 400;

    /// <summary>Notes how everything that can be used looks without focus. Of radio buttons of one name the keyboard stops at one; arrows go to the others, as among tabs.</summary>
    private const string Begin =
        """
        () => {
          const dialog = [...document.querySelectorAll("[role=dialog]")].at(-1);
          const room = dialog ?? document.body;
          if (!dialog) { document.body.tabIndex = -1; document.body.focus({ preventScroll: true }); document.body.removeAttribute("tabindex"); scrollTo(0, 0); }
          else document.activeElement.blur();
          const look = element => {
            const style = (e, p) => { const s = getComputedStyle(e, p); return [s.outlineStyle, s.outlineWidth, s.outlineColor, s.boxShadow, s.borderColor].join(); };
            let all = style(element) + style(element, "::after") + style(element, "::before");
            for (let up = element.parentElement, i = 0; up && i < 6; up = up.parentElement, i++) { const s = getComputedStyle(up); all += s.boxShadow + s.outlineStyle; }
            return all;
          };
          // Empty stops at both ends of a dialog, which send the focus on to its other end.
          const isBumper = e => e.matches("div[tabindex='0']") && e.childElementCount === 0 && !e.textContent.trim();
          window.keyWalk = { look, isBumper, seen: new Map(), room };
          const used = [...room.querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex], [contenteditable=true]")].filter(e => {
            const box = e.getBoundingClientRect();
            return !e.matches(":disabled, [type=hidden], [tabindex^='-']") && box.width * box.height > 0 && e.checkVisibility({ visibilityProperty: true }) && !e.closest("[inert]")
              && !e.classList.contains("skip") && !keyWalk.isBumper(e);
          });
          const radios = new Set();
          for (const e of used) {
            if (e.type === "radio") { const name = e.name; if (radios.has(name)) continue; radios.add(name); }
            keyWalk.seen.set(e, { look: look(e), reached: false });
          }
          return keyWalk.seen.size;
        }
        """;

    /// <summary>Where the focus is now; empty once the walk has come round.</summary>
    private const string Step =
        """
        () => {
          const e = document.activeElement;
          if (!e || e === document.body) return { at: "body", faults: [] };
          const name = `${e.tagName.toLowerCase()}${e.id ? "#" + e.id : ""}${e.className && e.className.split ? "." + e.className.split(" ").join(".") : ""} '${(e.getAttribute("aria-label") ?? e.innerText ?? e.value ?? "").slice(0, 40)}'`;
          if (keyWalk.isBumper(e)) return { at: "bumper", faults: [] };
          if (!keyWalk.room.contains(e)) return { at: "outside", faults: keyWalk.room === document.body ? [] : [`the focus left the dialog for ${name}`] };
          let noted = keyWalk.seen.get(e);
          if (!noted && e.type === "radio") noted = [...keyWalk.seen].find(([other]) => other.type === "radio" && other.name === e.name)?.[1];
          if (!noted) return { at: name, faults: [] };
          // A field of a date has stops of its own within.
          if (keyWalk.last === e) return { at: "within", faults: [] };
          keyWalk.last = e;
          if (noted.reached) return { at: "round", faults: [] };
          noted.reached = true;
          const faults = [];
          if (keyWalk.look(e) === noted.look && e.type !== "radio") faults.push(`no visible focus: ${name}`);
          const box = e.getBoundingClientRect();
          if (box.bottom < 0 || box.top > innerHeight) faults.push(`reached but out of sight: ${name}`);
          else {
            const x = Math.max(1, Math.min(innerWidth - 2, box.left + Math.min(box.width / 2, 40))), y = Math.max(1, Math.min(innerHeight - 2, (Math.max(box.top, 0) + Math.min(box.bottom, innerHeight)) / 2));
            const over = document.elementFromPoint(x, y);
            if (over && !e.contains(over) && !over.contains(e) && !over.closest("label") && !e.closest(".for-readers")) faults.push(`reached but covered by ${over.tagName.toLowerCase()}.${over.className}: ${name}`);
          }
          return { at: name, faults };
        }
        """;

    private const string Rest =
        """
        () => [...keyWalk.seen].filter(([e, noted]) => !noted.reached && e.isConnected).map(([e]) => `not reached: ${e.tagName.toLowerCase()}.${e.className} '${(e.getAttribute("aria-label") ?? e.innerText ?? e.value ?? "").slice(0, 40)}'`)
        """;

    private readonly List<string> faults = [];

    public IReadOnlyList<string> Faults => faults;

    /// <summary>Walks the page as it is; an open dialog alone where there is one.</summary>
    /// <param name="name">What to call it in the faults.</param>
    public async Task AtAsync(string name)
    {
        int stops = await page.EvaluateAsync<int>(Begin);
        Assert.True(stops > 0, $"{name}: nothing to walk");
        for (int i = 0, lost = 0; i < Math.Min(Most, (stops * 2) + 20) && lost < 3; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            Stop stop = await page.EvaluateAsync<Stop>(Step);
            if (stop.At == "bumper") await page.WaitForTimeoutAsync(150);
            faults.AddRange(stop.Faults.Select(fault => $"{name}: {fault}"));
            lost = stop.At is "body" or "round" or "outside" ? lost + 1 : 0;
        }

        faults.AddRange((await page.EvaluateAsync<string[]>(Rest)).Select(fault => $"{name}: {fault}"));
    }

    /// <summary>Walks the dialog that is being opened, once it has taken the focus: on a busy machine that is a good while after it shows.</summary>
    public async Task OpenDialogAsync(string name)
    {
        await Assertions.Expect(page.GetByRole(AriaRole.Dialog)).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("[role=dialog] :focus, [role=dialog]:focus")).ToHaveCountAsync(1);
        await page.WaitForTimeoutAsync(300);
        await AtAsync(name);
    }

    /// <summary>Opens a dialog by its opener's key, walks it, closes it by Escape: the focus goes in, stays in, and comes back.</summary>
    public async Task DialogAsync(string name, ILocator opener)
    {
        await opener.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        ILocator dialog = page.GetByRole(AriaRole.Dialog);
        await OpenDialogAsync(name);
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(dialog).ToHaveCountAsync(0);
        await page.WaitForTimeoutAsync(300);
        if (!await opener.EvaluateAsync<bool>("opener => opener === document.activeElement")) faults.Add($"{name}: the focus did not come back to its opener, but is at {await page.EvaluateAsync<string>("document.activeElement.outerHTML.slice(0, 120)")}");
    }

    private sealed class Stop
    {
        public string At { get; set; } = "";

        public string[] Faults { get; set; } = [];
    }
}

/// <summary>Going about by keys.</summary>
internal static class KeyActs
{
    /// <summary>Presses Tab until something has the focus.</summary>
    public static async Task TabToAsync(this IPage page, ILocator wanted, string key = "Tab")
    {
        await Assertions.Expect(wanted).ToBeVisibleAsync();
        for (int i = 0; i < 120; i++)
        {
            if (await wanted.EvaluateAsync<bool>("element => element === document.activeElement")) return;
            await page.Keyboard.PressAsync(key);
        }

        Assert.Fail($"The Tab key does not come to {wanted}.");
    }
}
