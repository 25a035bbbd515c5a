import type { CookLimit, CookRuleSet } from '../limit.ts';
import { printedSeconds } from './fsis-meat.ts';

/** °F, °C as published, time for whole roasts of beef, lamb, pork and cured pork: 3-401.11(B)(2). */
const FOOD_CODE_ROASTS = [
  [130, 54.4, '112 min'],
  [131, 55.0, '89 min'],
  [133, 56.1, '56 min'],
  [135, 57.2, '36 min'],
  [136, 57.8, '28 min'],
  [138, 58.9, '18 min'],
  [140, 60.0, '12 min'],
  [142, 61.1, '8 min'],
  [144, 62.2, '5 min'],
  [145, 62.8, '4 min'],
  [147, 63.9, '134 s'],
  [149, 65.0, '85 s'],
  [151, 66.1, '54 s'],
  [153, 67.2, '34 s'],
  [155, 68.3, '22 s'],
  [157, 69.4, '14 s'],
  [158, 70.0, '0 s'],
] as const satisfies readonly (readonly [number, number, string])[];

function pair(
  id: string,
  tempF: number,
  published: number,
  printed: string,
  serves: CookLimit['serves'],
  form: CookLimit['form'],
): CookLimit {
  return {
    id,
    stated: { value: tempF, unit: 'F', published },
    hold: { s: printedSeconds(printed), printed },
    serves,
    form,
    source: 'food-code-cooking',
    mark: 'confirmed',
  };
}

const roasts = FOOD_CODE_ROASTS.map(([tempF, printedC, printed]) => ({
  ...pair(`fc-roast-${tempF}F`, tempF, printedC, printed, 'no-poultry', 'whole-roast'),
  // The degrees Celsius of this chart are roundings of the Fahrenheit: judged by the exact figure.
  stated: { value: tempF, unit: 'F' as const },
  printedC,
}));

/** Retail and restaurants. Everything with poultry, stuffed food and wild game takes 165 °F. */
export const FOOD_CODE: CookRuleSet = {
  id: 'us-food-code',
  title: 'Food Code, cooking',
  jurisdiction: 'United States, retail and restaurants',
  edition: '2022; 17 s and less than 1 s since 2017',
  reviewed: '2026-11-25',
  sources: ['food-code-cooking'],
  mark: 'confirmed',
  conditions: ['wild-game', 'roast-oven'],
  limits: [
    pair('fc-165F', 165, 74, '<1 s', 'any', 'any'),
    pair('fc-155F', 155, 68, '17 s', 'no-poultry', 'comminuted'),
    pair('fc-145F-3min', 145, 63, '3 min', 'no-poultry', 'comminuted'),
    pair('fc-150F-1min', 150, 66, '1 min', 'no-poultry', 'comminuted'),
    pair('fc-158F', 158, 70, '<1 s', 'no-poultry', 'comminuted'),
    pair('fc-145F', 145, 63, '15 s', 'no-poultry', 'intact'),
    ...roasts,
  ],
};
