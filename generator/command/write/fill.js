// Fills a machine's file by choosing, and begins procedures and machines.
(() => {
  const { w, page, main, keep, kept, fill, h, program, counts, post, whyNot, inTurn, staying, writable, form, renamesID } = baybinderDesk;
  if (!main) return;

  // A machine: a list for each section of its file, and a form for a new entry.
  const machine = () => {
    let view = null, shown = null, message = "", alarm = false, asking = null;
    const back = inTurn(async (route, name) => {
      const told = await post(route, {});
      if (told.page && told.page !== page) { location.href = "/" + told.page; return; }
      if (told.machine) shown = told.machine;
      message = told.ok ? name : whyNot(told);
      alarm = !told.ok;
      render();
    });
    const render = () => {
      const stay = staying(view, () => view.querySelector("h1"));
      view.replaceChildren(h("div.write-sheet", {},
        h("div.write-top", {},
          h("p.write-file", {}, h("b", { title: shown.file }, shown.file.split("/").at(-1)), " · ", counts(shown)),
          h("div.write-keys", {},
            h("button", { disabled: !shown.back, onclick: () => back("undo", fill(w.Undone, shown.back.file)) }, w.Undo),
            h("button", { disabled: !shown.forth, onclick: () => back("redo", fill(w.Saved, shown.file)) }, w.Redo),
            h("button", { onclick: leave }, w.Leave)),
          h(alarm ? "p.write-said.alarm" : "p.write-said", { role: alarm ? "alert" : "status" }, message)),
        h("div.write-head", {}, h("h1", { dir: "auto", tabIndex: -1 }, shown.title)),
        h("dl.write-front", {}, h("div", {}, h("dt", {}, w.NameInFiles), h("dd", {}, h("code", {}, shown.id), renamesID("machines", shown.id, shown.state, () => {}, render)))),
        (shown.found ?? []).map((f) => h(f.error ? "div.write-found" : "div.write-found.hint", {}, h("p", {}, program(f.message, f.lang), f.mend ? h("small", {}, program(f.mend, f.lang)) : null))),
        shown.sections.map((s) => section(s))));
      stay();
      view.querySelector(".write-form")?.scrollIntoView({ block: "nearest" });
    };
    const section = (s) => {
      const id = "write-in-" + s.in;
      const place = h("div");
      if (asking?.in === s.in && !asking.id) place.append(asking.node);
      return h("section.write-section", { "aria-labelledby": id }, h("h2", { id }, w.Lists[s.in]),
        s.entries.length ? h("ul.write-entries", {}, s.entries.map((e) => entry(s.in, e))) : h("p", {}, w.NoneYet),
        asking?.in === s.in && !asking.id ? null : h("button.write-add", { onclick: () => open(s.in, "") }, w.Entries[s.in]), place);
    };
    const entry = (list, e) => {
      if (asking?.in === list && asking.id === e.id) return h("li", {}, asking.node);
      return h("li.write-entry", { dir: "auto" },
        h("div", {}, h("b", {}, e.label), (e.facts ?? []).length ? h("small", {}, " ", e.facts.join(" · ")) : null),
        h("button.quiet", { "data-id": e.id, "aria-label": fill(w.ChangeWhat, e.label), onclick: () => open(list, e.id) }, w.Change));
    };
    const open = inTurn(async (list, id) => {
      const end = () => {
        asking = null;
        render();
        view.querySelector(`[aria-labelledby="write-in-${list}"] ${id ? `[data-id="${id}"]` : "> .write-add"}`)?.focus();
      };
      const node = await form(list, (told, name, _fresh, said) => {
        shown = told.machine;
        message = said ?? fill(w.WroteEntry, name);
        alarm = false;
        end();
      }, end, null, id);
      asking = { in: list, id, node };
      render();
    });
    const leave = writable(async (into, refused) => {
      const told = await post("open", {});
      if (!told.machine) { refused(whyNot(told)); return false; }
      view = into;
      shown = told.machine;
      render();
      return true;
    });
  };

  // The front page: something new.
  const front = async () => {
    const told = await post("machines", {});
    if (!told.ok) return;
    const machines = told.machines ?? [];
    const name = h("input", { dir: "auto" });
    const select = h("select", {}, h("option", { value: "" }, w.AnyMachine), machines.map((m) => h("option", { value: m.id }, m.label)));
    const from = h("select", {});
    const old = h("textarea", { rows: 4, dir: "auto" });
    const oldBox = h("label.write-asked", { hidden: true }, h("span", {}, w.OldText), old);
    const starts = () => {
      const parts = machines.find((m) => m.id === select.value)?.parts ?? [];
      from.replaceChildren(h("option", { value: "" }, w.FromNothing), h("option", { value: "text" }, w.FromText),
        ...parts.map((p) => h("option", { value: "part " + p.id }, fill(w.FromPart, p.label))));
      oldBox.hidden = true;
    };
    select.addEventListener("change", starts);
    from.addEventListener("change", () => { oldBox.hidden = from.value !== "text"; });
    starts();
    const said = h("p.write-said", { role: "alert" });
    const begin = inTurn(async (fields) => {
      const answer = await post("begin", { fields });
      if (answer.ok) {
        keep("baybinder-write", "on");
        location.href = "/" + answer.page;
        return;
      }
      said.textContent = whyNot(answer);
    });
    const machineName = h("input", { dir: "auto" });
    const asked = (label, input) => h("label.write-asked", {}, h("span", {}, label), input);
    const box = h("details.write.write-begin", { lang: w.Lang }, h("summary", {}, h("span", {}, w.BeginNew)), said,
      h("form.write-form", { onsubmit: (e) => {
        e.preventDefault();
        const [kind, part] = from.value.split(" ");
        begin({ title: [name.value], machine: [select.value], part: [part ?? ""], text: [kind === "text" ? old.value : ""] });
      } }, h("h2", {}, w.NewProcedure), asked(w.JobName, name), asked(w.ForMachine, select), asked(w.StartsFrom, from), oldBox,
        h("div.write-keys", {}, h("button.save", { type: "submit" }, w.BeginIt))),
      h("form.write-form", { onsubmit: (e) => { e.preventDefault(); begin({ name: [machineName.value] }); } },
        h("h2", {}, w.NewMachine), asked(w.MachineName, machineName), h("div.write-keys", {}, h("button.save", { type: "submit" }, w.BeginIt))));
    const shopTitle = h("input", { dir: "auto", value: told.shop.title });
    const shopLanguage = h("select", {}, told.shop.languages.map((l) => h("option", { value: l.id, lang: l.id }, l.label)));
    shopLanguage.value = told.shop.language;
    const saidOfShop = h("p.write-said", { role: "alert" });
    const shop = inTurn(async () => {
      const answer = await post("shop", { state: told.shop.state, fields: { title: [shopTitle.value], language: [shopLanguage.value] } });
      if (answer.ok) {
        keep("baybinder-began", "shop");
        location.reload();
      } else saidOfShop.textContent = whyNot(answer);
    });
    box.append(h("form.write-form", { onsubmit: (e) => { e.preventDefault(); shop(); } },
      h("h2", {}, w.TheShop), asked(w.ShopName, shopTitle), asked(w.ShopLanguage, shopLanguage), saidOfShop, h("div.write-keys", {}, h("button.save", { type: "submit" }, w.Put))));
    main.append(box);
    const summary = box.querySelector("summary");
    if (kept("baybinder-began") === "shop") summary.focus(); // the shop was named here: the keys stay
    summary.addEventListener("blur", () => keep("baybinder-began", ""));
    document.addEventListener("watch-anew", (e) => { if (box.open) e.preventDefault(); }); // what is answered stays
  };

  if (/^machines\/[^/.]+\.html$/.test(page) && page !== "machines/index.html") machine();
  if (page === "index.html") front();
})();
