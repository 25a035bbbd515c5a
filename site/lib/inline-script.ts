import early from '../scripts/early.js?raw';
import opener from '../scripts/here/opener.js?raw';
import selfCheck from '../scripts/self-check.js?raw';

/** A script as it stands in the HTML, without its comments and indents. */
function inline(script: string): string {
  return script
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '' && !/^(\/\/|\/\*\*)/.test(line))
    .join('\n');
}

/** Runs before the first paint. */
export const EARLY_SCRIPT = inline(early);

/** Runs at the end of a technique page. */
export const HERE_SCRIPT = inline(opener);

/** Runs behind the questions of a technique page. */
export const SELF_CHECK_SCRIPT = inline(selfCheck);
