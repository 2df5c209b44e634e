/** Hands a JSON document to the browser as a file. @param name says nothing about the person */
export function downloadJson(name: string, content: unknown, mediaType: string): void {
  const address = URL.createObjectURL(new Blob([JSON.stringify(content, undefined, 2)], { type: mediaType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the content by the next turn.
  setTimeout(() => URL.revokeObjectURL(address), 0);
}
