import {
  type ChillBudgetFindingId,
  FAT_MELTING_JKGK,
  type LotKind,
  type PassKind,
  type TemperRefusal,
} from '@larderwright/calc/chill-budget';
import { fixedText, plainText, type Rounding, toBase } from '@larderwright/calc/quantities';
import { LOT_KIND_NAMES, PASS_KIND_NAMES } from './chill-budget-names.ts';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const chillBudgetFigureNames: Readonly<Record<string, string>> = {
  'chill-budget.end': 'the temperatures of the mix',
  'chill-budget.ice': 'the ice and the chill to begin with',
  'chill-budget.margin': 'the minutes there are',
};

export const temperRefusalWords: Readonly<Record<TemperRefusal, string>> = {
  'no-measures': 'Cubes of 5 to 80 mm and a freezer down to −40 °C (−40 °F) can be reckoned.',
  'not-below-freezing': 'The freezer must be at −2 °C (28 °F) or below.',
  'already-frozen': 'At −1.7 °C (29 °F) the meat is freezing already.',
};

/** A temperature in both scales. What a mix comes to is rounded up, as beside its steps. */
const temp = (value: unknown, rounding: Rounding = 'nearest') => {
  const celsius = Number(value);
  const fahrenheit = celsius / toBase(1, 'dF') + 32;
  return `${fixedText(celsius, 1, rounding)} °C (${fixedText(fahrenheit, 1, rounding)} °F)`;
};
const grams = (value: unknown) => `${fixedText(Number(value), 0)} g`;
const lot = (p: Readonly<Record<string, string | number>>) =>
  p.name || LOT_KIND_NAMES[p.kind as LotKind] || 'A lot';
const pass = (p: Readonly<Record<string, string | number>>) =>
  `Pass ${p.pass} (${(PASS_KIND_NAMES[p.kind as PassKind] ?? '').toLowerCase()})`;

/** The words of every finding of the chill budget. */
export const chillBudgetWords = {
  'chill-budget.end-too-warm': (p) => ({
    title: `The mix ends at ${temp(p.endC, 'up')}; this kind of mix wants ${temp(p.limitC)} at most.`,
    body: 'Begin colder, add the ice shown, or chill between passes. Warm fat smears and runs out in the cook.',
  }),
  'chill-budget.pass-too-warm': (p) => ({
    title: `${pass(p)} ends at ${temp(p.tempC, 'up')}.`,
    body: `Above ${temp(p.mostC)} stop, chill meat and machine, and go on.`,
  }),
  'chill-budget.rechill-now': (p) => ({
    title: `${pass(p)} ends at ${temp(p.tempC, 'up')}.`,
    body: `Above ${temp(p.mostC)} take it off the machine and get it cold again within half an hour.`,
  }),
  'chill-budget.start-too-warm': (p) => ({
    title: `${lot(p)} goes in at ${temp(p.tempC)}.`,
    body: `Chill it to ${temp(p.mostC)} or below first.`,
  }),
  'chill-budget.fat-too-warm': (p) => ({
    title: `${lot(p)} goes in at ${temp(p.tempC)}.`,
    body: `Above ${temp(p.mostC)} fat smears on the plate. Best is −4 to −2 °C (25 to 28 °F).`,
  }),
  'chill-budget.too-hard': (p) => ({
    title: `${pass(p)} runs at ${temp(p.tempC, 'up')}.`,
    body: `Below ${temp(p.leastC)} most meat is too hard for knife and plate.`,
  }),
  'chill-budget.ice-over-liquid': (p) => ({
    title: `${grams(p.iceG)} of ice; the formula allows ${grams(p.allowedG)} of water.`,
    body: 'Begin colder instead, or chill between passes.',
  }),
  'chill-budget.ice-is-added-water': (p) => ({
    title: `${grams(p.iceG)} of ice is water added to the formula.`,
    body: 'Put it into the formula as liquid. Salt, fat and added water are then right.',
  }),
  'chill-budget.ice-melts-nothing': (p) => ({
    title: `Ice cannot cool a mix to ${temp(p.limitC)}.`,
    body: 'Below 0 °C (32 °F) it no longer melts. Freeze part of the meat instead.',
  }),
  'chill-budget.pre-chill-too-cold': (p) => ({
    title: `No chill in this freezer keeps the mix at ${temp(p.limitC)} by itself.`,
    body: 'Use ice, fewer passes, or rest it in the cold between passes.',
  }),
  'chill-budget.ice-too-warm': (p) => ({
    title: `Ice at ${temp(p.tempC)} is water.`,
    body: 'Type the temperature of the freezer it comes from.',
  }),
} satisfies Words<ChillBudgetFindingId>;

/** How each figure is worked out. */
export const chillBudgetWorkings = {
  endC: 'The heat of every lot and the friction of the passes added up; the temperature at which the whole mix holds just that. Temperatures are never averaged: ice in the meat takes up heat without warming.',
  fat: `Solid fat takes 2.0 kJ to warm a kilogram by a degree (Choi and Okos 1986); melting takes ${plainText(FAT_MELTING_JKGK / 1000)} kJ more for each degree from 0 to 21 °C, derived from figures for lard (James and James, Meat refrigeration, 2002, table 13.6).`,
  work: 'What a pass would warm thawed meat by, times the heat that warms it one degree.',
  ice: 'Heat the mix has too much of, divided by what a gram of ice takes up: warming to 0 °C, melting, warming to the end.',
  preChill:
    'One temperature for all meat and fat at the start, at which the mix ends at its limit without more ice.',
  margin:
    'Heat to the limit, divided by what room air gives a layer of meat at 12 W/(m²·K) on both faces. The skin is warmer than the middle, so look at it as the most there is.',
  temper:
    'A cube of lean in freezer air by the heat engine. Firm: the middle of a face at −2 °C (28.4 °F). Stiff: a fifth of its water is ice. Half: solid.',
} as const;
