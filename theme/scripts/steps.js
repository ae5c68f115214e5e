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
      this.title = bay.said(this.text.querySelector('p:not(.when)') || this.text);
      this.conditions = gathered(element, 'when');
      this.outcomes = gathered(element, 'if');
      this.holds = own('.hold[data-hold]').map((e) => new bay.Hold(e, this, page));
      this.build();
      this.call = this.text.querySelector(':scope > .call');
      if (this.call) this.call.append(' ', this.called = make('b', {}));
      this.handOver = this.text.querySelector(':scope > .pause') ? new bay.HandOver(this.text.querySelector(':scope > .pause'), this, page) : null;
      this.stand = this.text.querySelector(':scope > .stand');
      this.doubts = own('.stand, .hand-over').map((list) => ({ list: list, says: make('p', { class: 'doubt', hidden: true }) }));
      for (const d of this.doubts) (d.list.querySelector(':scope > ul') || d.list.lastElementChild).before(d.says);
      if (this.stand) this.stand.addEventListener('toggle', () => this.showDoubt());
    }

    get entry() { return this.page.job.steps[this.id] || null; }
    get at() { return this.entry ? this.entry.at : null; }

    // toCall leads to what the step performs, while nothing of that is done.
    get toCall() { return this.call && !this.called.textContent ? this.call.querySelector('a') : null; }

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
      this.tick = make('button', { type: 'button', class: 'tick', 'aria-pressed': 'false', 'aria-label': fill(w.TickStep, this.number), click: () => this.pressed() });
      this.tick.addEventListener('keydown', (e) => { if (e.repeat) e.preventDefault(); }); // a held key is one press
      this.row.querySelector('.square').replaceWith(this.tick);
      this.says = make('p', { class: 'state' });
      this.hand = button(w.InHand, () => this.page.take(this), { 'aria-pressed': 'false' });
      const skip = this.guarded ? make('p', {}, w.CannotSkip) : button(w.DoesNotApply, () => this.skip());
      this.more = make('details', { class: 'more' }, make('summary', { 'aria-label': fill(w.MoreOnStep, this.number) }, '⋯'),
        make('div', { class: 'presses' }, this.hand, skip, button(w.StepIsWrong, () => this.wrong())));
      this.text.append(this.says);
      this.row.append(this.more);
    }

    // pressed: the next tick comes to where this one was, so a second press of
    // the same touch would tick a step that nobody has read.
    pressed() {
      if (!this.applies || this.page.tooSoon()) return;
      if (this.state === 'done' || this.state === 'skipped') return this.untick();
      const from = this.tick.getBoundingClientRect().top;
      this.page.done(this);
      if (this.state === 'done') this.page.lead(from);
    }

    async untick() {
      const w = bay.words;
      if (await bay.ask({ title: fill(w.UntickTitle, this.number), text: this.says.textContent, yes: w.TakeBack })) this.page.setStep(this, '', {});
    }

    // boxes are what must be in sight when the step is done: its cautions, and
    // its row down to its first hold.
    get boxes() { return [...this.element.querySelectorAll(':scope > .safety'), this.row]; }

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
      if (this.handOver) this.handOver.show();
      this.showDoubt();
      const list = this.element.classList;
      list.toggle('is-done', state === 'done');
      list.toggle('is-hand', state === 'hand');
      list.toggle('is-now', this.page.current === this);
      list.toggle('is-skipped', state === 'skipped');
      list.toggle('is-not-here', state === 'elsewhere' || state === 'needless');
      list.toggle('is-gone', state === 'elsewhere');
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
      bay.put(this.says, words);
      list.toggle('is-late', state !== 'skipped' && this.late);
      list.toggle('is-gap', this.page.job.gaps.some((x) => x.id === this.id));
    }

    // showDoubt says above where things stand that they may not, as long as a
    // step before is open or a stop proved nothing. A list that is folded waits.
    showDoubt() {
      if (!this.handOver && !(this.stand && this.stand.open)) return;
      const doubt = this.page.begun && this.page.doubtful(this);
      for (const d of this.doubts) {
        bay.put(d.says, doubt ? bay.words.StandDoubt : '');
        d.says.hidden = !doubt;
      }
    }
  };

  // HandOver is the hand-over at a stopping place: lock numbers, who hands over
  // to whom, and when. What is typed is kept as it is typed.
  bay.HandOver = class {
    constructor(element, step, page) {
      this.element = element;
      this.step = step;
      this.page = page;
      const blanks = [...element.querySelectorAll('.blank')], names = ['locks', 'from', 'to'];
      this.fields = Object.fromEntries(names.map((name, i) => {
        const says = blanks[i].previousElementSibling.textContent;
        const field = make('input', { type: 'text', class: 'words', autocomplete: 'off', maxlength: name === 'locks' ? 200 : 80, 'aria-label': says + ', ' + fill(bay.words.StepAt, step.number) });
        field.addEventListener('input', () => this.set({ [name]: field.value }));
        blanks[i].replaceWith(field);
        return [name, field];
      }));
      this.says = make('p', { class: 'verdict', role: 'status' });
      this.press = button(bay.words.HandOverNow, () => this.signed());
      this.back = button(bay.words.TakeBack, () => { this.set({ at: 0 }); page.change((job) => { job.worker = this.now.from; }); }, { class: 'quiet' });
      for (const e of [blanks[3].previousElementSibling, blanks[3]]) e.classList.add('is-on-paper');
      element.querySelector('.hand-over').append(make('div', { class: 'controls' }, make('p', { class: 'presses' }, this.press, this.back), this.says));
    }

    get now() { return (this.page.job.handOvers || {})[this.step.id] || {}; }

    set(change) {
      this.page.change((job) => { job.handOvers = { ...job.handOvers, [this.step.id]: { ...this.now, step: this.step.number, ...change } }; });
    }

    // signed hands over: from then on the other one works.
    signed() {
      const from = this.fields.from.value.trim(), to = this.fields.to.value.trim();
      if (!bay.another(from, to)) return void (this.says.textContent = bay.words.HandOverPerson);
      this.set({ from: from, to: to, at: Date.now() });
      this.page.change((job) => { job.worker = to; });
    }

    show() {
      const now = this.now;
      for (const [name, field] of Object.entries(this.fields)) {
        if (document.activeElement !== field) field.value = now[name] || '';
        field.readOnly = Boolean(now.at);
      }
      this.press.hidden = Boolean(now.at);
      this.back.hidden = !now.at;
      if (now.at) this.says.textContent = fill(bay.words.HandedOver, now.from, now.to, bay.clock(now.at));
      else if (this.at) this.says.textContent = '';
      this.at = now.at;
    }
  };

  // Fold is a phase's line for its steps that are done: they fold into it, and
  // it opens. One that was ticked past something open stays in sight.
  bay.Fold = class {
    constructor(phase, page) {
      this.phase = phase;
      this.page = page;
      this.open = false;
      this.steps = page.steps.filter((s) => s.element.parentElement.parentElement === phase);
      this.says = make('b', {});
      this.press = make('button', { type: 'button', class: 'quiet', 'aria-expanded': 'false', click: () => this.turn(!this.open) });
      this.line = make('p', { class: 'folded', hidden: true }, this.says, ' ', this.press);
      this.left = make('p', { class: 'left-out', hidden: true });
      phase.querySelector(':scope > h2').after(this.left, this.line);
      addEventListener('hashchange', () => this.reveal());
      this.reveal();
    }

    turn(open) {
      this.open = open;
      this.show();
    }

    // reveal: whoever follows a link to a step that is folded sees it.
    reveal() {
      const to = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
      if (to && to !== this.phase && this.phase.contains(to) && to.closest('.is-folded')) {
        this.turn(true);
        to.scrollIntoView();
      }
    }

    show() {
      const w = bay.words, closed = (s) => this.page.within(s).every((x) => (x.state === 'done' || !x.applies) && !x.element.classList.contains('is-gap') && !x.element.classList.contains('is-now'));
      const done = this.steps.filter((s) => s.state === 'done' && closed(s));
      for (const s of this.steps) s.element.classList.toggle('is-folded', !this.open && done.includes(s));
      this.line.hidden = !done.length;
      const words = done.length ? fill(done.length === 1 ? w.FoldedOne : w.FoldedMany, done[0].number, done.at(-1).number, bay.clock(Math.max(...done.map((s) => s.at)))) : '';
      bay.put(this.says, words);
      this.press.textContent = this.open ? w.FoldUp : w.FoldOut;
      this.press.setAttribute('aria-expanded', String(this.open));
      this.showLeft();
    }

    // showLeft says which of the phase's steps are not of the unit: they are
    // gone from the page.
    showLeft() {
      const gone = (s) => s.state === 'elsewhere', all = this.page.steps.filter((s) => this.phase.contains(s.element));
      const list = all.filter((s) => gone(s) && !all.some((x) => x !== s && gone(x) && x.element.contains(s.element)));
      const words = list.length ? fill(bay.words.LeftOut, spans(list, all.filter((s) => list.some((x) => x.element.parentElement === s.element.parentElement))).join(', ')) : '';
      this.left.hidden = !words;
      bay.put(this.left, words);
      this.phase.classList.toggle('is-elsewhere', all.length > 0 && all.every(gone));
    }
  };

  // spans writes steps that follow each other among some as "3.5 to 3.7".
  function spans(list, among) {
    const runs = [];
    for (const s of list) {
      const run = runs.at(-1);
      if (run && among.indexOf(run.at(-1)) + 1 === among.indexOf(s)) run.push(s);
      else runs.push([s]);
    }
    return runs.flatMap((run) => (run.length > 2 ? [fill(bay.words.FromTo, run[0].number, run.at(-1).number)] : run.map((s) => s.number)));
  }

  // gapWords says what was still open when a step was ticked.
  const gapWords = bay.gapWords = function (g) {
    const w = bay.words, parts = [];
    if (g.unticked.length) parts.push(fill(w.GapUnticked, bay.clock(g.at), g.unticked.join(', ')));
    if (g.holds.length) parts.push(fill(w.GapHolds, bay.clock(g.at), g.holds.join('; ')));
    return parts.join(' ');
  };

  // dueBy counts down to a time, and says when it was passed. What is printed
  // does not count.
  bay.dueBy = function (latest, late, done) {
    const w = bay.words;
    if (late) return fill(done ? w.WasLate : w.IsLate, bay.clock(latest));
    return done ? '' : bay.onPaper ? fill(w.DueBy, bay.clock(latest)) : fill(w.NoLaterThan, bay.clock(latest), bay.left(latest - Date.now()));
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
