import type { CureFindingId } from '@larderwright/calc/cure';
import type { Params } from '@larderwright/calc/findings';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import type { Words } from './wording.ts';

const has = (p: Params, key: string) => p[key] !== undefined;
const number = (p: Params, key: string, decimals: number) => fixedText(Number(p[key]), decimals);
const grams = (p: Params, key: string, decimals = 1) => `${number(p, key, decimals)} g`;
const percent = (p: Params, key: string, decimals = 1) => `${fixedText(Number(p[key]) * 100, decimals)} %`;
const lineName = (p: Params) => (p.name ? String(p.name) : 'The curing salt');

const ON: Readonly<Record<string, string>> = {
  'meat-block': 'on the raw meat, fat, liver and offal',
  total: 'on everything in the bowl',
  finished: 'on the finished product',
};

const AS: Readonly<Record<string, string>> = {
  'sodium-nitrite': 'as sodium nitrite',
  'nitrite-ion': 'as nitrite ion',
  'nitrite-and-nitrate-salts': 'nitrite and nitrate salts together',
  'nitrite-and-nitrate-as-sodium-nitrite': 'nitrite and nitrate together, as sodium nitrite',
  'sodium-ascorbate-or-erythorbate': 'of sodium ascorbate or erythorbate',
};

/** "87.7 mg/kg as sodium nitrite, on everything in the bowl" */
function figure(p: Params, key: string): string {
  return `${number(p, key, 1)} mg/kg ${AS[String(p.expressedAs)] ?? ''}, ${ON[String(p.weightBasis)] ?? ''}`;
}

/** The limit as it is printed, and what it is computed as where that differs. */
function limit(p: Params): string {
  const exact = plainText(Number(p.limitPpm));
  const computed = exact === String(p.limitPrinted) ? '' : `, computed as ${exact}`;
  const written = has(p, 'asWritten') ? ` (${p.asWritten}${computed})` : computed;
  return `The limit is ${p.limitPrinted} mg/kg${written}.`;
}

/** With goods whose maker's figure is not known, the figure may be higher. */
function upTo(p: Params): string {
  const isHigher = has(p, 'highestPpm') && Number(p.highestPpm) > Number(p.ppm) * 1.0001;
  return isHigher ? ` With bought cured goods at their worst, up to ${number(p, 'highestPpm', 1)}.` : '';
}

