import * as say from '#words/cook-plan/names.ts';

const FIELDS: Readonly<Record<string, string>> = {
  'mould.moulds': say.aMouldMouldLiningAndFill,
  'mould.density': say.densityMixMouldLiningFill,
  'cookPlan.mouldId': say.whichMouldItIsPlannedFor,
  'cookPlan.wall': say.theWallOfTheMould,
  'cookPlan.start': say.theCoreWhenItGoesIn,
  'cookPlan.oven': say.theOven,
  'cookPlan.steam': say.theSteamOven,
  'cookPlan.kettle': say.theKettle,
  'cookPlan.bathWater': say.theWaterInThePan,
  'cookPlan.bathStart': say.howWarmTheWaterGoesIn,
  'cookPlan.panLength': say.howLongThePanIs,
  'cookPlan.panWidth': say.howWideThePanIs,
  'cookPlan.panHeight': say.howDeepThePanIs,
  'cookPlan.mouldsInPan': say.howManyMouldsShareThePan,
  'cookPlan.level': say.howHighTheWaterStands,
  'cookPlan.altitude': say.theHeightAboveTheSea,
  'cookPlan.ovenRecord.films': say.howWellAirWaterGiveHeat,
  'cookPlan.ovenRecord.heating': say.howStronglyTheOvenHeatsThe,
  'cookPlan.ovenRecord.shift': say.howFarTheOvenIsOff,
  'cookPlan.water': say.whatTheMixIsMadeOf,
  'cookPlan.target': say.coreReachTypeChooseLimit,
  'cookPlan.hold': say.howLongItIsKeptIn,
  'cookPlan.rest': say.howLongItRests,
  'cookPlan.room': say.theRoom,
  'cookPlan.press': say.howLongItIsPressed,
  'cookPlan.pressAir': say.theAirItIsPressedIn,
  'cookPlan.chill': say.aChill,
  'process.cookRuleSetId': say.whoseRuleOnCooking,
  'process.cookLimitId': say.theOneLimitThePlanNames,
  'process.coolRuleSetId': say.whoseRuleOnCooling,
};
const CHILL: Readonly<Record<string, string>> = {
  temp: say.howColdAStageOfThe,
  minutes: say.howLongAStageOfThe,
  until: say.coreStageChillEnds,
};

/** An input of the cook plan in the middle of a sentence. */
export function planFieldName(field: string): string {
  const known = FIELDS[field];
  if (known !== undefined) return known;
  if (field.startsWith('mould.moulds.')) return say.measuresHeadspaceLiningMould;
  const [, list, , key = ''] = field.split('.');
  return list === 'chill' ? (CHILL[key] ?? field) : field;
}
