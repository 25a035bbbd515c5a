/** The import check: floors, faces of calc, cycles, dead imports and the purity of calc. Exit code 1 on any fault. */
import { readFile } from 'node:fs/promises';
import { filesBelow } from '../../site/tools/files.mjs';
import { run, say } from '../../site/tools/project.mjs';
import { importFault } from './floors.mjs';
import { impurities } from './impurities.mjs';
import { deadImports, importsOf, resolveImport } from './read-imports.mjs';

const FOLDERS = ['calc', 'worksheets', 'content', 'site', 'tests'];

/** @type {string[]} */
const faults = [];
let files = 0;

const paths = (await Promise.all(FOLDERS.map(filesBelow))).flat();

for (const path of paths) {
  if (!/\.(ts|astro|mdx)$/.test(path)) continue;
  const text = await readFile(path, 'utf8');
  if (path.startsWith('calc/') && path.endsWith('.ts')) {
    for (const reason of impurities(text)) faults.push(`${path}: ${reason}`);
  }
  if (!/\.(astro|mdx)$/.test(path)) continue;
  files += 1;
  for (const specifier of deadImports(path, text)) faults.push(`${path}: nothing stands at ${specifier}`);
  for (const specifier of importsOf(path, text)) {
    const target = resolveImport(path, specifier);
    const fault = target === null ? null : importFault(path, target);
    if (fault) faults.push(`${path} → ${target}: ${fault}`);
  }
}

const cruise = await run(
  'depcruise',
  ['--config', '.dependency-cruiser.mjs', '--output-type', 'json', ...FOLDERS],
  { capture: true },
);
/** @type {{ modules: { source: string, dependencies: { resolved: string }[] }[], summary: { violations: { from: string, to: string, rule: { name: string } }[] } }} */
const graph = JSON.parse(cruise.stdout);
for (const { from, to, rule } of graph.summary.violations)
  faults.push(`${from} → ${to}: breaks ${rule.name}`);
for (const { source, dependencies } of graph.modules) {
  if (!source.startsWith('node_modules/')) files += 1;
  for (const { resolved } of dependencies) {
    const fault = importFault(source, resolved);
    if (fault) faults.push(`${source} → ${resolved}: ${fault}`);
  }
}

for (const fault of [...new Set(faults)].sort()) say(fault);
if (files === 0) say('No file was read.');
say(`${files} files read, ${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}.`);
process.exitCode = faults.length > 0 || files === 0 ? 1 : 0;
