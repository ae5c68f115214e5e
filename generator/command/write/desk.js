// What the scripts of a page that is written share: words, elements, questions.
// They are sent as one file, each with its pieces in one object.
const baybinderDesk = (() => {
  const tag = document.currentScript;
  const w = JSON.parse(tag.dataset.words);
  const token = tag.dataset.token;
  const page = decodeURIComponent(location.pathname).slice(1) || "index.html";
  const main = document.getElementById("main");

  const keep = (name, value) => { try { sessionStorage.setItem(name, value); } catch { /* it is only convenience */ } };
  const kept = (name) => { try { return sessionStorage.getItem(name); } catch { return null; } };
  const fill = (text, ...values) => values.reduce((t, v, i) => t.replaceAll(`{${i}}`, v), text);

  // h makes an element: "button.far", its properties, what is in it.
  const h = (name, props, ...inside) => {
    const [kind, ...classes] = name.split(".");
    const e = document.createElement(kind);
    if (kind === "button") e.type = "button";
    if (classes.length) e.className = classes.join(" ");
    for (const [key, value] of Object.entries(props ?? {})) {
      if (key in e && key !== "list") e[key] = value;
      else e.setAttribute(key, value);
    }
    e.append(...inside.flat().filter((x) => x !== null && x !== undefined && x !== ""));
    return e;
  };
  const program = (text, lang = w.Told) => h("span", { lang, dir: "ltr" }, text); // what is found may be told in another language
  const count = (n, none, one, many) => n === 0 ? none : n === 1 ? one : fill(many, n);
  const counts = (x) => [count(x.errors, w.NothingToMend, w.OneToMend, w.ManyToMend), count(x.advice, "", w.OneHint, w.ManyHints)].filter(Boolean).join(", ");

  // post asks the program about this page. The body is JSON, or a picture.
  const post = async (route, body, kind) => {
    const answer = await fetch("/.write/" + route, {
      method: "POST",
      headers: { "Content-Type": kind ?? "application/json", "Baybinder-Token": token },
      body: kind ? body : JSON.stringify({ page, ...body }),
    }).catch(() => null);
    if (!answer) return { ok: false, why: "NoAnswer" };
    if (!(answer.headers.get("Content-Type") ?? "").startsWith("application/json")) {
      return { ok: false, why: "NotSaved", more: await answer.text() };
    }
    return { ...(await answer.json()), ok: answer.ok };
  };
  const whyNot = (told) => fill(w[told.why] ?? w.NotSaved, told.why === "Missing" ? w.Fields[told.more] ?? told.more : told.more ?? "");

  // asks is a button that puts a form in its own place.
  const asks = (text, label, form) => {
    const button = h("button.quiet", { "aria-label": label, onclick: async () => {
      const box = await form();
      box.dataset.asks = label;
      button.replaceWith(box);
      box.querySelector("input, select, button")?.focus();
    } }, text);
    return button;
  };
  // small is a form of one field, and oneLine such a field.
  const small = (field, done, close) => h("form.write-small", { onsubmit: (e) => { e.preventDefault(); if (field.value.trim()) done(field.value); } },
    field, h("button.save", { type: "submit" }, w.Put), h("button", { onclick: close }, w.Close));
  const oneLine = (label, value) => h("input", { value, "aria-label": label, dir: "auto" });

  // renamesID is a button that asks for another id of an entry, or of the page's
  // own procedure or machine: everything that names it follows. done is told what
  // came of it, and what is to be said; close shows again what stood before.
  const renamesID = (list, id, state, done, close) => {
    const label = fill(w.RenameWhat, w.NameInFiles + ": " + id);
    return asks(w.Rename, label, async () => {
      const said = h("p.write-said", { role: "alert" });
      return h("div", {}, small(oneLine(label, id), inTurn(async (text) => {
        const told = await post("rename", { in: list, id, state, fields: { id: [text] } });
        if (!told.ok) { said.textContent = whyNot(told); return; }
        if (told.page) { location.href = "/" + told.page; return; }
        const anew = told.renamed.reissue.length ? " " + fill(w.IssueAnew, told.renamed.reissue.join(", ")) : "";
        done(told, fill(w.RenamedTo, told.renamed.id, told.renamed.places, told.renamed.files) + anew);
      }), close), said);
    });
  };

  // staying notes where the keys are in a view, and gives what puts them there
  // again once it was drawn anew: on the same thing, on the button that opened the
  // form they were in, or where otherwise leads.
  const staying = (view, otherwise) => {
    const had = document.activeElement;
    if (!had || !view.contains(had)) return () => {};
    const called = (e) => e.getAttribute("aria-label") ?? (e.textContent || e.type);
    const part = (e) => e.closest("[id], [aria-labelledby]")?.getAttribute("aria-labelledby") ?? e.closest("[id]")?.id;
    const [name, within, asker] = [called(had), part(had), had.closest("[data-asks]")?.dataset.asks];
    return () => {
      if (document.activeElement && document.activeElement !== document.body) return;
      const all = [...view.querySelectorAll("button, input, select, textarea, summary")].filter((e) => !e.disabled && e.checkVisibility());
      const same = all.filter((e) => e.tagName === had.tagName && called(e) === name);
      (same.find((e) => part(e) === within) ?? (same.length === 1 ? same[0] : null) ?? all.find((e) => asker && called(e) === asker) ?? otherwise())?.focus();
    };
  };

  // What a press does waits until what the last one did is done.
  let line = Promise.resolve();
  const inTurn = (f) => (...args) => (line = line.then(() => f(...args)).catch((e) => { console.error(e); }));

  // The page becomes one that is written, and stays so from page to page until
  // the writer stops.
  const writable = (enter) => {
    const view = h("div.write", { lang: w.Lang });
    const leave = () => {
      keep("baybinder-write", "");
      location.reload();
    };
    let writing = false;
    document.addEventListener("watch-anew", (e) => { if (writing) e.preventDefault(); }); // what is not saved stays
    const on = async () => {
      writing = true;
      writing = await enter(view, (said) => { button.title = said; });
      if (!writing) return;
      keep("baybinder-write", "on");
      document.body.classList.add("writing");
      document.body.classList.remove("is-worked"); // nobody works by what is being written
      main.replaceChildren(view);
      button.setAttribute("aria-pressed", "true");
    };
    const button = h("button.write-switch", { "aria-pressed": "false", lang: w.Lang, onclick: () => (view.isConnected ? leave() : on()) }, w.Write);
    (document.querySelector(".binder") ?? main).append(button);
    if (kept("baybinder-write") === "on") on();
    return leave;
  };
  return { w, page, main, keep, kept, fill, h, program, counts, post, whyNot, inTurn, staying, writable, asks, small, oneLine, renamesID };
})();
