#!/usr/bin/env bash
# Sets the speed of the whole reading beside general-purpose libraries, in one
# run on the same texts: prose by itself, and wink-nlp and compromise from npm
# (tokens, sentences, tags and stems: less than saywhy does). All are warmed up
# on the texts first, have their model loaded beforehand, and take their turns
# three times, so that a busy moment of the machine falls on none alone. Prints
# words a second of processor time in each one's fastest round, and the ratio to
# it.
# Needs Go, Node and, once, npm.
set -euo pipefail
cd "$(dirname "$0")/../.."

if [ -z "${SAYWHY_NODE_MODULES:-}" ]; then
  tools=$(mktemp -d)
  trap 'rm -rf "$tools"' EXIT
  (cd "$tools" && npm init -y >/dev/null && npm install --silent --no-audit --no-fund wink-nlp@2 wink-eng-lite-web-model@1 compromise@14 >/dev/null)
  export SAYWHY_NODE_MODULES="$tools/node_modules"
fi

for _ in 1 2 3; do
  GOMAXPROCS=1 go test ./analyze -run '^$' -bench Beside -benchtime 3s |
    awk '/^BenchmarkBeside/ { sub(/^BenchmarkBeside\//, "", $1); for (i = 2; i < NF; i++) if ($(i + 1) == "best-words/s") print $1, $i }'
  node testdata/bench/compare.js testdata/labelled/settled.jsonl 5 |
    sed -E 's/.*"name":"([^"]*)","wordsPerSecond":([0-9]+).*/\1 \2/'
done | awk '!($1 in best) { name[++n] = $1 }
  $2 > best[$1] { best[$1] = $2 }
  END { for (i = 1; i <= n; i++) printf "%-14s %9d words/s   saywhy is %.2f times as fast\n", name[i], best[name[i]], best["saywhy"] / best[name[i]] }'