/** The words of every finding and verdict of salt and cure. */
export const cureWords = {
  // Verdicts.
  'cure.within': (p) => ({ title: `Within the limit: ${figure(p, 'ppm')}.`, body: `${limit(p)}${upTo(p)}` }),
  'cure.nothing-added': () => ({
    title: 'Nothing of it goes in.',
    body: 'Expect a beige or grey slice. Use the limits for uncured products when cooling, and a short life.',
  }),
  'cure.over': (p) => ({
    title: `Over the limit: ${figure(p, 'ppm')}.`,
    body: `${limit(p)} Do not mix, cook or taste it. Weigh less, or make the batch larger.`,
  }),
  'cure.empty': () => ({ title: 'The formula is empty.', body: 'Write down what goes in.' }),
  'cure.mass-unknown': () => ({
    title: 'The weight it is counted on is not known.',
    body: 'Fill in every amount of the formula. A blank is not counted as nothing.',
  }),
  'cure.no-meat-block': () => ({
    title: 'No meat, fat, liver or offal to count it on.',
    body: 'This rule set counts nitrite on raw meat. Set the part of each line.',
  }),
  'cure.strength-unknown': () => ({
    title: 'The strength of a curing salt is not known.',
    body: 'Type the per cent of sodium nitrite from the pack. Nothing is assumed in its place.',
  }),
  'cure.cure-amount-unknown': () => ({
    title: 'The amount of a curing salt is not known.',
    body: 'Weigh it and write grams.',
  }),
  'cure.carried-unknown': (p) => ({
    title: 'Bought cured goods might carry it over the limit.',
    body: `${has(p, 'ppm') ? `Known so far: ${figure(p, 'ppm')}. ` : ''}${has(p, 'highestPpm') ? `With those goods at their worst: ${number(p, 'highestPpm', 1)}. ` : ''}${limit(p)} Ask their maker for the nitrite content and type it in.`,
  }),
  'cure.nitrate-not-declared': () => ({
    title: 'Nobody has said whether the curing salt holds nitrate.',
    body: 'Read the pack. Type 0 when it lists none.',
  }),
  'cure.finished-unknown': () => ({
    title: 'This limit is on the finished product, which has not been weighed.',
    body: 'Write the finished weight after chilling.',
  }),
  'cure.residual-within': (p) => ({
    title: `Within the limit even if none were used up: at most ${figure(p, 'highestPpm')}.`,
    body: `${limit(p)} No more can be left than went in.`,
  }),
  'cure.residual-to-be-measured': (p) => ({
    title: 'How much is left can only be measured.',
    body: `${has(p, 'highestPpm') ? `If none were used up it would be ${figure(p, 'highestPpm')}. ` : ''}${limit(p)} Cooking and keeping use nitrite up, but not by a figure anyone can promise: have a laboratory measure it.`,
  }),
  'cure.residual-measured-within': (p) => ({
    title: `Within the limit by a laboratory: ${figure(p, 'ppm')}.`,
    body: `${limit(p)} It speaks for the sample that was taken.`,
  }),
  'cure.residual-over': (p) => ({
    title: `Over the limit by a laboratory: ${figure(p, 'ppm')}.`,
    body: `${limit(p)} Hold all of it.`,
  }),
  'cure.residual-figure-incomplete': () => ({
    title: 'The laboratory’s figure cannot be read yet.',
    body: 'Write it in mg/kg, and say what it counts: sodium nitrite, nitrite ion, or nitrite and nitrate together.',
  }),
  'cure.residual-nitrate-not-measured': (p) => ({
    title: 'The laboratory counted nitrite alone; this limit counts nitrate with it.',
    body: `${limit(p)} Some nitrite turns into nitrate in the meat. Ask for both together, as sodium nitrite.`,
  }),
  'cure.residual-nitrate-counted-in': (p) => ({
    title: 'The laboratory counted nitrate in; this limit is on nitrite alone.',
    body: `${limit(p)} Ask for nitrite by itself.`,
  }),
  'cure.no-rule-set': () => ({
    title: 'No rule set is chosen.',
    body: 'Choose the one your authority enforces. Limits differ by country and are never blended.',
  }),
  'cure.rule-set-unknown': (p) => ({
    title: `The rule set "${p.ruleSetId}" is not carried here.`,
    body: 'Choose one from the list.',
  }),
  'cure.no-nitrate': () => ({ title: 'No nitrate goes in with curing salt.', body: '' }),
  'cure.nitrate-specialist': () => ({
    title: 'Nitrate in a long-dried product is a matter for a specialist.',
    body: 'It needs a process accepted by your authority. Nothing here computes or judges it.',
  }),

  // Stops.
  'cure.over-limit': (p) => ({
    title: `Stop: ${figure(p, 'ppm')}. The limit is ${p.limitPrinted}.`,
    body: 'Do not mix, cook or taste it. More than the limit makes nothing safer. Weigh less, or make the batch larger.',
  }),
  'cure.residual-over-limit': (p) => ({
    title: `Stop: a laboratory found ${figure(p, 'ppm')}. The limit is ${p.limitPrinted}.`,
    body: 'Hold all of it. Neither serve nor sell it, and tell whoever answers for food safety.',
  }),
  'cure.above-every-ceiling': (p) => ({
    title: `Stop: ${number(p, 'ppm', 0)} mg/kg of sodium nitrite.`,
    body: `No rule set carried here allows more than ${number(p, 'highestCeilingPpm', 0)} in a mixed product.`,
  }),
  'cure.gross-error': (p) => ({
    title: `Stop: ${number(p, 'ppm', 0)} mg/kg of sodium nitrite. This can poison.`,
    body: 'It looks like curing salt weighed as if it were salt, or a wrong strength. Do not mix or taste it. If it is mixed, label it HOLD and throw it away. If anyone has eaten it, or turns blue or breathless, get emergency help and show the label.',
  }),
  'cure.nitrate-present': (p) => ({
    title: `Stop: ${lineName(p)} holds nitrate.`,
    body: 'Nothing turns nitrate into nitrite in a mix that is cooked or eaten soon. Use a curing salt without it. No dose of nitrate is computed here.',
  }),
  'cure.strength-missing': (p) => ({
    title: `Stop: the strength of ${lineName(p)} is missing.`,
    body: 'Type the per cent of sodium nitrite from the pack. Packs differ more than tenfold, so none is assumed.',
  }),
  'cure.strength-too-weak': (p) => ({
    title: `Stop: ${lineName(p)} is typed weaker than any pack, under ${percent(p, 'lowFraction')}.`,
    body: 'Per cent is wanted: a pack of 6.25 % is typed 6.25, not 0.0625. Nothing is computed with it.',
  }),
  'cure.strength-too-strong': (p) => ({
    title: `Stop: ${lineName(p)} is typed stronger than ${percent(p, 'highFraction', 0)}.`,
    body: 'That is a slip or not a salt for a kitchen. Buy a labelled premix. Nothing is computed with it.',
  }),
  'cure.pure-chemical': (p) => ({
    title: `Stop: ${lineName(p)} is the pure chemical.`,
    body: 'Very small amounts of it can be fatal. It has no place in a kitchen. Use a labelled food-grade premix.',
  }),
  'cure.grams-only': (p) => ({
    title: `Stop: ${lineName(p)} must be weighed in grams.`,
    body: 'No spoons, cups, ounces or shares. Write the grams the scale shows.',
  }),
  'cure.entered-as-another-part': (p) => ({
    title: `Stop: ${lineName(p)} is a curing salt but is entered as something else.`,
    body: 'Its nitrite would go uncounted. Set the part of the line to curing salt and type its strength from the pack.',
  }),
  'cure.too-small-to-weigh': (p) => ({
    title: `Stop: ${grams(p, 'massG', 2)} of curing salt is too little for a scale that shows ${plainText(Number(p.readabilityG))} g.`,
    body: `Rounding alone is ± ${percent(p, 'errorFraction')}. This scale needs at least ${plainText(Number(p.leastG))} g. Use a finer scale or make a larger batch.`,
  }),
  'cure.target-over-ceiling': (p) => ({
    title: `No dose: ${number(p, 'targetPpm', 1)} mg/kg is above what this rule set allows.`,
    body: `Counted as sodium nitrite, no more than ${fixedText(Number(p.ceilingPpm), 1, 'down')} mg/kg can be aimed at.`,
  }),
  'cure.target-and-carried-over-ceiling': (p) => ({
    title: 'No dose: with what the other ingredients bring, the target breaks the limit.',
    body: `All sources together must stay within ${fixedText(Number(p.ceilingPpm), 1, 'down')} mg/kg. Lower the target or use less cured garnish.`,
  }),
  'cure.target-above-strength': () => ({
    title: 'No dose: this curing salt is weaker than the target.',
    body: 'No amount of it reaches that nitrite. Check the strength and the target.',
  }),

  // Cautions.
  'cure.nitrate-blank': (p) => ({
    title: `${lineName(p)}: is there nitrate in it?`,
    body: 'Read the pack and type the per cent, or 0 when it lists none. A blank is unknown.',
  }),
  'cure.carried-bound': (p) => ({
    title: `${lineName(p)} may bring nitrite of its own.`,
    body: `${has(p, 'highestMg') ? `At worst ${number(p, 'highestMg', 0)} mg, counting ${number(p, 'worstPpm', 0)} mg/kg, the most the United States allow in a finished cured product. ` : ''}Type the maker's figure in mg/kg, or 0 when it is not cured.`,
  }),
  'cure.vegetable-nitrite': (p) => ({
    title: `${lineName(p)} brings nitrate, and nitrite once it is cultured.`,
    body: `It is a cure, whatever it is called. ${p.told === 'yes' ? '' : 'Its nitrite is not known, so no limit can be passed. '}If it is there to cure, set the line to curing salt and type what its maker states. "No nitrite added" is restricted in several markets.`,
  }),
  'cure.near-ceiling': (p) => ({
    title: 'Within the limit by less than the scale can show.',
    body: `If the scale rounded the wrong way it would be ${fixedText(Number(p.worstPpm), 1, 'up')} mg/kg; the limit is ${p.limitPrinted}. Take one step less.`,
  }),
  'cure.no-plain-salt': () => ({
    title: 'A strong curing salt and no plain salt.',
    body: 'Make sure the two have not been swapped. Curing salt never does the salting.',
  }),
  'cure.named-like-curing-salt': (p) => ({
    title: `${lineName(p)}: is this a curing salt?`,
    body: 'Pink curing salt, pink rock salt and saltpetre are three different things. If the pack lists nitrite or nitrate, set the line to curing salt and type its strength.',
  }),
  'cure.same-person': () => ({
    title: 'One person weighed and checked the curing salt.',
    body: 'A second person reads pack, strength and scale.',
  }),
  'cure.fish': () => ({
    title: 'Nitrite in a mix with fish.',
    body: 'Most fish products may not hold it. Ask your authority before you use it.',
  }),
  'cure.fresh-sausage': () => ({
    title: 'Nitrite in a fresh sausage.',
    body: 'Name and colour of fresh sausage often forbid it. Check your rules, and say on the label that it must be cooked.',
  }),

  // Notes.
  'cure.second-person-missing': () => ({
    title: 'Two people for the curing salt: who weighs, who checks?',
    body: 'Both sign the cure line.',
  }),
  'cure.scale-unknown': () => ({
    title: 'What is the smallest step the scale shows?',
    body: 'Without it no dose can be given. For small batches it must read 0.1 g or finer.',
  }),
  'cure.colour-only': (p) => ({
    title: `${number(p, 'ppm', 1)} mg/kg gives colour, not safety.`,
    body: `Under ${number(p, 'curedPpm', 0)} mg/kg, ${ON[String(p.weightBasis)] ?? ''}, no cooling rule counts the product as cured. Cool it as uncured.`,
  }),
  'cure.keep-refrigerated-policy': (p) => ({
    title: `Under ${p.limitPrinted} mg/kg: outside the agency's policy for cured "keep refrigerated" goods.`,
    body: `It stands at ${figure(p, 'ppm')}. Another proven control would have to be shown.`,
  }),
  'cure.not-called-cured': (p) => ({
    title: `Under ${p.limitPrinted} mg/kg it may not be called cured.`,
    body: `It stands at ${number(p, 'ppm', 1)} mg/kg of nitrite and nitrate, on the whole raw batch.`,
  }),
  'cure.liver-takes-nitrite': (p) => ({
    title: `Liver is ${percent(p, 'liverFraction', 0)} of the mix and uses nitrite up.`,
    body: 'Colour may fail, and its effect on bacteria cannot be counted on. Do not go over the limit to make up for it: cool as uncured and keep it short.',
  }),
  'cure.one-lever': (p) => ({
    title: 'With a weak curing salt, salt and nitrite are one lever.',
    body: `At ${percent(p, 'saltTargetFraction', 2)} salt, all of it from ${lineName(p)}, nitrite comes to ${fixedText(Number(p.mostPpm), 1, 'down')} mg/kg at most, on everything in the bowl.`,
  }),
  'cure.not-for-infants': () => ({
    title: 'Nothing with nitrite for children under three.',
    body: 'Say so where it is served or sold.',
  }),
  'cure.lock-up': () => ({
    title: 'Lock the curing salt away.',
    body: 'In its own tinted pack, labelled, apart from salt and sugar, with a stock log.',
  }),
} satisfies Words<CureFindingId>;
