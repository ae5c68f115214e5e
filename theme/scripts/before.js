'use strict';

// Before you start: what is fetched is ticked, thing by thing or all at once;
// when all of it is there, the box folds to one line. What a step calls was
// fetched with the job of that step: its kit has all of it.
(function (bay) {
  const { make, button, fill } = bay;

  bay.Before = class {
    constructor(page) {
      this.page = page;
      this.open = false;
      this.box = document.querySelector('.before');
      const head = this.box.querySelector(':scope > h2');
      this.says = make('small', {});
      this.turn = make('button', { type: 'button', class: 'quiet', click: () => { this.open = !this.open; this.show(); } });
      head.append(' ', this.says, ' ', this.turn);
      this.items = [...this.box.querySelectorAll('.shelf li')].map((li) => this.item(li));
      this.all = button('', () => this.set(this.got ? [] : this.items.map((i) => i.key)), { 'aria-pressed': 'false' });
      this.box.append(make('div', { class: 'fetch' }, this.all));
    }

    item(li) {
      const name = li.textContent.trim(), field = make('input', { type: 'checkbox', 'aria-label': name });
      const key = bay.said(li.querySelector('a:not(.computed)') || li), item = { key: key, field: field };
      field.addEventListener('change', () => this.set(this.items.filter((i) => i.field.checked).map((i) => i.key)));
      li.prepend(make('label', { class: 'got' }, field));
      return item;
    }

    // had are the things that are there: a time for each.
    get had() { return this.page.job.before || {}; }
    get have() { return Boolean(this.page.from) || this.got; }
    get got() { return this.all ? (this.items.length ? this.items.every((i) => this.had[i.key]) : Boolean(this.had['-'])) : false; }

    set(keys) {
      const now = Date.now(), had = this.had, list = keys.length || this.items.length ? keys : this.got ? [] : ['-'];
      this.open = false;
      this.page.change((job) => { job.before = Object.fromEntries(list.map((k) => [k, had[k] || now])); });
      if (this.have) this.page.goOn(); // the box is folded: the first step comes to the hand
    }

    show() {
      const w = bay.words, have = this.have, got = this.got, n = this.items.filter((i) => this.had[i.key]).length;
      for (const i of this.items) i.field.checked = Boolean(this.had[i.key]);
      this.box.classList.toggle('is-ready', have && !this.open);
      this.says.textContent = have && !got ? w.CalledFrom : got ? fill(w.ReadyAt, bay.clock(Math.max(...Object.values(this.had)))) : this.items.length && n ? fill(w.GotOf, n, this.items.length) : '';
      this.turn.hidden = !have;
      this.turn.textContent = this.open ? w.FoldUp : w.FoldOut;
      this.all.textContent = this.items.length ? w.GotAll : w.ReadAll;
      this.all.setAttribute('aria-pressed', String(got));
    }
  };
})(window.baybinder);
