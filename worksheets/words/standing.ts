import type { StandingFindingId } from '@larderwright/calc/batch';
import type { Words } from './wording.ts';

const SUBJECT: Readonly<Record<string, string>> = {
  cure: 'nitrite and nitrate',
  cook: 'cooking',
  cool: 'cooling',
};

/** A limit that was taken back after the batch was begun. */
export const standingWords = {
  'limits.withdrawn': ({ stage, from, reason }) => ({
    title: `The rule set for ${SUBJECT[String(stage)] ?? 'this'} was withdrawn from ${from}. ${reason}`,
    body: 'Its verdicts count no more. Hold the batch, choose a rule set that stands, and ask your authority.',
  }),
} satisfies Words<StandingFindingId>;

export const STANDING_TEXT = {
  unchecked: (since: string | null) =>
    since === null
      ? 'Whether a limit was withdrawn could not yet be asked on this device. Go online once before you rely on a verdict.'
      : `Whether a limit was withdrawn was last asked on ${since}. Go online before you rely on a verdict.`,
} as const;
