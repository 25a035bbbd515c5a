import {
  nitriteIonFromSodiumNitrite,
  sodiumNitriteFromNitriteIon,
  sodiumNitriteFromSodiumNitrate,
} from './nitrite-forms.ts';
import type { ExpressedAs } from './rule-sets/index.ts';

/**
 * Nitrite and nitrate in the form a limit is written in, so that like is compared with like.
 *
 * @param sodiumNitrite mass or concentration as sodium nitrite
 * @param sodiumNitrate the same of nitrate, as sodium nitrate; only some laws count it in
 * @example inLimitForm('nitrite-ion', 100, 0) // 66.68
 */
export function inLimitForm(form: ExpressedAs, sodiumNitrite: number, sodiumNitrate: number): number {
  switch (form) {
    case 'nitrite-ion':
      return nitriteIonFromSodiumNitrite(sodiumNitrite);
    case 'nitrite-and-nitrate-salts':
      return sodiumNitrite + sodiumNitrate;
    case 'nitrite-and-nitrate-as-sodium-nitrite':
      return sodiumNitrite + sodiumNitriteFromSodiumNitrate(sodiumNitrate);
    case 'sodium-nitrite':
    case 'sodium-ascorbate-or-erythorbate':
      return sodiumNitrite;
  }
}

/** Whether a form counts nitrate in with nitrite. */
export function countsNitrate(form: ExpressedAs): boolean {
  return form === 'nitrite-and-nitrate-salts' || form === 'nitrite-and-nitrate-as-sodium-nitrite';
}

/** A limit as sodium nitrite, the form pack strengths are given in. */
export function limitAsSodiumNitrite(form: ExpressedAs, valuePpm: number): number {
  return form === 'nitrite-ion' ? sodiumNitriteFromNitriteIon(valuePpm) : valuePpm;
}
