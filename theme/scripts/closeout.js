'use strict';

// The close-out list: what was opened, counted closed by eye. Each line has a
// tick of its own, and says whether the step that closes it is ticked.
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
      this.tick = make('button', { type: 'button', class: 'tick', 'aria-pressed': 'false', 'aria-label': fill(list.words.tick, this.what), click: () => this.press() });
      element.querySelector('.square').replaceWith(this.tick);
    }

    get at() { return (this.list.page.job.closed || {})[this.key] || null; }
    get applies() { return !this.step || this.step.applies; }

    press() {
      this.list.page.change((job) => {
        job.closed = { ...job.closed };
        if (job.closed[this.key]) delete job.closed[this.key];
        else job.closed[this.key] = Date.now();
      });
    }

    show() {
      const at = this.at, open = this.step && this.step.state !== 'done';
      this.element.hidden = !this.applies;
      this.tick.textContent = at ? '✓' : '';
      this.tick.setAttribute('aria-pressed', String(Boolean(at)));
      const words = open ? this.list.words.unticked : bay.clock(this.step ? this.step.at : at);
      if (this.says.textContent !== words) this.says.textContent = words;
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
      return this.rows.filter((r) => r.applies && r.at).map((r) => ({ key: r.key, words: r.element.querySelector('th').textContent.trim(), at: iso(r.at) }));
    }
  };
})(window.baybinder);
