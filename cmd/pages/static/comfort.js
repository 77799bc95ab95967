// Comfort only: every page works without this. It keeps the draft in this
// browser until it is cleared, and opens and saves text files without sending
// them anywhere.
"use strict";

(() => {
  const form = document.getElementById("writing");
  if (!form) return;

  const fields = ["title", "dish", "text", "last"].map(name => form.elements[name]).filter(Boolean);
  const text = form.elements.text;
  const key = "saywhy draft, " + form.dataset.role;
  const status = document.getElementById("status");

  // A browser may refuse to keep anything; then there is no draft, and no harm.
  const store = {
    get() { try { return JSON.parse(localStorage.getItem(key)); } catch { return null; } },
    set(value) { try { localStorage.setItem(key, JSON.stringify(value)); return true; } catch { return false; } },
    clear() { try { localStorage.removeItem(key); } catch { /* nothing was kept */ } },
  };

  const say = words => { status.textContent = words; };
  const values = () => Object.fromEntries(fields.map(f => [f.name, f.value]));
  const fill = draft => fields.forEach(f => { if (typeof draft[f.name] === "string") f.value = draft[f.name]; });
  const empty = () => fields.every(f => f.value === "");
  const fit = () => {
    text.style.height = "auto";
    text.style.height = Math.min(text.scrollHeight + 8, 1200) + "px";
  };

  let kept = false;
  const keep = () => {
    if (empty()) return;
    const done = store.set(values());
    if (done && !kept) say("Your draft is kept in this browser until you clear it.");
    kept = done;
  };

  const draft = store.get();
  if (draft && empty()) {
    fill(draft);
    kept = true;
    if (!empty()) say("Here is your draft from before. Clear it when you have done.");
  } else {
    keep();
  }
  fit();

  let wait = 0;
  form.addEventListener("input", () => {
    clearTimeout(wait);
    wait = setTimeout(keep, 400);
    fit();
  });
  window.addEventListener("pagehide", () => { if (wait) keep(); });

  // One press clears; one more, for as long as the page is open, brings back.
  const clear = document.getElementById("clear");
  let cleared = null;
  clear.setAttribute("role", "button");
  const press = event => {
    event.preventDefault();
    clearTimeout(wait);
    wait = 0;
    if (cleared) {
      fill(cleared);
      cleared = null;
      keep();
      clear.textContent = "Clear everything";
      say("Your text is back.");
    } else {
      cleared = values();
      fields.forEach(f => { f.value = ""; });
      const before = form.elements.before;
      if (before) before.value = "";
      store.clear();
      kept = false;
      clear.textContent = "Bring it back";
      say("All clear. Nothing is kept in this browser now.");
    }
    fit();
  };
  clear.addEventListener("click", press);
  clear.addEventListener("keydown", event => { if (event.key === " ") press(event); });

  // Saving: the text goes from the box into a file, and nowhere else.
  document.getElementById("save").addEventListener("click", event => {
    event.preventDefault();
    const name = form.elements.title.value.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 60);
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text.value], {type: "text/plain;charset=utf-8"}));
    link.download = (name || "my-evaluation") + ".txt";
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    say("Saved as " + link.download + ".");
  });

  // Opening: as soon as a file is chosen. What is no plain text goes the long
  // way round, where the reason is told.
  const file = form.elements.file;
  document.getElementById("open").addEventListener("click", async event => {
    const chosen = file.files[0];
    if (!chosen || chosen.size > 65536) return;
    event.preventDefault();
    let words;
    try {
      words = new TextDecoder("utf-8", {fatal: true}).decode(await chosen.arrayBuffer());
    } catch {
      words = "\0";
    }
    if (words.includes("\0") || words.startsWith("PK\x03\x04") || words.startsWith("%PDF")) {
      form.enctype = "multipart/form-data";
      form.action = event.target.formAction;
      form.submit();
      return;
    }
    text.value = words;
    if (form.elements.before) form.elements.before.value = "";
    fit();
    keep();
    text.focus();
    say("Your file is open in the box.");
  });

  // After an answer the reader's place is at its head.
  const answer = document.getElementById("answer");
  if (answer) answer.focus();
})();
