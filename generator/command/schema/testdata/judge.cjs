// Judges YAML texts by JSON Schemas with the npm packages yaml and ajv (2020-12):
// node judge.cjs NODE_MODULES, on standard input { schemas: { name: schema },
// texts: [{ schema, text, reader }] }. The readers: "words" keeps every word as it
// is written, as the program does, and makes null of what was left out; "core" and
// "yaml-1.1" are what editors have. Prints the values, and where ajv objects to them.
const modules = process.argv[2];
const YAML = require(modules + "/yaml");
const Ajv = require(modules + "/ajv/dist/2020").default;
const { schemas, texts } = JSON.parse(require("fs").readFileSync(0, "utf8"));

const leftOut = { tag: "tag:yaml.org,2002:null", default: true, identify: (v) => v == null, test: /^$/, resolve: () => null, createNode: () => new YAML.Scalar(null) };
const readers = {
  words: { version: "1.2", schema: "failsafe", customTags: (tags) => [leftOut, ...tags] },
  core: { version: "1.2", schema: "core" },
  "yaml-1.1": { version: "1.1", schema: "yaml-1.1", customTags: (tags) => tags.filter((t) => t !== "timestamp" && t.tag !== "tag:yaml.org,2002:timestamp") },
};
const ajv = new Ajv({ strict: true, strictTypes: false, strictRequired: false, allErrors: true, allowUnionTypes: true });
const judges = {};
for (const [name, schema] of Object.entries(schemas)) {
  if (!ajv.validateSchema(schema)) throw new Error(name + " is no schema: " + ajv.errorsText());
  judges[name] = ajv.compile(schema);
}
console.log(JSON.stringify(texts.map(({ schema, text, reader }) => {
  const doc = YAML.parseDocument(text, readers[reader]);
  if (doc.errors.length > 0) return { value: null, unread: String(doc.errors[0]), places: [] };
  const value = JSON.parse(JSON.stringify(doc.toJS()));
  const valid = judges[schema](value);
  const places = valid ? [] : judges[schema].errors.map((e) => e.instancePath);
  return { value, unread: "", valid, places };
})));
