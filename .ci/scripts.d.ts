// What the theme's scripts share, for the type checker: they are plain scripts
// that a page loads one after another, each putting its pieces into one object.
interface Baybinder {
  words: { [word: string]: string };
  [piece: string]: any;
}

interface Window {
  baybinder: Baybinder;
}

// Whatever the scripts look for on a page is HTML: none of them touches the
// parts of a picture.
interface ParentNode {
  querySelector(selectors: string): HTMLElement | null;
  querySelectorAll(selectors: string): NodeListOf<HTMLElement>;
}

interface Element {
  closest(selectors: string): HTMLElement | null;
}
