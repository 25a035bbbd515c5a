export const fileBatchesSavedPageAnother = 'A file of batches, saved on this page or another device';
export const layItOnTheBench = 'Lay it on the bench';
export const couldNotBeReadFromThis2 = (name: string) => `${name} could not be read from this device.`;
export const deviceDidNotTakeNothingChanged2 = (detail: string) =>
  `This device did not take them (${detail}). Nothing was changed.`;
export const leftOut2 = (left: number) => `, ${left} left out`;
export const takenWhatDevice2 = (length: string | number, left: string, lost: string, settings: string) =>
  `${length} taken in${left}. What was on this device is as it was.${lost}${settings}`;
export const mostNothingTakenBeforeHaveSeen2 = (mostFileWords: string) =>
  `At most ${mostFileWords}. Nothing is taken in before you have seen it.`;
export const ofBatches2 = (done: number, all: number) => ` ${done} of ${all} batches`;
export const readingTheFile2 = (done: string) => `Reading the file …${done}`;
