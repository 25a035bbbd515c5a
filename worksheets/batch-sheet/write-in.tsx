import type { ComponentChildren } from 'preact';
import * as say from '#words/batch-sheet/write-in.ts';
import type { Filled } from './sheet-model.ts';

interface WriteInProps {
  label: string;
  /** What is known already; null prints an empty box. */
  value?: Filled | string | null | undefined;
  /** Unit printed in the empty box. */
  unit?: string | undefined;
  wide?: boolean;
  broad?: boolean;
}

/** A labelled box: filled by the worksheet, or empty with its unit for a pencil. */
export function WriteIn({ label, value = null, unit, wide = false, broad = false }: WriteInProps) {
  const filled = typeof value === 'string' ? { text: value, flag: null } : value;
  return (
    <div class={broad ? 'write-in write-in-broad' : wide ? 'write-in write-in-wide' : 'write-in'}>
      <span class="write-in-label">{label}</span>
      <span class="write-in-box">
        {filled ? (
          <span class="write-in-value">
            {filled.text}
            {filled.flag ? <Flag flag={filled.flag} /> : null}
          </span>
        ) : (
          <span class="write-in-unit">{unit ?? ''}</span>
        )}
      </span>
    </div>
  );
}

const FLAG_WORDS = { E: say.entered, D: say.byDefault, W: say.workedOut } as const;

/** Where a printed value comes from. The key to the letters stands in the foot. */
export function Flag({ flag }: { flag: Filled['flag'] }) {
  return (
    <abbr class="flag" title={FLAG_WORDS[flag]}>
      {flag}
    </abbr>
  );
}

/** A value in a table cell, or nothing to write over. */
export function Cell({ value }: { value: Filled | null }) {
  return value ? (
    <>
      {value.text}
      <Flag flag={value.flag} />
    </>
  ) : null;
}

interface BlockProps {
  no: number;
  title: string;
  heavy?: boolean;
  /** Title above instead of beside: for tables that need the whole width. */
  stacked?: boolean;
  children: ComponentChildren;
}

/** One numbered block of the sheet. */
export function Block({ no, title, heavy = false, stacked = false, children }: BlockProps) {
  const kind = [heavy ? 'block-heavy' : '', stacked ? 'block-stacked' : ''].filter(Boolean).join(' ');
  return (
    <section class={`block ${kind}`} data-block={no}>
      <h3 class="block-title">
        {no} {title}
      </h3>
      <div class="block-body">{children}</div>
    </section>
  );
}

/** The name of a row of a printed table; a row still to be written has no head to read out. */
export function RowHead({ name }: { name: string }) {
  return name === '' ? <td class="row-name" /> : <th scope="row">{name}</th>;
}
