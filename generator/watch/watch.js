// Refreshes the page when a new site is published, and shows over it what the
// last build found.
(() => {
  let site;
  const box = document.createElement("pre");
  box.setAttribute("role", "status");
  box.style.cssText = "position:fixed;inset:auto 0 0 0;max-height:40vh;overflow:auto;margin:0;padding:1rem;z-index:99;background:#fff;color:#111;border-top:4px solid #111;white-space:pre-wrap;font:16px/1.4 monospace";
  new EventSource("/.watch").onmessage = (event) => {
    const news = JSON.parse(event.data);
    if (site !== undefined && news.site !== site) {
      location.reload(); // the browser keeps the place on the page
      return;
    }
    site = news.site;
    box.textContent = (news.stopped ? "This is the last good page.\n\n" : "") + news.findings;
    if (news.stopped || news.findings) document.body.append(box);
    else box.remove();
  };
})();
