'use strict';

// The job of a page, kept in the browser's own store, so that it is there
// again after a reload or a power cut. A store that is missing, full or
// damaged is said in words; the job then lives as long as the page.
(function (bay) {
  const version = 1;

  bay.newJob = function (page) {
    const now = Date.now();
    return {
      version: version, shop: page.shop, procedure: page.procedure, revision: page.revision, fingerprint: page.fingerprint, unit: null, worker: '',
      started: now, saved: now, steps: {}, holds: {}, gaps: [], notes: [], clock: []
    };
  };

  // whole says that what was read back is a job: a damaged one is never
  // half used.
  function whole(job) {
    const map = (x) => x !== null && typeof x === 'object' && !Array.isArray(x);
    return map(job) && job.version === version && Number.isFinite(job.saved) && Number.isFinite(job.started) &&
      typeof job.procedure === 'string' && typeof job.worker === 'string' && (job.unit === null || (map(job.unit) && Array.isArray(job.unit.options))) &&
      map(job.steps) && Object.values(job.steps).every((s) => map(s) && Number.isFinite(s.at)) &&
      (job.closed === undefined || (map(job.closed) && Object.values(job.closed).every(Number.isFinite))) && // jobs from before the close-out list have none
      map(job.holds) && Object.values(job.holds).every(map) &&
      [job.gaps, job.notes, job.clock].every((list) => Array.isArray(list) && list.every(map));
  }

  function parse(text) {
    try {
      const job = JSON.parse(text);
      return whole(job) ? job : null;
    } catch {
      return null;
    }
  }

  // Store reads and writes one job. say(word) tells the page what is wrong
  // with the store, '' that nothing is; taken(job) hands over what another
  // tab wrote, null where that tab started again.
  bay.Store = class {
    constructor(key, say, taken) {
      this.key = key;
      this.say = say;
      addEventListener('storage', (e) => {
        if (e.key !== key) return;
        if (e.newValue === null) return taken(null);
        const job = parse(e.newValue);
        if (job) taken(job);
      });
    }

    read() {
      let text = null;
      try {
        text = localStorage.getItem(this.key);
      } catch {
        this.say('noStore');
        return null;
      }
      if (text === null) return null;
      const job = parse(text);
      this.held = Boolean(job);
      if (job) return job;
      this.keepDamaged(text);
      this.say('damagedStore');
      return null;
    }

    // newer is what another tab has put there since: its job, 'again' where it
    // started again, null where nothing is newer. It is asked before each
    // change: a tab in the background hears of others late.
    newer(job) {
      try {
        const text = localStorage.getItem(this.key);
        if (text === null) return this.held ? 'again' : null;
        const kept = parse(text);
        return kept && kept.saved > job.saved ? kept : null;
      } catch {
        return null;
      }
    }

    // keepDamaged puts what could not be read aside: somebody may still read
    // the ticks out of it.
    keepDamaged(text) {
      try {
        localStorage.setItem(this.key + ':damaged', text);
      } catch { /* it is full too: the next save says so */ }
    }

    write(job) {
      job.saved = Math.max(Date.now(), job.saved + 1); // later than what it follows, whatever the clock says
      job.seen = Date.now();
      try {
        localStorage.setItem(this.key, JSON.stringify(job));
        this.held = true; // what stands there is this job
        this.say('');
      } catch (e) {
        this.say(e && e.name === 'QuotaExceededError' ? 'fullStore' : 'noStore');
      }
    }

    forget() {
      this.held = false;
      try {
        localStorage.removeItem(this.key);
      } catch { /* there is nothing kept */ }
    }
  };
})(window.baybinder);
