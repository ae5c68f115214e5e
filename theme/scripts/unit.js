'use strict';

// Which unit is worked on: by serial number, or by its options. The choice
// stands in the address, so that a link or a printed code can carry it.
(function (bay) {
  const read = (text, other) => {
    try {
      return JSON.parse(text);
    } catch {
      return other;
    }
  };

  // calls are the links to what steps perform: beside each step, and in its words.
  const bare = (a) => a.dataset.bare || a.getAttribute('href');
  const calls = bay.calls = () => [...document.querySelectorAll('.call > a')].flatMap((a) => [...a.closest('.text').querySelectorAll('a')].filter((b) => bare(b) === bare(a)));

  bay.Unit = class {
    constructor(root) {
      this.names = read(root.dataset.options, {});
      this.rows = read(root.dataset.units, []);
      this.onlyOne = read(root.dataset.onlyOne, null) || [];
      this.asked = Object.keys(this.names).filter((id) => askedFor().has(id));
      this.machine = root.dataset.machine || '';
    }

    // bySerial is the choice that a serial number makes; null where the
    // machine's list has no such number.
    bySerial(text) {
      const n = Number(text);
      const row = this.rows.find((r) => Number.isInteger(n) && n >= r.from && n <= r.to);
      return row ? { serial: String(n), options: row.options.slice() } : null;
    }

    // fromAddress is the choice in the address; undefined where there is none. A
    // procedure for any machine keeps the unit of the job that called it.
    fromAddress() {
      const query = new URLSearchParams(location.search), serial = query.get('unit') || '';
      if (!this.machine) return /^\d+$/.test(serial) ? { serial: serial, options: [] } : undefined;
      if (query.has('unit')) return this.bySerial(query.get('unit')) || undefined;
      if (!query.has('with')) return undefined;
      const options = query.get('with').split(',').filter((id) => id in this.names);
      return this.clash(options) ? undefined : { serial: '', options: options };
    }

    query(unit) { return bay.queryOf(unit); }

    // toAddress writes unit and job into the address. A procedure that a step
    // calls belongs to this job: its address says which step called it.
    toAddress(page) {
      const job = page.job, kept = page.store.key ? job.started : null;
      try {
        history.replaceState(null, '', location.pathname + bay.queryOf(job.unit, kept, page.from) + location.hash);
      } catch { /* the address stays; the choice is kept with the job */ }
      for (const a of calls()) {
        const step = a.closest('li.step');
        const [file, place] = (a.dataset.bare = bare(a)).split('#');
        a.setAttribute('href', file + bay.queryOf(job.unit, null, { page: page.file, started: job.started, id: step.id, step: step.dataset.step }) + (place ? '#' + place : ''));
      }
    }

    // clash names two options of which a unit has at most one.
    clash(options) {
      for (const group of this.onlyOne) {
        const both = options.filter((id) => group.includes(id));
        if (both.length > 1) return both;
      }
      return null;
    }

    label(unit) {
      const w = bay.words;
      if (!this.machine) return bay.fill(w.UnitShort, unit.serial);
      const options = unit.options.filter((id) => this.asked.includes(id)).map((id) => this.names[id]);
      const words = options.length ? options.join('; ') : w.NoOptions;
      return unit.serial ? bay.fill(w.UnitSerial, unit.serial, words) : bay.fill(w.UnitOptions, words);
    }

    // has says whether a unit meets conditions such as "lithium !cab".
    has(unit, conditions) {
      if (!unit) return true;
      return conditions.every((c) => (c[0] === '!' ? !unit.options.includes(c.slice(1)) : unit.options.includes(c)));
    }

    // follow hides the lines within an element that are of other units: what
    // is made dead, where things stand, the hand-over. The count of a fold
    // follows, and a list of which nothing is left says so.
    follow(unit, within) {
      for (const e of within.querySelectorAll('[data-cases]')) e.hidden = Boolean(unit) && !e.dataset.cases.split('|').some((c) => this.has(unit, c.split(' ')));
      for (const list of within.querySelectorAll('ul:has(> [data-cases])')) {
        const left = [...list.children].filter((e) => !e.hidden && !e.matches('.none-here')).length, count = list.parentElement.querySelector(':scope > summary .how-many');
        const none = list.querySelector(':scope > .none-here');
        if (none) none.remove();
        if (!left) list.append(bay.make('li', { class: 'none-here' }, bay.words.NoneOnUnit));
        if (count) count.textContent = String(left);
      }
    }

    // panel is the question; chosen is called with the answer. keep is a way
    // back to the unit that was chosen before.
    panel(chosen, say, keep) {
      const w = bay.words;
      const serial = bay.make('input', { type: 'text', inputmode: 'numeric', autocomplete: 'off', id: 'unit-serial', maxlength: 12 });
      const boxes = this.asked.map((id) => bay.make('input', { type: 'checkbox', value: id, id: 'option-' + id }));
      const bySerial = () => {
        const unit = this.bySerial(serial.value.trim());
        if (unit && serial.value.trim()) return chosen(unit);
        say(bay.fill(w.NoSuchSerial, serial.value.trim() || '–'));
      };
      const byOptions = () => {
        const options = boxes.filter((b) => b.checked).map((b) => b.value);
        const both = this.clash(options);
        if (both) return say(bay.fill(w.NotBoth, this.names[both[0]], this.names[both[1]]));
        chosen({ serial: '', options: options });
      };
      serial.addEventListener('keydown', (e) => { if (e.key === 'Enter') bySerial(); });
      return bay.make('div', { class: 'choose' }, bay.make('h2', {}, w.WhichUnit),
        this.rows.length ? bay.make('p', {}, bay.make('label', { for: 'unit-serial' }, w.SerialNumber), ' ', serial, ' ', bay.button(w.UseSerial, bySerial)) : null,
        boxes.length ? bay.make('fieldset', {}, bay.make('legend', {}, this.rows.length ? w.OrOptions : w.ItsOptions),
          ...boxes.map((b) => bay.make('label', { class: 'option', for: b.id }, b, ' ', this.names[b.value])),
          bay.make('p', {}, bay.button(w.UseOptions, byOptions))) : null, keep ? bay.make('p', {}, keep) : null);
    }
  };

  // askedFor are the options that some step of the page rests on.
  function askedFor() {
    const ids = new Set();
    for (const e of document.querySelectorAll('[data-when]')) {
      for (const c of e.dataset.when.split(' ')) ids.add(c.replace('!', ''));
    }
    return ids;
  }
})(window.baybinder);
