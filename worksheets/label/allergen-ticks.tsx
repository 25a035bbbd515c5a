import { ALLERGEN_CLASSES } from '@larderwright/calc/label';
import * as say from '#words/label/allergen-ticks.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';

interface AllergenTicksProps {
  /** What the row is called: "bacon". */
  name: string;
  /** Ids of the classes; null: nobody has read the pack. */
  ticked: readonly string[] | null;
  onTick: (ticked: string[] | null) => void;
  /** What stands while nobody has read it. */
  unread: string;
}

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** The fourteen, ticked from the pack. That somebody has read it is said apart, so that no tick can mean "none". */
export function AllergenTicks({ name, ticked, onTick, unread }: AllergenTicksProps) {
  const waking = useShared($life) === 'waking';
  return (
    <div class="allergen-ticks">
      <ChoiceField
        label={say.allergensOf(name)}
        value={ticked === null ? 'unread' : 'read'}
        choices={[
          { value: 'unread', label: unread },
          { value: 'read', label: say.thePackWasRead },
        ]}
        onChoose={(value) => onTick(value === 'read' ? [...(ticked ?? [])] : null)}
        hint={say.oncePackReadNoTickMeans}
      />
      {ticked === null ? null : (
        <fieldset class="allergen-list">
          <legend>{say.inByItsPack(name)}</legend>
          {ALLERGEN_CLASSES.map(({ id, name: what }) => (
            <label key={id}>
              <input
                type="checkbox"
                checked={ticked.includes(id)}
                disabled={waking}
                onChange={(event) =>
                  onTick(
                    event.currentTarget.checked ? [...ticked, id] : ticked.filter((other) => other !== id),
                  )
                }
              />
              {upper(what)}
            </label>
          ))}
        </fieldset>
      )}
    </div>
  );
}
