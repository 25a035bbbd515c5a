import { BLEND_STYLES, blendOfStyle, blendStyleOf, type SeasoningBlend } from '@larderwright/calc/seasoning';
import { useState } from 'preact/hooks';
import { ChoiceField } from '../parts/choice-field.tsx';
import { newId } from '../state/clock.ts';
import { editAt } from '../state/store.ts';

const CHOICES = BLEND_STYLES.map(({ id, name, use, doseGPerUnit: { min, max }, unit }) => ({
  value: id,
  label: `${name}: ${use.toLowerCase()}, ${min} to ${max} ${unit}`,
}));

/** Begins an empty blend from a teaching style. */
export function BeginStyle({ blend }: { blend: SeasoningBlend }) {
  const [styleId, choose] = useState('');
  const style = blendStyleOf(styleId);
  const begin = () => {
    if (!style) return;
    const begun = blendOfStyle(
      blend.id,
      style,
      style.parts.map(() => newId()),
    );
    const dose = blend.dose.origin === 'entered' ? blend.dose : begun.dose;
    editAt(`seasoning.blends.${blend.id}`, {
      ...blend,
      name: blend.name || style.name,
      items: begun.items,
      dose,
    });
  };
  return (
    <div class="add-row">
      <ChoiceField
        label="Begin from a style"
        value={styleId}
        empty="None: I add my own spices"
        choices={CHOICES}
        onChoose={choose}
        hint="Invented proportions for teaching; doses are common practice, no source. A brine counts by the litre: type its own dose."
      />
      <button type="button" disabled={!style} onClick={begin}>
        Put in these parts
      </button>
    </div>
  );
}
