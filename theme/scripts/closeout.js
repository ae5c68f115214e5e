'use strict';

// The close-out list: what was opened, counted closed by eye. Each part has a
// tick, with all that holds it: one look sees both. A line says whether the
// step that closes it is ticked.
(function (bay) {
  const { make, fill } = bay;

  // Row is one line of the list.
  class Row {
    constructor(element, list) {
      this.element = element;
      this.list = list;
      this.key = element.dataset.key;
      this.missed = 'missed' in element.dataset;
      this.what = element.querySelector('.what').textContent;
      const at = [...element.querySelectorAll('td a')].at(-1);
      this.step = list.page.steps.find((s) => '#' + s.id === at.getAttribute('href'));
      this.says = make('small', { class: 'closes' });
      at.after(' ', this.says);
      this.cell = element.querySelector('.seen');
      this.tick = make('button', { type: 'button', class: 'tick', 'aria-pressed': 'false', click: () => this.press() });
      element.querySelector('.square').replaceWith(this.tick);
    }

    // holds says that this line is of what holds the part of another line.
    holds(part) { return this.key.startsWith('fastener:') && part.key === 'part:' + this.key.split('#')[1]; }

    // group are the lines that one look sees: of a part, and of what holds it.
    get group() { return [this, ...this.list.rows.filter((r) => r.holds(this) && r.applies)]; }
    get within() { return this.list.rows.some((r) => this.holds(r) && r.applies); }

    get at() { return (this.list.page.job.closed || {})[this.key] || null; }
    get applies() { return !this.step || this.step.applies; }

    press() {
      const seen = this.at, from = this.tick.getBoundingClientRect().top;
      if (this.list.page.tooSoon()) return;
      this.list.page.change((job) => {
        job.closed = { ...job.closed };
        for (const r of this.group) {
          if (seen) delete job.closed[r.key];
          else job.closed[r.key] = Date.now();
        }
      });
      if (!seen) this.list.lead(from);
    }

    show() {
      const at = this.at, group = this.group, open = this.step && this.step.state !== 'done';
      this.element.hidden = !this.applies;
      this.cell.hidden = this.within;
      this.cell.rowSpan = group.length;
      this.tick.setAttribute('aria-label', fill(this.list.words.tick, group.map((r) => r.what).join(', ')));
      this.tick.textContent = at ? '✓' : '';
      this.tick.setAttribute('aria-pressed', String(Boolean(at)));
      const words = open ? this.list.words.unticked : bay.clock(this.step ? this.step.at : at);
      bay.put(this.says, words);
      this.element.classList.toggle('is-open', Boolean(open));
    }
  }

  bay.CloseOut = class {
    constructor(page) {
      const root = document.getElementById('close-out');
      this.page = page;
      this.words = root ? root.dataset : {};
      this.rows = root ? [...root.querySelectorAll('tr[data-key]')].map((e) => new Row(e, this)) : [];
      this.missed = page.steps.filter((s) => s.text.querySelector(':scope > .missed'));
    }

    show() {
      for (const r of this.rows) r.show();
    }

    // lead brings the next line that is not seen yet under the hand; after the
    // last one, what ends the job. From a step it leads to the head of the list.
    lead(from) {
      const next = this.rows.find((r) => r.applies && !r.at && !r.within), to = next ? next.tick : this.page.close.querySelector('button');
      to.focus({ preventScroll: true });
      const head = from === undefined && next ? next.element.closest('section') : to;
      scrollBy({ top: head.getBoundingClientRect().top - (from || this.page.clear().top), behavior: 'instant' });
    }

    // counts are for the strip: what is seen closed, and the easily missed
    // steps that are done.
    counts() {
      const due = this.rows.filter((r) => r.applies), easy = this.missed.filter((s) => s.applies && !s.waiting), out = [];
      if (easy.length) out.push(fill(this.words.missed, easy.filter((s) => s.state === 'done').length, easy.length));
      if (due.length) out.push(fill(this.words.seen, due.filter((r) => r.at).length, due.length));
      return out;
    }

    // record is what goes into the job's record.
    record(iso) {
      return this.rows.filter((r) => r.applies && r.at).map((r) => ({ key: r.key, words: bay.said(r.element.querySelector('th')), at: iso(r.at) }));
    }
  };
})(window.baybinder);
