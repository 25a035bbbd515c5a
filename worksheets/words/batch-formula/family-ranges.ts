export const usualRanges = (name: string) => `Usual ranges: ${name}`;
export const ofEverythingInTheBowl = 'Of everything in the bowl';
export const usually = 'Usually';
export const here = 'Here';
export const rangesCommonPracticeNoSource =
  'The ranges are common practice, no source. Food outside them may be good.';
export const fromMemoryCheckTheCurrentText = ' From memory: check the current text.';
export const soldAs = (
  name: string,
  what: string,
  bounds: string,
  title: string,
  edition: string,
  check: string,
) => `Sold as ${name}: ${what} ${bounds} (${title}, ${edition}).${check}`;
export const atLeast = (min: string) => `at least ${min} %`;
export const atMost = (max: string) => `at most ${max} %`;
