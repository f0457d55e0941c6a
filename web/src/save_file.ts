/** Hands a text, or bytes, to the browser as a file to keep on the device. */
export function saveFile(name: string, type: string, content: BlobPart): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the bytes once the click is handled.
  setTimeout(() => URL.revokeObjectURL(address), 0);
}
