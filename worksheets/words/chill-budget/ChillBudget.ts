export const whatGoesInAndHowCold = 'What goes in, and how cold';
export const passesThroughTheMachine = 'Passes through the machine';
export const howWarmItEnds = 'How warm it ends';
export const temperaturesMixNotYetComputed = 'Temperatures of the mix: not yet computed';
export const iceOrAColderStart = 'Ice, or a colder start';
export const minutesThereAre = 'Minutes there are';
export const cubesInTheFreezer = 'Cubes in the freezer';
export const cardGrinderWhatEachStepShould =
  'A card for the grinder: what each step should read, the line to stop at, boxes for what it reads.';
