import { fixedText } from '@larderwright/calc/quantities';
import type { ThermometerFindingId } from '@larderwright/calc/thermometer';
import type { Words } from './wording.ts';

type P = Readonly<Record<string, string | number>>;

const named = (p: P) => (p.name ? String(p.name) : 'This thermometer');
/** A difference in both scales, never shown smaller than it is. */
const apart = (value: unknown) => {
  const celsius = Math.abs(Number(value));
  return `${fixedText(celsius, 1, 'up')} °C (${fixedText(celsius * 1.8, 1, 'up')} °F)`;
};
const side = (value: unknown) => (Number(value) > 0 ? 'too much' : 'too little');
const place = (where: unknown) => (where === 'ice' ? 'in ice' : 'in boiling water');

/** The words of the check of a thermometer. */
export const thermometerWords = {
  'thermometer.check-met': (p) => ({
    title: `${named(p)} is within ± ${apart(p.toleranceC)}.`,
    body: p.dueOn ? `Good until ${p.dueOn}, or until it is dropped.` : '',
  }),
  'thermometer.check-failed': (p) => ({
    title: p.where
      ? `${named(p)} shows ${apart(p.offsetC)} ${side(p.offsetC)} ${place(p.where)}. The most it may be off is ${apart(p.toleranceC)}.`
      : `${named(p)} is off by more than ± ${apart(p.toleranceC)}.`,
    body: 'Take it out of use. Do not go on with a correction in your head. What was cooked since its last good check is on hold.',
  }),
  'thermometer.not-checked': (p) => ({
    title: `${named(p)} has no check that can be read.`,
    body: 'Read it in ice, and in boiling water with the height or the pressure filled in.',
  }),
  'thermometer.no-tolerance': () => ({
    title: 'No tolerance is written down, so nothing can be within it.',
    body: 'Write the most a thermometer may be off.',
  }),
  'thermometer.no-date': (p) => ({
    title: `Nobody wrote down when ${named(p)} was checked.`,
    body: 'Without a day the check counts for no log.',
  }),
  'thermometer.check-old': (p) => ({
    title: `The check of ${named(p)} is too far from the day it is used${p.dueOn ? `: it was good until ${p.dueOn}` : ''}.`,
    body: 'Check it again. Until then its logs cannot be judged.',
  }),
  'thermometer.boil-unknown': (p) => ({
    title: `${named(p)} was read in boiling water, but nothing says where water boils here.`,
    body: 'Fill in the height of the kitchen, or its pressure. The reading is left out until then.',
  }),
  'thermometer.one-point': (p) => ({
    title: `${named(p)} was read ${place(p.where)} alone.`,
    body: 'One point tells nothing of the other end of the scale. Check the other too.',
  }),
  'thermometer.place-unusable': () => ({
    title: 'That is no height or pressure of a kitchen.',
    body: 'Height from 0 to 5500 m; pressure at the kitchen from 500 to 1100 hPa, not reduced to sea level.',
  }),
  'thermometer.error-blank': (p) => ({
    title: `How far ${named(p)} may still be off is not written down.`,
    body: 'Its maker prints it. Without it no action temperature and no verdict of its logs can be given.',
  }),
} satisfies Words<ThermometerFindingId>;

/** How each figure is worked out. */
export const thermometerWorkings = {
  boil: 'From the height: 101.325 kPa × (1 − 2.25577 × 10⁻⁵ × height in m)^5.25588, the standard atmosphere. Then the temperature at which water has that vapour pressure, by Hyland and Wexler (from memory, within 0.05 °C of steam tables). Weather alone moves it by up to 1 °C; a pressure read in the kitchen does not have that error.',
  offset:
    'What it shows less what it should: 0 °C in ice, the local boiling point in boiling water. In between along a straight line.',
  action:
    'Limit, plus what the thermometer shows too much there, plus its error, rounded up to the next step of its display. What it shows too little is not taken off.',
} as const;
