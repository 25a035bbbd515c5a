import type { PasteIssue, PasteWarning, PasteWarningCode } from '@larderwright/calc/probe-log';

/** Why a pasted log cannot be taken as it stands, and what to do. */
export function pasteIssueWords(issue: PasteIssue): string {
  const found = issue.found.join(', ');
  switch (issue.code) {
    case 'empty':
      return 'Nothing is pasted yet.';
    case 'too-large':
      return `This is longer than a log that can be read here (${found} characters). Load a part of it.`;
    case 'too-many-readings':
      return `These are more than ${found} readings. Load a part of the log.`;
    case 'no-times':
      return 'No times were found. Each line needs a time and a temperature, such as "14:15 68.4".';
    case 'no-temperatures':
      return found === ''
        ? 'Times were found, but no temperatures beside them.'
        : `Times were found, but no column of temperatures (seen: ${found}).`;
    case 'no-readings':
      return 'Not one line could be read as a time with a temperature.';
    case 'which-column':
      return `Several columns hold temperatures (${found}). Choose the one that shows the core.`;
    case 'decimal-comma-in-commas':
      return 'The comma stands for the decimal and parts the columns too, so 71,5 may be read as two numbers. Part the columns with semicolons or tabs.';
    case 'unit-needed':
      return 'The log does not say whether it is in °C or °F. Choose.';
    case 'unit-conflict':
      return `The log says ${found}, and another scale is chosen. Choose ${found}, or "as the log says".`;
    case 'day-needed':
      return 'The log has clock times only. Choose the day of its first reading.';
    case 'start-needed':
      return 'The log counts time from its start. Write when it was started.';
    case 'date-order-needed':
      return 'The dates can be read in two ways, such as 4/3. Choose which number is the day.';
    case 'bad-zone':
      return `The offset of the clock (${found}) could not be read.`;
  }
}

const WARNING: Record<PasteWarningCode, (found: string) => string> = {
  'row-not-read': (found) => `left out, its time cannot be read: "${found}"`,
  'temperature-blank': (found) => `${found}: no temperature. Kept as a blank reading, which breaks a hold`,
  'temperature-not-read': (found) => `"${found}" is no temperature. Kept, and it breaks a hold`,
  'clock-went-back': (found) => `the clock went back to ${found}. Kept as it stands and marked`,
  'next-day': (found) => `${found} is read as past midnight, on the next day`,
  'newest-first': () => 'the newest reading stood first; the order was turned round',
  'column-ignored': (found) => `column "${found}" is not used`,
};

/** One line of what was noticed while reading a log. */
export function pasteWarningWords({ code, line, found }: PasteWarning): string {
  const said = WARNING[code](found.slice(0, 60));
  return code === 'column-ignored' || code === 'newest-first'
    ? `The log: ${said}.`
    : `Line ${line}: ${said}.`;
}
