// Reads YAML 1.2 texts with the npm package yaml: node read.cjs NODE_MODULES,
// a JSON list of texts on standard input. Prints, for each, the value with
// every scalar as the text that it is (the failsafe schema), or null and why
// it does not parse.
const YAML = require(process.argv[2] + "/yaml");
const texts = JSON.parse(require("fs").readFileSync(0, "utf8"));
const out = texts.map((text) => {
  const docs = YAML.parseAllDocuments(text, { version: "1.2", schema: "failsafe", uniqueKeys: true });
  const errors = docs.flatMap((d) => d.errors.map((e) => e.code));
  if (docs.length > 1) errors.push("SEVERAL_DOCUMENTS");
  if (errors.length > 0) return { value: null, errors };
  try {
    return { value: docs.length === 0 ? null : docs[0].toJS({ maxAliasCount: 100 }), errors };
  } catch (e) {
    return { value: null, errors: [String(e)] }; // an alias that leads nowhere
  }
});
console.log(JSON.stringify(out));
