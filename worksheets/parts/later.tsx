import type { ComponentChildren, ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { CouldNot } from './computed.tsx';

/**
 * A part of a worksheet that a blank page does without: fetched once there is a batch on the bench.
 * `meanwhile` stands in its place, on the server too.
 *
 * @param fetchPart imports the module of the part
 * @example const Answers = later(() => import('./answers.tsx').then((m) => m.Answers));
 */
export function later<Props extends object>(fetchPart: () => Promise<ComponentType<Props>>) {
  let Part: ComponentType<Props> | null = null;
  return function Later(props: Props & { meanwhile?: ComponentChildren }) {
    const { meanwhile, ...rest } = props;
    const open = useShared($life) === 'open';
    const [failure, setFailure] = useState<string | null>(null);
    const [, redraw] = useState(0);
    useEffect(() => {
      if (!open || Part) return;
      fetchPart().then(
        (part) => {
          Part = part;
          redraw((times) => times + 1);
        },
        (error) => setFailure(error instanceof Error ? error.message : String(error)),
      );
    }, [open]);
    if (open && Part) return <Part {...(rest as unknown as Props)} />;
    if (failure !== null) return <CouldNot detail={failure} />;
    return meanwhile ?? null;
  };
}
