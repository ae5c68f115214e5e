'use strict';

// The jobs that this browser keeps, so that they are there again after a
// reload or a power cut. Each stands under a key of its own, of shop, procedure
// and start. A store that is missing, full or damaged is said in words; a job
// then lives as long as the page.
(function (bay) {
  const version = 1;

  // shift is how long a job is taken to be the same person's day of work: 12 h
  // since its last change, the longest shift with its hand-over. What is older
  // is asked about.
  bay.shift = 12 * 3600 * 1000;

  bay.newJob = function (page) {
    const now = Date.now();
    return {
      version: version, shop: page.shop, procedure: page.procedure, revision: page.revision, fingerprint: page.fingerprint, unit: null, worker: '',
      title: page.title, page: page.file, from: page.from, started: now, saved: now, steps: {}, holds: {}, gaps: [], notes: [], clock: []
    };
  };

  const map = (x) => x !== null && typeof x === 'object' && !Array.isArray(x);
  const texts = (x) => Array.isArray(x) && x.every((v) => typeof v === 'string');
  const or = (x, is) => x === undefined || x === null || is(x);
  const time = Number.isFinite, text = (x) => typeof x === 'string';
  const listOf = (is) => (x) => Array.isArray(x) && x.every((v) => map(v) && is(v));

  const step = (s) => map(s) && time(s.at) && ['hand', 'done', 'skipped'].includes(s.state) && or(s.reason, text);
  const hold = (h) => map(h) && or(h.at, time) && or(h.from, time) && or(h.signed, time) && or(h.name, text) && or(h.words, text) && or(h.answer, text) &&
    or(h.values, texts) && or(h.failed, listOf((f) => time(f.at) && or(f.values, texts)));
  const gap = (g) => text(g.step) && text(g.id) && time(g.at) && texts(g.unticked) && texts(g.holds) && texts(g.keys);

  const handOver = (h) => map(h) && text(h.step) && or(h.at, time) && ['locks', 'from', 'to'].every((k) => or(h[k], text));

  // whole says that what was read back is a job, in all its depth: a damaged
  // one is never half used. What later versions added may be missing.
  bay.whole = function (job) {
    return map(job) && job.version === version && time(job.saved) && time(job.started) && text(job.procedure) && text(job.worker) &&
      or(job.unit, (u) => map(u) && text(u.serial) && texts(u.options)) && job.unit !== undefined &&
      map(job.steps) && Object.values(job.steps).every(step) && map(job.holds) && Object.values(job.holds).every(hold) &&
      or(job.handOvers, (h) => map(h) && Object.values(h).every(handOver)) && ['closed', 'before'].every((k) => or(job[k], (c) => map(c) && Object.values(c).every(time))) &&
      listOf(gap)(job.gaps) && listOf((n) => text(n.step) && time(n.at) && text(n.words))(job.notes) && listOf((c) => time(c.at) && time(c.back))(job.clock) &&
      or(job.stamps, (m) => map(m) && Object.values(m).every(time)) && or(job.title, text) && or(job.page, text) && or(job.seen, time) && or(job.ended, time) && or(job.hands, listOf((h) => text(h.name) && time(h.at))) &&
      or(job.from, (f) => map(f) && text(f.page) && time(f.started) && text(f.id) && text(f.step));
  };

  bay.begun = (job) => Object.keys(job.steps).length + Object.keys(job.holds).length + job.notes.length + Object.keys(job.closed || {}).length + Object.keys(job.before || {}).length + Object.keys(job.handOvers || {}).length > 0;

  function parse(words) {
    try {
      const job = JSON.parse(words);
      return bay.whole(job) ? job : null;
    } catch {
      return null;
    }
  }

  const prefix = (shop) => 'baybinder-job:' + encodeURIComponent(shop) + ':';

  // procedureOf is the procedure whose job stands under a key; '' where none
  // does. Jobs of the first version stand under the procedure alone, and stay there.
  function procedureOf(shop, key) {
    const now = prefix(shop), first = 'baybinder:' + shop + ':';
    if (key.startsWith(now)) return (/^([a-z0-9-]+):\d+$/.exec(key.slice(now.length)) || ['', ''])[1];
    return key.startsWith(first) && /^[a-z0-9-]+$/.test(key.slice(first.length)) ? key.slice(first.length) : '';
  }

  // jobs are all that the browser keeps of a shop, the last changed first; what
  // cannot be read has no job. It throws where the browser keeps nothing.
  bay.jobs = function (shop) {
    const keys = Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i)).filter((key) => procedureOf(shop, key));
    return keys.map((key) => ({ key: key, procedure: procedureOf(shop, key), job: parse(localStorage.getItem(key)) }))
      .sort((a, b) => (b.job ? b.job.saved : 0) - (a.job ? a.job.saved : 0));
  };

  const letters = (name) => name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

  // another says that two names are of two people: dots, spaces and capitals make no other.
  bay.another = (a, b) => Boolean(letters(a) && letters(b)) && letters(a) !== letters(b);

  // Store reads and writes the job of a page. say(words) tells the page what is
  // wrong with the store, '' that nothing is; taken(job) hands over what another
  // tab wrote, null where that tab started again; fits(job) says whether a job
  // that another tab has just begun is the one that this page would begin, or
  // has begun in the same instant.
  bay.Store = class {
    constructor(shop, procedure, o) {
      this.shop = shop;
      this.procedure = procedure;
      this.key = null;
      this.known = this.keys(shop);
      this.say = o.say;
      this.taken = o.taken;
      this.fits = o.fits;
      addEventListener('storage', (e) => {
        if (e.key === null || procedureOf(shop, e.key) !== procedure) return;
        const job = e.newValue === null ? null : parse(e.newValue);
        if (e.key === this.key && (job || e.newValue === null)) return this.taken(job);
        if (this.begunElsewhere({ key: e.key, procedure: procedure, job: job })) this.join(e.key, job);
      });
    }

    // list is what is kept of this procedure. What is damaged is put aside.
    list() {
      let all = [];
      try {
        all = bay.jobs(this.shop).filter((x) => x.procedure === this.procedure);
      } catch {
        this.say(bay.words.NoStore);
      }
      for (const x of all) if (!x.job) this.putAside(x.key);
      return all.filter((x) => x.job);
    }

    // putAside keeps what could not be read: somebody may still read the ticks
    // out of it. Where there is no room it stays, and is told again.
    putAside(key) {
      this.say(bay.words.DamagedStore);
      try {
        localStorage.setItem(key + ':damaged', localStorage.getItem(key));
        localStorage.removeItem(key);
      } catch { /* it is full too: the next save says so */ }
    }

    open(x) {
      this.key = x.key;
      this.kept = Boolean(x.key);
    }

    // begin leaves what is kept as it is: the next write is another job.
    begin() {
      this.key = null;
      this.kept = false;
      this.known = this.keys(this.shop);
    }

    keys(shop) {
      try {
        return bay.jobs(shop).map((x) => x.key);
      } catch {
        return [];
      }
    }

    begunElsewhere(x) { return x.procedure === this.procedure && Boolean(x.job) && !this.known.includes(x.key) && this.fits(x.job); }

    // join: of two jobs that are one, the one that was opened first stays, and
    // the tab of the other takes it over.
    join(key, job) {
      const own = this.key, started = (k) => Number(/\d+$/.exec(k)[0]);
      if (own && started(own) < started(key)) return this.taken({ ...job, started: started(own) });
      this.open({ key: key });
      this.taken(job);
      if (own) localStorage.removeItem(own);
    }

    // lacks says that what is kept is another state of the job than this one.
    lacks(job) {
      const kept = parse(localStorage.getItem(this.key));
      return Boolean(kept) && !bay.same(kept, job);
    }

    // newer is what another tab has put there since: its job, 'again' where it
    // started again, null where nothing is other. It is asked before each
    // change: a tab in the background hears of others late.
    newer(job) {
      try {
        if (!this.key) {
          const other = bay.jobs(this.shop).find((x) => this.begunElsewhere(x));
          if (other) this.open(other);
          return other ? other.job : null;
        }
        const words = localStorage.getItem(this.key);
        if (words === null) return this.kept ? 'again' : null;
        const kept = parse(words);
        return kept && !bay.same(kept, job) ? kept : null;
      } catch {
        return null;
      }
    }

    write(job) {
      job.seen = Date.now();
      if (!this.key) this.key = prefix(this.shop) + this.procedure + ':' + job.started;
      try {
        this.put(this.key, JSON.stringify(job));
        this.kept = true; // what stands there is this job
        if (job.worker) localStorage.setItem('baybinder-who:' + this.shop, JSON.stringify({ name: job.worker, at: job.seen }));
        this.say('');
      } catch (e) {
        this.say(e && e.name === 'QuotaExceededError' ? bay.words.FullStore : bay.words.NoStore);
      }
    }

    // put makes room where there is none: of jobs whose record was saved when
    // all was done, the oldest goes first.
    put(key, words) {
      for (;;) {
        try {
          return localStorage.setItem(key, words);
        } catch (e) {
          const over = bay.jobs(this.shop).findLast((x) => x.key !== key && x.job && x.job.ended);
          if (!over) throw e;
          localStorage.removeItem(over.key);
        }
      }
    }

    // who is the person that last worked on this computer within a shift.
    who() {
      try {
        const last = JSON.parse(localStorage.getItem('baybinder-who:' + this.shop));
        return last && text(last.name) && Date.now() - last.at < bay.shift ? last.name : '';
      } catch {
        return '';
      }
    }

    forget() {
      const key = this.key;
      this.begin();
      try {
        if (key) localStorage.removeItem(key);
      } catch { /* there is nothing kept */ }
    }
  };
})(window.baybinder);
