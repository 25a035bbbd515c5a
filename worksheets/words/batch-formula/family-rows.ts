export const often = (range: string, usual: string) => `${range}, often ${usual} %`;
export const orNone = ', or none';
export const mgKgOf = (minPpm: string, maxPpm: string, ofSaid: string, value: string) =>
  `${minPpm}–${maxPpm} mg/kg of ${ofSaid}${value}`;
export const fatALaboratoryWouldFind = 'Fat a laboratory would find';
export const saltFromAllSources = 'Salt from all sources';
export const saltOfThe = (saltOf: string) => `Salt, of the ${saltOf}`;
export const nitriteAsSodiumNitrite = 'Nitrite, as sodium nitrite';
export const sugar = 'Sugar';
export const pepper = 'Pepper';
export const spices = 'Spices';
export const spiritOrFortifiedWineUnreduced = 'Spirit or fortified wine, unreduced';
export const gelatineOfThe = (ofSaid: unknown) => `Gelatine, of the ${ofSaid}`;
