'use strict';

// Small pieces that the bay's scripts build the page from.
(function (bay) {
  // make makes an element: make('p', {class: 'x'}, 'words', child).
  bay.make = function (tag, attributes, ...children) {
    const e = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes || {})) {
      if (name === 'click') e.addEventListener('click', value);
      else if (value === true) e.setAttribute(name, '');
      else if (value !== false && value !== null && value !== undefined) e.setAttribute(name, value);
    }
    e.append(...children.map((c) => (c?.split ? whole(c.split(amounts)) : c ?? '')));
    return e;
  };

  // An amount in the name of an option stays on one line: "pack, 360 V". The page says
  // which there are. With the words around it it is one piece, wherever it stands.
  const amounts = RegExp(document.getElementById('bay')?.dataset.amounts || '($^)');
  const whole = (parts) => (parts[1] ? bay.make('span', {}, ...parts.map((s, i) => (i % 2 ? bay.make('bdi', {}, new Text(s)) : s))) : parts[0]);

  bay.button = (words, click, attributes) => bay.make('button', { type: 'button', class: 'press', ...attributes, click: click }, words);

  // fill puts values into words: fill('not before {0}', '10:42').
  bay.fill = (words, ...values) => words.replace(/\{(\d)\}/g, (_, i) => values[i]);

  // put says words in an element, where it does not say them already.
  bay.put = (e, words) => { if (e.textContent !== words) e.textContent = words; };

  // said are the words of an element, as they are kept.
  bay.said = (e) => e.textContent.trim();

  const two = (n) => String(n).padStart(2, '0');

  // clock writes a time of day; with the date where it is not today's.
  bay.clock = function (ms) {
    const d = new Date(ms), now = new Date(Date.now());
    const time = two(d.getHours()) + ':' + two(d.getMinutes());
    if (d.toDateString() === now.toDateString()) return time;
    return d.getFullYear() + '-' + two(d.getMonth() + 1) + '-' + two(d.getDate()) + ' ' + time;
  };

  // day writes a day as people say it: 22 November.
  bay.day = function (ms) {
    const d = new Date(ms), language = document.documentElement.lang;
    /** @type {Intl.DateTimeFormatOptions} */
    const year = d.getFullYear() === new Date(Date.now()).getFullYear() ? {} : { year: 'numeric' };
    return d.toLocaleDateString(language === 'en' ? 'en-GB' : language, { day: 'numeric', month: 'long', ...year });
  };

  // left writes how long is left: 1:02:03, 9:59.
  bay.left = function (ms) {
    const s = Math.max(0, Math.ceil(ms / 1000)), h = Math.floor(s / 3600);
    return (h ? h + ':' + two(Math.floor(s / 60) % 60) : String(Math.floor(s / 60))) + ':' + two(s % 60);
  };

  // ask opens a dialog and resolves to what was chosen: false, or true, or the
  // words that were typed where input names what to type, or the value of one
  // of its choices. Where nothing is typed the answer that changes nothing has the
  // focus.
  bay.ask = function (o) {
    return new Promise((done) => {
      const field = o.input ? bay.make('textarea', { rows: 3 }) : null;
      const close = (value) => { box.close(); box.remove(); done(value); };
      const yes = () => {
        if (field && !field.value.trim()) return field.focus();
        close(field ? field.value.trim() : true);
      };
      const no = bay.button(o.no || bay.words.Cancel, () => close(false), { class: 'press plain' });
      const box = bay.make('dialog', { class: 'question', 'aria-label': o.title },
        bay.make('p', { class: 'title' }, o.title),
        o.text ? bay.make('p', {}, o.text) : null,
        field ? bay.make('label', {}, o.input, field) : null,
        bay.make('p', { class: 'presses' }, ...(o.choices || []).map((c) => bay.button(c.words, () => close(c.value))), o.yes ? bay.button(o.yes, yes) : null, no));
      box.addEventListener('cancel', (e) => { e.preventDefault(); close(false); });
      document.body.append(box);
      box.showModal();
      if (!field) no.focus();
    });
  };

  // A link to what to do in an emergency opens it.
  const aid = () => { if (location.hash === '#emergency') /** @type {HTMLDetailsElement} */ (document.querySelector('.emergency details')).open = true; };
  addEventListener('hashchange', aid);
  addEventListener('DOMContentLoaded', aid);

  // A machine's page that was opened for a unit hands it on to its procedures.
  addEventListener('DOMContentLoaded', () => {
    const unit = new URLSearchParams(location.search).get('unit'), main = document.getElementById('main');
    if (!/^\d+$/.test(unit) || document.getElementById('bay') || !/\/machines\//.test(location.pathname)) return;
    main.prepend(bay.make('p', { class: 'of-unit' }, bay.fill(bay.words.UnitShort, unit)));
    for (const a of main.querySelectorAll('a[href*="procedures/"]')) {
      const [file, place] = a.getAttribute('href').split('#');
      a.setAttribute('href', file + '?unit=' + unit + (place ? '#' + place : ''));
    }
  });

  // On a machine's page the unit can be chosen first.
  addEventListener('DOMContentLoaded', () => {
    const box = document.getElementById('unit-box'), w = bay.words;
    if (!box) return;
    const field = bay.make('input', { type: 'text', inputmode: 'numeric', autocomplete: 'off', id: 'unit-serial', maxlength: 12 });
    const take = () => { if (/^\d+$/.test(field.value.trim())) location.search = '?unit=' + field.value.trim(); else field.focus(); };
    field.addEventListener('keydown', (e) => { if (e.key === 'Enter') take(); });
    box.append(bay.make('p', { class: 'presses' }, bay.make('label', { for: 'unit-serial' }, w.WhichUnit + ' ' + w.SerialNumber), field, bay.button(w.UseSerial, take)));
    box.hidden = false;
  });

  // The beep needs a touch or a key first: browsers keep pages quiet until then.
  let audio = null;
  const wake = () => {
    try {
      audio = audio || new AudioContext();
      if (audio.state === 'suspended') audio.resume();
    } catch { /* no sound here: the page shows it all the same */ }
  };
  addEventListener('pointerdown', wake, { once: true });
  addEventListener('keydown', wake, { once: true });

  bay.beep = function () {
    if (!audio) return;
    for (const at of [0, 0.4, 0.8]) {
      const tone = audio.createOscillator(), loud = audio.createGain();
      tone.frequency.value = 880;
      loud.gain.value = 0.2;
      tone.connect(loud).connect(audio.destination);
      tone.start(audio.currentTime + at);
      tone.stop(audio.currentTime + at + 0.2);
    }
  };
})(window.baybinder);
