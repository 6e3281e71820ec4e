/** Hands the buyer a file to keep. */
export function saveFile(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has begun by the next turn of the event loop; the copy in memory can go.
  setTimeout(() => URL.revokeObjectURL(address), 0);
}
