// Shows a page anew when it was put in place anew, at the step that was written,
// and over it what the last build found.
(() => {
  const tag = document.currentScript;
  const shown = tag.dataset.page; // which state of the page this is
  // A browser that keeps nothing shows the page all the same.
  const keep = (name, value) => { try { sessionStorage.setItem(name, value); } catch { /* as said */ } };
  const kept = (name) => { try { return sessionStorage.getItem(name); } catch { return null; } };

  // The findings. What was closed stays closed until something else is found.
  const news = document.createElement("div");
  news.className = "watch-news";
  news.setAttribute("role", "status");
  news.ariaBusy = "true"; // until the first news
  document.body.append(news);
  const element = (name, words) => {
    const e = document.createElement(name);
    e.textContent = words;
    return e;
  };
  let text = "";
  const tell = (stopped, found, say) => {
    const findings = found ?? [];
    const head = stopped ? say.last : say.found;
    const now = stopped || findings.length ? head + "\n" + findings.map((f) => f.text).join("") : "";
    if (now === text) return;
    text = now;
    if (!text) keep("watch-closed", "");
    if (!text || text === kept("watch-closed")) return news.replaceChildren();
    const box = document.createElement("section");
    box.setAttribute("aria-label", head);
    box.lang = say.lang;
    const header = document.createElement("header");
    const close = element("button", say.close);
    close.type = "button";
    close.addEventListener("click", () => {
      keep("watch-closed", text);
      news.replaceChildren();
    });
    header.append(element("p", head), close);
    const words = element("pre", "");
    words.append(...findings.map((f) => Object.assign(element("span", f.text), { lang: f.lang })));
    words.tabIndex = 0; // scrolled with the keys too
    box.append(header, words);
    const strip = document.querySelector(".emergency summary");
    news.style.setProperty("--watch-foot", (strip ? strip.offsetHeight : 0) + "px");
    news.replaceChildren(box);
  };

  // The step that was written last comes into view once the page stands. Else
  // the browser keeps the place by itself.
  const goTo = kept("watch-step");
  if (goTo) {
    keep("watch-step", "");
    history.scrollRestoration = "auto";
    const look = () => document.getElementById(goTo)?.scrollIntoView({ block: "center", behavior: "instant" });
    addEventListener("load", () => requestAnimationFrame(look));
  }
  const anew = (step) => {
    // Who writes in the page takes the news otherwise, and keeps what is not saved.
    if (!document.dispatchEvent(new CustomEvent("watch-anew", { cancelable: true }))) return;
    if (step) {
      keep("watch-step", step);
      history.scrollRestoration = "manual";
      history.replaceState(history.state, "", "#" + step);
    }
    location.reload();
  };

  const told = new EventSource("/.watch");
  // A browser opens six connections to a server at most (common practice): a page
  // that is left, and kept to go back to, keeps none of them.
  addEventListener("pagehide", () => told.close());
  addEventListener("pageshow", (event) => { if (event.persisted) location.reload(); });
  const take = async ({ stopped, findings, words }) => {
    tell(stopped, findings, words);
    news.ariaBusy = "false";
    if (stopped) return;
    const answer = await fetch(location.pathname, { method: "HEAD", cache: "no-store" }).catch(() => null);
    if (answer && answer.headers.get("ETag") !== shown) anew(answer.headers.get("Watch-Step"));
  };
  // One after another: each asks for the state of the page, and shows it anew once.
  let turn = Promise.resolve();
  told.onmessage = (event) => { turn = turn.then(() => take(JSON.parse(event.data))); };
})();
