import type { BrineFindingId } from '@larderwright/calc/brine';
import type { Params } from '@larderwright/calc/findings';
import { fixedText } from '@larderwright/calc/quantities';
import { has, number, percent, sharedMuscleWords } from './whole-muscle.ts';
import type { Words } from './wording.ts';

const WHAT: Readonly<Record<string, string>> = { accelerator: 'Accelerator', phosphate: 'Phosphate' };
const what = (p: Params) => WHAT[String(p.what)] ?? 'It';

/** A share of the meat as the trade says it: mg/kg for an accelerator, per cent for phosphate. */
function share(p: Params, key: string): string {
  const fraction = Number(p[key]);
  return p.what === 'phosphate'
    ? `${fixedText(fraction * 100, 2)} %`
    : `${fixedText(fraction * 1e6, 0)} mg/kg`;
}

function additiveLimit(p: Params): string {
  if (!has(p, 'limitPrinted')) return '';
  return `The figure of the law is ${p.limitPrinted} ${p.what === 'phosphate' ? '%' : 'mg/kg'} of the raw meat.`;
}

/** The words of every finding and verdict of brine and injection. */
export const brineWords = {
  ...sharedMuscleWords('brine'),
  'brine.uptake-unknown': () => ({
    title: 'No nitrite figure can be given.',
    body: 'Nobody knows how much of this brine the meat takes up.',
  }),
  'brine.additive-within': (p) => ({
    title: `${what(p)} within the law: ${share(p, 'highFraction')} of the raw meat at most.`,
    body: additiveLimit(p),
  }),
  'brine.additive-over': (p) => ({
    title: `${what(p)} over the law: ${share(p, 'lowFraction')} of the raw meat.`,
    body: additiveLimit(p),
  }),
  'brine.additive-unknown': (p) => ({
    title: `${what(p)}: how much goes in, and in which form?`,
    body: 'Acids and their sodium salts have limits of their own. Name the form and weigh it.',
  }),
  'brine.additive-uptake-unknown': (p) => ({
    title: `${what(p)}: how much the meat takes up decides.`,
    body: `If all of it went in, ${share(p, 'highFraction')}. ${additiveLimit(p)}`,
  }),
  'brine.additive-wrong-form': () => ({
    title: 'Pumped bacon takes sodium ascorbate or erythorbate, not the acid.',
    body: 'The law asks for 550 mg/kg of the sodium salt.',
  }),
  'brine.additive-not-at-level': (p) => ({
    title: `${what(p)} is not at the level the law asks for: ${share(p, 'highFraction')}.`,
    body: `${additiveLimit(p)} It is a level, not a ceiling.`,
  }),
  'brine.bacon-level-met': (p) => ({
    title: `Pumped bacon at its level: ${number(p, 'ppm', 1)} mg/kg of sodium nitrite.`,
    body: `The law asks for ${number(p, 'requiredPpm', 0)} mg/kg.`,
  }),
  'brine.bacon-level-alternative': (p) => ({
    title: `Pumped bacon at ${number(p, 'ppm', 1)} mg/kg: only under an alternative.`,
    body: `The law asks for ${number(p, 'requiredPpm', 0)} mg/kg. It also knows ${number(p, 'alternativePpm', 0)}, and ${number(p, 'lowPpm', 0)} to ${number(p, 'highPpm', 0)} with sugar and a starter, each under conditions. Ask your inspector.`,
  }),
  'brine.bacon-level-missed': (p) => ({
    title: `Pumped bacon at ${number(p, 'ppm', 1)} mg/kg meets no level of the law.`,
    body: `It asks for ${number(p, 'requiredPpm', 0)} mg/kg of sodium nitrite, no more and no less.`,
  }),
  'brine.bacon-level-unknown': () => ({
    title: 'Pumped bacon must hold a set level of nitrite; it is not known here.',
    body: 'Inject by a weighed pump, and write what was weighed.',
  }),
  'brine.skin-estimated': (p) => ({
    title: `Counted on ${number(p, 'greenG', 0)} g, the weight less a tenth for skin.`,
    body: 'Weigh the meat without skin if you can.',
  }),
  'brine.methods-differ': (p) => ({
    title: `Two federal countings of one vat: ${number(p, 'pickUpPpm', 1)} and ${number(p, 'equilibriumPpm', 1)} mg/kg.`,
    body: `By pick-up and at equilibrium they are ${number(p, 'times', 1)} times apart; five-fold is not rare. Say which one your plan uses, and never mix them.`,
  }),
  'brine.worst-case-over': (p) => ({
    title: `If the meat took up all of it: ${number(p, 'worstPpm', 1)} mg/kg.`,
    body: `The limit is ${number(p, 'limitPpm', 0)}. It is met only by the counting you chose.`,
  }),
  'brine.gallon-assumption': (p) => ({
    title: `This brine weighs ${number(p, 'pounds', 2)} lb to the US gallon.`,
    body: `The law's pickle limits in pounds to 100 gallons come to 200 mg/kg only at ${number(p, 'assumedPounds', 0)} lb to the gallon. Weights are used here, never gallons.`,
  }),
  'brine.strong-is-timed': (p) => ({
    title: `A brine of ${percent(p, 'saltFraction')} salt is stopped by the clock.`,
    body: `Over ${percent(p, 'limitFraction', 0)} the meat is taken out long before it is even with the brine. No final salt can be given.`,
  }),
  'brine.timed-needs-pick-up': () => ({
    title: 'How much brine does this meat take up?',
    body: 'Weigh a piece before and after, drained. Soaking takes up 3 to 5 % as a rule; 10 % is not a safe guess. Without it no nitrite is dosed.',
  }),
  'brine.cure-brings-too-much-salt': () => ({
    title: 'Stop: the curing salt alone brings more salt than is wanted.',
    body: 'With a weak pack, salt and nitrite are one lever. Lower the nitrite target or raise the salt.',
  }),
  'brine.cannot-dissolve': () => ({
    title: 'Stop: no water holds that much salt.',
    body: 'Inject more of a weaker brine, or aim at less salt.',
  }),
  'brine.reused': () => ({
    title: 'Stop: meat has lain in this brine before.',
    body: 'Its salt and nitrite are no longer known, and it is raw meat juice. Mix it fresh.',
  }),
  'brine.old': (p) => ({
    title:
      Number(p.ageDays) < 0
        ? 'The brine is dated after the meat went in.'
        : `The brine was ${number(p, 'ageDays', 0)} days old when the meat went in.`,
    body: `No brine is kept longer than ${number(p, 'lifeDays', 0)} days. Its nitrite drifts. Mix it fresh and check the dates.`,
  }),
  'brine.use-unknown': () => ({
    title: 'Is the brine fresh?',
    body: 'Say so. A used one is not topped up or corrected.',
  }),
  'brine.much-brine': (p) => ({
    title: `${number(p, 'ratio', 1)} times as much water as meat.`,
    body: `More than ${number(p, 'most', 1)} times wastes cure. Use a closer vessel.`,
  }),
  'brine.core-uncured': (p) => ({
    title: `${number(p, 'thicknessMm', 0)} mm, and not injected: the core stays uncured for weeks.`,
    body: `Over ${number(p, 'thickMm', 0)} mm inject or open it up. Until cure has reached the core, cool it as uncured.`,
  }),
  'brine.days-short': (p) => ({
    title: `${number(p, 'days', 0)} days are short for this thickness.`,
    body: `Rules and diffusion say ${number(p, 'lowDays', 0)} to ${number(p, 'highDays', 0)} days. Guidance only.`,
  }),
  'brine.added-water': (p) => ({
    title: `${percent(p, 'pumpFraction')} pumped: the label may have to say so.`,
    body: 'Name and added-water rules start from here in many places. Check yours.',
  }),
  'brine.pump-differs': (p) => ({
    title: `${percent(p, 'pumpFraction')} pumped, ${percent(p, 'plannedFraction')} planned.`,
    body: 'Salt and nitrite follow the pump. Drain, weigh again, and correct the next one.',
  }),
  'brine.phosphate-over': (p) => ({
    title: `Stop: phosphate at ${share(p, 'lowFraction')} of the raw meat.`,
    body: additiveLimit(p),
  }),
  'brine.accelerator-over': (p) => ({
    title: 'Stop: the accelerator is not as the law asks.',
    body: has(p, 'lowFraction')
      ? `It stands at ${share(p, 'lowFraction')} of the raw meat. ${additiveLimit(p)}`.trim()
      : 'Pumped bacon takes the sodium salt, not the acid.',
  }),
  'brine.accelerator-last': () => ({
    title: 'Ascorbate or erythorbate goes in last, just before use.',
    body: 'Phosphate first in plain cold water, then salt, sugar, strained spice, curing salt. Acid drives nitrite off as gas.',
  }),
  'brine.needles': () => ({
    title: 'Injector needles are sharps.',
    body: 'Keep the other hand away. Clean and count them afterwards.',
  }),
} satisfies Words<BrineFindingId>;
