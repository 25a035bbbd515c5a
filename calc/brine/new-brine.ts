import { newCuringSaltPack } from '../dry-cure/index.ts';
import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { BrineSlice } from './slice.ts';

/**
 * An empty brine. Meat water 72 %, salt 2.2 %, injection 10 %, retained 90 % and 3 °C are defaults of
 * common practice. Nitrite, its strength and the pick-up have none.
 */
export function newBrineSlice(): BrineSlice {
  return {
    product: null,
    finish: null,
    isTraditional: false,
    method: null,
    skinOff: blankEntry('g'),
    skinOn: blankEntry('g'),
    heaviest: blankEntry('g'),
    thickness: blankEntry('mm'),
    meatWater: defaultEntry('72', '%'),
    water: blankEntry('g'),
    saltTarget: defaultEntry('2.2', '%'),
    saltBase: 'meat-and-water',
    strength: blankEntry('%'),
    sugar: blankEntry('%'),
    nitriteTarget: blankEntry('ppm'),
    pack: newCuringSaltPack(),
    acceleratorForm: null,
    acceleratorTarget: blankEntry('ppm'),
    phosphate: blankEntry('%'),
    injection: defaultEntry('10', '%'),
    retained: defaultEntry('90', '%'),
    pickUp: blankEntry('%'),
    federalMethod: null,
    afterInjection: blankEntry('g'),
    afterBrine: blankEntry('g'),
    brineTemp: defaultEntry('3', 'C'),
    days: blankEntry('d'),
    mixedOn: '',
    startedOn: '',
    use: null,
    actual: {
      water: blankEntry('g'),
      salt: blankEntry('g'),
      curingSalt: blankEntry('g'),
      sugar: blankEntry('g'),
      accelerator: blankEntry('g'),
      phosphate: blankEntry('g'),
    },
  };
}
