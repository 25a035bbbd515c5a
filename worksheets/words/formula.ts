import type { Params } from '@larderwright/calc/findings';
import type { FormulaFindingId } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import { PART_NAMES } from './line-parts.ts';
import type { Words } from './wording.ts';

/** What a figure is called where an input it needs is missing. */
export const formulaFigureNames: Readonly<Record<string, string>> = {
  'formula.total': 'the total',
  'formula.meat-block': 'the meat block',
  'formula.water': 'the water',
  'formula.protein': 'the protein',
  'formula.fat': 'the fat',
  'formula.salt': 'the salt from all sources',
};

/** Most names worth listing in one sentence. */
const FEW = 4;

const number = (params: Params, key: string, decimals: number) => fixedText(Number(params[key]), decimals);
const percent = (params: Params, key: string, decimals = 1) => `${number(params, key, decimals)} %`;
const grams = (params: Params, key: string) => `${number(params, key, 1)} g`;
/** A part in the middle of a sentence. `chemical-fat` is no part of its own but what a laboratory finds in all. */
const partName = ({ what }: Params) =>
  what === 'chemical-fat'
    ? 'fat in all'
    : (Object.entries(PART_NAMES)
        .find(([part]) => part === what)?.[1]
        .toLowerCase() ?? String(what));

/** The words of every formula finding. */
export const formulaWords = {
  'formula.percent-over-100': (p) => ({
    title: 'The percentages add up to more than everything.',
    body: `Of the total ${percent(p, 'ofTotalPercent')}, of the meat block ${percent(p, 'meatPercent')} in meat alone. Neither can pass 100 %, and something weighed in grams needs room too.`,
  }),
  'formula.no-anchor': () => ({
    title: 'Everything is a percentage, so nothing says how big the batch is.',
    body: 'Write at least one line in grams.',
  }),
  'formula.curing-salt-in-percent': (p) => ({
    title: `${p.name || 'Curing salt'} must be written in grams.`,
    body: 'Curing salt is weighed, never shared out by per cent. Set the line to grams.',
  }),
  'formula.declared-over-100': (p) => ({
    title: `The pack figures of ${p.name} add up to ${percent(p, 'percent')}.`,
    body: 'Read them again.',
  }),
  'formula.unknown-ingredient': (p) => ({
    title: `${p.name || p.ingredientId} points to an ingredient this table does not have.`,
    body: 'Choose the ingredient again, or type its composition from the pack.',
  }),
  'formula.composition-unknown': (p) => ({
    title: `Composition cannot be told: ${p.names}.`,
    body: 'Choose an ingredient for it or type the figures from the pack. An unknown is not counted as zero.',
  }),
  'formula.small-parts-left-out': (p) => ({
    title: `Counted as nothing, being too little to matter: ${p.names}.`,
    body: 'No composition is known. Together they are under 0.1 % of the mix.',
  }),
  'formula.partly-weighed': (p) => ({
    title: `${p.count} of ${p.ofCount} lines not weighed yet.`,
    body: `They stand at their planned weight in the as-weighed figures${Number(p.count) > FEW ? '' : `: ${p.names}`}.`,
  }),
  'formula.weighed-off-plan': (p) => ({
    title: `${p.name}: ${grams(p, 'actualG')} weighed, ${grams(p, 'plannedG')} planned.`,
    body: 'More than a tenth apart. If the scale is right, everything here follows the scale.',
  }),
  'formula.salt-over-supplied': (p) => ({
    title: `The ingredients bring ${percent(p, 'carriedPercent', 2)} salt already; the target is ${percent(p, 'targetPercent', 2)}.`,
    body: `No plain salt can bring it down. ${p.name} supplies most, ${grams(p, 'saltG')}; ${grams(p, 'excessG')} in all is over. Use less of it or raise the target.`,
  }),
  'formula.salt-off-target': (p) => ({
    title: `Salt from all sources is ${percent(p, 'saltPercent', 2)}; the target is ${percent(p, 'targetPercent', 2)}.`,
    body: `Plain salt for the target: ${grams(p, 'plainSaltG')} in all.`,
  }),
  'formula.lining-salt': (p) => ({
    title: `The lining brings ${grams(p, 'liningSaltG')} of salt: ${percent(p, 'linedPercent', 2)} as sliced, ${percent(p, 'mixPercent', 2)} in the mix.`,
    body: `It seasons the outer centimetre, not the middle (${p.names}). The salt target and the weight the cure is counted on stay those of the bowl.`,
  }),
  'formula.outside-band': (p) => ({
    title: `${p.family}: ${partName(p)} ${percent(p, 'valuePercent')}, usually ${number(p, 'minPercent', 1)}–${percent(p, 'maxPercent')}.`,
    body: 'A habit of the trade, not a limit.',
  }),
  'formula.named-share': (p) => ({
    title: `${p.what}: ${percent(p, 'valuePercent')}. To be sold as ${p.name}: at ${p.side} ${percent(p, 'limitPercent')}.`,
    body: 'A rule about the name, not about safety. Check the current text before you label.',
  }),
  'formula.allergens-unknown': (p) => ({
    title: `Allergens not known: ${p.names}.`,
    body: 'Choose the ingredient or read its label before the allergen list is used.',
  }),
} satisfies Words<FormulaFindingId>;

/** How each figure of a mix is worked out, in words, beside its lines of mass × share = grams. */
export const formulaWorkings = {
  total: 'Everything that goes into the bowl, added up. A lining is not in the bowl. Derived: a sum.',
  meatBlock:
    'Raw lean, fat, liver and offal, added up. No liquid, egg, panade or garnish: what the United States count nitrite on (9 CFR 424.21(c)). Derived: a sum.',
  water:
    'Each line’s weight times its share of water, added up, divided by the total. Derived: mass balance; where each share was read stands beside it.',
  protein:
    'Each line’s weight times its share of protein, added up, divided by the total. Derived: mass balance; where each share was read stands beside it.',
  fat: 'Each line’s weight times its share of fat, added up, divided by the total. Lean, egg, cream and liver count. Derived: mass balance; where each share was read stands beside it.',
  salt: 'Plain salt, the salt in the curing salt, and what every other line brings, added up, divided by the total.',
  linedTotal: 'Everything in the bowl and everything that lines the moulds, added up.',
  lined:
    'What the mix holds and what the lining holds, added up, divided by both together. The lining counts once, and only here: its weight is in neither the bowl nor the meat block.',
  finishedSalt:
    'Salt that went in, lining included, divided by the weight that came out: water leaves in the cook, salt stays. Juices that run out take salt along, so it may be less; fat that runs out leaves it behind. Left-over mix that was not filled makes this too high.',
  saltOnWater: 'Salt divided by salt and water together. Derived: its definition.',
  ratio: 'One share divided by the other. Derived.',
  plainSalt:
    'Target share times the total without plain salt, less the salt the other lines bring, divided by one less the target share.',
} as const;
