// What is pasted into a step: the cells of a sheet become a table, what is copied
// from a page becomes its lines. Their signs stay signs.
(() => {
  const typed = /\]\([a-z-]+:/; // it was copied out of a manual
  const plain = (line) => line.replace(/([\\`*_<[\]])/g, "\\$1").replace(/^(\s*)([#>+-]|\d+[.)])/, "$1\\$2");
  const cells = (text) => {
    const rows = text.replace(/\r/g, "").split("\n").filter((l) => l.trim()).map((l) => l.split("\t"));
    if (rows.length < 2 || rows.some((r) => r.length < 2)) return null;
    const wide = Math.max(...rows.map((r) => r.length));
    const line = (r) => "| " + Array.from({ length: wide }, (_, i) => plain((r[i] ?? "").trim()).replaceAll("|", "\\|")).join(" | ") + " |";
    return [line(rows[0]), "|" + " --- |".repeat(wide), ...rows.slice(1).map(line)].join("\n");
  };
  // linesOf are the lines of a page that was copied: its headings, and its texts
  // with the words that are bold in them. Bold words stay so where that says
  // nothing but that: not a whole line, and nothing that reads as a signal word.
  const sign = /^(?:\d{1,3}(?:\.\d+)*[.)]?|[a-z][.)]|[•·▪–—*-])\s+/;
  const heavy = (e) => {
    const weight = /font-weight:\s*(\w+)/.exec(e.getAttribute("style") ?? "")?.[1]; // as it is written: the page lets no style in
    return weight ? weight === "bold" || Number(weight) >= 600 : /^(B|STRONG)$/.test(e.nodeName);
  };
  const linesOf = (html) => {
    const out = [];
    let line = [];
    const end = (head) => {
      const all = line.map((r) => r.text).join("").trim(), whole = line.every((r) => r.bold || !r.text.trim());
      const marked = (runs) => runs.map((r, i) => {
        const words = r.text.trim(), next = runs.slice(i + 1).map((n) => n.text).join("").trim();
        const calm = r.bold && !whole && /\p{Ll}/u.test(words) && !/[:!–—-]$/.test(words) && !/^[:!–—-]/.test(next);
        return calm ? r.text.replace(words, () => "**" + plain(words) + "**") : plain(r.text);
      }).join("").trim();
      while (line.length && !line[0].text.trim()) line.shift();
      if (all) out.push({ head: head, marked: marked(line), bare: marked(line.map((r, i) => (i ? r : { ...r, text: r.text.trimStart().replace(sign, "") }))) });
      line = [];
    };
    const walk = (node, bold) => {
      if (node.nodeType === Node.TEXT_NODE) return void line.push({ text: node.data.replace(/\s+/g, " "), bold: bold });
      if (node.nodeType !== Node.ELEMENT_NODE || /^(STYLE|SCRIPT|HEAD|TITLE)$/.test(node.nodeName)) return;
      if (node.nodeName === "BR") return end(false);
      const block = /^(P|DIV|LI|UL|OL|H[1-6]|TR|TABLE|BLOCKQUOTE|PRE|SECTION|ARTICLE)$/.test(node.nodeName);
      if (block) end(false);
      for (const child of node.childNodes) walk(child, bold || heavy(/** @type {HTMLElement} */ (node)));
      if (block) end(/^H[1-6]$/.test(node.nodeName));
    };
    walk(new DOMParser().parseFromString(html, "text/html").body, false);
    end(false);
    return out;
  };

  // pieces are the table that was pasted, as Markdown, null where it is none, and
  // the lines: whether one is a heading, its text with what is bold marked, and
  // the same without the number or the bullet before it. What was copied out of a
  // manual stays one text, without lines.
  const pieces = (data) => {
    const text = data?.getData("text/plain") ?? "";
    if (typed.test(text)) return { table: null, lines: [] };
    const page = linesOf(data?.getData("text/html") ?? "");
    const lines = page.length > 1 ? page : text.split(/\r?\n/).map((l) => l.trim()).filter(Boolean).map((l) => ({ head: false, marked: plain(l), bare: plain(l.replace(sign, "")) }));
    return { table: cells(text), lines };
  };
  Object.assign(baybinderDesk, { pieces });
})();
