// Measures what a person needs of a page and lists what falls short: text with
// a contrast under 7:1, things to press under 44 px, anything that sticks out
// sideways.
(() => {
  const wrong = [];
  const say = (what, e) => wrong.push(what + ": " + e.outerHTML.slice(0, 160));

  // Contrast by WCAG 2.2: relative luminance of sRGB colours.
  const channel = v => (v /= 255, v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
  const luminance = ([r, g, b]) => 0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b);
  const colour = css => {
    const m = css.match(/[\d.]+/g).map(Number);
    return m.length < 4 ? [...m, 1] : m;
  };
  const over = (top, below) => top.slice(0, 3).map((v, i) => v * top[3] + below[i] * (1 - top[3]));
  const ground = e => {
    const layers = [];
    for (let x = e; x; x = x.parentElement) {
      const c = colour(getComputedStyle(x).backgroundColor);
      if (c[3] > 0) layers.unshift(c);
      if (c[3] === 1) break;
    }
    return layers.reduce((below, c) => over(c, below), [255, 255, 255]);
  };
  const contrast = (a, b) => {
    const [hi, lo] = [luminance(a), luminance(b)].sort((x, y) => y - x);
    return (hi + 0.05) / (lo + 0.05);
  };
  const seen = e => e.checkVisibility({checkVisibilityCSS: true, contentVisibilityAuto: true}) && getComputedStyle(e).clipPath === "none" && !e.closest(".hidden");

  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const done = new Set();
  let texts = 0;
  while (walker.nextNode()) {
    const e = walker.currentNode.parentElement;
    if (!walker.currentNode.data.trim() || done.has(e) || !seen(e) || ["SCRIPT", "STYLE"].includes(e.tagName)) continue;
    done.add(e);
    texts++;
    const below = ground(e);
    const ratio = contrast(over(colour(getComputedStyle(e).color), below), below);
    if (ratio < 7) say("contrast " + ratio.toFixed(2), e);
    if (parseFloat(getComputedStyle(e).fontSize) < 18 && e.closest("svg") === null) say("letters of " + getComputedStyle(e).fontSize, e);
  }
  for (const e of document.querySelectorAll("input, textarea, select")) {
    if (e.type === "hidden" || !seen(e)) continue;
    const below = ground(e);
    const ratio = contrast(over(colour(getComputedStyle(e).color), below), below);
    if (ratio < 7) say("contrast in a field " + ratio.toFixed(2), e);
  }
  if (texts < 5) wrong.push("only " + texts + " texts were found to measure");

  for (const e of document.querySelectorAll("a[href], button, input, select, textarea, summary")) {
    if (e.type === "hidden" || !seen(e) || e.classList.contains("skip")) continue;
    const r = e.getBoundingClientRect();
    if (r.height < 43.5 || r.width < 43.5) say("to press: " + r.width.toFixed(0) + " by " + r.height.toFixed(0), e);
  }

  const wide = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth > wide) {
    wrong.push("the page is " + document.documentElement.scrollWidth + " wide, the window " + wide);
    for (const e of document.body.querySelectorAll("*")) {
      if (e.getBoundingClientRect().right > wide + 1 && seen(e)) say("sticks out", e);
    }
  }
  return wrong;
})()
