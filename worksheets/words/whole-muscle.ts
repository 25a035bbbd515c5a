import type { MuscleFindingCode, MuscleReason } from '@larderwright/calc/dry-cure';
import type { Params } from '@larderwright/calc/findings';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import { limitTemp } from './limit-temp.ts';
import type { Wording } from './wording.ts';

export const has = (p: Params, key: string) => p[key] !== undefined;
export const number = (p: Params, key: string, decimals: number) => fixedText(Number(p[key]), decimals);
export const percent = (p: Params, key: string, decimals = 1) =>
  `${fixedText(Number(p[key]) * 100, decimals)} %`;
/** "Belly: " before a sentence about one piece, nothing where there is but one vat. */
export const piece = (p: Params) => (p.name ? `${p.name}: ` : '');

type Say = (params: Params) => Wording;
type Code = MuscleFindingCode | (MuscleReason<'dry-cure'> extends `dry-cure.${infer Tail}` ? Tail : never);

const ON: Readonly<Record<string, string>> = {
  'meat-block': 'on the raw meat without skin',
  total: 'on the product as made',
  finished: 'on the finished product',
};

const AS: Readonly<Record<string, string>> = {
  'sodium-nitrite': 'as sodium nitrite',
  'nitrite-ion': 'as nitrite ion',
  'nitrite-and-nitrate-salts': 'nitrite and nitrate salts together',
  'nitrite-and-nitrate-as-sodium-nitrite': 'nitrite and nitrate together, as sodium nitrite',
};

function figure(p: Params, key: string): string {
  return `${number(p, key, 1)} mg/kg ${AS[String(p.expressedAs)] ?? ''}, ${ON[String(p.weightBasis)] ?? ''}`;
}

function limit(p: Params): string {
  const exact = plainText(Number(p.limitPpm));
  const computed = exact === String(p.limitPrinted) ? '' : `, computed as ${exact}`;
  const written = has(p, 'asWritten') ? ` (${p.asWritten}${computed})` : computed;
  return `The limit is ${p.limitPrinted} mg/kg${written}.`;
}

