// A writing session, as an editor has it: argv is the protocol's library, the
// program, the manual's folder.
const assert = require("node:assert");
const { spawn } = require("node:child_process");
const path = require("node:path");
const { pathToFileURL } = require("node:url");
const fs = require("node:fs");
const [, , library, program, dir] = process.argv;
const lsp = require(path.join(library, "node.js"));

const child = spawn(program, ["serve-editor", "--today", "2026-05-04"], { argv0: "baybinder", cwd: dir, stdio: ["pipe", "pipe", "inherit"] });
const conn = lsp.createProtocolConnection(new lsp.StreamMessageReader(child.stdout), new lsp.StreamMessageWriter(child.stdin));
const told = new Map();
conn.onNotification(lsp.PublishDiagnosticsNotification.type, (p) => told.set(p.uri, p.diagnostics));
conn.onNotification(lsp.LogMessageNotification.type, (p) => assert.fail(p.message));
conn.listen();

const uriOf = (name) => pathToFileURL(path.join(dir, name)).href;
const job = uriOf("procedures/job.md");
const textDocument = { uri: job };
let text = fs.readFileSync(path.join(dir, "procedures/job.md"), "utf8");
let version = 1;

// Places are found by what stands there; JavaScript counts in UTF-16 as the
// protocol does.
const placeOf = (offset) => {
  const before = text.slice(0, offset).split("\n");
  return { line: before.length - 1, character: before.at(-1).length };
};
const at = (words, more = 0) => {
  assert.ok(text.includes(words), `${words} is not in\n${text}`);
  return placeOf(text.indexOf(words) + more);
};
const offsetOf = (p) => text.split("\n").slice(0, p.line).reduce((n, l) => n + l.length + 1, 0) + p.character;
const apply = (edits) => {
  for (const e of [...edits].sort((a, b) => offsetOf(b.range.start) - offsetOf(a.range.start))) {
    text = text.slice(0, offsetOf(e.range.start)) + e.newText + text.slice(offsetOf(e.range.end));
  }
};
const settled = () => conn.sendRequest("baybinder/settled");
const change = async () => {
  await conn.sendNotification(lsp.DidChangeTextDocumentNotification.type, { textDocument: { uri: job, version: ++version }, contentChanges: [{ text }] });
  await settled();
};
const codes = () => (told.get(job) || []).map((d) => d.code).sort();
const complete = async (position) => {
  const list = await conn.sendRequest(lsp.CompletionRequest.type, { textDocument, position });
  return list.items.sort((a, b) => (a.sortText || a.label).localeCompare(b.sortText || b.label));
};

