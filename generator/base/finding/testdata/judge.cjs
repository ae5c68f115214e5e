// Judges a SARIF file by the schema that ships with the SARIF validator:
// node judge.cjs NODE_MODULES FILE. Prints what is wrong, a line each.
const fs = require("fs");
const [modules, file] = process.argv.slice(2);
const Ajv = require(modules + "/ajv/dist/2020").default;
const schema = fs.readFileSync(modules + "/@microsoft/sarif-multitool-linux/sarif-2.1.0.json", "utf8").replace(/^\uFEFF/, "");
const ajv = new Ajv({ strict: false, allErrors: true });
require(modules + "/ajv-formats").default(ajv);
const judge = ajv.compile(JSON.parse(schema));
if (!judge(JSON.parse(fs.readFileSync(file, "utf8")))) {
  for (const e of judge.errors) console.log(e.instancePath + " " + e.message);
}
console.log("judged");
