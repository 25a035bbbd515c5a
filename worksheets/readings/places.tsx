/** Ways down a long worksheet. */
import * as say from '#words/readings/places.ts';
export function Places({ places }: { places: readonly (readonly [id: string, name: string])[] }) {
  return (
    <nav class="places" aria-label={say.onThisWorksheet}>
      <ul>
        {places.map(([id, name]) => (
          <li key={id}>
            <a href={`#${id}`}>{name}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
