// Shows a page anew when it was put in place anew, at the step that was written,
// and over it what the last build found.
(() => {
  const box = document.createElement("pre");
  box.setAttribute("role", "status");
  box.style.cssText = "position:fixed;inset:auto 0 0 0;max-height:40vh;overflow:auto;margin:0;padding:1rem;z-index:99;background:#fff;color:#111;border-top:4px solid #111;white-space:pre-wrap;font:16px/1.4 monospace";
  const read = () => fetch(location.pathname, { cache: "no-store" }).then((answer) => answer.text());
  let shown = read(); // what the page that is shown holds
  let site;
  // anew loads the page where it is another one now. A browser that stays on
  // the page keeps the place by itself.
  const anew = async (step) => {
    const before = await shown;
    shown = read();
    if (await shown === before) return;
    if (step) history.replaceState(null, "", "#" + step);
    location.reload();
  };
  new EventSource("/.watch").onmessage = async (event) => {
    const news = JSON.parse(event.data);
    const here = location.pathname.slice(1) || "index.html";
    box.textContent = (news.stopped ? "This is the last good page.\n\n" : "") + news.findings;
    if (news.stopped || news.findings) document.body.append(box);
    else box.remove();
    const fresh = site !== undefined && news.site !== site;
    site = news.site;
    if (fresh && (!news.page || news.page === here)) await anew(news.page && news.step);
  };
})();
