// Times general-purpose libraries on the labelled evaluations: tokens, sentences,
// tags and stems, one text after the other, on one core. Prints JSON lines.
// Used by compare.sh, which says how.
const fs = require('fs');
const path = require('path');

const modules = process.env.SAYWHY_NODE_MODULES;
const load = require('module').createRequire(path.join(modules, 'any.js'));
const seconds = Number(process.argv[3] || 3);
const texts = fs.readFileSync(process.argv[2], 'utf8').trim().split('\n').map((line) => JSON.parse(line).text);
const words = texts.reduce((n, text) => n + text.split(/\s+/).filter(Boolean).length, 0);

// time reads all texts again and again for some seconds and returns the words a
// second of the fastest round: what the machine does beside it only slows down.
function time(name, read) {
  for (const text of texts) read(text);
  let best = 0;
  for (const end = Date.now() + seconds * 1000; Date.now() < end;) {
    const start = process.cpuUsage();
    for (const text of texts) read(text);
    const { user, system } = process.cpuUsage(start);
    best = Math.max(best, words / ((user + system) / 1e6));
  }
  console.log(JSON.stringify({ name, wordsPerSecond: Math.round(best) }));
}

const winkNLP = load('wink-nlp');
const nlp = winkNLP(load('wink-eng-lite-web-model'), ['sbd', 'pos']);
const { its } = nlp;
time('wink-nlp', (text) => {
  const doc = nlp.readDoc(text);
  doc.sentences().out();
  doc.tokens().out(its.pos);
  doc.tokens().out(its.stem);
});

const compromise = load('compromise');
time('compromise', (text) => {
  const doc = compromise(text);
  doc.compute('root');
  doc.json();
});
