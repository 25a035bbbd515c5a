import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { fileOf } from '../site/pages.ts';
import { type OnSite, onSite } from './on-site.ts';
import type { Entry, Subject } from './registry.ts';

/** One page of every kind, with its budget in bytes where it has one. */
const PAGES: readonly (readonly [kind: string, path: string, target?: number])[] = [
  ['start page', '/', 20_000],
  ['technique', '/technique/country-terrine/', 20_000],
  ['caution', '/cautions/cooling-clock/', 20_000],
  ['table', '/tables/nitrite-limits/', 20_000],
  ['index of defects', '/defects/', 20_000],
  ['list of checks', '/how-we-know/', 20_000],
  ['worksheet, lightest', '/worksheets/crust/', 36_000],
  ['worksheet, usual', '/worksheets/salt-and-cure/', 36_000],
  ['worksheet, heaviest', '/worksheets/cook-log/', 36_000],
];

let site: OnSite | null = null;

const gzipped = (path: string) => gzipSync(readFileSync(fileOf(path)), { level: 9 }).length;

/** What a first visit asks for until it is quiet, gzip. */
async function weigh(path: string): Promise<{ bytes: number; js: number; requests: number }> {
  site ??= await onSite();
  const page = await site.newPage();
  const asked = new Set(['/mark.svg']);
  page.on('request', (request) => asked.add(new URL(request.url()).pathname));
  await page.goto(path, { waitUntil: 'networkidle' });
  await page.context().close();
  const files = [...asked];
  const sum = (paths: readonly string[]) => paths.reduce((total, file) => total + gzipped(file), 0);
  return { bytes: sum(files), js: sum(files.filter((file) => file.endsWith('.js'))), requests: files.length };
}

function ofPage(kind: string, path: string, target?: number): Entry {
  let last = { bytes: 0, js: 0, requests: 0 };
  return {
    name: `${kind}, first visit, gzip`,
    unit: 'B',
    runs: 1,
    ...(target === undefined ? {} : { target }),
    measure: async () => {
      last = await weigh(path);
      return last.bytes;
    },
    note: () => `${path}: ${last.requests} requests, ${last.js} B of JavaScript`,
  };
}

const bytes: Subject = {
  subject: 'bytes',
  entries: () => PAGES.map(([kind, path, target]) => ofPage(kind, path, target)),
  close: async () => site?.close(),
};
export default bytes;
