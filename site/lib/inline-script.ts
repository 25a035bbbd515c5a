import early from '../scripts/early.js?raw';

/** The script that runs before the first paint, without its comments and indents. */
export const EARLY_SCRIPT = early
  .split('\n')
  .map((line) => line.trim())
  .filter((line) => line !== '' && !/^(\/\/|\/\*\*)/.test(line))
  .join('\n');
