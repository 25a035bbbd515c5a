import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { ChillKind, ChillLeg, CookPlanSlice, OvenRecord } from './slice.ts';

/** Temperatures a chill is usually held at, °C. Common practice, no source. */
const USUAL_CHILL_C: Readonly<Record<ChillKind, string>> = {
  'ice-bath': '1',
  'stirred-ice-bath': '1',
  blast: '1',
  refrigerate: '3',
};
/** A stage of the chill from the hot ends here, °C, unless told; the last at 5 °C. Common practice, no source. */
const USUAL_UNTIL_C: Readonly<Record<ChillKind, string>> = {
  'ice-bath': '20',
  'stirred-ice-bath': '20',
  blast: '5',
  refrigerate: '5',
};

/**
 * A plan with nothing chosen. Every value is a default and marked as one; the mould is of stoneware, the slowest.
 * Composition of a coarse pork mix, a quarter fat; the rest common practice, no source.
 */
export function newCookPlanSlice(): CookPlanSlice {
  return {
    mouldId: null,
    vessel: 'stoneware',
    wall: blankEntry('mm'),
    lid: 'open',
    water: defaultEntry('57.5', '%'),
    protein: defaultEntry('16', '%'),
    fat: defaultEntry('24.5', '%'),
    start: defaultEntry('4', 'C'),
    method: 'bath',
    oven: defaultEntry('150', 'C'),
    fan: 'still',
    steam: defaultEntry('85', 'C'),
    kettle: defaultEntry('80', 'C'),
    bathWater: defaultEntry('3', 'kg'),
    bathStart: defaultEntry('60', 'C'),
    cover: 'open',
    panLength: defaultEntry('350', 'mm'),
    panWidth: defaultEntry('250', 'mm'),
    panHeight: defaultEntry('70', 'mm'),
    mouldsInPan: defaultEntry('1', 'count'),
    level: blankEntry('mm'),
    altitude: defaultEntry('0', 'm'),
    ovenRecord: shippedOven(),
    target: blankEntry('C'),
    hold: blankEntry('min'),
    rest: defaultEntry('15', 'min'),
    room: defaultEntry('20', 'C'),
    press: blankEntry('min'),
    pressAir: defaultEntry('3', 'C'),
    chill: [newChillLeg('chill-1', 'refrigerate')],
  };
}

/** No kitchen learnt yet. */
export function shippedOven(): OvenRecord {
  return {
    name: '',
    films: defaultEntry('1', 'ratio'),
    heating: defaultEntry('1', 'ratio'),
    shift: defaultEntry('0', 'dC'),
  };
}

/** A stage of the chill as it is usually run. */
export function newChillLeg(id: string, kind: ChillKind): ChillLeg {
  return {
    id,
    kind,
    temp: defaultEntry(USUAL_CHILL_C[kind], 'C'),
    minutes: blankEntry('min'),
    until: defaultEntry(USUAL_UNTIL_C[kind], 'C'),
    standing: 'apart',
    top: 'open',
  };
}
