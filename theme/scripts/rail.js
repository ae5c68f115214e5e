'use strict';

// The rail beside the steps, on a narrow screen the strip that opens: what the
// page knows of the job now.
(function (bay) {
  const { make, button, fill } = bay;

  bay.Rail = class {
    constructor(page) {
      const w = bay.words;
      this.page = page;
      this.bar = make('div', { class: 'bar', 'aria-hidden': 'true' });
      this.waits = make('div', { class: 'waits' });
      this.stand = make('div', { class: 'standing' });
      this.next = make('div', { class: 'coming' });
      this.over = button(w.HandOver, () => this.handOver());
      this.body = make('div', { class: 'now' }, this.bar, this.waits, this.stand, this.next,
        make('p', { class: 'presses' }, page.short, this.over, button(w.SaveShort, () => bay.saveRecord(page))));
      this.over.hidden = !page.steps.some((s) => s.handOver);
      this.phases = [...document.querySelectorAll('.phase')].map((e) => page.steps.filter((s) => e.contains(s.element))).filter((list) => list.length);
      const wide = matchMedia('(min-width: 75rem)'), fit = () => { page.strip.open = wide.matches; };
      wide.addEventListener('change', fit);
      page.strip.querySelector('summary').addEventListener('click', (e) => { if (wide.matches) e.preventDefault(); });
      fit();
    }

    // handOver leads to the stopping place of the work: the last one that was
    // passed, else the next.
    handOver() {
      const stops = this.page.steps.filter((s) => s.handOver && s.applies), at = this.page.steps.indexOf(this.page.current);
      const stop = stops.findLast((s) => this.page.steps.indexOf(s) <= at && at >= 0) || stops[0];
      if (!stop) return;
      for (const f of this.page.folds) if (f.phase.contains(stop.element)) f.turn(true);
      stop.handOver.element.scrollIntoView({ block: 'center', behavior: 'instant' });
      stop.handOver.fields.locks.focus({ preventScroll: true });
    }

    show() {
      const key = this.page.job.saved + this.page.unit.query(this.page.job.unit);
      this.showWaits();
      if (key === this.shown) return;
      this.shown = key;
      this.bar.replaceChildren(...this.phases.map((list) => {
        const due = list.filter((s) => s.applies && !s.waiting), done = due.filter((s) => s.settled).length, meter = make('progress', { max: due.length || 1, value: done });
        return meter;
      }));
      this.showNext();
    }

    showWaits() {
      const runs = this.page.waits();
      const key = runs.map((h) => h.key).join();
      if (key !== this.running) {
        this.running = key;
        this.clocks = runs.map((h) => ({ hold: h, left: make('b', { class: 'left' }), until: make('span', {}) }));
        this.waits.replaceChildren(...this.clocks.map((c) => make('section', {}, make('h2', {}, c.hold.title), c.left, ' ', c.until)));
      }
      for (const c of this.clocks) {
        const met = c.hold.met, left = met ? '✓' : bay.left(c.hold.until - Date.now()), words = met ? fill(bay.words.WaitOver, bay.clock(c.hold.until)) : fill(bay.words.WaitShort, c.hold.step.number, bay.clock(c.hold.until));
        bay.put(c.left, left);
        bay.put(c.until, words);
      }
    }

    // showStand groups where things stand by what it is: off, dead, in place.
    showStand(title, list, doubt) {
      const groups = new Map();
      for (const li of list) {
        const name = li.querySelector('b'), bare = li.cloneNode(true);
        for (const e of bare.querySelectorAll('b, small')) e.remove();
        const word = bare.textContent.trim().replace(this.page.job.unit ? / \(.*\)$/ : '', '');
        groups.set(word, [...(groups.get(word) || []), name.textContent.replace(/:$/, '')]);
      }
      const rows = [...groups].flatMap(([word, names]) => [make('dt', {}, word + (names.length > 1 ? ': ' + names.length : '')), make('dd', {}, names.join(', '))]);
      this.stand.replaceChildren(make('h2', {}, title), rows.length ? make('dl', {}, ...rows) : make('p', {}, bay.words.NothingChanged), doubt ? make('p', { class: 'doubt' }, doubt) : '');
    }

    // showNext says what must be at hand soon: the next tool that was not in use
    // yet, the next second person, the next stop.
    showNext() {
      const w = bay.words, page = this.page, at = page.steps.indexOf(page.current), later = at < 0 ? [] : page.steps.slice(at + 1).filter((s) => !s.settled && !s.waiting);
      const tools = (s) => [...s.row.querySelectorAll('b.tool')], used = new Set(page.steps.slice(0, at + 1).flatMap(tools).map((e) => e.textContent)), out = [];
      const add = (what) => {
        for (const s of later) {
          const found = what(s);
          if (found) return void out.push({ at: page.steps.indexOf(s), line: make('li', {}, make('a', { href: '#' + s.id }, s.number), ' ', found) });
        }
      };
      const copy = (e) => e && make('span', {}, ...e.cloneNode(true).childNodes); // with what keeps an amount on one line
      add((s) => copy(tools(s).find((e) => !used.has(e.textContent))));
      add((s) => copy(s.text.querySelector(':scope > .tags .people')));
      add((s) => (s.holds.length ? s.holds[0].title : s.handOver ? w.HandOver : ''));
      this.next.replaceChildren(...(out.length ? [make('h2', {}, w.ComingUp), make('ul', {}, ...out.sort((a, b) => a.at - b.at).map((x) => x.line))] : []));
    }
  };
})(window.baybinder);
