// Asks for an entry of a list, a new one or one that is there: only what it must
// have, and what an offer rests on. What else it may have is written in its file.
(() => {
  const { w, fill, h, post, whyNot, inTurn, renamesID } = baybinderDesk;

  // field is one question, with how its answer is read.
  const field = (f) => {
    const label = w.Fields[f.key] ?? f.key;
    const more = [f.need ? "" : w.MayStayEmpty, f.sort === "texts" || f.sort === "pairs" ? w.OneALine : "", f.example ? fill(w.ForExample, f.example) : ""].filter(Boolean).join(", ");
    const now = f.now ?? [];
    const hint = more ? h("small", {}, " (" + more + ")") : null;
    if (f.sort === "many" || f.sort === "counts") {
      const rows = f.of.map((o) => {
        const said = now.find((n) => n.split(" ")[0] === o.id);
        const box = h("input", { type: "checkbox", value: o.id, checked: said !== undefined });
        const number = f.sort === "counts" ? h("input", { type: "number", min: "1", max: "999", value: said?.split(" ")[1] ?? "1", "aria-label": fill(w.HowMany, o.label) }) : null;
        if (number) number.addEventListener("input", () => { box.checked = true; });
        return { box, number, row: h("div.write-option", {}, h("label", { dir: "auto" }, box, " ", o.label), number) };
      });
      return {
        node: h("fieldset", {}, h("legend", {}, label, hint), rows.length ? rows.map((r) => r.row) : h("p", {}, w.NoneYet)),
        answer: () => rows.filter((r) => r.box.checked).map((r) => r.number ? r.box.value + " " + r.number.value : r.box.value),
      };
    }
    if (f.sort === "yes") {
      const box = h("input", { type: "checkbox", checked: now.length > 0 });
      return { node: h("label.write-asked", {}, h("span", {}, label, hint), box), answer: () => box.checked ? ["yes"] : [] };
    }
    const input = f.sort === "one" ? h("select", {}, h("option", { value: "" }, w.NothingChosen), f.of.map((o) => h("option", { value: o.id }, o.label)))
      : f.sort === "texts" || f.sort === "pairs" ? h("textarea", { rows: 2, dir: "auto" }) : h("input", { dir: "auto" });
    input.value = now.join(f.sort === "text" ? " " : "\n");
    return {
      node: h("label.write-asked", {}, h("span", {}, label, hint), input), input,
      answer: () => f.sort === "texts" || f.sort === "pairs" ? input.value.split("\n") : [input.value],
    };
  };

  // form is a form for a new entry of a list, or for the one of an id; done is
  // told what came of it and what is to be said, instead puts another form in its place.
  const form = async (list, done, close, instead, id = "") => {
    const told = await post("form", { in: list, id });
    if (!told.form) return h("p.write-said.alarm", { role: "alert" }, whyNot(told));
    const fields = told.form.fields.map((f) => ({ f, ...field(f) }));
    const name = () => fields.find((x) => x.f.key === "name")?.answer()[0] ?? "";
    const kind = fields.find((x) => x.f.key === "kind");
    const asked = () => {
      for (const x of fields) x.node.hidden = x.f.kinds.length > 0 && !x.f.kinds.includes(kind?.input.value);
    };
    kind?.input.addEventListener("change", asked);
    asked();
    const answerOf = (x) => x.node.hidden ? [] : x.answer();
    for (const x of fields) x.was = JSON.stringify(answerOf(x)); // what is not touched stays as it is in the file
    const said = h("p.write-said", { role: "alert" });
    const send = inTurn(async () => {
      const answers = {};
      for (const x of fields) {
        const touched = JSON.stringify(answerOf(x)) !== x.was;
        if (id ? touched : !x.node.hidden) answers[x.f.key] = answerOf(x);
      }
      const answer = await post("entry", { in: list, id, state: told.form.state, fields: answers });
      if (answer.ok) return done(answer, name(), !id);
      said.textContent = whyNot(answer);
      fields.find((x) => x.f.key === answer.more)?.input?.focus();
    });
    const there = !id && instead && told.form.there.length ? h("select", {}, h("option", { value: "" }, w.NothingChosen), told.form.there.map((o) => h("option", { value: o.id }, o.label))) : null;
    there?.addEventListener("change", () => { if (there.value) instead(there.value); });
    const box = h("form.write-form", { onsubmit: (e) => { e.preventDefault(); send(); } },
      h("h3", { dir: "auto" }, id ? fill(w.ChangeWhat, name()) : w.Entries[list]),
      there ? h("label.write-asked", {}, h("span", {}, w.ChangeThere), there) : null, fields.map((x) => x.node), said,
      h("div.write-keys", {}, h("button.save", { type: "submit" }, w.SaveEntry), h("button", { onclick: close }, w.Close)));
    requestAnimationFrame(() => fields[0]?.input?.focus());
    if (!id) return box;
    const named = h("p.write-named", {}, h("span", {}, w.NameInFiles + ": "), h("code", {}, id));
    const again = () => named.lastElementChild.replaceWith(renames());
    const renames = () => renamesID(list, id, told.form.state, (answer, said) => done(answer, name(), false, said), again);
    named.append(renames());
    return h("div.write-change", {}, box, named);
  };
  Object.assign(baybinderDesk, { form });
})();
