// Asks for a new entry of a list: only what it must have, and what an offer
// rests on. What else it may have is written in its file.
(() => {
  const { w, fill, h, post, whyNot, inTurn } = baybinderDesk;

  // field is one question, with how its answer is read.
  const field = (f) => {
    const label = w.Fields[f.key] ?? f.key;
    const more = [f.need ? "" : w.MayStayEmpty, f.sort === "texts" || f.sort === "pairs" ? w.OneALine : "", f.example ? fill(w.ForExample, f.example) : ""].filter(Boolean).join(", ");
    const hint = more ? h("small", {}, " (" + more + ")") : null;
    if (f.sort === "many" || f.sort === "counts") {
      const rows = f.of.map((o) => {
        const box = h("input", { type: "checkbox", value: o.id });
        const number = f.sort === "counts" ? h("input", { type: "number", min: "1", max: "999", value: "1", "aria-label": fill(w.HowMany, o.label) }) : null;
        if (number) number.addEventListener("input", () => { box.checked = true; });
        return { box, number, row: h("div.write-option", {}, h("label", { dir: "auto" }, box, " ", o.label), number) };
      });
      return {
        node: h("fieldset", {}, h("legend", {}, label, hint), rows.length ? rows.map((r) => r.row) : h("p", {}, w.NoneYet)),
        answer: () => rows.filter((r) => r.box.checked).map((r) => r.number ? r.box.value + " " + r.number.value : r.box.value),
      };
    }
    if (f.sort === "yes") {
      const box = h("input", { type: "checkbox" });
      return { node: h("label.write-asked", {}, h("span", {}, label, hint), box), answer: () => box.checked ? ["yes"] : [] };
    }
    const input = f.sort === "one" ? h("select", {}, h("option", { value: "" }, w.NothingChosen), f.of.map((o) => h("option", { value: o.id }, o.label)))
      : f.sort === "texts" || f.sort === "pairs" ? h("textarea", { rows: 2, dir: "auto" }) : h("input", { dir: "auto" });
    return {
      node: h("label.write-asked", {}, h("span", {}, label, hint), input), input,
      answer: () => f.sort === "texts" || f.sort === "pairs" ? input.value.split("\n") : [input.value],
    };
  };

  // form is a form for a list; done is told what came of it.
  const form = async (list, done, close) => {
    const told = await post("form", { in: list });
    if (!told.form) return h("p.write-said.alarm", { role: "alert" }, whyNot(told));
    const fields = told.form.fields.map((f) => ({ f, ...field(f) }));
    const kind = fields.find((x) => x.f.key === "kind");
    const asked = () => {
      for (const x of fields) x.node.hidden = x.f.kinds.length > 0 && !x.f.kinds.includes(kind?.input.value);
    };
    kind?.input.addEventListener("change", asked);
    asked();
    const said = h("p.write-said", { role: "alert" });
    const send = inTurn(async () => {
      const answers = {};
      for (const x of fields) if (!x.node.hidden) answers[x.f.key] = x.answer();
      const answer = await post("entry", { in: list, fields: answers });
      if (answer.ok) return done(answer, answers.name[0]);
      said.textContent = whyNot(answer);
      fields.find((x) => x.f.key === answer.more)?.input?.focus();
    });
    const box = h("form.write-form", { onsubmit: (e) => { e.preventDefault(); send(); } },
      h("h3", {}, w.Entries[list]), fields.map((x) => x.node), said,
      h("div.write-keys", {}, h("button.save", { type: "submit" }, w.SaveEntry), h("button", { onclick: close }, w.Close)));
    requestAnimationFrame(() => fields[0].input.focus());
    return box;
  };
  Object.assign(baybinderDesk, { form });
})();
