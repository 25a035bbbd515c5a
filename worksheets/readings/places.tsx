/** Ways down a long worksheet. */
export function Places({ places }: { places: readonly (readonly [id: string, name: string])[] }) {
  return (
    <nav class="places" aria-label="On this worksheet">
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
