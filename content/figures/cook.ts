import type { Figure } from './figure.ts';
import { freezing, hold } from './from-calc.ts';

const HEV = hold('hev-advisory', 'hev-71C-20min');
const FREEZE_A = freezing('trichinella-freezing-pieces', 0);
const FREEZE_B = freezing('trichinella-freezing-pieces', 1);
const FREEZE_C = freezing('trichinella-freezing-pieces', 2);

/** Bath, core and probe. Limits themselves stand in calc/lethality and are shown by rule set. */
export const cookFigures = {
  'bath-country': { value: [75, 82], unit: 'C', mark: 'common-practice' },
  'bath-smooth': { value: [70, 78], unit: 'C', mark: 'common-practice' },
  'bath-act': { value: 88, unit: 'C', bound: 'above', mark: 'common-practice' },
  'bath-curdle': { value: 80, unit: 'C', bound: 'above', mark: 'common-practice' },
  'oven-bath': { value: [130, 160], unit: 'C', mark: 'common-practice' },
  'core-country': { value: [70, 75], unit: 'C', mark: 'common-practice' },
  'hev-temp': HEV.temp,
  'hev-time': HEV.time,
  'trichinella-cook': { value: 71, unit: 'C', bound: 'at-least', mark: 'memory', source: 'eu-2015-1375' },
  'trichinella-freeze-a-temp': FREEZE_A.temp,
  'trichinella-freeze-a-time': FREEZE_A.time,
  'trichinella-freeze-b-temp': FREEZE_B.temp,
  'trichinella-freeze-b-time': FREEZE_B.time,
  'trichinella-freeze-c-temp': FREEZE_C.temp,
  'trichinella-freeze-c-time': FREEZE_C.time,
  'trichinella-freeze-thickness': FREEZE_A.thickness,
  'probe-depth': { value: 5, unit: 'stem diameters', bound: 'at-least', mark: 'common-practice' },
  'log-early': { value: [10, 15], unit: 'min', mark: 'common-practice' },
  'log-late': { value: [2, 5], unit: 'min', mark: 'common-practice' },
  'carry-over': { value: [3, 10], unit: 'dC', mark: 'common-practice' },
  'thickness-time': { value: 1.8, unit: 'times', mark: 'derived' },
  'probe-example': { value: 1, unit: 'dC', mark: 'derived' },
  'boil-drop-by': { value: 1, unit: 'dC', mark: 'derived' },
  'boil-drop': { value: 300, unit: 'm', mark: 'derived' },
  'tray-drop': { value: [8, 12], unit: 'dC', mark: 'common-practice' },
  'ice-point': { value: 0, unit: 'C', mark: 'derived' },
} as const satisfies Record<string, Figure>;
