export const notKnown = 'not known';
export const serving = 'Serving';
export const unitedStatesReferenceAmounts =
  'United States reference amounts: pâté, sausage and spreads 55 g, dried 30 g, bacon 15 g, ham 85 g. Some from memory: check.';
export const alcoholInItWas = 'Alcohol in it was';
export const nobodyHasSaid = 'Nobody has said';
export const unitedStatesDepartment =
  'United States Department of Agriculture, retention factors, release 6.';
export const cannotTellSayWhatLostWeigh = 'Cannot tell: say what was lost, and weigh the finished food';
export const europeanUnionAndUnitedKingdom = 'European Union and United Kingdom';
export const nutrient = 'Nutrient';
export const servingG = (servingG: string | number) => `Serving ${servingG} g`;
export const in100GBeforeRounding = (euRowNames: string, value: string) =>
  `${euRowNames}: ${value} in 100 g before rounding`;
export const cannotTellUnitedStatesPanel = 'Cannot tell the United States panel: the serving is missing';
export const unitedStatesServingG = (servingG: string | number) => `United States, serving ${servingG} g`;
export const amount = 'Amount';
export const dv2016 = '% DV 2016';
export const dvBefore = '% DV before';
export const inAServingBeforeRounding = (usRowNames: string, value: string) =>
  `${usRowNames}: ${value} in a serving before rounding`;
export const servingsInAPack = 'Servings in a pack';
export const about = 'about ';
export const cannotTellNetWeightServing = 'Cannot tell: net weight or serving is missing';
export const addedWaterAsTheEuCounts = 'Added water, as the EU counts it';
export const cannotTellFinishedWeight = 'Cannot tell: the finished weight is missing';
