import { BLEND_STYLES, blendOfStyle, blendStyleOf, type SeasoningBlend } from '@larderwright/calc/seasoning';
import { useState } from 'preact/hooks';
import * as say from '#words/seasoning/begin-style.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { newId } from '../state/clock.ts';
import { editAt } from '../state/store.ts';

const CHOICES = BLEND_STYLES.map(({ id, name, use, doseGPerUnit: { min, max }, unit }) => ({
  value: id,
  label: say.to(name, use.toLowerCase(), min, max, unit),
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
        label={say.beginFromAStyle}
        value={styleId}
        empty={say.noneIAddMyOwnSpices}
        choices={CHOICES}
        onChoose={choose}
        hint={say.inventedProportionsTeaching}
      />
      <button type="button" disabled={!style} onClick={begin}>
        {say.putInTheseParts}
      </button>
    </div>
  );
}
