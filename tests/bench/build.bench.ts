import { spawn } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOT } from '../../site/tools/project.mjs';
import { sitePaths } from '../site/pages.ts';
import type { Subject } from './registry.ts';

/*
 * What a build costs, for today's pages and for a thousand more, each a copy of a technique page under a name of its
 * own. Built in a copy of the sources beside the system's temporary files; the repository is not touched.
 */

const MORE_PAGES = 1000;
const MODEL = 'country-terrine';
const SOURCES = [
  'calc',
  'content',
  'site',
  'worksheets',
  'astro.config.mjs',
  'package.json',
  'tsconfig.json',
];

interface Built {
  readonly seconds: number;
  readonly peakMb: number;
}

let folder: string | null = null;

async function copy(): Promise<string> {
  const made = await mkdtemp(join(tmpdir(), 'larderwright-bench-'));
  for (const source of SOURCES) await cp(join(ROOT, source), join(made, source), { recursive: true });
  await symlink(join(ROOT, 'node_modules'), join(made, 'node_modules'));
  return made;
}

async function addPages(to: string): Promise<void> {
  const text = await readFile(join(to, `content/techniques/${MODEL}.mdx`), 'utf8');
  for (let index = 0; index < MORE_PAGES; index++) {
    const page = text
      .replace(/^title: .*$/m, `title: Invented page ${index}`)
      .replace(/^short: .*$/m, `short: Invented page ${index}`);
    await writeFile(join(to, `content/techniques/invented-${index}.mdx`), page);
  }
}

/** Peak resident memory of a process, MB, where the system tells. */
async function peakMb(pid: number): Promise<number> {
  const status = await readFile(`/proc/${pid}/status`, 'utf8').catch(() => '');
  return Number(/VmHWM:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024;
}

/** Builds the pages, without the index of the search. */
function build(where: string): Promise<Built> {
  const before = performance.now();
  const child = spawn(process.execPath, [join(ROOT, 'node_modules/astro/bin/astro.mjs'), 'build'], {
    cwd: where,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  child.stdout.on('data', (text) => {
    said += text;
  });
  child.stderr.on('data', (text) => {
    said += text;
  });
  let most = 0;
  const look = setInterval(async () => {
    most = Math.max(most, await peakMb(child.pid ?? 0));
  }, 200);
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (code) => {
      clearInterval(look);
      if (code === 0) resolve({ seconds: (performance.now() - before) / 1000, peakMb: most });
      else reject(new Error(`The build failed:\n${said.slice(-2000)}`));
    });
  });
}

const bench: Subject = {
  subject: 'build',
  entries: async () => {
    folder = await copy();
    const pages = sitePaths().length;
    const today = await build(folder);
    await addPages(folder);
    const more = await build(folder);
    const perPage = (today.seconds * 1000) / pages;
    const perNew = ((more.seconds - today.seconds) * 1000) / MORE_PAGES;
    return [
      { name: `build of ${pages} pages`, unit: 'ms', runs: 1, measure: () => today.seconds * 1000 },
      { name: `build of ${MORE_PAGES} pages more`, unit: 'ms', runs: 1, measure: () => more.seconds * 1000 },
      {
        name: 'each page more',
        unit: 'ms',
        runs: 1,
        measure: () => perNew,
        against: { name: 'a page of today, start included', measure: () => perPage },
      },
      {
        name: `memory of the build of ${pages} pages, `,
        unit: 'MB',
        runs: 1,
        measure: () => today.peakMb,
      },
      {
        name: `memory with ${MORE_PAGES} more`,
        unit: 'MB',
        runs: 1,
        measure: () => more.peakMb,
        against: { name: 'without them', measure: () => today.peakMb },
      },
    ];
  },
  close: async () => {
    if (folder) await rm(folder, { recursive: true, force: true });
  },
};
export default bench;
