import { useEffect } from 'preact/hooks';
import { $fieldReader } from '../parts/field-reader.ts';
import { Links, type SiteLinks } from '../parts/links.ts';
import { readField } from '../parts/read-field.ts';
import { TextBox } from '../parts/text-box.tsx';
import { $kitchen, changeKitchen, followKitchen, kitchenAside } from '../state/kitchen.ts';
import { $life } from '../state/store.ts';
import { Hydrated, useHydrated, useShared } from '../state/use-shared.ts';
import { kitchenTroubleWords, SETTINGS } from '../words/settings.ts';
import { HeightField } from './height-field.tsx';
import { RuleSets } from './rule-sets.tsx';
import { Scales } from './scales.tsx';
import { Thermometers } from './thermometers.tsx';
import { Ways } from './ways.tsx';

interface SettingsProps {
  links: SiteLinks;
  /** Where files are saved and brought in. */
  records: string;
}

/** Settings of the kitchen: what a new batch takes over, and how things are written on this device. */
export default function Settings({ links, records }: SettingsProps) {
  const hydrated = useHydrated();
  const life = useShared($life);
  const { kitchen } = useShared($kitchen);
  useEffect(() => {
    const stop = followKitchen();
    // No batch is on its way to this page: its fields open at once.
    $life.set('blank');
    $fieldReader.set(readField);
    return stop;
  }, []);
  return (
    <Hydrated.Provider value={hydrated}>
      <Links.Provider value={links}>
        <div class="worksheet settings" data-life={life}>
          <Trouble />
          <p class="say">{SETTINGS.intro}</p>
          <section aria-labelledby="kitchen">
            <h2 id="kitchen">{SETTINGS.kitchen}</h2>
            <div class="fields">
              <TextBox
                label={SETTINGS.name}
                hint={SETTINGS.nameHint}
                text={kitchen.name}
                onText={(name) => changeKitchen((now) => ({ ...now, name }))}
              />
              <HeightField />
            </div>
          </section>
          <Ways />
          <RuleSets />
          <Scales />
          <Thermometers />
          <section aria-labelledby="kept">
            <h2 id="kept">{SETTINGS.kept}</h2>
            <p class="say">{SETTINGS.keptAbout}</p>
            <p class="buttons">
              <a class="press" href={links.batches}>
                {SETTINGS.batches}
              </a>
              <a class="press" href={records}>
                {SETTINGS.records}
              </a>
            </p>
          </section>
        </div>
      </Links.Provider>
    </Hydrated.Provider>
  );
}

async function saveAside(): Promise<void> {
  const { saveText } = await import('../state/save-file.ts');
  saveText(kitchenAside() ?? '', 'larderwright-settings-unread.json', 'application/json');
}

function Trouble() {
  const { trouble } = useShared($kitchen);
  return (
    <div aria-live="assertive">
      {trouble ? (
        <div class="finding" data-severity="caution">
          <p>{kitchenTroubleWords(trouble)}</p>
          {trouble.id === 'damaged' ? (
            <p class="buttons">
              <button type="button" onClick={() => void saveAside()}>
                {SETTINGS.saveAside}
              </button>
            </p>
          ) : null}
        </div>
      ) : null}
    </div>
  );
}
