import { existsSync } from 'node:fs';
import { dirname, posix } from 'node:path';

const IMPORT =
  /\bimport\s*(?:\(\s*|(?:[\w*{][^'"`;]*?\bfrom\s*)?)(['"])([^'"]+)\1|\bexport\s[^'"`;]*?\bfrom\s*(['"])([^'"]+)\3/g;

/**
 * The code of an .astro file (between its fences and in its script elements), or of an .mdx file
 * (its import and export blocks, outside code samples).
 * @param {string} path
 * @param {string} text
 */
function codeOf(path, text) {
  if (path.endsWith('.mdx')) {
    const prose = text.replace(/^(`{3,}|~{3,}).*?^\1/gms, '');
    return prose
      .split(/\n\s*\n/)
      .filter((block) => /^\s*(import|export)\b/.test(block))
      .join('\n');
  }
  const fence = /^\s*---\r?\n(.*?)\r?\n---/s.exec(text)?.[1] ?? '';
  const scripts = [...text.matchAll(/<script\b[^>]*>(.*?)<\/script>/gs)].map((match) => match[1] ?? '');
  return [fence, ...scripts]
    .join('\n')
    .replace(/\/\*.*?\*\//gs, '')
    .replace(/(?<=^|\s)\/\/.*$/gm, '');
}

/**
 * What an .astro or .mdx file imports, as written.
 * @param {string} path
 * @param {string} text
 * @returns {string[]}
 */
export function importsOf(path, text) {
  return [...codeOf(path, text).matchAll(IMPORT)].map((match) => match[2] ?? match[4] ?? '');
}

/**
 * The file of this repository an import leads to, relative to its top; null for packages and virtual modules.
 * @param {string} from importing file, relative to the top, slashes forward
 * @param {string} specifier
 * @returns {string | null}
 */
export function resolveImport(from, specifier) {
  const bare = specifier.replace(/[?#].*$/, '');
  const face = /^@larderwright\/calc\/(.+)$/.exec(bare);
  if (face) return `calc/${face[1]}/index.ts`;
  return bare.startsWith('.') ? posix.join(dirname(from), bare) : null;
}

/**
 * Imports of one file that lead nowhere.
 * @param {string} path
 * @param {string} text
 * @returns {string[]}
 */
export function deadImports(path, text) {
  return importsOf(path, text).filter((specifier) => {
    const target = resolveImport(path, specifier);
    return target !== null && !existsSync(target);
  });
}
