import type { Flow } from './flow.ts';
import type { Spreading } from './spreading.ts';

/**
 * Two nets of one body, the second with cells twice as long, marched side by side as one state. What is
 * read off them is `blend`, which cancels the leading error of a second-order rule.
 */
export interface Pair<T> {
  readonly fine: T;
  readonly coarse: T;
}

/** Richardson's combination of a value from the fine and from the coarse net. */
export function blend({ fine, coarse }: Pair<number>): number {
  return (4 * fine - coarse) / 3;
}

/** The same made for each net. */
export function both<T, R>({ fine, coarse }: Pair<T>, make: (one: T) => R): Pair<R> {
  return { fine: make(fine), coarse: make(coarse) };
}

/** Views of the two halves of a joint state. */
export function halves(state: Float64Array, fineSize: number): Pair<Float64Array> {
  return { fine: state.subarray(0, fineSize), coarse: state.subarray(fineSize) };
}

/** The two flows as one, over the states laid end to end: the coarse one begins where the fine one ends. */
export function joinFlows({ fine, coarse }: Pair<Flow>): Flow {
  return {
    size: fine.size + coarse.size,
    derivative: (timeS, state, into) => {
      fine.derivative(timeS, state, into);
      coarse.derivative(timeS, state, into);
    },
    fastestRate: (state) => Math.max(fine.fastestRate(state), coarse.fastestRate(state)),
    spreading: joinSpreadings({ fine: fine.spreading, coarse: coarse.spreading }),
  };
}

function joinSpreadings({ fine, coarse }: Pair<Spreading | null>): Spreading | null {
  if (fine === null || coarse === null) return null;
  return {
    prepare: (state, weightS) => {
      fine.prepare(state, weightS);
      coarse.prepare(state, weightS);
    },
    relax: (start, into) => {
      fine.relax(start, into);
      coarse.relax(start, into);
    },
  };
}

/** Two arrays laid end to end. */
export function joined({ fine, coarse }: Pair<Float64Array>): Float64Array {
  const whole = new Float64Array(fine.length + coarse.length);
  whole.set(fine);
  whole.set(coarse, fine.length);
  return whole;
}
