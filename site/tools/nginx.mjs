/** The finished site's headers file as a configuration of nginx, for a kitchen's own network. */
import { TYPES } from './media-types.mjs';

/** @typedef {import('./headers.mjs').HeaderRule} HeaderRule */

/** @param {string} name of a header @returns {string} a variable of nginx */
const variable = (name) => `$larder_${name.toLowerCase().replaceAll('-', '_')}`;

/** @param {string} text @returns {string} as nginx reads it between double quotes */
function quoted(text) {
  if (/["\\$\n]/.test(text)) throw new Error(`nginx would misread ${text}`);
  return `"${text}"`;
}

/** @param {string} path of a rule @returns {string[]} as keys of a map over `$uri`, which names the index of a folder */
function keysOf(path) {
  if (path.endsWith('*')) return [`~^${path.slice(0, -1).replaceAll('.', '\\.')}`];
  return path.endsWith('/') ? [path, `${path}index.html`] : [path];
}

/**
 * Exact paths come before folders: nginx looks for them first, and takes the first pattern that fits.
 * @param {readonly HeaderRule[]} rules
 * @param {string} name
 */
function mapOf(rules, name) {
  const lines = rules.flatMap(({ path, headers }) => {
    const value = headers[name];
    return value === undefined ? [] : keysOf(path).map((key) => `  ${quotedKey(key)} ${quoted(value)};`);
  });
  return [`map $uri ${variable(name)} {`, '  default "";', ...lines, '}'].join('\n');
}

/** @param {string} key */
const quotedKey = (key) => `"${key}"`;

/**
 * @param {{ rules: readonly HeaderRule[], base: string, root: string, certificate: string, key: string,
 *   ports?: { plain: number, tls: number } }} options folders and files as the server will find them
 * @returns {string} for the `http` part of nginx
 */
export function nginxConfig({ rules, base, root, certificate, key, ports = { plain: 80, tls: 443 } }) {
  const names = [...new Set(rules.flatMap(({ headers }) => Object.keys(headers)))];
  const types = [...TYPES].map(([ending, type]) => `    ${quoted(type)} ${ending.slice(1)};`);
  const at = base === '/' ? [`  root ${root};`] : [`  location ${base} { alias ${root}/; }`];
  return `${[
    '# Written by the build. Headers are those of the headers file of the site.',
    'map_hash_bucket_size 256;',
    ...names.map((name) => mapOf(rules, name)),
    'server {',
    `  listen ${ports.plain};`,
    '  server_tokens off;',
    '  return 301 https://$host$request_uri;',
    '}',
    'server {',
    `  listen ${ports.tls} ssl http2;`,
    '  server_tokens off;',
    `  ssl_certificate ${certificate};`,
    `  ssl_certificate_key ${key};`,
    '  ssl_protocols TLSv1.2 TLSv1.3;',
    '  types {',
    ...types,
    '  }',
    '  default_type application/octet-stream;',
    '  index index.html;',
    ...at,
    `  error_page 404 ${base}404.html;`,
    `  location = ${base}_headers { return 404; }`,
    '  location ~ /\\. { return 404; }',
    '  gzip on;',
    '  gzip_vary on;',
    '  gzip_types text/css text/javascript text/plain application/json application/manifest+json image/svg+xml;',
    // An empty value is not sent.
    ...names.map((name) => `  add_header ${name} ${variable(name)} always;`),
    '}',
  ].join('\n')}\n`;
}
