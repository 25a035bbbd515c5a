export const readingTheLink = 'Reading the link …';
export const readersCopy = 'Reader’s copy:';
export const unnamedBatch = 'Unnamed batch';
export const demoInvented = 'DEMO, invented';
export const cameLinkStandsTabAloneNames =
  'It came in a link and stands in this tab alone. Names, initials and signatures were left out, so it signs nothing off. What you change here is not kept.';
export const layItOnMyBench = 'Lay it on my bench';
export const besideOneSameOriginHere = ', beside the one of the same origin that was here';
export const itLiesOnYourBenchAs = (value: string) => `It lies on your bench as it came${value}.`;
export const goOnWithItInThe = 'Go on with it in the batch sheet';
export const deviceDidNotTakeBench = (problem: string) =>
  `This device did not take it (${problem}). Your bench is as it was.`;
