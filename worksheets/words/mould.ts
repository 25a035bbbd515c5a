import type { Params } from '@larderwright/calc/findings';
import type { MouldFindingId } from '@larderwright/calc/mould';
import { fixedText } from '@larderwright/calc/quantities';
import { limitTemp } from './limit-temp.ts';
import type { Words } from './wording.ts';

const number = (p: Params, key: string, decimals: number) => fixedText(Number(p[key]), decimals);
const percent = (p: Params, key: string) => `${fixedText(Math.abs(Number(p[key])) * 100, 0)} %`;
const mouldName = (p: Params) => (p.mould ? String(p.mould) : 'The mould');

/** The words of every finding on moulds. */
export const mouldWords = {
  'mould.water-differs': (p) => ({
    title: `${mouldName(p)}: water and measures are ${percent(p, 'differenceFraction')} apart.`,
    body: `Water says ${number(p, 'waterMl', 0)} mL, the measures say ${number(p, 'calculatedMl', 0)} mL. The water is used. Measure the inside again.`,
  }),
  'mould.chill-depth': (p) => ({
    title: `${mouldName(p)} is filled ${number(p, 'fillDepthMm', 0)} mm deep.`,
    body: `More than ${number(p, 'limitMm', 0)} mm cools slowly. Use a shallower mould, or plan ice or a blast chiller and log the core.`,
  }),
  'mould.headspace-small': (p) => ({
    title: `${mouldName(p)}: ${number(p, 'headspaceMm', 0)} mm of headspace is little.`,
    body: `The mix swells as it cooks. Leave at least ${number(p, 'leastMm', 0)} mm, in an open terrine about 10 mm, unless a vented lid holds it down.`,
  }),
  'mould.no-room': (p) => ({
    title: `${mouldName(p)}: nothing is left to fill.`,
    body: `Headspace of ${number(p, 'headspaceMm', 0)} mm and lining take the whole ${number(p, 'depthMm', 0)} mm. Check both.`,
  }),
  'mould.stands-or-lies': (p) => ({
    title: `${mouldName(p)}: does it stand or lie?`,
    body: 'Give a round mould a depth, or a roll a length. Clear the other.',
  }),
  'mould.density-unusual': (p) => ({
    title: `A mix of ${number(p, 'densityGPerMl', 2)} g/mL is unusual.`,
    body: `Most lie between ${number(p, 'lowGPerMl', 2)} and ${number(p, 'highGPerMl', 2)}. Weigh a filled cup of known volume.`,
  }),
  'mould.film-rating': (p) => ({
    title: `${mouldName(p)}: is the film made for the heat?`,
    body: `Only food film rated to ${limitTemp({ value: Number(p.ratingC), unit: 'C' }, 'minimum').text} or more. Take it off before an oven hotter than its rating.`,
  }),
  'mould.lining-in-formula': (p) => ({
    title: `${mouldName(p)}: write the lining into the formula too.`,
    body: `It has fat and often salt of its own, and may carry nitrite. Give it a line of the part "lining"${p.eachG === undefined ? '' : `: about ${number(p, 'eachG', 0)} g for each`}.`,
  }),
  'mould.fill-differs': (p) => ({
    title: `${mouldName(p)}: ${number(p, 'actualG', 0)} g filled, ${number(p, 'fillG', 0)} g planned.`,
    body: `${percent(p, 'offFraction')} off. It will cook and chill at its own pace.`,
  }),
  'mould.last-mould-low': (p) => ({
    title: `The last mould would be only ${percent(p, 'lastFraction')} full.`,
    body: `${number(p, 'shortG', 0)} g are short. Use a smaller mould for the rest, or one mould fewer.`,
  }),
  'mould.moulds-short': (p) => ({
    title: `${number(p, 'leftoverG', 0)} g are left over.`,
    body: `That fills another mould of ${number(p, 'fillG', 0)} g.`,
  }),
  'mould.batch-short': (p) => ({
    title: `The batch is ${number(p, 'shortG', 0)} g short of the moulds.`,
    body: 'Scale the formula up or fill fewer moulds. Test poach and what stays in the bowl come off as well.',
  }),
} satisfies Words<MouldFindingId>;
