import { coolFacts, coolFactsOf, UNKNOWN_COOL_FACTS } from '@larderwright/calc/cooling';
import { describe, expect, it } from 'vitest';

const cured = {
  ingoingPpmMeat: 180,
  ingoingPpmTotal: 116,
  saltOnWaterFraction: 0.0287,
  saltOnWaterMinFraction: 0.0287,
  acceleratorPpmMeat: 541,
  acceleratorPpmTotal: 349,
  liverFraction: 0,
};
const nothing = { cured: { ...cured, ingoingPpmMeat: 0, ingoingPpmTotal: 0 } };

// House rules: cured limits are open only to what is shown to be cured to its core.
describe('coolFactsOf', () => {
  it('counts the brine where there is one that reaches the core', () => {
    expect(coolFactsOf(nothing, { cured, reachesCore: true })).toEqual(coolFacts({ cured }));
  });

  it.each([false, null])(
    'knows nothing of a brine whose reach is %s, whatever the formula says',
    (reachesCore) => {
      expect(coolFactsOf({ cured }, { cured, reachesCore })).toEqual(UNKNOWN_COOL_FACTS);
    },
  );

  it('counts the formula where there is no brine', () => {
    expect(coolFactsOf({ cured }, null)).toEqual(coolFacts({ cured }));
    expect(coolFactsOf(null, null)).toEqual(UNKNOWN_COOL_FACTS);
  });
});
