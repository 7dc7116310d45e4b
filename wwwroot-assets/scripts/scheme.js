// Light or dark: the reader's choice, else the system's. Set before the first paint, and told to the server by a cookie.
(function () {
  const system = matchMedia("(prefers-color-scheme: dark)");

  function scheme() {
    try { return localStorage.getItem("scheme") || (system.matches ? "dark" : "light"); }
    catch { return system.matches ? "dark" : "light"; }
  }

  function show(name) {
    document.documentElement.dataset.scheme = name;
    document.cookie = "scheme=" + name + ";path=/;max-age=31536000;samesite=lax";
  }

  show(scheme());
  window.studioScheme = {
    choose(name) {
      try { localStorage.setItem("scheme", name); } catch { /* private window: the cookie alone keeps it */ }
      show(name);
    },
  };
})();
