/**
 * The headers file, in the form that common hosts of static files read: a path on a line by itself, `*` at its end for
 * all below it, and the headers for it on the lines beneath, set in. Where two rules name one header, hosts differ in
 * what they send, so no path gets the same header twice.
 */

/** @typedef {{ path: string, headers: Readonly<Record<string, string>> }} HeaderRule */

/** The name of the file in the finished site. */
export const HEADERS_FILE = '_headers';

/**
 * @param {readonly HeaderRule[]} rules
 * @returns {string}
 */
export function writeHeaders(rules) {
  return rules
    .map(({ path, headers }) =>
      [path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`), ''].join('\n'),
    )
    .join('\n');
}

/**
 * @param {string} text
 * @returns {HeaderRule[]}
 */
export function readHeaders(text) {
  /** @type {{ path: string, headers: Record<string, string> }[]} */
  const rules = [];
  for (const line of text.split('\n')) {
    const [, name, value] = /^\s+([\w-]+):\s*(.*)$/.exec(line) ?? [];
    if (name !== undefined && value !== undefined) {
      const rule = rules.at(-1);
      if (rule) rule.headers[name] = value;
    } else if (line.trim() !== '') rules.push({ path: line.trim(), headers: {} });
  }
  return rules;
}

/**
 * @param {readonly HeaderRule[]} rules
 * @param {string} pathname
 * @returns {Record<string, string>} headers for that path
 */
export function headersFor(rules, pathname) {
  const fitting = rules.filter(({ path }) =>
    path.endsWith('*') ? pathname.startsWith(path.slice(0, -1)) : pathname === path,
  );
  return Object.assign({}, ...fitting.map(({ headers }) => headers));
}
