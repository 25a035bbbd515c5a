// Gives every finished page its content security policy, and writes the headers file for the host.
// Run last: a page changed afterwards would break its own policy.
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { HEADERS_FILE, writeHeaders } from './headers.mjs';
import { ASK_AGAIN, EVERYWHERE, FOR_GOOD, FRAMES, inlineOf, pagePolicy, workerPolicy } from './policy.mjs';
import { baseFrom, outFrom } from './target.mjs';

const out = outFrom(process.env);
const base = baseFrom(process.env);

/** The tag that is put behind the charset, before anything the policy is about. */
const CHARSET = '<meta charset="utf-8">';

const files = (await readdir(out, { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile())
  .map(({ parentPath, name }) =>
    join(parentPath, name)
      .slice(out.length + 1)
      .replaceAll(sep, '/'),
  )
  .sort();

/**
 * End tags that HTML lets one leave out, where the next tag closes the cell by itself: big tables lose 6 % over the wire.
 * @param {string} html
 */
function leaner(html) {
  return html.replace(/<\/(?:td|th|tr|dt|dd)>(?=<(?:td|th|tr|dt|dd|\/tr|\/tbody|\/thead|\/dl)\b)/g, '');
}

const scripts = new Set();
const styles = new Set();
for (const file of files.filter((name) => name.endsWith('.html'))) {
  const path = join(out, file);
  const html = leaner(await readFile(path, 'utf8'));
  if (!html.includes(CHARSET)) throw new Error(`${file} has no place for its policy: ${CHARSET}`);
  const inline = inlineOf(html);
  for (const hash of inline.scripts) scripts.add(hash);
  for (const hash of inline.styles) styles.add(hash);
  const meta = `<meta http-equiv="Content-Security-Policy" content="${pagePolicy(inline)}">`;
  await writeFile(
    path,
    html.replace(CHARSET, () => CHARSET + meta),
  );
}

/** One policy for all pages: a host would need a rule a page otherwise. Each page narrows it by its own. */
const anyPage = `${pagePolicy({ scripts: [...scripts].sort(), styles: [...styles].sort() })}; ${FRAMES}`;

/** Files that workers start from, and what runs in them. */
const workers = files
  .filter((file) => /^_astro\/[^/]*worker[^/]*\.js$/.test(file))
  .map((file) => ({ file, wasm: file.startsWith('_astro/search.worker') }));
if (!workers.some(({ wasm }) => wasm)) throw new Error('The search worker was not found among the scripts.');

/** Folders and files at the top that a page may answer from, each named since no path may have two policies. */
const pagePlaces = [
  '',
  '404.html',
  ...new Set(
    files
      .filter((file) => file.endsWith('/index.html') && file.includes('/'))
      .map((file) => `${file.slice(0, file.indexOf('/'))}/*`),
  ),
];

/** @param {string} path @param {Record<string, string>} headers */
const rule = (path, headers) => ({ path: base + path, headers });

const rules = [
  rule('*', EVERYWHERE),
  ...pagePlaces.map((place) =>
    rule(place, { 'Content-Security-Policy': anyPage, 'Cache-Control': ASK_AGAIN }),
  ),
  ...workers.map(({ file, wasm }) => rule(file, { 'Content-Security-Policy': workerPolicy({ wasm }) })),
  rule('sw.js', { 'Content-Security-Policy': workerPolicy(), 'Cache-Control': ASK_AGAIN }),
  rule('limits-standing.json', { 'Cache-Control': ASK_AGAIN }),
  rule('offline/*', { 'Cache-Control': FOR_GOOD }),
  rule('_astro/*', { 'Cache-Control': FOR_GOOD }),
  rule('pagefind/fragment/*', { 'Cache-Control': FOR_GOOD }),
  rule('pagefind/index/*', { 'Cache-Control': FOR_GOOD }),
];
await writeFile(join(out, HEADERS_FILE), writeHeaders(rules));
process.stdout.write(`sealed: ${scripts.size} scripts and ${styles.size} styles stand in pages\n`);