(async () => {
  const begun = await conn.sendRequest(lsp.InitializeRequest.type, { processId: process.pid, rootUri: pathToFileURL(dir).href, capabilities: {}, workspaceFolders: null });
  assert.ok(begun.capabilities.hoverProvider && begun.capabilities.completionProvider);
  await conn.sendNotification(lsp.InitializedNotification.type, {});
  await conn.sendNotification(lsp.DidOpenTextDocumentNotification.type, { textDocument: { uri: job, languageId: "markdown", version, text } });
  await settled();
  assert.deepEqual(codes(), [], "the manual has no findings at first");

  // A step is begun, and written from what is offered first.
  text = text.replace("1. Tell the foreman.\n", "1. Tell the foreman.\n2. \n");
  await change();
  const offered = await complete(at("2. \n", 3));
  assert.equal(offered[0].label, "Switch off at the plug");
  assert.ok(offered.some((o) => (o.detail || "").startsWith("not yet: still in the way: seat")), "the lid cannot come off yet");
  apply([offered[0].textEdit, ...(offered[0].additionalTextEdits || [])]);
  await change();
  assert.ok(text.includes("2. [Switch off at the plug](isolate:plug) and [put your lock on it](lock:plug)."), text);
  assert.deepEqual(codes(), ["left-isolated"]);
  const [left] = told.get(job);
  assert.deepEqual(left.range.start, at("[Switch off"));
  assert.equal(left.severity, lsp.DiagnosticSeverity.Error);

  // An address is completed: of the energies and points, with the words in
  // front of it counted in UTF-16.
  text = text.replace("1. Clean the seat.\n", "1. Clean the seat 🔧 [on](restore:\n");
  await change();
  const ids = (await complete(at("restore:", 8))).map((i) => i.label);
  assert.deepEqual(ids.filter((i) => ["plug", "power"].includes(i)), ["plug", "power"]);
  text = text.replace("🔧 [on](restore:\n", "🔧 [off](remove:saet).\n");
  await change();
  assert.ok(codes().includes("unknown-reference"));

  // A slip is mended by what the editor is offered.
  const range = { start: at("[off]"), end: at("[off]") };
  const mends = await conn.sendRequest(lsp.CodeActionRequest.type, { textDocument, range, context: { diagnostics: [] } });
  assert.deepEqual(mends.map((m) => m.title), ["write seat"]);
  apply(mends[0].edit.changes[job]);
  assert.ok(text.includes("(remove:seat)"));
  text = text.replace("(remove:seat).", "(remove:seat) with the [](tool:socket-13).");
  await change();
  const list = await conn.sendRequest(lsp.CodeActionRequest.type, { textDocument, range: { start: at("[](tool"), end: at("[](tool") }, context: { diagnostics: [] } });
  assert.ok(list.some((m) => m.title === "list it: socket-13"), JSON.stringify(list));
  apply(list.find((m) => m.title === "list it: socket-13").edit.changes[job]);
  await change();
  assert.ok(!codes().includes("not-listed"), text);

  // Words become the link that they say.
  text = text.replace("1. Sweep the floor.\n", "1. Unlock the plug.\n2. [Back](reverse:strip)\n3. [On](restore:power)\n");
  await change();
  const words = await conn.sendRequest(lsp.CodeActionRequest.type, { textDocument, range: { start: at("Unlock"), end: at("Unlock") }, context: { diagnostics: [] } });
  assert.ok(words.length > 0, JSON.stringify(told.get(job)));
  apply(words[0].edit.changes[job]);
  assert.ok(text.includes("1. [Unlock the plug](unlock:plug)."), text);
  await change();

  // What is here, where it is said, who else uses it.
  const hover = await conn.sendRequest(lsp.HoverRequest.type, { textDocument, position: at("remove:seat", 9) });
  assert.match(hover.contents.value, /seat \(seat\)[^]*held by: 4 bolt[^]*after it: [^]*seat off/);
  const refit = await conn.sendRequest(lsp.HoverRequest.type, { textDocument, position: at("reverse:strip", 3) });
  assert.match(refit.contents.value, /refit:\n {2}3\.2\.1 refit seat/);
  const where = await conn.sendRequest(lsp.DefinitionRequest.type, { textDocument, position: at("remove:seat", 9) });
  assert.equal(where[0].uri, uriOf("machines/rig.yaml"));
  const users = await conn.sendRequest(lsp.ReferencesRequest.type, { textDocument, position: at("remove:seat", 9), context: { includeDeclaration: true } });
  assert.deepEqual([...new Set(users.map((u) => u.uri))].sort(), [uriOf("machines/rig.yaml"), job].sort());

  // The outline is by phases, with the refit that follows.
  const outline = await conn.sendRequest(lsp.DocumentSymbolRequest.type, { textDocument });
  assert.deepEqual(outline.map((s) => s.name), ["Make safe", "Strip", "Refit"]);
  assert.equal(outline[2].children[1].children[0].name.startsWith("3.2.1 refit seat"), true);
  const folds = await conn.sendRequest(lsp.FoldingRangeRequest.type, { textDocument });
  assert.ok(folds.length >= 4 && folds.every((f) => f.endLine > f.startLine));

  // A rename goes through the manual: unsaved texts and files.
  const part = await conn.sendRequest(lsp.PrepareRenameRequest.type, { textDocument, position: at("remove:seat", 9) });
  assert.deepEqual(part, { start: at("remove:seat", 7), end: at("remove:seat", 11) });
  const renamed = await conn.sendRequest(lsp.RenameRequest.type, { textDocument, position: at("remove:seat", 9), newName: "bench" });
  const edits = Object.fromEntries(renamed.documentChanges.map((c) => [c.textDocument.uri, c.edits]));
  assert.deepEqual(Object.keys(edits).sort(), [uriOf("machines/rig.yaml"), job].sort());
  await assert.rejects(conn.sendRequest(lsp.RenameRequest.type, { textDocument, position: at("remove:seat", 9), newName: "lid" }), /already/);

  await conn.sendRequest(lsp.ShutdownRequest.type);
  await conn.sendNotification(lsp.ExitNotification.type);
  const code = await new Promise((ended) => child.once("exit", ended));
  assert.equal(code, 0);
  console.log("whole session done");
})().catch((err) => {
  console.error(err);
  child.kill();
  process.exit(1);
});
