'use strict';

// The page of a procedure at the bay: the job, the strip, and all that follows
// from a tick. Without this script the page reads the same, with squares.
(function (bay) {
  const { make, button, fill, put } = bay;

  class Page {
    constructor(root) {
      const w = bay.words;
      this.root = root;
      this.shop = root.dataset.shop;
      this.procedure = root.dataset.procedure;
      this.revision = root.dataset.revision;
      this.fingerprint = root.dataset.fingerprint || '';
      this.title = bay.said(document.querySelector('h1'));
      this.file = decodeURIComponent(location.pathname.split('/').pop());
      this.from = bay.fromOf(location.search);
      this.unit = new bay.Unit(root);
      this.pressedAt = -Infinity;
      this.live = make('p', { class: 'live', role: 'status' });
      this.trouble = make('p', { class: 'trouble', role: 'alert', hidden: true });
      this.notice = make('p', { class: 'trouble', role: 'status', hidden: true });
      this.choice = make('div', { class: 'unit' });
      this.worker = make('input', { type: 'text', id: 'worker', autocomplete: 'off', maxlength: 80 });
      this.worker.addEventListener('focus', () => { this.was = this.job.worker; });
      this.worker.addEventListener('input', () => this.typedName());
      this.worker.addEventListener('change', () => this.meetPerson());
      this.short = button(w.ShortView, () => this.toggleShort(), { 'aria-pressed': 'false' });
      this.strip = make('details', { class: 'job-strip' }, make('summary', {}, make('span', { class: 'count' }, this.count = make('span', {}), this.more = make('small', {})), ' ', this.clock = make('span', { class: 'next' })));
      this.store = new bay.Store(this.shop, this.procedure, { say: (words) => this.say(words), taken: (job) => this.taken(job), fits: (job) => this.fits(job) });
      this.job = bay.newJob(this);
      this.chooser = new bay.Chooser(this);
      this.calledFrom = make('p', { class: 'called-from', hidden: true });
      this.go = button('', (e) => this.goOn(e.detail === 0), { class: 'press large' });
      this.opener = bay.opener(this);
      root.append(this.chooser.panel, this.calledFrom, this.choice,
        make('p', { class: 'start' }, make('label', { for: 'worker' }, w.WhoWorks), ' ', this.worker, ' ', this.go), this.opener, this.live);
      this.save = button(w.SaveRecord, () => this.ended());
      this.close = make('section', { class: 'job-end' }, make('p', { class: 'presses' }, this.save, button(w.PrintSummary, () => bay.printSummary(this)),
        make('button', { type: 'button', class: 'quiet', click: () => this.startAgain() }, w.StartAgain)));
      document.querySelector('section.end').before(this.close);
      root.after(make('div', { class: 'at-hand' }, this.trouble, this.notice, this.strip)); // it stays in sight, wherever the hand is
      this.steps = order(document.querySelectorAll('.phase > .steps > li.step')).map((e) => new bay.Step(e, this));
      this.closeOut = new bay.CloseOut(this);
      this.ready = new bay.Before(this);
      this.folds = [...document.querySelectorAll('.phase')].map((e) => new bay.Fold(e, this));
      this.rail = new bay.Rail(this);
      this.strip.append(this.rail.body);
      this.stood = document.getElementById('stood'); // what ever stands otherwise: the steps say when
      this.things = this.stood ? [...this.stood.querySelectorAll('li')] : [];
      this.skipTo();
      document.body.classList.add('is-worked');
      this.chooser.open();
      this.arrive();
      addEventListener('load', () => this.arrive()); // the browser goes to the address's place once more
      for (const a of bay.calls()) a.addEventListener('click', () => { if (!this.store.key) this.change(() => {}); }); // the job that the call belongs to is kept
      setInterval(() => this.beat(), 1000);
      addEventListener('visibilitychange', () => this.beat());
      addEventListener('beforeprint', () => this.paper(true));
      addEventListener('afterprint', () => this.paper(false));
    }

    say(words) {
      this.trouble.hidden = !words;
      this.trouble.textContent = words;
    }

    announce(words) {
      this.live.textContent = words;
    }

    // warn adds to what was said before: one trouble must not hide another. What
    // it is about takes the place of what was said of that, and goes when it is
    // solved, or seen.
    warn(words, about) {
      this.solved(about);
      this.notice.hidden = false;
      const line = make('span', { 'data-about': about || words }, words, ' ', button(bay.words.Seen, () => { line.remove(); this.notice.hidden = !this.notice.children.length; }));
      this.solved(words);
      this.notice.hidden = false;
      this.notice.append(line);
      if (this.notice.children.length > 4) this.notice.firstChild.remove();
    }

    solved(about) {
      for (const line of [...this.notice.children]) if (line.dataset.about === about) line.remove();
      this.notice.hidden = !this.notice.children.length;
    }

    change(how) {
      if (this.chooser.among) return this.unanswered();
      this.solved('saved');
      const newer = this.store.newer(this.job), kept = this.store.key;
      if (newer) this.taken(newer === 'again' ? null : newer);
      else this.solved('tab');
      bay.change(this.job, (job) => { delete job.ended; how(job); });
      this.store.write(this.job);
      if (kept !== this.store.key) this.unit.toAddress(this);
      this.show();
    }

    // unanswered: which job this is must be said before anything is marked.
    unanswered() {
      this.show();
      this.chooser.again();
    }

    // opened shows a job, or a new one where x is null. asked says that it was
    // asked about: from then on it is this shift's.
    opened(x, asked) {
      const unit = this.job.unit;
      this.chooser.settle();
      for (const about of ['record', 'revision']) this.solved(about);
      if (x) {
        this.store.open(x);
        this.job = x.job;
        this.from = this.from || x.job.from || null;
        if (unit && !this.job.unit) this.job.unit = unit;
        if (asked) this.put(() => {});
      } else {
        this.store.begin();
        this.job = bay.newJob(this);
        this.job.unit = unit;
      }
      this.showCall();
      this.showCalled();
      this.meetRevision();
      this.unit.toAddress(this);
      this.watchClock();
      this.stoodAt = null;
      this.show();
    }

    // put changes the job without asking what other tabs did.
    put(how) {
      bay.change(this.job, how);
      this.store.write(this.job);
    }

    // fits says of a job that another tab has just begun that it is the one
    // that this page would begin, or has begun within the same two seconds.
    fits(job) {
      const call = (from) => (from ? from.page + from.started + from.id : ''), twin = Math.abs(bay.first(job) - bay.first(this.job)) < 2000 && !bay.another(job.worker, this.job.worker);
      return !this.chooser.among && (twin || !this.begun) && this.unit.query(job.unit) === this.unit.query(this.job.unit) && call(job.from) === call(this.from);
    }

    // showCall: a procedure that a step of another job called says so, and
    // leads back to that step. Who works there works here.
    showCall() {
      this.calledFrom.hidden = !this.from;
      if (!this.from) return;
      let caller = null;
      try {
        caller = bay.jobs(this.shop).map((x) => x.job).find((job) => job && job.started === this.from.started && job.procedure === this.from.page.split('.')[0]);
      } catch { /* the step is known from the address */ }
      if (caller && !this.job.worker) this.job.worker = caller.worker;
      this.back = this.from.page + bay.queryOf(caller ? caller.unit : this.job.unit, this.from.started) + '#' + this.from.id;
      this.calledFrom.replaceChildren(bay.words.CalledFrom, ' ', this.job.unit && !this.unit.machine ? this.unit.label(this.job.unit) + ' ' : '', make('a', { href: this.back }, fill(bay.words.BackToStep, this.from.step, caller && caller.title || this.from.page.split('.')[0])));
      this.save.textContent = fill(bay.words.SaveAndBack, this.from.step);
    }

    // showCalled says at each step that calls what was done there for this job.
    showCalled() {
      const w = bay.words;
      let all = [];
      try {
        all = bay.jobs(this.shop).map((x) => x.job).filter((job) => job && job.from && job.from.started === this.job.started && job.from.page.split('.')[0] === this.procedure);
      } catch { /* nothing is kept */ }
      for (const s of this.steps) {
        const job = s.call && all.find((x) => x.from.id === s.id), done = job ? Object.values(job.steps).filter((x) => x.state === 'done').length : 0;
        if (job) s.called.textContent = (job.ended ? fill(w.StateDone, bay.clock(job.ended)) : fill(w.JobDone, done));
      }
    }

    // arrive: whoever comes from a step to what it calls, or back to that step,
    // has the step in hand under the hand.
    arrive() {
      if (this.current && !this.chooser.among && (this.from || location.hash === '#' + this.current.id)) this.lead(innerHeight / 2);
    }

    // ended saves the record; from what a step called it leads back to that step.
    async ended() {
      await bay.saveRecord(this);
      if (this.from) location.assign(this.back);
    }

    typedName() {
      if (this.was === undefined) this.was = this.job.worker;
      if (this.was && this.begun) return; // another name is another person: that is asked when it is whole
      this.change((job) => { job.worker = this.worker.value; });
    }

    // meetPerson: another's job is gone on with, or left as it is for a new one.
    async meetPerson() {
      const w = bay.words, was = this.was || '', name = this.worker.value.trim();
      this.was = undefined;
      if (!this.begun || !was || name === was) return;
      if (bay.another(was, name)) {
        const answer = await bay.ask({ title: fill(w.GoOnOrNew, bay.nameOf({ ...this.job, worker: was }, this.unit), bay.day(this.job.started)), choices: [{ words: w.GoOn, value: 'on' }, { words: w.BeginNew, value: 'new' }] });
        if (!answer) {
          this.worker.value = was;
          return this.show();
        }
        if (answer === 'new') this.opened(null);
      }
      this.change((job) => {
        if (this.begun && bay.another(was, name)) job.hands = [...(job.hands || []), { name: was, at: Date.now() }];
        job.worker = name;
      });
    }

    // taken: another tab of this page wrote. What is later stands, entry by
    // entry, and this page says that there is something new. Where the other did
    // not know of what was marked here, it is told.
    taken(job) {
      if (job && !this.took(job)) return;
      if (!job) {
        const unit = this.job.unit;
        this.store.begin();
        this.job = bay.newJob(this);
        this.job.unit = unit;
      }
      this.warn(job ? bay.words.OtherTab : bay.words.OtherTabAgain, 'tab');
      this.unit.toAddress(this);
      this.show();
    }

    // took takes what another tab has later; false where that is nothing.
    took(job) {
      const was = this.job, all = bay.merged({ ...was, started: job.started }, job), news = !bay.same(all, { ...was, started: job.started });
      this.job = all;
      if (this.store.lacks(all)) this.store.write(all);
      return news;
    }

    // meetRevision: a job that was begun with another revision keeps its
    // ticks, and says so; ticks of steps that are gone are counted.
    meetRevision() {
      const ids = new Set(this.steps.map((s) => s.id)), gone = Object.keys(this.job.steps).filter((id) => !ids.has(id));
      if (this.job.revision !== this.revision) this.warn(fill(bay.words.OtherRevision, this.job.revision || '–', this.revision || '–', gone.length), 'revision');
      else if (gone.length) this.warn(fill(bay.words.StepsGone, gone.length), 'revision');
    }

    get begun() { return bay.begun(this.job); }

    // finished: there is nothing left to do.
    get finished() { return this.steps.every((s) => s.settled || s.waiting); }

    // chooseUnit: a job that has no unit yet takes it. Another unit is another
    // job; the one so far stays open.
    async chooseUnit(unit) {
      const w = bay.words, now = this.job.unit, same = Boolean(now) && this.unit.query(now) === this.unit.query(unit);
      if (this.begun && now && !same && !await bay.ask({ title: w.OtherUnitTitle, text: fill(w.OtherUnitText, this.unit.label(now)), yes: w.OtherUnitYes })) return this.keepUnit();
      this.choosing = false;
      this.solved('unit');
      if (this.begun && !now) this.change((job) => { job.unit = unit; });
      else if (!same) this.changeUnit(unit);
      this.unit.toAddress(this);
      this.show();
    }

    changeUnit(unit) {
      const worker = this.job.worker, there = this.chooser.begun().filter((x) => x.job.unit && this.unit.query(x.job.unit) === this.unit.query(unit));
      this.store.begin();
      Object.assign(this.job = bay.newJob(this), { unit: unit, worker: worker });
      if (there.length) this.chooser.ask(there);
    }

    keepUnit() {
      this.choosing = false;
      this.solved('unit');
      this.show();
    }

    async startAgain() {
      const w = bay.words;
      if (!await bay.ask({ title: w.AgainTitle, text: w.AgainText, yes: w.StartAgain })) return;
      const unit = this.job.unit;
      this.store.forget();
      this.job = bay.newJob(this);
      this.job.unit = unit;
      this.notice.replaceChildren();
      this.notice.hidden = true;
      this.show();
    }

    // goOn leads to the step in hand; first the unit is asked for, and after
    // the last step the record is saved. With the keyboard a job begins at the
    // end of what is read before it: the way through its links is long.
    goOn(byKey) {
      if (!this.job.unit && this.unit.asked.length && !this.chooser.among) {
        this.warn(bay.words.ChooseFirst, 'unit');
        return this.choice.querySelector('input').focus();
      }
      if (this.chooser.among) return this.unanswered();
      if (byKey && !this.begun && !this.ready.have) return this.ready.all.focus();
      if (this.current) return this.lead(innerHeight / 2);
      this.closeOut.lead();
    }

    // end: the record of a job with nothing left to do was saved. It is no open
    // job any more; a tick makes it one again.
    end() {
      this.put((job) => { job.ended = Date.now(); });
    }

    // before is the step that is done before another, as far as it applies.
    before(step) {
      for (let i = this.steps.indexOf(step) - 1; i >= 0; i--) {
        const s = this.steps[i];
        if (s.applies && s.state !== 'skipped' && !(s.waiting && !s.at) && !step.element.contains(s.element)) return s;
      }
      return null;
    }

    // asked is the hold that a condition of a step asks about: the last such
    // hold before what the condition stands on; null where there is none.
    asked(condition, step) {
      const id = /^if(?:-not)?:([^=]+)/.exec(condition)[1], end = this.branch(step, condition);
      let hold = null;
      for (const s of this.steps) {
        for (const h of s.holds) {
          if (h.id === id && !end.contains(h.element) && (h.element.compareDocumentPosition(end) & Node.DOCUMENT_POSITION_FOLLOWING)) hold = h;
        }
      }
      return hold;
    }

    // outcome: of "if-not:HOLD" or "if:HOLD=ANSWER" for a step: true, false,
    // or null while it is not known.
    outcome(condition, step) {
      const hold = this.asked(condition, step), answer = /^if:[^=]+=(.*)$/.exec(condition);
      if (!hold) return null;
      if (answer) return hold.now.answer ? hold.now.answer === answer[1] : null;
      return hold.failed ? true : hold.met ? false : null;
    }

    // branchOf are the steps that are taken because a hold failed.
    branchOf(hold) {
      const condition = 'if-not:' + hold.id;
      return this.steps.filter((s) => s.outcomes.includes(condition) && s.applies && !s.waiting && this.asked(condition, s) === hold);
    }

    // answered says of a hold that failed that all was done that the manual
    // says for then, and the hold met where it is taken anew.
    answered(hold) {
      const branch = hold.out ? this.branchOf(hold) : [];
      return branch.length > 0 && branch.every((s) => s.state === 'done' && s.holds.every((h) => h.id !== hold.id || h.met || this.answered(h)));
    }

    // passed says that work went on past an open hold, with the tick of the
    // step at a place. Of a hold that failed, the steps up to the end of its
    // branch do not go past it.
    passed(hold, place) {
      const last = hold.out ? this.branchOf(hold).at(-1) : null;
      return hold.open && !(last && place <= this.steps.indexOf(last)) && !this.answered(hold);
    }

    // wayOn is the number of the step where a branch that is still to be done
    // begins; null where there is none.
    wayOn(hold) {
      const first = hold.open && hold.out && !this.answered(hold) ? this.branchOf(hold)[0] : null;
      return first ? this.branch(first, 'if-not:' + hold.id).dataset.step || first.number : null;
    }

    // branch is the element that a condition stands on: the step, or what
    // holds it.
    branch(step, condition) {
      let e = step.element;
      while (e.parentElement && !(e.dataset.if || '').split(' ').includes(condition)) e = e.parentElement;
      return e;
    }

    setStep(step, state, more) {
      this.change((job) => {
        if (state) job.steps[step.id] = { state: state, at: Date.now(), ...more };
        else delete job.steps[step.id];
      });
    }

    // take puts a step in hand: one at a time.
    take(step) {
      this.change((job) => {
        for (const [id, s] of Object.entries(job.steps)) if (s.state === 'hand') delete job.steps[id];
        job.steps[step.id] = { state: 'hand', at: Date.now() };
      });
      step.more.open = false;
    }

    // done ticks a step. What is still open before it is a gap: recorded and
    // shown, never passed in silence.
    done(step) {
      if (!this.job.unit && this.unit.asked.length) this.warn(bay.words.ChooseFirst, 'unit');
      const place = this.steps.indexOf(step);
      const known = this.job.gaps.flatMap((g) => g.unticked);
      const unticked = this.steps.slice(0, place).filter((s) => !s.settled && !s.waiting && !known.includes(s.number)).map((s) => s.number);
      const open = [];
      for (const s of this.steps.slice(0, place + 1)) {
        if (s === step || s.state === 'done') for (const h of s.holds) if (this.passed(h, place) && !this.job.gaps.some((g) => g.keys.includes(h.key))) open.push(h);
      }
      this.change((job) => {
        job.steps[step.id] = { state: 'done', at: Date.now() };
        if (unticked.length || open.length) {
          job.gaps.push({ step: step.number, id: step.id, at: Date.now(), unticked: unticked, holds: open.map((h) => h.title), keys: open.map((h) => h.key) });
        }
      });
      const gap = this.job.gaps.find((g) => g.id === step.id);
      this.announce(fill(bay.words.Ticked, step.number) + (gap ? ' ' + bay.gapWords(gap) : ''));
    }

    // within are a step and all that stand in it.
    within(step) { return this.steps.filter((s) => step.element.contains(s.element)); }

    // now is the step in hand: the one that was taken, else the first after the
    // last tick that is still to be done, else the first of all.
    now() {
      const open = (s) => !s.settled && !s.waiting, hand = this.steps.find((s) => s.state === 'hand');
      const last = this.steps.findLastIndex((s) => s.state === 'done');
      return hand || this.steps.slice(last + 1).find(open) || this.steps.find(open) || null;
    }

    // tooSoon: two presses within 700 ms are one.
    tooSoon() {
      const soon = performance.now() - this.pressedAt < 700;
      if (!soon) this.pressedAt = performance.now();
      return soon;
    }

    // lead brings the step in hand where the hand is: whole, clear of the strips,
    // its tick as near as can be to where the last one was pressed.
    lead(from) {
      const step = this.current;
      if (!step) return this.closeOut.lead();
      const { top, bottom } = this.clear(), boxes = step.boxes.map((e) => e.getBoundingClientRect());
      const high = boxes[0].top, low = Math.max(boxes.at(-1).bottom, ...step.holds.slice(0, 1).map((h) => h.element.getBoundingClientRect().bottom));
      const by = step.tick.getBoundingClientRect().top - from;
      scrollBy({ top: Math.min(Math.max(by, low - bottom), high - top), behavior: 'instant' });
      const first = step.holds.find((h) => h.open && h.kind !== 'wait'), field = first && first.element.querySelector('input, textarea, button');
      (field || step.toCall || step.tick).focus({ preventScroll: true });
    }

    // clear is what of the window no strip covers.
    clear() {
      const strip = this.strip.parentElement, at = getComputedStyle(strip), over = at.position === 'sticky' ? strip.offsetHeight : 0;
      return { top: over + 8, bottom: innerHeight - document.querySelector('.emergency').offsetHeight - 8 };
    }

    // skipTo: the first Tab of the page leads to the step in hand.
    skipTo() {
      const link = document.querySelector('.skip');
      link.textContent = bay.words.SkipToStep;
      link.addEventListener('click', (e) => {
        if (!this.current) return;
        e.preventDefault();
        this.lead(innerHeight / 2);
        this.current.tick.focus({ preventScroll: true });
      });
    }

    // watchClock: a clock that was set back makes every time doubtful; it is
    // said and recorded. Waits count on from the later time, so they only get
    // longer.
    watchClock() {
      const now = Date.now(), seen = Math.max(this.job.seen || 0, ...Object.values(this.job.steps).map((s) => s.at));
      if (now < seen - 2000) this.clockBack(seen - now);
      this.offset = now - performance.now();
    }

    clockBack(ms) {
      const by = Math.max(1, Math.round(ms / 60000));
      this.warn(fill(bay.words.ClockBack, by), 'clock');
      this.put((job) => job.clock.push({ at: Date.now(), back: by }));
    }

    // paper: what is printed does not count down.
    paper(on) {
      bay.onPaper = on;
      this.beat();
    }

    beat() {
      const offset = Date.now() - performance.now();
      if (offset < this.offset - 2000) this.clockBack(this.offset - offset);
      this.offset = offset;
      for (const s of this.steps) {
        for (const h of s.holds) if (h.kind === 'wait') h.show();
        if (s.element.dataset.within) s.show();
      }
      this.showStrip();
    }

    toggleShort() {
      const on = document.body.classList.toggle('is-short');
      this.short.setAttribute('aria-pressed', String(on));
    }

    show() {
      this.showUnit();
      this.current = this.now();
      for (const s of this.steps) s.show();
      for (const f of this.folds) f.show();
      this.closeOut.show();
      this.ready.show();
      this.showStrip();
      this.go.textContent = !this.current ? bay.words.AllDone : this.begun ? fill(bay.words.GoOnAt, this.current.number) : bay.words.Begin;
      this.opener.hidden = this.begun;
      if (document.activeElement !== this.worker) this.worker.value = this.job.worker;
    }

    showUnit() {
      const w = bay.words, unit = this.job.unit, shown = this.unit.query(unit);
      document.body.classList.toggle('is-unit-known', Boolean(unit));
      if (this.followed !== shown) this.unit.follow(unit, document.getElementById('main'));
      this.followed = shown;
      if (!this.unit.rows.length && !this.unit.asked.length) return;
      if (unit && !this.choosing) {
        this.choice.replaceChildren(make('p', {}, make('span', {}, ...bold(this.unit.label(unit))), ' ', make('button', { type: 'button', class: 'quiet', click: () => { this.choosing = true; this.panel = null; this.showUnit(); } }, w.OtherUnit)));
        this.panel = null; // it is asked anew
        return;
      }
      if (this.panel) return;
      this.panel = this.unit.panel((u) => this.chooseUnit(u), (words) => this.warn(words, 'unit'), unit ? button(fill(w.KeepUnit, this.unit.label(unit)), () => this.keepUnit()) : null);
      this.choice.replaceChildren(this.panel);
    }

    // waits are the holds whose clock runs, or ran out unseen.
    waits() { return this.steps.flatMap((s) => s.holds).filter((h) => h.kind === 'wait' && h.step.state !== 'done' && h.step.applies && !h.step.waiting && h.until !== null); }

    showStrip() {
      const w = bay.words, due = this.steps.filter((s) => s.applies && !s.waiting || s.at);
      const done = due.filter((s) => s.state === 'done').length, skipped = due.filter((s) => s.state === 'skipped').length;
      const now = [...(this.current ? [fill(w.StepNow, this.current.number)] : []), fill(w.DoneOf, done, due.length)], words = [];
      if (this.job.gaps.length) now.push(fill(w.Gaps, this.job.gaps.length));
      if (this.from) words.push(this.title);
      if (skipped) words.push(fill(w.Skipped, skipped));
      words.push(...this.closeOut.counts());
      const hand = this.steps.find((s) => s.state === 'hand');
      if (hand) words.push(fill(w.HandNow, hand.number));
      put(this.count, now.join(' · '));
      put(this.more, words.map((x) => ' · ' + x).join(''));
      const waits = this.waits();
      put(this.clock, waits.map((h) => (h.met ? fill(w.WaitOverShort, h.step.number) : fill(w.WaitLeft, bay.left(h.until - Date.now())))).join(' · '));
      this.showStand();
      this.rail.show();
    }

    // unproved: a stop of the step is open, and its answer was not typed either.
    unproved(step) { return step.holds.some((h) => h.open && !this.answered(h)); }

    // doubtful: a step before the one that is named is not ticked, or a stop is
    // open that was to prove something, so that things may not stand after it
    // as the procedure has them.
    doubtful(step) {
      const before = this.steps.slice(0, this.steps.indexOf(step) + 1);
      return this.job.gaps.length > 0 || before.some((s) => s !== step && !s.settled && !s.waiting) || before.some((s) => s.state === 'done' && this.unproved(s));
    }

    // showStand says where things stand after the last tick.
    showStand() {
      const w = bay.words, last = this.steps.findLast((s) => s.state === 'done');
      const at = last ? this.steps.indexOf(last) : -1;
      const before = this.steps.slice(0, at + 1), doubt = this.doubtful(last);
      const key = at + '/' + doubt + this.unit.query(this.job.unit);
      if (this.stoodAt === key) return;
      this.stoodAt = key;
      const there = new Set();
      const move = (moves, proved) => {
        for (const [, off, n, doubt] of (moves || '').matchAll(/(-?)(\d+)(\??)/g)) if (proved || !doubt) there[off ? 'delete' : 'add'](n);
      };
      move(this.stood?.dataset.stand, true);
      for (const s of before) move(s.element.dataset.stand, !this.unproved(s)); // what was to be proved stands as it stood
      const all = make('ul', {}, ...[...there].map((n) => this.things[n].cloneNode(true)));
      this.unit.follow(this.job.unit, all);
      this.rail.showStand(last ? fill(w.StandAfter, last.number) : w.StandStart, [...all.children].filter((li) => !li.hidden && li.querySelector('b')), doubt ? w.StandDoubt : '');
    }
  }

  // bold sets what stands before a colon apart: the unit before what it has.
  const bold = (words) => {
    const at = words.indexOf(': ') + 1;
    return [make('b', {}, words.slice(0, at)), words.slice(at)];
  };

  // order lists steps as they are done: the sub-steps of a step before the
  // step itself is done.
  function order(list) {
    const out = [];
    for (const e of list) {
      out.push(...order(e.querySelectorAll(':scope > .subs > li.step')), e);
    }
    return out;
  }

  const root = document.getElementById('bay');
  if (root) bay.page = new Page(root);
})(window.baybinder);
