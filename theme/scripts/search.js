'use strict';

// The search: by word, other name, symptom, tool, hazard, machine, serial
// number. The index lies in shards (search/…), which are loaded with script
// tags, so that it works from a folder too. Stems are made when the site is
// built; here a word's end is taken off, letter by letter, until it is one.
(function (bay) {
  const { words } = bay;
  const loaded = new Map(), known = new Map(); // files by name; documents by number: name, address, note

  // shard loads search/NAME.js once; it calls bay.shard(NAME, data).
  bay.shard = (name, data) => {
    if (data.names) for (const [doc, named] of Object.entries(data.names)) known.set(Number(doc), named);
    loaded.get(name).done(data);
  };
  function shard(up, name) {
    if (!loaded.has(name)) {
      const entry = {};
      entry.data = new Promise((done, failed) => { entry.done = done; entry.failed = failed; });
      loaded.set(name, entry);
      const script = document.createElement('script');
      script.src = up + 'search/' + name + '.js';
      script.onerror = () => { loaded.delete(name); entry.failed(new Error(name)); };
      document.head.append(script);
    }
    return loaded.get(name).data;
  }

  // plain is how the index writes letters: small, without accents.
  bay.plain = (text) => text.normalize('NFD').replace(/[\u0300-\u036f]/g, '').toLowerCase();
  // A code and an amount are one word: T-06 is t06, 9 N·m is 9nm.
  const joined = (text) => text.replace(/(?<![\p{L}\p{N}])(\p{L}{1,2})-(?=\d+(?![\p{L}\p{N}]))/gu, '$1').replace(/(\d) ?n[·.]?m(?![\p{L}\p{N}])/gu, '$1nm').replace(/(\d) (?=(mm|bar|v|kg)(?![\p{L}\p{N}]))/gu, '$1');
  const split = (text) => joined(bay.plain(text)).split(/[^\p{L}\p{N}]+/u).filter(Boolean).slice(0, 8);

  // shardOf is the longest name in the list of shards that a word begins with.
  function shardOf(main, word) {
    for (let n = Math.min(word.length, 4); n > 0; n--) if (main.shards.includes(word.slice(0, n))) return word.slice(0, n);
    return null;
  }

  // slip says that two words differ by one letter: one other, more, less, or two turned round.
  bay.slip = function (a, b) {
    if (Math.abs(a.length - b.length) > 1) return false;
    let i = 0;
    while (i < a.length && a[i] === b[i]) i++;
    if (a.slice(i + 1) === b.slice(i + 1) || a.slice(i) === b.slice(i + 1) || a.slice(i + 1) === b.slice(i)) return true;
    return a[i] === b[i + 1] && a[i + 1] === b[i] && a.slice(i + 2) === b.slice(i + 2);
  };

  // has: every object answers to "constructor" by itself.
  const has = (o, word) => Object.hasOwn(o, word);

  // entries are what a word finds: [postings, share] of the stem it is, of the
  // stems it begins, or of a word that is one slip away.
  async function entries(up, main, word, last) {
    const name = shardOf(main, word), out = [];
    if (name !== null) {
      const { forms, posts, begins } = await shard(up, 'w-' + name);
      const stems = new Set(has(forms, word) ? forms[word].split(' ') : []);
      for (const s of stems) if (has(posts, s)) out.push([posts[s], 1]);
      if (last && begins && name === word) out.push([begins, 0.6]);
      if (last && !begins) for (const f in forms) if (f.startsWith(word)) for (const s of forms[f].split(' ')) if (!stems.has(s)) { stems.add(s); if (has(posts, s)) out.push([posts[s], 0.6]); }
    }
    if (out.length || word.length < 4) return { list: out, meant: '' };
    // a slip is tried before the word's end is cut off: a cut word is often another
    const near = (await shard(up, 'words')).split(' ').filter((w) => bay.slip(w, word)).slice(0, 4);
    const shards = await Promise.all(near.map((w) => shard(up, 'w-' + shardOf(main, w))));
    shards.forEach(({ forms, posts }, i) => { for (const s of forms[near[i]].split(' ')) if (has(posts, s)) out.push([posts[s], 0.5 * 0.8 ** i]); }); // the commonest first
    if (out.length || name === null) return { list: out, meant: out.length ? near.join(', ') : '' };
    const { posts } = await shard(up, 'w-' + name);
    for (let n = word.length; !out.length && n >= Math.max(3, word.length - 4); n--) if (has(posts, word.slice(0, n))) out.push([posts[word.slice(0, n)], 1]);
    return { list: out, meant: '' };
  }

  // scored adds up what each document is worth to all the words.
  function scored(main, found) {
    const scores = new Map();
    for (const { list } of found) {
      const best = new Map();
      for (const [posts, share] of list) {
        const rare = Math.log(1 + main.docs / (posts.length / 2));
        let doc = 0;
        for (let k = 0; k < posts.length; k += 2) {
          doc += posts[k];
          best.set(doc, Math.max(best.get(doc) || 0, posts[k + 1] * share * rare));
        }
      }
      for (const [doc, score] of best) scores.set(doc, (scores.get(doc) || 0) + score + 2);
    }
    return scores;
  }

  // best picks the n best of very many without sorting them all; of equals
  // the first in the manual.
  function best(scores, n) {
    const before = (a, b) => a[1] > b[1] || (a[1] === b[1] && a[0] < b[0]), top = [];
    for (const entry of scores) {
      if (top.length === n && before(top[n - 1], entry)) continue;
      let at = top.length;
      while (at > 0 && before(entry, top[at - 1])) at--;
      top.splice(at, 0, entry);
      if (top.length > n) top.pop();
    }
    return top.map(([doc]) => doc);
  }

  // find resolves to the best hits for a text. All that it reads it reads side
  // by side: first the words, then the names.
  bay.find = async function (up, text, most) {
    const main = await shard(up, 'main'), asked = split(text);
    const found = await Promise.all(asked.map((word, i) => entries(up, main, word, i === asked.length - 1)));
    const hits = [], scores = scored(main, found);
    // a page in the reader's own language stands before the same page in another
    const spoken = (doc) => main.languages.findLast(([from]) => doc >= from)[1], mine = document.documentElement.lang;
    for (const [doc, score] of scores) if (spoken(doc) === mine) scores.set(doc, score + 1);
    for (const n of asked) for (const [from, to, name, address] of main.serials) if (/^\d+$/.test(n) && Number(n) >= from && Number(n) <= to) hits.push({ name: name, address: address + '?unit=' + n, note: bay.fill(words.UnitShort, n) });
    const named = await Promise.all(best(scores, most).map(async (doc) => {
      const [name, address, note] = known.get(doc) || (await shard(up, 'd-' + Math.floor(doc / main.chunk)))[doc % main.chunk];
      return { name: name, address: address, note: note, lang: spoken(doc) === mine ? null : spoken(doc) };
    }));
    return { hits: [...hits, ...named].slice(0, most), of: hits.length + scores.size, meant: found.map((f) => f.meant).filter(Boolean) };
  };

  const first = 6, pause = 300; // hits shown while somebody types; ms without a key until the rest

  // field builds a search box in a place; its results stand below it.
  function field(place, up, most, start) {
    const input = bay.make('input', { type: 'search', autocomplete: 'off', maxlength: 100, 'aria-label': words.SearchFor, placeholder: words.SearchFor });
    const list = bay.make('ul', { class: 'hits', hidden: true }), says = bay.make('p', { class: 'live', role: 'status' });
    let turn = 0, rest = 0;
    const run = async (n) => {
      const mine = ++turn, text = input.value.trim();
      clearTimeout(rest);
      if (n < most) rest = setTimeout(run, pause, most);
      if (!text) { list.hidden = true; says.textContent = ''; return; }
      try {
        const { hits, of, meant } = await bay.find(up, text, n);
        if (mine !== turn) return;
        list.replaceChildren(...hits.map((h) => bay.make('li', {}, bay.make('a', { href: up + h.address, lang: h.lang, hreflang: h.lang }, h.name, h.note ? bay.make('small', {}, h.note) : null))));
        list.hidden = !hits.length;
        says.textContent = hits.length ? bay.fill(of > hits.length ? words.FirstOf : words.HitsFor, hits.length, of) + (meant.length ? '. ' + bay.fill(words.MeantWord, meant.join(', ')) : '') : bay.fill(words.NoHits, text);
      } catch {
        says.textContent = words.ShardMissing;
      }
    };
    input.addEventListener('input', () => run(first));
    const ready = () => shard(up, 'main').catch(() => {}); // before the first key
    for (const event of ['pointerenter', 'focus']) input.addEventListener(event, ready, { once: true });
    place.addEventListener('keydown', (e) => {
      if (e.key === 'Escape') { list.hidden = true; input.focus(); }
      if (e.key === 'Enter' && e.target === input) location.href = up + 'search.html?q=' + encodeURIComponent(input.value.trim());
    });
    place.replaceChildren(bay.make('div', { class: 'finding' }, input, says, list));
    if (start) { input.value = start; run(first); }
  }

  addEventListener('DOMContentLoaded', () => {
    for (const e of document.querySelectorAll('.find[data-up]')) field(e, e.dataset.up, first, '');
    const page = document.getElementById('search');
    if (page) field(page, '', 30, new URLSearchParams(location.search).get('q') || '');
  });
})(window.baybinder);
