import type { ComponentChildren } from 'preact';
import * as say from '#words/parts/computed.ts';
import type { Derived } from '../state/derived.ts';
import { NotYet } from './not-yet.tsx';

/** Says that a part of the page cannot do its work now. */
export function CouldNot({ detail }: { detail: string }) {
  return (
    <div class="finding" data-severity="stop" role="alert">
      <p>
        <strong class="finding-word">{say.stop}</strong> {say.couldNotComputedNothingTyped(detail)}
      </p>
    </div>
  );
}

interface ComputedProps<T> {
  of: Derived<T>;
  /** What is missing while there is nothing, for a reader of the blank form. */
  notYet?: string;
  children: (value: T) => ComponentChildren;
}

/** Shows what was computed, or plainly that it was not. Never a default in its place. */
export function Computed<T>({ of, notYet, children }: ComputedProps<T>) {
  if (of.state === 'ready') return <>{children(of.value)}</>;
  if (of.state === 'failed') return <CouldNot detail={of.detail} />;
  return notYet === undefined ? <NotYet /> : <NotYet what={notYet} />;
}
