/** The IndexedDB database of this device. A page asks whether it exists before it loads anything else. */
export const DATABASE = 'larderwright';
