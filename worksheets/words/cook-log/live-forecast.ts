import { plural } from '../plural.ts';

export const makePlanWorksheetCookPlanThen =
  'Make a plan on the worksheet Cook plan: then every reading here forecasts the finish.';
export const cookPlanStillLacksSomethingSee =
  'The cook plan still lacks something: see the worksheet Cook plan.';
export const writeWhenWentIntoHeatSteps = 'Write when it went into the heat, in the steps above.';
export const firstReadingBeginsForecast = 'The first reading begins the forecast.';
export const forecastBeingComputed = 'Forecast: being computed';
export const staleNewerReadingBeingReckoned = 'STALE: a newer reading is being reckoned with.';
export const cannotTellNoReadingFitsAny = 'Cannot tell: no reading fits any plan of this kind.';
export const notBeforePerhapsNever = (low: string) => `not before ${low}; perhaps never`;
export const to = (low: string, high: string) => `${low} to ${high}`;
export const learntReadingsMeetsWithinC = (used: number, logName: string, residualC: string) =>
  `Learnt from ${used} ${plural(used, { one: 'reading', other: 'readings' })} of ${logName}, which it meets within ${residualC} °C. A forecast is no reading: the probe rules.`;
export const coreAt = (targetC: string) => `Core at ${targetC}`;
export const notReachedAsForecast = 'Not reached, as forecast';
export const neverInThisHeatAsForecast = 'Never in this heat, as forecast';
export const band = (targetMin: string) => `Band: ${targetMin}`;
export const cameOutOfTheHeat = 'Came out of the heat';
export const theMomentToPull = 'The moment to pull';
export const coreTargetHoldLimitAsksOver =
  'The core is at its target, and the hold that the limit asks for is over. Derived.';
export const bandOnlyCoreReadTarget = (heatEndMin: string) =>
  `Band: ${heatEndMin}. Only with the core read at its target.`;
export const carryOverAsForecast = 'Carry-over, as forecast';
export const peak = (carryOverC: string, tempC: string) => `${carryOverC}, peak ${tempC}`;
export const bandOfThePeakTo = (low: string, high: string) => `Band of the peak: ${low} to ${high}`;
export const readingsAndForecast = 'Readings and forecast';
export const intoTheChillByAtThe = 'Into the chill by, at the latest';
export const atLeast = 'at least ';
export const evenOnceWouldLateSlowEdge =
  'Even at once it would be late by the slow edge: chill harder, or in less depth';
export const longestWaitOutHeatPlannedChill =
  'Longest wait out of the heat from which the planned chill still meets every leg, sought by the heat engine. Derived.';
export const plannedChillMeetsEveryLeg =
  'So that the planned chill meets every leg of the cooling rule, its films at the slow edge and every time a fifth longer. The readings of the chill rule.';
export const caution = 'CAUTION';
export const cAt = (tempC: string, timeMin: string) => `${tempC} °C at ${timeMin}`;
export const unlikelyProbeSlippedWrongUnit = (unlikely: string) =>
  `Unlikely: ${unlikely}. Probe slipped, wrong unit, or out of the meat? Kept in the log and in the verdict; only the forecast leaves it out. To take a reading out of the verdict, exclude it with reason and initials.`;
export const giveNameFirstOvenPan = 'Give it a name first: which oven, which pan.';
export const keptAsTheNextCookPlan = (known: string) => `Kept as ${known}. The next cook plan offers it.`;
export const deviceKeepsNothingWriteFigures = 'This device keeps nothing: write the figures down.';
export const ovenAgainstShippedFiguresGives = (
  filmFactor: string,
  heatingFactor: string,
  mediumShiftC: string,
) =>
  `This oven against the shipped figures: gives its heat × ${filmFactor}, heats the pan × ${heatingFactor}, hotter than it shows by ${mediumShiftC} °C.`;
export const nameOfTheOvenRecord = 'Name of the oven record';
export const keepItForTheNextPlan = 'Keep it for the next plan';
