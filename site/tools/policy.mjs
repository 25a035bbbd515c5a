/** What the pages, workers and files of the site may do, in the words of HTTP. Pure text in, text out. */
import { createHash } from 'node:crypto';

/** Names under which code may make an address of a script: see `own-worker.ts` and `register.ts`. */
const TRUSTED = 'larderwright-worker larderwright-offline';

/** @typedef {{ scripts: readonly string[], styles: readonly string[] }} Inline what stands in a page itself, as hashes */

/** @param {string} text @returns {string} as a policy names it */
function hashOf(text) {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}

/**
 * Hashes of the scripts and styles that stand in a page.
 * @param {string} html
 * @returns {Inline}
 */
export function inlineOf(html) {
  /** @param {RegExp} pattern */
  const hashes = (pattern) =>
    [...new Set([...html.matchAll(pattern)].map(([, , text = '']) => text).filter((text) => text !== ''))]
      .map(hashOf)
      .sort();
  return {
    scripts: hashes(/<script(?![^>]*\ssrc=)([^>]*)>(.*?)<\/script>/gs),
    styles: hashes(/<style([^>]*)>(.*?)<\/style>/gs),
  };
}

/**
 * @param {Readonly<Record<string, readonly string[]>>} rules
 * @returns {string}
 */
function policy(rules) {
  return Object.entries(rules)
    .map(([name, values]) => [name, ...values].join(' '))
    .join('; ');
}

const SELF = "'self'";
const NONE = "'none'";

/**
 * The policy of a page. Nothing from elsewhere, no script or style but files of the site and those it was built with,
 * and no text made into markup or code.
 * @param {Inline} inline
 */
export function pagePolicy({ scripts, styles }) {
  return policy({
    'default-src': [NONE],
    'script-src': [SELF, ...scripts],
    'style-src': [SELF, ...styles],
    'img-src': [SELF],
    'connect-src': [SELF],
    'manifest-src': [SELF],
    'worker-src': [SELF],
    'base-uri': [NONE],
    'form-action': [NONE],
    'require-trusted-types-for': ["'script'"],
    'trusted-types': [TRUSTED],
  });
}

/**
 * The policy of a worker, which takes none from its page.
 * @param {{ wasm?: boolean }} [options] whether it may run WebAssembly
 */
export function workerPolicy({ wasm = false } = {}) {
  return policy({
    'default-src': [NONE],
    'script-src': [SELF, ...(wasm ? ["'wasm-unsafe-eval'"] : [])],
    'connect-src': [SELF],
    'require-trusted-types-for': ["'script'"],
    'trusted-types': [NONE],
  });
}

/** What a policy in the page itself cannot say: nobody may frame it. */
export const FRAMES = "frame-ancestors 'none'";

/** Sent with everything. What the site has no use for is shut; the screen is kept awake during a cook. */
export const EVERYWHERE = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': [
    ...['camera', 'display-capture', 'geolocation', 'hid', 'microphone', 'midi', 'payment', 'serial', 'usb'],
  ]
    .map((name) => `${name}=()`)
    .concat('screen-wake-lock=(self)')
    .join(', '),
};

/** The name of a file says what is in it: it never changes. */
export const FOR_GOOD = 'public, max-age=31536000, immutable';
/** Kept, and asked about each time. */
export const ASK_AGAIN = 'no-cache';
