'use strict';

// Two tabs that work on one job. Each writes the whole job; when two write in
// the same instant, one does not know of the other's mark, and its job stands
// in the store. So a job knows of each of its entries when it was last changed,
// and a tab that hears of another state takes from both what is later, and
// writes again what the other left out. All tabs come to the same job in this
// way, in whatever order they hear of each other. A lock of the browser would
// not do: it makes tabs wait, but what one reads from the store may still be old.
(function (bay) {
  const maps = ['steps', 'holds', 'closed', 'before', 'handOvers'], lists = ['gaps', 'notes', 'clock', 'hands'], times = ['saved', 'seen', 'stamps'];

  // entries are what a job holds, as JSON by place: steps/s1-1, holds/s1-1/gap, worker.
  function entries(job) {
    const out = new Map();
    for (const [k, v] of Object.entries(job)) {
      if (maps.includes(k)) for (const [id, e] of Object.entries(v || {})) out.set(k + '/' + id, JSON.stringify(e));
      else if (!lists.includes(k) && !times.includes(k)) out.set(k, JSON.stringify(v));
    }
    return out;
  }

  const both = (a, b) => new Set([...a.keys(), ...b.keys()]);

  // change changes a job, and stamps the entries that are other ones then. A
  // stamp is later than all that the job knows of, whatever the clock says.
  bay.change = function (job, how) {
    const was = entries(job);
    how(job);
    const now = entries(job);
    job.saved = Math.max(Date.now(), job.saved + 1);
    job.stamps = { ...job.stamps };
    for (const place of both(was, now)) if (was.get(place) !== now.get(place)) job.stamps[place] = job.saved;
  };

  // union is what stands in either of two lists, in the order of time.
  const union = (a, b) => [...new Set([...a || [], ...b || []].map((x) => JSON.stringify(x)))].sort().map((x) => JSON.parse(x)).sort((x, y) => x.at - y.at);

  // merged is a job of two states of it.
  bay.merged = function (a, b) {
    const mine = entries(a), others = entries(b), stamps = { ...a.stamps, ...b.stamps };
    const out = { saved: Math.max(a.saved, b.saved), seen: Math.max(a.seen || 0, b.seen || 0), stamps: stamps };
    for (const k of maps) out[k] = {};
    for (const k of lists) out[k] = union(a[k], b[k]);
    for (const place of both(mine, others)) {
      const [x, y] = [mine.get(place), others.get(place)], [at, then] = [a, b].map((job) => (job.stamps || {})[place] || 0);
      stamps[place] = Math.max(at, then);
      const words = at === then ? [x, y].filter(Boolean).sort().at(-1) : at > then ? x : y;
      if (words === undefined) continue; // it was taken back
      const [k, ...id] = place.split('/');
      if (id.length) out[k][id.join('/')] = JSON.parse(words);
      else out[k] = JSON.parse(words);
      if (k === 'holds' && x && y) tries(out.holds[id.join('/')], JSON.parse(x), JSON.parse(y));
    }
    for (const place of Object.keys(stamps)) stamps[place] = Math.max((a.stamps || {})[place] || 0, (b.stamps || {})[place] || 0);
    return out;
  };

  // tries: a reading that was out of its limit stays told.
  function tries(hold, a, b) {
    const all = union(a.failed, b.failed);
    if (all.length) hold.failed = all;
  }

  const sorted = (map) => JSON.stringify([...map].sort());

  // same says that two states of a job hold the same.
  bay.same = (a, b) => sorted(entries(a)) === sorted(entries(b)) && lists.every((k) => sorted(union(a[k])) === sorted(union(b[k])));

  // first is when a job was first written.
  bay.first = (job) => Math.min(job.saved, ...Object.values(job.stamps || {}));
})(window.baybinder);
