/** What a build is for: where it will stand, and where it is written. */
import { resolve } from 'node:path';
import { PlainError, ROOT } from './project.mjs';

/** @typedef {Readonly<Record<string, string | undefined>>} Environment */

/**
 * The folder of its host that the site will stand in, from BASE: `/` unless told, else such as `/larder/`.
 * @param {Environment} env
 * @returns {string} with a slash at both ends
 */
export function baseFrom(env) {
  const text = (env.BASE ?? '').trim();
  const base = `/${text.replace(/^\/+|\/+$/g, '')}/`.replace(/^\/\/$/, '/');
  if (!/^\/(?:[\w-][\w.-]*\/)*$/.test(base)) {
    throw new PlainError(`BASE must be a path such as /larder/, of plain letters, not "${text}".`);
  }
  return base;
}

/**
 * The folder a build is written to, from OUT: `dist` unless told.
 * @param {Environment} env
 * @returns {string} absolute
 */
export function outFrom(env) {
  return resolve(ROOT, env.OUT?.trim() || 'dist');
}
