export const excluded = (excluded: number) => ` ${excluded} excluded.`;
export const noReadingsThatCount = (name: string, out: string) => `${name}: no readings that count.${out}`;
export const oneReadingAt = (name: string, tempC: string, atMs: string, out: string) =>
  `${name}: one reading, ${tempC} at ${atMs}.${out}`;
export const predictedFromAt = (name: string, tempC: string, atMs: string) =>
  `${name}, predicted: from ${tempC} at ${atMs} `;
export const toAtHighestAt = (tempC: string, atMs: string, tempC2: string, atMs2: string) =>
  `to ${tempC} at ${atMs}, highest ${tempC2} at ${atMs2}.`;
export const from = (after: string, before: string) => `${after} from ${before}`;
export const withoutAReading = (gaps: string) => ` Without a reading: ${gaps}.`;
export const readingsFromAt = (name: string, length: number, tempC: string, atMs: string) =>
  `${name}: ${length} readings from ${tempC} at ${atMs} `;
export const lines = 'Lines';
export const shaded = 'Shaded';
export const to = (label: string, fromMs: string, toMs: string) => `${label}, ${fromMs} to ${toMs}`;
export const band = 'Band';
export const window = 'Window';
