import type { CookPlanFindingId } from '@larderwright/calc/cook-plan';
import type { Params } from '@larderwright/calc/findings';
import { fixedText, type Rounding, toBase } from '@larderwright/calc/quantities';
import { durationWords } from '../parts/clock-text.ts';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const cookPlanFigureNames: Readonly<Record<string, string>> = {
  'cook-plan.curve': 'the curve',
  'cook-plan.limit': 'what the limit says of it',
  'cook-plan.cooling': 'what the cooling rule says of it',
};

const temp = (value: unknown, rounding: Rounding = 'nearest') => {
  const celsius = Number(value);
  return `${fixedText(celsius, 0, rounding)} °C (${fixedText(celsius / toBase(1, 'dF') + 32, 0, rounding)} °F)`;
};
const time = (value: unknown) => durationWords(Math.max(2, Number(value)), 'up');
const length = (value: unknown) => `${fixedText(Number(value), 0)} mm`;

const leg = (p: Params) =>
  p.fromC === undefined ? `the end of cooking to ${temp(p.toC)}` : `${temp(p.fromC)} to ${temp(p.toC)}`;

/** The words of every finding of the cook plan. All of it is predicted; none of it is proof. */
export const cookPlanWords = {
  'cook-plan.never-reaches': (p) => ({
    title: `This plan never brings the core to ${temp(p.targetC)}: it gets to ${temp(p.peakC, 'down')} in ${p.hours} h.`,
    body: 'Change the heat, the mould or the start. Predicted.',
  }),
  'cook-plan.hold-not-met': (p) => ({
    title: `This plan does not hold ${temp(p.thresholdC)} as long as the limit asks.`,
    body:
      Number(p.heldMin) > 0
        ? `It holds it ${time(p.heldMin)}, the limit asks for ${Number(p.holdMin) > 0 ? time(p.holdMin) : 'one reading'}. Predicted.`
        : `The core peaks at ${temp(p.peakC, 'down')}. Predicted.`,
  }),
  'cook-plan.counts-on-carry-over': (p) => ({
    title: `Taken out at ${temp(p.targetC)}, the core meets ${temp(p.thresholdC)} by carry-over alone.`,
    body: 'Carry-over is the least sure part of any prediction. Leave the probe in and read the peak.',
  }),
  'cook-plan.come-up-slow': (p) => ({
    title: `The core takes ${time(p.comeUpMin)} from 10 °C to 54 °C (50 °F to 130 °F); ${time(p.mostMin)} is the most.`,
    body: 'A toxin made in that time is not undone by cooking. Predicted.',
  }),
  'cook-plan.cools-too-slowly': (p) => ({
    title: `This plan does not cool in time: ${leg(p)} must take ${time(p.maxMin)} at most${
      p.elapsedMin === undefined ? '.' : `, and takes ${time(p.elapsedMin)}.`
    }`,
    body: 'A shallower mould, ice water, or a blast chiller. Do not cook it until it can be cooled. Predicted.',
  }),
  'cook-plan.chill-ends-early': (p) => ({
    title: `The chill of this plan ends at ${temp(p.endC, 'up')}; the rule goes on to ${temp(p.toC)}.`,
    body: 'Let the last stage run until the core reads that, or make it colder.',
  }),
  'cook-plan.chill-starts-late': (p) => ({
    title: `Rest and press take ${time(p.waitMin)}; the chill must begin within ${time(p.maxMin)}.`,
    body: 'Shorten them.',
  }),
  'cook-plan.cure-not-shown': (p) => ({
    title: `${p.ruleSet} is for cured products, and the cure of this batch is not shown to be enough.`,
    body: 'So nothing is called within. See Salt and cure.',
  }),
  'cook-plan.mix-assumed': () => ({
    title: 'Counted with the composition below: the formula does not say what this mix is made of.',
    body: 'Fill the formula, or type water, protein and fat.',
  }),
  'cook-plan.pan-full': () => ({
    title: 'So many moulds leave no water in this pan.',
    body: '',
  }),
  'cook-plan.water-over-pan': (p) => ({
    title: `The water stands ${length(p.levelMm)} high in a pan of ${length(p.panMm)}.`,
    body: 'Less water, or a deeper pan. Carry no full pan of hot water.',
  }),
  'cook-plan.water-over-rim': (p) => ({
    title: `The water stands ${length(p.levelMm)} high; the rim of the mould is at ${length(p.rimMm)}.`,
    body: 'It would run in.',
  }),
  'cook-plan.water-low': (p) => ({
    title: `The water stands only ${length(p.levelMm)} high at the mould.`,
    body: 'Two thirds up is usual: common practice, no source.',
  }),
  'cook-plan.bath-below-target': (p) => ({
    title: `An open bath in this oven settles near ${temp(p.settlesC)}, under the target of ${temp(p.targetC)}.`,
    body: 'Cover it, or put a thermometer in the water and go by that.',
  }),
} satisfies Words<CookPlanFindingId>;

/** How each figure is worked out. */
export const cookPlanWorkings = {
  curve:
    'Heat flowing through the mix in three dimensions, minute by minute: properties from its water, protein and fat; lining, wall and lid as layers; a bath that warms itself in the oven; the whole field handed from each stage to the next. The fat melts between 0 and 50 °C (32 and 122 °F) as pork fat does, and takes heat for it.',
  carryOver: 'Hottest the coldest spot gets, less what it reads when the heating ends.',
  pull: 'Found by trying: taken out at this core, carry-over brings the coldest spot just to the target.',
  cooling:
    'By the hottest spot of the middle line, from the end of heating. The surface is long cold by then.',
  value:
    'Pasteurisation value of the coldest spot: minutes at 70 °C that its curve is worth. Of information only; no verdict rests on it.',
  band: 'The plan is run again in 200 kitchens drawn at random from the spreads below, always the same ones. Nine in ten lie in the band. It is never drawn narrower than a fifth either way.',
} as const;

/** What the mix is counted as. */
export const mixWords = {
  melting: (fat: string) =>
    `Counted with the melting of its fat (${fat} of the mix), as pork fat melts: it makes a fatty mix slower to warm and to cool by several per cent. Other fats melt elsewhere.`,
  fold: 'What the mix is counted as',
  parts: (water: string, protein: string, fat: string) =>
    `Water ${water}, protein ${protein}, fat ${fat}, salt and the rest beside them: properties of each part by temperature (Choi and Okos 1986), mixed as the ASHRAE handbook does.`,
  density: (gPerMl: string) => `${gPerMl} g/mL in the mould`,
  air: (share: string) => `, of which ${share} of the volume is air.`,
  ice: (tempC: string) => `Its water freezes from ${tempC} °C down.`,
  heatOfMelting: (kJ: string) =>
    `Melting takes ${kJ} kJ for each kg of mix, spread over 0 to 50 °C. Derived.`,
  caption: 'The mix, by its temperature',
  coldest: 'Probe here: the coldest spot as the heat ends',
  coldestWorking:
    'Sought on the upright middle line through the whole body, not assumed to be its middle. Along the mould it is half way.',
} as const;
