export const saltOnTheWaterOfThe = 'Salt on the water of the mix';
export const cannotTellSaltWaterNotKnown = 'Cannot tell: salt or water is not known';
export const cannotTellAtLeast = (saltOnWaterMinFraction: string) =>
  `Cannot tell: at least ${saltOnWaterMinFraction}`;
export const whatBacteriaMeetSaltWholeMix = (saltOnWater: string) =>
  `${saltOnWater} It is what bacteria meet; salt on the whole mix says nothing of keeping.`;
export const here = (grams: string, grams2: string) => ` Here ${grams} ÷ (${grams} + ${grams2}).`;
export const saltInTheFinishedSliceAbout = 'Salt in the finished slice, about';
export const cannotTellSaltIngredientNot = 'Cannot tell: the salt of an ingredient is not known';
export const hereWentCameOutLessDerived = (
  finishedSalt: string,
  ingoingG: string,
  finishedG: string,
  lossFraction: string,
) =>
  `${finishedSalt} Here ${ingoingG} went in and ${finishedG} came out, ${lossFraction} less. Derived: mass balance.`;
export const reckonedElsewhere =
  'Cannot tell here. This batch has a brine or a dry cure: its salt is reckoned on that worksheet. The formula holds the bare meat.';
