import type { Unit } from '@larderwright/calc/quantities';
import { keptSetting } from '../state/kept-setting.ts';

/** A reading being typed. It lives in this tab only, until it is added to the batch. */
export interface Draft {
  day: string;
  clock: string;
  temperature: string;
  unit: Extract<Unit, 'C' | 'F'>;
  initials: string;
}

export const EMPTY_DRAFT: Draft = { day: '', clock: '', temperature: '', unit: 'C', initials: '' };

const KEY = 'larderwright.reading-draft';

/** A draft in the scale this device writes first. */
export const freshDraft = (): Draft => ({
  ...EMPTY_DRAFT,
  unit: keptSetting('tempFirst') === 'F' ? 'F' : 'C',
});

/** What was being typed when the page was last left, or nothing. */
export function storedDraft(): Draft | null {
  try {
    const raw: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    if (typeof raw !== 'object' || raw === null) return null;
    const text = (key: string) => {
      const value = (raw as Record<string, unknown>)[key];
      return typeof value === 'string' ? value : '';
    };
    return {
      day: text('day'),
      clock: text('clock'),
      temperature: text('temperature'),
      unit: text('unit') === 'F' ? 'F' : 'C',
      initials: text('initials'),
    };
  } catch {
    return null;
  }
}

/** Keeps what is being typed over a reload. Storage may be off: then the draft lives on the screen only. */
export function keepDraft(draft: Draft): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify(draft));
  } catch {
    // Nothing to do: the typed text is still in the fields.
  }
}
