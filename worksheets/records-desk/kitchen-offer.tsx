import { type Kitchen, mergeKitchen, type ReadKitchen } from '@larderwright/calc/kitchen';
import { $kitchen, changeKitchen, lookAtKitchen } from '../state/kitchen.ts';
import { KITCHEN_OFFER as WORDS } from '../words/device-part.ts';

/** Takes over the settings of a file, and says what came of it. */
export function takeKitchen(incoming: Kitchen): string {
  lookAtKitchen();
  changeKitchen((here) => mergeKitchen(here, incoming));
  const { trouble } = $kitchen.get();
  return trouble?.id === 'not-kept' ? WORDS.notKept(trouble.detail) : WORDS.taken;
}

interface KitchenOfferProps {
  read: ReadKitchen | null;
  wanted: boolean;
  onWanted: (wanted: boolean) => void;
}

/** The settings that a file holds, to be taken over or left. */
export function KitchenOffer({ read, wanted, onWanted }: KitchenOfferProps) {
  if (read === null) return null;
  if (!read.ok)
    return <p class="field-problem">{read.problem === 'damaged' ? WORDS.damaged(read.path) : WORDS.newer}</p>;
  const { name, scales, thermometers } = read.kitchen;
  return (
    <p>
      <label class="desk-tick">
        <input type="checkbox" checked={wanted} onChange={(event) => onWanted(event.currentTarget.checked)} />{' '}
        {WORDS.take}
      </label>{' '}
      {WORDS.called(name.trim())}: {WORDS.holds(scales.length, thermometers.length)}. {WORDS.replaces}
    </p>
  );
}
