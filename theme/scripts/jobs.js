'use strict';

// Which job a page shows. A job has a unit, a person and a start. One that is
// older than a shift, or another person's, is not taken for today's: the page
// asks, and shows nothing as done until it is answered.
(function (bay) {
  const { make, button, fill } = bay;

  // nameOf says whose job it is, and on what: "A. V.'s job on unit 117".
  bay.nameOf = function (job, unit) {
    const w = bay.words, whose = job.worker.trim() ? fill(w.JobOf, job.worker.trim()) : w.JobOfNobody;
    const on = !job.unit ? '' : job.unit.serial ? fill(w.UnitShort, job.unit.serial) : unit ? unit.label(job.unit) : job.unit.options.join(', ');
    return on ? fill(w.JobOn, whose, on) : whose;
  };

  // place is the address of a job's page, from the folder of procedures.
  bay.placeOf = function (job) {
    const own = /^[a-z0-9-]+(\.[A-Za-z0-9-]+)?\.html$/.test(job.page || '') ? job.page : job.procedure + '.html';
    return own + bay.queryOf(job.unit, job.started);
  };

  bay.queryOf = function (unit, started, from) {
    const parts = [];
    if (unit) parts.push(unit.serial ? 'unit=' + encodeURIComponent(unit.serial) : 'with=' + unit.options.map(encodeURIComponent).join(','));
    if (started) parts.push('job=' + started);
    if (from) parts.push('from=' + [from.page, from.started, from.id, from.step].map(encodeURIComponent).join('~'));
    return parts.length ? '?' + parts.join('&') : '';
  };

  // fromOf reads from the address which step of which job called this page.
  bay.fromOf = function (search) {
    const [page, started, id, step] = (new URLSearchParams(search).get('from') || '').split('~');
    if (!/^[a-z0-9-]+(\.[A-Za-z0-9-]+)?\.html$/.test(page) || !/^\d+$/.test(started) || !/^[\w-]+$/.test(id) || !/^[\d.]+$/.test(step)) return null;
    return { page: page, started: Number(started), id: id, step: step };
  };

  const sameCall = (a, b) => (a ? a.page.split('.')[0] + a.started + a.id : '') === (b ? b.page.split('.')[0] + b.started + b.id : '');

  // Chooser finds the job of a page, and asks where that is not plain.
  bay.Chooser = class {
    constructor(page) {
      this.page = page;
      this.among = null; // what is asked about, while it is not answered
      this.panel = make('section', { class: 'resume', hidden: true });
    }

    // begun are the open jobs of this procedure; of a page that a job called,
    // those of that call, also what is done already; of one that was opened by
    // itself, all.
    begun() {
      return this.page.store.list().filter((x) => bay.begun(x.job) && (this.page.from ? sameCall(x.job.from, this.page.from) : !x.job.ended));
    }

    // open settles which job is shown, by the address and by what is kept.
    open() {
      const page = this.page, asked = page.unit.fromAddress(), named = new URLSearchParams(location.search).get('job');
      const same = (job) => asked === undefined || !job.unit || page.unit.query(job.unit) === page.unit.query(asked);
      const own = page.store.list().find((x) => String(x.job.started) === named && same(x.job));
      const fit = own ? [own] : this.begun().filter((x) => same(x.job));
      const plain = fit.length === 1 && this.fresh(fit[0].job) && (asked === undefined || Boolean(fit[0].job.unit));
      if (asked !== undefined) page.job.unit = asked;
      if (plain) return page.opened(fit[0]);
      if (fit.length) return this.ask(fit);
      page.opened(null);
    }

    fresh(job) {
      return Date.now() - job.saved < bay.shift && !bay.another(job.worker, this.page.store.who());
    }

    ask(fit) {
      this.among = fit;
      this.show();
      this.page.show();
      this.again();
    }

    show() {
      const w = bay.words;
      this.panel.hidden = !this.among;
      if (!this.among) return this.panel.replaceChildren();
      this.panel.replaceChildren(make('h2', {}, this.title()), make('p', {}, w.AnswerFirst),
        ...this.choices().map((c) => make('p', {}, button(c.words, () => this.answer(c.value)))));
    }

    title() {
      const w = bay.words, one = this.among.length === 1 ? this.among[0].job : null;
      return one ? fill(w.GoOnOrNew, bay.nameOf(one, this.page.unit), bay.day(one.started)) : w.GoOnWhich;
    }

    choices() {
      const w = bay.words, one = this.among.length === 1;
      return [...this.among.map((x) => ({ words: one ? w.GoOn : fill(w.GoOnWith, bay.nameOf(x.job, this.page.unit), bay.day(x.job.started)), value: x })), { words: w.BeginNew, value: 'new' }];
    }

    // again puts the question where the hand is.
    async again() {
      if (this.asking) return;
      this.asking = true;
      const answer = await bay.ask({ title: this.title(), text: bay.words.AnswerFirst, choices: this.choices() });
      this.asking = false;
      if (answer && this.among) this.answer(answer);
    }

    // settle: which job is shown is known.
    settle() {
      this.among = null;
      this.show();
    }

    answer(value) {
      this.page.opened(value === 'new' ? null : value, true);
    }
  };

  // The front page lists the jobs that are open on this computer.
  const list = document.getElementById('open-jobs');
  if (list) {
    const w = bay.words;
    let open = [], used = [], nothing = location.protocol === 'file:' ? w.NoJobsInFolder : w.NoOpenJobs;
    try {
      const all = bay.jobs(list.dataset.shop).map((x) => x.job).filter((job) => job && bay.begun(job));
      open = all.filter((job) => !job.ended);
      used = all.filter((job, i) => !open.some((o) => o.procedure === job.procedure) && all.findIndex((o) => o.procedure === job.procedure) === i).slice(0, 5);
    } catch {
      nothing = w.NoJobsKept;
    }
    const row = (job) => {
      const done = Object.values(job.steps).filter((s) => s.state === 'done').length;
      return make('li', {}, make('a', { href: 'procedures/' + bay.placeOf(job) }, job.title || job.procedure), ' ',
        make('span', {}, bay.nameOf(job), ' · ', fill(w.JobTimes, bay.clock(job.started), bay.clock(job.saved)), ' · ', fill(w.JobDone, done)));
    };
    list.append(make('h2', {}, w.OpenJobs), open.length ? make('ul', {}, ...open.map(row)) : make('p', {}, nothing));
    if (used.length) list.append(make('h2', {}, w.LastUsed), make('ul', {}, ...used.map((job) => make('li', {}, make('a', { href: 'procedures/' + bay.placeOf(job).split('?')[0] }, job.title || job.procedure)))));
    list.hidden = false;
  }
})(window.baybinder);
