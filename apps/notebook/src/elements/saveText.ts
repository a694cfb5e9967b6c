/** Hands text to the reader as a file. It is made in the browser and goes nowhere else. */
export function saveText(text: string, type: string, name: string): void {
  saveBlob(new Blob([text], { type }), name);
}

export function saveBlob(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 0);
}
