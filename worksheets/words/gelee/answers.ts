export const habit = 'Common practice, no source.';
export const agarToWeigh = 'Agar to weigh';
export const cannotTellLiquidStrength = 'Cannot tell: the liquid or the strength is missing';
export const liquidStrengthAgarWantsLiquid = (minFraction: string, habit: string) =>
  `Liquid × strength. Agar wants ${minFraction} of the liquid. ${habit}`;
export const gelatineToWeigh = 'Gelatine to weigh';
export const cannotTellSeeWhatStillNeeded = 'Cannot tell: see what is still needed below';
export const isTaken = (strengthFraction: string) => `; ${strengthFraction} is taken`;
export const thisUseWants = (
  strength: string,
  minFraction: string,
  strengthFraction: string,
  habit: string,
) => `${strength} This use wants ${minFraction}${strengthFraction}. ${habit}`;
export const leftToAdd = (addedFraction: string) => ` Left to add: ${addedFraction}.`;
export const thenWeakening = (weakening: string, habit: string) => `Then ${weakening} ${habit}`;
export const inSheets = 'In sheets';
export const cannotTellGelatineWeightSheet = 'Cannot tell: the gelatine or the weight of a sheet is missing';
export const weighWholeSheetTornNeeded = (sheets: string) =>
  `${sheets} Weigh them: a whole sheet is torn as needed.`;
export const coldWaterToSoakItIn = 'Cold water to soak it in';
export const cannotTellTheGelatineIsMissing = 'Cannot tell: the gelatine is missing';
export const asToldInGelatineOfBloom = (atStrengthBloomG: string, bloom: string) =>
  `${atStrengthBloomG} as told, in gelatine of ${bloom} bloom`;
export const rule = 'Rule';
export const beforeAcidAndAlcohol = 'Before acid and alcohol';
export const by = 'By';
export const squareRootBothEquallyFirm = 'Square root: both equally firm';
export const fromMemory = (title: string) => `${title}; from memory`;
export const linearTheKitchenShortcut = 'Linear: the kitchen shortcut';
export const howFarTheyAreApart = 'How far they are apart';
export const jellyUnderTheCrust = 'Jelly under the crust';
export const cannotTellRoomInsideCrusts = 'Cannot tell: the room inside the crusts is missing';
export const theFillingShrinks3To8 = (underCrust: string, habit: string) =>
  `${underCrust} The filling shrinks 3 to 8 %. ${habit}`;
export const pourC7786FWhen = (minC: number, maxC: number, coreMostC: number) =>
  `Pour at ${minC} to ${maxC} °C (77 to 86 °F) when the core is at ${coreMostC} °C (104 °F) or below, in two or three goes twenty minutes apart.`;
