export const lookingThroughThisDevice = 'Looking through this device …';
export const deviceKeepsNoBatchesDoesNot = (problem: string) =>
  `This device keeps no batches, or does not let the page at them (${problem}).`;
export const handOn = 'Hand on';
export const bringIn = 'Bring in';
