import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { DIST } from '../../site/tools/build.mjs';

/** Paths of every page in dist/, the 404 page included, in order. */
export function sitePaths(): string[] {
  return readdirSync(DIST, { recursive: true, encoding: 'utf8' })
    .map((file) => file.split(/[\\/]/).join('/'))
    .filter((file) => file.endsWith('.html'))
    .map((file) => `/${file}`.replace(/\/index\.html$/, '/'))
    .sort();
}

/** Where a page lies on disk. */
export function fileOf(path: string): string {
  return join(DIST, path.endsWith('/') ? `${path}index.html` : path);
}
