'use strict';

// Asks the npm package highs, a solver of linear programs in whole numbers, for
// the shortest time of schedules: every task begins at one whole time, after
// those that it follows, and at no time are more people at work than there are.
// Usage: node optimum.cjs NODE_MODULES FILE; the file is a JSON list of
// {people, tasks: [{seconds, people, after}]}. Prints {status, time} of each.
const path = require('path');
const [folder, file] = process.argv.slice(2);
const jobs = JSON.parse(require('fs').readFileSync(file, 'utf8'));

function program(job) {
  const tasks = job.tasks, end = tasks.reduce((sum, t) => sum + t.seconds, 0);
  const last = (t) => end - t.seconds;
  const rows = [], binaries = [];
  const sum = (terms) => terms.filter(([n]) => n !== 0).map(([n, x]) => `${n < 0 ? '-' : '+'} ${Math.abs(n)} ${x}`).join(' ');
  const start = (i, sign) => range(0, last(tasks[i])).map((s) => [sign * s, `x${i}_${s}`]);
  tasks.forEach((t, i) => {
    const times = range(0, last(t));
    binaries.push(...times.map((s) => `x${i}_${s}`));
    rows.push(`${sum(times.map((s) => [1, `x${i}_${s}`]))} = 1`);
    rows.push(`${sum([[1, 'over'], ...start(i, -1)])} >= ${t.seconds}`);
    for (const a of t.after || []) {
      const terms = sum([...start(i, 1), ...start(a, -1)]);
      if (terms) rows.push(`${terms} >= ${tasks[a].seconds}`);
    }
  });
  for (let now = 0; now < end; now++) {
    const busy = [];
    tasks.forEach((t, i) => {
      for (const s of range(Math.max(0, now - t.seconds + 1), Math.min(now, last(t)))) busy.push([t.people, `x${i}_${s}`]);
    });
    const terms = sum(busy);
    if (terms) rows.push(`${terms} <= ${job.people}`);
  }
  return `Minimize\n obj: over\nSubject To\n${rows.map((r, n) => ` c${n}: ${r}`).join('\n')}\nBounds\n 0 <= over <= ${end}\nBinaries\n ${binaries.join('\n ')}\nEnd\n`;
}

function range(from, to) {
  const out = [];
  for (let i = from; i <= to; i++) out.push(i);
  return out;
}

require(path.join(folder, 'highs'))().then((highs) => {
  process.stdout.write(JSON.stringify(jobs.map((job) => {
    const answer = highs.solve(program(job));
    return { status: answer.Status, time: answer.ObjectiveValue };
  })));
});
