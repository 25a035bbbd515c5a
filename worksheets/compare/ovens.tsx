import { fixedText } from '@larderwright/calc/quantities';
import { ovenBias } from '@larderwright/calc/trends';
import { useEffect, useId, useState } from 'preact/hooks';
import * as phrases from '#words/compare/ovens.ts';
import { figureText, type KeptOven, keepOvens, keptOvens } from '../state/oven-records.ts';
import { OVEN_WORDS } from '../words/compare.ts';
import type { CompareFigures } from './figures-of.ts';

/** The kept oven records, each with how its cooks ran against their plans. */
export function Ovens({ figures }: { figures: readonly CompareFigures[] }) {
  const [ovens, setOvens] = useState<readonly KeptOven[]>([]);
  const [said, say] = useState('');
  const [before, setBefore] = useState<readonly KeptOven[] | null>(null);
  useEffect(() => setOvens(keptOvens()), []);
  const biases = ovenBias(
    figures.map(({ oven, predictedMin, cookMin }) => ({ oven, predictedMin, actualMin: cookMin })),
  ).filter(({ cooks }) => cooks > 0);
  const keep = (next: readonly KeptOven[], words: string) => {
    if (!keepOvens(next)) return say(OVEN_WORDS.refused);
    setBefore(ovens);
    setOvens(next);
    say(words);
  };
  const names = [...new Set([...ovens.map(({ name }) => name), ...biases.map(({ oven }) => oven)])];
  return (
    <section aria-labelledby="ovens">
      <h2 id="ovens">{phrases.ovenRecords}</h2>
      <p class="say">{OVEN_WORDS.about}</p>
      <div class="removed-row" role="status">
        {said}{' '}
        {before ? (
          <button
            type="button"
            onClick={() => {
              if (!keepOvens(before)) return say(OVEN_WORDS.refused);
              setOvens(before);
              setBefore(null);
              say('');
            }}
          >
            {phrases.undo}
          </button>
        ) : null}
      </div>
      {ovens.length === 0 ? <p>{OVEN_WORDS.empty}</p> : null}
      <ul class="oven-list">
        {names.map((name) => {
          const oven = ovens.find((each) => each.name === name);
          const bias = biases.find((each) => each.oven === name);
          return (
            <li key={name}>
              <p>
                <strong>{name || OVEN_WORDS.shipped}</strong>
                {oven
                  ? phrases.learntFilmsPanHeatingCHotter(
                      oven.at.slice(0, 10),
                      figureText(oven.filmFactor),
                      figureText(oven.heatingFactor),
                      figureText(oven.mediumShiftC),
                    )
                  : '.'}{' '}
                {bias?.medianRatio == null
                  ? OVEN_WORDS.noBias
                  : OVEN_WORDS.bias(fixedText(bias.medianRatio, 2), bias.cooks)}
                .
              </p>
              {oven ? <OvenTools oven={oven} ovens={ovens} onKeep={keep} onSay={say} /> : null}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

interface OvenToolsProps {
  oven: KeptOven;
  ovens: readonly KeptOven[];
  onKeep: (next: readonly KeptOven[], words: string) => void;
  onSay: (words: string) => void;
}

function OvenTools({ oven, ovens, onKeep, onSay }: OvenToolsProps) {
  const [name, setName] = useState(oven.name);
  const id = useId();
  const rename = () => {
    const wanted = name.trim();
    if (wanted === '') return onSay(OVEN_WORDS.nameless);
    if (wanted === oven.name) return;
    if (ovens.some((each) => each.name === wanted)) return onSay(OVEN_WORDS.taken);
    onKeep(
      ovens.map((each) => (each === oven ? { ...oven, name: wanted } : each)),
      OVEN_WORDS.renamed(oven.name, wanted),
    );
  };
  return (
    <p class="buttons">
      <label for={id} class="unseen">
        {phrases.newNameFor(oven.name)}
      </label>
      <input
        id={id}
        class="field-input field-words"
        value={name}
        maxLength={60}
        onInput={({ currentTarget }) => setName(currentTarget.value)}
      />
      <button type="button" onClick={rename}>
        {phrases.rename}
      </button>
      <button
        type="button"
        aria-label={phrases.deleteTheRecordOf(oven.name)}
        onClick={() =>
          onKeep(
            ovens.filter((each) => each !== oven),
            OVEN_WORDS.deleted(oven.name),
          )
        }
      >
        {phrases.deleteWord}
      </button>
    </p>
  );
}
