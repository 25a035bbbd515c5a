import type { Figure } from './figure.ts';

/** Bath, core and probe. Limits themselves stand in calc/lethality and are shown by rule set. */
export const cookFigures = {
  'bath-country': { value: [75, 82], unit: 'C', mark: 'common-practice' },
  'bath-smooth': { value: [70, 78], unit: 'C', mark: 'common-practice' },
  'bath-act': { value: 88, unit: 'C', bound: 'above', mark: 'common-practice' },
  'bath-curdle': { value: 80, unit: 'C', bound: 'above', mark: 'common-practice' },
  'oven-bath': { value: [130, 160], unit: 'C', mark: 'common-practice' },
  'core-country': { value: [70, 75], unit: 'C', mark: 'common-practice' },
  'hev-temp': { value: 71, unit: 'C', bound: 'at-least', mark: 'confirmed', source: 'hev-barnaud-2012' },
  'hev-time': { value: 20, unit: 'min', mark: 'confirmed', source: 'hev-barnaud-2012' },
  'trichinella-cook': { value: 71, unit: 'C', bound: 'at-least', mark: 'memory', source: 'eu-2015-1375' },
  'trichinella-freeze-a-temp': { value: -15, unit: 'C', mark: 'confirmed', source: 'us-9-cfr-318-10' },
  'trichinella-freeze-a-time': { value: 20, unit: 'd', mark: 'confirmed', source: 'us-9-cfr-318-10' },
  'trichinella-freeze-b-temp': { value: -23.3, unit: 'C', mark: 'confirmed', source: 'us-9-cfr-318-10' },
  'trichinella-freeze-b-time': { value: 10, unit: 'd', mark: 'confirmed', source: 'us-9-cfr-318-10' },
  'trichinella-freeze-c-temp': { value: -28.9, unit: 'C', mark: 'confirmed', source: 'us-9-cfr-318-10' },
  'trichinella-freeze-c-time': { value: 6, unit: 'd', mark: 'confirmed', source: 'us-9-cfr-318-10' },
  'trichinella-freeze-thickness': { value: 150, unit: 'mm', mark: 'confirmed', source: 'us-9-cfr-318-10' },
  'probe-depth': { value: 5, unit: 'stem diameters', bound: 'at-least', mark: 'common-practice' },
  'log-early': { value: [10, 15], unit: 'min', mark: 'common-practice' },
  'log-late': { value: [2, 5], unit: 'min', mark: 'common-practice' },
  'carry-over': { value: [3, 10], unit: 'dC', mark: 'common-practice' },
  'thickness-time': { value: 1.8, unit: 'times', mark: 'derived' },
  'boil-drop': { value: 300, unit: 'm', mark: 'derived' },
  'tray-drop': { value: [8, 12], unit: 'dC', mark: 'common-practice' },
  'ice-point': { value: 0, unit: 'C', mark: 'derived' },
} as const satisfies Record<string, Figure>;
