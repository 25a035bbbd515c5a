import { summaryOf } from '@larderwright/calc/batch';
import { useEffect, useMemo, useState } from 'preact/hooks';
import * as say from '#words/compare/Compare.ts';
import { $shelf, followShelf } from '../batch-library/shelf-store.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { ChoiceField } from '../parts/choice-field.tsx';
import type { Shelved } from '../state/database.ts';
import { Hydrated, useHydrated, useShared } from '../state/use-shared.ts';
import { COMPARE_WORDS } from '../words/compare.ts';
import { FAMILY_NAMES } from '../words/family-names.ts';
import { noticeWords } from '../words/notices.ts';
import { STATE_WORDS } from '../words/states.ts';
import { $series, openSeries } from './compare-store.ts';
import { Picker } from './picker.tsx';
import { SideBySide } from './side-by-side.tsx';
import { Trend } from './trend.tsx';

interface CompareProps {
  /** Where the invented series lies. */
  seriesAddress: string;
}

const newestFirst = (a: Shelved, b: Shelved) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0);

/** The batches of this device, or the invented series, newest day first. */
function useBatches(): readonly Shelved[] | null {
  const shelf = useShared($shelf);
  const series = useShared($series);
  return useMemo(() => {
    const own = shelf.state === 'open' ? shelf.shelf.batches : null;
    const shown = series
      ? series.map((batch) => ({ ...summaryOf(batch, STATE_WORDS), rev: 0, archivedAt: null }))
      : own;
    return shown ? shown.toSorted(newestFirst) : null;
  }, [shelf, series]);
}

/** Batches side by side, the trend of a family, and what its cooks say of the ovens. */
export default function Compare({ seriesAddress }: CompareProps) {
  const hydrated = useHydrated();
  const shelf = useShared($shelf);
  const series = useShared($series);
  const batches = useBatches();
  const [chosen, choose] = useState<readonly string[]>([]);
  const [family, setFamily] = useState('');
  useEffect(followShelf, []);
  // Another table, another choice: the family with most batches first.
  useEffect(() => {
    choose([]);
    setFamily(commonest(batches ?? []));
  }, [series, batches === null]);
  const families = FAMILY_NAMES.filter(({ value }) => batches?.some(({ familyId }) => familyId === value));
  const picked = chosen.flatMap((id) => batches?.find((batch) => batch.id === id) ?? []);
  return (
    <Hydrated.Provider value={hydrated}>
      <div class="worksheet compare" data-shelf={shelf.state}>
        {shelf.state === 'closed' ? (
          <div class="finding" data-severity="caution" role="alert">
            <p>{noticeWords(shelf.notice)}</p>
          </div>
        ) : null}
        <section aria-labelledby="which" class="compare-which">
          <h2 id="which">{say.whichBatches}</h2>
          <p class="choices">
            {series ? (
              <button type="button" onClick={() => $series.set(null)}>
                {COMPARE_WORDS.ownAgain}
              </button>
            ) : (
              <button type="button" onClick={() => void openSeries(seriesAddress)}>
                {COMPARE_WORDS.demoSeries}
              </button>
            )}
          </p>
          {series ? (
            <p>
              <span class="demo-mark">{say.demo}</span> {COMPARE_WORDS.demoNote}
            </p>
          ) : null}
          {batches === null ? (
            <p class="not-yet">{COMPARE_WORDS.looking}</p>
          ) : (
            <Picker batches={batches} chosen={chosen} onChoose={choose} />
          )}
        </section>
        <section aria-labelledby="side">
          <h2 id="side">{say.sideBySide}</h2>
          {picked.length > 0 ? (
            <SideBySide batches={picked} />
          ) : (
            <>
              <p class="not-yet">{COMPARE_WORDS.none}</p>
              <BlankForm
                caption={say.batchesComparedByHand}
                columns={[say.what, say.batch, say.batch, say.batch]}
                rows={12}
              />
            </>
          )}
        </section>
        <section aria-labelledby="trend">
          <h2 id="trend">{say.trendOfAFamily}</h2>
          {families.length > 0 ? (
            <div class="fields">
              <ChoiceField label={say.family} value={family} choices={families} onChoose={setFamily} />
            </div>
          ) : null}
          <Trend batches={(batches ?? []).filter(({ familyId }) => familyId === family && family !== '')} />
        </section>
      </div>
    </Hydrated.Provider>
  );
}

/** The family most of these batches are of; '' for none. */
function commonest(batches: readonly Shelved[]): string {
  const counts = new Map<string, number>();
  for (const { familyId } of batches) if (familyId) counts.set(familyId, (counts.get(familyId) ?? 0) + 1);
  return [...counts].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? '';
}
