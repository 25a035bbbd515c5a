import { binderSources } from './binder.ts';
import { casingsSources } from './casings.ts';
import { chillBudgetSources } from './chill-budget.ts';
import { coolingSources } from './cooling.ts';
import { cureSources } from './cure.ts';
import { curingSources } from './curing.ts';
import { formulaSources } from './formula.ts';
import { geleeSources } from './gelee.ts';
import { growthSources } from './growth.ts';
import { heatSources } from './heat.ts';
import { ingredientsSources } from './ingredients.ts';
import { labelSources } from './label.ts';
import { lethalitySources } from './lethality.ts';
import { mouldSources } from './mould.ts';
import { referenceSources } from './reference.ts';
import { seasoningSources } from './seasoning.ts';
import { thermometerSources } from './thermometer.ts';
import { trendsSources } from './trends.ts';
import { yieldSources } from './yield.ts';

/** Every published source the project leans on, by id. */
export const SOURCES = {
  ...ingredientsSources,
  ...formulaSources,
  ...cureSources,
  ...curingSources,
  ...mouldSources,
  ...yieldSources,
  ...lethalitySources,
  ...coolingSources,
  ...growthSources,
  ...heatSources,
  ...thermometerSources,
  ...binderSources,
  ...casingsSources,
  ...chillBudgetSources,
  ...geleeSources,
  ...seasoningSources,
  ...referenceSources,
  ...labelSources,
  ...trendsSources,
} as const;
