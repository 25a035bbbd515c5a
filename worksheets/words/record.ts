import type { RecordFindingId, Unconfirmed } from '@larderwright/calc/batch';
import { durationWords, wallOf } from '../parts/clock-text.ts';
import { RULE_SUBJECTS } from './rule-subjects.ts';
import type { Words } from './wording.ts';

const clock = (iso: string | number | undefined) => wallOf(String(iso ?? ''))?.clock ?? '?';

function byAndWhen({ at, by }: Readonly<Record<string, string | number | undefined>>): string {
  const wall = wallOf(String(at ?? ''));
  return `${wall ? `${wall.date} ${wall.clock.slice(0, 5)}` : ''} by ${by || 'nobody named'}`.trim();
}

/** What the record itself says: signatures, decisions, late and left-out readings. */
export const recordWords = {
  'record.no-batch-number': () => ({
    title: 'The batch has no number yet.',
    body: 'Give it one before the first material is weighed, so that paper and labels find it again.',
  }),
  'record.fail-without-decision': () => ({
    title: 'A limit failed and nobody has decided about the product.',
    body: 'Hold it. Write what happened, what becomes of the product, the cause and the prevention.',
  }),
  'record.released-while-failing': () => ({
    title: 'Released although a limit failed.',
    body: 'A failed safety limit is not put right by a decision. Hold the product and ask your authority or a process specialist.',
  }),
  'record.made-and-checked-by-one': () => ({
    title: 'Made and checked by the same person.',
    body: 'Release needs the eyes of a second person.',
  }),
  'record.entered-late': (p) => ({
    title: `${p.log || 'Log'}: ${p.count} reading${p.count === 1 ? '' : 's'} typed in more than 15 min after the reading.`,
    body: `The first was read at ${clock(p.readAt)} and typed in ${durationWords(Number(p.lateMin), 'up')} later. Both times print.`,
  }),
  'record.readings-left-out': (p) => ({
    title: `${p.log || 'Log'}: ${p.count} reading${p.count === 1 ? '' : 's'} left out by a person.`,
    body: 'They print with the reason and the initials.',
  }),
  'record.held': (p) => ({
    title: `HELD ${byAndWhen(p)}: ${p.why}`,
    body: 'Nothing of it leaves until somebody has decided.',
  }),
  'record.discarded': (p) => ({
    title: `DISCARDED ${byAndWhen(p)}: ${p.why}`,
    body: 'None of it may be used.',
  }),
  'record.release-no-longer-holds': (p) => ({
    title: `Released ${byAndWhen(p)}, but not every limit passes as the record now stands.`,
    body: 'Hold it and call back what left. Then look at what changed since.',
  }),
  'record.changed-after-release': (p) => ({
    title: `${p.count} change${p.count === 1 ? '' : 's'} of readings, weights or signatures after the release.`,
    body: 'The history of the record says what they were.',
  }),
  'record.rule-set-unconfirmed': (p) => ({
    title: `The rule set for ${RULE_SUBJECTS[p.subject as Unconfirmed['subject']] ?? p.subject} is the default of this device: nobody has confirmed it for this batch.`,
    body: 'Look at what is made and for whom, then confirm it or choose another. Until then the batch is not released.',
  }),
} satisfies Words<RecordFindingId>;
