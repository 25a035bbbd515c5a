// Builds the search index of dist/: technique and worksheet pages as they stand, and one record each
// for every caution, defect and part of a table. Run after `astro build`.
import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as pagefind from 'pagefind';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
const recordsFile = join(dist, 'search-records.json');
const outputPath = join(dist, 'pagefind');

/** What our own search page loads. The rest that the indexer writes is another interface's. */
const NEEDED =
  /^(pagefind\.js|pagefind-worker\.js|pagefind-entry\.json|wasm\.en\.pagefind|.+\.pf_meta|fragment|index|filter)$/;

/** @param {{ errors: string[] }} answer */
function check({ errors }) {
  if (errors.length > 0) throw new Error(`The search index could not be built:\n${errors.join('\n')}`);
}

const { index, errors } = await pagefind.createIndex({ forceLanguage: 'en' });
check({ errors });
if (!index) throw new Error('The search index could not be built.');

const pages = await index.addDirectory({ path: dist });
check(pages);

const records = JSON.parse(await readFile(recordsFile, 'utf8'));
for (const { url, kind, title, summary, level, levelId, content } of records) {
  check(
    await index.addCustomRecord({
      url,
      content,
      language: 'en',
      meta: { title, summary, level, levelId, kind },
      filters: { kind: [kind], ...(levelId && { level: [levelId] }) },
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
await rm(recordsFile);
await removeUnusedSignals();
process.stdout.write(`search: ${pages.page_count} pages and ${records.length} records\n`);

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
