'use strict';

// The language switch stays on the step that is read, and on the unit that was
// chosen: it follows the address to the same step of the other page. Without
// this script it leads to the top of that page.
(function () {
  // place is the last step or phase that begins above the middle of the
  // window; '' where the reader has not come to the steps yet.
  function place() {
    let last = '';
    for (const e of document.querySelectorAll('.phase > h2[id], li.step[id]')) {
      if (!e.getClientRects().length) continue;
      if (e.getBoundingClientRect().top > innerHeight / 2) break;
      last = e.id;
    }
    return last;
  }

  for (const a of document.querySelectorAll('.languages a')) {
    const bare = a.getAttribute('href');
    const follow = () => {
      const id = place();
      a.setAttribute('href', bare + location.search + (id ? '#' + id : ''));
    };
    for (const event of ['click', 'auxclick', 'focus', 'pointerdown']) a.addEventListener(event, follow);
  }
})();
