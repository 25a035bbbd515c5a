/** Ways a file of calc could read the time, chance or the machine. Types keep the DOM and Node out. */
const IMPURE = new Map([
  [/\bDate\.now\b/, 'reads the clock (Date.now)'],
  [/\bnew Date\s*(\(\s*\)|(?![\s(]))/, 'reads the clock (new Date without a value)'],
  [/(?<!new\s)(?<![.\w])Date\s*\(\s*\)/, 'reads the clock (Date())'],
  [/\bMath\.random\b/, 'draws a random number that was not passed in'],
  [/\bTemporal\.Now\b/, 'reads the clock (Temporal.Now)'],
]);

/**
 * What makes a file of calc impure; comments do not count.
 * @param {string} text source
 * @returns {string[]} reasons
 */
export function impurities(text) {
  const code = text.replace(/\/\*.*?\*\//gs, '').replace(/(?<=^|\s)\/\/.*$/gm, '');
  return [...IMPURE].filter(([pattern]) => pattern.test(code)).map(([, reason]) => reason);
}
