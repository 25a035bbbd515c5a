import type { Params } from '@larderwright/calc/findings';
import type { CookFindingId } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';
import {
  bothScales,
  celsius,
  clockOf,
  doubtWords,
  logPrefix,
  minutes,
  momentOfParam,
  seconds,
} from './log-words.ts';
import type { Words } from './wording.ts';

const has = (p: Params, key: string) => p[key] !== undefined;
/** Limit and hold as the plan names them. */
const named = (p: Params) => `${p.limit} held ${p.hold}`;
/** What the probe has to show, once its error is known. */
const action = (p: Params) =>
  has(p, 'actionC') ? ` The probe has to show ${bothScales(p, 'actionC', 'up')}, its error added.` : '';
const peak = (p: Params) => (has(p, 'peakC') ? ` Highest reading: ${celsius(p, 'peakC', 'down')}.` : '');
const shown = (p: Params) => (p.shown ? `${String(p.shown).slice(0, 20)} °${p.unit}` : 'a blank');

/** The words of every finding and verdict of the cook. */
export const cookWords = {
  // Verdicts.
  'cook.hold-met': (p) => ({
    title: `${logPrefix(p)}${named(p)}: met. Counted on readings: ${seconds(p, 'countedS', 'down')}.`,
    body: `First to last reading of an unbroken run at or above the limit plus the probe’s error.${action(p)}`,
  }),
  'cook.hold-short': (p) => ({
    title: `${logPrefix(p)}${named(p)}: not held. Counted on readings: ${seconds(p, 'countedS', 'down')}.`,
    body: `Hold the product. Heat it on until the limit is shown, if it is still hot and your plan allows it; else discard it.${action(p)}${peak(p)}`,
  }),
  'cook.never-reached': (p) => ({
    title: `${logPrefix(p)}${named(p)}: never reached.`,
    body: `Hold the product. Heat it on until the limit is shown, if it is still hot and your plan allows it; else discard it.${action(p)}${peak(p)}`,
  }),
  'cook.hold-not-shown': (p) => ({
    title: `${logPrefix(p)}${named(p)}: not shown by the readings.`,
    body: `A gap, or a reading that cannot be, stands inside the hold. It may have been held; nothing proves it. Do not release it.${action(p)}`,
  }),
  'cook.open': (p) => ({
    title: `${logPrefix(p)}The cook is still open. To show: ${named(p)}.`,
    body: `Counted so far: ${seconds(p, 'countedS', 'down')}. Keep the probe in, do not chill.${action(p)}`,
  }),
  'cook.no-readings': (p) => ({
    title: `${logPrefix(p)}No reading of this cook that counts.`,
    body: 'Write down what the probe shows at the thermal centre, with the time.',
  }),
  'cook.unit-suspect': (p) => ({
    title: `${logPrefix(p)}The log may be in the other unit: these figures cannot be degrees Celsius of a core.`,
    body: 'Look at the probe’s display and set °F on the readings if that is what it shows.',
  }),
  'cook.error-unknown': (p) => ({
    title: `${logPrefix(p)}The probe’s error is not entered, so nothing can be passed.`,
    body: 'Blank is unknown, not zero. Check the probe in ice and write what it may still be off.',
  }),
  'cook.offset-unknown': (p) => ({
    title: `${logPrefix(p)}Nobody has said whether the probe reads high or low, so nothing can be passed.`,
    body: 'Hold it in melting ice, wait until it is steady and write what it shows. 0 if it shows 0.0 °C.',
  }),
  'cook.no-rule-set': () => ({
    title: 'No cooking rule set is chosen.',
    body: 'Choose the one your authority enforces. Without it there is no limit to judge by.',
  }),
  'cook.rule-set-unknown': () => ({
    title: 'The cooking rule set of this record is not known here.',
    body: 'It may come from another edition. Choose one of the list.',
  }),
  'cook.no-limit': () => ({
    title: 'The plan does not name its limit yet.',
    body: 'Choose the one temperature and time of the rule set that this cook is judged by.',
  }),
  'cook.limit-unknown': () => ({
    title: 'The limit of this record is not in its rule set.',
    body: 'It may come from another edition. Choose one of the list.',
  }),
  'cook.no-log': () => ({
    title: 'No probe log yet.',
    body: 'Name the probe, write its errors and its first reading.',
  }),
  'cook.limit-not-for-poultry': () => ({
    title: 'The named limit is written for food without poultry, and this batch holds poultry.',
    body: 'One bird’s liver, fat, skin or stock is enough. Choose a limit that serves poultry.',
  }),
  'cook.limit-for-poultry-only': () => ({
    title: 'The named limit is written for food with poultry, and this formula holds none.',
    body: 'Choose the table that fits the batch.',
  }),
  'cook.limit-not-for-minced': () => ({
    title: 'The named limit is written for whole pieces, and this product is minced or filled.',
    body: 'Mincing carries what sat on the surface to the centre. Choose a limit for minced meat.',
  }),
  'cook.species-unknown': () => ({
    title: 'The formula does not yet say whether there is poultry in the batch.',
    body: 'Name the ingredient of every line. Until then this limit cannot judge it.',
  }),
  'cook.form-unknown': () => ({
    title: 'It is not known whether this product is minced or whole.',
    body: 'Choose the product family on the batch formula.',
  }),
  'cook.fat-unknown': () => ({
    title: 'The hold of this limit depends on fat, and the fat of the batch is not known.',
    body: 'Name the ingredient and the amount of every line of the formula.',
  }),
  'cook.fat-off-table': () => ({
    title: 'The batch is fatter than the last column of this table (12 %).',
    body: 'No time may be read from it. Choose a limit that does not depend on fat.',
  }),

  // Beside the verdict.
  'cook.poultry-under-meat-limit': (p) => ({
    title: `${p.limit} is a limit for food without poultry, and this batch holds poultry.`,
    body: 'Choose a limit that serves poultry before the cook begins.',
  }),
  'cook.keep-probe-in': (p) => ({
    title: `${logPrefix(p)}Limit not complete: keep the probe in, do not chill. ${seconds(p, 'remainingS', 'up')} more.`,
    body: `The core is at or above ${p.limit} with the probe’s error now. Log it until the time is full.`,
  }),
  'cook.carry-over': (p) => ({
    title: `${logPrefix(p)}The limit was completed after heating, by carry-over that was logged.`,
    body: `Without those readings it would not have been shown.${peak(p)}`,
  }),
  'cook.other-pair-met': (p) => ({
    title: `${logPrefix(p)}Another pair of the set is met: ${p.other} held ${p.otherHold}.`,
    body: `The plan names ${p.limit}, and a plan names one limit and keeps to it.`,
  }),
  'cook.pork-liver': (p) => ({
    title: `Pork liver: advice from trials is ${p.limit} held ${p.hold}, against hepatitis E.`,
    body: 'This log does not show it.',
  }),
  'cook.pork-liver-met': (p) => ({
    title: `Pork liver: ${p.limit} held ${p.hold} is shown too, as trials on hepatitis E advise.`,
    body: '',
  }),
  'cook.fat-as-mixed': (p) => ({
    title: `The hold was read in the column for ${fixedText(Number(p.fatFraction) * 100, 1, 'up')} % fat or the next fatter one.`,
    body: 'The table means the product as cooked: water lost makes it fatter.',
  }),
  'cook.come-up-slow': (p) => ({
    title: `${logPrefix(p)}The core took ${minutes(p, 'minutes', 'down')} from 10 °C to 54.4 °C: over ${minutes(p, 'limitMin', 'down')}.`,
    body: 'Staphylococcus may have made a toxin that this cook does not destroy. Ask a process specialist before release.',
  }),
  'cook.come-up-not-shown': (p) => ({
    title: `${logPrefix(p)}The readings do not show how long the core took from 10 °C to 54.4 °C.`,
    body: 'This rule set asks for less than 6 h. Log from the cold start on.',
  }),
  'cook.gap-at-limit': (p) => ({
    title: `${logPrefix(p)}${minutes(p, 'gapMin', 'down')} without a reading at the limit, from ${clockOf(p, 'from')} to ${clockOf(p, 'to')}.`,
    body: 'More than 15 min apart are not one run: the count began again.',
  }),
  'cook.gap-long': (p) => ({
    title: `${logPrefix(p)}${minutes(p, 'gapMin', 'down')} without a reading, from ${clockOf(p, 'from')} to ${clockOf(p, 'to')}.`,
    body: 'Nothing is drawn or counted over it.',
  }),
  'cook.reading-cannot-be': (p) => ({
    title: `${shown(p)} at ${clockOf(p, 'at')} cannot be the core: ${doubtWords(p)}`,
    body: 'It breaks the hold. Exclude it with a reason, or put it right.',
  }),
  'cook.reading-unreadable': (p) => ({
    title: `${shown(p)} at ${clockOf(p, 'at')} is no temperature.`,
    body: 'It breaks the hold. Put it right, or exclude it with a reason.',
  }),
  'cook.exclusion-incomplete': (p) => ({
    title: `The reading of ${clockOf(p, 'at')} still counts: excluded without a reason or without initials.`,
    body: 'Write both.',
  }),
  'cook.outside-steps': (p) => ({
    title: `${logPrefix(p)}${p.count} ${Number(p.count) === 1 ? 'reading lies' : 'readings lie'} outside every step, the first at ${momentOfParam(p, 'at')}.`,
    body: 'Check the start of the cook and the day of the log.',
  }),
  'cook.reheat-not-judged': () => ({
    title: 'Reheating is not judged here.',
    body: 'It has limits of its own. Follow your local code.',
  }),
  'cook.error-wide': (p) => ({
    title: `${logPrefix(p)}A probe that may be ${fixedText(Number(p.errorC), 1, 'up')} °C off is no probe to prove a hold with.`,
    body: 'Use another, and have this one checked.',
  }),
  'cook.condition-humidity': () => ({
    title: 'This rule set also asks for a humid oven or a sealed product.',
    body: 'In dry air the surface is safer from heat than the core. Keep your record of humidity with this sheet.',
  }),
  'cook.condition-roast-oven': () => ({
    title: 'The times for whole roasts hold only in an oven set as the rule lists.',
    body: 'Its oven temperature depends on the kind of oven and the weight of the roast.',
  }),
  'cook.condition-salmonella-only': () => ({
    title: 'These times are counted for Salmonella.',
    body: 'Listeria can stand more heat at the cooler ones. Your plan has to say how it is kept out.',
  }),
  'cook.condition-chilled-life': () => ({
    title: 'This pair is for a long chilled life under vacuum, against cold-growing Clostridium botulinum.',
    body: 'It does not make food shelf-stable and it is not the usual cook of a pâté.',
  }),
  'cook.condition-advice-only': () => ({
    title: 'This is advice from published trials, not a rule.',
    body: 'Your authority’s limit has to be met as well.',
  }),
  'cook.condition-wild-game': () => ({
    title: 'Wild game: this code asks for 165 °F (74 °C) where the game is not inspected.',
    body: 'Choose that limit unless your authority accepts the supply as inspected.',
  }),
} satisfies Words<CookFindingId>;
