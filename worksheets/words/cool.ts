import type { CoolFindingId } from '@larderwright/calc/cooling';
import type { Params } from '@larderwright/calc/findings';
import { fixedText } from '@larderwright/calc/quantities';
import { clockOf, doubtWords, logPrefix, minutes, momentOfParam } from './log-words.ts';
import type { Words } from './wording.ts';

const has = (p: Params, key: string) => p[key] !== undefined;
/** `From 57 °C to 21 °C within 2 h`, both scales. */
const leg = (p: Params) => {
  const again = Number(p.cooling) > 1 ? `Cooling ${p.cooling}: ` : '';
  const from = p.from ? `from ${p.from}` : 'from the end of cooking';
  return `${again}${from} to ${p.to} within ${minutes(p, 'maxMin', 'down')}`;
};
const worst = (p: Params) =>
  has(p, 'worstMin') ? `${minutes(p, 'worstMin', 'up')} at the longest the readings allow.` : '';
const lines = (p: Params) =>
  has(p, 'lineMin') ? ` By straight lines between readings: ${minutes(p, 'lineMin', 'up')}.` : '';
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const sentence = (p: Params, end: string) => capital(`${logPrefix(p)}${leg(p)}: ${end}`);
const shown = (p: Params) => (p.shown ? `${String(p.shown).slice(0, 20)} °${p.unit}` : 'A blank');

