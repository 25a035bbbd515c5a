// Packs the finished site for the device: a few packs named by their content, a list of what lies where in them, and
// the service worker that keeps them. Run after everything else has been written.
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { HEADERS_FILE, readHeaders } from './headers.mjs';
import { TYPES } from './media-types.mjs';
import { ROOT } from './project.mjs';
import { baseFrom, outFrom } from './target.mjs';

const out = outFrom(process.env);
const base = baseFrom(process.env);
const folder = join(out, 'offline');
await rm(folder, { recursive: true, force: true });
await mkdir(folder);

/** Text is sent compressed by any host, so it says that it is text; the index of the search is compressed already. */
const GROUPS = /** @type {const} */ ([
  { name: 'search', ending: 'bin', holds: /^pagefind\// },
  { name: 'code', ending: 'txt', holds: /^_astro\// },
  { name: 'pages', ending: 'txt', holds: /^/ },
]);

const NOT_KEPT = new Set([HEADERS_FILE, 'sw.js']);
const paths = (await readdir(out, { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
  .map(({ parentPath, name }) =>
    join(parentPath, name)
      .slice(out.length + 1)
      .replaceAll(sep, '/'),
  )
  .filter((path) => !NOT_KEPT.has(path))
  .sort();

/** @type {{ url: string, bytes: number, sha256: string }[]} */
const parts = [];
let wireBytes = 0;

/**
 * Writes one part under a name that says what is in it.
 * @param {string} name
 * @param {string} ending
 * @param {Buffer} content
 */
async function writePart(name, ending, content) {
  const sha256 = createHash('sha256').update(content).digest('hex');
  const file = `${name}-${sha256.slice(0, 16)}.${ending}`;
  await writeFile(join(folder, file), content);
  const bytes = ending === 'bin' ? content.length : gzipSync(content).length;
  wireBytes += bytes;
  const url = `${base}offline/${file}`;
  parts.push({ url, bytes, sha256 });
  return url;
}

/** @type {[string, number, number, number][]} */
const files = [];
const packs = [];
for (const [at, { name, ending }] of GROUPS.entries()) {
  const mine = paths.filter((path) => GROUPS.find((group) => group.holds.test(path))?.name === name);
  const contents = await Promise.all(mine.map((path) => readFile(join(out, path))));
  let offset = 0;
  for (const [i, path] of mine.entries()) {
    const { length } = contents[i] ?? Buffer.alloc(0);
    files.push([path, at, offset, length]);
    offset += length;
  }
  packs.push(await writePart(name, ending, Buffer.concat(contents)));
}

const endings = [...new Set(paths.map((path) => extname(path)))].filter((ending) => TYPES.has(ending));
const index = {
  packs,
  types: Object.fromEntries(endings.map((ending) => [ending, TYPES.get(ending)])),
  rules: readHeaders(await readFile(join(out, HEADERS_FILE), 'utf8')),
  files,
};
const indexUrl = await writePart('index', 'json', Buffer.from(JSON.stringify(index)));

const worker = await readFile(join(ROOT, 'site/offline/worker.js'), 'utf8');
const edition = JSON.stringify({ base, index: indexUrl, parts });
await writeFile(join(out, 'sw.js'), `globalThis.EDITION = ${edition};\n${worker}`);
await writeFile(join(folder, 'size.json'), JSON.stringify({ bytes: wireBytes }));
process.stdout.write(
  `offline: ${files.length} files in ${packs.length} packs, ${(wireBytes / 1e6).toFixed(1)} MB\n`,
);
