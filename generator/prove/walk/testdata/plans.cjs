// Asks the npm package clingo-wasm for plans: node plans.cjs NODE_MODULES ASKED
// ANSWER, where ASKED holds { acts, machines: [{ facts, length, seed }] }. Writes a
// list of the atoms of each machine's plan, null where it has none.
const fs = require('node:fs');
const path = require('node:path');
const clingo = require(path.join(process.argv[2], 'clingo-wasm'));

(async () => {
  const asked = JSON.parse(fs.readFileSync(process.argv[3], 'utf8'));
  const plans = [];
  for (const m of asked.machines) {
    const got = await clingo.run(m.facts + asked.acts, 1, ['--seed=' + m.seed, '--rand-freq=1', '--sign-def=rnd', '-c', 'h=' + m.length]);
    if (got.Result === 'ERROR') throw new Error(got.Error);
    plans.push(got.Result === 'SATISFIABLE' ? got.Call[0].Witnesses[0].Value : null);
  }
  fs.writeFileSync(process.argv[4], JSON.stringify(plans));
})();
