/** Hands a text to the person as a file of their own. Nothing leaves the device. */
export function saveFile(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has the bytes once the click was handled; older ones want a moment.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
