"""Counts the figures of a group report again, from its CSV, and compares them
with those of its JSON. Python's own csv and json modules; nothing of saywhy.

    python3 recount.py group.csv group.json
"""

import csv
import json
import sys
from collections import Counter, defaultdict

STEPS = ("said", "detail", "reason")


def rows(path):
    with open(path, newline="", encoding="utf-8") as f:
        return list(csv.DictReader(f))


def counts(some):
    """Areas of some rows: texts asked for each, and how far they got."""
    out = defaultdict(Counter)
    for r in some:
        if r["asked"] == "1":
            out[r["area"]].update({"texts": 1} | {s: int(r[s]) for s in STEPS})
    return {a: {k: c[k] for k in ("texts",) + STEPS} for a, c in out.items()}


def stops_at(r):
    return next((s for s in STEPS if r[s] == "0"), None)


def teach(some):
    """The rule as the report states it, worked from single rows."""
    found = []
    areas = list(dict.fromkeys(r["area"] for r in some))
    for place, area in enumerate(areas):
        asked = [r for r in some if r["area"] == area and r["asked"] == "1"]
        stops = Counter(stops_at(r) for r in asked)
        step = max(STEPS, key=lambda s: (stops[s], -STEPS.index(s)))
        if stops[step] >= 2 and 3 * stops[step] >= len(asked):
            missing = sum(r[step] == "0" for r in asked)
            found.append((-stops[step], place, {"area": area, "step": step, "stopped": stops[step], "missing": missing, "texts": len(asked)}))
    return [point for _, _, point in sorted(found, key=lambda f: f[:2])[:3]]


def check(what, want, got):
    if want != got:
        sys.exit(f"{what}: the CSV gives {want}, the report {got}")


def reported(areas):
    return {a["area"]: {k: a[k] for k in ("texts",) + STEPS} for a in areas if a["texts"]}


def main(csv_path, json_path):
    table = rows(csv_path)
    with open(json_path, encoding="utf-8") as f:
        report = json.load(f)
    checked = 0
    for role, part in (("learner", report["learners"]), ("adult", report["adults"])):
        own = [r for r in table if r["role"] == role]
        check(f"{role} texts", len({r["file"] for r in own}), part["texts"])
        check(f"{role} names", sorted({r["learner"] for r in own}), sorted(p["learner"] for p in part["people"]))
        for person in part["people"]:
            mine = [r for r in own if r["learner"] == person["learner"]]
            check(person["learner"], counts(mine), reported(person["areas"]))
            for point in person["path"]:
                at = [r for r in mine if r["session"] == point["session"] and r["asked"] == "1"]
                want = [len(at)] + [sum(int(r[s]) for r in at) for s in STEPS]
                check(f"{person['learner']}, session {point['session']}", want, [point[k] for k in ("asked",) + STEPS])
                checked += 1
        for session in part["sessions"]:
            at = [r for r in own if r["session"] == session["session"]]
            check(f"session {session['session']}", counts(at), reported(session["areas"]))
            check(f"teach in session {session['session']}", teach(at), session["teach"])
            check("without", sorted({r["learner"] for r in own} - {r["learner"] for r in at}), sorted(session["without"]))
    print(f"{checked} texts counted again, all figures agree")


if __name__ == "__main__":
    main(*sys.argv[1:])
