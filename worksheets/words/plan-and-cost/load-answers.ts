import type { Slot } from '../slot.ts';

export const intoTheChillerWarm = 'Into the chiller, warm';
export const cannotTellTheFillIsNot = 'Cannot tell: the fill is not known';
export const wholeRawFillIfNothingHad =
  'The whole raw fill, as if nothing had cooked out: the safe side. Divided by what the chiller may take, rounded up, it gives the runs. Derived.';
export const mouldsInTheBath = 'Moulds in the bath';
export const cannotTellMouldsFillNotKnown = 'Cannot tell: moulds or fill are not known';
export const mouldsFillDividedWhatBathTakes =
  'Moulds to fill, divided by what the bath takes, rounded up. Derived.';
export const mouldsNeeded = 'Moulds needed';
export const mouldsNeededWereAllOfKind = (place: number) => `Moulds needed, were all of kind ${place}`;
export const theLastFull = (count: number, lastFraction: string) => `${count}, the last ${lastFraction} full`;
export const cannotTellMouldFillNotKnown = 'Cannot tell: the mould or the fill is not known';
export const fillDividedWhatOneMouldTakes = 'Fill divided by what one mould takes, rounded up. Derived.';
export const here = (fillG: string, fillG2: string) => ` Here ${fillG} ÷ ${fillG2}.`;
export const measureTheMoulds = 'Measure the moulds';
export const noMouldYetToSeeHow = (a: Slot): Slot => ['No mould yet. ', a, ' to see how many it takes.'];
export const inOneRun = 'In one run.';
export const inRuns = (runs: number) => `In ${runs} runs.`;
