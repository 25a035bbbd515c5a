export const compositionTableEachRowSource = (carried: string) =>
  `${carried} Composition by the table, each row with its source on the batch formula; the rest is derived.`;
export const saltTheyBring = 'Salt they bring';
export const cannotTellWeightSaltSomething = 'Cannot tell: a weight or the salt of something is not known';
export const waterTheyBring = 'Water they bring';
export const cannotTellWeightWaterSomething = 'Cannot tell: a weight or the water of something is not known';
export const allGarnishOfTheWholeMix = 'All garnish, of the whole mix';
export const garnishReadyFoldDivided =
  'Garnish ready to fold in, divided by everything in the bowl, these lines among it. Derived.';
export const eggOfTheWholeMix = 'Egg, of the whole mix';
export const eggDividedEverythingBowl = 'Egg divided by everything in the bowl. Derived.';
export const writeTheseLinesIntoTheFormula = 'Write these lines into the formula';
export const linesPageWroteBeforeReplaced =
  'Lines this page wrote before are replaced; others stay: take out those that are the same. Panade goes in as it weighs cooked: its steam is taken off its largest part.';
export const bindersGarnishStandFormula = 'Binders and garnish stand in the formula.';
