import type { FormulaLine } from '@larderwright/calc/formula';
import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import * as say from '#words/batch-formula/lines.ts';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $formula } from './computed.ts';
import { LineRow } from './line-row.tsx';
import { $newestLine } from './newest-line.ts';
import { WeighedRow } from './weighed-row.tsx';

type View = 'plan' | 'weighed';

/** The lines of the formula, as planned or as weighed. */
export function Lines() {
  const [view, setView] = useState<View>('plan');
  const lines = useAt('formula.lines') as readonly FormulaLine[];
  const newest = useShared($newestLine);
  const computed = useShared($formula);
  const ready = computed.state === 'ready' ? computed.value : null;
  const findings = ready?.findings ?? [];
  const planOf = (id: string) => ready?.values.planned.lines.find((line) => line.lineId === id) ?? null;
  return (
    <>
      <ViewChoice view={view} onView={setView} />
      {view === 'plan' ? (
        <>
          <div class="mix-head" aria-hidden="true">
            <span>{say.ingredient}</span>
            <span>{say.amount}</span>
            <span class="n">g</span>
            <span class="n">{say.ofAll}</span>
            <span class="n">{say.ofMeat}</span>
            <span class="tools-room" />
          </div>
          <ol class="mix-lines">
            {lines.map((line, place) => (
              <Fragment key={line.id}>
                <RemovedRowLine list="formula.lines" place={place} as="li" />
                <LineRow
                  line={line}
                  place={place}
                  last={place === lines.length - 1}
                  mix={planOf(line.id)}
                  figures={ready?.figures.get(line.id) ?? ''}
                  findings={findings}
                  isNew={line.id === newest}
                />
              </Fragment>
            ))}
            <RemovedRowLine list="formula.lines" place={lines.length} as="li" />
          </ol>
        </>
      ) : (
        <div class="weighed-lines">
          <div class="mix-head" aria-hidden="true">
            <span>{say.ingredient}</span>
            <span class="n">{say.planned}</span>
            <span>{say.asWeighed}</span>
            <span class="n">{say.difference}</span>
            <span>{say.lot}</span>
          </div>
          <ol class="mix-lines">
            {lines.map((line, place) => (
              <WeighedRow
                key={line.id}
                line={line}
                place={place}
                plan={planOf(line.id)}
                findings={findings}
              />
            ))}
          </ol>
        </div>
      )}
    </>
  );
}

function ViewChoice({ view, onView }: { view: View; onView: (view: View) => void }) {
  const choice = (value: View, label: string) => (
    <label>
      <input
        type="radio"
        name="formula-view"
        value={value}
        checked={view === value}
        onChange={() => onView(value)}
      />
      {label}
    </label>
  );
  return (
    <fieldset class="views">
      <legend>{say.showTheLines}</legend>
      {choice('plan', say.asPlanned)}
      {choice('weighed', say.asWeighedWithLots)}
    </fieldset>
  );
}
