/**
 * `npm run bench`: every measure of every subject as one table. `npm run bench -- heat` runs one subject.
 * Nothing here passes or fails; what must hold is in `npm test`.
 */
import { readdir } from 'node:fs/promises';
import { cpus, loadavg } from 'node:os';
import { printTable } from '../calc/heat/print.ts';
import { type Entry, median, type Subject } from './registry.ts';

const DIGITS: Readonly<Record<Entry['unit'], number>> = { ms: 1, B: 0, '×': 1, '°C': 3, min: 2, count: 0 };

async function measured({ name, unit, target, runs = 7, measure, note }: Entry): Promise<string[]> {
  const values: number[] = [];
  for (let run = 0; run <= runs; run++) {
    const value = await measure();
    if (run > 0 || runs === 1) values.push(value);
    if (runs === 1) break;
  }
  const shown = (value: number) => value.toFixed(DIGITS[unit]);
  return [
    name,
    unit,
    shown(median(values)),
    values.length > 1 ? `${shown(Math.min(...values))}–${shown(Math.max(...values))}` : '',
    target === undefined ? '' : `≤ ${target}`,
    note?.() ?? '',
  ];
}

const asked = process.argv.slice(2);
const files = (await readdir(import.meta.dirname)).filter((file) => file.endsWith('.bench.ts')).sort();
const rows: string[][] = [];
for (const file of files) {
  const { default: subject }: { default: Subject } = await import(`./${file}`);
  if (asked.length > 0 && !asked.includes(subject.subject)) continue;
  for (const entry of await subject.entries()) rows.push([subject.subject, ...(await measured(entry))]);
}
if (rows.length === 0) throw new Error(`No subject is called ${asked.join(', ')}.`);
const [load = 0] = loadavg();
printTable(
  `Measured on ${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown'}, Node ${process.version}, load ${load.toFixed(1)}`,
  ['subject', 'measure', 'unit', 'median', 'spread', 'target', 'note'],
  rows,
);
