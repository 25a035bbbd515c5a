import type { Kitchen } from '@larderwright/calc/kitchen';
import { ChoiceField } from '../parts/choice-field.tsx';
import { $kitchen, changeKitchen } from '../state/kitchen.ts';
import { useShared } from '../state/use-shared.ts';
import { PAPER_CHOICES, SCHEME_CHOICES, SETTINGS, TEMP_CHOICES } from '../words/settings.ts';

/** How things are written and shown: temperatures, paper, colours. */
export function Ways() {
  const { kitchen } = useShared($kitchen);
  return (
    <section aria-labelledby="ways">
      <h2 id="ways">{SETTINGS.ways}</h2>
      <div class="fields">
        <ChoiceField
          label={SETTINGS.tempFirst}
          value={kitchen.tempFirst}
          choices={TEMP_CHOICES}
          hint={SETTINGS.tempHint}
          onChoose={(value) => changeKitchen((now) => ({ ...now, tempFirst: value as Kitchen['tempFirst'] }))}
        />
        <ChoiceField
          label={SETTINGS.paper}
          value={kitchen.paper}
          choices={PAPER_CHOICES}
          onChoose={(value) => changeKitchen((now) => ({ ...now, paper: value as Kitchen['paper'] }))}
        />
        <ChoiceField
          label={SETTINGS.scheme}
          value={kitchen.scheme}
          choices={SCHEME_CHOICES}
          hint={SETTINGS.schemeHint}
          onChoose={(value) => changeKitchen((now) => ({ ...now, scheme: value as Kitchen['scheme'] }))}
        />
      </div>
    </section>
  );
}
