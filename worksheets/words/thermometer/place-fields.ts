export const type0SeaBlankUnknownBoil =
  'Type 0 at the sea. Blank: unknown, and the boil is not used. The cook plan counts with it too.';
export const orThePressureHere = 'Or the pressure here';
export const readKitchenNotReducedSeaLevel =
  'Read in the kitchen, not reduced to sea level. It rules over the height.';
export const mayBeOffBy = 'May be off by, ±';
export const commonPracticeNoSourcePlanMay = 'Common practice, no source. Your plan may say less.';
export const aCheckIsGoodFor = 'A check is good for';
export const neverAfterFallCommonPracticeNo = 'And never after a fall. Common practice, no source.';
export const waterBoilsHereAt = 'Water boils here at';
export const cannotTellNoHeightNoPressure = 'Cannot tell: no height and no pressure';
export const heightAloneWeatherMovesUp1 = 'By the height alone; weather moves it by up to 1 °C.';
