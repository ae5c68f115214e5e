// What stands at a procedure's head: what it is for, for which machine, how it
// finds that. Each is changed where it stands.
(() => {
  const { w, h, fill, whyNot, asks, small, oneLine, renamesID } = baybinderDesk;

  // starting asks how the procedure finds the machine: in one touch as another
  // one leaves it, or thing by thing.
  const starting = (starts, now, act, close) => {
    const rows = now.map((s) => ({ id: s.id, label: s.label, word: s.word, said: s.said }));
    const groupOf = (id) => starts.things.find((g) => g.of.some((o) => o.id === id));
    const list = h("div"), add = h("select", { "aria-label": w.AddFound });
    const draw = (focus) => {
      list.replaceChildren(...rows.map((r, i) => {
        const words = groupOf(r.id)?.words ?? [];
        const all = words.some((x) => x.id === r.word) ? words : [...words, { id: r.word, label: r.said }];
        const select = h("select", { "aria-label": fill(w.HowFound, r.label), onchange: () => { r.word = select.value; } }, all.map((x) => h("option", { value: x.id }, x.label)));
        select.value = r.word;
        return h("div.write-option", {}, h("span", { dir: "auto" }, r.label), select,
          h("button.quiet", { "aria-label": w.TakeOut + ": " + r.label, onclick: () => { rows.splice(i, 1); draw(); add.focus(); } }, w.TakeOut));
      }));
      add.replaceChildren(h("option", { value: "" }, w.NothingChosen), ...starts.things.map((g) => h("optgroup", { label: w.Lists[g.in] ?? w.Tools },
        g.of.filter((o) => !rows.some((r) => r.id === o.id)).map((o) => h("option", { value: o.id }, o.label)))));
      if (focus) list.lastElementChild?.querySelector("select").focus();
    };
    draw();
    const put = () => {
      const g = groupOf(add.value);
      if (g) { rows.push({ id: add.value, label: g.of.find((o) => o.id === add.value).label, word: g.words[0].id }); draw(true); }
    };
    return h("form.write-form.write-found-as", { onsubmit: (e) => { e.preventDefault(); act({ do: "expect", texts: rows.map((r) => r.id + ": " + r.word) }); } },
      starts.ways.length ? h("ul", {}, starts.ways.map((c) => h("li", {}, h("button.choice", { onclick: () => act(c.act) }, h("span", { dir: "auto" }, c.label), h("small", { dir: "auto" }, c.detail))))) : null,
      list, starts.things.length ? h("div.write-small", {}, h("label", {}, w.AddFound, " ", add), h("button", { onclick: put }, w.Add)) : h("p", {}, w.NoneYet),
      h("div.write-keys", {}, h("button.save", { type: "submit" }, w.Put), h("button", { onclick: close }, w.Close)));
  };

  // head is what a procedure's sheet says at its head. ask asks the program, act
  // does an act, close shows the sheet again as it is.
  let open = false; // what is below the title
  const head = (sheet, ask, act, close) => {
    const front = (field) => (text) => act({ do: "front", field, text });
    const told = async (make) => {
      const t = await ask("starts");
      return t.starts ? make(t.starts) : h("p.write-said.alarm", { role: "alert" }, whyNot(t));
    };
    const rename = fill(w.RenameWhat, w.TitleOf);
    const row = (name, says, form) => h("div", {}, h("dt", {}, name), h("dd", {}, h("span", { dir: "auto" }, says), asks(w.Change, fill(w.ChangeWhat, name), form)));
    const machines = (starts) => {
      const select = h("select", { "aria-label": w.ForMachine }, h("option", { value: "" }, w.NothingChosen), starts.machines.map((m) => h("option", { value: m.id }, m.label)));
      select.value = sheet.machine?.id ?? "";
      return small(select, front("for"), close);
    };
    const found = sheet.start.map((s) => s.label + ": " + s.said).join(", ") || w.AsWhole;
    const machine = sheet.machine?.label ?? w.AnyMachine;
    const about = h("details.write-about", { open, ontoggle: () => { open = about.open; } }, h("summary", {}, h("span", { dir: "auto" }, machine), " · ", h("span", { dir: "auto" }, found)),
      h("dl.write-front", {},
        row(w.SummaryOf, sheet.summary || w.NotSaid, async () => small(oneLine(w.SummaryOf, sheet.summary), front("summary"), close)),
        row(w.MachineOf, machine, () => told(machines)),
        row(w.FoundAs, found, () => told((s) => starting(s, sheet.start, act, close))),
        h("div", {}, h("dt", {}, w.NameInFiles), h("dd", {}, h("code", {}, sheet.id), renamesID("procedures", sheet.id, sheet.state, () => {}, close)))));
    return [h("div.write-head", {}, h("h1", { dir: "auto", tabIndex: -1 }, sheet.title), asks(w.Rename, rename, async () => small(oneLine(rename, sheet.title), front("title"), close))), about];
  };
  Object.assign(baybinderDesk, { head });
})();
