import type { PrintedCell, PrintedProblem } from "../../../src/voicing/problem.ts";

/** Writes one cell of a printed problem as a mixed-integer programme in the LP text format. */
export function asProgramme(problem: PrintedProblem, cell: PrintedCell): string {
  const end = cell.ends[0];
  if (!end) throw new Error("a cell without ends");
  const { top, bottom } = end;
  const between = Array.from({ length: bottom - top + 1 }, (_, i) => top + i);
  const sections = [...new Set(problem.players.map((player) => player.section))];
  const objective: string[] = [];
  const rows: string[] = [];
  const binaries: string[] = [];
  const add = (cost: number, name: string): void => {
    if (cost !== 0) objective.push(`${cost < 0 ? "-" : "+"} ${Math.abs(cost)} ${name}`);
  };
  const sum = (names: readonly string[]): string => names.map((name) => `+ ${name}`).join(" ");

  for (const c of between) {
    binaries.push(`x${c}`);
    if (c !== bottom) add(problem.innerCost[c]!, `x${c}`);
  }
  rows.push(`${sum(between.map((c) => `x${c}`))} = ${cell.notes}`);
  for (const c of new Set([top, bottom, problem.lead])) rows.push(`x${c} = 1`);
  for (const [a, b] of problem.forbiddenPairs)
    if (between.includes(a) && between.includes(b)) rows.push(`x${a} + x${b} <= 1`);
  for (const group of cell.oneOf)
    rows.push(`${sum(group.filter((c) => between.includes(c)).map((c) => `x${c}`))} >= 1`);

  // Neighbours: a path from the top to the bottom through exactly the chosen notes.
  const lowest = cell.notes === 3 ? problem.lowestNeighboursOfThree : problem.lowestNeighbours;
  const steps = [
    ...problem.neighbours.filter(
      ({ upper, lower }) => upper >= top && lower < bottom && upper < bottom,
    ),
    ...lowest.filter(({ upper, lower }) => upper >= top && lower === bottom),
  ].filter(({ upper }) => cell.notes > 2 || upper === top);
  for (const { upper, lower, cost } of steps) {
    binaries.push(`y${upper}_${lower}`);
    add(cost, `y${upper}_${lower}`);
  }
  for (const c of between) {
    const out = steps.filter(({ upper }) => upper === c).map((s) => `y${s.upper}_${s.lower}`);
    const into = steps.filter(({ lower }) => lower === c).map((s) => `y${s.upper}_${s.lower}`);
    if (c !== bottom) rows.push(out.length ? `${sum(out)} - x${c} = 0` : `x${c} = 0`);
    if (c !== top) rows.push(into.length ? `${sum(into)} - x${c} = 0` : `x${c} = 0`);
  }
  problem.copies.forEach(({ members, each }, g) => {
    const here = members.filter((c) => between.includes(c));
    if (here.length < 2) return;
    add(each, `e${g}`);
    rows.push(`${sum(here.map((c) => `x${c}`))} - e${g} <= 1`);
  });

  const everyone: string[] = [];
  problem.players.forEach((player, p) => {
    const own = between.filter((c) => player.cost[c] !== null).map((c) => `a${p}_${c}`);
    everyone.push(...own);
    for (const c of between) {
      if (player.cost[c] === null) continue;
      binaries.push(`a${p}_${c}`);
      add(player.cost[c]!, `a${p}_${c}`);
      rows.push(`a${p}_${c} - x${c} <= 0`);
    }
    if (own.length) rows.push(`${sum(own)} <= 1`);
    if (player.heldTo !== null) rows.push(`a${p}_${player.heldTo} = 1`);
  });
  rows.push(`${sum(everyone)} = ${cell.players}`);

  for (const c of between) {
    const on = (p: number): boolean => problem.players[p]!.cost[c] !== null;
    const here = problem.players.map((_, p) => p).filter(on);
    if (here.length === 0) {
      rows.push(`x${c} = 0`);
      continue;
    }
    const units = here.map((_, m) => `z${c}_${m}`);
    units.forEach((unit, m) => {
      binaries.push(unit);
      add(problem.sharedNote[c]![m]!, unit);
      rows.push(m === 0 ? `${unit} - x${c} = 0` : `${unit} - ${units[m - 1]} <= 0`);
    });
    rows.push(`${sum(here.map((p) => `a${p}_${c}`))} ${units.map((u) => `- ${u}`).join(" ")} = 0`);
    for (const [q, section] of sections.entries()) {
      const own = here.filter((p) => problem.players[p]!.section === section);
      if (own.length === 0) continue;
      const shared = own.map((_, m) => `w${q}_${c}_${m}`);
      shared.forEach((unit, m) => {
        binaries.push(unit);
        add(problem.sharedInSection[c]![m]!, unit);
        if (m > 0) rows.push(`${unit} - ${shared[m - 1]} <= 0`);
      });
      rows.push(
        `${sum(own.map((p) => `a${p}_${c}`))} ${shared.map((u) => `- ${u}`).join(" ")} = 0`,
      );
    }
  }
  addLayer(problem, cell, between, steps, sections, rows, binaries);
  add(end.bottomCost, "one");
  rows.push("one = 1");
  return [
    "Minimize",
    ` obj: ${objective.join(" ")}`,
    "Subject To",
    ...rows.map((row, i) => ` r${i}: ${row}`),
    "Binary",
    ` ${binaries.join(" ")}`,
    "End",
  ].join("\n");
}

function addLayer(
  problem: PrintedProblem,
  cell: PrintedCell,
  between: readonly number[],
  steps: readonly { readonly upper: number; readonly lower: number }[],
  sections: readonly string[],
  rows: string[],
  binaries: string[],
): void {
  for (const [q, section] of sections.entries()) {
    const members = problem.players
      .map((player, p) => ({ player, p }))
      .filter(({ player }) => player.section === section);
    const all: string[] = [];
    const sounds: string[] = [];
    for (const c of between) {
      // s: the section sounds this note. w…_0 counts its first player there.
      const own = members.filter(({ player }) => player.cost[c] !== null);
      if (own.length === 0) continue;
      all.push(...own.map(({ p }) => `a${p}_${c}`));
      sounds.push(`w${q}_${c}_0`);
    }
    if (problem.mustSound.includes(section)) rows.push(`${plus(all)} >= 1`);
    const isHere = (c: number): boolean => sounds.includes(`w${q}_${c}_0`);
    if (problem.layer === "crossed")
      for (const { upper, lower } of steps)
        if (isHere(upper) && isHere(lower))
          rows.push(`y${upper}_${lower} + w${q}_${upper}_0 + w${q}_${lower}_0 <= 2`);
    if (problem.layer !== "by-section") continue;
    for (const high of between)
      for (const low of between)
        for (const middle of between) {
          if (!(high < middle && middle < low) || !isHere(high) || !isHere(low)) continue;
          const inside = isHere(middle) ? ` - w${q}_${middle}_0` : "";
          rows.push(`w${q}_${high}_0 + w${q}_${low}_0 + x${middle}${inside} <= 2`);
        }
    if (members.length < 3) continue;
    // big = 1 as soon as three of the section sound; then it takes `least` notes.
    const least = cell.notes <= 4 ? 2 : 3;
    binaries.push(`big${q}`);
    rows.push(`${plus(all)} - ${members.length} big${q} <= 2`);
    rows.push(`${plus(sounds)} - ${least} big${q} >= 0`);
  }
}

function plus(names: readonly string[]): string {
  return names.map((name) => `+ ${name}`).join(" ");
}
