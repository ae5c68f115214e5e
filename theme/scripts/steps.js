'use strict';

// Steps: four states, a large tick, and what was ticked out of order.
(function (bay) {
  const { make, button, fill } = bay;

  bay.Step = class {
    constructor(element, page) {
      this.element = element;
      this.page = page;
      this.id = element.id;
      this.number = element.dataset.step;
      this.guarded = 'guarded' in element.dataset;
      const own = (selector) => [...element.querySelectorAll(selector)].filter((e) => e.closest('li.step') === element);
      this.row = element.querySelector(':scope > .row');
      this.text = this.row.querySelector('.text');
      this.title = (this.text.querySelector('p:not(.when)') || this.text).textContent.trim();
      this.conditions = gathered(element, 'when');
      this.outcomes = gathered(element, 'if');
      this.holds = own('.hold[data-hold]').map((e) => new bay.Hold(e, this, page));
      this.build();
    }

    get entry() { return this.page.job.steps[this.id] || null; }
    get at() { return this.entry ? this.entry.at : null; }

    // state: '' not yet, hand, done, skipped (with a reason), or, from the
    // unit and the outcomes of holds, elsewhere and needless.
    get state() {
      if (this.entry && this.entry.state) return this.entry.state;
      if (!this.page.unit.has(this.page.job.unit, this.conditions)) return 'elsewhere';
      if (this.outcomes.some((o) => this.page.outcome(o, this) === false)) return 'needless';
      return '';
    }

    // latest is by when the step ends, the first of its times; null where it
    // counts from nothing yet. What it counts from is the tick of the step
    // before, or of the named one.
    get latest() {
      const times = (this.element.dataset.within || '').split(' ').filter(Boolean).map((term) => {
        const [seconds, id] = term.split('#');
        const from = id ? this.page.steps.find((s) => s.id === id) : this.page.before(this);
        return from && from.state === 'done' ? from.at + Number(seconds) * 1000 : null;
      }).filter((t) => t !== null);
      return times.length ? Math.min(...times) : null;
    }
    get late() { return this.applies && this.latest !== null && (this.settled ? this.at : Date.now()) > this.latest; }

    // waiting says that it is not known yet whether the step is needed.
    get waiting() { return this.outcomes.some((o) => this.page.outcome(o, this) === null); }
    get applies() { return this.state !== 'elsewhere' && this.state !== 'needless'; }
    get settled() { return !this.applies || this.state === 'done' || this.state === 'skipped'; }

    build() {
      const w = bay.words;
      this.tick = make('button', { type: 'button', class: 'tick', 'aria-pressed': 'false', 'aria-label': fill(w.TickStep, this.number), click: () => this.ticked() });
      this.row.querySelector('.square').replaceWith(this.tick);
      this.says = make('p', { class: 'state' });
      this.hand = button(w.InHand, () => this.page.take(this), { 'aria-pressed': 'false' });
      const skip = this.guarded ? make('p', {}, w.CannotSkip) : button(w.DoesNotApply, () => this.skip());
      this.more = make('details', { class: 'more' }, make('summary', { 'aria-label': fill(w.MoreOnStep, this.number) }, w.More),
        make('div', { class: 'presses' }, this.hand, skip, button(w.StepIsWrong, () => this.wrong())));
      this.text.append(this.says, this.more);
    }

    ticked() {
      if (!this.applies) return;
      if (this.state === 'done' || this.state === 'skipped') return this.page.setStep(this, '', {});
      this.page.done(this);
    }

    async skip() {
      const w = bay.words;
      const reason = await bay.ask({ title: fill(w.SkipTitle, this.number), input: w.Reason, yes: w.DoesNotApply });
      if (reason) this.page.setStep(this, 'skipped', { reason: reason });
      this.more.open = false;
    }

    async wrong() {
      const w = bay.words;
      const words = await bay.ask({ title: fill(w.WrongTitle, this.number), text: w.WrongText, input: w.WrongInput, yes: w.Keep });
      if (words) this.page.change((job) => job.notes.push({ step: this.number, id: this.id, at: Date.now(), words: words }));
      this.more.open = false;
    }

    show() {
      const w = bay.words, state = this.state, entry = this.entry || {};
      for (const h of this.holds) h.show();
      const list = this.element.classList;
      list.toggle('is-done', state === 'done');
      list.toggle('is-hand', state === 'hand');
      list.toggle('is-skipped', state === 'skipped');
      list.toggle('is-not-here', state === 'elsewhere' || state === 'needless');
      this.tick.textContent = { done: '✓', skipped: '–', hand: '…' }[state] || '';
      this.tick.setAttribute('aria-pressed', String(state === 'done'));
      this.tick.disabled = !this.applies;
      this.hand.setAttribute('aria-pressed', String(state === 'hand'));
      const lines = [{
        '': '', hand: fill(w.StateHand, bay.clock(entry.at)), done: fill(w.StateDone, bay.clock(entry.at)),
        skipped: fill(w.StateSkipped, entry.reason, bay.clock(entry.at)), elsewhere: w.NotOnUnit, needless: w.NotNeeded
      }[state]];
      if (this.applies && state !== 'skipped' && this.latest !== null) lines.push(bay.dueBy(this.latest, this.late, state === 'done'));
      for (const g of this.page.job.gaps.filter((x) => x.id === this.id)) lines.push(gapWords(g));
      if (state === 'done') lines.push(...this.holds.map((h) => this.page.wayOn(h)).filter(Boolean).map((n) => fill(w.FailedGoOn, n)));
      for (const n of this.page.job.notes.filter((x) => x.id === this.id)) lines.push(fill(w.NoteKept, n.words));
      const words = lines.filter(Boolean).join(' ');
      if (this.says.textContent !== words) this.says.textContent = words;
      list.toggle('is-late', state !== 'skipped' && this.late);
      list.toggle('is-gap', this.page.job.gaps.some((x) => x.id === this.id));
    }
  };

  // gapWords says what was still open when a step was ticked.
  const gapWords = bay.gapWords = function (g) {
    const w = bay.words, parts = [];
    if (g.unticked.length) parts.push(fill(w.GapUnticked, bay.clock(g.at), g.unticked.join(', ')));
    if (g.holds.length) parts.push(fill(w.GapHolds, bay.clock(g.at), g.holds.join('; ')));
    return parts.join(' ');
  };

  // dueBy counts down to a time, and says when it was passed.
  bay.dueBy = function (latest, late, done) {
    const w = bay.words;
    if (late) return fill(done ? w.WasLate : w.IsLate, bay.clock(latest));
    return done ? '' : fill(w.NoLaterThan, bay.clock(latest), bay.left(latest - Date.now()));
  };

  // gathered are the conditions of a step and of all that holds it.
  function gathered(element, name) {
    const out = [];
    for (let e = element; e; e = e.parentElement) {
      if (e.dataset && e.dataset[name]) out.push(...e.dataset[name].split(' '));
    }
    return out;
  }
})(window.baybinder);
