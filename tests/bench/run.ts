/**
 * `npm run bench`: every measure of every subject as one table. `npm run bench -- heat` runs one subject.
 * Nothing here passes or fails; what must hold is in `npm test`.
 */
import { readdir } from 'node:fs/promises';
import { cpus, loadavg } from 'node:os';
import { printTable } from '../calc/heat/print.ts';
import { type Entry, median, type Subject } from './registry.ts';

const DIGITS: Readonly<Record<Entry['unit'], number>> = {
  ms: 1,
  µs: 1,
  MB: 0,
  B: 0,
  '×': 1,
  '°C': 3,
  min: 2,
  count: 0,
};

/** One more than asked, the first thrown away, unless once is all that is asked. */
async function valuesOf(measure: Entry['measure'], runs: number): Promise<number[]> {
  const values: number[] = [];
  for (let run = runs === 1 ? 1 : 0; run <= runs; run++) {
    const value = await measure();
    if (run > 0) values.push(value);
  }
  return values;
}

async function measured({ name, unit, target, runs = 7, measure, against, note }: Entry): Promise<string[]> {
  const values = await valuesOf(measure, runs);
  const other = against ? median(await valuesOf(against.measure, runs)) : null;
  const shown = (value: number) => value.toFixed(DIGITS[unit]);
  return [
    name,
    unit,
    shown(median(values)),
    values.length > 1 ? `${shown(Math.min(...values))}–${shown(Math.max(...values))}` : '',
    target === undefined ? '' : `≤ ${target}`,
    against && other !== null ? `${(median(values) / other).toFixed(2)} × ${against.name}` : '',
    note?.() ?? '',
  ];
}

const asked = process.argv.slice(2);
const files = (await readdir(import.meta.dirname)).filter((file) => file.endsWith('.bench.ts')).sort();
const rows: string[][] = [];
for (const file of files) {
  const { default: subject }: { default: Subject } = await import(`./${file}`);
  if (asked.length > 0 && !asked.includes(subject.subject)) continue;
  try {
    for (const entry of await subject.entries()) rows.push([subject.subject, ...(await measured(entry))]);
  } catch (error) {
    // The others are still worth their table.
    rows.push([subject.subject, `not measured: ${String(error).split('\n')[0]}`, '', '', '', '', '', '']);
  } finally {
    await subject.close?.();
  }
}
if (rows.length === 0) throw new Error(`No subject is called ${asked.join(', ')}.`);
const [load = 0] = loadavg();
printTable(
  `Measured on ${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown'}, Node ${process.version}, load ${load.toFixed(1)}`,
  ['subject', 'measure', 'unit', 'median', 'spread', 'target', 'ratio', 'note'],
  rows,
);
