import type { LimitsStanding } from '@larderwright/calc/sources';
import { atom } from 'nanostores';

/** Which limits still stand, as far as this device has heard. */
export interface LimitsHeard {
  readonly standing: LimitsStanding;
  /** ISO 8601 moment at which the site last said so; null: never on this device. */
  readonly askedAt: string | null;
  /** The site was asked just now and gave nothing that can be read. */
  readonly failed: boolean;
}

/** Null until the worksheet has looked: see `watch-limits.ts`, which is fetched with the batch. */
export const $limits = atom<LimitsHeard | null>(null);
