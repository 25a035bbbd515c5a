import type { Figure } from './figure.ts';

/** Hands, machines, heat that burns, and what is counted out. */
export const handlingFigures = {
  'hand-wash': { value: 20, unit: 's', mark: 'common-practice' },
  'sick-clear': { value: 48, unit: 'h', mark: 'memory', source: 'eu-852-2004' },
  'bath-any': { value: [75, 95], unit: 'C', mark: 'common-practice' },
  'scald-temp': { value: 60, unit: 'C', mark: 'memory', source: 'scald-times' },
  'scald-time': { value: 5, unit: 's', mark: 'memory', source: 'scald-times' },
  'hot-fat': { value: [80, 110], unit: 'C', mark: 'common-practice' },
  'shot-trim': { value: 100, unit: 'mm', mark: 'memory', source: 'lead-game-advice' },
  'lift-limit': { value: [20, 25], unit: 'kg', mark: 'memory', source: 'workplace-safety' },
  'sulphite-declare': { value: 10, unit: 'mg/kg', mark: 'memory', source: 'eu-1169-2011' },
  'boil-marinade': { value: 1, unit: 'min', bound: 'at-least', mark: 'common-practice' },
  'probe-tolerance': { value: 1, unit: 'dC', mark: 'memory', source: 'us-food-code-handling' },
} as const satisfies Record<string, Figure>;
