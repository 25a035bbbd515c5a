import type { PasteLook } from '@larderwright/calc/probe-log';
import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/readings/column-map.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import type { PasteAnswers } from './read-paste.ts';

const SEPARATORS: readonly { value: PasteLook['separator']; label: string }[] = [
  { value: '\t', label: say.tabs },
  { value: ';', label: say.semicolons },
  { value: ',', label: say.commas },
  { value: '|', label: say.bars },
  { value: ' ', label: say.spaces },
];
/** A cell longer than this is no reading; its beginning tells enough. */
const MOST_CELL = 40;

interface ColumnMapProps {
  look: PasteLook;
  answers: PasteAnswers;
  onAnswer: (part: Partial<PasteAnswers>) => void;
}

/** What each column of a log holds: shown as it was understood, and put right by the person who knows the logger. */
export function ColumnMap({ look, answers, onAnswer }: ColumnMapProps) {
  const { columns, separator, time, date, core } = look;
  const asks = core === null || time === null;
  // Once it asked it stays open: the person is at work in it.
  const [open, setOpen] = useState(asks);
  useEffect(() => {
    if (asks) setOpen(true);
  }, [asks]);
  const name = (index: number | null) => {
    const column = columns.find((each) => each.index === index);
    return column ? column.heading.slice(0, MOST_CELL) || say.column(column.index + 1) : '';
  };
  const choices = columns.map(({ index }) => ({ value: String(index), label: name(index) }));
  const asRead = (index: number | null) => (index === null ? say.notFoundYet : say.asRead(name(index)));
  const parted = SEPARATORS.find(({ value }) => value === separator)?.label ?? '';
  const role = (index: number) => {
    if (index === time) return date === null ? say.time : say.clock;
    if (index === date) return say.date;
    return index === core ? say.core : say.notUsed;
  };
  return (
    <details class="import-columns" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say.whatTheColumnsHold}</summary>
      <section class="import-grid" tabindex={0} aria-label={say.firstLinesOfTheLog}>
        <table>
          <thead>
            <tr>
              {columns.map(({ index }) => (
                <th key={index} scope="col">
                  {name(index)}
                  <br />
                  <span class="import-role">{role(index)}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {(columns[0]?.cells ?? []).map((_, row) => (
              // The rows have no name but their place.
              <tr key={`row ${row + 1}`}>
                {columns.map(({ index, cells }) => (
                  <td key={index}>{(cells[row] ?? '').slice(0, MOST_CELL)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <div class="fields">
        <ChoiceField
          label={say.columnOfTheCore}
          value={answers.column}
          empty={asRead(core)}
          choices={choices}
          onChoose={(column) => onAnswer({ column })}
        />
        <ChoiceField
          label={say.columnOfTheTime}
          value={answers.timeColumn}
          empty={asRead(time)}
          choices={choices}
          onChoose={(timeColumn) => onAnswer({ timeColumn })}
        />
        <ChoiceField
          label={say.columnOfTheDate}
          value={answers.dateColumn}
          empty={date === null ? say.asReadNoneApart : asRead(date)}
          choices={[{ value: 'none', label: say.noColumnOfDates }, ...choices]}
          onChoose={(dateColumn) => onAnswer({ dateColumn })}
        />
        <ChoiceField
          label={say.columnsArePartedBy}
          value={answers.separator}
          empty={say.asRead2(parted)}
          choices={SEPARATORS}
          onChoose={(chosen) =>
            onAnswer({
              separator: chosen as PasteAnswers['separator'],
              column: '',
              timeColumn: '',
              dateColumn: '',
            })
          }
        />
      </div>
    </details>
  );
}