/** The words of every finding and verdict of the cooling. */
export const coolWords = {
  // Verdicts, leg by leg.
  'cool.leg-met': (p) => ({ title: sentence(p, 'met.'), body: `${capital(worst(p))}${lines(p)}` }),
  'cool.leg-missed': (p) => ({
    title: sentence(p, 'MISSED. The readings prove it.'),
    body: `Hold, do not serve. Write what happened and decide.${lines(p)}`,
  }),
  'cool.too-close': (p) => ({
    title: sentence(p, 'too close to tell.'),
    body: `${capital(worst(p))}${lines(p)} Cannot be shown safe, so it is not released on this log.`,
  }),
  'cool.gap': (p) => ({
    title: sentence(p, 'a gap over 60 min lies in it.'),
    body: 'Nobody knows what the core did in between. Cannot be shown safe, so it is not released on this log.',
  }),
  'cool.unfinished': (p) => ({
    title: sentence(p, 'not finished.'),
    body: 'No reading yet shows the end for sure. Go on logging.',
  }),
  'cool.not-begun': (p) => ({
    title: sentence(p, 'the clock has not started.'),
    body: 'No reading is at or below the start yet.',
  }),
  'cool.start-unknown': (p) => ({
    title: sentence(p, 'the start is not shown.'),
    body: 'The first reading is already below it. Write when heating ended: the clock is then taken to start there.',
  }),
  'cool.cook-end-unknown': (p) => ({
    title: sentence(p, 'the end of cooking is not written down.'),
    body: 'Write on the cook log when the product came out.',
  }),
  'cool.no-readings': (p) => ({
    title: sentence(p, 'no reading that counts.'),
    body: 'Read the thermal centre at least every 30 min and write it down with the time.',
  }),
  'cool.unit-suspect': (p) => ({
    title: capital(`${logPrefix(p)}The log may be in the other unit: these figures cannot be a core.`),
    body: 'Look at the probe’s display and set °F on the readings if that is what it shows.',
  }),
  'cool.error-unknown': (p) => ({
    title: sentence(p, 'the probe’s error is not entered.'),
    body: 'Blank is unknown, not zero. Without it nothing can be passed.',
  }),
  'cool.offset-unknown': (p) => ({
    title: sentence(p, 'nobody has said whether the probe reads high or low.'),
    body: 'Hold it in melting ice and write what it shows. Without it nothing can be passed.',
  }),
  'cool.no-rule-set': () => ({
    title: 'No cooling rule set is chosen.',
    body: 'Choose the one your authority enforces. Without it there is no limit to judge by.',
  }),
  'cool.rule-set-unknown': () => ({
    title: 'The cooling rule set of this record is not known here.',
    body: 'It may come from another edition. Choose one of the list.',
  }),
  'cool.no-log': (p) => ({
    title: capital(`${leg(p)}: no probe log.`),
    body: 'Name the probe, write its errors and its first reading.',
  }),
  'cool.cured-not-met': (p) => ({
    title: sentence(p, 'this rule is for cured products, and this one is not cured enough.'),
    body: 'Judge it by a rule for uncured products.',
  }),
  'cool.cured-unknown': (p) => ({
    title: sentence(p, 'it is not known whether this product is cured enough for this rule.'),
    body: 'Fill in the formula and the curing salt, or judge it by a rule for uncured products.',
  }),
  'cool.cured-liver': (p) => ({
    title: sentence(p, 'so much liver uses up the nitrite.'),
    body: 'Do not count on the cure: judge it by a rule for uncured products.',
  }),
  'cool.not-falling': (p) => ({
    title: sentence(p, 'the core rose on the way, and this rule asks for an unbroken fall.'),
    body: 'Only a log of the surface could show it was safe.',
  }),
  'cool.clock-back': (p) => ({
    title: sentence(p, 'a reading was written after one with a later time.'),
    body: 'The clock went back, or one of the two times is wrong. Put the time right, or leave the reading out with a reason and initials. Until then no stretch of this log can be shown short enough.',
  }),
  'cool.chill-start-met': (p) => ({
    title: `Chilling began ${minutes(p, 'waitMin', 'up')} after heating, within ${minutes(p, 'maxMin', 'down')}.`,
    body: '',
  }),
  'cool.chill-start-late': (p) => ({
    title: `Chilling began ${minutes(p, 'waitMin', 'up')} after heating: later than ${minutes(p, 'maxMin', 'down')}.`,
    body: 'Hold the product. Write what happened and decide.',
  }),
  'cool.chill-start-unknown': (p) => ({
    title: `Chilling has to begin within ${minutes(p, 'maxMin', 'down')} of the end of heating: not written down.`,
    body: 'Write both times in the steps.',
  }),

  // Beside the verdicts.
  'cool.good-practice-missed': (p) => ({
    title: sentence(
      p,
      `good practice is ${minutes(p, 'goodMin', 'down')}, it took ${minutes(p, 'tookMin', 'up')}.`,
    ),
    body: 'Inside the limit of the table, outside what it calls good.',
  }),
  'cool.log-more-often': (p) => ({
    title: sentence(p, 'close. Log more often.'),
    body: `${capital(worst(p))}${lines(p)}`,
  }),
  'cool.will-miss': (p) => ({
    title: sentence(
      p,
      `at this pace at ${momentOfParam(p, 'expectedAt')}. It has to be there by ${clockOf(p, 'deadlineAt')}.`,
    ),
    body: 'Act now: unmould onto a rack, part it, blast or ice. Take the press off until it is through.',
  }),
  'cool.act-by': (p) => ({
    title: sentence(p, `has to be shown by ${momentOfParam(p, 'deadlineAt')}.`),
    body: 'Act before that: blast, ice, or thinner pieces.',
  }),
  'cool.rewarmed': (p) => ({
    title: capital(`${logPrefix(p)}The core rose ${fixedText(Number(p.riseC), 1, 'up')} °C on the way down.`),
    body: 'Warm neighbours, poured jelly, or a probe that moved. Write which.',
  }),
  'cool.clock-assumed': (p) => ({
    title: capital(
      `${logPrefix(p)}The clock was taken to start when heating ended, at ${momentOfParam(p, 'startAt')}.`,
    ),
    body: 'No reading shows the fall through the start, so the least kind moment counts.',
  }),
  'cool.reading-cannot-be': (p) => ({
    title: `${shown(p)} at ${clockOf(p, 'at')} cannot be the core: ${doubtWords(p)}`,
    body: 'It counts against the cooling, never for it. Exclude it with a reason, or put it right.',
  }),
  'cool.reading-unreadable': (p) => ({
    title: `${shown(p)} at ${clockOf(p, 'at')} is no temperature.`,
    body: 'Put it right, or exclude it with a reason.',
  }),
  'cool.exclusion-incomplete': (p) => ({
    title: `The reading of ${clockOf(p, 'at')} still counts: excluded without a reason or without initials.`,
    body: 'Write both.',
  }),
  'cool.condition-continuous': () => ({
    title: 'This rule also asks that the core falls without a stop between the legs.',
    body: '',
  }),
  'cool.condition-on-to-40F': () => ({
    title: 'After the second leg the chill has to go on to 40 °F (4 °C).',
    body: 'It is not packed or moved before.',
  }),
  'cool.condition-cold-store': () => ({
    title: 'After it the product goes into a cold store at once.',
    body: '',
  }),
  'cool.condition-under-5kg': () => ({
    title: 'This rule is written for pieces under 5 kg.',
    body: '',
  }),
  'cool.condition-large-pieces': () => ({
    title: 'This rule is written for large pieces.',
    body: 'A smaller one that needs as long is cooling too slowly.',
  }),
  'cool.condition-check-province': () => ({
    title: 'Each province prints a code of its own.',
    body: 'Compare it with this typical one.',
  }),
} satisfies Words<CoolFindingId>;
