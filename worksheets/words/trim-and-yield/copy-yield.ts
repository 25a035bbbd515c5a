import type { Slot } from '../slot.ts';

export const writeTheFormula = 'write the formula';
export const toUseThisYieldInA = (a: Slot): Slot => ['To use this yield in a plan, ', a, ' first.'];
export const thisLine = 'this line';
export const thePlanNowCountsYieldFor = (percent: string, name: string) =>
  `The plan now counts ${percent} % yield for ${name}.`;
export const lineOfTheFormulaCutFrom = (name: string) => `Line of the formula cut from ${name}`;
export const chooseALine = 'Choose a line';
export const line = (place: number) => `Line ${place}`;
export const useInThePlan = (percent: string) => `Use ${percent} % in the plan`;
