'use strict';

// Cautions in a window as low as at 400 % zoom, where a long one would fill it:
// the signal word, the hazards' names, how to avoid them and what to wear stand
// first and whole; what they are and what follows is folded below. Elsewhere, and
// on paper, all of it stands open, in the order of the box.
(function (bay) {
  const { make } = bay, low = matchMedia('screen and (max-height: 24rem)');

  function fold(box) {
    const told = [...box.querySelectorAll('.message > .say')].filter((say) => say.querySelector(':scope > .avoid'));
    const several = told.length > 1, harm = make('details', { class: 'harm' }, make('summary', {}, bay.words.WhatCanHappen));
    for (const say of told) {
      const rest = say.querySelectorAll(':scope > p:not(.nature)'), home = say.querySelector(':scope > .avoid');
      if (!rest.length) continue;
      harm.append(make('div', {}, several ? make('b', {}, say.querySelector('.nature').textContent) : null, ...rest));
      harm.lastElementChild.home = home;
    }
    if (harm.children.length > 1) box.append(harm);
  }

  function unfold(harm) {
    for (const part of harm.querySelectorAll('div')) part.home.before(...part.querySelectorAll('p'));
    harm.remove();
  }

  function turn() {
    if (low.matches) document.querySelectorAll('.step > .safety:not(:has(.harm))').forEach(fold);
    else document.querySelectorAll('.harm').forEach(unfold);
  }

  low.addEventListener('change', turn);
  turn();
})(window.baybinder);
