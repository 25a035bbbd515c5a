import type { Slot } from '../slot.ts';

export const depthOfTheMould = 'Depth of the mould';
export const mmIn = (mm: string, mm2: string) => `${mm} mm (${mm2} in)`;
export const ovenSteamOrKettle = 'Oven, steam or kettle';
export const waterGoesInAt = 'Water goes in at';
export const coreWhenItGoesIn = 'Core when it goes in';
export const coreToReach = 'Core to reach';
export const whatIfNotYetPlanItself = 'What if: not yet, the plan itself comes first';
export const backToThePlan = 'Back to the plan';
export const moveASliderThePlanStays = 'Move a slider. The plan stays as it is.';
export const cannotTellThereNoRoomNo = 'Cannot tell: with that there is no room or no water left.';
export const theCoreNeverGetsThere = 'The core never gets there.';
export const never = 'never';
export const targetAfterPlanned = (targetMin: string, targetMin2: string) =>
  `Target after ${targetMin}; planned ${targetMin2}.`;
export const roughWhileItMoves = ' Rough while it moves.';
export const triedCooling = (knobs: string, strong: Slot, predictedNames: string, value: string): Slot => [
  'Tried: ',
  knobs,
  '. ',
  strong,
  ' Cooling: ',
  predictedNames,
  '.',
  value,
];
export const triedBesideThePlan = 'Tried beside the plan';
export const asPlanned = ', as planned';
export const planned = (planned: string) => `; planned ${planned}`;
export const depthAgainstTime = 'Depth against time';
export const samePlanMouldsOtherDepthsWhat =
  'The same plan in moulds of other depths. What cooks in time may not cool in time.';
export const beingComputed = (done: number) => `Being computed, ${done} %`;
export const layOtherDepthsSideBySide = 'Lay other depths side by side';
export const couldNotBeComputed = (failed: string) => ` Could not be computed: ${failed}`;
export const coolingBy = (title: string) => `, cooling by ${title}`;
export const depthAgainstTimePredictedNot = (title: string) =>
  `Depth against time${title}. Predicted, not proof`;
export const depth = 'Depth';
export const toTheTarget = 'To the target';
export const leg = (i: number) => `Leg ${i}`;
export const cooling = 'Cooling';
export const cannotTell = 'cannot tell';
export const useMm = (depthMm: number) => `Use ${depthMm} mm`;
