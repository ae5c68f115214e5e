// Writes the open procedure by choosing: its steps open in place, and beside
// them stands what can be written next. What a press does is an act that the
// program is asked for; this script knows nothing of Markdown's links.
(() => {
  const { w, page, main, fill, h, program, counts, post, whyNot, inTurn, staying, writable, form, head, asks, small, oneLine, pieces, smaller } = baybinderDesk;
  if (!main || !/^procedures\/[^/.]+\.html$/.test(page)) return;

  // What is shown.
  let sheet = null; // the procedure as the program told it last
  let shown = null; // its page as it would be published, as a document
  let pen = null; // what is being written: {step} or {after, phase}, text, was
  let slot = null; // where the next step goes: {after} or {phase}
  let choices = null;
  let message = "", alarm = false;
  let clash = null; // words that could not be saved because the file changed
  let asked = 0; // counts trials, so that a late answer is passed over

  // ask asks the program about what is shown.
  const ask = (route, act = {}) => post(route, { state: sheet ? sheet.state : "", act });

  const take = (told) => {
    if (!told.sheet) return;
    sheet = told.sheet;
    shown = new DOMParser().parseFromString(sheet.html, "text/html");
  };
  const steps = () => sheet.phases.flatMap((p) => p.steps);
  const lastSlot = () => {
    const phase = sheet.phases.at(-1);
    const top = phase?.steps.filter((s) => s.deep === 0).at(-1);
    return !phase ? null : top ? { after: top.number } : { phase: phase.id };
  };

  // save does an act, and shows what came of it.
  const save = async (act, said) => {
    const told = await ask("save", act);
    if (told.ok) {
      take(told);
      message = said ?? (told.on ? fill(w.Wrote, told.on) : fill(w.Saved, sheet.file));
      alarm = false;
      return told;
    }
    if (told.why === "FileChanged" && told.sheet) {
      take(told);
      clash = { act, now: stepText(act.step) ?? told.theirs };
    }
    message = whyNot(told);
    alarm = true;
    return null;
  };
  const stepText = (number) => steps().find((s) => s.number === number)?.text;

  // A choice is written at once, behind what is being written.
  const choose = inTurn(async (text) => {
    if (pen && !await savePen()) return render();
    const at = slot;
    const told = await save({ do: "new", ...at, text });
    if (told?.on) slot = { after: told.on };
    await refresh("next");
  });

  const savePen = async () => {
    if (pen.text.trim() === pen.was.trim()) { pen = null; return true; }
    const act = pen.step ? { do: "words", step: pen.step, text: pen.text } : { do: "new", after: pen.after, phase: pen.phase, text: pen.text };
    const told = await save(act);
    if (!told) {
      if (clash) pen = null;
      return false;
    }
    if (told.on) slot = { after: told.on };
    pen = null;
    return true;
  };

  const act = inTurn(async (what, said) => {
    if (dirty() && !["split", "out", "steps", "page"].includes(what.do) && !await savePen()) return render();
    const told = await save(what, said);
    if (told || clash) pen = null;
    if (slot?.after && !stepText(slot.after) || slot?.phase && !sheet.phases.some((p) => p.id === slot.phase)) slot = lastSlot();
    if (told?.on && ["move", "split", "steps", "page", "new"].includes(what.do)) slot = { after: told.on };
    if (told && what.do === "phase") slot = { phase: sheet.phases.find((p) => p.title === what.text.trim())?.id ?? sheet.phases.at(-1).id };
    await refresh("next");
  });

  const back = inTurn(async (route, name) => {
    const told = await ask(route);
    if (told.page && told.page !== page) { location.href = "/" + told.page; return; }
    if (told.ok) {
      take(told);
      message = name;
      alarm = false;
      pen = null;
      if (!slot || slot.after && !stepText(slot.after)) slot = lastSlot();
    } else {
      message = whyNot(told);
      alarm = true;
    }
    await refresh("top");
  });

  // refresh asks what can be written now, and shows all.
  const refresh = async (focus) => {
    const stay = staying(view, start);
    busy(true); // what was offered before is pressed no more
    render(focus);
    await offer();
    stay();
  };
  const offer = async () => {
    const stay = staying(groups, start);
    const told = slot ? await ask("choices", { ...slot, step: pen?.step ?? "" }) : {};
    choices = told.choices ?? null;
    beside();
    busy(false);
    stay();
  };
  const busy = (is) => {
    aside.setAttribute("aria-busy", String(is));
    groups.inert = is;
  };

  // The pieces of the view.
  const top = h("div.write-top");
  const list = h("div.write-list");
  const aside = h("aside.write-beside", { "aria-label": w.Offers });
  let view = null;
  const narrow = matchMedia("(max-width: 70rem)");

  const heading = () => {
    const undo = h("button", { disabled: !sheet.back, onclick: () => back("undo", fill(w.Undone, doing(sheet.back))) }, w.Undo);
    const redo = h("button", { disabled: !sheet.forth, onclick: () => back("redo", fill(w.Saved, sheet.file)) }, w.Redo);
    top.replaceChildren(
      h("p.write-file", {}, h("b", { dir: "auto", title: sheet.file }, sheet.file.split("/").at(-1)), " · ", counts(sheet)),
      h("div.write-keys", {}, undo, redo, h("button", { onclick: leave }, w.Leave)),
      h(alarm ? "p.write-said.alarm" : "p.write-said", { role: alarm ? "alert" : "status" }, message),
    );
  };
  const doing = (s) => s ? s.file : "";

  const foundBox = (list, take) => list.map((f) => h(f.error ? "div.write-found" : "div.write-found.hint", {},
    h("p", {}, program(f.message, f.lang), f.mend ? h("small", {}, program(f.mend, f.lang)) : null),
    (f.ways ?? []).map((way) => h("button", { onclick: () => take(way), ...(way.told ? { lang: w.Told } : {}) }, way.title)),
  ));

  // stands is a step as the page shows it, from a document.
  const stands = (doc, anchor) => {
    const li = doc?.getElementById(anchor);
    if (!li) return [];
    const copy = document.importNode(li, true);
    const derived = copy.querySelector(":scope > .derived")?.children.length ?? 0;
    for (const e of copy.querySelectorAll("ol.subs, .num, .square, .said-here, details.stand")) e.remove();
    for (const e of [copy, ...copy.querySelectorAll("[id]")]) e.removeAttribute("id");
    for (const e of copy.querySelectorAll('a[href^="#"]')) e.replaceWith(...e.childNodes);
    const text = copy.querySelector(".row .text");
    const boxes = [...copy.children].filter((e) => !e.classList.contains("row"));
    return [...boxes, ...(text ? text.childNodes : []), derived ? h("p.write-derived", {}, fill(w.FromStrip, derived)) : ""];
  };

  const row = (s) => {
    const open = h("button.quiet", { "aria-label": fill(w.WriteStep, s.number), onclick: () => openPen({ step: s.number, text: s.text, was: s.text }) }, w.WriteHere);
    return h("li.write-step", { id: "write-" + s.number, "data-deep": s.deep },
      h("div.write-num", {}, s.number),
      h("div.write-text", { dir: "auto" }, stands(shown, s.anchor), foundBox(s.found ?? [], (way) => act(way.act))),
      open);
  };

  // next is the row in which the next step is chosen or written.
  const next = (at, says) => h("li.write-next", { "aria-current": same(at, slot) ? "true" : "false" },
    h("div.write-num", { "aria-hidden": "true" }, "+"),
    h("p", { tabIndex: -1 }, h("b", {}, says), same(at, slot) ? h("span", {}, " ", w.ChooseOrWrite) : null),
    h("div.write-keys", {},
      same(at, slot) ? null : h("button.quiet", { "aria-label": says, onclick: () => { slot = at; refresh("next"); } }, w.NextStep),
      same(at, slot) ? h("button", { onclick: () => openPen({ ...at, text: "", was: "" }) }, w.WriteYourself) : null));
  const same = (a, b) => a && b && (a.after ?? "") === (b.after ?? "") && (a.phase ?? "") === (b.phase ?? "");

  const phase = (ph, i) => {
    const items = ph.steps.flatMap((s) => {
      const at = { after: s.number };
      const here = pen?.step === s.number ? penRow(s) : row(s);
      const deeper = ph.steps.some((x) => x.number.startsWith(s.number + "."));
      const wanted = same(slot, at) && !deeper || pen && !pen.step && same(pen, at);
      return [here, wanted && !(pen && !pen.step) ? next(at, fill(w.NextHere, s.number)) : null, pen && !pen.step && same(pen, at) ? penRow(null) : null];
    });
    // A step with sub-steps is followed behind the last of them.
    const whole = ph.steps.find((s) => s.deep === 0 && same(slot, { after: s.number }) && ph.steps.some((x) => x.number.startsWith(s.number + ".")));
    if (whole && !(pen && !pen.step)) {
      const lastSub = ph.steps.filter((x) => x.number.startsWith(whole.number + ".")).at(-1).number;
      const at = items.findIndex((e) => e && e.id === "write-" + lastSub);
      items.splice(at + 1, 0, next({ after: whole.number }, fill(w.NextHere, whole.number)));
    }
    const topSteps = ph.steps.filter((s) => s.deep === 0);
    const end = topSteps.length ? { after: topSteps.at(-1).number } : { phase: ph.id };
    const first = { phase: ph.id };
    if (same(slot, first) && !(pen && !pen.step)) items.unshift(next(first, fill(w.NextIn, ph.title)));
    if (pen && !pen.step && same(pen, first)) items.unshift(penRow(null));
    if (!same(slot, end) && !(pen && !pen.step && same(pen, end))) items.push(next(end, topSteps.length ? fill(w.NextHere, topSteps.at(-1).number) : fill(w.NextIn, ph.title)));
    return h("section.write-phase", { "aria-labelledby": "write-phase-" + i },
      h("h2", { id: "write-phase-" + i, dir: "auto" }, h("span", {}, (i + 1) + " "), ph.title),
      h("div.write-keys", {},
        asks(w.Rename, fill(w.RenameWhat, ph.title), async () => small(oneLine(fill(w.RenameWhat, ph.title), ph.title), (text) => act({ do: "heading", phase: ph.id, text }), () => render())),
        ph.empty ? h("button.quiet", { onclick: () => act({ do: "out", phase: ph.id }) }, w.TakeOut) : null),
      foundBox(ph.found ?? [], (way) => act(way.act)),
      h("ol.write-steps", {}, items.filter(Boolean)));
  };

  const newPhase = () => {
    const has = new Set(sheet.phases.map((p) => p.title.toLowerCase()));
    const often = w.Often.filter((name) => !has.has(name.toLowerCase()));
    const after = sheet.phases.at(-1)?.id ?? "";
    const add = (text) => act({ do: "phase", after, text });
    const input = h("input", { "aria-label": w.PhaseName, placeholder: w.PhaseName, dir: "auto" });
    return h("section.write-phase.write-new", { "aria-labelledby": "write-new-phase" },
      h("h2", { id: "write-new-phase" }, w.NewPhase),
      h("div.write-keys", { role: "group", "aria-label": w.Phases }, often.map((name) => h("button", { onclick: () => add(name) }, name))),
      h("form.write-small", { onsubmit: (e) => { e.preventDefault(); if (input.value.trim()) add(input.value); } },
        input, h("button", { type: "submit" }, w.AddPhase)));
  };

  // Where the file changed underneath, both versions.
  const clashBox = () => {
    if (!clash) return null;
    const mine = clash.act.text ?? "";
    return h("section.write-clash", { "aria-labelledby": "write-clash", tabIndex: -1 }, h("h2", { id: "write-clash" }, w.FileChanged),
      h("div.write-both", {},
        h("div", {}, h("h3", {}, w.InFile), h("pre", { dir: "auto", tabIndex: 0 }, clash.now ?? "")),
        h("div", {}, h("h3", {}, w.YourWords), h("pre", { dir: "auto", tabIndex: 0 }, mine))),
      h("div.write-keys", {},
        mine ? h("button.save", { onclick: () => {
          const { act: a } = clash;
          clash = null;
          const s = stepText(a.step);
          openPen(a.step && s !== undefined ? { step: a.step, text: mine, was: s } : { ...(lastSlot() ?? {}), text: mine, was: "" });
        } }, w.KeepMine) : null,
        h("button", { onclick: () => { clash = null; message = ""; refresh("top"); } }, w.TakeTheirs)));
  };

  const render = (focus) => {
    const stay = staying(view, start);
    heading();
    list.replaceChildren(...[
      clashBox(),
      ...head(sheet, ask, act, () => render()),
      h(sheet.status === "draft" ? "p.write-draft" : "p.write-draft.issued", {}, sheet.status === "draft" ? w.Draft : w.Issued),
      ...foundBox(sheet.found ?? [], (way) => act(way.act)),
      ...sheet.phases.map(phase),
      newPhase(),
    ].filter(Boolean));
    place();
    beside();
    if (clash) list.querySelector(".write-clash").focus();
    else if (pen) list.querySelector("textarea")?.focus();
    else if (focus === "next") here()?.querySelector("p").focus({ preventScroll: true });
    stay();
    (clash ? null : list.querySelector(".write-pen") ?? (focus === "next" ? here() : null))?.scrollIntoView({ block: narrow.matches ? "start" : "nearest" });
  };
  // start is where the keys go when what they were on is no more.
  const start = () => here()?.querySelector("p") ?? list.querySelector("h1");
  const here = () => list.querySelector('.write-next[aria-current="true"]');
  // On a narrow window what can be chosen stands under the place that it is for.
  const place = () => {
    const at = list.querySelector(".write-pen") ?? here();
    if (narrow.matches && at) at.append(aside);
    else if (aside.parentElement !== view) view.append(aside);
    room();
  };
  // On a wide one it ends above the strip at the foot, and scrolls by itself.
  const room = () => {
    const foot = innerHeight - (document.querySelector(".emergency")?.offsetHeight ?? 0);
    aside.style.maxHeight = narrow.matches ? "" : Math.max(240, foot - Math.max(0, aside.getBoundingClientRect().top) - 8) + "px";
  };
  for (const kind of ["scroll", "resize"]) addEventListener(kind, () => { if (view?.isConnected) room(); }, { passive: true });

  // What can be chosen.
  let hits = null; // what was found by word; null where nothing is looked for
  const findInput = h("input", { type: "search", placeholder: w.Find, "aria-label": w.Find, dir: "auto" });
  const hitList = h("div.write-hits", { role: "status" });
  const groups = h("div.write-groups");
  aside.append(findInput, hitList, groups);
  let waiting = 0;
  findInput.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(find, 120);
  });
  findInput.addEventListener("keydown", (e) => {
    if (e.key === "Enter") hitList.querySelector("button")?.click();
  });
  const find = async () => {
    const text = findInput.value.trim();
    if (!text) { hits = null; return showHits(); }
    const told = await ask("find", { do: "find", text });
    if (findInput.value.trim() !== text) return;
    const words = text.toLowerCase().split(/\s+/);
    const fits = (c) => words.every((word) => (c.label + " " + (c.detail ?? "")).toLowerCase().includes(word));
    const steps = (choices?.groups ?? []).flatMap((g) => g.items).filter((c) => fits(c) && !c.way?.length);
    hits = { steps, pieces: told.found ?? [] };
    showHits();
  };
  const showHits = () => {
    if (!hits) return hitList.replaceChildren();
    const all = [...hits.steps.map(choice), ...hits.pieces.map(piece)];
    hitList.replaceChildren(all.length ? h("h3", {}, w.FoundHits) : h("p", {}, w.FoundNone), h("ul", {}, all.map((e) => h("li", {}, e))));
  };

  const small2 = (text, props) => text ? h("small", props ?? {}, text) : null;
  // choice is a button that writes a whole step.
  const choice = (c) => {
    const button = h("button.choice", { onclick: () => c.act ? act(c.act) : choose(c.text) }, h("span", { dir: "auto" }, c.label), small2(c.detail, { dir: "auto" }),
      c.brings?.length ? small2(fill(w.ThenFound, ""), { className: "brings" }) : null,
      ...(c.brings ?? []).map((b) => h("small.brings", {}, program(b.message, b.lang))));
    if (!c.parts?.length || c.parts.length < 2) return button;
    const more = h("button.quiet", { onclick: () => {
      const asked = leaving(c);
      more.replaceWith(asked);
      asked.querySelector("input").focus();
    } }, w.LeaveOut);
    return h("div", {}, button, more);
  };
  // leaving asks which parts a refit leaves off.
  const leaving = (c) => {
    const boxes = c.parts.map((p) => h("input", { type: "checkbox", value: p.id }));
    return h("fieldset.write-leave", {}, h("legend", {}, w.LeaveOutWhich),
      c.parts.map((p, i) => h("label", { dir: "auto" }, boxes[i], " ", p.label)),
      h("button.save", { onclick: () => {
        const out = boxes.filter((b) => b.checked).map((b) => b.value);
        choose(out.length ? c.text.replace(/\(reverse:([^)#!]+)\)/, (_, id) => `(reverse:${id}!${out.join(",")})`) : c.text);
      } }, w.Put));
  };
  // piece is a button that adds a piece to the step that is being written, or
  // begins one with it.
  const piece = (c) => h("button.choice", { onclick: () => {
    if (!pen) openPen({ ...(slot ?? lastSlot() ?? {}), text: c.text, was: "" });
    else if (c.kind === "condition") begin(c.text);
    else insert(c.text);
  } }, h("span", { dir: "auto" }, c.label), small2(c.detail, { dir: "auto" }));
  const not = (c) => h("div.not", {}, h("span", { dir: "auto" }, c.label), (c.way ?? []).map((way) => small2(program(way))));

  const beside = () => {
    const parts = [];
    const section = (name, items, many) => {
      if (!items.length) return null;
      const ul = h("ul", {}, items.map((e) => h("li", {}, e)));
      return many ? h("details", {}, h("summary", {}, h("span", {}, name)), ul) : h("section", {}, h("h3", {}, name), ul);
    };
    if (pen && choices?.belongs?.length) {
      parts.push(h("h3", {}, w.BelongsHere));
      for (const g of choices.belongs) parts.push(section(w[g.name], g.items.map(piece), g.items.length > 6 || g.name === "Conditions" || g.name === "More"));
    }
    for (const g of choices?.groups ?? []) {
      const blocked = g.name === "InTheWay" || g.name === "NotYet";
      parts.push(section(w[g.name], g.items.map(blocked ? not : choice), blocked && g.items.length > 4));
    }
    parts.push(entries());
    parts.push(section(w.Stands, (choices?.standing ?? []).map((s) => h("span", { dir: "auto" }, s)), true));
    groups.replaceChildren(...parts.filter(Boolean));
  };

  // What is not in the lists yet.
  let asking = null; // the form that is open
  const entries = () => {
    const place = h("div");
    if (asking) place.append(asking);
    const open = async (list, id) => {
      asking = await form(list, (told, name, fresh, saying) => {
        const stay = staying(groups, start);
        asking = null;
        beside();
        stay();
        take(told);
        message = saying ?? fill(w.WroteEntry, name);
        alarm = false;
        heading();
        const said = told.found?.[0];
        if (pen && said && fresh) insert(said.text);
        if (told.renamed) render();
        offer();
      }, () => {
        const stay = staying(groups, start);
        asking = null;
        beside();
        stay();
      }, (other) => open(list, other), id);
      asking.dataset.asks = w.Entries[list] + "…";
      beside();
      groups.querySelector(".write-form")?.scrollIntoView({ block: "nearest" });
    };
    return h("section", {}, h("h3", {}, w.New), asking ? null : h("ul", {}, ["tools", "hazards", "holds", "supplies", "roles"].map((list) =>
      h("li", {}, h("button.choice", { onclick: () => open(list) }, w.Entries[list] + "…")))), place);
  };

  // The pen.
  const openPen = inTurn(async (p) => {
    if (pen && pen.text.trim() !== pen.was.trim() && !await savePen()) return render();
    pen = p;
    if (p.step) {
      slot = { after: p.step };
    } else {
      slot = p.after ? { after: p.after } : { phase: p.phase };
    }
    choices = null;
    await refresh();
    if (pen) tryPen();
    if (pen?.step && steps().find((x) => x.number === pen.step)?.found?.length) cure();
  });
  // cure shows which step before this one would take away what is found in it.
  const cure = async () => {
    const told = await ask("cures", { step: pen?.step });
    const ways = (told.cures ?? []).flatMap((f) => (f.ways ?? []).slice(0, 3));
    const once = ways.filter((way, i) => ways.findIndex((x) => x.title === way.title) === i);
    cured?.replaceChildren(...once.map((way) => h("button", { onclick: () => act(way.act) }, fill(w.PutBefore, way.title))));
  };
  let field = null, preview = null, found = null, cured = null, askRow = null, pasted = null;

  const penRow = (s) => {
    field = h("textarea", { value: pen.text, spellcheck: true, dir: "auto", rows: 3, "aria-label": s ? fill(w.AsWritten, s.number) : w.NewStep });
    preview = h("div.write-stands", { "aria-live": "polite" });
    found = h("div");
    cured = h("div.write-keys");
    askRow = h("div");
    pasted = h("div");
    field.addEventListener("input", () => {
      pen.text = field.value;
      grow();
      clearTimeout(waiting);
      waiting = setTimeout(tryPen, 200);
    });
    field.addEventListener("keydown", (e) => {
      if (e.key === "Enter" && (e.ctrlKey || e.metaKey)) { e.preventDefault(); finish(); }
      if (e.key === "Escape" && pen.text === pen.was) { e.preventDefault(); close(); }
    });
    field.addEventListener("paste", onPaste);
    for (const kind of ["dragover", "drop"]) {
      field.addEventListener(kind, (e) => {
        if (![...e.dataTransfer.types].includes("Files")) return;
        e.preventDefault();
        if (kind === "drop") askPicture(e.dataTransfer.files[0]);
      });
    }
    requestAnimationFrame(grow);
    const keys = h("div.write-keys", {},
      h("button.save", { onclick: finish }, w.SaveStep),
      h("button", { onclick: () => paragraph(`[${w.RefitLead}](on:refit), `) }, w.WhenRefitted),
      h("button", { onclick: () => paragraph(`[${w.WhyLead}](why:) `) }, w.Why),
      h("button", { onclick: () => askPicture(null) }, w.APicture),
      h("button", { onclick: () => insert("[](people:2)") }, w.TwoPeople),
      h("button", { onclick: askTime }, w.ATime));
    const apart = h("div.write-keys.apart", {},
      s ? h("button.far", { onclick: () => act({ do: "split", step: s.number, text: pen.text }) }, w.Split) : null,
      s ? h("button.far", { onclick: () => askMove(s) }, w.Move) : null,
      s ? h("button.far", { onclick: () => act({ do: "out", step: s.number }, fill(w.Saved, sheet.file)) }, w.TakeOut) : null,
      h("button.far", { onclick: close }, w.Close));
    return h("li.write-pen", { "data-deep": s?.deep ?? 0 },
      h("div.write-num", {}, s ? s.number : "+"),
      h("div", {}, field, pasted, h("div.write-as", {}, h("p", {}, h("small", {}, w.StandsSo)), preview), found, cured, askRow, keys, apart));
  };
  const grow = () => {
    if (!field?.isConnected) return;
    field.style.height = "auto";
    field.style.height = Math.min(field.scrollHeight + 6, innerHeight * .6) + "px";
  };
  const close = inTurn(async () => { pen = null; message = ""; await refresh("next"); });
  const finish = inTurn(async () => {
    if (pen) await savePen();
    await refresh("next");
  });
  // tryPen shows how the step will stand, and what is found in it then.
  const tryPen = async () => {
    const mine = ++asked;
    if (!pen || !pen.text.trim()) { preview?.replaceChildren(); found?.replaceChildren(); return; }
    const told = await ask("try", pen.step ? { do: "words", step: pen.step, text: pen.text } : { do: "new", after: pen.after, phase: pen.phase, text: pen.text });
    if (mine !== asked || !pen) return;
    if (!told.trial) { found.replaceChildren(h("div.write-found", {}, h("p", {}, whyNot(told)))); return; }
    const doc = new DOMParser().parseFromString(told.trial.html, "text/html");
    preview.replaceChildren(...stands(doc, told.trial.anchor));
    const other = told.trial.else ?? [];
    const stay = staying(found, () => field);
    found.replaceChildren(
      ...foundBox(told.trial.found ?? [], (way) => { field.value = way.text; field.dispatchEvent(new Event("input")); field.focus(); }),
      ...(other.length ? [h("p.write-other", {}, w.Elsewhere), ...foundBox(other, () => {})] : []));
    stay();
  };
  // insert puts a piece where the caret is, with a space around it.
  const insert = (text) => {
    const at = field.selectionStart, before = field.value.slice(0, at), after = field.value.slice(field.selectionEnd);
    const put = (before && !/\s$/.test(before) ? " " : "") + text + (after && !/^\s/.test(after) ? " " : "");
    field.setRangeText(put, at, field.selectionEnd, "end");
    field.dispatchEvent(new Event("input"));
    field.focus();
  };
  // begin puts a condition before the first word.
  const begin = (text) => {
    const now = field.value.trimStart();
    field.value = text + (/^\p{Lu}\p{Ll}/u.test(now) ? now[0].toLowerCase() + now.slice(1) : now);
    field.dispatchEvent(new Event("input"));
    field.focus();
  };
  const paragraph = (lead) => {
    const text = field.value.trimEnd() + "\n\n" + lead;
    field.setRangeText(text, 0, field.value.length, "end");
    field.dispatchEvent(new Event("input"));
    field.focus();
  };
  const askTime = () => {
    const input = h("input", { type: "number", min: "1", max: "999", inputMode: "numeric", "aria-label": w.HowManyMinutes });
    askRow.replaceChildren(h("form.write-small", { onsubmit: (e) => {
      e.preventDefault();
      const n = Math.round(Number(input.value));
      if (!(n >= 1)) return;
      const old = /\[\]\(time:[^)]*\)/;
      askRow.replaceChildren();
      if (old.test(field.value)) {
        field.value = field.value.replace(old, `[](time:${n}min)`);
        field.dispatchEvent(new Event("input"));
        field.focus();
      } else insert(`[](time:${n}min)`);
    } }, h("label", {}, w.HowManyMinutes, " ", input), h("button.save", { type: "submit" }, w.Put)));
    input.focus();
  };
  const askPicture = (dropped) => {
    const file = h("input", { type: "file", accept: "image/*", "aria-label": w.DropHere });
    const words = h("input", { dir: "auto", "aria-label": w.PictureShows, placeholder: w.PictureShows });
    const said = h("p", { role: "alert" });
    askRow.replaceChildren(h("form.write-small", { onsubmit: (e) => {
      e.preventDefault();
      send();
    } }, dropped ? h("p", { dir: "auto" }, dropped.name) : h("label", {}, w.DropHere, " ", file), words, h("button.save", { type: "submit" }, w.Put), said));
    const send = inTurn(async () => {
      const picture = dropped ?? file.files[0];
      const small = picture ? await smaller(picture).catch(() => null) : null;
      if (!small) { said.textContent = w.NoPicture; return; }
      const told = await post("picture?" + new URLSearchParams({ page, words: words.value }), small, "image/jpeg");
      if (!told.ok) { said.textContent = whyNot(told); return; }
      askRow.replaceChildren();
      paragraph(told.found[0].text);
    });
    (dropped ? words : file).focus();
  };
  const askMove = (s) => {
    const options = [];
    for (const ph of sheet.phases) {
      if (s.deep === 0) options.push(h("option", { value: JSON.stringify({ phase: ph.id }) }, fill(w.FirstIn, ph.title)));
      for (const x of ph.steps) {
        const fits = s.deep === 0 ? x.deep === 0 : x.deep > 0;
        if (fits && x.number !== s.number) options.push(h("option", { value: JSON.stringify({ after: x.number }) }, fill(w.Behind, x.number) + " · " + x.text.replace(/\[([^\]]*)\]\([^)]*\)/g, "$1").slice(0, 50)));
      }
    }
    const select = h("select", { "aria-label": w.MoveBehind }, options);
    askRow.replaceChildren(h("form.write-small", { onsubmit: (e) => {
      e.preventDefault();
      act({ do: "move", step: s.number, ...JSON.parse(select.value) }, fill(w.Saved, sheet.file));
    } }, h("label", {}, w.MoveBehind, " ", select), h("button.save", { type: "submit" }, w.Put)));
    select.focus();
  };

  // What is pasted: the cells of a sheet become a table, the lines of a page
  // become steps where the writer wants it.
  const onPaste = (e) => {
    const { table, lines } = pieces(e.clipboardData);
    if (!table && lines.length < 2) return;
    e.preventDefault();
    const put = (now) => {
      field.setRangeText(now, field.selectionStart, field.selectionEnd, "end");
      field.dispatchEvent(new Event("input"));
      field.focus();
    };
    if (table) return put((field.value.trim() ? "\n\n" : "") + table + "\n\n");
    const together = () => lines.map((l) => l.marked).join("\n\n");
    if (pen.step) return put(together());
    const bare = lines.map((l) => (l.head ? "## " : "") + l.bare);
    const heads = lines.filter((l) => l.head).length, steps = lines.length - heads;
    pasted.replaceChildren(h("p", {}, fill(w.Pasted, lines.length)), h("div.write-keys", {},
      h("button.save", { onclick: () => act({ do: heads ? "page" : "steps", after: pen.after, phase: pen.phase, texts: bare }) }, heads ? fill(w.AsPhases, steps, heads) : fill(w.AsSteps, steps)),
      h("button", { onclick: () => { pasted.replaceChildren(); put(together()); } }, w.AsOne)));
    pasted.querySelector("button").focus();
  };

  // On and off.
  const dirty = () => pen && pen.text.trim() !== pen.was.trim();
  const leave = writable(async (into, refused) => {
    const told = await ask("open");
    if (!told.ok) { refused(whyNot(told)); return false; }
    take(told);
    view = into;
    view.append(h("div.write-sheet", {}, top, list), aside);
    slot = lastSlot();
    requestAnimationFrame(() => refresh());
    return true;
  });
  narrow.addEventListener("change", () => { if (view?.isConnected) place(); });
  addEventListener("beforeunload", (e) => { if (dirty()) e.preventDefault(); });
  // The page was built anew: here what is written stays, and the rest is asked for.
  document.addEventListener("watch-anew", async () => {
    if (!view?.isConnected) return;
    if (pen || clash || list.querySelector(".write-small, .write-form")) return;
    const told = await ask("open");
    if (told.ok && !pen && told.sheet.state !== sheet.state) {
      take(told);
      if (slot?.after && !stepText(slot.after)) slot = lastSlot();
      await refresh();
    }
  });
})();
