export const addAnotherProbe = 'Add another probe';
export const probe = 'Probe';
export const markedIceCheckCanFound = 'As it is marked, so that its ice check can be found.';
export const whereItSits = 'Where it sits';
export const thermalCentreLastHeatLargest =
  'Thermal centre of the last to heat: largest mould, coldest shelf. Push past the middle, then draw back to the lowest reading, when cooling to the highest. Not in garnish, fat or air, nor against metal.';
export const mould = 'Mould';
export const notSaid = 'Not said';
export const mould2 = (i: number) => `Mould ${i}`;
export const checkedThermometer = 'Checked thermometer';
export const noneOffsetAndErrorTypedHere = 'None: offset and error typed here';
export const thermometer = (i: number) => `Thermometer ${i}`;
export const itsCheckGivesOffsetAndError = 'Its check gives offset and error.';
export const readsHighOrLowBy = 'Reads high (+) or low (−) by';
export const iceCheck06MeltingIce = 'From the ice check: 0.6 in melting ice means +0.6. Blank is unknown.';
export const error = 'Error, ±';
export const whatProbeMayStillOffEither =
  'What the probe may still be off either way. One degree too few takes a quarter of the kill. Blank is unknown, and then no verdict can be given. Write 0 only if a check against a reference shows it.';
export const remove = (name: string) => `Remove ${name}`;
