'use strict';

// Holds: where work stops. Each kind says when it is met, and builds what is
// typed or touched. What a hold holds is job.holds[key], key the step's id and
// the hold's.
(function (bay) {
  const { make, button, fill } = bay;

  const pressed = (b, is) => b.setAttribute('aria-pressed', String(is));

  // twoWays are the two numbers that a text may be: the sign that is not the
  // page's own, before three figures, may part the thousands as well.
  bay.twoWays = function (text) {
    const marker = 'comma' in document.documentElement.dataset ? ',' : '.';
    const parts = /^([-−]?[1-9]\d{0,2})([.,])(\d{3})$/.exec(text.trim());
    return parts && parts[2] !== marker ? [parts[1] + marker + parts[3], parts[1] + parts[3]] : null;
  };

  // number reads what a technician types: 4.2, 4,2 and −3 are numbers; what
  // is not plainly one is null, never a guess.
  bay.number = function (text) {
    const plain = text.trim().replace('−', '-').replace(',', '.');
    return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) && !bay.twoWays(text) ? Number(plain) : null;
  };

  // within compares a number with a hold's limit; both ends belong to it.
  bay.within = (n, data) => (!data.low || n >= Number(data.low)) && (!data.high || n <= Number(data.high));

  bay.Hold = class {
    constructor(element, step, page) {
      this.element = element;
      this.step = step;
      this.page = page;
      this.data = element.dataset;
      this.id = this.data.hold;
      this.kind = this.data.kind;
      this.key = step.id + '/' + this.id;
      this.title = bay.said(element.querySelector('.title'));
      this.controls = make('div', { class: 'controls' });
      const build = { wait: this.wait, measure: this.measure, look: this.look, ask: this.answers, note: this.note }[this.kind] || this.sign;
      build.call(this);
      const before = { wait: '.title', measure: '.blanks' }[this.kind]; // a clock comes first, a verdict stands beside what it is about
      if (before) element.querySelector(before).after(this.controls);
      else element.append(this.controls);
    }

    get now() { return this.page.job.holds[this.key] || {}; }

    // set changes what the hold holds, and says when.
    set(change) {
      this.page.change((job) => {
        job.holds[this.key] = { ...this.now, ...change, id: this.id, kind: this.kind, step: this.step.number, at: Date.now() };
      });
    }

    get met() {
      switch (this.kind) {
        case 'wait': return this.until !== null && Date.now() >= this.until;
        case 'measure': return this.judged === 'in' && (!('proved' in this.data) || this.now.proved === true);
        case 'look': return this.now.good === true && this.places.every((p) => (this.now.ticked || []).includes(p.where));
        case 'ask': return Boolean(this.now.answer);
        case 'note': return Boolean(this.now.words);
        default: return Boolean(this.now.name);
      }
    }

    // failed says that it was not met at least once: a branch may hang on it.
    get failed() {
      return (this.now.failed || []).length > 0 || this.judged === 'out' || this.now.good === false;
    }

    // out says that what came of it last is that it was not met.
    get out() { return this.failed && !this.met && this.judged !== 'in' && this.judged !== 'odd'; }

    // A witness may stay away; a hold of every other kind is open until met.
    get open() { return this.kind !== 'witness' && !this.met; }

    // A wait runs from the tick of the step before; from a press where there is
    // none, or where its own step asks for something first.
    get before() { return 'pressed' in this.data ? null : this.page.before(this.step); }
    get from() {
      const before = this.before;
      return (before ? before.state === 'done' && before.at : this.now.from) || null;
    }

    get until() { return this.from && this.from + Number(this.data.wait) * 1000; }

    // latest is when the wait must be over: at the tick of its step.
    get latest() { return this.data.longest ? this.from && this.from + Number(this.data.longest) * 1000 : null; }
    get late() { return this.latest !== null && (this.step.state === 'done' ? this.step.at : Date.now()) > this.latest; }

    wait() {
      this.left = make('b', {});
      this.says = make('span', {});
      this.start = button(bay.words.StartWait, () => this.set({ from: Date.now() }));
      this.controls.append(make('p', { class: 'clock' }, this.left, ' ', this.says), this.start);
    }

    showWait() {
      const w = bay.words, before = this.before, until = this.until, running = until !== null && !this.met;
      this.start.hidden = Boolean(before) || this.step.state === 'done';
      this.start.textContent = until === null ? w.StartWait : w.StartAgain;
      let words = before ? fill(w.WaitFromTick, before.number) : '';
      if (until !== null) words = fill(this.met ? w.WaitOver : w.WaitUntil, bay.clock(until));
      if (this.latest !== null && this.met) words += ' ' + bay.dueBy(this.latest, this.late, this.step.state === 'done');
      bay.put(this.says, words);
      bay.put(this.left, running && !bay.onPaper ? bay.left(until - Date.now()) : '');
      this.element.classList.toggle('is-waiting', running);
      if (this.running && this.met) {
        bay.beep();
        this.page.announce(fill(w.WaitOverAt, this.step.number, this.title));
      }
      this.running = running;
    }

    measure() {
      const w = bay.words, unit = this.data.unit || '';
      this.fields = [...this.element.querySelectorAll('.blanks li')].map((li, i) => {
        const where = li.querySelector('span:not(.blank)');
        const field = make('input', {
          type: 'text', inputmode: 'decimal', autocomplete: 'off', class: 'reading', maxlength: 12,
          'aria-label': this.title + (where ? ', ' + where.textContent : '') + (unit ? ', ' + unit : '')
        });
        field.addEventListener('input', () => this.typed());
        li.querySelector('.blank').replaceWith(field);
        return { field: field, where: where ? bay.said(where) : '', at: i };
      });
      this.verdict = make('p', { class: 'verdict', role: 'status' });
      this.again = button(w.MeasureAgain, () => this.retake());
      this.proved = button(w.TesterProved, () => this.set({ proved: this.now.proved !== true }));
      this.controls.append(this.verdict, make('p', { class: 'presses' }, 'proved' in this.data ? this.proved : null, this.again));
    }

    // typed: what comes of it is in sight, with the field that is typed into.
    typed() {
      this.set({ values: this.fields.map((f) => f.field.value.trim()) });
      const field = this.element.querySelector('.reading:focus');
      if (field && this.verdict.textContent) for (const e of [this.controls, field]) e.scrollIntoView({ block: 'nearest' });
    }

    // retake puts what was out of limit into the record and asks anew.
    retake() {
      this.set({ failed: [...(this.now.failed || []), { at: Date.now(), values: this.now.values }], values: this.fields.map(() => ''), proved: false });
      this.fields[0].field.focus();
    }

    // judged: '' while something is missing, 'odd' where it is no number,
    // 'out' as soon as one is out of limit, 'in' when all are within.
    get judged() {
      if (this.kind !== 'measure') return '';
      const values = this.now.values || [];
      const typed = values.filter((v) => v !== '');
      const numbers = typed.map(bay.number);
      if (numbers.some((n) => n !== null && !bay.within(n, this.data))) return 'out';
      if (numbers.includes(null)) return 'odd';
      return typed.length === this.fields.length ? 'in' : '';
    }

    // near says that all are within, and one is in the part of the limit that
    // is near its end.
    get near() {
      const part = { low: this.data.nearLow, high: this.data.nearHigh };
      return 'near' in this.data && this.judged === 'in' && this.now.values.some((v) => bay.within(bay.number(v), part));
    }

    showMeasure() {
      const w = bay.words, judged = this.judged, tries = (this.now.failed || []).length + (judged === 'out' ? 1 : 0);
      this.fields.forEach((f, i) => {
        const value = (this.now.values || [])[i] || '', n = bay.number(value);
        if (document.activeElement !== f.field || value === '') f.field.value = value;
        f.field.setAttribute('aria-invalid', String(value !== '' && (n === null || !bay.within(n, this.data))));
      });
      const used = this.data.tries && tries >= Number(this.data.tries) && judged === 'out';
      let words = { in: this.near ? fill(this.data.again ? w.NearLimitAgain : w.NearLimit, this.data.again) : w.WithinLimit, out: w.OutOfLimit, odd: this.oddWords(), '': '' }[judged];
      if (tries && judged !== 'in') words += ' ' + fill(w.TriesSoFar, tries);
      if (used && this.data.calls) words += ' ' + fill(w.CallNow, this.data.calls);
      bay.put(this.verdict, words);
      this.again.hidden = judged !== 'out';
      pressed(this.proved, this.now.proved === true);
      this.element.classList.toggle('is-out', judged === 'out');
    }

    // oddWords say how to write what is no number, or what could be two.
    oddWords() {
      const two = (this.now.values || []).map(bay.twoWays).find(Boolean);
      return two ? fill(bay.words.TwoNumbers, ...two) : fill(bay.words.NoNumber, this.data.unit || '');
    }

    look() {
      const w = bay.words, press = (good) => () => {
        const failed = good === false ? [...(this.now.failed || []), { at: Date.now() }] : this.now.failed || [];
        this.set({ good: good, failed: failed });
      };
      this.yes = button(w.LookGood, press(true));
      this.no = button(w.LookBad, press(false));
      this.places = [...this.element.querySelectorAll('[data-place]')].map((li) => {
        const where = li.dataset.place, press = button(where, () => this.tickPlace(where));
        li.replaceChildren(press);
        return { where: where, press: press };
      });
      this.controls.append(make('p', { class: 'presses' }, this.yes, this.no));
    }

    // tickPlace says that one place was looked at, or takes it back.
    tickPlace(where) {
      const ticked = this.now.ticked || [];
      this.set({ ticked: ticked.includes(where) ? ticked.filter((p) => p !== where) : [...ticked, where] });
    }

    showLook() {
      for (const p of this.places) pressed(p.press, (this.now.ticked || []).includes(p.where));
      pressed(this.yes, this.now.good === true);
      pressed(this.no, this.now.good === false);
      this.element.classList.toggle('is-out', this.now.good === false);
    }

    answers() {
      this.choices = [...this.element.querySelectorAll('.answers li')].map((li) => {
        const key = li.dataset.answer;
        const b = button(li.textContent.trim(), () => this.set({ answer: key }));
        li.replaceChildren(b);
        return { key: key, press: b };
      });
    }

    showAnswers() {
      for (const c of this.choices) pressed(c.press, this.now.answer === c.key);
    }

    note() {
      const blank = this.element.querySelector('.blank');
      this.field = make('textarea', { class: 'words', maxlength: 500, 'aria-label': this.title });
      this.field.addEventListener('input', () => this.set({ words: this.field.value }));
      blank.replaceWith(this.field);
    }

    showNote() {
      if (document.activeElement !== this.field) this.field.value = this.now.words || '';
      this.field.rows = 2 + this.field.value.length / 26; // on paper, too, all of it is seen
    }

    sign() {
      const w = bay.words;
      this.field = make('input', { type: 'text', class: 'words', autocomplete: 'off', maxlength: 80, 'aria-label': this.title + ', ' + w.Name });
      this.says = make('p', { class: 'verdict', role: 'status' });
      this.put = button(w.SignNow, () => this.signed());
      this.back = button(w.TakeBack, () => this.set({ name: '', signed: 0 }), { class: 'quiet' });
      const line = this.element.querySelector('.signed');
      line.classList.add('is-on-paper');
      this.controls.append(make('p', { class: 'presses' }, this.field, this.put, this.back), this.says);
    }

    signed() {
      const w = bay.words, name = this.field.value.trim(), doer = this.page.job.worker.trim();
      if (!name) return this.field.focus();
      if (this.kind === 'check' && doer && doer.toLowerCase() === name.toLowerCase()) {
        this.says.textContent = w.SamePerson;
        return;
      }
      this.set({ name: name, signed: Date.now() });
    }

    showSign() {
      const name = this.now.name || '';
      this.field.hidden = this.put.hidden = Boolean(name);
      this.back.hidden = !name;
      if (name) this.says.textContent = fill(bay.words.SignedBy, name, bay.clock(this.now.signed));
      else if (this.shown) this.says.textContent = '';
      this.shown = name;
    }

    show() {
      const show = { wait: this.showWait, measure: this.showMeasure, look: this.showLook, ask: this.showAnswers, note: this.showNote }[this.kind] || this.showSign;
      show.call(this);
      this.element.classList.toggle('is-met', this.met);
    }
  };
})(window.baybinder);
