import type { Finding } from '@larderwright/calc/findings';
import type { Unit } from '@larderwright/calc/quantities';
import type { YieldTest } from '@larderwright/calc/yield';
import { Fragment } from 'preact';
import * as say from '#words/trim-and-yield/trials.ts';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { addTrial, MOST_TRIALS } from './test-edits.ts';

const BOUGHT: readonly Unit[] = ['kg', 'g', 'lb'];
const PILE: readonly Unit[] = ['g', 'kg', 'lb'];

/** The trials: bought, and every pile weighed. */
export function Trials({ test, findings }: { test: YieldTest; findings: readonly Finding[] }) {
  const path = `yield.tests.${test.id}`;
  const list = `${path}.trials`;
  return (
    <>
      {test.trials.map((trial, place) => {
        const trialPath = `${list}.${trial.id}`;
        const name = say.trial(place + 1);
        return (
          <Fragment key={trial.id}>
            <RemovedRowLine list={list} place={place} />
            <fieldset class="trial">
              <legend>{name}</legend>
              <div class="fields">
                <NumberField
                  path={`${trialPath}.purchased`}
                  label={say.asBought}
                  kind="mass"
                  units={BOUGHT}
                  findings={at(findings, `${trialPath}.purchased`)}
                />
                {test.parts.map((part, index) => (
                  <NumberField
                    key={part.id}
                    path={`${trialPath}.parts.${part.id}`}
                    label={part.name || say.pile(index + 1)}
                    kind="mass"
                    units={PILE}
                  />
                ))}
                <TextField path={`${trialPath}.on`} label={say.date} />
                <TextField path={`${trialPath}.by`} label={say.trimmedBy} />
              </div>
              <RowTools
                list={list}
                id={trial.id}
                label={name}
                first={place === 0}
                last={place === test.trials.length - 1}
              />
            </fieldset>
          </Fragment>
        );
      })}
      <RemovedRowLine list={list} place={test.trials.length} />
      {test.trials.length < MOST_TRIALS ? (
        <p class="buttons">
          <button type="button" onClick={() => addTrial(path)}>
            {say.addATrial}
          </button>
        </p>
      ) : null}
    </>
  );
}
