export const withoutNeedles = 'Days it would take by soaking alone';
export const cannotTellWaterSaltCuringSalt = 'Cannot tell: water, salt and curing salt are not all known';
export const inAll = (pickleG: string) => `, ${pickleG} in all`;
export const thisBrine = (pickleG: string) => `This brine${pickleG}`;
export const brineToInjectIntoAllThe = 'Brine to inject into all the meat';
export const meatShareInjectedBrineNeedles =
  'Meat × share injected. Brine for the needles and the hose comes on top. Derived.';
export const injectUntilItAllWeighs = 'Inject until it all weighs';
export const meat1ShareInjectedDerived = 'Meat × (1 + share injected). Derived.';
export const drainedItShouldWeigh = 'Drained, it should weigh';
export const meat1ShareInjectedShareStays = 'Meat × (1 + share injected × share that stays). Derived.';
export const pumpedAsWeighed = 'Pumped, as weighed';
export const weightAfterNeedlesGreenWeight =
  '(Weight after the needles − green weight) ÷ green weight. Derived.';
export const cannotTellBrineStoppedClockNot =
  'Cannot tell: this brine is stopped by the clock, not by evening out';
export const cannotTellMeatWaterBrineSalt =
  'Cannot tell: meat, its water, the brine and its salt are not all known';
export const saltInTheMeatAtThe = 'Salt in the meat, at the end';
export const ofSaltInTheMeat = (saltInMeat: string) => `: ${saltInMeat} of salt in the meat`;
export const saltWaterMeatAllWaterMeat = (saltInMeat: string) =>
  `Salt × water in the meat ÷ all water${saltInMeat}. The meat holds as much of the salt as it holds of the water. Derived: mass balance; no water is taken to move.`;
export const saltOnItsWater = 'Salt on its water';
export const saltSaltAllWaterSameInside =
  'Salt ÷ (salt + all water), the same inside and outside. Derived: its definition.';
export const waterActivityEstimated = 'Water activity, estimated';
export const to = (low: string, high: string) => `${low} to ${high}`;
export const saltAloneFormsPitzerMayorga =
  'From salt alone, by the forms of Pitzer and Mayorga (1973) and of Resnik and Chirife (both from memory). Plan by the higher one. Only an instrument decides.';
export const needlesBringBrineCoreOnceDays =
  'The needles bring brine to the core at once. The days of your plan even it out.';
export const byTheTimeYouWroteOut = (readyFrom: string) => `By the time you wrote: out on ${readyFrom}.`;
