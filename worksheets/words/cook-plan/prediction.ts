export const theCurveBeingComputed = 'The curve: being computed';
export const theCurveNotYetComputed = 'The curve: not yet computed';
export const theNewCurveIsBeingComputed = ' The new curve is being computed.';
export const somethingIsMissingForTheNew = ' Something is missing for the new one.';
export const itsTarget = 'its target';
export const neverIn12HOfThis = 'Never, in 12 h of this heat';
export const momentPullOutHeatAfter = 'The moment to pull: out of the heat after';
export const coreTargetHoldLimitAsksOver =
  'The core is at its target, and the hold that the limit asks for is over. Derived.';
export const carryOver = 'Carry-over';
export const lastSpotDownEndChillAfter = 'The last spot is down to the end of the chill after';
export const lethalityForInformation = 'Lethality, for information';
export const theHoldOfTheLimit = 'The hold of the limit';
export const cannotTellNoLimitIsChosen = 'Cannot tell: no limit is chosen';
export const timeColdestSpotStaysAbove =
  'Time the coldest spot stays at or above the limit’s temperature, by the curve. Derived.';
export const thePlanPredicted = 'The plan, predicted';
export const whetherCoolsTimeCannotTellNo =
  'Whether it cools in time: cannot tell, no cooling rule is chosen.';
export const leg = 'Leg';
export const atMost = 'At most';
export const takes = 'Takes';
export const band2 = 'Band';
export const so = 'So';
export const endOfCooking = 'end of cooking';
export const cannotTell = 'cannot tell';
export const notYetComputed = 'not yet computed';
export const bandNotYetComputed = 'Band: not yet computed';
export const filmsOfAirAndWater = 'Films of air and water';
export const usualRangesFromMemory = 'usual ranges, from memory';
export const ovenBathColdAgainstWhatShow = 'Oven, bath and cold, against what they show';
export const commonPracticeNoSource = 'common practice, no source';
export const howStronglyTheOvenHeatsThe = 'How strongly the oven heats the pan';
export const conductivityOfTheMix = 'Conductivity of the mix';
export const scatterOfPublishedData = 'scatter of published data';
export const coreWhenItGoesIn = 'Core when it goes in';
export const heightOfTheFill = 'Height of the fill';
export const moistureOvenOverOpenBath = 'Moisture of the oven over an open bath';
export const n5To30Kpa = '5 to 30 kPa';
export const workedOut = 'worked out';
export const howSureItIs = 'How sure it is';
export const drawingTheBand = 'Drawing the band';
export const stopDrawingTheBand = 'Stop drawing the band';
export const drawTheBand = 'Draw the band';
export const whatTheBandIsDrawnFrom = 'What the band is drawn from';
export const whatIsNotKnown = 'What is not known';
export const oneSpread = 'One spread';
export const from = 'From';
export const staleWhatStandsBelowPlan2 = (value: string) =>
  `STALE: what stands below is of the plan as it was.${value}`;
export const coreReachesAfter2 = (targetC: string) => `Core reaches ${targetC} after`;
export const band3 = (targetMin: string) => `Band: ${targetMin}`;
export const itsHoldOfIsDoneThen2 = (holdMin: string) => `Its hold of ${holdMin} is done then. `;
export const outAfterCarryOverAlone2 = (tempC: string, timeMin: string) =>
  `Out at ${tempC}, after ${timeMin}, carry-over alone is predicted to bring it to the target. No reason to pull early: only a probe left in shows it.`;
export const peak2 = (carryOverC: string, tempC: string) => `${carryOverC}, peak ${tempC}`;
export const peakAfter2 = (timeMin: string) => `Peak after ${timeMin}.`;
export const minAt70C158F2 = (wholeMin: string) => `${wholeMin} min at 70 °C (158 °F), z 10 °C (18 °F)`;
export const minOfItInTheHeat2 = (heatMin: string, wholeMin: string) =>
  `${heatMin} min of it in the heat. By z 7.5 °C (13.5 °F): ${wholeMin} min.`;
export const atOrAboveItFor2 = (heldMin: string) => `At or above it for ${heldMin}.`;
export const overTheBaseOfTheMix2 = (heightMm: string) => `${heightMm} over the base of the mix`;
export const underItsTop2 = (mixDepthMm: string) => `${mixDepthMm} under its top.`;
export const mmIn2 = (mm: string, mm2: string) => `${mm} mm (${mm2} in)`;
export const coolingByPredictedNotProof2 = (title: string) => `Cooling by ${title}, predicted, not proof`;
export const to2 = (text: string, text2: string) => `${text} to ${text2}`;
export const bandBeingDrawn2 = (done: number) => `Band: being drawn, ${done} %`;
export const or3 = (filmFactor: string) => `× or ÷ ${filmFactor}`;
export const or4 = (heatingFactor: string) => `× or ÷ ${heatingFactor}`;
export const bandNotDrawn2 = (failed: string) => `Band not drawn (${failed}).`;
export const kitchensDrawnMissCookMiss2 = (draws: number, missesCook: number, missesCooling: number) =>
  `Of ${draws} kitchens drawn, ${missesCook} miss the cook and ${missesCooling} miss the cooling rule.`;