const SHARED: Readonly<Record<Code, Say>> = {
  within: (p) => ({
    title: `Within the limit: ${figure(p, has(p, 'highestPpm') ? 'highestPpm' : 'ppm')}.`,
    body: limit(p),
  }),
  'nothing-added': () => ({
    title: 'No curing salt goes in.',
    body: 'Expect a grey slice. Use the limits for uncured products when cooling, and a short life.',
  }),
  over: (p) => ({
    title: `Over the limit: ${figure(p, 'ppm')}.`,
    body: `${limit(p)} Do not use it. Weigh less, or take more meat.`,
  }),
  empty: () => ({ title: 'Nothing is weighed yet.', body: 'Write the weight of the meat.' }),
  'mass-unknown': () => ({
    title: 'The weight it is counted on is not known.',
    body: 'Weigh the meat without its skin, or with it and say so.',
  }),
  'no-meat-block': () => ({
    title: 'There is no meat to count it on.',
    body: 'Write the weight of the meat.',
  }),
  'strength-unknown': () => ({
    title: 'The strength of the curing salt is not known.',
    body: 'Type the per cent of sodium nitrite from the pack. Nothing is assumed in its place.',
  }),
  'cure-amount-unknown': () => ({
    title: 'The amount of curing salt is not known.',
    body: 'Weigh it and write grams.',
  }),
  'carried-unknown': (p) => ({
    title: 'How much the meat takes up decides, and it is not known.',
    body: `${has(p, 'ppm') ? `At least ${figure(p, 'ppm')}. ` : ''}${has(p, 'highestPpm') ? `If all of it went in, ${number(p, 'highestPpm', 1)}. ` : ''}${limit(p)} Say which counting your authority takes, or make the brine weaker.`,
  }),
  'nitrate-not-declared': () => ({
    title: 'Nobody has said whether the curing salt holds nitrate.',
    body: 'Read the pack. Type 0 when it lists none.',
  }),
  'finished-unknown': () => ({
    title: 'This limit is on the finished product, which has not been weighed.',
    body: 'Write the finished weight.',
  }),
  'residual-within': (p) => ({
    title: `Within the limit even if none were used up: at most ${figure(p, 'highestPpm')}.`,
    body: `${limit(p)} No more can be left than went in.`,
  }),
  'residual-to-be-measured': (p) => ({
    title: 'How much is left can only be measured.',
    body: `${has(p, 'highestPpm') ? `If none were used up it would be ${figure(p, 'highestPpm')}. ` : ''}${limit(p)} Have a laboratory measure it.`,
  }),
  'residual-measured-within': (p) => ({
    title: `Within the limit by a laboratory: ${figure(p, 'ppm')}.`,
    body: `${limit(p)} It speaks for the sample that was taken.`,
  }),
  'residual-over': (p) => ({
    title: `Over the limit by a laboratory: ${figure(p, 'ppm')}.`,
    body: `${limit(p)} Hold all of it.`,
  }),
  'residual-figure-incomplete': () => ({
    title: 'The laboratory’s figure cannot be read yet.',
    body: 'Write it in mg/kg, and say what it counts: sodium nitrite, nitrite ion, or nitrite and nitrate together.',
  }),
  'residual-nitrate-not-measured': (p) => ({
    title: 'The laboratory counted nitrite alone; this limit counts nitrate with it.',
    body: `${limit(p)} Some nitrite turns into nitrate in the meat. Ask for both together, as sodium nitrite.`,
  }),
  'residual-nitrate-counted-in': (p) => ({
    title: 'The laboratory counted nitrate in; this limit is on nitrite alone.',
    body: `${limit(p)} Ask for nitrite by itself.`,
  }),
  'no-rule-set': () => ({
    title: 'No rule set is chosen.',
    body: 'Choose the one your authority enforces. Limits differ by country and are never blended.',
  }),
  'rule-set-unknown': (p) => ({
    title: `The rule set "${p.ruleSetId}" is not carried here.`,
    body: 'Choose one from the list.',
  }),
  'product-unknown': () => ({
    title: 'Is it bacon, ham or something else?',
    body: 'Limits differ. Bacon has rules of its own.',
  }),
  'limit-not-carried': (p) => ({
    title: `No limit for this product is carried here: ${p.jurisdiction}.`,
    body: 'That does not mean there is none. Ask your authority for the figure. No dose is given.',
  }),
  'uptake-unknown': () => ({
    title: 'No nitrite figure can be given.',
    body: 'In a salt box or under a rub nobody knows how much goes in. Only a weighed cure in a closed bag can be counted.',
  }),
  'no-nitrate': () => ({ title: 'No nitrate goes in with the curing salt.', body: '' }),
  'nitrate-present': (p) => ({
    title: 'Stop: this curing salt holds nitrate.',
    body:
      p.product === 'bacon'
        ? 'Bacon never takes nitrate. Use a curing salt without it.'
        : 'Nothing turns nitrate into nitrite in meat that is cooked or eaten soon, and bacon may not hold any. Use a curing salt without it. No dose of nitrate is computed here.',
  }),
  'nitrate-specialist': () => ({
    title: 'Nitrate in a long-dried product is a matter for a specialist.',
    body: 'It needs a process accepted by your authority. It is counted where a law adds it to nitrite, and never dosed.',
  }),
  'finish-unknown': () => ({
    title: 'The curing salt holds nitrate. How is the product finished?',
    body: 'Say whether it is bacon and whether it is cooked. In both nitrate is a stop.',
  }),
  'strength-missing': () => ({
    title: 'Stop: the strength of the curing salt is missing.',
    body: 'Type the per cent of sodium nitrite from the pack. Packs differ more than tenfold, so none is assumed.',
  }),
  'strength-too-weak': (p) => ({
    title: `Stop: the curing salt is typed weaker than any pack, under ${percent(p, 'lowFraction')}.`,
    body: 'Per cent is wanted: a pack of 6.25 % is typed 6.25, not 0.0625. Nothing is computed with it.',
  }),
  'strength-too-strong': (p) => ({
    title: `Stop: the curing salt is typed stronger than ${percent(p, 'highFraction', 0)}.`,
    body: 'That is a slip or not a salt for a kitchen. Buy a labelled premix. Nothing is computed with it.',
  }),
  'nitrate-blank': () => ({
    title: 'Is there nitrate in the curing salt?',
    body: 'Read the pack and type the per cent, or 0 when it lists none. A blank is unknown.',
  }),
  'grams-only': (p) => ({
    title: `${piece(p)}Curing salt is weighed in grams only.`,
    body: 'Use a gram scale that reads 0.1 g or finer. No spoons, cups or ounces.',
  }),
  'too-small-to-weigh': (p) => ({
    title: `Stop: ${piece(p)}${number(p, 'massG', 2)} g is too little for this scale.`,
    body: `It takes at least ${number(p, 'leastG', 1)} g. Use a finer scale, or cure more meat in one bag.`,
  }),
  'target-over-ceiling': (p) => ({
    title: `${piece(p)}No dose: the target is above what this rule set allows.`,
    body: has(p, 'ceilingPpm')
      ? `Counted as sodium nitrite, no more than ${fixedText(Number(p.ceilingPpm), 1, 'down')} mg/kg can be aimed at.`
      : 'Lower the target.',
  }),
  'other-sources-over-ceiling': (p) => ({
    title: `${piece(p)}No dose: one step of the scale breaks the limit.`,
    body: 'Use a finer scale, or cure more meat in one bag.',
  }),
  'strength-below-target': () => ({
    title: 'No dose: this curing salt is weaker than the target.',
    body: 'Check the strength and the target.',
  }),
  'over-limit': (p) => ({
    title: `Stop: ${piece(p)}${figure(p, 'ppm')}. The limit is ${p.limitPrinted}.`,
    body: 'Do not use it. More than the limit makes nothing safer. Weigh less, or take more meat.',
  }),
  'residual-over-limit': (p) => ({
    title: `Stop: a laboratory found ${figure(p, 'ppm')}. The limit is ${p.limitPrinted}.`,
    body: 'Hold all of it. Neither serve nor sell it, and tell whoever answers for food safety.',
  }),
  'gross-error': (p) => ({
    title: `Stop: ${piece(p)}${number(p, 'ppm', 0)} mg/kg of sodium nitrite. This can poison.`,
    body: 'It looks like curing salt weighed as if it were salt, or a wrong strength. Do not taste it. Label it HOLD and throw it away. If anyone has eaten it, or turns blue or breathless, get emergency help and show the label.',
  }),
  'above-every-ceiling': (p) => ({
    title: `Stop: ${piece(p)}${number(p, 'ppm', 0)} mg/kg of sodium nitrite.`,
    body: `No rule set carried here allows more than ${number(p, 'highestCeilingPpm', 0)} in cured whole muscle.`,
  }),
  'below-floor': (p) => ({
    title:
      p.role === 'naming-floor'
        ? `${piece(p)}Under ${p.limitPrinted} mg/kg it may not be called cured.`
        : `${piece(p)}Under ${p.limitPrinted} mg/kg: outside the agency's policy for cured "keep refrigerated" goods.`,
    body: `It stands at ${figure(p, 'ppm')}.`,
  }),
  'too-warm': (p) => ({
    title: `Stop: ${number(p, 'tempC', 1)} °C is too warm for curing meat.`,
    body: `Keep it at ${limitTemp({ value: Number(p.warmestC), unit: 'C' }, 'maximum').text} or colder until the salt is through.`,
  }),
  'scale-unknown': () => ({
    title: 'What is the smallest step the scale shows?',
    body: 'Without it no dose can be given. For small batches it must read 0.1 g or finer.',
  }),
  'second-person-missing': () => ({
    title: 'Two people for the curing salt: who weighs, who checks?',
    body: 'Both sign the cure line.',
  }),
  'same-person': () => ({
    title: 'One person weighed and checked the curing salt.',
    body: 'A second person reads pack, strength and scale.',
  }),
  'lock-up': () => ({
    title: 'Lock the curing salt away.',
    body: 'In its own tinted pack, labelled, apart from salt and sugar, with a stock log.',
  }),
};

/** "Belly: " or "Piece 2: " before a verdict on one of several pieces. */
function whose(p: Params): string {
  if (!has(p, 'pieceNo')) return '';
  return `${p.piece ? p.piece : `Piece ${p.pieceNo}`}: `;
}

type Prefixed<Subject extends string> = { [K in Code as `${Subject}.${K}`]: Say };

/** The words dry cure and brine share, under the subject's own ids. */
export function sharedMuscleWords<Subject extends 'dry-cure' | 'brine'>(subject: Subject): Prefixed<Subject> {
  const entries = Object.entries(SHARED).map(([code, say]) => [
    `${subject}.${code}`,
    (p: Params) => {
      const { title, body } = say(p);
      return { title: `${whose(p)}${title}`, body };
    },
  ]);
  return Object.fromEntries(entries) as Prefixed<Subject>;
}
