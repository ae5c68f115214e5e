'use strict';

// The record of a job: as a file that a program reads, and as a page to print.
// A tick says who marked a step, and when; it proves nothing.
(function (bay) {
  const { make, fill } = bay;

  // iso writes a time as the clock at the bay shows it, with how far that is
  // from UTC: 2026-05-04T10:42:00.000+02:00.
  function iso(ms) {
    const ahead = -new Date(ms).getTimezoneOffset(), two = (n) => String(Math.floor(Math.abs(n))).padStart(2, '0');
    return new Date(ms + ahead * 60000).toISOString().slice(0, -1) + (ahead < 0 ? '-' : '+') + two(ahead / 60) + ':' + two(ahead % 60);
  }

  const states = { '': 'not yet', hand: 'in hand', done: 'done', skipped: 'does not apply', elsewhere: 'not on this unit', needless: 'not needed' };

  function stepOf(s) {
    const e = s.entry, out = { step: s.number, id: s.id, words: s.title, state: states[s.state] };
    if (e) out.at = iso(e.at);
    if (e && e.reason) out.reason = e.reason;
    if (s.state === 'done' && s.latest !== null) Object.assign(out, { latest: iso(s.latest), late: s.late });
    return out;
  }

  const readings = (h, values) => (values || []).map((v, i) => ({ where: h.fields[i] ? h.fields[i].where : '', typed: v, value: bay.number(v) })).filter((v) => v.typed !== '');

  // near is the part of the limit that is near its end, as the page had it.
  function near(data) {
    const part = {};
    if (data.nearLow) part.low = Number(data.nearLow);
    if (data.nearHigh) part.high = Number(data.nearHigh);
    if (data.again) part.again = data.again;
    return part;
  }

  function holdOf(h) {
    const now = h.now, out = { step: h.step.number, hold: h.id, kind: h.kind, met: h.met };
    if (now.at) out.at = iso(now.at);
    if (h.kind === 'wait' && h.until !== null) Object.assign(out, { from: iso(h.from), until: iso(h.until) });
    if (h.kind === 'wait' && h.latest !== null) Object.assign(out, { latest: iso(h.latest), late: h.late });
    if (h.kind === 'measure') {
      out.unit = h.data.unit || '';
      for (const end of ['low', 'high']) if (h.data[end]) out[end] = Number(h.data[end]);
      if ('near' in h.data) out.near = near(h.data);
      out.values = readings(h, now.values);
      out.failed = (now.failed || []).map((f) => ({ at: iso(f.at), values: readings(h, f.values) }));
      if ('proved' in h.data) out.proved = now.proved === true;
    }
    if (h.kind === 'look' && now.good !== undefined) out.good = now.good;
    if (h.kind === 'look' && now.ticked && now.ticked.length) out.ticked = now.ticked;
    if (now.answer) out.answer = now.answer;
    if (now.words) out.words = now.words;
    if (now.name) out.signed = { name: now.name, at: iso(now.signed) };
    return out;
  }

  bay.record = function (page) {
    const job = page.job;
    return {
      record: 1, shop: page.shop, procedure: page.procedure, title: page.title,
      revision: job.revision, fingerprint: job.fingerprint || '', unit: job.unit || { serial: '', options: [] }, worker: job.worker,
      started: iso(job.started), saved: iso(Date.now()),
      steps: page.steps.map(stepOf),
      holds: page.steps.filter((s) => s.applies).flatMap((s) => s.holds).map(holdOf),
      gaps: job.gaps.map((g) => ({ step: g.step, at: iso(g.at), unticked: g.unticked, holds: g.holds })),
      closed: page.closeOut.record(iso),
      notes: job.notes.map((n) => ({ step: n.step, at: iso(n.at), words: n.words })),
      handOvers: Object.values(job.handOvers || {}).filter((h) => h.at).map((h) => ({ step: h.step, at: iso(h.at), from: h.from, to: h.to, locks: h.locks || '' })),
      clock: job.clock.map((c) => ({ at: iso(c.at), back: c.back }))
    };
  };

  bay.saveRecord = function (page) {
    const text = JSON.stringify(bay.record(page), null, 2) + '\n';
    const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
    const day = iso(Date.now()).slice(0, 16).replace(/[:T]/g, '-');
    const a = make('a', { href: url, download: page.procedure + '-' + day + '.json' });
    document.body.append(a);
    a.click();
    a.remove();
    setTimeout(() => URL.revokeObjectURL(url), 60000);
    if (page.finished) page.end();
    page.warn(bay.words.RecordSaved, 'saved');
  };

  // jobOf makes a job of its record again. A step whose time is not in the record
  // was marked by when it was saved.
  function jobOf(page, r) {
    const job = bay.newJob(page), ids = Object.fromEntries(r.steps.map((s) => [s.step, s.id]));
    const kept = Object.fromEntries(Object.entries(states).map(([own, word]) => [word, own]));
    const holds = page.steps.flatMap((s) => s.holds), ms = (t) => (t === undefined ? undefined : Date.parse(t));
    Object.assign(job, { revision: r.revision, fingerprint: r.fingerprint || '', worker: r.worker, started: ms(r.started), saved: ms(r.saved), unit: r.unit.serial || r.unit.options.length ? r.unit : null });
    for (const s of r.steps) if (['hand', 'done', 'skipped'].includes(kept[s.state])) job.steps[s.id] = { state: kept[s.state], at: ms(s.at || r.saved), reason: s.reason };
    for (const h of r.holds) {
      const key = ids[h.step] + '/' + h.hold, own = holds.find((x) => x.key === key);
      const typed = (list) => (own && own.fields ? own.fields.map((f) => (list.find((v) => v.where === f.where) || { typed: '' }).typed) : list.map((v) => v.typed));
      const now = { good: h.good, ticked: h.ticked, answer: h.answer, words: h.words, proved: h.proved, from: ms(h.from), at: ms(h.at) };
      if (h.values && h.values.length) now.values = typed(h.values);
      if (h.failed && h.failed.length) now.failed = h.failed.map((f) => ({ at: ms(f.at), values: typed(f.values) }));
      if (h.signed) Object.assign(now, { name: h.signed.name, signed: ms(h.signed.at) });
      if (Object.keys(now).some((k) => now[k] !== undefined && now[k] !== false)) job.holds[key] = { ...now, id: h.hold, kind: h.kind, step: h.step };
    }
    job.gaps = r.gaps.map((g) => ({ step: g.step, id: ids[g.step], at: ms(g.at), unticked: g.unticked, holds: g.holds, keys: holds.filter((h) => g.holds.includes(h.title)).map((h) => h.key) }));
    job.notes = r.notes.map((n) => ({ step: n.step, id: ids[n.step], at: ms(n.at), words: n.words }));
    job.clock = r.clock.map((c) => ({ at: ms(c.at), back: c.back }));
    job.handOvers = Object.fromEntries((r.handOvers || []).map((h) => [ids[h.step], { ...h, at: ms(h.at) }]));
    job.closed = Object.fromEntries((r.closed || []).map((c) => [c.key, ms(c.at)]));
    return JSON.parse(JSON.stringify(job)); // without what is undefined
  }

  // reopen goes on with a job that another device recorded. A newer state of
  // the same job in this browser stays, and is shown.
  bay.reopen = function (page, words) {
    const w = bay.words;
    let job = null;
    try {
      const r = JSON.parse(words);
      if (r.record !== 1) return page.warn(w.RecordBad, 'record');
      if (r.procedure !== page.procedure) return page.warn(fill(w.RecordOther, String(r.title)), 'record');
      job = jobOf(page, r);
    } catch { /* what is not of the form is no job */ }
    if (!bay.whole(job)) return page.warn(w.RecordBad, 'record');
    const here = page.store.list().find((x) => x.job.started === job.started);
    if (here && here.job.saved >= job.saved) {
      page.opened(here, true);
      return page.warn(w.RecordOlder, 'record');
    }
    page.opened({ key: here ? here.key : null, job: job }, true);
    page.warn(w.RecordOpened, 'saved');
  };

  // opener is the field that a record is chosen with.
  bay.opener = function (page) {
    const field = make('input', { type: 'file', accept: '.json,application/json', id: 'open-record' });
    field.addEventListener('change', async () => {
      if (field.files.length) bay.reopen(page, await field.files[0].text());
      field.value = '';
    });
    return make('p', { class: 'open-record' }, make('label', { for: 'open-record' }, bay.words.OpenRecord), ' ', field);
  };

  // summary is the record as a sheet.
  function summary(page) {
    const w = bay.words, job = page.job;
    const row = (s) => make('tr', {}, make('th', { scope: 'row' }, s.number), make('td', {}, s.title), make('td', {}, s.says.textContent),
      make('td', {}, s.holds.map(holdWords).filter(Boolean).join(' ')));
    const heads = [w.StepHead, w.WordsHead, w.StateHead, w.HoldsHead].map((x) => make('th', { scope: 'col' }, x));
    return make('section', { class: 'record-sheet', 'aria-label': w.PrintSummary }, make('h2', {}, fill(w.SummaryOf, page.title)),
      make('p', {}, [fill(w.SummaryRevision, job.revision || '–'), job.unit ? page.unit.label(job.unit) : '', job.worker, fill(w.SummaryTimes, bay.clock(job.started), bay.clock(Date.now()))].filter(Boolean).join(' · ')),
      make('p', {}, page.count.textContent + page.more.textContent), ...page.steps.filter((s) => s.handOver && s.handOver.now.at).map((s) => make('p', {}, fill(w.StepAt, s.number) + ': ' + handWords(s.handOver.now))), make('p', {}, w.TickNoProof),
      make('table', {}, make('thead', {}, make('tr', {}, ...heads)), make('tbody', {}, ...page.steps.filter((s) => s.state !== 'elsewhere').map(row))));
  }

  const handWords = (h) => [fill(bay.words.HandedOver, h.from, h.to, bay.clock(h.at)), h.locks].filter(Boolean).join(' ');

  function holdWords(h) {
    const w = bay.words, now = h.now;
    if (h.kind === 'wait') return h.until === null ? '' : h.says.textContent;
    if (h.kind === 'measure') {
      const list = (values) => readings(h, values).map((v) => (v.where ? v.where + ' ' : '') + v.typed + ' ' + (h.data.unit || '')).join(', ');
      const judged = h.judged === 'out' ? ' (' + w.OutOfLimit + ')' : h.near ? ' (' + h.verdict.textContent + ')' : '';
      return [...(now.failed || []).map((f) => list(f.values) + ' (' + w.OutOfLimit + ')'), list(now.values) + judged].filter(Boolean).join('; ');
    }
    if (now.name) return h.says.textContent;
    return now.words || now.answer || (now.good === true ? w.LookGood : now.good === false ? w.LookBad : '');
  }

  bay.printSummary = function (page) {
    const old = document.querySelector('.record-sheet');
    if (old) old.remove();
    page.paper(true);
    document.getElementById('main').append(summary(page));
    page.paper(false);
    document.body.classList.add('is-summing');
    addEventListener('afterprint', () => document.body.classList.remove('is-summing'), { once: true });
    window.print();
  };
})(window.baybinder);
