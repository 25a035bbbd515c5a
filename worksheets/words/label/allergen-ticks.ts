export const allergensOf = (name: string) => `Allergens of ${name}`;
export const thePackWasRead = 'The pack was read';
export const oncePackReadNoTickMeans = 'Once the pack was read, no tick means none.';
export const inByItsPack = (name: string) => `In ${name}, by its pack`;
