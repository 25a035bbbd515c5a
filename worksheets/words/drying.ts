import type { DryingFindingId } from '@larderwright/calc/drying';
import type { Params } from '@larderwright/calc/findings';
import { approvedPlanWords } from './approved-plan.ts';
import { number, percent } from './whole-muscle.ts';
import type { Words } from './wording.ts';

const degrees = (p: Params) => `${number(p, 'total', 0)} of ${number(p, 'limit', 0)} °${p.unit} degree-hours`;

/** The words of every finding and verdict of fermenting and drying. */
export const dryingWords = {
  'drying.approved-plan': approvedPlanWords,
  'drying.degree-hours-within': (p) => ({
    title: `pH 5.3 in time: ${degrees(p)}.`,
    body: `The highest chamber temperature, ${number(p, 'highest', 1)} °${p.unit}, sets the limit.`,
  }),
  'drying.degree-hours-over': (p) => ({
    title: `Too slow to pH 5.3: ${degrees(p)}.`,
    body: 'Staphylococcus had time to make a toxin that no cooking removes. Hold the lot and ask your authority.',
  }),
  'drying.degree-hours-running': (p) => ({
    title: `So far ${degrees(p)}, and pH 5.3 is not reached.`,
    body: 'The count runs on. Measure the pH and write it.',
  }),
  'drying.degree-hours-unknown': () => ({
    title: 'The chamber temperatures are not complete.',
    body: 'Write temperature and hours of every stretch until pH 5.3. A blank is not counted as nothing.',
  }),
  'drying.no-degree-hour-rule': () => ({
    title: 'No degree-hour rule is chosen.',
    body: 'Choose the one your plan names. They are never blended.',
  }),
  'drying.hold-product': (p) => ({
    title: `Stop: hold this lot. ${degrees(p)}.`,
    body: 'Do not taste it, dry it on or cook it to save it. The toxin stands heat.',
  }),
  'drying.estimate-is-wet': (p) => ({
    title: `Estimated water activity ${number(p, 'low', 3)} to ${number(p, 'high', 3)}.`,
    body: 'From salt and water alone. Sugar and acid lower the real one, and a hard rim makes it uneven. Only an instrument decides.',
  }),
  'drying.loss-is-no-proof': (p) => ({
    title: `${percent(p, 'lossFraction', 0)} loss is a target, not proof.`,
    body: 'Weight tells that water left, not that it left from the core.',
  }),
  'drying.ratio-is-no-proof': () => ({
    title: 'Moisture to protein shows dryness, not safety.',
    body: 'It belongs to names of products. Salt, acid and water activity decide.',
  }),
  'drying.loss-over-water': (p) => ({
    title: `${percent(p, 'lossFraction', 0)} to lose, and only ${percent(p, 'moistureFraction', 0)} water in it.`,
    body: 'Check both figures.',
  }),
  'drying.gained-weight': () => ({
    title: 'It weighs more than at the start.',
    body: 'Check the two weights, string, hooks and casing.',
  }),
  'drying.salt-under-table': (p) => ({
    title: `${number(p, 'saltPercent', 1)} lb of salt to 100 lb is under the table's end.`,
    body: 'The table of drying-room times says nothing below 2.0. Another treatment against Trichinella is needed.',
  }),
  'drying.casing-over-table': (p) => ({
    title: `A casing of ${number(p, 'casingMm', 0)} mm is wider than the table goes.`,
    body: 'The table of drying-room times ends at 6 inches, 152 mm.',
  }),
  'drying.trichinella': () => ({
    title: 'Raw pork, wild boar, bear, horse: Trichinella first.',
    body: 'Use meat that was tested or treated by your rules. Drying alone does not treat wild species.',
  }),
  'drying.case-hardening': () => ({
    title: 'Dry slowly: air only a little drier than the surface.',
    body: 'A hard rim keeps water in. Rest it in moist air or a vacuum bag until it is even.',
  }),
} satisfies Words<DryingFindingId>;
