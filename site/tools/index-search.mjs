// Builds the search index of dist/: technique and worksheet pages as they stand, and one record each
// for every caution, defect, word of the glossary, part and row of a table. Run after `astro build`.
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import * as pagefind from 'pagefind';
import { baseFrom, outFrom } from './target.mjs';

const dist = outFrom(process.env);
const recordsFile = join(dist, 'search-records.json');
const outputPath = join(dist, 'pagefind');

/** What our own search page loads. The rest that the indexer writes is another interface's. */
const NEEDED = /^(pagefind\.js|pagefind-entry\.json|wasm\.en\.pagefind|.+\.pf_meta|fragment|index|filter)$/;

/** @param {{ errors: string[] }} answer */
function check({ errors }) {
  if (errors.length > 0) throw new Error(`The search index could not be built:\n${errors.join('\n')}`);
}

const { index, errors } = await pagefind.createIndex({ forceLanguage: 'en' });
check({ errors });
if (!index) throw new Error('The search index could not be built.');

const pages = await index.addDirectory({ path: dist });
check(pages);

/** Pages are indexed as they lie in the folder, and the search puts what stands before them back. */
const before = baseFrom(process.env).length - 1;

/** @type {(Record<'url' | 'kind' | 'title' | 'summary' | 'level' | 'levelId' | 'content', string> & { isRow: boolean })[]} */
const records = JSON.parse(await readFile(recordsFile, 'utf8'));
for (const { url: address, kind, title, summary, level, levelId, isRow, content } of records) {
  const url = address.slice(before);
  check(
    await index.addCustomRecord({
      url,
      content,
      language: 'en',
      meta: { title, summary, level, levelId, kind },
      filters: { kind: [kind], ...(levelId && { level: [levelId] }), ...(isRow && { place: placesOf(url) }) },
    }),
  );
}

await rm(outputPath, { recursive: true, force: true });
check(await index.writeFiles({ outputPath }));
await pagefind.close();

const written = await readdir(outputPath);
await Promise.all(
  written.filter((name) => !NEEDED.test(name)).map((name) => rm(join(outputPath, name), { recursive: true })),
);
await writeFile(join(outputPath, 'words.txt'), await wordList());
await rm(recordsFile);
await removeUnusedSignals();
process.stdout.write(`search: ${pages.page_count} pages and ${records.length} records\n`);

/**
 * A temperature typed by itself asks for a limit of cooking first; a line of the conversions answers any number with
 * itself and is ranked low.
 * @param {string} url
 */
function placesOf(url) {
  if (url.startsWith('/tables/conversions/')) return ['row', 'conversion'];
  return url.startsWith('/tables/cooking-lethality/') ? ['row', 'limit'] : ['row'];
}

/**
 * Every word that can be found, without accents, and how common it is. The search reads it to put slips of the finger
 * right (`site/scripts/search/word-list.ts`).
 */
async function wordList() {
  const texts = records.map(({ title, content }) => `${title} ${content}`);
  for (const file of await readdir(dist, { recursive: true })) {
    if (!file.endsWith('.html')) continue;
    const html = await readFile(join(dist, file), 'utf8');
    const [, body = ''] = /<main[^>]*data-pagefind-body[^>]*>(.*)<\/main>/s.exec(html) ?? [];
    texts.push(body.replace(/<(script|style|svg)\b.*?<\/\1>/gs, ' ').replace(/<[^>]*>/g, ' '));
  }
  /** @type {Map<string, number>} */
  const counts = new Map();
  for (const text of texts)
    for (const [word] of text
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .matchAll(/[a-z]{3,}/g))
      counts.set(word, (counts.get(word) ?? 0) + 1);
  const words = [...counts.keys()].sort();
  const coded = words.map((word, at) => {
    const before = words[at - 1] ?? '';
    let shared = 0;
    while (shared < 9 && shared < before.length && word[shared] === before[shared]) shared++;
    return shared + word.slice(shared);
  });
  const ranks = words.map((word) => Math.min(9, Math.floor(Math.log2(counts.get(word) ?? 1))));
  return `${coded.join('')}\n${ranks.join('')}`;
}

/** The Preact renderer emits a signals chunk that no island asks for. */
async function removeUnusedSignals() {
  const folder = join(dist, '_astro');
  const names = await readdir(folder).catch(() => []);
  const scripts = names.filter((name) => name.endsWith('.js'));
  for (const name of scripts.filter((candidate) => candidate.startsWith('signals.module'))) {
    const others = await Promise.all(
      scripts.filter((other) => other !== name).map((other) => readFile(join(folder, other), 'utf8')),
    );
    const wanted = others.some((source) => /(?:\bfrom|\bimport)\s*["'][^"']*signals\.module/.test(source));
    if (!wanted) await rm(join(folder, name));
  }
}
